"""The checks run over lessons and a course; what they find is stamped and put in order."""

from __future__ import annotations

from types import SimpleNamespace
from typing import TYPE_CHECKING, Any

import pytest

from helpers.workshop import bank_of
from sallet.checks import running
from sallet.checks.problem import Problem
from sallet.checks.running import run_checks
from sallet.course.reading import read_course
from sallet.findings import Finding, Severity
from sallet.source import Source, Span

if TYPE_CHECKING:
    from collections.abc import Iterator

BANK = bank_of({"b.md": "one\ntwo\n", "a.md": "one\ntwo\n"})


def module(name: str, looks_at: str, severity: Severity, *starts: int) -> Any:
    """Return a check that finds something at some offsets of whatever it is given."""

    def check(_: object, bank: object) -> Iterator[Problem]:
        assert bank is BANK
        for start in starts:
            yield Problem(Span(start, start + 1), f"{name} found", "mend it")

    return SimpleNamespace(ID=name, SEVERITY=severity, LOOKS_AT=looks_at, check=check)


@pytest.fixture
def _two_checks(monkeypatch: pytest.MonkeyPatch) -> None:
    checks = (module("later", "lesson", Severity.WARN, 5, 0),
              module("course", "course", Severity.NOTE, 2))  # fmt: skip
    monkeypatch.setattr(running, "CHECKS", checks)


def found(text: str | None = None) -> list[Finding]:
    """Return what is found in the two lessons, and in a course where its text is given."""
    course = None if text is None else read_course(Source("course.yml", text))
    return run_checks(BANK, BANK.lessons, course)


@pytest.mark.usefixtures("_two_checks")
def test_a_finding_has_its_place_its_check_and_its_severity() -> None:
    """A problem knows its offset only: 5 is the second letter of the second line."""
    assert found() == [
        Finding(file, line, column, "later", Severity.WARN, "later found", "mend it")
        for file in ("a.md", "b.md")
        for line, column in ((1, 1), (2, 2))
    ]


@pytest.mark.usefixtures("_two_checks")
def test_the_course_is_looked_at_where_there_is_one() -> None:
    (finding, *_) = [f for f in found("title: x\n") if f.file == "course.yml"]
    assert finding == Finding(
        "course.yml", 1, 3, "course", Severity.NOTE, "course found", "mend it"
    )


@pytest.mark.usefixtures("_two_checks")
def test_only_the_lessons_asked_for_are_looked_at() -> None:
    assert {f.file for f in run_checks(BANK, BANK.lessons[:1])} == {"b.md"}
    assert run_checks(BANK, []) == []


@pytest.mark.usefixtures("_two_checks")
@pytest.mark.parametrize(
    ("raised", "severity"),
    [("stop", Severity.STOP), ("warn", Severity.WARN), ("note", Severity.WARN)],
)
def test_a_course_may_raise_a_severity_and_never_lower_it(raised: str, severity: Severity) -> None:
    severities = {f.severity for f in found(f"raise: {{later: {raised}}}\n") if f.check == "later"}
    assert severities == {severity}


def test_what_two_checks_say_alike_is_told_once(monkeypatch: pytest.MonkeyPatch) -> None:
    twice = module("same", "lesson", Severity.STOP, 0, 0)
    monkeypatch.setattr(running, "CHECKS", (twice, twice))
    assert [f.file for f in found()] == ["a.md", "b.md"]


def test_a_broken_bullet_hides_none_of_the_next_ones() -> None:
    text = "## Identification\n### Leaves\n- \n- margin: entyre\n- no colon\n- length: long\n"
    bank = bank_of({"a.md": text})
    lines = [f.line for f in run_checks(bank, bank.lessons) if f.line > 2]
    assert sorted(set(lines)) == [3, 4, 5, 6]
