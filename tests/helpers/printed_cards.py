"""Cards as they are printed, in the tests: of the demo course, and of plants A to I that fit on every size."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cache
from itertools import product
from pathlib import Path
from typing import TYPE_CHECKING, get_args

from helpers.cards import cards_of, drawn, setting_of
from helpers.lessons import BANK, LESSONS
from helpers.pdfs import cut_out, darkest, rasters_of, words_on
from helpers.turning import Rectangle, Turn
from sallet.cards.content import make_card
from sallet.cards.fitting import fit_cards
from sallet.cards.imposing import fronts, layout_for
from sallet.cards.setting import card_setting
from sallet.cards.sizes import BLEED, CARD_SIZES, PAPERS
from sallet.course.model import Printing
from sallet.course.printing import CardName, Duplex, PaperName
from sallet.course.reading import read_course
from sallet.publish.card_files import card_jobs
from sallet.publish.prints import set_in_print
from sallet.source import Source

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from helpers.pdfs import Word
    from sallet.cards.fitting import Fitted
    from sallet.cards.imposing import Layout
    from sallet.cards.sizes import Size
    from sallet.course.model import Course

SIZES: tuple[CardName, ...] = get_args(CardName)
PAPER_NAMES: tuple[PaperName, ...] = get_args(PaperName)
DUPLEXES: tuple[Duplex, ...] = get_args(Duplex)
DEMO = Path(__file__).parents[2] / "demo_course" / "course.yml"
PAPER_WHITE = 200
"""A grey that is paper still, beside the soft edge of a letter."""
FINE_DOTS = 250
"""Where it is a matter of tenths of a millimetre."""
BAND = 2.7
"""Millimetres from the cut within which the band of a plant that harms may stand, and half a dot."""
HANGING = 0.7
"""Millimetres by which a letter's ascender or tail may hang over the edge of its text."""
LABELS = (
    "tip", "margin", "base", "shape", "division", "arrangement", "surface", "texture", "colour",
)  # fmt: skip


def plant(number: int) -> str:
    """Return the lesson of a plant whose sides look like no other's: more lines on the front, less behind."""
    harms = "taught as: look-alike\ndanger: deadly" if number in HARMING else "taught as: food"
    features = "".join(f"- **{label}**: {LETTERS[number]}front\n" for label in LABELS[: number + 1])
    cautions = "".join(f"- law: {2 * f'{LETTERS[number]}back '}\n" for _ in LABELS[number:])
    return (
        f"---\nname: {LETTERS[number]}-plant\n{harms}\n---\n"
        f"## Identification\n### Leaves\n{features}\n## Cautions\n{cautions}"
    )


LETTERS = "ABCDEFGHI"
HARMING = (1, 5)
ALPHABET = {
    "course.yml": "title: Walks\nlanguage: en-GB\naddress: https://example.org/walks/\n",
    **{f"{letter.lower()}.md": plant(number) for number, letter in enumerate(LETTERS)},
}


@dataclass(frozen=True)
class Cards:
    """The cards of a course as they fit on a size, with the course."""

    course: Course
    fitted: tuple[Fitted, ...]

    def printed_on(self, paper: PaperName, duplex: Duplex) -> Course:
        """Return the course with another printer."""
        return replace(self.course, cards=Printing(self.course.cards.size, paper, duplex))


@cache
def demo(size: CardName = "A6") -> Cards:
    """Return the cards of the demo course."""
    read = read_course(Source("course.yml", DEMO.read_text("utf-8")))
    address = read.address or "https://example.org/"
    course = replace(read, cards=Printing(size), address=address)
    setting = card_setting(course, BANK, LESSONS)
    cards = [make_card(lesson, setting) for lesson in setting.lessons]
    return Cards(course, fit_cards(cards, size, course.language))


@cache
def alphabet(size: CardName) -> Cards:
    """Return the cards of plants A to I."""
    course = replace(setting_of(ALPHABET).course, cards=Printing(size))
    return Cards(course, fit_cards(cards_of(ALPHABET), size, course.language))


