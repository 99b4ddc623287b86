"""The outline of a blade: every combination of shape, margin, tip and base."""

from __future__ import annotations

from itertools import combinations, product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from helpers.leaves import WHOLE, form_of, ring
from helpers.outlines import LABELS, TABLES, faults_of
from sallet.drawing.leaf.blade_tables import LOBINGS, SHAPES
from sallet.drawing.leaf.margin import MARGINS
from sallet.drawing.leaf.outline import outline

HIGHEST = 0.7
"""A blade that is widest higher up, near its tip, has no room for an end lobe."""


def pairs() -> list[dict[str, str]]:
    """Return combinations in which every two words of different labels stand together."""
    rows = []
    for (one, first), (other, second) in combinations(enumerate(TABLES), 2):
        for number, (a, b) in enumerate(product(first, second)):
            row = [words[number % len(words)] for words in TABLES]
            row[one], row[other] = a, b
            rows.append(dict(zip(LABELS, row, strict=True)))
    return rows


def test_all_shapes_margins_tips_and_bases_are_there() -> None:
    assert [len(table) for table in TABLES] == [34, 17, 16, 15]


def test_every_two_words_together_give_an_outline_that_does_not_cross_itself() -> None:
    bad = {str(row): found for row in pairs() if (found := faults_of(form_of(row)))}
    assert bad == {}


@pytest.mark.parametrize("shape", SHAPES)
def test_no_margin_crosses_itself_at_the_ends_that_leave_it_least_room(shape: str) -> None:
    tips = ("acute", "long-pointed", "heart-tipped", "bent forward")
    bases = ("tapering", "deeply heart-shaped", "spear-shaped", "hidden by a lobe")
    bad = {}
    for margin, tip, base in product(MARGINS, tips, bases):
        row = dict(zip(LABELS, (shape, margin, tip, base), strict=True))
        if found := faults_of(form_of(row)):
            bad[str(row)] = found
    assert bad == {}


@settings(max_examples=250, deadline=None)
@given(
    row=st.tuples(*(st.sampled_from(table) for table in TABLES)),
    length=st.integers(2, 600),
    width=st.integers(1, 600),
    size=st.floats(24, 400),
)
def test_outlines_of_every_recorded_length_and_width_hold_theirs(
    row: tuple[str, ...], length: int, width: int, size: float
) -> None:
    words = dict(zip(LABELS, row, strict=True))
    form = form_of(words | {"length": f"{length} mm", "width": f"{width} mm"})
    if size / form.ratio > 2 * 4:
        assert faults_of(form, size) == []


@settings(max_examples=200, deadline=None)
@given(
    lobing=st.sampled_from(sorted(LOBINGS)),
    row=st.tuples(
        st.sampled_from([shape for shape, plan in SHAPES.items() if plan.widest <= HIGHEST]),
        st.sampled_from(sorted(MARGINS)),
        st.sampled_from(["acute", "obtuse", "rounded", "acuminate"]),
        st.sampled_from(["wedge-shaped", "tapering", "rounded", "cut straight", "heart-shaped"]),
    ),
    lobes=st.integers(3, 9),
    venation=st.sampled_from(["pinnate", "palmate"]),
)
def test_lobed_outlines_do_not_cross_themselves(
    lobing: str, row: tuple[str, ...], lobes: int, venation: str
) -> None:
    words = dict(zip(LABELS, row, strict=True))
    words |= {"lobing": lobing, "venation": venation, "lobes": str(lobes)}
    assert faults_of(form_of(words)) == []


@pytest.mark.parametrize("lobing", LOBINGS)
def test_every_margin_fits_every_lobed_blade(lobing: str) -> None:
    bad = {}
    shapes = ("elliptic", "widely ovate", "lanceolate", "oblong", "obovate")
    for margin, shape, venation in product(MARGINS, shapes, ("pinnate", "palmate")):
        words = WHOLE | {"shape": shape, "margin": margin, "lobing": lobing, "venation": venation}
        if found := faults_of(form_of(words)):
            bad[str(words)] = found
    assert bad == {}


def test_a_blade_begins_at_its_stalk_and_ends_at_its_tip() -> None:
    drawn = outline(form_of(WHOLE).blank, 200)
    assert drawn.path.start == 0j
    assert drawn.tip == pytest.approx(200j, abs=0.01)
    assert drawn.path.pieces[drawn.at_tip - 1].end == drawn.tip


def test_lobes_at_the_base_reach_below_the_stalk_and_belong_to_the_length() -> None:
    drawn = outline(form_of(WHOLE | {"base": "heart-shaped"}).blank, 200)
    _, low, _, high = ring(drawn.path).bounds
    assert (low, high) == (pytest.approx(-26, abs=0.5), pytest.approx(174, abs=0.5))


def test_a_lopsided_base_begins_higher_on_one_side() -> None:
    drawn = outline(form_of(WHOLE | {"base": "lopsided"}).blank, 200)
    points = drawn.path.points()
    inner = [p for p in points if 0 < abs(p.real) < 8 and p.imag < 60]
    assert min(p.imag for p in inner if p.real > 0) < 2
    assert min(p.imag for p in inner if p.real < 0) > 15


def test_only_bent_blades_sway() -> None:
    straight = outline(form_of(WHOLE).blank, 200)
    sickle = outline(form_of(WHOLE | {"shape": "sickle-shaped"}).blank, 200)
    nodding = outline(form_of(WHOLE | {"tip": "bent forward"}).blank, 200)
    assert [straight.sway(y) for y in (0, 100, 200)] == [0, 0, 0]
    assert sickle.sway(200) == pytest.approx(sickle.tip.real)
    assert sickle.sway(200) > 4 * sickle.sway(80) > 0
    assert [nodding.sway(y) > 0 for y in (0, 100, 190)] == [False, False, True]


def test_the_same_words_give_the_same_outline() -> None:
    words = WHOLE | {"margin": "torn", "lobing": "pinnately lobed"}
    assert outline(form_of(words).blank, 200).path == outline(form_of(words).blank, 200).path


def test_mapping_moves_every_point_and_handle() -> None:
    path = outline(form_of(WHOLE).blank, 50).path
    moved = path.mapped(lambda p: p + 3 - 2j)
    assert moved.points() == pytest.approx([p + 3 - 2j for p in path.points()])
    assert moved.closed
