"""Two plants side by side: which rows there are, their order and what they say."""

from __future__ import annotations

import re
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from helpers.courses import seen, site_of
from helpers.pairs import FILES, LILY, RAMSONS
from helpers.workshop import bank_of
from sallet.folder import read_path
from sallet.lesson.value import Window
from sallet.lesson.values.times import day_of_year
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.study.features import feature_of

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from sallet.lesson.model import Lesson
    from sallet.publish.pair_table import PairGroup, PairRow


def groups_of(files: Mapping[str, str], path: str = "") -> tuple[PairGroup, ...]:
    """Return the table of the first pair of some lessons, or of the one whose page it is."""
    pages = site_of({"course.yml": "", **files}).pairs
    return next(page.groups for page in pages if path in page.pair.path)


def texts(row: PairRow) -> tuple[list[str], list[str]]:
    """Return the values of a row in bare words, of the one and of the other plant."""
    this, that = ([bare(fact.value) for fact in side] for side in (row.this, row.that))
    return this, that


def bare(value: str) -> str:
    """Return a value without the marks of its sources."""
    return seen(re.sub("<sup.*?</sup>", "", value)).text


def row_of(name: str, ours: str, theirs: str, organ: str = "Leaves") -> PairRow:
    """Return the row of a character that is recorded of two plants."""
    files = {
        "a.md": f"---\nname: A\n---\n## Identification\n### {organ}\n{ours}\n## Look-alikes\n### B\n",
        "b.md": f"---\nname: B\n---\n## Identification\n### {organ}\n{theirs}\n",
    }
    return next(r for group in groups_of(files) for r in group.rows if r.name == name)


def test_organs_and_rows_that_tell_apart_come_first_and_nothing_recorded_is_missing() -> None:
    found = [
        (group.heading, [(row.name, row.telling) for row in group.rows])
        for group in groups_of(FILES, "lily")
    ]
    assert found == [
        ("Flowers", [("inflorescence", "firm")]),
        ("Roots", [("kind", "firm")]),
        ("Leaves", [
            ("gloss", "other"), ("attachment", ""), ("tip", ""), ("smell when crushed", ""),
            ("margin", ""),
        ]),
        ("Whole plant", [("habit", "")]),
    ]  # fmt: skip


def test_what_is_recorded_of_one_plant_only_is_not_recorded_of_the_other() -> None:
    rows = {row.name: texts(row) for group in groups_of(FILES, "lily") for row in group.rows}
    assert rows == {
        "habit": (["bulb plant"], []),
        "attachment": (["stalked"], ["stalked\u2060, stalkless"]),
        "gloss": (["glossy above matt beneath"], ["matt above glossy beneath"]),
        "tip": (["acute"], ["acute"]),
        "smell when crushed": (["garlic"], []),
        "inflorescence": (["umbel"], ["one-sided raceme"]),
        "kind": (["bulb"], ["rhizome"]),
        "margin": ([], ["entire"]),
    }


def test_a_value_leads_to_the_source_on_the_page_of_its_own_plant() -> None:
    (row,) = groups_of(FILES, "lily")[0].rows
    links = [a.attributes["href"] for fact in row.that for a in seen(fact.value).all("a")]
    assert links == ["../plants/lily-of-the-valley.html#source-1"]


def test_what_tells_apart_says_so_in_a_shape_and_in_words() -> None:
    marks = {row.name: row.mark for group in groups_of(FILES, "lily") for row in group.rows}
    assert {marks["inflorescence"], marks["gloss"], marks["tip"]} == {
        ("◆", "tells apart"), ("◇", "tells apart, not sure by itself"), ("", ""),
    }  # fmt: skip
    assert row_of("in winter", "- in winter: evergreen", "- in winter: dies back").mark == (
        "·", "differs, but cannot be tested on a day",
    )  # fmt: skip


def test_a_caveat_stands_with_what_may_not_be_trusted_by_itself_and_only_there() -> None:
    caveats = {row.name: row.caveat for group in groups_of(FILES, "lily") for row in group.rows}
    gloss = bank_of(FILES).vocabulary.label("leaves", "gloss")
    assert gloss is not None
    assert {name: words for name, words in caveats.items() if words} == {"gloss": gloss.caveat}


