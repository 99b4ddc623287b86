"""Cards on sheets: the known cases, and what holds for any card and paper."""

from __future__ import annotations

from itertools import combinations, product
from typing import TYPE_CHECKING

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from helpers.turning import Rectangle, Turn
from sallet.cards.imposing import MARK, Layout, Mark, Spot, behind, crop_marks, fronts, layout_for
from sallet.cards.sizes import BLEED, CARD_SIZES, PAPERS, Size

if TYPE_CHECKING:
    from collections.abc import Iterable

    from sallet.course.printing import CardName, Duplex, PaperName

NEAR = 1e-3
"""Millimetres that do not matter: a thousandth."""
DUPLEXES: tuple[Duplex, ...] = ("long edge", "short edge")


def covered(spot: Spot, layout: Layout, beyond: float = 0.0) -> Rectangle:
    """Return what a card covers, with so many millimetres round it."""
    card = layout.card
    return Rectangle(spot.x, spot.y, spot.x + card.width, spot.y + card.height).inside(-beyond)


def on_one_sheet(layout: Layout) -> tuple[Spot, ...]:
    """Return a sheet that is full."""
    (front,) = fronts(layout.up, layout)
    return front


TENTHS = st.integers(200, 2500).map(lambda tenths: tenths / 10)
CARDS = st.builds(Size, TENTHS, TENTHS)
SHEETS = st.builds(Size, st.integers(900, 4500).map(lambda t: t / 10), st.just(0.0)).flatmap(
    lambda size: st.integers(900, 4500).map(lambda t: Size(size.width, t / 10))
)


@st.composite
def layouts(draw: st.DrawFn) -> Layout:
    """Return how some card lies on some sheet that it fits on and that is no square."""
    card, paper = draw(CARDS), draw(SHEETS)
    assume(paper.width != paper.height)
    fits = [card.width <= s.width and card.height <= s.height for s in (paper, paper.turned)]
    assume(any(fits))
    return layout_for(card, paper)


# ---- the known cases ----------------------------------------------------------------------


def named(card: CardName, paper: PaperName) -> Layout:
    """Return how a card of the project lies on one of its papers."""
    return layout_for(CARD_SIZES[card].trim, PAPERS[paper])


def test_four_cards_of_a6_lie_on_a4_and_share_their_cuts() -> None:
    """Half a millimetre is left above and below: A6 is 148 high, half of 297 rounded down."""
    layout = named("A6", "A4")
    assert layout == Layout(Size(105, 148), Size(210, 297), columns=2, rows=2, bleed=0)
    assert layout.corners == ((0, 0.5), (105, 0.5), (0, 148.5), (105, 148.5))
    assert {(m.x, m.across) for m in crop_marks(layout) if m.down} == {(0, 0), (105, 0), (210, 0)}
    assert {m.y for m in crop_marks(layout) if m.across} == {0.5, 148.5, 296.5}


def test_eight_cards_of_a7_lie_on_a4_on_its_side_and_share_their_cuts() -> None:
    layout = named("A7", "A4")
    assert layout == Layout(Size(74, 105), Size(297, 210), columns=4, rows=2, bleed=0)
    assert layout.lefts == (0.5, 74.5, 148.5, 222.5)
    assert layout.tops == (0, 105)


def test_two_cards_of_4_by_6_inches_lie_on_letter_on_its_side_with_bleed() -> None:
    layout = named("4×6 in", "Letter")
    assert layout == Layout(Size(101.6, 152.4), Size(279.4, 215.9), columns=2, rows=1, bleed=BLEED)
    assert layout.lefts == pytest.approx((139.7 - 3 - 101.6, 139.7 + 3))
    assert layout.tops == pytest.approx((31.75,))


def test_four_cards_of_3_by_5_inches_lie_on_letter_with_bleed() -> None:
    layout = named("3×5 in", "Letter")
    assert layout == Layout(Size(76.2, 127), Size(215.9, 279.4), columns=2, rows=2, bleed=BLEED)
    assert layout.lefts == pytest.approx((107.95 - 3 - 76.2, 107.95 + 3))
    assert layout.tops == pytest.approx((139.7 - 3 - 127, 139.7 + 3))


