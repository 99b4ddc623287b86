"""The key that is ticked: its questions, its boxes, its list of plants."""

from __future__ import annotations

from helpers.courses import pages_of, seen, site_of
from helpers.keys import ALTERNATE, DEADLY, HEDGE, OPPOSITE, lesson
from sallet.publish.key_asking import Answer, OrganAsked
from sallet.season.keying import key_table

SITE = site_of(HEDGE)
TICKING = SITE.ticking
TABLE = key_table(SITE.years, SITE.bank.vocabulary)
PAGE = pages_of(HEDGE)["key.html"]


def asked(organ: OrganAsked) -> list[tuple[str, str, bool]]:
    """Return an organ's questions: the place, the character, whether it may be trusted alone."""
    return [(q.place, q.label.name, q.is_reliable) for q in (*organ.firm, *organ.others)]


def test_each_organ_has_its_questions() -> None:
    assert [(organ.subject.heading, asked(organ)) for organ in TICKING.organs] == [
        ("Stem", [("", "interior", True)]),
        ("Leaves", [("", "arrangement", True)]),
        ("Flowers", [("", "petals", True)]),
    ]


def test_a_box_knows_the_plants_that_it_fits_and_those_that_are_recorded_so() -> None:
    assert TABLE.plants == ("dock", "sorrel", "dwarf-elder", "elder", "hemlock", "mercury")
    (petals,) = TICKING.organs[2].firm
    assert petals.asks == "How many petals has one flower?"
    assert petals.untold == "5"
    assert petals.answers == (Answer("5", "2 3 4", "2 3 4"), Answer("6", "0 1", "0 1"))


def test_what_is_like_a_recorded_state_fits_without_being_recorded() -> None:
    """Bunched leaves may be alternate or opposite ones, for all that one sees."""
    files = {
        "course.yml": "",
        "a.md": lesson("A", ALTERNATE),
        "b.md": lesson("B", OPPOSITE),
        "c.md": lesson("C", "Leaves arrangement: bunched"),
    }
    (question,) = site_of(files).ticking.organs[0].firm
    assert question.answers == (
        Answer("alternate", "0 2", "0"), Answer("opposite", "1 2", "1"),
        Answer("bunched", "0 1 2", "2"),
    )  # fmt: skip


def test_what_may_be_trusted_stands_first_and_then_what_tells_most_for_least() -> None:
    """Places of one character stand together; arrangement is told of more plants than latex."""
    one = ["Leaves latex: white milk", "Leaves margin: entire", "Leaves arrangement: alternate"]
    two = ["Leaves latex: clear juice", "Leaves margin: serrate (basal), entire (stem)",
           "Leaves arrangement: opposite"]  # fmt: skip
    files = {"course.yml": "", "a.md": lesson("A", *one), "b.md": lesson("B", *two),
             "c.md": lesson("C", "Leaves arrangement: alternate")}  # fmt: skip
    (leaves,) = site_of(files).ticking.organs
    assert asked(leaves) == [
        ("", "arrangement", True), ("", "latex", True), ("Basal leaves", "margin", False),
    ]  # fmt: skip


def test_plants_that_harm_stand_first_the_worst_before_all() -> None:
    assert [(s.lesson.name, s.is_grave, s.harms) for s in TICKING.suspects] == [
        ("Hemlock", True, True), ("Mercury", True, True), ("Dwarf elder", True, True),
        ("Dock", False, False), ("Sorrel", False, False), ("Elder", False, False),
    ]  # fmt: skip


def test_food_with_a_grave_danger_and_what_nobody_tells_of_are_among_those_that_harm() -> None:
    files = {"course.yml": "", "a.md": lesson("A"), "b.md": lesson("B", head=f"{DEADLY}"),
             "c.md": lesson("C", head="taught as: food\ndanger: deadly"),
             "d.md": lesson("D", head="taught as: look-alike")}  # fmt: skip
    suspects = site_of(files).ticking.suspects
    assert [(s.lesson.name, s.is_grave, s.harms) for s in suspects] == [
        ("B", True, True), ("D", True, True), ("C", True, True), ("A", False, False),
    ]  # fmt: skip


def test_the_words_of_a_question_are_explained_once_for_all_places() -> None:
    meanings = {meaning.ident: meaning for meaning in TICKING.meanings}
    assert list(meanings) == [
        "meaning-stem-interior", "meaning-leaves-arrangement", "meaning-flowers-petals",
    ]  # fmt: skip
    arrangement = meanings["meaning-leaves-arrangement"]
    assert [words for words, _ in arrangement.states] == ["alternate", "opposite"]
    assert arrangement.way == "words.html#leaves-arrangement"
    assert meanings["meaning-flowers-petals"].states == ()


# ---- the page -----------------------------------------------------------------------------


def test_without_the_script_the_page_lists_the_plants_and_leads_to_the_numbered_keys() -> None:
    page = seen(PAGE)
    assert "Ticking needs this page's script" in page.text
    hidden = {e.attributes.get("id") for e in page.elements if "hidden" in e.attributes}
    assert {"bar", "questions"} <= hidden
    assert not {"needs-script", "left"} & hidden
    led = {link.attributes["href"] for link in page.all("a")}
    assert {f"plants/{slug}.html" for slug in TABLE.plants if isinstance(slug, str)} - led == set()
    assert {key.path for key in SITE.keys} - led == set()


def test_the_page_says_what_the_key_cannot_do() -> None:
    text = seen(PAGE).text
    for words in (
        "This key knows only the 6 plants of this course.",
        "Only this course's plants: any other comes out under a wrong name.",
        "Nothing is eaten by a key alone",
        "None says what the plant is.",
        "Deadly and poisonous plants stay in the list until two marks",
        "Several ticks at one question mean: one of these",
    ):
        assert words in text


def test_a_question_that_is_not_sure_by_itself_says_so() -> None:
    files = {"course.yml": "", "a.md": lesson("A", "Flowers colour: white"),
             "b.md": lesson("B", "Flowers colour: blue")}  # fmt: skip
    text = seen(pages_of(files)["key.html"]).text
    assert "Not sure by itself. Pale and white forms occur in most plants" in text
    assert "Not sure by itself." not in seen(PAGE).text


def test_where_nothing_tells_the_plants_apart_the_page_says_so() -> None:
    for files in ({"course.yml": ""}, {"course.yml": "", "a.md": lesson("A")}):
        text = seen(pages_of(files)["key.html"]).text
        assert "Nothing that is recorded tells the plants of this course apart." in text
