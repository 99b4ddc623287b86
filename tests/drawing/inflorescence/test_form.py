"""What is read of a cluster before anything is drawn."""

from __future__ import annotations

from typing import Final

import pytest

from sallet.drawing.inflorescence.bracts import Kind
from sallet.drawing.inflorescence.form import (
    FACES,
    HEADS,
    ORDERS,
    OUTLINES,
    SPATHES,
    STALKS,
    USES,
    InflorescenceForm,
    inflorescence_form,
)  # fmt: skip
from sallet.drawing.inflorescence.whorls import Whorl
from sallet.drawing.told import characters, specimen
from sallet.lesson.vocabulary_file import load_vocabulary

VOCABULARY: Final = load_vocabulary()
SUBJECT: Final = VOCABULARY.subject("flowers")


def form(plan: str = "compound umbel", **words: str) -> InflorescenceForm:
    found = inflorescence_form(specimen(VOCABULARY, "flowers", inflorescence=plan, **words))
    assert found is not None
    return found


def names(label: str) -> set[str]:
    known = SUBJECT.label(label)
    assert known is not None
    return {state.name for state in known.states}


def test_every_kind_of_cluster_is_known() -> None:
    assert set(USES) == names("inflorescence")


def test_the_tables_speak_the_words_of_the_vocabulary() -> None:
    assert set(FACES) == names("posture")
    assert set(STALKS) == names("cluster stalk")
    assert set(HEADS) == names("heads on a stalk")
    assert names("spathe") - set(SPATHES) == {"soon falling"}
    assert set().union(*OUTLINES.values()) == names("cluster shape")
    assert set().union(*ORDERS.values()) == names("flowering order")
    labels = {label.name for label in SUBJECT.labels}
    assert set().union(*USES.values()) <= labels


def test_a_spathe_that_has_fallen_is_not_drawn() -> None:
    assert form("spadix", spathe="soon falling").spathe is None


def test_states_of_the_bracts_that_hold_together_are_read_together() -> None:
    found = form(bracteoles="papery, fringed", number_of_bracteoles="about 5")
    assert found.bracteoles is not None
    assert found.bracteoles.value == Whorl(Kind("paper", "fringed"))
    assert [c.words for c in characters(found)][1:] == [
        "bracteoles: papery, fringed",
        "number of bracteoles: 5 (recorded: about 5)",
    ]


def test_what_is_seldom_so_is_not_drawn_beside_what_is_usual() -> None:
    found = form(bracts="turned down, sometimes forked")
    assert found.bracts is not None
    assert found.bracts.value == Whorl(Kind(posture="down"))


def test_no_bracts_have_no_number() -> None:
    found = form(bracts="none", number_of_bracts="3")
    assert found.bracts is not None
    assert found.bracts.value.none
    assert found.bract_number is None


def test_a_number_of_bracts_says_that_there_are_some() -> None:
    found = form(number_of_bracts="3")
    assert found.bracts is not None
    assert found.bracts.value == Whorl()
    assert [c.label for c in characters(found)] == ["inflorescence", "number of bracts"]


@pytest.mark.parametrize("plan", ["umbel", "head", "raceme"])
def test_that_there_are_no_bracts_is_not_said_where_nothing_tells_it_apart(plan: str) -> None:
    assert form(plan, bracts="none").bracts is None


def test_the_rays_of_an_umbel_go_before_the_number_of_its_flowers() -> None:
    found = form("umbel", rays="9", flowers_in_a_cluster="30")
    assert found.rays is not None
    assert found.rays.value == 9
    assert found.flowers is None


def test_a_cluster_is_measured_along_its_larger_side() -> None:
    umbel = form("umbel", cluster_width="6 cm", cluster_length="4 cm")
    spike = form("spike", cluster_width="1 cm", cluster_length="10 cm")
    assert (umbel.width and umbel.width.value, umbel.length) == (60, None)
    assert (spike.width, spike.length and spike.length.value) == (None, 100)