@pytest.mark.parametrize(
    ("card", "paper", "up"),
    [("A6", "Letter", 2), ("A7", "Letter", 6), ("4×6 in", "A4", 2), ("3×5 in", "A4", 4)],
)
def test_so_many_lie_on_the_other_paper(card: CardName, paper: PaperName, up: int) -> None:
    """By hand: ⌊279.4 ÷ 105⌋ × ⌊215.9 ÷ 148⌋, ⌊279.4 ÷ 74⌋ × ⌊215.9 ÷ 105⌋, and so on."""
    assert named(card, paper).up == up


def test_a_card_larger_than_the_paper_is_refused_with_both_sizes() -> None:
    with pytest.raises(ValueError, match=r"^no card of .*width=211.* fits on a sheet of .*210"):
        layout_for(Size(211, 298), Size(210, 297))


# ---- any card on any paper ----------------------------------------------------------------


def times(length: float, room: float, around: float = 0.0, aside: float = 0.0) -> int:
    """Return how often a length fits into a room, counted up one by one, in tenths of millimetres."""
    one, all_ = round(10 * (length + 2 * around)), round(10 * (room - 2 * aside))
    count = 0
    while (count + 1) * one <= all_:
        count += 1
    return count


@given(CARDS, SHEETS)
def test_as_many_lie_on_a_sheet_as_fit_upright_or_lying_and_with_bleed_if_that_costs_none(
    card: Size, paper: Size
) -> None:
    ways = (paper, paper.turned)
    most = max(times(card.width, s.width) * times(card.height, s.height) for s in ways)
    bled = max(
        times(card.width, s.width, BLEED, MARK) * times(card.height, s.height, BLEED, MARK)
        for s in ways
    )
    if not most:
        with pytest.raises(ValueError, match="no card"):
            layout_for(card, paper)
        return
    layout = layout_for(card, paper)
    assert layout.up == most
    assert layout.bleed == (BLEED if bled == most else 0)
    assert layout.sheet in ways
    assert layout.card == card


@given(layouts())
def test_cards_never_overlap_nor_do_their_bleeds(layout: Layout) -> None:
    for one, other in combinations(on_one_sheet(layout), 2):
        a, b = (covered(spot, layout, layout.bleed) for spot in (one, other))
        beside = a.right <= b.left + NEAR or b.right <= a.left + NEAR
        above = a.bottom <= b.top + NEAR or b.bottom <= a.top + NEAR
        assert beside or above


@given(layouts())
def test_all_lies_on_the_sheet_and_in_its_middle(layout: Layout) -> None:
    found = [covered(spot, layout, layout.bleed) for spot in on_one_sheet(layout)]
    left, top = min(f.left for f in found), min(f.top for f in found)
    right, bottom = max(f.right for f in found), max(f.bottom for f in found)
    assert min(left, top) >= -NEAR
    assert left == pytest.approx(layout.sheet.width - right, abs=NEAR)
    assert top == pytest.approx(layout.sheet.height - bottom, abs=NEAR)


