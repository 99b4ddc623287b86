"""The page of two plants: its values, and how it is set."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from helpers.courses import pages_of, seen, site_of
from helpers.pairs import FILES, LILY, RAMSONS
from sallet.lesson.value import Window
from sallet.lesson.values.times import YEAR, day_of_year
from sallet.publish.links import lost_links
from sallet.publish.pages import Page
from sallet.publish.sheet import SpellText
from sallet.season.telling import tellings

if TYPE_CHECKING:
    from collections.abc import Mapping

    from helpers.courses import Seen
    from sallet.publish.pair_pages import PairPage

PATH = "pairs/ramsons-and-lily-of-the-valley.html"
SITE = site_of(FILES)
LILIES, GARLICS = SITE.pairs
MADE = pages_of(FILES)


def page_of(files: Mapping[str, str]) -> PairPage:
    """Return the first pair of some lessons."""
    return site_of({"course.yml": "", **files}).pairs[0]


def set_page(files: Mapping[str, str], path: str = PATH) -> Seen:
    """Return a page as it is set, taken apart."""
    return seen(pages_of({"course.yml": "", **files})[path])


# ---- the values ---------------------------------------------------------------------------


def test_a_page_has_both_plants_with_their_dangers_and_ways_to_their_pages() -> None:
    pair = LILIES.pair
    assert (pair.this.name, LILIES.danger, pair.name, pair.danger) == (
        "Ramsons", "food", "Lily of the valley", "poisonous",
    )  # fmt: skip
    assert LILIES.other_page == "../plants/lily-of-the-valley.html"
    assert GARLICS.other_page == ""


def test_the_texts_of_both_lessons_stand_each_under_its_lesson() -> None:
    told = [(t.lesson.slug, t.double.name, t.double.tell, t.card) for t in LILIES.texts]
    assert told == [
        ("ramsons", "Lily of the valley", "two leaves in one shoot", True),
        ("lily-of-the-valley", "Ramsons", "one leaf to a stalk", True),
    ]
    assert [text.card for text in GARLICS.texts] == [False]


def test_the_citations_of_a_text_lead_to_the_plants_own_page() -> None:
    links = [a.attributes["href"] for t in LILIES.texts for a in seen(t.double.prose).all("a")]
    assert links == ["../plants/ramsons.html#source-1"]


def test_the_year_says_when_it_is_sure_and_how_it_is_settled_when_it_is_not() -> None:
    through = LILIES.through
    assert through is not None
    assert through.spells == (
        SpellText("April to 6 May", is_sure=False,
                  words="not yet sure: only leaves: gloss, not to be trusted by itself"),
        SpellText("7–20 May", is_sure=True,
                  words="sure by flowers: inflorescence; less sure: leaves: gloss"),
        SpellText("late May", is_sure=False,
                  words="not yet sure: only leaves: gloss, not to be trusted by itself"),
    )  # fmt: skip
    assert (through.gathered, through.unsure, through.settled_by) == (
        "April to May", "April to 6 May and late May", "marked while in flower",
    )  # fmt: skip


def test_the_strip_shows_the_doubts_of_this_pair_only_and_when_the_other_is_about() -> None:
    """The other pair of this plant makes no week unsure here."""
    through = LILIES.through
    assert through is not None
    desc = through.strip.split("<desc")[1].split(">")[1].split("<")[0]
    assert desc == (
        "eat leaves: April to May; leaves: all year; flowers: May to June; "
        "not yet sure: April to 6 May and late May."
    )


def test_a_plant_that_does_no_grave_harm_has_no_weeks_that_are_not_sure() -> None:
    assert GARLICS.through is None


def test_what_tells_apart_is_named_and_whether_it_suffices() -> None:
    assert (LILIES.features, LILIES.suffices) == (
        "flowers: inflorescence; roots: kind; less sure: leaves: gloss", True,
    )  # fmt: skip
    assert (GARLICS.features, GARLICS.suffices) == ("leaves: attachment", False)
    assert (LILIES.telling, LILIES.recorded) == (3, 8)


def test_the_sure_days_are_those_on_which_what_can_be_seen_suffices() -> None:
    assert LILIES.sure == (Window(day_of_year(5, 7), day_of_year(5, 20)),)
    assert GARLICS.sure == ()


def test_the_sure_days_of_a_harmless_look_alike_are_counted_one_by_one() -> None:
    text = RAMSONS.replace("danger: harmless\n", "danger: harmless\n#### Flowers\n- inflorescence: one-sided raceme\n")  # fmt: skip
    (garlic,) = [p for p in site_of({**FILES, "ramsons.md": text}).pairs if "garlic" in p.pair.path]
    assert garlic.through is None
    assert garlic.sure == (Window(day_of_year(5, 6), day_of_year(5, 26)),)


def test_where_only_the_lesson_of_the_plant_that_harms_names_them_it_is_told_too() -> None:
    alone = RAMSONS[: RAMSONS.index("### Lily")] + RAMSONS[RAMSONS.index("### Few") :]
    page = next(p for p in site_of({**FILES, "ramsons.md": alone}).pairs if "lily" in p.pair.path)
    assert (page.pair.this.slug, page.through is not None) == ("ramsons", True)
    assert [text.lesson.slug for text in page.texts] == ["lily-of-the-valley"]


def test_the_same_page_tells_what_the_plan_of_the_course_tells() -> None:
    telling = SITE.comparer.telling(LILIES.pair)
    years = {year.lesson.slug: year for year in SITE.years}
    ramsons = SITE.bank.find("Ramsons")
    assert ramsons is not None
    (same,) = tellings(ramsons, years, SITE.bank)
    assert telling is not None
    assert (telling.unsure, telling.gathered) == (same.unsure, same.gathered)
    assert set(telling.unsure) <= set(range(1, YEAR + 1))


def test_drawings_are_those_of_the_first_plants_page() -> None:
    doubles = next(s for s in SITE.sheets if s.lesson.slug == "ramsons").doubles
    assert LILIES.figures is doubles[0].figures
    assert [figure.words for figure in LILIES.figures] != []


def test_a_pair_that_only_the_other_lesson_names_is_drawn_the_first_plant_first() -> None:
    alone = RAMSONS[: RAMSONS.index("## Look-alikes")] + RAMSONS[RAMSONS.index("## Season") :]
    page = page_of({"ramsons.md": alone, "lily-of-the-valley.md": LILY})
    titles = [figure.svg.split("<title")[1].split(">")[1].split("<")[0] for figure in page.figures]
    assert [title.split(":")[0] for title in titles] == ["Ramsons and Lily of the valley"] * len(
        titles
    )
    assert titles != []


def test_only_the_words_of_what_tells_the_plants_apart_are_explained() -> None:
    """The others are explained on the plants' own pages: there would be thousands of slips."""
    words = {used.subject.name: [x.label.name for x in used.labels] for used in LILIES.words}
    assert words == {
        "leaves": ["gloss"],
        "flowers": ["inflorescence"],
        "roots": ["kind"],
    }


