"""Corymbs, cymes and coils."""

from __future__ import annotations

from typing import Final

from sallet.drawing.inflorescence.inflorescence import inflorescence
from sallet.drawing.ink import Copy, Ink, Mark, box
from sallet.drawing.told import specimen
from sallet.lesson.vocabulary_file import load_vocabulary

VOCABULARY: Final = load_vocabulary()


def drawn(plan: str, **words: str) -> Ink:
    sketch = inflorescence(specimen(VOCABULARY, "flowers", inflorescence=plan, **words), 200)
    assert sketch is not None
    return sketch.ink


def lines(ink: Ink, part: str) -> list[tuple[complex, complex]]:
    return [
        (one.path.start, one.path.end)
        for one in ink if isinstance(one, Mark) and one.part == part
    ]  # fmt: skip


def spots(ink: Ink, part: str) -> list[complex]:
    return [one.place.at for one in ink if isinstance(one, Copy) and one.part == part]


def test_the_stalks_of_a_corymb_start_at_different_heights_those_of_an_umbel_at_one() -> None:
    corymb = drawn("corymb", flowers_in_a_cluster="9")
    umbel = drawn("umbel", flowers_in_a_cluster="9")
    assert len({round(start.imag, 3) for start, _ in lines(corymb, "stalk")}) >= 8
    assert len({round(start.imag, 3) for start, _ in lines(umbel, "ray")}) == 1


def test_the_lowest_stalks_of_a_corymb_are_the_longest() -> None:
    stalks = sorted(
        lines(drawn("corymb", flowers_in_a_cluster="9"), "stalk"), key=lambda s: s[0].imag
    )
    assert abs(stalks[0][1] - stalks[0][0]) > abs(stalks[-1][1] - stalks[-1][0])


def test_a_domed_corymb_is_higher_than_a_flat_one() -> None:
    assert (
        box(drawn("corymb", cluster_shape="domed")).top
        > box(drawn("corymb", cluster_shape="flat")).top
    )


def test_the_outermost_flowers_are_open_where_they_open_first() -> None:
    ink = drawn("corymb", flowers_in_a_cluster="15", flowering_order="outermost first")
    out, buds = spots(ink, "flower"), spots(ink, "flower bud")
    assert max(abs(spot.real) for spot in out) > max(abs(spot.real) for spot in buds)


def test_the_middle_flower_of_a_cyme_is_open_and_its_youngest_are_buds() -> None:
    ink = drawn("cyme", flowers_in_a_cluster="7")
    assert len(spots(ink, "flower")) == 3
    assert len(spots(ink, "flower bud")) == 4
    assert min(abs(spot.real) for spot in spots(ink, "flower")) < 1


def test_a_cyme_of_no_recorded_number_forks_on_dotted() -> None:
    dotted = [one for one in drawn("cyme") if isinstance(one, Mark) and one.pen == "dotted"]
    assert len(dotted) > 6


def test_the_tip_of_a_coil_lies_within_it() -> None:
    (axis,) = lines(drawn("coiled cyme", flowers_in_a_cluster="9"), "axis")
    room = box(drawn("coiled cyme", flowers_in_a_cluster="9"))
    assert room.left + 0.3 * room.width < axis[1].real < room.right - 0.2 * room.width


def test_heads_of_no_recorded_number_have_dotted_stalks() -> None:
    for words, pen in (({"heads on a stalk": "a few"}, "line"), ({}, "dotted")):
        ink = drawn("heads in a cluster", **words)
        assert {m.pen for m in ink if isinstance(m, Mark) and m.part == "stalk"} == {pen}


def test_many_heads_are_more_than_a_few_and_those_more_than_one() -> None:
    numbers = [
        len(lines(drawn("heads in a cluster", heads_on_a_stalk=heads), "stalk"))
        for heads in ("one", "a few", "many")
    ]
    assert numbers == [1, 4, 24]
