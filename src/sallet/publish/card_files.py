"""The field cards as documents to typeset: on the printer's sheets, one a page, and one by one."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

from sallet.cards.data import card_data, size_data
from sallet.cards.imposing import behind, crop_marks, fronts, layout_for
from sallet.cards.photograph import INCH, printed_size
from sallet.cards.plate import card_plate
from sallet.cards.sizes import BLEED, CARD_SIZES, PAPERS
from sallet.publish.photographs import resized, upright
from sallet.typesetting.engine import CARDS_AT_ONCE
from sallet.typesetting.jobs import Job

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping, Sequence

    from sallet.cards.fitting import Fitted
    from sallet.cards.imposing import Layout, Spot
    from sallet.cards.model import Photograph
    from sallet.course.model import Course
    from sallet.drawing.figures import Figure
    from sallet.lesson.model import Lesson

SHEETS: Final = "print/field-cards.pdf"
SINGLE: Final = "print/field-cards-single.pdf"
CARDS: Final = "print/cards/"
FINEST: Final = 450
"""Pixels to the inch to which a photograph is made smaller: more is not seen in print."""


Drawn = Callable[["Lesson"], "Sequence[Figure]"]
"""What returns the figures of a lesson."""


@dataclass(frozen=True)
class _Set:
    """A card ready to be set."""

    slug: str
    name: str
    data: dict[str, Any]
    pictures: Mapping[str, bytes]


def card_path(slug: str) -> str:
    """Return the file of a plant's own card."""
    return f"{CARDS}{slug}.pdf"


def is_card_file(path: str) -> bool:
    """Return whether a file of the site is one of cards."""
    stems = (SHEETS.removesuffix(".pdf"), SINGLE.removesuffix(".pdf"), CARDS)
    return path.endswith(".pdf") and path.startswith(stems)


def card_jobs(
    fitted: Sequence[Fitted], course: Course, figures_of: Drawn
) -> Iterator[tuple[str, Job]]:
    """Yield the documents of the cards that fit, each with its path; `figures_of` draws a lesson.

    More cards than one process may set go into several files, the second with `-2` in its name.
    """
    cards = [_set(one, figures_of) for one in fitted if one.fits]
    parts = [cards[at : at + CARDS_AT_ONCE] for at in range(0, len(cards), CARDS_AT_ONCE)]
    for number, part in enumerate(parts, 1):
        yield _numbered(SHEETS, number), _sheets(part, course)
        yield _numbered(SINGLE, number), _single(part, course, f"Field cards: {course.title}")
    for card in cards:
        yield card_path(card.slug), _single([card], course, f"Field card: {card.name}")


def _numbered(path: str, number: int) -> str:
    return path if number == 1 else path.replace(".pdf", f"-{number}.pdf")


def _values(cards: Sequence[_Set], course: Course, title: str) -> dict[str, Any]:
    return {
        "language": course.language,
        "title": title,
        "author": [course.teacher] if course.teacher else [],
        "size": size_data(CARD_SIZES[course.cards.size]),
        "cards": [card.data for card in cards],
    }


def _pictures(cards: Sequence[_Set]) -> dict[str, bytes]:
    return {name: data for card in cards for name, data in card.pictures.items()}


def _single(cards: Sequence[_Set], course: Course, title: str) -> Job:
    values = _values(cards, course, title) | {"bleed": BLEED}
    return Job("single", values, _pictures(cards), cards=len(cards))


def _sheets(cards: Sequence[_Set], course: Course) -> Job:
    layout = layout_for(CARD_SIZES[course.cards.size].trim, PAPERS[course.cards.paper])
    values = _values(cards, course, f"Field cards: {course.title}")
    values["sheet"] = _sheet(layout, len(cards), course)
    return Job("sheets", values, _pictures(cards), cards=len(cards))


def _sheet(layout: Layout, count: int, course: Course) -> dict[str, Any]:
    pages = [
        {"back": back, "spots": [_spot(spot) for spot in spots]}
        for front in fronts(count, layout)
        for back, spots in ((False, front), (True, behind(front, layout, course.cards.duplex)))
    ]
    marks = [{"x": m.x, "y": m.y, "across": m.across, "down": m.down} for m in crop_marks(layout)]
    return {
        "width": layout.sheet.width,
        "height": layout.sheet.height,
        "bleed": layout.bleed,
        "pages": pages,
        "marks": marks,
    }


def _spot(spot: Spot) -> dict[str, Any]:
    return {"card": spot.card, "x": spot.x, "y": spot.y, "turned": spot.turned}


# ---- one card -----------------------------------------------------------------------------


def _set(fitted: Fitted, figures_of: Drawn) -> _Set:
    card, size = fitted.card, CARD_SIZES[fitted.size]
    front, back = fitted.sides["front"], fitted.sides["back"]
    room = size.text_height - front.height
    pictures: dict[str, bytes] = {}
    data = card_data(card) | {
        "front-size": front.points,
        "back-size": back.points,
        "room": room,
        "photograph": None,
        "drawing": [],
    }
    if card.photograph:
        data["photograph"] = _photograph(
            card.photograph, card.lesson.slug, (size.text_width, room), pictures
        )
    else:
        data["drawing"] = _drawing(fitted, figures_of, room, pictures)
    return _Set(card.lesson.slug, card.lesson.name, data, pictures)


def _drawing(
    fitted: Fitted, figures_of: Drawn, room: float, pictures: dict[str, bytes]
) -> list[list[dict[str, Any]]]:
    lesson, width = fitted.card.lesson, CARD_SIZES[fitted.size].text_width
    rows = card_plate(lesson, figures_of(lesson), width, room)
    laid: list[list[dict[str, Any]]] = []
    for row in rows:
        laid.append([])
        for figure in row:
            file = f"{lesson.slug}-{len(pictures) + 1}.svg"
            pictures[file] = figure.svg.encode()
            laid[-1].append(
                {
                    "file": file,
                    "alt": f"Drawing of {lesson.name}: {figure.words}",
                    "width": figure.width,
                    "height": figure.height,
                    "words": figure.words,
                    "bar": figure.bar,
                }
            )
    return laid


def _photograph(
    photograph: Photograph, slug: str, room: tuple[float, float], pictures: dict[str, bytes]
) -> dict[str, Any]:
    width, height = printed_size(photograph.file, *room)
    file = f"{slug}.jpg"
    pictures[file] = _for_print(Path(photograph.file.path).read_bytes(), width)
    return {
        "file": file,
        "alt": photograph.picture.shows,
        "width": width,
        "height": height,
    }


def _for_print(data: bytes, width: float) -> bytes:
    """Return a photograph with as many pixels as print can show across so many millimetres."""
    image = upright(data)
    across = min(image.width, round(width / INCH * FINEST))
    down = max(1, round(image.height * across / image.width))
    return resized(image, (across, down), "jpg")
