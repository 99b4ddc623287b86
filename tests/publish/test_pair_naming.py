"""Which plants have a page together, and how it is called."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from helpers.workshop import bank_of
from sallet.publish.pair_naming import named_pairs

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.publish.pair_naming import Pair


def lesson(name: str, *looks: str, head: str = "taught as: food") -> str:
    """Return the text of a lesson that names some look-alikes."""
    return f"---\nname: {name}\n{head}\n---\n## Look-alikes\n" + "\n".join(looks)


HARM = "taught as: look-alike\ndanger: deadly"


def pairs_of(files: Mapping[str, str], taught: str = "") -> tuple[Pair, ...]:
    """Return the pairs of some lessons, or of those of them that a course teaches, by slug."""
    bank = bank_of(files)
    slugs = taught.split() or [one.slug for one in bank.lessons]
    return named_pairs({one.slug: one for one in bank.lessons if one.slug in slugs}, bank)


def plain(pair: Pair) -> tuple[str, str, str, str, list[tuple[str, int]]]:
    """Return a pair as its page, its plants, the other's danger and where it is named."""
    named = [(naming.lesson.slug, naming.number) for naming in pair.namings]
    return pair.path, pair.this.slug, pair.name, pair.danger, named


def test_two_lessons_that_name_each_other_have_one_page_the_food_plant_first() -> None:
    files = {
        "yew.md": lesson("Yew", "### Rose\n", head=HARM),
        "rose.md": lesson("Rose", "### Yew\n"),
    }
    (pair,) = pairs_of(files)
    assert plain(pair) == ("pairs/rose-and-yew.html", "rose", "Yew", "deadly",
                           [("rose", 0), ("yew", 0)])  # fmt: skip
    assert [naming.lesson.slug for naming in pair.own] == ["rose"]


def test_the_food_plant_is_first_also_where_only_the_other_lesson_names_it() -> None:
    files = {"yew.md": lesson("Yew", "### Rose\n", head=HARM), "rose.md": lesson("Rose")}
    (pair,) = pairs_of(files)
    assert plain(pair) == ("pairs/rose-and-yew.html", "rose", "Yew", "deadly", [("yew", 0)])
    assert pair.own == ()


def test_of_two_plants_of_one_kind_that_of_the_earlier_lesson_is_first() -> None:
    files = {"b.md": lesson("B"), "a.md": lesson("A", "### B\n")}
    assert [pair.path for pair in pairs_of(files)] == ["pairs/b-and-a.html"]
    assert [pair.path for pair in pairs_of(dict(reversed(files.items())))] == ["pairs/a-and-b.html"]


def test_what_is_described_in_place_is_called_by_its_name() -> None:
    found = pairs_of(
        {"a.md": lesson("A", "### Fool's Parsley\n- danger: poisonous\n", "### ??\n", "### !!\n")}
    )
    assert [plain(pair)[:4] for pair in found] == [
        ("pairs/a-and-fools-parsley.html", "a", "Fool's Parsley", "poisonous"),
        ("pairs/a-and-look-alike.html", "a", "??", "unknown"),
        ("pairs/a-and-look-alike-2.html", "a", "!!", "unknown"),
    ]


def test_no_two_pages_have_one_name() -> None:
    files = {
        "x.md": lesson("X", "### y and z\n", "### y and z 2\n"),
        "x-and-y.md": lesson("Xy", "### z\n", "### Z\n", "### z 2\n"),
    }
    assert [pair.path for pair in pairs_of(files)] == [
        "pairs/x-and-y-and-z.html", "pairs/x-and-y-and-z-2.html", "pairs/x-and-y-and-z-3.html",
        "pairs/x-and-y-and-z-4.html", "pairs/x-and-y-and-z-2-2.html",
    ]  # fmt: skip


def test_one_plant_under_two_headings_has_one_page() -> None:
    files = {
        "a.md": lesson("A", "### Yew\n", "### Taxus\n- scientific name: Taxus baccata L.\n"),
        "yew.md": lesson("Yew", head=f"{HARM}\nscientific name: Taxus baccata L."),
    }
    (pair,) = pairs_of(files)
    assert plain(pair) == ("pairs/a-and-yew.html", "a", "Yew", "deadly", [("a", 0), ("a", 1)])
    assert pair.scientific_name == "Taxus baccata L."


def test_a_lesson_that_names_itself_is_no_pair() -> None:
    assert pairs_of({"a.md": lesson("A", "### A\n")}) == ()


def test_a_plant_that_the_course_does_not_teach_is_never_first() -> None:
    files = {"yew.md": lesson("Yew", "### Rose\n", head=HARM), "rose.md": lesson("Rose", "### Yew")}
    (pair,) = pairs_of(files, "yew")
    assert plain(pair) == ("pairs/yew-and-rose.html", "yew", "Rose", "food", [("yew", 0)])


@pytest.mark.parametrize(
    ("head", "told", "danger"),
    [
        ("taught as: food", "", "food"),
        ("taught as: food", "- danger: harmless", "food"),
        ("taught as: food", "- danger: deadly", "deadly"),
        ("taught as: food\ndanger: poisonous", "", "poisonous"),
        ("taught as: look-alike", "- danger: deadly", "deadly"),
        ("taught as: look-alike", "", "unknown"),
        ("taught as: look-alike\ndanger: harmful", "- danger: deadly", "harmful"),
    ],
)
def test_the_danger_is_the_lessons_own_and_a_grave_one_is_never_called_food(
    head: str, told: str, danger: str
) -> None:
    (pair,) = pairs_of({"a.md": lesson("A", f"### B\n{told}\n"), "b.md": lesson("B", head=head)})
    assert pair.danger == danger


def test_what_is_recorded_of_the_other_is_what_stands_in_place_and_in_its_lesson() -> None:
    leaves = "## Identification\n### Leaves\n- margin: toothed\n"
    files = {
        "a.md": lesson("A", "### B\n#### Leaves\n- tip: acute\n"),
        "b.md": f"---\nname: B\n---\n{leaves}## Look-alikes\n### A\n#### Leaves\n- tip: blunt\n",
    }
    (pair,) = pairs_of(files)
    assert [(fact.label, fact.text) for fact in pair.those] == [
        ("tip", "acute"), ("margin", "toothed"),
    ]  # fmt: skip
