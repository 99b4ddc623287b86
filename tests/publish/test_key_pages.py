"""The numbered keys as pages: which plants, what is said at both ends, how long they are."""

from __future__ import annotations

import re

import pytest

from helpers.courses import pages_of, seen, site_of
from helpers.keys import HEDGE, lines_of
from sallet.lesson.values.times import MONTHS
from sallet.publish.key_pages import KeyLength

SITE = site_of(HEDGE)
KEYS = {page.path: page for page in SITE.keys}
TEXTS = {path: text for path, text in pages_of(HEDGE).items() if path.startswith("keys/")}
YEAR = TEXTS["keys/year.html"]
CARE = (
    "This key knows only the 6 plants of this course.",
    "A plant outside it comes out under a wrong name.",
    "Nothing is eaten by a key alone",
    "Where an organ cannot be seen, or both leads could be right, follow both",
    "Where neither fits, leave the plant",
)


def between(text: str, start: str, end: str) -> str:
    """Return the words of a part of a page."""
    first = text.index(start)
    return seen(text[first : text.index(end, first + len(start))]).text


def test_there_is_a_key_for_the_year_and_for_each_month() -> None:
    names = ["year", *(month.lower() for month in MONTHS)]
    assert list(KEYS) == list(TEXTS) == [f"keys/{name}.html" for name in names]


def test_a_course_without_plants_has_no_keys() -> None:
    assert site_of({"course.yml": ""}).keys == ()


@pytest.mark.parametrize("path", TEXTS)
def test_every_plant_of_the_course_is_reached_or_said_to_be_left_out(path: str) -> None:
    page, text = KEYS[path], seen(TEXTS[path])
    endings = [lead.ending for c in page.couplets for lead in c.leads if lead.ending]
    reached = {n.lesson.slug for end in (*endings, page.only) if end for n in end.names}
    assert reached == {lesson.slug for lesson in page.plants}
    assert {*page.plants, *page.left_out} == set(SITE.ordered)
    led = {link.attributes["href"] for link in text.all("a")}
    assert {f"../plants/{lesson.slug}.html" for lesson in SITE.ordered} - led == set()


@pytest.mark.parametrize("path", TEXTS)
def test_at_head_and_foot_stands_what_a_key_cannot_do(path: str) -> None:
    text = seen(TEXTS[path]).text
    assert {words: text.count(words) for words in CARE} == dict.fromkeys(CARE, 2)
    if KEYS[path].couplets:
        first, last = TEXTS[path].index('id="couplet-1"'), TEXTS[path].rindex('class="couplet"')
        assert TEXTS[path].index("keep-off") < first
        assert TEXTS[path].rindex("keep-off") > last


def test_a_month_asks_only_for_what_can_be_seen_in_it() -> None:
    """Nothing but the leaves can be looked at in September, and mercury is gone."""
    assert lines_of(KEYS["keys/september.html"].couplets) == [
        "1 (0) Leaves, arrangement: alternate → Dock, Sorrel, Hemlock",
        "1 (0) Leaves, arrangement: opposite → Dwarf elder, Elder",
    ]
    said = between(TEXTS["keys/september.html"], "<p>For plants", "<ol")
    assert said == (
        "For plants met in September at Askerby: it asks only for what most of that time can be "
        "seen. If the season is early or late, use the key for the whole year. Left out, because "
        "nothing of them is to be seen in September: Mercury ▲▲ deadly."
    )


def test_where_nothing_parts_the_plants_of_a_month_they_are_named_without_a_key() -> None:
    said = between(TEXTS["keys/january.html"], "<p>There is no key", "<ol")
    assert said == (
        "There is no key: nothing that is recorded tells these plants apart in January. "
        "These are not told apart here: Dock ❧ food, Sorrel ❧ food. Their own pages say more. "
        "Before Dock is believed, hold it against: Hemlock ▲▲ deadly"
    )


def test_a_plant_that_stands_alone_is_still_held_against_its_look_alikes() -> None:
    files = {"course.yml": "", "elder.md": HEDGE["elder.md"]}
    said = between(pages_of(files)["keys/june.html"], "<p>There is no key", "<ol")
    assert said == (
        "There is no key: of this course only Elder ❧ food can be seen in June. "
        "Now hold it against: Dwarf elder ▲ poisonous, Yew ▲▲ deadly, Danewort ▲ danger not stated"
    )


