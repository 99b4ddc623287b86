"""When a plant can be told from those that harm, and by what."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from helpers.lessons import BANK, LESSONS, VOCABULARY
from helpers.workshop import bank_of
from helpers.years import runs_of
from sallet.lesson.values.times import YEAR, day_of_year
from sallet.season.here import plant_year
from sallet.season.hopkins import Spot, spot_of
from sallet.season.telling import (
    Sign,
    Telling,
    telling_of,
    tellings,
    week_of,
)
from sallet.season.visible import Visible
from sallet.study.contrast import contrasts

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.lesson.bank import Bank
    from sallet.season.here import PlantYear

LEAVES = "### Leaves\n"
STEM = "### Stem\n"
OPPOSITE, ALTERNATE = "- arrangement: opposite\n", "- arrangement: alternate\n"
SOLID, HOLLOW = "- interior: solid\n", "- interior: hollow\n"
ALL_YEAR = "- leaves: all year\n- stem: all year\n"


def food(
    facts: str, season: str = ALL_YEAR, eaten: str = "- leaves: all year; raw", more: str = ""
) -> str:
    """Return the lesson of a plant for the pot that names hemlock."""
    return (
        f"---\nname: Cicely\n---\n## Identification\n{facts}\n{more or NAMED}\n"
        f"## Season\n{season}\n## Edible parts\n{eaten}\n"
    )


NAMED = "## Look-alikes\n### Hemlock\n"


def harm(facts: str, season: str = ALL_YEAR, danger: str = "deadly", more: str = "") -> str:
    """Return the lesson of hemlock."""
    return (
        f"---\nname: Hemlock\ntaught as: look-alike\ndanger: {danger}\n---\n"
        f"## Identification\n{facts}\n{more}\n## Season\n{season}\n"
    )


def years_of(bank: Bank, here: Spot | None = None) -> Mapping[str, PlantYear]:
    """Return the years of all lessons at one place."""
    return {lesson.slug: plant_year(lesson, here) for lesson in bank.lessons}


def all_tellings(*texts: str) -> tuple[Telling, ...]:
    """Return how the first of some lessons is told from the others."""
    bank = bank_of({f"{at}.md": text for at, text in enumerate(texts)})
    return tellings(bank.lessons[0], years_of(bank), bank)


def telling(*texts: str) -> Telling:
    """Return how a food plant is told from the one plant that harms."""
    (found,) = all_tellings(*texts)
    return found


def labels(what: Telling, day: int = 100) -> list[str]:
    """Return the labels that can be looked at on a day."""
    return [f"{c.this.subject} {c.label.name}" for c in what.on(day)]


TOLD = food(LEAVES + OPPOSITE + STEM + SOLID), harm(LEAVES + ALTERNATE + STEM + HOLLOW)
"""Sure at any time: two reliable contrasts of different kinds."""

# ---- when it is sure -----------------------------------------------------------------------


def test_two_contrasts_of_which_one_is_reliable_make_it_sure() -> None:
    sure = telling(*TOLD)
    assert labels(sure) == ["leaves arrangement", "stem interior"]
    assert (sure.is_sure(100), sure.unsure, sure.withheld) == (True, frozenset(), frozenset())


def test_one_contrast_does_not() -> None:
    one = telling(food(LEAVES + OPPOSITE), harm(LEAVES + ALTERNATE))
    assert labels(one) == ["leaves arrangement"]
    assert one.unsure == frozenset(range(1, YEAR + 1))


def test_none_at_all_does_not() -> None:
    assert telling(food(LEAVES + OPPOSITE), harm(LEAVES + OPPOSITE)).signs == ()
    assert len(telling(food(""), harm("")).unsure) == YEAR


ONE_KIND = [
    (LEAVES + "- surface: hairless\n" + STEM + "- surface: hairless\n",
     LEAVES + "- surface: hairy\n" + STEM + "- surface: hairy\n"),
    (LEAVES + "- latex: white milk\n" + STEM + "- juice: milky\n",
     LEAVES + "- latex: clear juice\n" + STEM + "- juice: clear\n"),
    (LEAVES + "- length: 2–3 cm\n- width: 2–3 cm\n", LEAVES + "- length: 9 cm\n- width: 9 cm\n"),
]  # fmt: skip
"""Hairs on leaf and stem; milk in leaf and stem (each reliable); two lengths."""


@pytest.mark.parametrize(("this", "that"), ONE_KIND)
def test_two_contrasts_that_tell_of_the_same_are_one(this: str, that: str) -> None:
    two = telling(food(this), harm(that))
    assert len(two.on(100)) == 2
    assert not two.is_sure(100)


def test_two_contrasts_of_which_none_is_reliable_do_not_suffice() -> None:
    fair = telling(
        food(LEAVES + "- shape: linear\n- surface: hairless\n"),
        harm(LEAVES + "- shape: kidney-shaped\n- surface: hairy\n"),
    )
    assert len(fair.on(100)) == 2
    assert not fair.is_sure(100)


def test_what_is_reliable_stands_first() -> None:
    two = telling(
        food(LEAVES + "- shape: linear\n" + OPPOSITE),
        harm(LEAVES + "- shape: kidney-shaped\n" + ALTERNATE),
    )
    assert labels(two) == ["leaves arrangement", "leaves shape"]
    assert [sign.contrast.label.name for sign in two.signs] == ["shape", "arrangement"]


def test_what_shows_only_over_weeks_is_no_sign() -> None:
    """Nor is taste; `study.contrast` says of what nobody makes a test."""
    watched = telling(
        food(LEAVES + OPPOSITE + "- in winter: evergreen\n"),
        harm(LEAVES + ALTERNATE + "- in winter: falls\n"),
    )
    assert labels(watched) == ["leaves arrangement"]
    assert not watched.is_sure(100)


# ---- which days ----------------------------------------------------------------------------


def test_what_can_be_seen_on_the_plant_that_is_picked_decides() -> None:
    """Its own stem must be there; whether the other shows one does not matter."""
    this, that = LEAVES + OPPOSITE + STEM + SOLID, LEAVES + ALTERNATE + STEM + HOLLOW
    bare = telling(food(this, "- leaves: all year\n- stem: May\n"), harm(that))
    assert bare.signs[1].days == frozenset(range(day_of_year(5, 6), day_of_year(5, 26) + 1))
    assert bare.is_sure(day_of_year(5, 15))
    assert not bare.is_sure(day_of_year(4, 15))
    assert (
        telling(food(this), harm(that, "- leaves: all year\n- stem: May\n")).unsure == frozenset()
    )


def test_one_day_that_fails_makes_its_week_unsure() -> None:
    """The stem is there for certain from the fifth day of its time: from 7 May, the first of a week."""
    this, that = LEAVES + OPPOSITE + STEM + SOLID, LEAVES + ALTERNATE + STEM + HOLLOW
    what = telling(food(this, "- leaves: all year\n- stem: 2 May to 31 October\n"), harm(that))
    first = day_of_year(5, 7)
    assert what.is_sure(first)
    assert not what.is_sure(first - 1)
    assert (week_of(first - 1), week_of(first)) == (17, 18)
    later = telling(food(this, "- leaves: all year\n- stem: 3 May to 31 October\n"), harm(that))
    assert later.is_sure(first + 1)
    assert {first + 1, first + 6} <= later.unsure
    assert first + 7 not in later.unsure


@pytest.mark.parametrize(("day", "week"), [(1, 0), (7, 0), (8, 1), (364, 51), (365, 52)])
def test_weeks_are_counted_from_new_year_s_day(day: int, week: int) -> None:
    assert week_of(day) == week


def test_only_days_on_which_it_is_gathered_are_told_of() -> None:
    may = telling(food("", eaten="- leaves: May; raw\n- flowers: July; raw"), harm(""))
    days = [
        *range(day_of_year(5, 1), day_of_year(6, 1)),
        *range(day_of_year(7, 1), day_of_year(8, 1)),
    ]
    assert may.gathered == may.unsure == frozenset(days)


def test_a_plant_that_is_not_about_is_no_doubt() -> None:
    """It may be about for five days more than its times say."""
    what = telling(food("", eaten="- leaves: May to July; raw"), harm("", "- leaves: June"))
    assert runs_of(what.gathered) == ((day_of_year(5, 27), day_of_year(7, 5)),)
    assert what.unsure == what.gathered


@pytest.mark.parametrize("season", ["", "- leaves: when it likes"])
def test_a_plant_whose_times_are_not_known_is_always_about(season: str) -> None:
    what = telling(food("", eaten="- leaves: May; raw"), harm("", season))
    assert len(what.gathered) == 31


def test_of_a_plant_of_which_nothing_is_gathered_no_day_is_told() -> None:
    assert telling(food("", eaten=""), harm("")).gathered == frozenset()


def test_windows_over_the_new_year() -> None:
    what = telling(
        food("", eaten="- leaves: November to February; raw"),
        harm("", "- leaves: December to January"),
    )
    assert runs_of(what.gathered) == ((day_of_year(11, 26), day_of_year(2, 5)),)


def test_at_a_southern_place_the_same_weeks_are_half_a_year_away() -> None:
    """As sure in the south as in the north, at other times: all moves alike."""
    head = "---\nname: {}\nseen at: {{latitude: 50, longitude: 0, elevation: 0 m}}\n"
    this, that = LEAVES + OPPOSITE + STEM + SOLID, LEAVES + ALTERNATE + STEM + HOLLOW
    season = "- leaves: March to October\n- stem: June to August\n"
    texts = [
        food(this, season, "- leaves: April to September; raw").replace(
            "---\nname: Cicely\n", head.format("Cicely")
        ),
        harm(that, season).replace("---\nname: Hemlock\n", head.format("Hemlock")),
    ]
    bank = bank_of({f"{at}.md": text for at, text in enumerate(texts)})
    north, south = (
        tellings(bank.lessons[0], years_of(bank, Spot(latitude, 0, 0)), bank)[0]
        for latitude in (50.0, -50.0)
    )
    assert north.is_sure(day_of_year(7, 15))
    assert not south.is_sure(day_of_year(7, 15))
    assert south.is_sure(day_of_year(1, 14))
    assert len(south.gathered) == len(north.gathered)
    assert any(first > last for first, last in runs_of(south.gathered))


# ---- which plants --------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("danger", "told"), [("deadly", 1), ("poisonous", 1), ("harmful", 0), ("harmless", 0)]
)
def test_only_plants_that_may_cost_a_life_or_a_night_in_hospital_are_told_of(
    danger: str, told: int
) -> None:
    assert len(all_tellings(food(""), harm("", danger=danger))) == told


def test_of_a_plant_that_harms_nothing_is_told() -> None:
    bank = bank_of({"0.md": food(""), "1.md": harm("", more="## Look-alikes\n### Cicely\n")})
    assert tellings(bank.lessons[1], years_of(bank), bank) == ()


def test_a_look_alike_named_only_from_the_other_side_is_told_of_too() -> None:
    named = "## Look-alikes\n### Cicely\n- settled by: the smell\n"
    back = telling(food(LEAVES + OPPOSITE, more="## Kind\n"), harm(LEAVES + ALTERNATE, more=named))
    assert (back.name, back.danger, back.settled_by) == ("Hemlock", "deadly", "the smell")
    assert (back.named_by, back.look) == (back.other, None)
    assert labels(back) == ["leaves arrangement"]


def test_a_look_alike_named_from_both_sides_is_told_of_once() -> None:
    both = telling(food(""), harm("", more="## Look-alikes\n### Cicely\n"))
    assert both.named_by is both.food
    assert both.look is both.food.look_alikes[0]


def test_a_plant_that_no_lesson_names_is_not() -> None:
    assert all_tellings(food("", more="## Kind\n"), harm("")) == ()


def test_it_can_be_told_all_the_same_where_that_is_asked() -> None:
    bank = bank_of({
        "0.md": food(LEAVES + OPPOSITE, eaten="- leaves: May; raw", more="## Kind\n"),
        "1.md": harm(LEAVES + ALTERNATE),
    })  # fmt: skip
    cicely, hemlock = bank.lessons
    what = telling_of(cicely, hemlock, years_of(bank), bank)
    (contrast,) = contrasts(cicely.facts, hemlock.facts, VOCABULARY)
    every = frozenset(range(1, YEAR + 1))
    assert what == Telling(
        food=cicely,
        name="Hemlock",
        danger="deadly",
        other=hemlock,
        signs=(Sign(contrast, every),),
        gathered=frozenset(range(day_of_year(5, 1), day_of_year(6, 1))),
    )


IN_PLACE = "## Look-alikes\n### Fool's parsley\n- danger: poisonous\n#### Leaves\n- arrangement: alternate\n"


def test_a_look_alike_without_a_lesson_is_always_about_and_told_by_what_stands_with_it() -> None:
    what = telling(food(LEAVES + OPPOSITE, eaten="- leaves: May; raw", more=IN_PLACE))
    assert (what.name, what.danger, what.other) == ("Fool's parsley", "poisonous", None)
    assert labels(what) == ["leaves arrangement"]
    assert len(what.gathered) == 31


def test_what_stands_with_a_look_alike_and_in_its_lesson_both_count() -> None:
    """A place may widen what a lesson says, and never narrows it."""
    named = NAMED + "#### Leaves\n- arrangement: opposite\n"
    wide = telling(food(LEAVES + OPPOSITE, more=named), harm(LEAVES + ALTERNATE))
    assert wide.signs == ()


def test_what_settles_it_leaves_the_weeks_unsure_and_lets_them_be_gathered_in() -> None:
    settled = telling(
        food("", more=NAMED + "- settled by: marked in flower the year before\n"), harm("")
    )
    assert settled.settled_by == "marked in flower the year before"
    assert len(settled.unsure) == YEAR
    assert settled.withheld == frozenset()
    assert len(telling(food(""), harm("")).withheld) == YEAR


# ---- runs ----------------------------------------------------------------------------------


# ---- laws ----------------------------------------------------------------------------------

_FACTS = {
    ("Leaves", "arrangement"): ["alternate", "opposite", "alternate (upper), basal (lower)", "odd"],
    ("Leaves", "division"): ["simple", "pinnate", "pinnate, rarely simple", "pinnate (lower)"],
    ("Leaves", "surface"): ["hairless", "hairy", "usually hairy", "hairless (young)"],
    ("Stem", "interior"): ["solid", "hollow", "solid or hollow"],
    ("Stem", "surface"): ["hairless", "hairy"],
    ("Flowers", "petals"): ["5", "4–6", "6", "many"],
    ("Flowers", "colour"): ["white", "blue", "white, sometimes blue"],
    ("Fruit", "kind"): ["berry", "pod", "nut"],
}
Facts = dict[tuple[str, str], str]
_told = {key: st.sampled_from(values) for key, values in _FACTS.items()}
_often = [("Leaves", "arrangement"), ("Stem", "interior")]
_facts = st.fixed_dictionaries(
    {key: _told[key] for key in _often},
    optional={k: v for k, v in _told.items() if k not in _often},
)
_times = st.sampled_from(["all year", "May to July", "October to February", "June", "March"])
_organs = st.sampled_from(["leaves", "stem", "flowers", "fruit", "green fruit", "young leaves"])
_season = st.dictionaries(_organs, _times).map(
    lambda rows: "".join(f"- {organ}: {times}\n" for organ, times in rows.items())
)
News = tuple[tuple[str, str], str]
_news = st.sampled_from([(key, value) for key, values in _FACTS.items() for value in values])


def written(facts: Facts) -> str:
    """Return facts as a lesson has them."""
    organs = dict.fromkeys(organ for organ, _ in facts)
    return "".join(
        f"### {organ}\n" + "".join(f"- {k[1]}: {v}\n" for k, v in facts.items() if k[0] == organ)
        for organ in organs
    )


@settings(max_examples=120)
@given(_facts, _facts, _season, _news)
def test_news_of_what_was_not_told_never_makes_a_sure_day_unsure(
    this: Facts, that: Facts, season: str, news: News
) -> None:
    """Of a character that one of the two is silent on nothing could have told them apart before.

    A further value of a character that is told may: it widens what can be met.
    """
    key, value = news
    less = {k: v for k, v in this.items() if k != key}
    before = telling(food(written(less), season), harm(written(that)))
    after = telling(food(written({**less, key: value}), season), harm(written(that)))
    for day in range(1, YEAR + 1, 5):
        assert after.is_sure(day) or not before.is_sure(day)


@settings(max_examples=120)
@given(_facts, _facts, _season, _news)
def test_a_further_value_of_the_other_plant_never_makes_an_unsure_day_sure(
    this: Facts, that: Facts, season: str, news: News
) -> None:
    """It may be met too, and rules out nothing that could be met before."""
    key, value = news
    assume(key in that and "(" not in that[key] + value)
    narrow = telling(food(written(this), season), harm(written(that)))
    wide = written({**that, key: f"{that[key]}, {value}"})
    widened = telling(food(written(this), season), harm(wide))
    for day in range(1, YEAR + 1, 5):
        assert narrow.is_sure(day) or not widened.is_sure(day)


@settings(max_examples=80)
@given(_facts, _facts, _season)
def test_more_of_the_year_in_sight_never_makes_a_sure_day_unsure(
    this: Facts, that: Facts, season: str
) -> None:
    """Where a stem's times are told, those of flowers and fruit no longer vouch for it; all year does."""
    assume("stem" not in season)
    before = telling(food(written(this), season), harm(written(that)))
    after = telling(food(written(this), f"{season}- stem: all year\n"), harm(written(that)))
    for day in range(1, YEAR + 1, 5):
        assert set(labels(before, day)) <= set(labels(after, day))
        assert after.is_sure(day) or not before.is_sure(day)


