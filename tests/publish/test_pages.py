"""Every page of the site: nothing lost, nothing let in, nobody asked."""

from __future__ import annotations

import re
from collections import Counter
from itertools import count
from pathlib import Path
from urllib.parse import urlsplit

import pytest
from jinja2 import UndefinedError

from helpers.courses import Seen, pages_of, seen, site_of
from helpers.workshop import lesson_of
from sallet.lesson.dangers import DANGERS, danger_of
from sallet.lesson.values.times import MONTHS
from sallet.publish import pages
from sallet.publish.briefing import STANDING
from sallet.publish.links import lost_links
from sallet.publish.pages import NAVIGATION, Page, build_pages
from sallet.publish.templates import site_templates
from sallet.season.reasons import LAW

HERE = Path(__file__).parent


def filled(name: str, numbers: count[int]) -> str:
    """Return a file in which every `@@` is words of its own that try to break out of the page."""
    text = (HERE / name).read_text("utf-8")
    return re.sub("@@", lambda _: hostile(next(numbers)), text)


def hostile(number: int) -> str:
    """Return words that would run as a script where they are not escaped."""
    return f'w{number}"><script>x{number}</script>'


NUMBERS = count(1)
FILES = {
    "course.yml": filled("everything.yml", NUMBERS),
    "everything.md": filled("everything.md", NUMBERS),
    "yew.md": "---\nname: Yew\ntaught as: look-alike\ndanger: deadly\n---\n",
    "leaf.jpg": "1200x800",
}
LAST = next(NUMBERS) - 1
TEXTS = pages_of(
    {**FILES, "course.yml": FILES["course.yml"].replace("[everything]", "[everything, yew]")}
)
PAGES = {path: seen(text) for path, text in TEXTS.items() if path.endswith(".html")}
EMPTY = {p: seen(t) for p, t in pages_of({"course.yml": ""}).items() if p.endswith(".html")}
each_page = pytest.mark.parametrize("page", PAGES.values(), ids=PAGES)


# ---- which pages there are ----------------------------------------------------------------


def test_a_course_has_these_pages() -> None:
    named = [path for path, _ in NAVIGATION]
    assert sorted(TEXTS) == sorted([
        *named, "poster.html", "plants/everything.html", "plants/yew.html", "style.css",
        "season.js", "sessions.ics", "harvest.ics", "pairs.js", "key.js",
        *(f"keys/{name}.html" for name in ("year", *(month.lower() for month in MONTHS))),
        "pairs/everything-and-w36-script-x36-script.html",
    ])  # fmt: skip


def test_a_course_without_lessons_has_its_pages_too() -> None:
    assert sorted(EMPTY) == sorted(["poster.html", *(path for path, _ in NAVIGATION)])


@pytest.mark.parametrize("page", [p for path, p in PAGES.items() if path != "poster.html"])
def test_every_page_leads_to_the_others_and_says_which_it_is(page: Seen) -> None:
    led = {link.attributes["href"].removeprefix("../") for link in page.all("a")}
    assert {path for path, _ in NAVIGATION} - led == set()
    assert len([a for a in page.all("a") if "aria-current" in a.attributes]) <= 1


def test_a_page_of_the_navigation_is_marked_in_it() -> None:
    for path, name in NAVIGATION:
        (link,) = [a for a in PAGES[path].all("a") if "aria-current" in a.attributes]
        assert link.attributes == {"href": path, "aria-current": "page"}
        assert name in PAGES[path].text


def test_no_link_of_a_page_leads_nowhere() -> None:
    made = [Page(path, text) for path, text in TEXTS.items()]
    pictures = re.findall(r"pictures/[\w.-]+", "".join(TEXTS.values()))
    assert list(lost_links(made, [*TEXTS, *pictures])) == []


def test_the_sheet_for_the_wall_is_found_from_the_season_and_leads_back() -> None:
    assert "poster.html" in [a.attributes["href"] for a in PAGES["season.html"].all("a")]
    assert [a.attributes["href"] for a in PAGES["poster.html"].all("a")] == ["season.html"]


# ---- nothing lost, nothing let in ---------------------------------------------------------


def test_every_word_of_a_lesson_and_of_its_course_is_on_a_page() -> None:
    """But for shorter wordings for the field card. Everything is escaped."""
    text = " ".join(page.text for page in PAGES.values())
    lost = [number for number in range(1, LAST + 1) if hostile(number) not in text]
    assert lost == []
    assert LAST > 120


