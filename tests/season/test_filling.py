"""Sessions filled: the most in season, then the other wishes, proven against other solvers.

The reference for the largest number in season is scipy's maximum flow (scipy.sparse.csgraph), a
method of another kind than the integer programme; the reference for all wishes together is to try
every plan there is.
"""

from __future__ import annotations

from itertools import product
from pathlib import Path
from random import Random
from typing import TYPE_CHECKING

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.sparse import csr_matrix  # type: ignore[import-untyped]
from scipy.sparse.csgraph import maximum_flow  # type: ignore[import-untyped]

from sallet.folder import read_path
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.season.filling import Filling, contradictions, fill
from sallet.season.planning import make_plan, season_of
from sallet.season.teachable import day_of

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

Given = tuple[tuple[int, ...], ...]
DEMO = Path(__file__).parents[2] / "demo_course"


# ---- what a plan is worth, reckoned by hand -------------------------------------------------


def in_season(filling: Filling, given_: Given) -> int:
    """Return how many plants are in season in a session that teaches them."""
    return sum(any(filling.away[p][n] == 0 for n in on) for p, on in enumerate(given_))


def worth(filling: Filling, given_: Given) -> tuple[int, ...]:
    """Return what a plan reaches, wish by wish, the more the better."""
    pins = filling.pins or ((),) * len(given_)
    loads = [sum(n in on for on in given_) for n in range(len(filling.holds))]
    near = sum(
        any(abs(a - b) <= 1 for a, b in product(given_[one], given_[other]))
        for one, other in {(min(pair), max(pair)) for pair in filling.pairs}
    )
    free = [(p, n) for p, on in enumerate(given_) if not pins[p] for n in on]
    return (
        in_season(filling, given_),
        sum(bool(on) for on in given_),
        near,
        -sum(load**2 for load in loads),
        -sum(filling.away[p][n] or n for p, n in free),
        sum((len(given_) - p) * (len(filling.holds) - n) for p, n in free),
    )


def is_allowed(filling: Filling, given_: Given) -> bool:
    """Return whether a plan keeps the pins, the room of each session and the order."""
    pins = filling.pins or ((),) * len(given_)
    kept = all(tuple(sorted(set(pin))) == on for pin, on in zip(pins, given_, strict=True) if pin)
    return kept and _has_room(filling, given_, pins) and _is_in_order(filling, given_, pins)


def _has_room(filling: Filling, given_: Given, pins: Sequence[Sequence[int]]) -> bool:
    for number, holds in enumerate(filling.holds):
        pinned = sum(number in pin for pin in pins)
        if holds is not None and sum(number in on for on in given_) > max(holds, pinned):
            return False
    return True


def _is_in_order(filling: Filling, given_: Given, pins: Sequence[Sequence[int]]) -> bool:
    rules = set(filling.after) - set(contradictions(pins, filling.after))
    for first, then in rules:
        # What is pinned is taught, also where what should come first has no room.
        if given_[then] and not given_[first] and not pins[then]:
            return False
    return all(
        given_[first][0] <= given_[then][0]
        for first, then in _chains(rules)
        if given_[first] and given_[then]
    )


def _chains(rules: set[tuple[int, int]]) -> set[tuple[int, int]]:
    """Return what follows from rules of order: a before b, b before c, so a before c."""
    further = {(a, d) for a, b in rules for c, d in rules if b == c} - rules
    return _chains(rules | further) if further else rules


def every_plan(filling: Filling) -> Iterator[Given]:
    """Yield every plan there is: a plant that is not pinned in one session or in none."""
    pins = filling.pins or ((),) * len(filling.away)
    sessions = [(), *((n,) for n in range(len(filling.holds)))]
    for plan in product(*([tuple(sorted(set(pin)))] if pin else sessions for pin in pins)):
        if is_allowed(filling, plan):
            yield plan


def most_by_flow(filling: Filling) -> int:
    """Return the largest number of plants in season without pins and rules, by maximum flow."""
    plants, sessions = len(filling.away), len(filling.holds)
    size = plants + sessions + 2
    room = np.zeros((size, size), dtype=np.int32)
    for plant, row in enumerate(filling.away):
        room[0, 1 + plant] = 1
        for number, away in enumerate(row):
            room[1 + plant, 1 + plants + number] = away == 0
    for number, holds in enumerate(filling.holds):
        room[1 + plants + number, size - 1] = plants if holds is None else holds
    return int(maximum_flow(csr_matrix(room), 0, size - 1).flow_value)


def without_pins(filling: Filling) -> tuple[Filling, int]:
    """Return what is left to fill, and how many pinned plants are in season."""
    taught = [p for p, pin in enumerate(filling.pins) if pin]
    loads = [sum(n in pin for pin in filling.pins) for n in range(len(filling.holds))]
    rest = Filling(
        tuple(row for p, row in enumerate(filling.away) if p not in taught),
        tuple(
            None if holds is None else max(holds - load, 0)
            for holds, load in zip(filling.holds, loads, strict=True)
        ),
    )
    return rest, sum(any(filling.away[p][n] == 0 for n in filling.pins[p]) for p in taught)