@settings(max_examples=80)
@given(_facts, _facts, _season, _season)
def test_what_is_told_of_a_day_is_what_can_be_looked_at_on_it(
    this: Facts, that: Facts, season: str, their_season: str
) -> None:
    what = telling(food(written(this), season), harm(written(that), their_season))
    visible = Visible(plant_year(what.food, None), VOCABULARY)
    for day in (1, 100, 160, 300):
        assert all(day in visible.days_of(contrast) for contrast in what.on(day))
        assert all(c.is_test for c in what.on(day))
    failing = {week_of(day) for day in what.gathered if not what.is_sure(day)}
    assert what.unsure <= what.gathered
    assert {week_of(day) for day in what.unsure} == failing


# ---- the lessons at hand -------------------------------------------------------------------


def between(food_plant: str, other: str) -> Telling:
    """Return how a plant of the lessons at hand is told from another, where it was seen."""
    lesson, harmful = BANK.find(food_plant), BANK.find(other)
    assert lesson is not None
    assert harmful is not None
    here = spot_of(lesson.front.seen_at)
    years = {each.slug: plant_year(each, here) for each in LESSONS}
    (found,) = (t for t in tellings(lesson, years, BANK) if t.other is harmful)
    return found


def characters(what: Telling) -> set[str]:
    """Return the characters that tell a plant from another, as organ and label."""
    return {f"{sign.contrast.this.subject}: {sign.contrast.label.name}" for sign in what.signs}


