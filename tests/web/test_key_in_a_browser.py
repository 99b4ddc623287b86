"""The keys in a browser: the same answers as the rule has, by pointer and by keyboard, on paper."""

from __future__ import annotations

import random
import re
import subprocess
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

import pytest

from helpers.browsers import axe_finds
from helpers.courses import site_of
from helpers.keys import DEADLY, FOOD, HEDGE, POISONOUS, lesson
from sallet.folder import read_path
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.publish.pages import build_pages
from sallet.publish.site import Site
from sallet.season.keying import key_table
from sallet.study.table import standings

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from playwright.sync_api import Browser, Page

    from sallet.study.table import Options, Table

PROJECT = Path(__file__).resolve().parents[2]
Ticks = list[tuple[int, "Options"]]
"""What is ticked: options by character."""
SETS: Final = 300
"""How many sets of ticks are tried on each course."""
FACTS: Final = {
    "Leaves": {
        "arrangement": ["alternate", "opposite", "whorled", "basal", "bunched"],
        "division": ["simple", "once pinnate", "trifoliate", "simple (basal), palmate (upper)"],
        "margin": ["entire", "serrate", "crenate", "entire (basal), serrate (stem)", "toothed"],
        "stipules": ["absent", "leafy", "papery tube", "sometimes leafy", "absent, rarely leafy"],
        "leaflets": ["3", "3–5", "5–9", "many", "7 or more"],
    },
    "Stem": {
        "interior": ["solid", "hollow", "pithy", "usually hollow", "solid or hollow"],
        "section": ["round", "square", "angled", "triangular"],
    },
    "Flowers": {
        "petals": ["none", "4", "5", "4–5", "usually 5, sometimes 6", "many"],
        "colour": ["white", "yellow", "pink to red", "blue", "white, rarely pink"],
        "stamens": ["4", "5", "6", "10 or more", "many"],
    },
}
"""What may be recorded: plain and wavering values, places, numbers with and without an end."""
HEADS: Final = (FOOD, POISONOUS, DEADLY, "taught as: look-alike\ndanger: harmful",
                "taught as: look-alike", "taught as: food\ndanger: poisonous")  # fmt: skip


def made_up(seed: int, plants: int = 14) -> dict[str, str]:
    """Return a course of plants of which this and that is recorded."""
    chance = random.Random(seed)  # noqa: S311 - no secret
    files = {"course.yml": "title: Made up\n"}
    for number in range(plants):
        facts = [
            f"{organ} {label}: {chance.choice(values)}"
            for organ, labels in FACTS.items()
            for label, values in labels.items()
            if chance.random() < 0.8
        ]
        head = HEADS[number % len(HEADS)]
        files[f"plant-{number}.md"] = lesson(f"Plant {number}", *facts, head=head)
    return files


@dataclass(frozen=True)
class Built:
    """A course whose pages lie in a folder."""

    folder: Path
    table: Table


def built(site: Site, folder: Path) -> Built:
    """Write what the page of the key needs."""
    for page in build_pages(site):
        if page.path in {"key.html", "key.js", "style.css"}:
            (folder / page.path).write_text(page.text, "utf-8")
    return Built(folder, key_table(site.years, site.bank.vocabulary))


@pytest.fixture(scope="module")
def courses(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Built]:
    """Return the demo course, one that is made up, and a small one, built."""
    read = read_path(PROJECT / "demo_course", load_vocabulary())
    assert read.course
    whole = Site(read.course, read.bank, read.lessons, (), {one.slug: () for one in read.lessons})
    few = {name: text for name, text in HEDGE.items() if name != "mercury.md"}
    sites = {"demo": whole, "made up": site_of(made_up(7)), "hedge": site_of(few)}
    return {
        name: built(site, tmp_path_factory.mktemp(name.replace(" ", "-")))
        for name, site in sites.items()
    }


@pytest.fixture
def hedge(courses: dict[str, Built], chromium: Browser) -> Iterator[Page]:
    """Return the page of the small course, on a telephone."""
    yield from _opened(courses["hedge"], chromium)


