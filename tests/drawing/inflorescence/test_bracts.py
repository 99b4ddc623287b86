"""One bract: its form and edge."""

from __future__ import annotations

from itertools import combinations, product
from typing import Final

import pytest
from shapely.geometry import Polygon

from sallet.drawing.inflorescence.bracts import SHAPES, Kind, Run, bract
from sallet.drawing.ink import Copy, Ink, Mark, box, plain

RUN: Final = Run(0j, 2 + 20j, 6 + 38j)
EDGES: Final = ("", "forked", "fringed", "spiny")


def drawn(form: str = "", edge: str = "", length: float = 40) -> Ink:
    return bract(Kind(form, edge), RUN, length, "bract")


@pytest.mark.parametrize(("form", "edge"), list(product(SHAPES, EDGES)))
@pytest.mark.parametrize("length", [12, 40])
def test_a_bract_is_one_thing_with_one_name(form: str, edge: str, length: float) -> None:
    (one,) = drawn(form, edge, length)
    assert isinstance(one, Mark | Copy)
    assert one.part == "bract"


@pytest.mark.parametrize("form", SHAPES)
@pytest.mark.parametrize("length", [12, 40])
def test_its_outline_does_not_cross_itself(form: str, length: float) -> None:
    outlines = [mark.path for mark in plain(drawn(form, "", length)) if mark.path.closed]
    assert len(outlines) == (form != "strip")
    assert [
        p for p in outlines if not Polygon([(q.real, q.imag) for q in p.points()]).is_valid
    ] == []


def test_every_form_and_every_edge_looks_otherwise() -> None:
    forms = [drawn(form) for form in SHAPES]
    edges = [drawn("", edge) for edge in EDGES]
    assert all(a != b for a, b in combinations(forms, 2))
    assert all(a != b for a, b in combinations(edges, 2))


def test_a_leaf_is_broader_than_a_blade_and_a_blade_than_a_strip() -> None:
    widths = [box(drawn(form)).width for form in ("strip", "", "blade", "leaf", "petal")]
    assert widths == sorted(widths)


def test_a_forked_bract_has_an_axis_and_two_pairs_of_forks() -> None:
    assert len(list(plain(drawn("", "forked")))) == 5


@pytest.mark.parametrize(("length", "hairs"), [(40, 12), (20, 8)])
def test_hairs_stand_on_both_edges_and_fewer_on_a_small_bract(length: float, hairs: int) -> None:
    assert len(list(plain(drawn("", "fringed", length)))) == 1 + hairs


def test_what_is_not_recorded_is_dotted() -> None:
    (one,) = bract(Kind(), RUN, 40, "bract", "dotted")
    assert isinstance(one, Mark)
    assert one.pen == "dotted"
