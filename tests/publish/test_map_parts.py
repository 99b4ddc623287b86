"""How parts are drawn: a colour and a pattern each, told apart without colours too."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

import pytest

from helpers.values import VOCABULARY
from helpers.workshop import lesson_of
from sallet.publish.map_parts import (
    LOOKS,
    MARKS,
    OF_ORGAN,
    OF_PART,
    STRIPES,
    em,
    look_of,
    marks,
    stripes,
)
from sallet.publish.palette import OKABE_ITO

if TYPE_CHECKING:
    from sallet.lesson.model import Timing


def timing_of(part: str) -> Timing:
    """Return a row of Season for a part."""
    return lesson_of(f"## Season\n- {part}: May\n").season[0]


@pytest.mark.parametrize(
    ("part", "key"),
    [("leaves", "leaves"), ("young shoots", "leaves"), ("shoot tips", "leaves"),
     ("rosette", "leaves"), ("buds", "leaves"), ("flower buds", "flowers"), ("petals", "flowers"),
     ("haws", "fruit"), ("green fruit", "fruit"), ("nuts", "seeds"), ("green seeds", "seeds"),
     ("tubers", "roots"), ("growth below ground", "roots"), ("stem", "stem"), ("bark", "stem"),
     ("sap", "stem"), ("dead stems", "stem"), ("whole plant", "plant"), ("all parts", "plant"),
     ("wibbles", "plant")],
)  # fmt: skip
def test_a_part_is_drawn_as_what_a_forager_takes_it_for(part: str, key: str) -> None:
    assert look_of(timing_of(part)).key == key


def test_every_organ_of_the_vocabulary_has_a_look() -> None:
    assert set(OF_ORGAN) == {organ.name for organ in VOCABULARY.organs}
    assert {*OF_ORGAN.values(), *OF_PART.values()} == {look.key for look in LOOKS}


def test_every_part_with_a_look_of_its_own_is_in_the_vocabulary() -> None:
    known = {part.name for organ in VOCABULARY.organs for part in organ.parts}
    assert set(OF_PART) <= known


def test_no_two_kinds_of_part_share_a_colour_or_a_pattern() -> None:
    assert len({look.colour for look in LOOKS}) == len(LOOKS)
    assert len({look.pattern for look in LOOKS}) == len(LOOKS)
    assert {look.colour for look in LOOKS} == set(OKABE_ITO) - {"black"}


def test_every_pattern_but_the_solid_one_is_drawn_and_no_two_alike() -> None:
    drawn = {look.pattern: str(marks(look)) for look in LOOKS}
    assert [pattern for pattern, lines in drawn.items() if not lines] == ["solid"]
    assert len(set(drawn.values())) == len(LOOKS)


def test_no_mark_leaves_its_bar() -> None:
    bar = 0.84
    strokes = [*(s for found in MARKS.values() for s in found), *(s for _, s in STRIPES)]
    for stroke in strokes:
        middle = float(stroke.y.removesuffix("%")) / 100 * bar
        assert middle - stroke.thick / 2 >= -0.001
        assert middle + stroke.thick / 2 <= bar + 0.001


def test_what_harms_has_stripes_in_ink_on_paper_and_room_between_them() -> None:
    (rim, below), (stripe, above) = STRIPES
    assert (rim, stripe) == ("rim", "stripe")
    assert sum(below.dashes) == pytest.approx(sum(above.dashes))
    assert below.dashes[-1] == above.dashes[-1] > 0
    assert re.findall(r'class="(\w+)"', stripes()) == ["rim", "stripe"]


@pytest.mark.parametrize(
    ("length", "written"),
    [(1, "1em"), (0.5, "0.5em"), (10, "10em"), (0, "0em"), (-0.25, "-0.25em")],
)
def test_a_length_is_written_without_needless_noughts(length: float, written: str) -> None:
    assert em(length) == written
