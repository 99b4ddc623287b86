"""Every check: its own snippets, and its fixture of cases with whole findings."""

from __future__ import annotations

import pkgutil
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

import sallet.checks
from helpers.fixtures import Case, cases_in
from helpers.workshop import as_lines, files_of, findings_of
from sallet.checks import CHECKS

if TYPE_CHECKING:
    from sallet.checks.problem import Check

FIXTURES = Path(__file__).parent
NO_CHECK = {"problem", "running", "words", "catalogue", "doubts"}
CASES = [case for path in sorted(FIXTURES.glob("*.md")) for case in cases_in(path)]
BY_ID = {module.ID: module for module in CHECKS}


def test_every_module_of_checks_is_listed_once() -> None:
    modules = {m.name for m in pkgutil.iter_modules(sallet.checks.__path__)} - NO_CHECK
    listed = [module.ID.replace("-", "_") for module in CHECKS]
    assert sorted(listed) == sorted(modules)


@pytest.mark.parametrize("module", CHECKS, ids=lambda module: str(module.ID))
def test_a_check_has_documentation_a_summary_line_and_a_fixture(module: Check) -> None:
    text = module.__doc__ or ""
    summary, blank, *rest = text.split("\n")
    assert summary.endswith(".")
    assert blank == ""
    assert len(" ".join(rest)) > 40
    assert (FIXTURES / f"{module.ID.replace('-', '_')}.md").exists()


@pytest.mark.parametrize("module", CHECKS, ids=lambda module: str(module.ID))
def test_a_check_is_silent_on_its_good_snippet(module: Check) -> None:
    assert as_lines(findings_of(files_of(module.GOOD), module.ID)) == ""


@pytest.mark.parametrize("module", CHECKS, ids=lambda module: str(module.ID))
def test_a_check_finds_something_in_its_bad_snippet(module: Check) -> None:
    assert findings_of(files_of(module.BAD), module.ID)


def test_the_fixtures_have_cases_that_find_and_cases_that_do_not() -> None:
    finding = {case.fixture for case in CASES if case.findings}
    silent = {case.fixture for case in CASES if not case.findings}
    names = {module.ID.replace("-", "_") for module in CHECKS}
    assert names - finding == set()
    assert names - silent == set()


@pytest.mark.parametrize("case", CASES, ids=str)
def test_a_case_finds_exactly_what_it_states(case: Case) -> None:
    check = case.fixture.replace("_", "-")
    assert check in BY_ID
    assert as_lines(findings_of(case.files, check)) == case.findings
