"""A key as it is printed: numbers, leads, and what stands where a lead ends."""

from __future__ import annotations

from dataclasses import replace

from helpers.courses import site_of
from helpers.keys import ALTERNATE, HEDGE, OPPOSITE, lesson, lines_of
from sallet.publish.key_against import Against
from sallet.publish.key_couplets import CoupletLines, Ending, Name, Printer, size_of
from sallet.publish.key_words import Explainer
from sallet.season.keying import key_table
from sallet.study.couplets import Couplet, End, Lead, build_key
from sallet.study.table import Character, Table

SITE = site_of(HEDGE)
TABLE = key_table(SITE.years, SITE.bank.vocabulary)
PRINTER = Printer(TABLE, SITE.setting, Explainer(SITE.words))
COUPLETS = PRINTER.couplets(build_key(TABLE))
TAUGHT = SITE.setting.taught
HEMLOCK = Against("Hemlock", "deadly", "plants/hemlock.html")


def endings(couplets: tuple[CoupletLines, ...]) -> dict[tuple[int, int], Ending]:
    """Return what stands at the ends, by couplet and lead (0 or 1)."""
    return {
        (couplet.number, at): lead.ending
        for couplet in couplets
        for at, lead in enumerate(couplet.leads)
        if lead.ending
    }


def test_couplets_are_numbered_in_reading_order_and_say_where_one_came_from() -> None:
    """The key worked out by hand: halves first, then what is told of flowers and stems."""
    assert lines_of(COUPLETS) == [
        "1 (0) Leaves, arrangement: alternate → 2",
        "1 (0) Leaves, arrangement: opposite → 3",
        "2 (1) Flowers, petals: 5 → Hemlock",
        "2 (1) Flowers, petals: 6 → Dock, Sorrel",
        "3 (1) Stem, interior: solid → Elder, Mercury",
        "3 (1) Stem, interior: hollow → Dwarf elder",
    ]


def test_all_that_follows_a_first_lead_stands_before_what_follows_the_second() -> None:
    inner = Couplet(
        0, (Lead(frozenset({0}), End(frozenset({0}))), Lead(frozenset({1}), End(frozenset({1}))))
    )
    middle = replace(inner, leads=(Lead(frozenset({0}), inner), Lead(frozenset({1}), inner)))
    key = replace(inner, leads=(Lead(frozenset({0}), middle), Lead(frozenset({1}), inner)))
    numbered = [
        (c.number, c.came_from, [lead.number for lead in c.leads]) for c in PRINTER.couplets(key)
    ]
    assert numbered == [
        (1, 0, [2, 5]), (2, 1, [3, 4]), (3, 2, [0, 0]), (4, 2, [0, 0]), (5, 1, [0, 0]),
    ]  # fmt: skip
    assert (size_of(key), size_of(End(frozenset()))) == (5, 0)


def test_a_couplet_says_whether_its_character_may_be_trusted() -> None:
    assert [c.is_reliable for c in COUPLETS] == [True, True, True]
    files = {"course.yml": "", "a.md": lesson("A", "Flowers colour: white"),
             "b.md": lesson("B", "Flowers colour: blue")}  # fmt: skip
    site = site_of(files)
    table = key_table(site.years, site.bank.vocabulary)
    (couplet,) = Printer(table, site.setting, Explainer(())).couplets(build_key(table))
    assert not couplet.is_reliable
    assert (
        couplet.character.caveat == "Pale and white forms occur in most plants, and colours fade."
    )


def test_a_group_in_which_one_harms_is_left_and_another_is_not() -> None:
    found = endings(COUPLETS)
    assert [(end.is_group, end.harms) for end in found.values()] == [
        (False, False), (True, False), (True, True), (False, False),
    ]  # fmt: skip


def test_an_end_names_the_look_alikes_and_what_one_character_alone_keeps_away() -> None:
    """Mercury has opposite leaves and nothing is told of its petals; hemlock has five."""
    end = endings(COUPLETS)[2, 1]
    look_alike = Against("Hemlock", "deadly", "pairs/dock-and-hemlock.html")
    assert end.names == (Name(TAUGHT["dock"], (look_alike,)), Name(TAUGHT["sorrel"], ()))
    assert end.barely == (HEMLOCK, Against("Mercury", "deadly", "plants/mercury.html"))


def test_what_two_characters_keep_away_is_not_named() -> None:
    """On the way to elder stand the leaves and the stem, and both speak against hemlock."""
    elder = frozenset({TABLE.plants.index("elder")})
    path = ((1, frozenset({1})), (0, frozenset({0})))
    assert [TABLE.characters[at].options for at, _ in path] == [
        ("alternate", "opposite"), ("solid", "hollow"),
    ]  # fmt: skip
    barely = PRINTER.ending(End(elder), path[:1]).barely
    assert barely == (HEMLOCK,)
    # The stem alone speaks against the dwarf elder, which is named as a look-alike already.
    assert PRINTER.ending(End(elder), path).barely == ()


def test_two_couplets_of_one_character_are_one_character() -> None:
    character = Character(TABLE.characters[1].name, ("a", "b", "c"), (
        frozenset({0}), frozenset({1}), frozenset({2}),
    ))  # fmt: skip
    table = Table(("dock", "sorrel", "hemlock"), (character,), frozenset({0, 1}), frozenset({2}))
    printer = replace(PRINTER, table=table)
    path = ((0, frozenset({0, 1})), (0, frozenset({1})))
    assert printer.ending(End(frozenset({1})), path).barely == (HEMLOCK,)


def test_at_a_plant_to_keep_away_from_nothing_else_is_named() -> None:
    assert endings(COUPLETS)[2, 0] == Ending((Name(TAUGHT["hemlock"], ()),), harms=False, barely=())


def test_a_state_that_neither_lead_rules_out_is_said_to_follow_both() -> None:
    """Bunched leaves are recorded of larch, and may be alternate or opposite for all one sees."""
    files = {
        "course.yml": "",
        "oak.md": lesson("Oak", ALTERNATE),
        "ash.md": lesson("Ash", OPPOSITE),
        "larch.md": lesson("Larch", "Leaves arrangement: bunched"),
    }
    site = site_of(files)
    table = key_table(site.years, site.bank.vocabulary)
    (couplet,) = Printer(table, site.setting, Explainer(())).couplets(build_key(table))
    assert couplet.both == "bunched"
    assert [len(lead.ending.names) for lead in couplet.leads if lead.ending] == [2, 2]
    assert [c.both for c in COUPLETS] == ["", "", ""]


def test_where_nothing_parts_the_plants_there_is_no_couplet() -> None:
    assert PRINTER.couplets(End(frozenset({0, 1}))) == ()
