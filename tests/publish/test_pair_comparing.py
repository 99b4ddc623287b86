"""What is found of two plants, for every page that wants it."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from helpers.courses import site_of
from helpers.pairs import FILES, LILY, RAMSONS
from sallet.publish.pair_comparing import is_grave
from sallet.study.contrast import contrasts

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.lesson.model import Lesson
    from sallet.publish.pair_comparing import Comparer


def compared(files: Mapping[str, str]) -> tuple[Comparer, Lesson, Lesson]:
    """Return what compares the plants of a course, with ramsons and lily of the valley."""
    site = site_of({"course.yml": "", **files})
    ramsons, lily = (site.bank.find(name) for name in ("Ramsons", "Lily of the valley"))
    assert ramsons is not None
    assert lily is not None
    return site.comparer, ramsons, lily


def test_a_pair_has_the_contrasts_of_its_two_lessons() -> None:
    comparer, ramsons, lily = compared(FILES)
    found = contrasts(ramsons.facts, lily.facts, comparer.vocabulary)
    pair = comparer.named[frozenset({ramsons.slug, lily.slug})]
    assert comparer.contrasts(pair) == found
    assert comparer.tests(ramsons, lily) == found


def test_what_stands_in_place_counts_beside_the_lesson() -> None:
    told = RAMSONS.replace(
        "### Few-flowered garlic",
        "#### Flowers\n- inflorescence: umbel, one-sided raceme\n\n### Few-flowered garlic",
    )
    comparer, ramsons, lily = compared({**FILES, "ramsons.md": told})
    assert [c.label.name for c in comparer.tests(ramsons, lily)] == ["gloss", "kind"]


def test_of_one_plant_under_two_headings_the_less_sure_telling_counts() -> None:
    twice = RAMSONS.replace(
        "### Few-flowered garlic",
        "### Convallaria majalis\n#### Flowers\n- inflorescence: umbel\n\n### Few-flowered garlic",
    )
    comparer, ramsons, lily = compared({**FILES, "ramsons.md": twice})
    pair = comparer.named[frozenset({ramsons.slug, lily.slug})]
    telling = comparer.telling(pair)
    assert [naming.number for naming in pair.own] == [0, 1]
    assert telling is not None
    assert (telling.name, telling.unsure) == ("Convallaria majalis", telling.gathered)


def test_a_harmless_look_alike_has_no_telling() -> None:
    comparer, _, _ = compared(FILES)
    assert [comparer.telling(pair) is None for pair in comparer.setting.pairs] == [False, True]


def test_a_feature_has_its_days_on_either_plant_and_none_where_no_lesson_tells_them() -> None:
    comparer, _, _ = compared(FILES)
    lilies, garlics = comparer.setting.pairs
    looks = [*comparer.looks(lilies, comparer.contrasts(lilies))]
    assert [(one.this[0], one.that[0]) for one in looks] == [("Ramsons", "Lily of the valley")] * 3
    assert [len(one.that[1] or ()) for one in looks] == [365, 51, 0]
    (garlic,) = comparer.looks(garlics, comparer.contrasts(garlics))
    assert garlic.that == ("Few-flowered garlic", None, False)


@pytest.mark.parametrize(
    ("head", "grave"),
    [
        ("danger: deadly", True),
        ("danger: poisonous", True),
        ("danger: harmful", False),
        ("", False),
    ],
)
def test_what_harms_gravely_is_poisonous_or_deadly(head: str, grave: bool) -> None:  # noqa: FBT001
    _, ramsons, lily = compared({**FILES, "lily-of-the-valley.md": LILY.replace("danger: poisonous", head)})  # fmt: skip
    assert (is_grave(ramsons, lily), is_grave(lily, ramsons)) == (grave, False)