def _opened(course: Built, chromium: Browser, **how: Any) -> Iterator[Page]:
    context = chromium.new_context(viewport={"width": 360, "height": 740}, **how)
    page = context.new_page()
    faults: list[str] = []
    page.on("pageerror", lambda error: faults.append(str(error)))
    page.on("console", lambda message: faults.append(message.text))
    page.goto((course.folder / "key.html").as_uri())
    yield page
    context.close()
    assert faults == []


# ---- the rule -----------------------------------------------------------------------------

ANSWER = """sets => {
  const boxes = number => [...document.querySelectorAll(`[data-question="${number}"] input`)];
  const all = [...document.querySelectorAll("#questions input")];
  const answers = () => [...document.querySelectorAll("[data-plant]")].map(item => [
    Number(item.dataset.plant),
    [...item.querySelectorAll("[data-against]")].map(why => Number(why.dataset.against)),
    Boolean(item.closest("#out")),
  ]);
  return sets.map(ticks => {
    for (const box of all) box.checked = false;
    for (const [number, options] of ticks) {
      for (const option of options) boxes(number)[option].checked = true;
    }
    all[0].dispatchEvent(new Event("change", {bubbles: true}));
    return answers();
  });
}"""


def some_ticks(table: Table, chance: random.Random) -> Ticks:
    """Return a few ticks; now and then several at one question, or on one plant what it shows."""
    numbers = sorted(
        chance.sample(
            range(len(table.characters)), min(len(table.characters), chance.randint(0, 6))
        )
    )
    plant = chance.randrange(len(table.plants))
    ticks: Ticks = []
    for number in numbers:
        character = table.characters[number]
        every, shown = range(len(character.options)), character.shown[plant]
        if shown and chance.random() < 0.5:
            ticks.append((number, shown))
        else:
            few = min(len(every), chance.choice([1, 1, 1, 2, 3]))
            ticks.append((number, frozenset(chance.sample(every, few))))
    return ticks


@pytest.mark.parametrize("name", ["demo", "made up", "hedge"])
def test_the_page_answers_as_the_rule_does(
    courses: dict[str, Built], chromium: Browser, name: str
) -> None:
    """Hundreds of sets of ticks: which plants drop out, and what contradicts each."""
    table, chance = courses[name].table, random.Random(11)  # noqa: S311 - no secret
    sets = [some_ticks(table, chance) for _ in range(SETS)]
    for page in _opened(courses[name], chromium):
        given = [[(number, sorted(options)) for number, options in ticks] for ticks in sets]
        found = page.evaluate(ANSWER, given)
    told = [_answers(found_by_page) for found_by_page in found]
    wanted = [
        {one.plant: (set(one.contradicting), one.is_out) for one in standings(table, ticks)}
        for ticks in sets
    ]
    assert told == wanted
    # Neither all nor none drop out, and some that may kill stay although something is against them.
    outs = [sum(out for _, out in each.values()) for each in wanted]
    assert len(set(outs)) > 3
    assert any(
        against and not out and plant in table.grave
        for each in wanted
        for plant, (against, out) in each.items()
    )


def _answers(found: Sequence[tuple[int, list[int], bool]]) -> dict[int, tuple[set[int], bool]]:
    assert all(len(against) == len(set(against)) for _, against, _ in found)
    return {plant: (set(against), out) for plant, against, out in found}


# ---- by pointer ---------------------------------------------------------------------------


def tick(page: Page, organ: str, *words: str) -> None:
    """Open the question of an organ of the small course, and press boxes."""
    section = page.locator("details.organ-asked").filter(
        has=page.get_by_role("heading", name=organ)
    )
    for details in (section, section.locator("details.question")):
        if details.get_attribute("open") is None:
            details.locator("> summary").click()
    for word in words:
        section.get_by_role("checkbox", name=word, exact=True).click()


def names(page: Page, where: str) -> list[str]:
    """Return the plants of one of the lists."""
    return page.locator(f"#{where} > li .name a").all_inner_texts()


def test_at_first_all_plants_are_possible_and_those_that_harm_stand_first(hedge: Page) -> None:
    assert names(hedge, "left") == ["Hemlock", "Dwarf elder", "Dock", "Sorrel", "Elder"]
    assert hedge.locator("#count").inner_text() == "5 of 5 still possible; 2 may harm."
    assert not hedge.locator("#verdict").is_visible()
    assert not hedge.get_by_role("heading", name="Ruled out").is_visible()
    assert not hedge.locator("#needs-script").is_visible()
    assert hedge.get_by_role("button", name="Untick all").is_disabled()


