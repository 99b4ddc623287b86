"""A photograph has too few pixels to be printed on the field card.

In print a picture needs 300 pixels to the inch, or it looks blurred, and what tells two plants
apart is lost. A picture that would be smaller than the least room for one is left out, and the
drawing stands in its place. Give a larger file, as it came from the camera; sallet makes the
smaller copies for the pages itself.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.cards.photograph import (
    FINEST_NEEDED,
    first_photograph,
    is_coarse,
    pixels_wanted,
)
from sallet.cards.sizes import CARD_SIZES
from sallet.checks.problem import Problem
from sallet.checks.words import shown
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.cards.fitting import Fitted
    from sallet.lesson.bank import Bank

ID: Final = "card-photograph-coarse"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "card"
_LESSON = "## Pictures\n### leaf.jpg\n- shows: a leaf\n- credit: Ann Bell\n- licence: CC BY 4.0\n"
GOOD = {"course.yml": "title: Walks\n", "ramsons.md": _LESSON, "leaf.jpg": "2400x1600"}
BAD = {"course.yml": "title: Walks\n", "ramsons.md": _LESSON, "leaf.jpg": "240x160"}


def check(fitted: Fitted, bank: Bank) -> Iterator[Problem]:
    """Yield a problem for the first photograph, the one for the card."""
    found = first_photograph(fitted.card.lesson, bank)
    size = CARD_SIZES[fitted.size]
    if found and is_coarse(found.file, size):
        across, down = pixels_wanted(found.file, size)
        message = (
            f"{shown(found.picture.file.value)} has {found.file.width} × {found.file.height} pixels, "
            f"expected at least {across} × {down} for a card of {fitted.size}"
        )
        hint = (
            f"give a larger file ({FINEST_NEEDED} pixels to the inch); the card shows the drawing"
        )
        yield Problem(found.picture.file.span, message, hint)
