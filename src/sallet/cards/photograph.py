"""The photograph on a card: the lesson's first, never printed coarser than 300 pixels to the inch."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.cards.model import Photograph

if TYPE_CHECKING:
    from sallet.cards.sizes import CardSize
    from sallet.lesson.bank import Bank, PictureFile
    from sallet.lesson.model import Lesson

FINEST_NEEDED: Final = 300
"""Pixels to the inch, at the least: common practice of printers, without a published source."""
INCH: Final = 25.4
"""Millimetres."""
CREDIT: Final = 5.0
"""Millimetres left for the line that says whose a picture is."""


def first_photograph(lesson: Lesson, bank: Bank) -> Photograph | None:
    """Return the first picture of a lesson whose file is at hand."""
    for picture in lesson.pictures:
        file = bank.pictures.get(picture.file.value)
        if file:
            return Photograph(picture, file)
    return None


def fine_photograph(lesson: Lesson, bank: Bank, size: CardSize) -> Photograph | None:
    """Return the photograph for the card, if it has pixels enough for the least room of a picture."""
    found = first_photograph(lesson, bank)
    return found if found and not is_coarse(found.file, size) else None


def is_coarse(file: PictureFile, size: CardSize) -> bool:
    """Return whether a picture would have to be smaller than the least room of a picture."""
    across, down = pixels_wanted(file, size)
    return file.width < across or file.height < down


def pixels_wanted(file: PictureFile, size: CardSize) -> tuple[int, int]:
    """Return the pixels, across and down, with which a picture fills the least room."""
    width, height = _inside(file, size.text_width, size.picture - CREDIT)
    return round(width / INCH * FINEST_NEEDED), round(height / INCH * FINEST_NEEDED)


def printed_size(file: PictureFile, width: float, height: float) -> tuple[float, float]:
    """Return the width and height in millimetres at which a picture is printed in some room."""
    most = file.width / FINEST_NEEDED * INCH
    return _inside(file, min(width, most), height)


def _inside(file: PictureFile, width: float, height: float) -> tuple[float, float]:
    scale = min(width / file.width, height / file.height)
    return file.width * scale, file.height * scale