def test_every_word_of_a_lesson_is_on_the_plants_own_page() -> None:
    ours = range(int(_first_of("everything.md")), LAST + 1)
    text = PAGES["plants/everything.html"].text
    assert [number for number in ours if hostile(number) not in text] == []


def _first_of(name: str) -> str:
    found = re.search(r"w(\d+)", FILES[name])
    assert found
    return found[1]


@each_page
def test_no_word_of_a_lesson_becomes_a_script(page: Seen) -> None:
    scripts = [e for e in page.all("script") if "src" not in e.attributes]
    assert scripts == []
    assert [
        e for e in page.elements if e.tag in {"iframe", "object", "embed", "base", "form"}
    ] == []


@each_page
def test_nothing_stands_in_the_text_that_the_security_policy_forbids(page: Seen) -> None:
    """No style of its own, no style element, no event handler."""
    assert page.all("style") == []
    names = [name for element in page.elements for name in element.attributes]
    assert [name for name in names if name == "style" or name.startswith("on")] == []


@each_page
def test_the_security_policy_allows_the_courses_own_files_only(page: Seen) -> None:
    (meta,) = [m for m in page.all("meta") if m.attributes.get("http-equiv")]
    assert meta.attributes["http-equiv"] == "Content-Security-Policy"
    policy = {d.split()[0]: d.split()[1:] for d in meta.attributes["content"].split(";")}
    assert policy["default-src"] == ["'none'"]
    assert (policy["base-uri"], policy["form-action"]) == (["'none'"], ["'none'"])
    assert {source for sources in policy.values() for source in sources} == {"'none'", "'self'"}


@each_page
def test_a_page_asks_no_other_host_for_anything(page: Seen) -> None:
    """Only a link that somebody presses may lead out of the course."""
    asked = [
        (element.tag, name, address)
        for element in page.elements
        for name, value in element.attributes.items()
        if name in {"src", "href", "srcset", "poster", "data", "action", "xlink:href", "ping"}
        for address in (value.split(",") if name == "srcset" else [value])
        if element.tag != "a" and (urlsplit(address.strip()).scheme or address.startswith("//"))
    ]
    assert asked == []
    assert [e for e in page.all("meta") if e.attributes.get("http-equiv") == "refresh"] == []


def test_the_style_sheet_asks_nobody() -> None:
    assert re.findall(r"url\(|@import|src:", TEXTS["style.css"]) == []


@pytest.mark.parametrize("found", [PAGES, EMPTY], ids=["full", "empty"])
def test_no_page_uses_an_id_twice_or_names_one_that_is_not_there(found: dict[str, Seen]) -> None:
    for page in found.values():
        idents = Counter(e.attributes["id"] for e in page.elements if "id" in e.attributes)
        assert {ident: n for ident, n in idents.items() if n > 1} == {}
        named = [
            ident
            for element in page.elements
            for name in ("aria-labelledby", "aria-describedby", "popovertarget")
            for ident in element.attributes.get(name, "").split()
        ]
        assert set(named) - set(idents) == set()


def test_headings_of_one_name_have_places_of_their_own() -> None:
    text = "## Doubles\na\n## Sheet\nb\n## Sheet\nc\n## Look-alikes\n### Yew\nd\n### yew\ne\n"
    page = seen(pages_of({"course.yml": "", "a.md": text})["plants/a.html"])
    idents = [e.attributes["id"] for e in page.elements if "id" in e.attributes]
    assert len(idents) == len(set(idents))


# ---- words on safety ----------------------------------------------------------------------

SAFETY = (
    "Do not eat what you have not identified with certainty",
    "does not replace a teacher beside you",
    "Only after certain identification",
    "try a small amount",
    "Local law and the rules of protected sites come first",
    "Nothing here is medical advice: ask a doctor or a pharmacist",
    "A poison centre cannot identify a plant over the telephone",
    "Keep the plant",
)
COURSE = "title: Hedge\nemergency:\n  - Ring 999 at once\n  - Or ring 111\n"


def test_the_page_of_a_food_plant_carries_every_word_on_safety() -> None:
    page = seen(pages_of({"course.yml": COURSE, "a.md": "---\nname: A\n---\n"})["plants/a.html"])
    assert [words for words in SAFETY if words not in page.text] == []


