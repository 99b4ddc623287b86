"""What `sallet explain` says."""

from __future__ import annotations

import re

import pytest

from sallet.checks import CHECKS
from sallet.checks.catalogue import page_of, summary_of
from sallet.drawing.kinds import HABIT, KINDS
from sallet.explaining import explain_words, nothing_known
from sallet.folder import REFUSED_ABOUT
from sallet.lesson.vocabulary_file import build_vocabulary, load_vocabulary

VOCABULARY = build_vocabulary({
    "shared.yml": "lists: {}\nqualifiers: {}\n",
    "leaves.yml": """
subject: leaves
heading: Leaves
organ: true
also: [leaf]
definition: The flat green parts.
parts:
  young leaves: {definition: Not yet full grown., also: [leaf tips]}
labels:
  margin:
    definition: The edge of the blade.
    kind: states
    aspect: form
    reliability: fair
    caveat: The first leaves may differ.
    also: [edge]
    apart: all
    states:
      entire: {definition: Without teeth., also: [smooth]}
      toothed: {definition: With teeth.}
  length:
    definition: The length of the blade.
    kind: measure
    aspect: size
    reliability: firm
""",
    "season.yml": "subject: season\nheading: Season\ndefinition: When it is seen.\n",
    "use.yml": """
subject: uses
heading: Uses
definition: What people did with it.
labels:
  dye: {definition: The colour it gives., kind: words, aspect: use}
""",
})  # fmt: skip


@pytest.mark.parametrize("words", ["margin", "Edge", " MARGIN "])
def test_a_label_is_explained_with_its_terms(words: str) -> None:
    assert (
        explain_words(words, VOCABULARY)
        == """\
margin (Leaves)
  The edge of the blade.
  also: edge
  write one of the terms below
  to tell plants apart: fair. The first leaves may differ.
  entire
      Without teeth.
  toothed
      With teeth."""
    )


def test_a_label_says_what_it_counts_as_one_with_and_whether_it_can_be_looked_at() -> None:
    surface, spreads = (explain_words(w, load_vocabulary()) or "" for w in ("latex", "spreads by"))
    assert "\n  counts as one with all that tells of: milk\n" in surface
    assert "\n  shows over weeks or years only: it makes no day sure\n" in spreads


def test_a_label_says_what_to_write_and_how_far_it_may_be_trusted() -> None:
    assert (
        explain_words("length", VOCABULARY)
        == """\
length (Leaves)
  The length of the blade.
  write a length, such as `10–25 cm`
  to tell plants apart: firm."""
    )


def test_a_label_of_a_section_tells_no_plants_apart() -> None:
    assert (
        explain_words("dye", VOCABULARY)
        == """\
dye (Uses)
  The colour it gives.
  write your own words"""
    )


@pytest.mark.parametrize("words", ["entire", "smooth"])
def test_a_term_is_explained_with_its_other_names_and_what_it_excludes(words: str) -> None:
    assert (
        explain_words(words, VOCABULARY)
        == """\
entire (Leaves, margin)
  Without teeth.
  also: smooth
  never together with: toothed"""
    )


@pytest.mark.parametrize("words", ["leaves", "Leaf"])
def test_a_part_of_the_plant_is_explained_with_its_labels_and_its_drawings(words: str) -> None:
    text, drawings = (explain_words(words, VOCABULARY) or "").split(
        "\n\n  Drawn of it, in a plant's plate:\n"
    )
    assert (
        text
        == """\
Leaves
  The flat green parts.
  margin
      The edge of the blade.
  length
      The length of the blade."""
    )
    assert drawings.startswith("""\
  how the leaves rise (leaves)
      needs `rises from the ground`.
  how the leaves are set (leaves)
      needs `arrangement`. It also shows leaves to a node, posture.
""")


def test_a_section_that_is_never_drawn_says_nothing_of_drawings() -> None:
    assert explain_words("season", VOCABULARY) == "Season\n  When it is seen."


@pytest.mark.parametrize("words", ["drawings", " Drawing"])
def test_what_a_drawing_needs_is_told_for_every_kind_of_it(words: str) -> None:
    text = explain_words(words, VOCABULARY) or ""
    entries = [line.strip() for line in text.split("\n") if re.match(r"  \S.* \([a-z ]+\)$", line)]
    assert entries == [f"{kind.name} ({kind.organ})" for kind in (*KINDS, HABIT)]
    for kind in KINDS:
        assert f"needs {kind.needs}." in " ".join(text.split())


def test_a_piece_of_a_part_is_explained() -> None:
    assert explain_words("leaf tips", VOCABULARY) == "young leaves (Leaves)\n  Not yet full grown."


def test_a_word_that_names_several_things_is_explained_as_each() -> None:
    text = explain_words("white", load_vocabulary()) or ""
    assert "white (Flowers, colour)" in text
    assert "white (Sap, colour)" in text
    assert len(text.split("\n\n")) == len(set(text.split("\n\n")))


@pytest.mark.parametrize("words", ["unknown-state", "Unknown-State"])
def test_a_check_is_explained_by_its_page(words: str) -> None:
    (module,) = [module for module in CHECKS if module.ID == "unknown-state"]
    assert explain_words(words, VOCABULARY) == page_of(module)


def test_the_check_of_files_that_cannot_be_read_is_explained_too() -> None:
    assert explain_words("refused-file", VOCABULARY) == f"refused-file (stop)\n\n{REFUSED_ABOUT}"


def test_without_a_word_there_is_a_list_of_all_there_is() -> None:
    text = explain_words(" ", VOCABULARY) or ""
    checks, words = text.split(
        "\n\nParts of the plant and sections of a lesson, with their labels\n"
    )
    names = [line.strip() for line in checks.split("\n") if line.startswith("  ")
             and not line.startswith("   ")]  # fmt: skip
    assert names == [module.ID for module in CHECKS]
    told = " ".join(checks.split())
    for module in CHECKS:
        assert f" {module.ID} {module.SEVERITY.value}: {summary_of(module)}" in told
    assert (
        words
        == """\
  leaves
      margin, length
  season
      When it is seen.
  uses
      dye

`sallet explain margin` or `sallet explain leaves` says more;
`sallet explain drawings` says what to record that a plant is drawn."""
    )


def test_no_line_is_wider_than_a_terminal() -> None:
    for words in ("", "shape", "cautions", "flowers"):
        text = explain_words(words, load_vocabulary()) or ""
        wide = [line for line in text.split("\n") if len(line) > 92 and "also:" not in line]
        assert [line for line in wide if not line.startswith("  to tell")] == []


def test_words_that_name_nothing_are_not_explained() -> None:
    assert explain_words("zzzz", VOCABULARY) is None
    assert nothing_known("zzzz", VOCABULARY) == "sallet: `zzzz` is no check, label or term"


def test_the_nearest_words_are_offered() -> None:
    assert nothing_known("margine", VOCABULARY) == (
        "sallet: `margine` is no check, label or term; near it are `margin`"
    )


def test_every_check_label_and_term_of_sallet_is_explained() -> None:
    vocabulary = load_vocabulary()
    words = [module.ID for module in CHECKS]
    words += [subject.name for subject in vocabulary.subjects]
    words += [label.name for subject in vocabulary.subjects for label in subject.labels[:3]]
    assert [word for word in words if not explain_words(word, vocabulary)] == []
