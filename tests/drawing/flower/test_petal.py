"""One petal laid flat."""

from __future__ import annotations

import pytest

from sallet.drawing.flower.petal import BLADES, ENDS, cut, petal, petal_ink
from sallet.drawing.ink import Curve, Path, plain


@pytest.mark.parametrize("tip", ENDS)
@pytest.mark.parametrize("shape", BLADES)
def test_a_petal_is_as_long_and_as_wide_as_asked(shape: str, tip: str) -> None:
    one = petal(BLADES[shape], tip, 60, 20)
    points = one.outline.points() + [p for line in one.inner for p in line.points()]
    across = [p.real for p in one.outline.points()]
    assert max(p.imag for p in points) == pytest.approx(60, rel=0.05)
    assert [min(across), max(across)] == pytest.approx([-20, 20], rel=0.05)


@pytest.mark.parametrize("tip", ENDS)
@pytest.mark.parametrize("shape", BLADES)
def test_a_petal_is_the_same_on_both_sides(shape: str, tip: str) -> None:
    rim = petal(BLADES[shape], tip, 60, 20).rim
    assert rim.mirrored().reversed().points() == pytest.approx(rim.points())


@pytest.mark.parametrize(("tip", "depth"), [("half split", 0.5), ("split", 0.86)])
def test_a_split_petal_is_cut_as_deep_as_the_word_says(tip: str, depth: float) -> None:
    one = petal(BLADES["oval"], tip, 100, 30)
    assert one.end.end == pytest.approx(1j * 100 * (1 - depth))


def test_only_what_is_known_of_a_petal_is_drawn_with_a_full_line() -> None:
    one = petal(BLADES["oval"], "open", 60, 20)
    pens = {
        (foot, dotted): [mark.pen for mark in plain(petal_ink(one, foot=foot, dotted=dotted))]
        for foot in ("shut", "off")
        for dotted in (False, True)
    }
    assert pens == {
        ("shut", False): ["line"],
        ("shut", True): ["paper", "line", "dotted"],
        ("off", False): ["paper", "line"],
        ("off", True): ["paper", "line", "line", "dotted"],
    }


def test_a_cut_curve_lies_on_the_whole() -> None:
    whole = Path(0j, (Curve(0 + 10j, 10 + 20j, 30 + 20j),))
    rest = cut(whole, 0.25)
    assert rest.points(steps=6) == pytest.approx(whole.points(steps=8)[2:])


def test_a_path_is_moved_point_by_point() -> None:
    whole = Path(0j, (Curve(0 + 10j, 10 + 20j, 30 + 20j),), closed=True)
    assert whole.mapped(lambda p: p + 1j).points() == [p + 1j for p in whole.points()]