def test_one_mark_against_a_deadly_plant_keeps_it_listed_with_the_reason(hedge: Page) -> None:
    tick(hedge, "Leaves", "opposite")
    assert names(hedge, "left") == ["Hemlock", "Dwarf elder", "Elder"]
    assert names(hedge, "out") == ["Dock", "Sorrel"]
    hemlock = hedge.locator("#left > li").first.locator(".why li").all_inner_texts()
    assert hemlock == [
        "One mark against it: it stays until a second of another kind that can be trusted.",
        "Leaves, arrangement: you ticked opposite; recorded: alternate",
    ]
    dock = hedge.locator("#out > li").first.locator(".why li").all_inner_texts()
    assert dock == ["Leaves, arrangement: you ticked opposite; recorded: alternate"]
    assert hedge.locator("#count").inner_text() == "3 of 5 still possible; 2 may harm."


def test_a_second_mark_rules_it_out_and_unticking_brings_it_back(hedge: Page) -> None:
    tick(hedge, "Leaves", "opposite")
    tick(hedge, "Stem", "solid")
    assert names(hedge, "out") == ["Hemlock", "Dock", "Sorrel"]
    tick(hedge, "Stem", "solid")
    assert names(hedge, "out") == ["Dock", "Sorrel"]


def test_several_ticks_at_one_question_mean_one_of_them(hedge: Page) -> None:
    tick(hedge, "Leaves", "opposite", "alternate")
    assert names(hedge, "out") == []
    tick(hedge, "Flowers", "6")
    assert hedge.locator("#ticked li").all_inner_texts() == [
        "Leaves, arrangement: alternate or opposite", "Flowers, petals: 6",
    ]  # fmt: skip
    why = hedge.locator("#out > li").first.locator(".why li").all_inner_texts()
    assert why == ["Flowers, petals: you ticked 6; recorded: 5"]


def test_the_last_food_plant_is_only_said_not_to_be_contradicted(hedge: Page) -> None:
    tick(hedge, "Leaves", "opposite")
    tick(hedge, "Stem", "solid")
    assert names(hedge, "left") == ["Dwarf elder", "Elder"]
    assert hedge.locator("#verdict").inner_text() == (
        "Of this course's plants only Elder is not contradicted. The others in the list are not "
        "ruled out. That does not make it so: read its page, and hold it against what it is "
        "mistaken for."
    )
    against = hedge.locator("#left > li").nth(1).locator(".beware")
    assert against.inner_text() == (
        "Hold it against: Dwarf elder ▲ poisonous, Yew ▲▲ deadly, Danewort ▲ danger not stated"
    )
    assert [link.get_attribute("href") for link in against.locator("a").all()] == [
        "pairs/elder-and-dwarf-elder.html", "pairs/elder-and-yew.html",
        "pairs/elder-and-danewort.html",
    ]  # fmt: skip


def test_where_nothing_is_left_the_plant_is_to_be_left(hedge: Page) -> None:
    tick(hedge, "Leaves", "opposite")
    tick(hedge, "Stem", "solid")
    tick(hedge, "Flowers", "6")
    assert names(hedge, "left") == []
    for place in ("verdict", "count"):
        said = hedge.locator(f"#{place}").inner_text()
        assert said == "None of the plants of this course. Leave it."


def test_where_only_contradicted_or_harmful_plants_stay_the_plant_is_to_be_left(
    hedge: Page,
) -> None:
    tick(hedge, "Leaves", "alternate")
    tick(hedge, "Stem", "hollow")
    assert names(hedge, "left") == ["Hemlock", "Dwarf elder"]
    verdict = hedge.locator("#verdict")
    assert verdict.inner_text() == "Only plants that may harm are not contradicted. Leave it."
    tick(hedge, "Flowers", "6")
    assert names(hedge, "left") == ["Hemlock"]
    assert verdict.inner_text() == (
        "Something speaks against every plant of this course. Leave it."
    )


