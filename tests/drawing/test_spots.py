"""Where a pin points."""

from __future__ import annotations

import pytest

from helpers.drawings import points_of
from sallet.drawing.curves import straight
from sallet.drawing.ink import Copy, Mark, turned
from sallet.drawing.sketch import Sketch
from sallet.drawing.spots import SHARES, spot
from sallet.lesson.vocabulary_file import load_vocabulary

SQUARE = Mark(straight(0j, 100 + 0j, 100 + 100j, 100j, closed=True))
VOCABULARY = load_vocabulary()


def test_a_pin_points_at_the_ink_nearest_to_where_the_character_is_seen() -> None:
    sketch = Sketch("leaf", (SQUARE, Mark(straight(48 + 90j, 52 + 99j))), ())
    assert spot(sketch, "tip") == 52 + 99j


def test_of_an_unknown_label_the_upper_right_is_shown() -> None:
    sketch = Sketch("leaf", (SQUARE,), ())
    assert spot(sketch, "no such label") == 100 + 100j


def test_copies_are_ink_too() -> None:
    dot = (Mark(straight(0j, 1 + 0j)),)
    sketch = Sketch("leaf", (SQUARE, Copy(dot, turned(90, 50 + 98j))), ())
    assert spot(sketch, "tip") == pytest.approx(50 + 99j)


def test_every_place_lies_within_the_drawing() -> None:
    assert {share for pair in SHARES.values() for share in pair if not 0 <= share <= 1} == set()


def test_every_label_is_one_of_the_vocabulary() -> None:
    labels = {label.name for organ in VOCABULARY.organs for label in organ.labels}
    assert set(SHARES) - labels == set()


def test_the_point_is_one_of_the_ink() -> None:
    sketch = Sketch("leaf", (SQUARE,), ())
    for label in SHARES:
        assert spot(sketch, label) in points_of(sketch.ink)
