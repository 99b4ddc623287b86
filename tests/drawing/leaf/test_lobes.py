"""Lobes in two rows: as many as recorded, cut as deep as recorded."""

from __future__ import annotations

import pytest

from helpers.leaves import WHOLE, form_of, humps, ring
from sallet.drawing.leaf.blade_tables import DEPTHS, LOBINGS
from sallet.drawing.leaf.outline import outline

FEATHERS = [name for name, lobing in LOBINGS.items() if lobing.pattern == "feather"]
SHAPES = ("elliptic", "ovate", "obovate", "oblong", "narrowly elliptic", "widely ovate")


def lobes_counted(words: dict[str, str]) -> int:
    """Return the lobes of a drawn blade: places where an edge stands out beyond its neighbours."""
    form = form_of(words)
    points = outline(form.blank, 200).path.points(12)
    top = max(range(len(points)), key=lambda n: points[n].imag)
    wide = max(p.real for p in points)
    count = 1
    for edge in (points[: top + 1], points[top:]):
        across = [0.0, *(abs(p.real) for p in edge), 0.0]
        # The uppermost is the side of the end lobe.
        count += humps(across, 0.035 * wide) - 1
    return count


@pytest.mark.parametrize("lobing", [f for f in FEATHERS if f != "cut twice"])
@pytest.mark.parametrize("number", range(3, 10))
def test_as_many_lobes_are_drawn_as_recorded(lobing: str, number: int) -> None:
    for shape in SHAPES:
        words = WHOLE | {"shape": shape, "lobing": lobing, "lobes": str(number)}
        words["base"] = "wedge-shaped"
        assert lobes_counted(words) == number, shape


@pytest.mark.parametrize("number", range(3, 10))
def test_lobes_follow_feathered_veins_where_no_pattern_is_said(number: int) -> None:
    words = WHOLE | {"lobing": "lobed", "venation": "pinnate", "lobes": str(number)}
    assert lobes_counted(words) == number


def test_deeper_lobes_leave_less_of_the_blade() -> None:
    areas = []
    for depth in DEPTHS:
        words = WHOLE | {"lobing": "pinnately lobed", "depth of the lobes": depth}
        path = outline(form_of(words).blank, 200).path
        hull = ring(path).convex_hull.area
        areas.append(hull - abs(sum(
            (p.conjugate() * q).imag for p, q in zip(path.points(), path.points()[1:], strict=False)
        )) / 2)  # fmt: skip
    assert areas == sorted(areas)
    assert areas[-1] > 2 * areas[0]


def test_lobes_that_look_back_have_their_tips_below_their_roots() -> None:
    words = WHOLE | {"lobing": "backward-lobed", "base": "tapering"}
    drawn = outline(form_of(words).blank, 200)
    side = [(foot, tip) for foot, tip in drawn.axes if tip.real > 1]
    assert len(side) == 5
    assert all(tip.imag < foot.imag for foot, tip in side)


def test_the_end_lobe_of_a_lyre_is_the_largest() -> None:
    drawn = outline(form_of(WHOLE | {"lobing": "lyre-shaped"}).blank, 200)
    points = [p for p in drawn.path.points() if p.real > 0]
    end = max(p.real for p in points if p.imag > 110)
    assert max(p.real for p in points if 20 < p.imag < 95) < 0.8 * end


def test_base_and_tip_are_those_recorded() -> None:
    words = WHOLE | {"lobing": "pinnately lobed"}
    hearted = outline(form_of(words | {"base": "heart-shaped"}).blank, 200).path.points()
    wedged = outline(form_of(words | {"base": "wedge-shaped"}).blank, 200).path.points()
    notched = outline(form_of(words | {"tip": "heart-tipped"}).blank, 200)
    assert min(p.imag for p in hearted) < -15
    assert min(p.imag for p in wedged) > -1
    assert notched.tip.imag < 175


def test_each_lobe_has_an_axis() -> None:
    drawn = outline(form_of(WHOLE | {"lobing": "pinnately lobed", "lobes": "6"}).blank, 200)
    right = sum(tip.real > 1 for _, tip in drawn.axes)
    left = sum(tip.real < -1 for _, tip in drawn.axes)
    assert (right, left, len(drawn.axes)) == (2, 3, 6)
