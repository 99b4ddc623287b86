"""Whether cards fit is measured, and nothing is left out to make them."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from helpers.cards import card_of, cards_of
from sallet.cards import fitting
from sallet.cards.fitting import Fitted, fit_cards
from sallet.cards.sizes import CARD_SIZES, COMFORTABLE, FLOOR, STEP

SHORT = "---\nname: Ramsons\n---\n## Cautions\n- law: Ask the owner.\n"
SENTENCE = "Ask the owner of the ground, and ask again when the gate is shut. "


def caution(sentences: int) -> str:
    """Return a lesson with a caution of so many sentences."""
    return f"---\nname: Ramsons\n---\n## Cautions\n- law: {SENTENCE * sentences}\n"


def fitted(lesson: str, size: str = "A6") -> Fitted:
    """Return how the card of a lesson fits."""
    return fit_cards([card_of(lesson)], next(s for s in CARD_SIZES if s == size), "en")[0]


def test_a_short_card_is_set_at_the_comfortable_size() -> None:
    found = fitted(SHORT)
    assert found.fits
    assert {side.points for side in found.sides.values()} == {COMFORTABLE}
    assert {side.over for side in found.sides.values()} == {0}
    assert (found.wide, found.larger) == ((), ())


def test_a_fuller_card_is_set_smaller_by_quarter_points() -> None:
    sizes = [fitted(caution(count)).sides["back"].points for count in (1, 30, 36, 44)]
    assert sizes == sorted(sizes, reverse=True)
    assert len(set(sizes)) == 4
    assert all((COMFORTABLE - size) / STEP % 1 == 0 for size in sizes)
    assert min(sizes) >= FLOOR


def test_a_size_larger_than_the_chosen_one_would_not_have_fitted() -> None:
    found = fitted(caution(34))
    room = CARD_SIZES["A6"].text_height
    assert found.sides["back"].height <= room
    # In proportion: a quarter point makes every line, and so the whole, some 3 per cent taller.
    assert found.sides["back"].height * (1 + 2 * STEP / FLOOR) > room


def test_a_card_that_is_too_full_says_by_how_much_and_what_would_hold_it() -> None:
    found = fitted(caution(28), "A7")
    assert not found.fits
    back = found.sides["back"]
    assert (back.points, back.fits) == (FLOOR, False)
    assert back.over == pytest.approx(back.height - CARD_SIZES["A7"].text_height)
    assert found.sides["front"].fits
    assert found.larger == ("A6", "4×6 in", "3×5 in")


def test_a_larger_card_is_named_only_if_it_would_hold_all() -> None:
    assert fitted(caution(44), "A7").larger == ("A6", "4×6 in")
    assert fitted(caution(400), "A7").larger == ()
    assert fitted(caution(400), "4×6 in").larger == ()


def test_a_front_keeps_the_least_room_for_its_picture() -> None:
    look = "## Look-alikes\n### Lily\n- danger: deadly\n- on the card: " + SENTENCE * 26
    front = fitted(f"---\nname: Ramsons\n---\n{look}\n").sides["front"]
    assert front.points < COMFORTABLE
    assert front.height <= CARD_SIZES["A6"].text_height - CARD_SIZES["A6"].picture


def test_a_word_wider_than_the_card_is_told_with_its_width() -> None:
    found = fitted(f"---\nname: Ramsons\n---\n## Cautions\n- law: {'address/' * 14}\n")
    assert [word for word, _ in found.wide] == ["address/" * 14]
    assert found.wide[0][1] > CARD_SIZES["A6"].text_width
    assert not found.fits


def test_progress_is_told_in_cards(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(fitting, "AT_ONCE", 2)
    files = {f"{name}.md": f"---\nname: {name}\n---\n" for name in ("Ash", "Elm", "Oak")}
    told: list[tuple[int, int]] = []
    found = fit_cards(cards_of({"course.yml": "title: Walks\n"} | files), "A6", "en",
                      lambda done, count: told.append((done, count)))  # fmt: skip
    assert told == [(2, 3), (3, 3)]
    assert [one.card.lesson.name for one in found] == ["Ash", "Elm", "Oak"]


@settings(max_examples=8, deadline=None)
@given(st.lists(st.integers(1, 40), min_size=1, max_size=6))
def test_a_longer_card_never_fits_at_a_larger_size(lengths: list[int]) -> None:
    files = {
        f"plant{number:02}.md": f"---\nname: Plant {number:02}\n---\n## Cautions\n- law: {SENTENCE * n}\n"
        for number, n in enumerate(sorted(lengths))
    }
    cards = sorted(cards_of({"course.yml": "title: Walks\n"} | files), key=lambda c: c.lesson.name)
    found = fit_cards(cards, "A6", "en")
    sizes = [one.sides["back"].points for one in found]
    assert sizes == sorted(sizes, reverse=True)
    for one in found:
        side = one.sides["back"]
        assert side.fits == (side.height <= CARD_SIZES["A6"].text_height)
