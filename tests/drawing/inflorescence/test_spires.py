"""Racemes and spikes: which flowers are open, which way they face, what goes on dotted."""

from __future__ import annotations

from typing import Final

import pytest

from sallet.drawing.inflorescence.inflorescence import inflorescence
from sallet.drawing.ink import Copy, Ink, Mark
from sallet.drawing.told import specimen
from sallet.lesson.vocabulary_file import load_vocabulary

VOCABULARY: Final = load_vocabulary()


def drawn(plan: str = "raceme", count: str = "12", **words: str) -> Ink:
    given = specimen(VOCABULARY, "flowers", inflorescence=plan, flowers_in_a_cluster=count, **words)
    sketch = inflorescence(given, 200)
    assert sketch is not None
    return sketch.ink


def spots(ink: Ink, part: str) -> list[complex]:
    return [one.place.at for one in ink if isinstance(one, Copy) and one.part == part]


def high(ink: Ink, part: str) -> list[float]:
    return sorted(spot.imag for spot in spots(ink, part))


@pytest.mark.parametrize("plan", ["raceme", "one-sided raceme"])
def test_a_raceme_opens_from_below(plan: str) -> None:
    ink = drawn(plan)
    assert len(high(ink, "flower bud")) == 5
    assert max(high(ink, "flower")) < min(high(ink, "flower bud"))


def test_a_spike_has_buds_only_where_its_order_is_recorded() -> None:
    assert high(drawn("spike"), "flower bud") == []
    above = drawn("spike", flowering_order="lowest first")
    below = drawn("spike", flowering_order="middle first")
    assert max(high(above, "flower")) < min(high(above, "flower bud"))
    assert min(high(below, "flower")) > max(high(below, "flower bud"))


def test_flowers_that_open_all_at_once_are_all_open() -> None:
    assert high(drawn(flowering_order="all at once"), "flower bud") == []


def test_the_flowers_of_a_raceme_have_stalks_and_those_of_a_spike_have_none() -> None:
    stalks = [
        sum(one.part == "stalk" for one in drawn(plan) if isinstance(one, Mark))
        for plan in ("raceme", "spike")
    ]
    assert stalks == [12, 0]


def test_the_flowers_of_a_one_sided_raceme_stand_on_one_side() -> None:
    assert min(spot.real for spot in spots(drawn("one-sided raceme"), "flower")) > 0
    assert min(spot.real for spot in spots(drawn(), "flower")) < 0


def test_hanging_flowers_hang_below_where_upright_ones_stand() -> None:
    up, down = (drawn(posture=p, flowering_order="all at once") for p in ("upright", "hanging"))
    assert sum(high(down, "flower")) < sum(high(up, "flower"))
    turns = {round(one.place.turn.real) for one in down if isinstance(one, Copy)}
    assert turns == {-1}


@pytest.mark.parametrize("plan", ["raceme", "one-sided raceme", "spike"])
def test_the_stem_goes_on_dotted_where_the_number_of_flowers_is_not_recorded(plan: str) -> None:
    def dotted(ink: Ink) -> int:
        return sum(one.pen == "dotted" for one in ink if isinstance(one, Mark))

    bare = inflorescence(specimen(VOCABULARY, "flowers", inflorescence=plan), 200)
    assert bare is not None
    assert dotted(bare.ink) == dotted(drawn(plan)) + 1


def test_every_flower_of_a_raceme_has_its_bract() -> None:
    ink = drawn(bracts="leaf-like")
    assert sum(one.part == "bract" for one in ink) == 12