def test_every_page_carries_the_emergency_lines_and_the_first_rule() -> None:
    made = pages_of({"course.yml": COURSE, "a.md": FILES["yew.md"]})
    pages_seen = [seen(text) for path, text in made.items() if path.endswith(".html")]
    assert len(pages_seen) > 5
    for page in pages_seen:
        assert "Ring 999 at once" in page.text
        assert "Or ring 111" in page.text
        assert SAFETY[0] in page.text


def test_a_plant_to_keep_away_from_says_so_and_has_no_edible_parts() -> None:
    page = PAGES["plants/yew.html"]
    assert "Do not eat any part of this plant." in page.text
    assert "Edible parts" not in page.text
    assert "▲▲ deadly" in page.text


def test_a_food_plants_doubles_are_told_before_all_else() -> None:
    text = TEXTS["plants/everything.html"]
    assert 0 < text.index('id="doubles"') < text.index('id="know"') < text.index('id="eaten"')


@pytest.mark.parametrize("draft", [True, False])
def test_a_draft_says_so_on_every_page(draft: bool) -> None:  # noqa: FBT001
    made = pages_of(FILES, draft=draft)
    said = {path: "Draft." in seen(text).text for path, text in made.items() if "html" in path}
    assert set(said.values()) == {draft}


@pytest.mark.parametrize(
    ("head", "danger"),
    [("taught as: food", "food"), ("", "food"), ("taught as: look-alike", "unknown"),
     ("taught as: look-alike\ndanger: deadly", "deadly"),
     ("taught as: look-alike\ndanger: harmless", "harmless")],
)  # fmt: skip
def test_a_plant_is_marked_by_its_danger(head: str, danger: str) -> None:
    assert danger_of(lesson_of(f"---\n{head}\n---\n")) == danger


def test_no_danger_is_told_by_a_shape_or_a_word_alone() -> None:
    assert set(DANGERS) == {"deadly", "poisonous", "harmful", "harmless", "food", "unknown"}
    assert len({shape for shape, _ in DANGERS.values()}) == len(DANGERS) - 1  # as for poison
    assert DANGERS["unknown"][0] == DANGERS["poisonous"][0]
    assert all(words for _, words in DANGERS.values())


# ---- the year where the course meets ------------------------------------------------------

RAMSONS = """---
name: Ramsons
seen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}
---
## Season
- leaves: late February to mid June
- bulbs: all year

## Edible parts
- leaves: March to May; raw
- bulbs: all year; cooked

## Look-alikes
### Lily
Two leaves.[^f] See [who](#cautions), [hemlock](hemlock.md#cautions).[^memory]
- danger: poisonous
- settled by: marked while in flower

### Few-flowered garlic
Narrow leaves.
- danger: harmless

## Cautions
- skin: a rash, see [what](#look-alikes).[^f]
- mixed picking: leaf by leaf.
- pregnancy: not in large amounts.

[^f]: A flora.
[^memory]: From memory.
"""
HEMLOCK = """---
name: Hemlock
taught as: look-alike
danger: deadly
---
## Season
- leaves: April to August

## Look-alikes
### Ramsons
White flowers too.
- settled by: marked while in flower

## Cautions
- all parts: every part is deadly.
"""
WALKS = """
title: Walks
plants: [ramsons, hemlock]
place: {name: Askerby, latitude: LATITUDE, longitude: -2.6, elevation: 150 m}
emergency: Ring 999 at once
sessions:
  - {date: 2027-04-17, starts: "10:00", length: 2 h, plants: [Hemlock, Ramsons], title: Leaves}
  - {date: 2027-08-07, plants: [Ramsons], title: Late}
"""
LESSONS = {"ramsons.md": RAMSONS, "hemlock.md": HEMLOCK}
HOME = pages_of({"course.yml": WALKS.replace("LATITUDE", "54.4"), **LESSONS})
NORTH = pages_of({"course.yml": WALKS.replace("LATITUDE", "57.4"), **LESSONS})
"""Three degrees further north: 12 days by Hopkins' law, 4 for each degree of latitude."""
ESTIMATES = ("about mid March", "stimate", "where it was seen", "Hopkins")


def between(text: str, start: str, end: str) -> Seen:
    """Return a part of a page, taken apart."""
    first = text.index(start)
    return seen(text[first : text.index(end, first)])


