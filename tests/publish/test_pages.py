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
from sallet.publish import pages
from sallet.publish.links import lost_links
from sallet.publish.pages import DANGERS, NAVIGATION, Page, build_pages, danger_of
from sallet.publish.templates import site_templates

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
    assert sorted(TEXTS) == sorted(
        [*named, "plants/everything.html", "plants/yew.html", "style.css"]
    )


def test_a_course_without_lessons_has_its_pages_too() -> None:
    assert sorted(EMPTY) == sorted(path for path, _ in NAVIGATION)


@each_page
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
    files = ["style.css", *(s for s in re.findall(r"pictures/[\w.-]+", "".join(TEXTS.values())))]
    assert list(lost_links(made, files)) == []


# ---- nothing lost, nothing let in ---------------------------------------------------------


def test_every_word_of_a_lesson_and_of_its_course_is_on_a_page() -> None:
    """But for shorter wordings for the field card. Everything is escaped."""
    text = " ".join(page.text for page in PAGES.values())
    lost = [number for number in range(1, LAST + 1) if hostile(number) not in text]
    assert lost == []
    assert LAST > 110


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