# ---- how it is set ------------------------------------------------------------------------


def test_a_page_says_both_names_with_their_dangers_in_shape_and_word() -> None:
    page = seen(MADE[PATH])
    assert "Ramsons ❧ food and Lily of the valley ▲ poisonous" in page.text
    assert "Allium ursinum L. · Convallaria majalis L." in page.text


def test_weeks_that_are_not_sure_are_marked_by_shape_and_word() -> None:
    text = seen(MADE[PATH]).text
    assert "✕ Not yet sure: April to 6 May and late May." in text
    assert "✕ April to 6 May: not yet sure: only leaves: gloss" in text
    assert "✓ 7–20 May: sure by flowers: inflorescence" in text
    assert "Made sure by: marked while in flower" in text


def test_weeks_that_nothing_settles_are_not_for_gathering() -> None:
    silent = RAMSONS.replace("- settled by: marked while in flower[^memory]\n", "")
    text = set_page({"ramsons.md": silent, "lily-of-the-valley.md": LILY}).text
    assert "Nothing settles it in the weeks that are not sure: nobody gathers then." in text
    assert "Made sure by" not in text


def test_where_all_weeks_are_sure_the_page_says_so() -> None:
    sure = RAMSONS.replace("- flowers: May\n", "- flowers: all year\n")
    text = set_page({"ramsons.md": sure, "lily-of-the-valley.md": LILY}).text
    assert (
        "✓ In all of these weeks two things that tell them apart can be seen "
        "on the very plant that is picked." in text
    )
    assert "A leaf is not sure by the flower of its neighbour." in text
    assert "Not yet sure" not in text