def test_a_month_in_which_nothing_can_be_seen_says_so() -> None:
    files = {"course.yml": "", "hemlock.md": HEDGE["mercury.md"]}
    text = seen(pages_of(files)["keys/january.html"]).text
    assert "none of the plants of this course can be seen in January" in text


def test_elsewhere_a_month_says_that_its_days_are_estimates() -> None:
    place = "place: {name: Askerby, latitude: 57.4, longitude: -2.6, elevation: 150 m}\n"
    seen_at = "taught as: food\nseen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}"
    files = {
        "course.yml": place,
        "dock.md": HEDGE["dock.md"].replace("taught as: food", seen_at),
    }
    pages = pages_of(files)
    assert (
        "The days are estimates for Askerby; the season page says why."
        in seen(pages["keys/june.html"]).text
    )
    assert "estimates" not in seen(pages["keys/year.html"]).text
    assert "estimates" not in seen(TEXTS["keys/june.html"]).text


# ---- the ends -----------------------------------------------------------------------------


def test_a_group_in_which_one_harms_says_leave_all_of_them() -> None:
    said = between(YEAR, 'class="ending leave"', "</div>")
    assert said.endswith(
        "Leave all of them. These are not told apart here: Elder ❧ food, Mercury ▲▲ deadly."
    )
    assert YEAR.count("ending leave") == 1


def test_a_group_of_food_says_what_each_is_held_against() -> None:
    said = between(YEAR, 'class="ending"', "</div>")
    assert said.removeprefix('class="ending"> ') == (
        "These are not told apart here: Dock ❧ food, Sorrel ❧ food. Their own pages say more. "
        "Before Dock is believed, hold it against: Hemlock ▲▲ deadly "
        "One character alone has kept them from: Hemlock ▲▲ deadly, Mercury ▲▲ deadly. "
        "Look for a second."
    )


def test_a_food_plant_by_itself_is_followed_by_its_look_alikes_and_where_they_are_told_apart() -> (
    None
):
    files = {name: text for name, text in HEDGE.items() if name != "mercury.md"}
    text = pages_of(files)["keys/year.html"]
    part = text[text.index("Now hold it against") :]
    told = seen(part[: part.index("</p>")])
    assert told.text == (
        "Now hold it against: Dwarf elder ▲ poisonous, Yew ▲▲ deadly, Danewort ▲ danger not stated"
    )
    assert [link.attributes["href"] for link in told.all("a")] == [
        "../pairs/elder-and-dwarf-elder.html", "../pairs/elder-and-yew.html",
        "../pairs/elder-and-danewort.html",
    ]  # fmt: skip


def test_leads_and_numbers_are_links_to_each_other() -> None:
    led = [a.attributes["href"] for a in seen(YEAR).all("a") if "couplet-" in a.attributes["href"]]
    assert led == ["#couplet-2", "#couplet-3", "#couplet-1", "#couplet-1"]
    assert "2 reached from couplet (1)" in seen(YEAR).text


def test_what_neither_lead_rules_out_is_told_below_them() -> None:
    files = {"course.yml": "", "oak.md": HEDGE["dock.md"], "ash.md": HEDGE["elder.md"],
             "larch.md": HEDGE["dock.md"].replace("alternate", "bunched").replace("6", "8")}  # fmt: skip
    told = re.findall(r'class="both">(.*?)</p>', pages_of(files)["keys/september.html"])
    assert [seen(words).text for words in told] == [
        "Leaves, arrangement: bunched: follow both leads."
    ]


# ---- length -------------------------------------------------------------------------------


def test_a_key_tells_its_length_beside_the_least_there_could_be() -> None:
    """Six plants: Osborne's least mean is (6·2 + 2·(6 − 4)) / 6 = 2.67 couplets."""
    assert KEYS["keys/year.html"].length == KeyLength(6, 4, 2, "2.0", "2.7")
    assert (
        between(YEAR, '<p class="aside key-length">', "</p>")
        .removeprefix("")
        .endswith(
            "6 plants at 4 ends, of which 2 are groups that are not told apart. A plant is reached "
            "after 2.0 couplets on average; no key that told 6 plants one by one could do with fewer "
            "than 2.7 (Osborne 1963, New Phytologist 62)."
        )
    )


def test_a_page_explains_only_the_words_of_its_own_couplets() -> None:
    def words(path: str) -> list[str]:
        return [used.label.name for subject in KEYS[path].words for used in subject.labels]

    assert words("keys/year.html") == ["interior", "arrangement", "petals"]
    assert words("keys/september.html") == ["arrangement"]
    assert words("keys/january.html") == []
