"""What the tests in a browser ask of a page."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from playwright.sync_api import Page


def axe_finds(page: Page, axe: str) -> list[tuple[str, list[str]]]:
    """Return the rules of axe that a page breaks, with the first places.

    Source: axe-core's rules for WCAG 2.2 A and AA and its best practices.
    """
    page.evaluate(axe)
    tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]
    result = page.evaluate("tags => axe.run({runOnly: tags})", tags)
    return [(v["id"], [n["html"][:160] for n in v["nodes"][:3]]) for v in result["violations"]]