# ---- courses made up -------------------------------------------------------------------------


def made_up(random: Random, plants: int, sessions: int, *, rules: bool = True) -> Filling:
    """Return a course of random windows, rooms, pins, pairs and rules of order."""
    days = sorted(random.sample(range(60, 320), sessions))
    starts = [(random.randrange(30, 300), random.randrange(5, 60)) for _ in range(plants)]
    pins = tuple(
        tuple(random.sample(range(sessions), random.choice((1, 1, 2)) if sessions > 1 else 1))
        if random.random() < 0.2
        else ()
        for _ in range(plants)
    )
    some = [tuple(random.sample(range(plants), 2)) for _ in range(plants)] if plants > 1 else []
    return Filling(
        away=tuple(
            tuple(max(start - day, day - start - length, 0) for day in days)
            for start, length in starts
        ),
        holds=tuple(random.choice((None, 0, 1, 2, 3)) for _ in range(sessions)),
        pins=pins if rules else (),
        pairs=tuple((a, b) for a, b in some[: plants // 2]),
        after=tuple((a, b) for a, b in some[plants // 2 :][:3]) if rules else (),
    )


@pytest.mark.parametrize("seed", range(40))
def test_no_plan_has_more_plants_in_season(seed: int) -> None:
    """Source: scipy.sparse.csgraph.maximum_flow on the same course."""
    random = Random(seed)  # noqa: S311
    filling = made_up(random, random.randrange(5, 45), random.randrange(2, 14), rules=False)
    assert in_season(filling, fill(filling)) == most_by_flow(filling)


@pytest.mark.parametrize("seed", range(40, 70))
def test_no_plan_that_keeps_the_pins_has_more_plants_in_season(seed: int) -> None:
    """Source: scipy's maximum flow on what the pins leave."""
    random = Random(seed)  # noqa: S311
    made = made_up(random, random.randrange(5, 45), random.randrange(2, 14))
    filling = Filling(made.away, made.holds, made.pins)
    rest, pinned = without_pins(filling)
    assert in_season(filling, fill(filling)) == most_by_flow(rest) + pinned


@pytest.mark.parametrize("seed", range(100, 220))
def test_no_plan_at_all_meets_the_wishes_better(seed: int) -> None:
    """Source: every plan of a small course, tried one after another."""
    random = Random(seed)  # noqa: S311
    filling = made_up(random, random.randrange(1, 6), random.randrange(1, 5))
    found = fill(filling)
    assert is_allowed(filling, found)
    assert worth(filling, found) == max(worth(filling, plan) for plan in every_plan(filling))


@pytest.mark.parametrize(
    "place", ["", "place: {latitude: 57.4, longitude: -2.6, elevation: 450 m}"]
)
def test_the_demo_without_names_teaches_as_many_in_season_as_can_be(
    place: str, tmp_path: Path
) -> None:
    """Source: scipy's maximum flow on the demo's own windows, here and 3° north and 300 m up."""
    place = place or "place: {latitude: 54.4, longitude: -2.6, elevation: 150 m}"
    sessions = "sessions: [{first: 2027-04-03, every: 2 weeks, count: 12, holds: 3}]"
    text = f"{place}\nlessons: {DEMO.parent / 'lessons'}\n{sessions}\n"
    (tmp_path / "course.yml").write_text(text, "utf-8")
    folder = read_path(tmp_path, load_vocabulary())
    assert folder.course
    plan = make_plan(folder.course, folder.bank, folder.lessons)
    season = season_of(folder.course, folder.bank, folder.lessons)
    days = [day_of(session.date) for session in folder.course.sessions]
    away = tuple(tuple(what.days_away(day) for day in days) for what in season)
    assert len(away) == 28
    assert len(plan.in_season) == most_by_flow(Filling(away, (3,) * 12))


# ---- what must hold ----------------------------------------------------------------------------

CELLS = st.integers(0, 3)


@st.composite
def fillings(draw: st.DrawFn) -> Filling:
    """Draw a course with any pins, pairs and rules."""
    plants, sessions = draw(st.integers(0, 6)), draw(st.integers(0, 4))
    numbers = st.lists(st.integers(0, sessions - 1), max_size=2) if sessions else st.just([])
    couple = st.tuples(st.integers(0, plants - 1), st.integers(0, plants - 1))
    couples = st.lists(couple, max_size=4) if plants else st.just([])
    return Filling(
        away=tuple(tuple(draw(CELLS) for _ in range(sessions)) for _ in range(plants)),
        holds=tuple(draw(st.none() | st.integers(0, 3)) for _ in range(sessions)),
        pins=tuple(tuple(draw(numbers)) for _ in range(plants)),
        pairs=tuple(draw(couples)),
        after=tuple(draw(couples)),
    )


@settings(max_examples=60, deadline=None)
@given(fillings())
def test_pins_room_and_order_hold_and_the_same_course_gets_the_same_plan(filling: Filling) -> None:
    found = fill(filling)
    assert len(found) == len(filling.away)
    assert is_allowed(filling, found)
    fill.cache_clear()
    assert fill(filling) == found


@settings(max_examples=30, deadline=None)
@given(fillings())
def test_the_order_in_which_pairs_and_rules_are_told_does_not_matter(filling: Filling) -> None:
    turned = Filling(
        filling.away, filling.holds, filling.pins,
        tuple((b, a) for a, b in reversed(filling.pairs)), tuple(reversed(filling.after)),
    )  # fmt: skip
    assert fill(turned) == fill(filling)


# ---- cases by hand -------------------------------------------------------------------------------


def test_a_plant_goes_to_the_session_in_its_season() -> None:
    assert fill(Filling(away=((9, 0, 9),), holds=(None, None, None))) == ((1,),)


def test_of_two_that_need_one_place_the_one_with_a_choice_gives_way() -> None:
    assert fill(Filling(away=((0, 0), (0, 9)), holds=(1, 1))) == ((1,), (0,))


def test_what_is_out_of_season_goes_to_the_nearest_date() -> None:
    assert fill(Filling(away=((30, 16, 2),), holds=(1, 1, 1))) == ((2,),)


def test_where_room_is_short_a_plant_out_of_season_stays_without() -> None:
    assert fill(Filling(away=((0,), (5,)), holds=(1,))) == ((0,), ())


def test_look_alikes_are_brought_together_before_sessions_are_made_even() -> None:
    away = ((0, 0, 0, 0), (0, 0, 0, 0))
    assert fill(Filling(away, (None,) * 4, pairs=((0, 1),))) == ((0,), (1,))
    far = ((0, 9, 9, 0), (9, 9, 9, 0))
    assert fill(Filling(far, (None,) * 4, pairs=((0, 1),))) == ((3,), (3,))
    assert fill(Filling(far, (None,) * 4)) == ((0,), (3,))


def test_sessions_are_evenly_filled() -> None:
    loads = [0, 0, 0]
    for (number,) in fill(Filling(((0, 0, 0),) * 7, (None,) * 3)):
        loads[number] += 1
    assert sorted(loads) == [2, 2, 3]


def test_of_two_alike_the_first_in_season_order_comes_first() -> None:
    assert fill(Filling(((0, 0), (0, 0)), (1, 1))) == ((0,), (1,))


def test_a_pin_holds_out_of_season_and_beyond_the_room() -> None:
    filling = Filling(((0, 9), (0, 9)), (1, 0), pins=((1,), (1,)))
    assert fill(filling) == ((1,), (1,))


def test_a_plant_may_be_pinned_twice() -> None:
    assert fill(Filling(((0, 0, 0),), (1, 1, 1), pins=((2, 0),))) == ((0, 2),)


def test_what_is_to_come_first_does_so_though_it_costs_season() -> None:
    away = ((9, 0), (0, 7))
    assert fill(Filling(away, (1, 1))) == ((1,), (0,))
    # One of the two is in season whatever is done; with room for both in one session it is.
    assert fill(Filling(away, (2, 2), after=((0, 1),))) == ((1,), (1,))
    assert fill(Filling(away, (1, 1), after=((0, 1),))) == ((1,), ())


def test_without_plants_or_sessions_or_room_there_is_nothing_to_fill() -> None:
    assert fill(Filling((), ())) == ()
    assert fill(Filling(((),), ())) == ((),)
    assert fill(Filling((), (3,))) == ()
    assert fill(Filling(((0,),), (0,))) == ((),)


@pytest.mark.parametrize(
    ("pins", "after", "broken"),
    [((), [(0, 1), (1, 2)], ()),
     ((), [(0, 1), (1, 0), (1, 2)], ((0, 1), (1, 0))),
     ((), [(0, 0)], ((0, 0),)),
     (((1,), (0,)), [(0, 1)], ((0, 1),)),
     (((0,), (1,)), [(0, 1)], ()),
     (((1,), (1,)), [(0, 1)], ()),
     (((2,), (), (0,)), [(0, 1), (1, 2)], ((0, 1), (1, 2))),
     (((0, 3), (1,)), [(0, 1)], ())],
)  # fmt: skip
def test_rules_that_cannot_hold_are_found(
    pins: tuple[tuple[int, ...], ...],
    after: list[tuple[int, int]],
    broken: tuple[tuple[int, int], ...],
) -> None:
    assert contradictions(pins, after) == broken


def test_a_rule_that_cannot_hold_is_set_aside() -> None:
    filling = Filling(((0, 9), (9, 0)), (1, 1), pins=((1,), (0,)), after=((0, 1),))
    assert fill(filling) == ((1,), (0,))


def test_nothing_is_printed(capfd: pytest.CaptureFixture[str]) -> None:
    fill(made_up(Random(7), 30, 12))  # noqa: S311
    assert capfd.readouterr() == ("", "")