def sure_in(what: Telling, *months: int) -> bool:
    """Return whether it is sure on every day of some months on which it is gathered, and on some."""
    days = [
        d for d in what.gathered for m in months if day_of_year(m, 1) <= d < day_of_year(m, 1) + 28
    ]
    return bool(days) and all(what.is_sure(day) for day in days)


def test_ramsons_and_meadow_saffron_are_told_apart_by_the_leaf_s_stalk_in_spring() -> None:
    """Spring is when it must be sure: 28 poisonings and 2 deaths in France from March to May.

    So ANSES 2023, for 2020 to 2022; of 16 grown-up patients 4 died (Razinger and others 2021,
    Clinical Toxicology 59: 493). The characters are common practice of floras.
    """
    what = between("ramsons", "meadow saffron")
    assert {"leaves: attachment", "leaves: rises from the ground"} <= characters(what)
    assert sure_in(what, 3, 4, 5)


def test_ramsons_and_lily_of_the_valley_are_not_told_apart_before_they_flower() -> None:
    """Confusions are of leaves before flowering (Pilegaard 2012, DTU)."""
    what = between("ramsons", "lily of the valley")
    assert {"leaves: gloss", "flowers: inflorescence", "fruit: kind"} <= characters(what)
    assert not sure_in(what, 4)
    assert sure_in(what, 5)
    assert what.settled_by