def test_one_press_unticks_all(hedge: Page) -> None:
    tick(hedge, "Leaves", "opposite")
    tick(hedge, "Flowers", "6")
    hedge.get_by_role("button", name="Untick all").click()
    assert names(hedge, "left") == ["Hemlock", "Dwarf elder", "Dock", "Sorrel", "Elder"]
    assert hedge.locator("#questions input:checked").count() == 0


def test_ticks_of_another_plant_do_not_come_back_with_the_page(hedge: Page) -> None:
    tick(hedge, "Leaves", "opposite")
    hedge.reload()
    assert hedge.locator("#questions input:checked").count() == 0
    assert len(names(hedge, "left")) == 5


def test_what_is_ticked_stands_beside_its_question_and_leads_back_to_it(hedge: Page) -> None:
    tick(hedge, "Leaves", "opposite")
    question = hedge.locator(".question[open] > summary")
    assert question.inner_text() == "How are the leaves set on the stem? opposite"
    hedge.evaluate("for (const one of document.querySelectorAll('details')) one.open = false")
    hedge.get_by_role("link", name="Leaves, arrangement: opposite").click()
    assert hedge.locator(".organ-asked[open] .question > summary").is_visible()


def test_the_words_of_a_question_are_explained(hedge: Page) -> None:
    tick(hedge, "Leaves")
    hedge.get_by_role("button", name="What these words mean").click()
    slip = hedge.locator("#meaning-leaves-arrangement")
    assert slip.is_visible()
    assert "Two leaves at each node, face to face." in slip.inner_text()
    hedge.keyboard.press("Escape")
    assert not slip.is_visible()


def test_what_a_key_cannot_do_stays_in_sight(hedge: Page) -> None:
    hedge.set_viewport_size({"width": 360, "height": 500})
    hedge.evaluate("scrollTo(0, document.querySelector('#left').getBoundingClientRect().top)")
    bar = hedge.locator("#bar").bounding_box()
    assert bar
    assert bar["y"] >= 0
    assert bar["y"] + bar["height"] < 250
    assert "any other comes out under a wrong name" in hedge.locator("#bar").inner_text()


def test_the_list_is_one_press_away(hedge: Page) -> None:
    tick(hedge, "Leaves", "opposite")
    hedge.get_by_role("link", name="See them").click()
    heading, bar = (hedge.locator(place).bounding_box() for place in ("#possible", "#bar"))
    assert heading
    assert bar
    assert bar["y"] + bar["height"] <= heading["y"] < 500


def test_boxes_and_questions_are_large_enough_for_a_thumb(hedge: Page) -> None:
    """44 px, the size that WCAG 2.2 names for targets at level AAA (2.5.5)."""
    tick(hedge, "Leaves")
    for place in (".organ-asked > summary", ".question[open] > summary", ".question[open] .answers label",
                  ".question[open] .meanings", "#untick"):  # fmt: skip
        box = hedge.locator(place).first.bounding_box() or {"height": 0}
        assert (place, box["height"] >= 44) == (place, True)


# ---- without a pointer, without the script, on paper ----------------------------------------


def test_it_can_be_ticked_by_keyboard_alone(hedge: Page) -> None:
    hedge.get_by_role("link", name="See them").focus()
    pressed = 0
    while hedge.evaluate("document.activeElement.innerText").strip() != "Leaves":
        hedge.keyboard.press("Tab")
        pressed += 1
        assert pressed < 6
    hedge.keyboard.press("Enter")
    hedge.keyboard.press("Tab")
    hedge.keyboard.press("Enter")
    hedge.keyboard.press("Tab")
    hedge.keyboard.press("Tab")
    hedge.keyboard.press("Space")
    assert hedge.locator("#ticked li").all_inner_texts() == ["Leaves, arrangement: opposite"]
    assert hedge.evaluate("document.activeElement.type") == "checkbox"


