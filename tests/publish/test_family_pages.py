"""The page of families: its values, and how they are set."""

from __future__ import annotations

from dataclasses import astuple
from typing import TYPE_CHECKING

import pytest

from helpers.courses import seen, site_of
from sallet.lesson.dangers import DANGERS, danger_of
from sallet.publish.family_pages import FamilyPage, family_page
from sallet.publish.pages import NAVIGATION
from sallet.publish.templates import site_templates
from sallet.publish.values import explained
from sallet.study.glossary import anchor

if TYPE_CHECKING:
    from collections.abc import Mapping

    from helpers.courses import Seen


def lesson(name: str, family: str, *lines: str, head: str = "taught as: food") -> str:
    """Return the text of a lesson with facts of the leaves."""
    body = "\n".join(f"- {line}" for line in lines)
    top = f"---\nname: {name}\nfamily: {family}\n{head}\n---\n"
    return f"{top}## Identification\n### Leaves\n{body}\n"


def page_of(files: Mapping[str, str]) -> FamilyPage:
    """Return the page's values for a course of some lessons."""
    return family_page(site_of({"course.yml": "", **files}).setting)


def html_of(files: Mapping[str, str]) -> str:
    """Return the page as it is set for a course of some lessons."""
    site = site_of({"course.yml": "", **files})
    return site_templates().get_template("families.html").render(
        site=site, course=site.course, root="", here="families.html", navigation=NAVIGATION,
        dangers=DANGERS, anchor=anchor, danger_of=danger_of, page=family_page(site.setting),
    )  # fmt: skip


def seen_of(files: Mapping[str, str]) -> Seen:
    """Return the page as it is set, taken apart."""
    return seen(html_of(files))


POISON = "taught as: look-alike\ndanger: poisonous"
DEADLY = "taught as: look-alike\ndanger: deadly"
UNTOLD = "taught as: look-alike"
ELDERS = {
    "elder.md": lesson("Elder", "Viburnaceae", "margin: smooth-edged", "arrangement: opposite",
                       "length: 5 cm", "shape: ovate"),
    "dwarf.md": lesson("Dwarf elder", "Viburnaceae", "margin: entire", "arrangement: opposite",
                       "length: 5 cm", "shape: elliptic", head=POISON),
}  # fmt: skip
OAK = {"oak.md": lesson("Oak", "Fagaceae", "margin: entire")}
ALL = {**ELDERS, **OAK, "what.md": lesson("What", "", "margin: entire")}
KEEP_OFF = "To know the family is not enough to eat by."


# ---- the values ---------------------------------------------------------------------------


def test_each_family_has_its_members_and_the_rows_that_all_of_them_share() -> None:
    page = page_of(ALL)
    assert [(f.name, f.ident, len(f.lessons), len(f.rows)) for f in page.families] == [
        ("Fagaceae", "family-1", 1, 0), ("Viburnaceae", "family-2", 2, 2), ("", "family-3", 1, 0),
    ]  # fmt: skip


def test_a_shared_feature_is_a_row_whose_words_explain_themselves() -> None:
    first = next(f for f in page_of(ELDERS).families)
    margin, arrangement = (explained(x, "leaves", x) for x in ("margin", "arrangement"))
    words = {"elder": "smooth-edged", "dwarf": "entire"}[first.lessons[0].slug]
    assert [astuple(row) for row in first.rows] == [
        (arrangement, explained("opposite", "leaves", "arrangement", "opposite"), "", False, "Leaves"),
        (margin, explained(words, "leaves", "margin", "entire"), "", False, "Leaves"),
    ]  # fmt: skip


def test_a_piece_of_an_organ_stands_by_its_own_name() -> None:
    text = lesson("A", "Rosaceae").replace("### Leaves", "### Leaf stalks\n- surface: downy")
    (family,) = page_of({"a.md": text, "b.md": text.replace("name: A", "name: B")}).families
    assert [row.organ for row in family.rows] == ["leaf stalks"]


def test_the_words_are_those_of_the_tables_and_no_others() -> None:
    found = page_of(ALL).words
    assert {u.subject.name: [x.label.name for x in u.labels] for u in found} == {
        "leaves": ["arrangement", "margin"]
    }
    assert page_of(OAK).words == ()


