"""Shapes drawn are the shapes recorded: Radford and others 1974, Vascular Plant Systematics, ch. 6."""

from __future__ import annotations

import xml.etree.ElementTree as ET

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from helpers.leaves import LEAVES, WHOLE, leaves_told, ratio_of_box, read_paths
from sallet.drawing.leaf.blade_tables import SHAPES
from sallet.drawing.leaf.leaf import leaf
from sallet.drawing.svg import ink_svg
from sallet.lesson.leaf_shape import CLASSES, ratio_of, shape_for, widened

SHAPE = LEAVES.label("shape")
assert SHAPE is not None
STATES = {state.name: state for state in SHAPE.states}
PLAIN = {
    shape: STATES[shape]
    for shape in (
        "elliptic", "narrowly elliptic", "widely elliptic", "circular", "oblate", "oblong",
        "narrowly oblong", "square", "ovate", "lanceolate", "obovate", "oblanceolate", "linear",
    )
}  # fmt: skip
"""The shapes of the table: one class of length to width each, and one widest place."""
ENDS = {"oblate": ("rounded", "rounded"), "circular": ("rounded", "rounded")}


def drawn_ratio(words: dict[str, str], size: float = 200) -> float:
    """Return the length by width of the blade, measured in the SVG."""
    sketch = leaf(leaves_told(words), size)
    assert sketch is not None
    root = ET.fromstring(f"<svg>{ink_svg(sketch.ink, 'x')}</svg>")  # noqa: S314
    blade = next(e for e in root.iter("path") if "blade" in (e.get("class") or "").split())
    (path,) = read_paths(blade.get("d") or "")
    return ratio_of_box(path)


def words_of(shape: str, **more: str) -> dict[str, str]:
    """Return a whole leaf of a shape."""
    tip, base = ENDS.get(shape, ("acute", "rounded"))
    return {**WHOLE, "shape": shape, "tip": tip, "base": base, **more}


def test_the_table_is_that_of_radford() -> None:
    ratios = {ratio_of(state) for state in PLAIN.values()}
    ends = {(r.low, r.high) for r in ratios if r}
    assert ends == {(0.5, 0.83), *CLASSES[2:]}


@pytest.mark.parametrize("shape", PLAIN)
@pytest.mark.parametrize("margin", ["entire", "serrate", "crenate"])
def test_a_drawn_shape_classes_back_to_itself(shape: str, margin: str) -> None:
    ratio = drawn_ratio(words_of(shape, margin=margin))
    assert SHAPE is not None
    assert shape_for(ratio, PLAIN[shape], SHAPE) == shape


@pytest.mark.parametrize("shape", SHAPES)
def test_a_drawn_shape_lies_within_its_class(shape: str) -> None:
    ratio = ratio_of(STATES[shape])
    assert ratio is not None
    assert widened(ratio).holds(drawn_ratio(words_of(shape)))


@settings(max_examples=200, deadline=None)
@given(shape=st.sampled_from(sorted(SHAPES)), far=st.floats(0, 1), width=st.integers(40, 900))
def test_recorded_length_and_width_are_those_drawn(shape: str, far: float, width: int) -> None:
    class_ = ratio_of(STATES[shape])
    assert class_ is not None
    high = class_.high or 1.6 * class_.low
    length = round(width * (class_.low + far * (high - class_.low)))
    words = words_of(shape, length=f"{length / 10} mm", width=f"{width / 10} mm")
    assert drawn_ratio(words) == pytest.approx(length / width, rel=0.02)


def test_a_ratio_beyond_what_the_shape_allows_is_drawn_as_far_as_it_allows() -> None:
    words = words_of("elliptic", length="20 cm", width="2 cm")
    sketch = leaf(leaves_told(words), 200)
    assert sketch is not None
    assert drawn_ratio(words) == pytest.approx(2.5, rel=0.02)
