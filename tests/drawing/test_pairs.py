"""Two plants side by side."""

from __future__ import annotations

import pytest

from helpers.drawings import facts_of, points_of
from sallet.drawing.figures import figures
from sallet.drawing.pairs import SMALLEST, Pair, Plant, pairs
from sallet.lesson.vocabulary_file import load_vocabulary

VOCABULARY = load_vocabulary()
LEAF = "### Leaves\n- division: simple\n- shape: elliptic\n- margin: entire\n- tip: acute\n- base: rounded\n"


def plant(identification: str) -> Plant:
    """Return a plant by its facts."""
    facts = facts_of(identification)
    return Plant(facts, figures(facts, VOCABULARY))


def pairs_of(this: str, that: str) -> list[Pair]:
    """Return the drawings in which two plants differ."""
    return list(pairs(plant(this), plant(that), VOCABULARY))


def differences(pair: Pair) -> list[tuple[int, str, str, str, bool]]:
    """Return the differences of a pair without their places."""
    return [(d.number, d.label, d.this, d.that, d.certain) for d in pair.differences]


def test_what_differs_is_marked_on_both() -> None:
    (pair,) = pairs_of(
        LEAF + "- venation: parallel\n- attachment: stalked\n",
        LEAF + "- venation: net-veined\n- attachment: stalkless\n",
    )
    assert (pair.organ, pair.words) == ("leaves", "leaf")
    assert differences(pair) == [
        (1, "attachment", "stalked", "stalkless", True),
        (2, "venation", "parallel", "net-veined", False),
    ]
    for difference in pair.differences:
        assert difference.at_this in points_of(pair.this.ink)
        assert difference.at_that in points_of(pair.that.ink)


def test_plants_that_do_not_differ_have_no_drawing_side_by_side() -> None:
    assert pairs_of(LEAF, LEAF) == []


def test_silence_marks_nothing() -> None:
    assert pairs_of(LEAF + "- venation: parallel\n", LEAF) == []


def test_a_difference_with_exceptions_is_not_certain() -> None:
    (pair,) = pairs_of(
        "### Leaves\n- rises from the ground: each on its own stalk\n",
        "### Leaves\n- rises from the ground: usually in pairs one wrapping the other, "
        "sometimes each on its own stalk\n",
    )
    assert differences(pair) == [
        (
            1, "rises from the ground", "each on its own stalk",
            "usually in pairs one wrapping the other, sometimes each on its own stalk", False,
        )
    ]  # fmt: skip


def test_lower_leaves_stand_beside_lower_leaves() -> None:
    lower = "- attachment: stalked (lower leaves), stalkless (upper leaves)\n"
    other = "- attachment: stalkless (lower leaves), stalked (upper leaves)\n"
    found = pairs_of(LEAF + lower, LEAF + other)
    assert [differences(pair) for pair in found] == [
        [(1, "attachment", "stalked", "stalkless", True)],
        [(1, "attachment", "stalkless", "stalked", True)],
    ]


@pytest.mark.parametrize(
    ("ours", "theirs"), [("10 cm", "5 cm"), ("5 cm", "10 cm"), ("8 mm", "8 mm")]
)
def test_both_are_drawn_at_one_scale_and_the_larger_is_full_size(ours: str, theirs: str) -> None:
    (pair,) = pairs_of(
        LEAF + f"- venation: parallel\n- length: {ours}\n",
        LEAF + f"- venation: net-veined\n- length: {theirs}\n",
    )
    assert pair.one_scale
    assert pair.this.scale == pytest.approx(pair.that.scale)
    heights = [max(p.imag for p in points_of(s.ink)) for s in (pair.this, pair.that)]
    assert max(heights) == pytest.approx(200, abs=0.1)


def test_what_would_be_too_small_keeps_a_scale_of_its_own() -> None:
    (pair,) = pairs_of(
        LEAF + "- venation: parallel\n- length: 20 cm\n",
        LEAF + f"- venation: net-veined\n- length: {20 * SMALLEST * 0.9:.1f} cm\n",
    )
    assert not pair.one_scale
    assert pair.this.scale != pytest.approx(pair.that.scale)


def test_without_a_recorded_size_nothing_is_said_of_scale() -> None:
    (pair,) = pairs_of(LEAF + "- venation: parallel\n", LEAF + "- venation: net-veined\n")
    assert not pair.one_scale


def test_a_size_is_never_a_sure_difference_and_stands_behind_what_is() -> None:
    (pair,) = pairs_of(
        LEAF + "- length: 20 cm\n- attachment: stalked\n",
        LEAF + "- length: 5 cm\n- attachment: stalkless\n",
    )
    assert differences(pair) == [
        (1, "attachment", "stalked", "stalkless", True),
        (2, "length", "20 cm", "5 cm", False),
    ]