@given(st.integers(0, 60), layouts(), st.sampled_from(DUPLEXES))
def test_every_card_lies_once_on_a_front_and_once_on_the_back_of_the_same_sheet(
    count: int, layout: Layout, duplex: Duplex
) -> None:
    sheets = list(fronts(count, layout))
    assert sorted(spot.card for sheet in sheets for spot in sheet) == list(range(count))
    assert len(sheets) == -(-count // layout.up)
    for sheet in sheets:
        assert [s.card for s in behind(sheet, layout, duplex)] == [s.card for s in sheet]


# ---- the pile of cards --------------------------------------------------------------------


@given(st.integers(1, 60), layouts())
def test_piles_laid_on_each_other_as_they_come_are_in_season_order(
    count: int, layout: Layout
) -> None:
    """The sheets are cut as one block, the first on top: each place gives a pile."""
    sheets = list(fronts(count, layout))
    piles: dict[tuple[float, float], list[int]] = {corner: [] for corner in layout.corners}
    for sheet in sheets:
        for spot in sheet:
            piles[spot.x, spot.y].append(spot.card)
    rows_then_columns = sorted(piles, key=lambda corner: (corner[1], corner[0]))
    assert [card for corner in rows_then_columns for card in piles[corner]] == list(range(count))


# ---- the back behind its front ------------------------------------------------------------


def own_point(spot: Spot, card: Size, across: float, down: float) -> tuple[float, float]:
    """Return where on the page a point of a card is, given from the card's own left upper corner."""
    if spot.turned:
        return spot.x + card.width - across, spot.y + card.height - down
    return spot.x + across, spot.y + down


@given(layouts(), st.sampled_from(DUPLEXES))
def test_a_needle_through_a_card_comes_out_at_the_same_height_of_the_same_card_s_back(
    layout: Layout, duplex: Duplex
) -> None:
    """Held by its upper edge and turned like a leaf of a book, a card reads upright on both sides."""
    card, turn = layout.card, Turn(layout.sheet, duplex)
    front = on_one_sheet(layout)
    for face, back in zip(front, behind(front, layout, duplex), strict=True):
        for across, down in product((0.0, 0.3 * card.width, card.width), (0.0, card.height)):
            needle = turn(*own_point(face, card, across, down))
            expected = own_point(back, card, card.width - across, down)
            assert needle == pytest.approx(expected, abs=NEAR)


@pytest.mark.parametrize(
    ("sheet", "duplex", "expected"),
    [(Size(210, 297), "long edge", Spot(0, 140, 20)),
     (Size(210, 297), "short edge", Spot(0, 10, 197, turned=True)),
     (Size(297, 210), "short edge", Spot(0, 227, 20)),
     (Size(297, 210), "long edge", Spot(0, 10, 110, turned=True))],
)  # fmt: skip
def test_where_the_back_of_one_card_lies(sheet: Size, duplex: Duplex, expected: Spot) -> None:
    """A card of 60 × 80, 10 from the left and 20 from above."""
    layout = Layout(Size(60, 80), sheet, columns=1, rows=1, bleed=0)
    assert behind((Spot(0, 10, 20),), layout, duplex) == (expected,)


# ---- crop marks ---------------------------------------------------------------------------


def ends(mark: Mark) -> tuple[tuple[float, float], tuple[float, float]]:
    """Return where a mark begins and ends."""
    return (mark.x, mark.y), (mark.x + mark.across, mark.y + mark.down)


def edges(layout: Layout) -> tuple[set[float], set[float]]:
    """Return where cards end, across and down, to a thousandth."""
    found = [covered(spot, layout) for spot in on_one_sheet(layout)]
    across = {round(x, 3) for f in found for x in (f.left, f.right)}
    return across, {round(y, 3) for f in found for y in (f.top, f.bottom)}


def is_one_of(value: float, places: Iterable[float]) -> bool:
    """Return whether a value is one of some places, but for a thousandth or two."""
    return any(abs(value - place) <= 2 * NEAR for place in places)


@given(layouts())
def test_every_mark_lies_on_a_cut_inside_the_sheet_and_every_cut_has_one_at_each_end(
    layout: Layout,
) -> None:
    across, down = edges(layout)
    marks = crop_marks(layout)
    for mark in marks:
        assert sorted((mark.across, mark.down)) == [0, MARK]
        assert is_one_of(mark.x, across) if mark.down else is_one_of(mark.y, down)
        for x, y in ends(mark):
            assert -NEAR <= x <= layout.sheet.width + NEAR
            assert -NEAR <= y <= layout.sheet.height + NEAR
    for places, found in ((across, [m.x for m in marks if m.down]),
                          (down, [m.y for m in marks if m.across])):  # fmt: skip
        distinct = [p for p in places if not is_one_of(p, (q for q in places if q < p))]
        assert len(found) == 2 * len(distinct)
        assert all(is_one_of(place, found) for place in places)


@given(layouts())
def test_a_mark_stays_out_of_the_bleed_and_without_bleed_out_of_every_card_but_along_its_edge(
    layout: Layout,
) -> None:
    for mark, spot in product(crop_marks(layout), on_one_sheet(layout)):
        (left, top), (right, bottom) = ends(mark)
        card = covered(spot, layout, layout.bleed)
        inside_across = right > card.left + NEAR and left < card.right - NEAR
        inside_down = bottom > card.top + NEAR and top < card.bottom - NEAR
        assert not (inside_across and inside_down)