def test_elsewhere_a_plants_page_says_about_when_why_and_by_how_many_days() -> None:
    page = seen(NORTH["plants/ramsons.html"]).text
    year = between(NORTH["plants/ramsons.html"], 'id="year"', "</section>").text
    eaten = between(NORTH["plants/ramsons.html"], 'id="eaten"', 'id="removed"').text
    assert "Estimated from what was seen at 54.4° N, 2.6° W, 150 m above the sea" in year
    assert "spring about 12 days later, autumn about 12 days earlier" in year
    assert "(+12.0 days for 3.0° of latitude nearer the pole)" in year
    assert LAW in year
    assert "about early March to early July (where it was seen: late February to mid June)" in year
    assert "leaves about mid March to mid June: raw where it was seen: March to May" in eaten
    assert [words for words in ESTIMATES if words not in page] == []


def test_at_the_lessons_own_place_a_page_says_nothing_of_estimates() -> None:
    for path in ("plants/ramsons.html", "syllabus.html", "index.html"):
        page = seen(HOME[path]).text
        assert [words for words in ESTIMATES if words in page] == []
    assert (
        "As seen at 54.4° N, 2.6° W, 150 m above the sea." in seen(HOME["plants/ramsons.html"]).text
    )


def test_elsewhere_the_syllabus_says_that_its_dates_are_estimates() -> None:
    page = seen(NORTH["syllabus.html"]).text
    assert "Dates are estimates for Askerby; the season page says why." in page
    assert "leaves: about mid March to mid June" in page


# ---- sessions -----------------------------------------------------------------------------

FIRST = between(HOME["syllabus.html"], 'id="session-1"', 'id="session-2"').text
BRIEFING = between(HOME["syllabus.html"], 'id="briefing-1"', "</section>")


def test_what_is_told_before_every_walk_stands_above_the_sessions() -> None:
    told = between(HOME["syllabus.html"], 'id="standing"', "</section>").text
    assert [line for line in (*STANDING, "Ring 999 at once") if line not in told] == []


def test_a_session_says_when_it_begins_and_ends() -> None:
    assert "Saturday 17 April 2027, 10:00–12:00" in FIRST


def test_each_plant_of_the_day_has_its_stage() -> None:
    assert "Ramsons ❧ food leaves to eat, bulbs to eat" in FIRST
    assert "Hemlock ▲▲ deadly leaves taken for Ramsons" in FIRST


def test_a_plant_of_which_its_lesson_tells_nothing_is_not_said_to_be_gone() -> None:
    course = WALKS.replace("LATITUDE", "54.4").replace("2027-08-07, plants: [Ramsons]",
                                                        "2027-10-02, plants: [Hemlock]")  # fmt: skip
    page = seen(pages_of({"course.yml": course, **LESSONS})["syllabus.html"]).text
    assert "its lesson tells of no part on this day" in page
    assert "not in season to teach; nearest date 31 May" in page


def test_the_briefing_names_the_grave_look_alikes_and_says_the_outdoor_cautions() -> None:
    assert "Ramsons: not Lily ▲ poisonous" in BRIEFING.text
    assert "Few-flowered" not in BRIEFING.text
    assert "Hemlock: all partsevery part is deadly." in BRIEFING.text
    assert "Ramsons: skina rash, see what." in BRIEFING.text
    assert "Ramsons: mixed pickingleaf by leaf." in BRIEFING.text
    assert "pregnancy" not in BRIEFING.text


def test_nobody_is_told_of_tasting_a_plant_that_harms() -> None:
    assert BRIEFING.text.endswith(
        "Before anyone tastes: read out all cautions of the plant, Ramsons."
    )


def test_the_briefing_says_so_where_nobody_told_when_a_look_alike_is_about() -> None:
    """Silence would read as: not about."""
    course = "plants: [a]\nsessions: [{date: 2027-05-01}]\n"
    plant = "---\nname: A\n---\n## Look-alikes\n### B\nRound.\n- danger: deadly\n"
    page = seen(pages_of({"course.yml": course, "a.md": plant})["syllabus.html"]).text
    assert "A: not B ▲▲ deadly when it is about is not told" in page


def test_every_briefing_has_a_name_of_its_own() -> None:
    """Else those who hear the page cannot tell one session's from another's."""
    named = re.findall(
        r'<section class="briefing" aria-labelledby="([^"]+)"', HOME["syllabus.html"]
    )
    assert named == ["briefing-1 session-1", "briefing-2 session-2"]


