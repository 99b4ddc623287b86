"""The foot of a leaf with its stipules and sheath."""

from __future__ import annotations

from itertools import product

import pytest

from helpers.drawings import parts_of
from helpers.leaves import faults_of, leaves_told, values_of
from sallet.drawing.leaf.foot import leaf_foot


@pytest.mark.parametrize("stipules", [*values_of("stipules"), None])
def test_what_is_shown_is_what_is_said(stipules: str | None) -> None:
    for sheath in (*values_of("sheath"), None):
        words = {"stipules": stipules, "sheath": sheath, "attachment": "stalked"}
        assert faults_of(leaf_foot, {k: v for k, v in words.items() if v}, 80) == []


def test_a_foot_has_a_stem_and_a_stalk() -> None:
    sketch = leaf_foot(leaves_told({"stipules": "leafy"}), 80)
    assert sketch is not None
    assert parts_of(sketch.ink)["stalk"] == 1
    assert [c.words for c in sketch.shows] == ["stipules: leafy"]


@pytest.mark.parametrize(
    "words", [{}, {"stipules": "absent"}, {"sheath": "no sheath"}, {"stipules": "soon falling"}]
)
def test_nothing_to_see_is_not_drawn(words: dict[str, str]) -> None:
    assert leaf_foot(leaves_told(words), 80) is None


def test_every_pair_of_words_gives_another_figure() -> None:
    seen = set()
    pairs = list(product((*values_of("stipules"), ""), (*values_of("sheath"), "")))
    for stipules, sheath in pairs:
        words = {k: v for k, v in {"stipules": stipules, "sheath": sheath}.items() if v}
        sketch = leaf_foot(leaves_told(words), 80)
        if sketch and {c.label for c in sketch.shows} == set(words):
            seen.add(sketch.ink)
    # 11 stipules and 8 sheaths that can be seen, each alone or both together; a papery tube is
    # the same thing by either name.
    assert len(seen) == 12 * 9 - 2