def test_plants_that_are_never_about_together_say_so() -> None:
    late = LILY.replace("- leaves: all year\n- flowers: May to June", "- leaves: September")
    text = set_page({"ramsons.md": RAMSONS, "lily-of-the-valley.md": late}).text
    assert "While Ramsons is gathered, Lily of the valley is not about." in text


def test_too_little_is_said_to_be_too_little() -> None:
    garlic = seen(MADE["pairs/ramsons-and-few-flowered-garlic.html"]).text
    assert "What is recorded does not suffice to tell these two apart surely." in garlic
    bare = {"a.md": "---\nname: A\n---\n## Look-alikes\n### B\n"}
    assert "Nothing recorded that can be looked at tells these two apart." in (
        set_page(bare, "pairs/a-and-b.html").text
    )


def test_a_row_carries_its_days_for_the_script_and_its_words_for_everybody() -> None:
    page = seen(MADE[PATH])
    rows = [(r.attributes["class"], r.attributes["data-organ"], r.attributes["data-label"],
             r.attributes["data-days"]) for r in page.all("tr") if "data-days" in r.attributes]  # fmt: skip
    assert rows == [
        ("firm", "flowers", "inflorescence", "126-146"), ("firm", "roots", "kind", ""),
        ("other", "leaves", "gloss", "65-176"),
    ]  # fmt: skip
    (today,) = [p for p in page.all("p") if p.attributes.get("id") == "today"]
    assert today.attributes["data-sure"] == "127-140"
    assert "hidden" in today.attributes
    assert "◆ tells apart" in page.text


def test_the_plants_page_leads_to_the_pair_and_says_in_short_what_to_look_at() -> None:
    plant = seen(MADE["plants/ramsons.html"])
    assert f"../{PATH}" in [a.attributes["href"] for a in plant.all("a")]
    assert "7–20 May: sure by flowers: inflorescence" in plant.text
    back = seen(MADE["plants/lily-of-the-valley.html"])
    assert f"../{PATH}" in [a.attributes["href"] for a in back.all("a")]
    assert "sure by" not in back.text


@pytest.mark.parametrize("taught", ["[ramsons]", "[lily-of-the-valley]", "all"])
def test_no_link_is_lost_where_not_all_plants_are_taught(taught: str) -> None:
    made = pages_of({**FILES, "course.yml": f"plants: {taught}"})
    assert list(lost_links([Page(p, t) for p, t in made.items()], made)) == []
    assert [path for path in made if path.startswith("pairs/")] != []


def test_a_plant_that_is_not_taught_is_set_in_bare_words() -> None:
    made = pages_of({**FILES, "course.yml": "plants: [ramsons]"})
    page = seen(made[PATH])
    assert "one-sided raceme" in page.text
    assert "../plants/lily-of-the-valley.html" not in made[PATH]
    slips = [button.attributes["popovertarget"] for button in page.all("button")]
    assert [slip for slip in slips if "raceme" in slip] == []
