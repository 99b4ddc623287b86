"""Lobes that spread like fingers."""

from __future__ import annotations

import pytest

from helpers.leaves import WHOLE, form_of, humps
from sallet.drawing.leaf.contour import BASES, TIPS
from sallet.drawing.leaf.finger_lobes import MOST, fingered
from sallet.drawing.leaf.lobes import Lobing
from sallet.drawing.leaf.outline import outline

PALM = {"lobing": "palmately lobed", "venation": "palmate"}


def fingers_counted(words: dict[str, str]) -> int:
    """Return the lobes of a drawn blade: places that lie far from the stalk's end."""
    form = form_of(words)
    far = [abs(p) for p in outline(form.blank, 200).path.points(12)]
    return humps(far, 0.04 * max(far))


@pytest.mark.parametrize("number", range(2, MOST + 1))
@pytest.mark.parametrize("base", ["wedge-shaped", "rounded", "heart-shaped"])
@pytest.mark.parametrize("shape", ["widely ovate", "circular", "ovate", "widely elliptic"])
def test_as_many_lobes_are_drawn_as_recorded(number: int, base: str, shape: str) -> None:
    words = WHOLE | PALM | {"shape": shape, "base": base, "lobes": str(number)}
    assert fingers_counted(words) == number


@pytest.mark.parametrize(("word", "number"), [("three-lobed", 3), ("five-lobed", 5)])
def test_words_that_say_a_number_have_that_number(word: str, number: int) -> None:
    words = WHOLE | {"shape": "widely ovate", "lobing": word, "lobes": "4"}
    assert fingers_counted(words) == number


def test_more_lobes_than_can_be_told_apart_are_not_said_to_be_drawn() -> None:
    form = form_of(WHOLE | PALM | {"lobes": "12"})
    assert form.lobes is None


def test_drawn_out_tips_are_narrower_than_rounded_ones() -> None:
    lobing = Lobing("palm", 3, 0.5)

    def near_tip(tip: str) -> float:
        runs = fingered(lobing, 200, BASES["rounded"], TIPS[tip].finger).right
        return max(p.real for run in runs for p in run.points if p.imag > 180)

    order = [near_tip(tip) for tip in ("long-pointed", "acuminate", "acute", "obtuse", "rounded")]
    assert order == sorted(order)
    assert len(set(order)) == 5


def test_lobes_spread_no_wider_than_the_base_allows() -> None:
    lobing = Lobing("palm", 7, 0.5)
    wedge, straight, heart = (
        min(tip.imag for _, tip in fingered(lobing, 200, BASES[name], None).axes)
        for name in ("wedge-shaped", "rounded", "heart-shaped")
    )
    assert wedge > straight > 0 > heart


def test_deeper_notches_lie_nearer_the_stalk() -> None:
    def notch(depth: float) -> complex:
        return fingered(Lobing("palm", 3, depth), 200, BASES["rounded"], 0.0).right[2].points[-1]

    assert abs(notch(0.8)) < abs(notch(0.5)) < abs(notch(0.2))
