"""On which days an organ can be looked at, and above all on which it cannot."""

from __future__ import annotations

from dataclasses import replace

import pytest

from helpers.lessons import VOCABULARY, identified
from helpers.years import runs_of, year_at, year_of
from sallet.lesson.values.times import YEAR, day_of_year
from sallet.season.here import SOFT_AT_LEAST
from sallet.season.hopkins import Spot
from sallet.season.visible import Visible
from sallet.study.contrast import contrasts


def visible(season: str = "", eaten: str = "", *, with_unsure: bool = False) -> Visible:
    """Return what can be seen of a food plant, given lines of its season and of its edible parts."""
    year = year_of(f"## Season\n{season}\n## Edible parts\n{eaten}\n")
    return Visible(year, VOCABULARY, with_unsure)


Dates = list[tuple[tuple[int, int], tuple[int, int]]]


def runs(seen: Visible, organ: str, part: str = "", *where: str) -> Dates:
    """Return the days on which something can be looked at, as runs from and to: months and days."""
    return dates(seen.days(organ, part, frozenset(where)))


def dates(days: frozenset[int]) -> Dates:
    """Return days as runs from and to: months and days."""
    by_day = {day_of_year(m, d): (m, d) for m in range(1, 13) for d in range(1, LAST[m] + 1)}
    return [(by_day[first], by_day[last]) for first, last in runs_of(days)]


LAST = dict(zip(range(1, 13), (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31), strict=True))
MAY: Dates = [((5, 6), (5, 26))]
"""The sure days of May: five at either end are those of which nobody can say."""
NEVER: Dates = []


# ---- the organ's own times -----------------------------------------------------------------


def test_uncertain_days_do_not_count() -> None:
    assert SOFT_AT_LEAST == 5
    assert runs(visible("- leaves: May"), "leaves") == MAY


def test_they_count_where_the_plant_is_in_the_hand() -> None:
    seen = visible("- leaves: May", with_unsure=True)
    assert runs(seen, "leaves") == [((4, 26), (6, 5))]


def test_what_is_there_all_year_has_no_uncertain_days() -> None:
    assert len(visible("- leaves: all year").days("leaves")) == YEAR


def test_a_time_over_the_new_year_is_one() -> None:
    assert runs(visible("- stem: November to February"), "stem") == [((11, 6), (2, 23))]


def test_several_times_are_all_its_times() -> None:
    seen = visible("- leaves: May, September")
    assert runs(seen, "leaves") == [*MAY, ((9, 6), (9, 25))]


@pytest.mark.parametrize("organ", ["leaves", "stem", "flowers", "fruit", "seeds", "sap", "bark"])
def test_of_what_no_time_is_told_nothing_can_be_seen(organ: str) -> None:
    assert runs(visible(""), organ) == NEVER
    assert runs(visible("- roots: all year\n- buds: all year"), organ) == NEVER


def test_a_time_that_could_not_be_read_is_none() -> None:
    assert runs(visible("- leaves: when it likes"), "leaves") == NEVER


def test_where_the_times_are_estimates_more_days_are_uncertain() -> None:
    """12 days later for three degrees (Hopkins 1938); 5 days and 0.35 for each day moved are unsure."""
    lesson = "---\nseen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}\n---\n## Season\n- leaves: May\n"
    here = Visible(year_at(lesson, Spot(57.4, -2.6, 150)), VOCABULARY)
    assert runs(here, "leaves") == [((5, 23), (6, 2))]


def test_in_the_south_the_days_are_those_of_the_south() -> None:
    lesson = "---\nseen at: {latitude: 50, longitude: 0, elevation: 0 m}\n---\n## Season\n- leaves: May\n"
    here = Visible(year_at(lesson, Spot(-50.0, 0.0, 0)), VOCABULARY)
    assert here.days("leaves")
    assert here.days("leaves") <= frozenset(range(day_of_year(10, 15), day_of_year(12, 15)))


# ---- stages and pieces ---------------------------------------------------------------------


@pytest.mark.parametrize(
    ("stage", "organ"),
    [("green fruit", "fruit"), ("young leaves", "leaves"), ("flower buds", "flowers"),
     ("green seeds", "seeds"), ("ripe fruit", "fruit")],
)  # fmt: skip
def test_a_stage_does_not_vouch_for_the_organ(stage: str, organ: str) -> None:
    assert runs(visible(f"- {stage}: May"), organ) == NEVER


def test_a_stage_or_a_piece_is_seen_at_its_own_times() -> None:
    seen = visible("- leaves: all year\n- young leaves: May")
    assert runs(seen, "leaves", "young leaves") == MAY


def test_a_piece_without_times_of_its_own_is_seen_with_its_organ() -> None:
    assert runs(visible("- leaves: May"), "leaves", "leaf stalks") == MAY


@pytest.mark.parametrize(
    ("organ", "stage"),
    [("leaves", "young leaves"), ("leaves", "rosettes"), ("fruit", "green fruit"),
     ("flowers", "flower buds"), ("seeds", "green seeds"), ("stem", "young stems")],
)  # fmt: skip
def test_a_stage_without_times_of_its_own_is_not(organ: str, stage: str) -> None:
    """Nobody can say when in the organ's time it is there."""
    season = f"- {organ}: May\n- flowers: May\n- fruit: May"
    assert runs(visible(season), organ, stage) == NEVER


@pytest.mark.parametrize("part", ["stem leaves", "upper leaves"])
def test_leaves_on_the_stem_are_seen_while_the_stem_is(part: str) -> None:
    assert runs(visible("- leaves: all year"), "leaves", part) == NEVER
    assert runs(visible("- leaves: all year\n- stem: May"), "leaves", part) == MAY


