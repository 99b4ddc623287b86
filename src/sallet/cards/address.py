"""The page of a plant on the web, and its QR code (ISO/IEC 18004, made by segno)."""

from __future__ import annotations

from functools import lru_cache
from typing import Final

import segno

from sallet.cards.model import Address

_LEVEL: Final = "m"
"""Error correction: a card gets wet and scratched; level M restores about 15 % of the code."""


def address_of(course: str, slug: str) -> Address | None:
    """Return the page of a plant below the course's address; None for a course without one."""
    if not course:
        return None
    url = f"{course.rstrip('/')}/plants/{slug}.html"
    return Address(url, _squares(url))


@lru_cache(maxsize=512)
def _squares(url: str) -> tuple[str, ...]:
    code = segno.make_qr(url, error=_LEVEL, boost_error=False)
    return tuple("".join("1" if dark else "0" for dark in row) for row in code.matrix)
