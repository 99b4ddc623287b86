"""All pairs of a course as tables: what stands where, and how it is set."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from helpers.courses import pages_of, seen, site_of
from helpers.pairs import FILES, RAMSONS
from sallet.folder import read_path
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.publish.pair_comparing import Comparer
from sallet.publish.pair_matrix import COLUMNS, Cell, matrices
from sallet.publish.sheets import Setting
from sallet.season.gathering import all_tellings
from sallet.season.here import plant_year
from sallet.season.hopkins import spot_of
from sallet.season.telling import telling_of
from sallet.study.contrast import contrasts, tell_apart

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from sallet.lesson.model import Lesson
    from sallet.publish.pair_matrix import Matrices

PAGE = "pairs/ramsons-and-lily-of-the-valley.html"


def matrices_of(files: Mapping[str, str]) -> Matrices:
    """Return the tables of a course that teaches some lessons."""
    return site_of({"course.yml": "", **files}).all_pairs


def lesson(name: str, facts: str, head: str = "taught as: food", more: str = "") -> str:
    """Return the text of a lesson with facts of the leaves."""
    return f"---\nname: {name}\n{head}\n---\n## Identification\n### Leaves\n{facts}\n{more}"


def cell_of(ours: str, theirs: str, head: str = "taught as: food", more: str = "") -> Cell:
    """Return the cell of the only two plants of a course."""
    files = {"a.md": lesson("A", ours, more=more), "b.md": lesson("B", theirs, head)}
    ((row,),) = [table.rows for table in matrices_of(files).tables]
    (cell,) = row.cells
    return cell


DEADLY = "taught as: look-alike\ndanger: deadly"
EATEN = "## Season\n- leaves: April to June\n\n## Edible parts\n- leaves: May; raw\n"
OURS = "- attachment: stalked\n- division: simple"
THEIRS = "- attachment: stalkless\n- division: pinnate"
UMBEL = "### Flowers\n- inflorescence: umbel"
RACEME = "### Flowers\n- inflorescence: one-sided raceme"


# ---- the tables ---------------------------------------------------------------------------


def test_every_pair_stands_once() -> None:
    count = 5
    files = {f"f{n}.md": lesson(f"F{n}", "- tip: acute") for n in range(count)}
    files |= {f"h{n}.md": lesson(f"H{n}", "- tip: acute", DEADLY) for n in range(3)}
    made = matrices_of(files)
    found = [
        frozenset({row.lesson.slug, column.slug})
        for table in made.tables
        for row in table.rows
        for column, _ in zip(table.columns, row.cells, strict=False)
    ]
    assert made.pairs == len(found) == len({*found}) == 28
    assert [table.title for table in made.tables] == [
        "Food against plants that harm", "Food against food", "Plants that harm against each other",
    ]  # fmt: skip


def test_every_row_is_as_wide_as_its_table() -> None:
    files = {f"f{n}.md": lesson(f"F{n}", "- tip: acute") for n in range(COLUMNS + 4)}
    tables = matrices_of(files).tables
    assert [len(table.columns) for table in tables] == [COLUMNS, 3]
    assert [len(table.rows) for table in tables] == [COLUMNS + 3, 3]
    for table in tables:
        widths = {len(row.cells) + row.rest for row in table.rows}
        assert widths == {len(table.columns)}
    assert sum(len(row.cells) for t in tables for row in t.rows) == 28 * 27 // 2


def test_what_may_kill_stands_in_the_first_columns() -> None:
    heads = {"z": DEADLY, "b": "taught as: look-alike\ndanger: harmful", "c": "taught as: look-alike",
             "a": "taught as: look-alike\ndanger: poisonous", "y": DEADLY}  # fmt: skip
    files = {f"{name}.md": lesson(name, "- tip: acute", head) for name, head in heads.items()}
    table = matrices_of({**files, "food.md": lesson("food", "- tip: acute")}).tables[0]
    assert [one.slug for one in table.columns] == ["y", "z", "a", "b", "c"]


@pytest.mark.parametrize(
    ("ours", "theirs", "head", "more", "cell"),
    [
        (OURS, THEIRS, DEADLY, EATEN, Cell(2, "", "")),
        (OURS, THEIRS, "taught as: food", "", Cell(2, "", "")),
        ("- attachment: stalked", "- attachment: stalkless", DEADLY, EATEN, Cell(1, "all", "")),
        ("- attachment: stalked", "- attachment: stalkless", "taught as: food", "",
         Cell(1, "all", "")),
        ("- tip: acute", "- margin: entire", DEADLY, EATEN, Cell(0, "none", "")),
        ("- in winter: evergreen", "- in winter: dies back", DEADLY, EATEN, Cell(0, "none", "")),
        (f"{OURS}\n{UMBEL}", f"- attachment: stalkless\n{RACEME}", DEADLY,
         EATEN.replace("\n\n## Edible", "\n- flowers: mid May to June\n\n## Edible"),
         Cell(2, "some", "")),
        (f"{OURS}\n{UMBEL}", f"- attachment: stalkless\n{RACEME}", DEADLY,
         EATEN.replace("\n\n## Edible", "\n- flowers: September\n\n## Edible"),
         Cell(2, "all", "")),
    ],
)  # fmt: skip
def test_a_cell_counts_what_can_be_looked_for_and_says_how_sure_it_is(
    ours: str, theirs: str, head: str, more: str, cell: Cell
) -> None:
    assert cell_of(ours, theirs, head, more) == cell


@pytest.mark.parametrize(
    ("cell", "shape", "words"),
    [
        (Cell(7, "", ""), "", " features"),
        (Cell(1, "", ""), "", " feature"),
        (Cell(7, "some", PAGE), "◐",
         " features; named as look-alikes; not sure in some weeks of gathering"),
        (Cell(1, "all", ""), "●", " feature; not surely told apart by what is recorded"),
        (Cell(0, "none", ""), "✕", " features; nothing recorded tells them apart"),
    ],
)  # fmt: skip
def test_a_cell_says_in_words_what_its_shape_says(cell: Cell, shape: str, words: str) -> None:
    assert (cell.shape, cell.words) == (shape, words)


def test_a_named_pair_leads_to_its_page_and_counts_what_that_counts() -> None:
    site = site_of(FILES)
    (table,) = site.all_pairs.tables
    assert table.rows[0].cells == (Cell(3, "some", PAGE),)
    assert site.pairs[0].telling == 3


# ---- against the slow way -----------------------------------------------------------------


def _comparer() -> Comparer:
    bank = read_path(Path(__file__).resolve().parents[2] / "lessons", load_vocabulary()).bank
    years = {one.slug: plant_year(one, spot_of(one.front.seen_at)) for one in bank.lessons}
    taught = {one.slug: one for one in bank.lessons}
    setting = Setting(bank, taught, years, "metric", (), all_tellings(years, bank))
    return Comparer(setting, years)


COMPARER = _comparer()


def _cells() -> Iterator[tuple[Lesson, Lesson, Cell]]:
    for table in matrices(COMPARER).tables:
        for row in table.rows:
            for column, cell in zip(table.columns, row.cells, strict=False):
                yield row.lesson, column, cell


def test_the_lessons_at_hand_are_compared_as_one_by_one() -> None:
    """What is counted for all pairs at once is what `contrasts` finds for each, either way round."""
    bank = COMPARER.setting.bank
    look_alikes = {
        frozenset({pair.this, pair.other}): pair.those for pair in COMPARER.named.values()
    }
    count = 0
    for one, other, cell in _cells():
        if frozenset({one, other}) in look_alikes:
            continue
        for a, b in ((one, other), (other, one)):
            found = contrasts(a.facts, b.facts, bank.vocabulary)
            assert cell.count == sum(contrast.is_test for contrast in found)
        count += 1
    assert count > 300


def test_weeks_are_those_of_the_telling_of_each_pair() -> None:
    bank, years = COMPARER.setting.bank, COMPARER.setting.years
    checked = 0
    for one, other, cell in _cells():
        if one.is_food and other.front.danger in {"deadly", "poisonous"} and not cell.page:
            telling = telling_of(one, other, years, bank)
            assert COMPARER.told(one, other) == telling
            suffices = tell_apart(sign.contrast for sign in telling.signs)
            never = bool(telling.unsure) and telling.unsure == telling.gathered
            assert (cell.doubt in {"all", "none"}) == (not suffices or never)
            assert (cell.doubt == "") == (suffices and not telling.unsure)
            checked += 1
    assert checked > 100


# ---- how it is set ------------------------------------------------------------------------


def test_every_cell_has_its_heads_and_says_all_in_words() -> None:
    text = pages_of(FILES)["look-alikes.html"]
    page = seen(text)
    assert [a.attributes["href"] for a in page.all("a")].count(PAGE) == 2
    assert "3◐ features; named as look-alikes; not sure in some weeks of gathering" in page.text
    scopes = [th.attributes["scope"] for th in page.all("th")]
    assert scopes == ["col", "col", "row"]
    (box,) = [d for d in page.all("div") if d.attributes.get("class") == "matrix"]
    assert (box.attributes["tabindex"], box.attributes["role"]) == ("0", "region")


def test_the_key_tells_every_shape() -> None:
    text = seen(pages_of(FILES)["look-alikes.html"]).text
    for words in ("◐ not sure in some weeks of gathering",
                  "● not surely told apart by what is recorded",
                  "✕ nothing recorded tells them apart"):  # fmt: skip
        assert words in text


def test_a_course_of_one_plant_has_no_table() -> None:
    made = matrices_of({"a.md": lesson("A", OURS)})
    assert (made.tables, made.pairs) == ((), 0)
    assert "All pairs" not in pages_of({"course.yml": "", "a.md": RAMSONS})["look-alikes.html"]
