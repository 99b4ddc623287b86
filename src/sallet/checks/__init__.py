"""The checks, in running order, and how they are run."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks import unknown_lesson, unknown_state

if TYPE_CHECKING:
    from sallet.checks.problem import Check

CHECKS: Final[tuple[Check, ...]] = (
    unknown_state,
    unknown_lesson,
)
"""Every check. A new one gets its line here, its module beside, and its cases in the tests."""
