"""Divided blades: leaflets counted back from the drawing."""

from __future__ import annotations

import pytest

from helpers.drawings import parts_of
from helpers.leaves import leaves_told, values_of
from sallet.drawing.leaf.compound import KINDS, compound_ink, division
from sallet.drawing.leaf.division import PATTERNS

PLAIN = {
    "leaflet shape": "ovate", "leaflet margin": "entire", "leaflet tip": "acute",
    "leaflet base": "rounded",
}  # fmt: skip


def parts(words: dict[str, str], size: float = 200) -> dict[str, int]:
    """Return how often each part of a divided blade is drawn."""
    form = division(leaves_told(PLAIN | words))
    assert form is not None
    return parts_of(compound_ink(form, size))


@pytest.mark.parametrize(
    ("how", "numbers"),
    [
        ("once pinnate", range(2, 24)), ("pinnate with an end leaflet", range(3, 24, 2)),
        ("pinnate without an end leaflet", range(2, 24, 2)), ("palmate", range(2, 10)),
        ("pinnate with a tendril", range(2, 24, 2)), ("foot-like", range(3, 12, 2)),
        ("large and small leaflets mixed", range(2, 16)),
    ],
)  # fmt: skip
def test_as_many_leaflets_as_recorded(how: str, numbers: range) -> None:
    for number in numbers:
        drawn = parts({"division": how, "leaflets": str(number)})
        assert (drawn["leaflet"], drawn["unknown"]) == (number, 0), number


@pytest.mark.parametrize(
    ("how", "number"), [("trifoliate", 3), ("twice in threes", 9), ("thrice in threes", 27)]
)
def test_words_that_say_a_number_have_it(how: str, number: int) -> None:
    assert parts({"division": how})["leaflet"] == number


@pytest.mark.parametrize("pairs", range(1, 12))
def test_as_many_pairs_as_recorded_and_an_end_that_is_not_recorded_is_dotted(pairs: int) -> None:
    drawn = parts({"division": "once pinnate", "pairs of leaflets": str(pairs)})
    assert (drawn["leaflet"], drawn["unknown"]) == (2 * pairs, 1)
    assert drawn["dotted"] > 0


@pytest.mark.parametrize("how", ["once pinnate", "palmate", "foot-like", "pinnate with a tendril"])
def test_without_a_number_some_leaflets_are_dotted(how: str) -> None:
    drawn = parts({"division": how})
    assert drawn["unknown"] > 0
    assert drawn["dotted"] > 0


def test_many_are_more_than_anyone_counts() -> None:
    drawn = parts({"division": "pinnate with an end leaflet", "leaflets": "many"})
    assert drawn["leaflet"] >= 24


def test_small_leaflets_stand_between_large_ones() -> None:
    drawn = parts({"division": "large and small leaflets mixed", "leaflets": "7"})
    assert (drawn["leaflet"], drawn["small"]) == (7, 6)


def test_a_tendril_ends_the_leaf() -> None:
    assert parts({"division": "pinnate with a tendril", "leaflets": "6"})["tendril"] == 1
    assert parts({"division": "once pinnate", "leaflets": "6"})["tendril"] == 0


def test_leaflets_of_no_recorded_shape_are_dotted() -> None:
    form = division(leaves_told({"division": "palmate", "leaflets": "5"}))
    assert form is not None
    drawn = parts_of(compound_ink(form, 200))
    # Each with its stalk, of which nothing is recorded either.
    assert (drawn["leaflet"], drawn["line"], drawn["dotted"]) == (5, 0, 10)


def test_every_pattern_is_drawn_at_any_size() -> None:
    assert set(KINDS) == {pattern.kind for pattern in PATTERNS.values()}
    for how in values_of("division"):
        if how in PATTERNS:
            for size in (40, 200, 320):
                assert sum(parts({"division": how}, size).values()) > 2
