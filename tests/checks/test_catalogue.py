"""The documentation of the checks."""

from __future__ import annotations

from types import SimpleNamespace
from typing import TYPE_CHECKING, cast

from sallet.checks.catalogue import documentation_of, page_of, summary_of
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.checks.problem import Check


def check(good: str | Mapping[str, str], bad: str | Mapping[str, str]) -> Check:
    """Return a module that checks nothing, with its documentation and snippets."""
    module = SimpleNamespace(
        __doc__="What is found.\n\n    Why it is wrong,\n    and what to do.\n    ",
        ID="my-check", SEVERITY=Severity.WARN, LOOKS_AT="lesson", GOOD=good, BAD=bad,
    )  # fmt: skip
    return cast("Check", module)


def test_the_documentation_is_the_docstring_without_its_indent() -> None:
    assert documentation_of(check("", "")) == "What is found.\n\nWhy it is wrong,\nand what to do."
    assert summary_of(check("", "")) == "What is found."


def test_the_page_of_a_check_is_whole() -> None:
    assert (
        page_of(check("\n## Season\n\n- leaves: May\n", "## Season\n- leaves: Mai\n"))
        == """\
my-check (warn)

What is found.

Why it is wrong,
and what to do.

Right:
    ## Season

    - leaves: May

Found:
    ## Season
    - leaves: Mai"""
    )


def test_snippets_of_several_files_are_named() -> None:
    files = {"course.yml": "title: Hedge\n", "ramsons.md": "---\nname: Ramsons\n---\n"}
    assert (
        page_of(check("", files)).split("Found:\n")[1]
        == """\
  course.yml
    title: Hedge
  ramsons.md
    ---
    name: Ramsons
    ---"""
    )