# ---- one organ vouches for another ---------------------------------------------------------


@pytest.mark.parametrize(
    ("season", "organ", "seen"),
    [
        ("- flowers: May", "stem", MAY),
        ("- fruit: May", "stem", MAY),
        ("- flowers: May\n- fruit: September", "stem", [*MAY, ((9, 6), (9, 25))]),
        ("- leaves: May", "stem", NEVER),
        ("- flowers: May\n- stem: September", "stem", [((9, 6), (9, 25))]),
        ("- stem: May", "bark", MAY),
        ("- fruit: May", "seeds", MAY),
        ("- flowers: May", "seeds", NEVER),
        ("- stem: May", "sap", MAY),
        ("- leaves: May", "sap", MAY),
        ("- stem: May", "buds", NEVER),
        ("- leaves: May", "flowers", NEVER),
        ("- flowers: May", "fruit", NEVER),
        ("- green fruit: May", "stem", NEVER),
    ],
)
def test_an_organ_without_times_is_seen_only_with_one_that_is_never_there_without_it(
    season: str, organ: str, seen: Dates
) -> None:
    assert runs(visible(season), organ) == seen


def test_of_the_whole_plant_something_is_seen_while_anything_above_ground_is() -> None:
    season = "- leaves: May\n- green fruit: September\n- roots: all year"
    assert runs(visible(season), "whole plant") == [*MAY, ((9, 6), (9, 25))]


def test_a_stage_of_the_whole_plant_is_seen_at_its_own_times() -> None:
    season = "- leaves: all year\n- young shoots: May"
    assert runs(visible(season), "whole plant", "young shoots") == MAY
    assert runs(visible("- leaves: all year"), "whole plant", "young shoots") == NEVER


# ---- what is picked ------------------------------------------------------------------------

ALL_OF_MAY: Dates = [((5, 1), (5, 31))]


def test_what_is_picked_can_be_looked_at_on_all_days_on_which_it_is() -> None:
    assert runs(visible("- leaves: May", "- leaves: May; raw"), "leaves") == ALL_OF_MAY
    assert runs(visible("", "- petals: May; raw"), "flowers") == ALL_OF_MAY
    assert runs(visible("", "- petals: May; raw"), "flowers", "petals") == ALL_OF_MAY
    assert runs(visible("", "- petals: May; raw"), "flowers", "sepals") == NEVER


@pytest.mark.parametrize(
    ("stage", "organ"),
    [("green fruit", "fruit"), ("green seeds", "seeds"), ("flower buds", "flowers")],
)
def test_unripe_fruit_in_the_hand_does_not_show_what_the_fruit_is_like(
    stage: str, organ: str
) -> None:
    picked = visible("", f"- {stage}: May; raw")
    assert runs(picked, organ) == NEVER
    assert runs(picked, organ, stage) == ALL_OF_MAY


def test_roots_are_looked_at_only_where_they_are_dug_for_the_pot() -> None:
    assert runs(visible("- roots: all year"), "roots") == NEVER
    assert runs(visible("- bulb: all year"), "roots", "bulb") == NEVER
    assert runs(visible("- roots: all year", "- roots: May; boiled"), "roots") == ALL_OF_MAY


# ---- places --------------------------------------------------------------------------------

LEAFY = "- leaves: all year\n- stem: May\n- fruit: September\n- flowers: June"
WITH_STEM: Dates = MAY


@pytest.mark.parametrize(
    ("where", "seen"),
    [
        (("upper",), WITH_STEM),
        (("stem",), WITH_STEM),
        (("middle",), WITH_STEM),
        (("beneath",), [((1, 1), (12, 31))]),
        (("basal",), [((1, 1), (12, 31))]),
        (("in flower",), [((6, 6), (6, 25))]),
        (("in fruit",), [((9, 6), (9, 25))]),
        (("upper", "beneath"), WITH_STEM),
        (("upper", "in fruit"), NEVER),
        (("young",), NEVER),
        (("spring",), NEVER),
        (("before flowering",), NEVER),
        (("in shade",), NEVER),
        (("male",), NEVER),
        (("in wet years",), NEVER),
        (("beneath", "in wet years"), NEVER),
    ],
)
def test_a_place_is_looked_at_while_it_is_there_for_certain(
    where: tuple[str, ...], seen: Dates
) -> None:
    """When somebody's own words hold, or how old a leaf is, nobody can say beforehand."""
    assert runs(visible(LEAFY), "leaves", "", *where) == seen


def test_a_place_on_another_organ_needs_no_stem_beyond_it() -> None:
    assert runs(visible("- flowers: May"), "flowers", "", "upper") == MAY


def test_a_contrast_is_seen_on_the_days_of_any_place_at_which_it_holds() -> None:
    """Basal leaves all year, upper ones while the stem stands."""
    this = identified(
        "a.md", {"Leaves": ["arrangement: opposite (upper)"], "Stem": ["interior: solid"]}
    )
    that = identified("b.md", {"Leaves": ["arrangement: alternate"], "Stem": ["interior: hollow"]})
    stem, leaves = contrasts(this.facts, that.facts, VOCABULARY)[::-1]
    seen = visible(LEAFY)
    both = replace(leaves, places=(frozenset({"upper"}), frozenset({"beneath"})))
    assert [dates(seen.days_of(contrast)) for contrast in (leaves, both, stem)] == [
        WITH_STEM, [((1, 1), (12, 31))], WITH_STEM,
    ]  # fmt: skip
