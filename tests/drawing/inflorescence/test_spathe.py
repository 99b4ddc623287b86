"""Hoods, sheaths and the club within."""

from __future__ import annotations

from itertools import combinations
from typing import Final

import pytest

from sallet.drawing.inflorescence.form import SPATHES
from sallet.drawing.inflorescence.spathe import spadix, wrap
from sallet.drawing.ink import Copy, Mark, box

FORMS: Final = tuple(SPATHES.values())


def names(ink: tuple[Mark | Copy, ...]) -> list[str]:
    return [one.part for one in ink if one.part]


def test_a_spadix_of_no_recorded_spathe_stands_alone() -> None:
    assert names(spadix("", 200)) == ["spadix"]
    assert box(spadix("", 200)).height == pytest.approx(201.6, abs=1)


@pytest.mark.parametrize("form", FORMS)
def test_a_recorded_spathe_is_drawn_round_the_club(form: str) -> None:
    assert set(names(spadix(form, 200))) == {"spadix", "spathe"}


def test_every_spathe_looks_otherwise() -> None:
    assert all(wrap(a, 200) != wrap(b, 200) for a, b in combinations(FORMS, 2))


def test_two_pieces_are_two() -> None:
    behind, before = wrap("two", 200)
    assert names((*behind, *before)) == ["spathe", "spathe"]


def test_the_club_stands_before_the_back_of_its_hood_and_behind_its_front() -> None:
    behind, before = wrap("hood", 200)
    ink = spadix("hood", 200)
    assert ink[: len(behind)] == behind
    assert ink[-len(before) :] == before
    assert box(behind).top > box(before).top


def test_no_spathe_no_ink() -> None:
    assert wrap("", 200) == ((), ())
