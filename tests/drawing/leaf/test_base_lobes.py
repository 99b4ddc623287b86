"""Lobes at the base of a blade."""

from __future__ import annotations

import pytest

from sallet.drawing.leaf.base_lobes import BASE_LOBES
from sallet.drawing.leaf.contour import BASES

MIDDLE, LOW, LENGTH = 60 + 50j, -40.0, 200.0


def test_every_kind_is_used() -> None:
    assert {base.lobes for base in BASES.values() if base.lobes} == set(BASE_LOBES)


@pytest.mark.parametrize("kind", BASE_LOBES)
def test_a_lobe_runs_from_the_stalk_below_it_and_up_to_the_widest_place(kind: str) -> None:
    inner, outer = BASE_LOBES[kind](MIDDLE, LOW, LENGTH)
    assert inner.points[0] == 0j
    assert inner.points[-1] == pytest.approx(outer.points[0])
    assert outer.points[-1] == pytest.approx(MIDDLE)
    points = (*inner.points, *outer.points)
    assert min(p.real for p in points) >= 0
    assert LOW - 3 <= min(p.imag for p in points) < 0
    assert (inner.toothed, outer.toothed) == (False, True)


def test_barbs_point_down_or_out_and_ears_are_small() -> None:
    arrow, spear, ears = (BASE_LOBES[k](MIDDLE, LOW, LENGTH)[0] for k in ("arrow", "spear", "ears"))
    assert arrow.points[-1].imag == LOW
    assert arrow.points[-1].real < MIDDLE.real < spear.points[-1].real
    assert max(p.real for p in ears.points) < 0.6 * MIDDLE.real
