"""The stalk of a cluster and its place."""

from __future__ import annotations

from itertools import combinations
from typing import Final

import pytest

from sallet.drawing.inflorescence.form import InflorescenceForm, inflorescence_form
from sallet.drawing.inflorescence.seat import PLACES, Seat, seat
from sallet.drawing.ink import Box, Ink, plain
from sallet.drawing.told import specimen
from sallet.lesson.vocabulary_file import load_vocabulary

VOCABULARY: Final = load_vocabulary()
ROOM: Final = Box(-100, 0, 100, 120)


def seated(plan: str = "umbel", **words: str) -> Seat:
    form = inflorescence_form(specimen(VOCABULARY, "flowers", inflorescence=plan, **words))
    assert isinstance(form, InflorescenceForm)
    return seat(form, ROOM)


def parts(ink: Ink) -> set[str]:
    return {mark.part for mark in plain(ink)}


def test_every_place_of_the_vocabulary_is_drawn() -> None:
    label = VOCABULARY.subject("flowers").label("position")
    assert label is not None
    assert {state.draw["at"] for state in label.states} == set(PLACES)


def test_every_place_looks_otherwise() -> None:
    drawn = [draw(40, ROOM, 0) for draw in PLACES.values()]
    assert all(a != b for a, b in combinations(drawn, 2))


def test_leaves_are_dotted() -> None:
    for draw in PLACES.values():
        pens = {mark.pen for mark in plain(draw(40, ROOM, 0)) if mark.part == "leaf"}
        assert pens <= {"dotted"}


def test_a_stalk_of_no_recorded_length_is_dotted() -> None:
    (mark,) = plain(seated().ink)
    assert mark.pen == "dotted"
    assert seated().depth == 0


def test_a_long_stalk_is_longer_than_the_cluster_is_wide_or_its_rays_and_a_short_one_shorter() -> (
    None
):
    # The room is as wide as the rays of this umbel are long at most.
    assert seated(cluster_stalk="long").depth > 120
    assert 0 < seated(cluster_stalk="short").depth < 100
    assert seated(cluster_stalk="none to speak of").depth == 0


@pytest.mark.parametrize(
    ("position", "part"),
    [("at the top", "leaf"), ("in the leaf axils", "leaf"), ("opposite a leaf", "stem"),
     ("at the tips of side shoots", "shoot"), ("on bare twigs", "twig"),
     ("on a leafless stalk from the ground", "soil"), ("straight from the ground", "soil")],
)  # fmt: skip
def test_a_place_shows_what_it_names(position: str, part: str) -> None:
    assert part in parts(seated(position=position).ink)


def test_a_hanging_catkin_hangs_from_its_twig() -> None:
    form = inflorescence_form(
        specimen(VOCABULARY, "flowers", inflorescence="catkin", position="on bare twigs")
    )
    assert form is not None
    assert parts(seat(form, Box(-10, -200, 10, 0)).ink) >= {"twig"}


def test_whorls_in_the_axils_have_a_pair_of_leaves_each() -> None:
    ink = seated("whorls", position="in the leaf axils").ink
    assert sum(mark.part == "leaf" for mark in plain(ink)) == 6
