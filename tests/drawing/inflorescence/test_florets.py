"""Single flowers of a cluster: from which side, how large, and which of their characters show."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

import pytest

from sallet.drawing.inflorescence.cluster import cluster
from sallet.drawing.inflorescence.florets import (
    FLOWER,
    UNCOUNTED,
    bud,
    bulbil,
    florets,
    flower_characters,
    sites,
    width_of,
)  # fmt: skip
from sallet.drawing.inflorescence.form import inflorescence_form
from sallet.drawing.inflorescence.space import DOWN, ORIGIN, UP, Eye, Vec
from sallet.drawing.ink import Ink, Mark, box, plain
from sallet.drawing.told import Told, specimen
from sallet.lesson.vocabulary_file import load_vocabulary

if TYPE_CHECKING:
    from sallet.drawing.inflorescence.cluster import Cluster

VOCABULARY: Final = load_vocabulary()
EYE: Final = Eye(0)


def told(plan: str, **words: str) -> Told:
    return specimen(VOCABULARY, "flowers", inflorescence=plan, **words)


def plain_of(given: Told) -> Cluster:
    form = inflorescence_form(given)
    assert form is not None
    return cluster(form)


def width(plan: str, **words: str) -> float:
    return width_of(plain_of(told(plan, **words)), 200)


@pytest.mark.parametrize("plan", ["umbel", "raceme", "spike", "head", "corymb", "cyme"])
def test_more_flowers_are_drawn_smaller(plan: str) -> None:
    widths = [width(plan, flowers_in_a_cluster=str(count)) for count in (3, 9, 20)]
    assert widths == sorted(widths, reverse=True)


def test_flowers_are_open_circles_where_their_petals_are_not_recorded() -> None:
    given = told("umbel", rays="9")
    kind = florets(given, plain_of(given), 40, 200)
    assert len(set(kind.views)) == 1
    ((mark,),) = set(kind.views)
    assert isinstance(mark, Mark)
    assert box((mark,)).width == pytest.approx(box((mark,)).height)
    assert flower_characters(given, "umbel", 40) == ()


def test_petals_are_shown_where_there_is_room_for_them() -> None:
    given = told("umbel", rays="9", petals="5", colour="white")
    kind = florets(given, plain_of(given), 40, 200)
    assert [sum(m.part == "petal" for m in plain(kind.views[0]))] == [5]
    assert [c.words for c in flower_characters(given, "umbel", 40)] == ["petals: 5"]
    assert flower_characters(given, "umbel", 8) == ()


def test_a_five_petalled_flower_does_not_pass_for_a_daisy_like_head() -> None:
    heads = told("heads in a cluster", petals="5")
    assert flower_characters(heads, "heads in a cluster", 40) == ()


def test_flowers_count_only_where_their_number_is_recorded() -> None:
    for words, part in (({"rays": "9"}, FLOWER), ({}, UNCOUNTED)):
        given = told("umbel", **words)
        assert florets(given, plain_of(given), 40, 200).part == part


def test_a_flower_that_faces_the_eye_is_seen_from_above_and_others_from_the_side() -> None:
    given = told("umbel", rays="9", petals="5")
    kind = florets(given, plain_of(given), 40, 200)
    seen = [
        kind.facing(EYE, ORIGIN, way).piece for way in (Vec(0, -1, 0), Vec(0, -1, 0.8), UP, DOWN)
    ]
    assert seen == [kind.views[0], kind.views[1], kind.views[2], kind.views[2]]


def test_a_flower_that_looks_down_is_turned_over() -> None:
    turns = [sites(10).facing(EYE, ORIGIN, way).place.turn for way in (UP, DOWN)]
    assert turns[0] == pytest.approx(1)
    assert turns[1] == pytest.approx(-1)


def test_a_bud_of_a_counted_flower_is_a_flower_too() -> None:
    assert sites(10).closed(EYE, ORIGIN, UP).part.split() == [FLOWER, "bud"]


@pytest.mark.parametrize("piece", [bud(20), bulbil(20)])
def test_buds_and_bulbils_stand_on_their_foot(piece: Ink) -> None:
    room = box(piece)
    assert room.bottom == pytest.approx(-0.8)
    assert room.left == pytest.approx(-room.right)