def test_ramsons_and_lords_and_ladies_are_told_apart_by_veins_and_flowers() -> None:
    """Common practice of floras; no series of cases is known. Veins by themselves are one mark."""
    what = between("ramsons", "lords-and-ladies")
    assert {"leaves: venation", "flowers: inflorescence"} <= characters(what)
    assert not sure_in(what, 3)
    assert sure_in(what, 5)
    assert what.settled_by


def test_elder_and_dwarf_elder_are_told_apart_by_wood_and_stipules_while_elder_is_gathered() -> (
    None
):
    """Common practice of floras; no series of cases is known."""
    what = between("elder", "dwarf elder")
    assert {"whole plant: woodiness", "leaves: stipules"} <= characters(what)
    assert sure_in(what, 6, 7, 8, 9, 10)


def test_sweet_cicely_and_hemlock_are_told_apart_by_hairs_bracts_and_fruit_in_flower() -> None:
    """Common practice of floras; no series of cases is known. Hairs by themselves are one mark."""
    what = between("sweet cicely", "hemlock")
    assert {"leaves: surface", "stem: surface", "flowers: bracts", "fruit: shape"} <= characters(
        what
    )
    assert not sure_in(what, 3)
    assert sure_in(what, 5)
    assert what.settled_by


def test_no_telling_of_the_lessons_counts_what_is_tasted_and_all_weeks_are_gathered_in() -> None:
    for lesson in LESSONS:
        here = spot_of(lesson.front.seen_at)
        years = {each.slug: plant_year(each, here) for each in LESSONS}
        for what in tellings(lesson, years, BANK):
            assert what.unsure <= what.gathered
            assert {sign.contrast.label.aspect for sign in what.signs}.isdisjoint({"taste", "harm"})