def test_what_is_focused_is_not_hidden_by_the_bar(hedge: Page) -> None:
    """WCAG 2.2, 2.4.11: going backwards, each control comes out from under the bar."""
    hedge.set_viewport_size({"width": 360, "height": 500})
    tick(hedge, "Leaves")
    tick(hedge, "Flowers")
    hedge.locator("#left a").last.evaluate("link => link.focus()")
    for _ in range(14):
        hedge.keyboard.press("Shift+Tab")
        top, bar, inside = hedge.evaluate(
            "[document.activeElement.getBoundingClientRect().bottom,"
            " document.querySelector('#bar').getBoundingClientRect().bottom,"
            " document.querySelector('.key-body').contains(document.activeElement)]"
        )
        assert top > bar or not inside


def test_the_number_left_is_told_politely_and_the_list_is_not(hedge: Page) -> None:
    assert hedge.locator("[role=status], [aria-live]").count() == 1
    assert hedge.get_by_role("status").inner_text() == "5 of 5 still possible; 2 may harm."


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_on_a_page_with_ticks(
    courses: dict[str, Built], chromium: Browser, axe: str, scheme: Any
) -> None:
    """Source: axe-core's rules for WCAG 2.2 A and AA and its best practices."""
    page = chromium.new_context(color_scheme=scheme).new_page()
    page.goto((courses["demo"].folder / "key.html").as_uri())
    page.evaluate("for (const one of document.querySelectorAll('details')) one.open = true")
    for box in page.locator("#questions input").all()[:40:13]:
        box.click()
    page.locator(".meanings").first.click()
    assert page.locator("#out > li").count() > 0
    assert axe_finds(page, axe) == []
    page.context.close()


@pytest.mark.parametrize("width", [320, 360, 1280])
def test_nothing_is_wider_than_the_screen(demo: Path, chromium: Browser, width: int) -> None:
    page = chromium.new_context(viewport={"width": width, "height": 740}).new_page()
    wide = {}
    for path in sorted([demo / "key.html", *(demo / "keys").glob("*.html")]):
        page.goto(path.as_uri())
        page.evaluate("for (const one of document.querySelectorAll('details')) one.open = true")
        wide[path.stem] = page.evaluate("document.documentElement.scrollWidth")
    page.context.close()
    assert len(wide) == 14
    assert {name: w for name, w in wide.items() if w > width} == {}


def test_without_scripts_the_plants_are_listed_and_the_numbered_keys_found(
    demo: Path, chromium: Browser
) -> None:
    page = chromium.new_context(java_script_enabled=False).new_page()
    page.goto((demo / "key.html").as_uri())
    assert page.get_by_text("Ticking needs this page's script").is_visible()
    assert page.locator("#left > li").count() == 28
    assert not page.locator("#questions").is_visible()
    assert not page.locator("#bar").is_visible()
    page.get_by_role("link", name="April", exact=True).click()
    assert page.locator("h1").inner_text() == "Key: April"
    assert page.locator(".couplet").count() > 20
    page.context.close()


WORD: Final = re.compile(r'<word xMin="([\d.]+)" yMin="([\d.]+)"[^>]*>(\d+|–)</word>')


def test_on_paper_no_couplet_is_torn(
    demo: Path, chromium: Browser, pdf_reader: str, tmp_path: Path
) -> None:
    """Printed by the browser, and the words' places read by poppler: no column begins at a second lead."""
    page = chromium.new_context().new_page()
    page.goto((demo / "keys" / "april.html").as_uri())
    couplets = page.locator(".couplet").count()
    page.pdf(path=tmp_path / "key.pdf", format="A4", prefer_css_page_size=True)
    page.context.close()
    command = [pdf_reader, "-bbox", str(tmp_path / "key.pdf"), "-"]
    read = subprocess.run(command, capture_output=True, text=True, check=True, timeout=60)
    columns = [column for sheet in read.stdout.split("</page>") for column in _columns(sheet)]
    assert sum(map(len, columns)) == 2 * couplets
    assert [column for column in columns if column[0] == "–"] == []
    assert len(columns) > 5


def _columns(sheet: str) -> list[list[str]]:
    """Return what stands before the leads of each column of a sheet, from above."""
    words = [(round(float(x)), float(y), word) for x, y, word in WORD.findall(sheet)]
    # Only leads begin at the edge of a column, and dashes by themselves stand nowhere else.
    edges = sorted({x for x, _, word in words if word == "–"})
    return [[word for at, _, word in sorted(words, key=lambda w: w[1]) if at == x] for x in edges]
