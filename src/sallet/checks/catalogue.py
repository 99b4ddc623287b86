"""The documentation of the checks, from their modules."""

from __future__ import annotations

import inspect
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.checks.problem import Check


def documentation_of(module: Check) -> str:
    """Return a check's documentation, as its users read it."""
    return inspect.cleandoc(module.__doc__ or "")


def summary_of(module: Check) -> str:
    """Return the first line of a check's documentation."""
    return documentation_of(module).split("\n", 1)[0]


def page_of(module: Check) -> str:
    """Return all there is to say of a check: what it finds, how grave, two examples."""
    return "\n".join(
        [
            f"{module.ID} ({module.SEVERITY.value})",
            "",
            documentation_of(module),
            "",
            "Right:",
            _indented(module.GOOD),
            "",
            "Found:",
            _indented(module.BAD),
        ]
    )


def _indented(snippet: str | Mapping[str, str]) -> str:
    files = {"": snippet} if isinstance(snippet, str) else snippet
    blocks = []
    for name, text in files.items():
        lines = [f"    {line}".rstrip() for line in text.strip("\n").split("\n")]
        blocks.append("\n".join([f"  {name}", *lines] if name else lines))
    return "\n".join(blocks)