@pytest.mark.parametrize(
    ("heads", "grave", "untold", "mixed"),
    [
        (["taught as: food", POISON], 1, 0, True),
        (["taught as: food", POISON, DEADLY], 2, 0, True),
        (["taught as: food", UNTOLD], 0, 1, True),
        (["taught as: food", "taught as: food\ndanger: deadly"], 1, 0, True),
        (["taught as: food", "taught as: look-alike\ndanger: harmful"], 0, 0, False),
        ([POISON, DEADLY], 2, 0, False),
        (["taught as: food", "taught as: food"], 0, 0, False),
    ],
)
def test_food_and_poison_in_one_family_are_counted(
    heads: list[str],
    grave: int,
    untold: int,
    mixed: bool,  # noqa: FBT001
) -> None:
    files = {f"p{n}.md": lesson(f"P{n}", "Rosaceae", head=head) for n, head in enumerate(heads)}
    (family,) = page_of(files).families
    assert (family.grave, family.untold, family.is_mixed) == (grave, untold, mixed)


def test_plants_whose_family_is_not_told_are_no_relatives() -> None:
    files = {"a.md": lesson("A", ""), "b.md": lesson("B", "", head=POISON)}
    (family,) = page_of(files).families
    assert (family.grave, family.is_mixed) == (1, False)


# ---- how they are set ---------------------------------------------------------------------


def test_a_family_of_food_and_poison_says_so_before_what_they_share() -> None:
    html = html_of(ELDERS)
    assert 0 < html.index("1 of these is deadly or poisonous.") < html.index("<table")
    assert html.count('class="keep-off"') == 1
    assert KEEP_OFF in html


def test_more_than_one_and_those_whose_danger_is_not_stated_are_told_too() -> None:
    more = {"x.md": lesson("X", "Viburnaceae", head=DEADLY),
            "y.md": lesson("Y", "Viburnaceae", head=UNTOLD)}  # fmt: skip
    text = seen_of({**ELDERS, **more}).text
    assert f"2 of these are deadly or poisonous. Of 1 the danger is not stated. {KEEP_OFF}" in text


def test_a_family_without_poison_has_no_such_warning() -> None:
    assert "keep-off" not in html_of(OAK)


def test_every_plant_stands_on_the_page_with_its_danger() -> None:
    page = seen_of(ALL)
    led = [a.attributes["href"] for a in page.all("a")]
    slugs = [name.removesuffix(".md") for name in ALL]
    assert [s for s in slugs if led.count(f"plants/{s}.html") != 1] == []
    assert "Elder ❧ food" in page.text
    assert "Dwarf elder ▲ poisonous" in page.text


def test_what_is_shared_is_told_with_what_it_is_worth() -> None:
    text = seen_of(ALL).text
    assert "What all 2 plants of the family Viburnaceae in this course share" in text
    assert text.count("What a family shares tells you the family, never the plant.") == 1


def test_where_nothing_can_be_compared_the_page_says_why() -> None:
    text = seen_of(ALL).text
    assert text.count("Each the only one of its family in this course: nothing to compare.") == 1
    assert "Family not told" in text
    assert text.count("These lessons do not tell the family: nothing to compare.") == 1


def test_where_nothing_is_the_same_the_page_says_so() -> None:
    files = {"a.md": lesson("A", "Rosaceae", "margin: entire"), "b.md": lesson("B", "Rosaceae")}
    assert "The lessons record nothing that is the same in all 2." in seen_of(files).text


def test_a_course_without_lessons_has_its_page_too() -> None:
    assert page_of({}).families == ()
    assert "Families" in seen_of({}).text


def test_every_word_that_can_be_pressed_has_its_slip_and_no_id_stands_twice() -> None:
    page = seen_of(ALL)
    idents = [e.attributes["id"] for e in page.elements if "id" in e.attributes]
    pressed = [b.attributes["popovertarget"] for b in page.all("button")]
    assert len(pressed) == 4
    assert set(pressed) - set(idents) == set()
    assert len(idents) == len(set(idents))


def test_a_familys_name_is_escaped_wherever_it_stands() -> None:
    files = {
        f"{name}.md": lesson(name, '"<script>x</script>"', "margin: entire") for name in ("a", "b")
    }
    page = seen_of(files)
    assert page.all("script") == []
    assert "What all 2 plants of the family <script>x</script> in this course share" in page.text