def test_the_briefing_leads_to_the_plants_own_pages() -> None:
    assert [a.attributes["href"] for a in BRIEFING.all("a")] == [
        "plants/ramsons.html#double-lily", "plants/hemlock.html", "plants/ramsons.html#apart",
        "plants/ramsons.html#source-1", "plants/ramsons.html#cautions",
    ]  # fmt: skip


def test_what_is_to_be_read_for_the_next_session_is_told() -> None:
    assert "Read for next time: Ramsons" in FIRST
    assert seen(HOME["syllabus.html"]).text.count("Read for next time") == 1


def test_both_calendars_are_linked_and_what_is_in_neither_is_named() -> None:
    page = seen(HOME["syllabus.html"])
    led = [a.attributes["href"] for a in page.all("a")]
    assert [path for path in led if path.endswith(".ics")] == ["sessions.ics", "harvest.ics"]
    assert "In no calendar, because it can be gathered all year: Ramsons (bulbs)." in page.text


def test_a_calendar_that_is_not_made_is_not_linked() -> None:
    course = "plants: [hemlock]\nsessions:\n  - date: 2027-04-17\n"
    made = pages_of({"course.yml": course, **LESSONS})
    assert [path for path in made if path.endswith(".ics")] == ["sessions.ics"]
    assert "harvest.ics" not in made["syllabus.html"]


@pytest.mark.parametrize("made", [HOME, NORTH], ids=["home", "north"])
def test_words_set_on_another_page_than_their_plants_lose_no_link(made: dict[str, str]) -> None:
    """On the sessions' page a caution, on that of look-alikes what tells one apart."""
    pages_made = [Page(path, text) for path, text in made.items()]
    assert list(lost_links(pages_made, made)) == []
    told = between(made["look-alikes.html"], 'class="doubles"', "</ul>")
    assert [a.attributes["href"] for a in told.all("a")][1:] == [
        "plants/ramsons.html#source-1", "plants/ramsons.html#cautions",
        "plants/hemlock.html#cautions", "plants/ramsons.html#source-memory",
        "pairs/ramsons-and-few-flowered-garlic.html",
    ]  # fmt: skip


# ---- how pages are built ------------------------------------------------------------------


def test_a_value_that_is_missing_is_an_error(monkeypatch: pytest.MonkeyPatch) -> None:
    environment = site_templates().overlay()
    template = environment.from_string("{{ cuorse.title }}")
    monkeypatch.setattr(environment, "get_template", lambda _: template)
    monkeypatch.setattr(pages, "site_templates", lambda: environment)
    with pytest.raises(UndefinedError, match="'cuorse' is undefined"):
        next(build_pages(site_of(FILES)))


def test_the_same_course_gives_the_same_pages() -> None:
    assert pages_of(FILES) == pages_of(FILES)


# ---- what is not yet sure -----------------------------------------------------------------

IN_LEAF = """---
name: Ramsons
---
## Identification
### Leaves
- gloss: glossy above matt beneath
## Look-alikes
### Lily of the valley
Two leaves.
- danger: poisonous
#### Leaves
- gloss: matt above glossy beneath
## Season
- leaves: March to June
## Edible parts
- leaves: March to May; raw
"""


def test_a_plants_page_says_when_it_is_not_sure_and_that_nobody_gathers_then() -> None:
    text = seen(pages_of({"ramsons.md": IN_LEAF, "course.yml": ""})["plants/ramsons.html"]).text
    assert "Not yet sure: March to May. What can be seen then does not surely tell it" in text
    assert "March to May: not yet sure: only leaves: gloss, not to be trusted by itself" in text
    assert "Nothing settles it in the weeks that are not sure: nobody gathers then." in text
    assert "leaves not gathered: in no week is it surely told from a plant that harms" in text


def test_what_settles_it_is_shown_in_its_place() -> None:
    settled = IN_LEAF.replace("- danger: poisonous", "- danger: poisonous\n- settled by: flowers")
    text = seen(pages_of({"ramsons.md": settled, "course.yml": ""})["plants/ramsons.html"]).text
    assert "Not yet sure: March to May." in text
    assert "Made sure by: flowers" in text
    assert "nobody gathers then" not in text
    assert "leaves March to May: raw" in text


def test_the_season_page_tells_its_script_which_days_are_not_sure() -> None:
    season = seen(pages_of({"ramsons.md": IN_LEAF, "course.yml": ""})["season.html"])
    doubts = [
        row.attributes["data-doubt"] for row in season.all("tr") if "data-doubt" in row.attributes
    ]
    assert doubts == ["60-151"]