def test_each_row_tells_when_it_can_be_looked_at_on_either_plant() -> None:
    """Days at the ends of a time are uncertain by five, and do not count."""
    rows = {row.name: (row.organ, row.seen, row.windows)
            for group in groups_of(FILES, "lily") for row in group.rows if row.seen}  # fmt: skip
    assert rows == {
        "inflorescence": (
            "flowers",
            "To be seen on Ramsons 6–26 May, on Lily of the valley 6 May to 25 June.",
            (Window(day_of_year(5, 6), day_of_year(5, 26)),),
        ),
        "kind": ("roots", "To be seen on both only when dug up.", ()),
        "gloss": (
            "leaves",
            "To be seen on Ramsons 6 March to 25 June, on Lily of the valley all year.",
            (Window(day_of_year(3, 6), day_of_year(6, 25)),),
        ),
    }


def test_a_feature_without_a_time_says_that_none_is_told() -> None:
    row = row_of("division", "- division: simple", "- division: pinnate")
    assert row.seen == "To be seen on both at no time that is told."


def test_what_no_one_looks_for_has_no_time() -> None:
    row = row_of("in winter", "- in winter: evergreen", "- in winter: dies back")
    assert (row.telling, row.seen, row.windows) == ("untested", "", ())


def test_a_plant_that_is_described_in_place_has_no_times_and_its_marks_are_the_lessons() -> None:
    first = groups_of(FILES, "garlic")[0].rows[0]
    assert (first.name, *texts(first)) == ("attachment", ["stalked"], ["stalkless"])
    assert first.seen == "To be seen on Ramsons 6 March to 25 June."


def test_what_is_told_in_place_and_in_the_plants_own_lesson_stands_once() -> None:
    told = RAMSONS.replace(
        "- on the card: two leaves in one shoot\n",
        "- on the card: two\n#### Leaves\n- tip: acute\n- base: cordate\n",
    )
    files = {"ramsons.md": told, "lily-of-the-valley.md": LILY.replace("- tip: acute", "- tip: acute\n- base: rounded")}  # fmt: skip
    rows = {row.name: texts(row)[1] for group in groups_of(files, "lily") for row in group.rows}
    assert (rows["tip"], rows["base"]) == (["acute"], ["cordate", "rounded"])


def test_a_piece_of_an_organ_has_a_group_of_its_own() -> None:
    text = "---\nname: A\n---\n## Identification\n### Bulb\n- coat: papery\n## Look-alikes\n### B\n"
    assert [g.heading for g in groups_of({"a.md": text})] == ["Bulb"]


def test_a_label_nobody_knows_stands_as_it_is_written() -> None:
    row = row_of("<shine>", "- <shine>: much", "- tip: acute")
    assert (row.label, *texts(row)) == ("&lt;shine&gt;", ["much"], [])


@pytest.mark.parametrize("which", ["lessons", "here"])
def test_every_feature_that_tells_apart_stands_in_its_row_in_the_words_of_the_cards(
    which: str,
) -> None:
    """But for what is set by its states, counts or both systems of units: the same words in order."""
    if which == "here":
        site = site_of(FILES)
    else:
        files = {one.source.path.rpartition("/")[2]: one.source.text for one in _lessons()}
        site = site_of({"course.yml": "", **files})
    count, lengths = 0, list[tuple[str, str]]()
    for page in site.pairs:
        rows = {(row.organ, row.name): row for group in page.groups for row in group.rows}
        for contrast in site.comparer.contrasts(page.pair):
            if not contrast.is_test:
                continue
            feature = feature_of(contrast, site.bank.vocabulary)
            row = rows[feature.organ[:1].lower() + feature.organ[1:], feature.label]
            this, that = texts(row)
            if contrast.label.kind == "measure":
                lengths.append((feature.this, this[0]))
            else:
                words = [_bag(words) for words in (feature.this, feature.that)]
                assert words == [_bag(this[0]), _bag(that[0])]
            assert row.telling == ("firm" if feature.is_reliable else "other")
            assert row.caveat == ("" if feature.is_reliable else feature.caveat)
            count += 1
    assert count > {"here": 3, "lessons": 200}[which]
    assert [pair for pair in lengths if not _same_numbers(*pair)] == []


def _bag(words: str) -> list[str]:
    """Return the words without what joins them: tables set `5 (rarely) or 6` as `rarely 5, 6`."""
    return sorted(word for word in re.findall(r"[^\s,;()\u2060]+", words) if word not in _JOINING)


_JOINING = {"or", "and"}


def _same_numbers(words: str, text: str) -> bool:
    """Return whether a length in its own unit stands in what is set in both systems."""
    return set(re.findall(r"[\d.]+", words)) <= set(re.findall(r"[\d.]+", text))


def _lessons() -> Iterable[Lesson]:
    return read_path(
        Path(__file__).resolve().parents[2] / "lessons", load_vocabulary()
    ).bank.lessons