@dataclass(frozen=True)
class Shop:
    """Typesets documents into a folder, and keeps them."""

    folder: Path

    def print(
        self, cards: Cards, path: str, paper: PaperName = "A4", duplex: Duplex = "long edge"
    ) -> Path:
        """Return a document of some cards as a file."""
        title, size = cards.course.title[:5], cards.course.cards.size
        file = self.folder / f"{title} {size} {paper} {duplex} {Path(path).name}"
        if not file.exists():
            jobs = dict(card_jobs(cards.fitted, cards.printed_on(paper, duplex), drawn))
            file.write_bytes(set_in_print({path: jobs[path]})[path])
        return file


def names(cards: Cards) -> list[str]:
    """Return the plants in the order of their cards."""
    return [fitted.card.lesson.name for fitted in cards.fitted if fitted.fits]


# ---- where things lie ----------------------------------------------------------------------


def layout_of(cards: Cards, paper: PaperName) -> Layout:
    """Return how the cards of a course lie on a paper."""
    return layout_for(CARD_SIZES[cards.course.cards.size].trim, PAPERS[paper])


@dataclass(frozen=True)
class Lying:
    """A side of a card on a page: which, where, and whether it stands on its head."""

    number: int
    side: int
    page: int
    at: Rectangle
    turned: bool = False


def lying_singly(count: int, size: Size) -> Iterator[Lying]:
    """Yield where the sides lie on single cards."""
    at = Rectangle(BLEED, BLEED, BLEED + size.width, BLEED + size.height)
    for number, side in product(range(count), (0, 1)):
        yield Lying(number, side, 2 * number + side, at)


def lying_on_sheets(count: int, layout: Layout, duplex: Duplex) -> Iterator[Lying]:
    """Yield where fronts lie, and where behind them the backs must: by turning the sheet over."""
    turn, card = Turn(layout.sheet, duplex), layout.card
    for sheet, spots in enumerate(fronts(count, layout)):
        for spot in spots:
            at = Rectangle(spot.x, spot.y, spot.x + card.width, spot.y + card.height)
            yield Lying(spot.card, 0, 2 * sheet, at)
            # Over the level edge what was above comes below: to read upright it is printed head down.
            yield Lying(spot.card, 1, 2 * sheet + 1, at.behind(turn), not turn.about_upright_axis)


def assert_words_keep_inside(
    pages: Sequence[Sequence[Word]], lying: Sequence[Lying], margin: float
) -> None:
    """Assert that the middle of every word lies in the text of a card, and its ends too."""
    for number, page in enumerate(pages):
        rooms = [one.at.inside(margin) for one in lying if one.page == number]
        for word in page:
            middle = (word.top + word.bottom) / 2
            assert any(
                room.left - 0.3 <= word.left and word.right <= room.right + 0.3
                and room.top <= middle <= room.bottom
                for room in rooms
            ), word  # fmt: skip


def assert_ink_keeps_inside(pdf: Path, lying: Sequence[Lying], margin: float) -> None:
    """Assert that between the band and the text of each card is bare paper."""
    pages = rasters_of(pdf, FINE_DOTS)
    for one in lying:
        side = cut_out(pages[one.page], one.at.inside(BAND), FINE_DOTS)
        edge = round((margin - BAND - HANGING) / 25.4 * FINE_DOTS)
        assert edge >= 1
        wide, high = side.size
        frame = [(0, 0, wide, edge), (0, high - edge, wide, high),
                 (0, 0, edge, high), (wide - edge, 0, wide, high)]  # fmt: skip
        assert min(darkest(side.crop(part)) for part in frame) > PAPER_WHITE, one


def assert_all_keeps_inside(pdf: Path, lying: Sequence[Lying], size: CardName) -> None:
    """Assert that words and ink of cards keep to their rooms."""
    assert_words_keep_inside(words_on(pdf), lying, CARD_SIZES[size].margin)
    assert_ink_keeps_inside(pdf, lying, CARD_SIZES[size].margin)
