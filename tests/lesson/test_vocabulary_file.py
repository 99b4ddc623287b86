"""The vocabulary that ships with sallet, word by word, and what is refused as one.

The shapes are compared with the table of Radford and others 1974, Vascular Plant Systematics,
chapter 6 (after Taxon 11, 1962), read in a copy of it.
"""

from __future__ import annotations

from collections import Counter
from itertools import pairwise
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest
import yaml

import sallet.lesson
from sallet.lesson.leaf_shape import ratio_of
from sallet.lesson.vocabulary import Label, Part, Qualifier, State, Subject, Vocabulary, normal
from sallet.lesson.vocabulary_file import VocabularyFault, build_vocabulary, load_vocabulary
from sallet.yamltext import read_yaml

if TYPE_CHECKING:
    from collections.abc import Iterable

VOCABULARY = load_vocabulary()
LABELS = [label for subject in VOCABULARY.subjects for label in subject.labels]
ORGAN_LABELS = [label for organ in VOCABULARY.organs for label in organ.labels]
STATES = [(label, state) for label in LABELS for state in label.states]
FILES = sorted((Path(sallet.lesson.__file__).parent / "vocabulary").glob("*.yml"))


def raw(path: Path) -> Any:
    """Return a file as PyYAML reads it, all scalars as strings, keys in their order."""
    return yaml.load(path.read_text("utf-8"), yaml.BaseLoader)  # noqa: S506 - strings only


SHARED: Any = next(raw(path) for path in FILES if path.name == "shared.yml")


def twice(words: Iterable[str]) -> list[str]:
    """Return the words that stand more than once."""
    return [word for word, times in Counter(map(normal, words)).items() if times > 1]


def name_of(label: Label) -> str:
    """Return a label as a person would cite it."""
    return f"{label.subject}: {label.name}"


# ---- how much there is --------------------------------------------------------------------


def test_there_are_words_enough_to_describe_a_plant() -> None:
    lists = {(label.shared or name_of(label), state.name) for label, state in STATES}
    assert len({name_of(label) for label in LABELS}) >= 90
    assert len(lists) >= 450
    assert len({state.name for _, state in STATES}) >= 450


def test_every_organ_of_the_format_is_there() -> None:
    headings = ["Whole plant", "Stem", "Leaves", "Flowers", "Fruit", "Seeds", "Roots", "Bark",
                "Buds", "Sap"]  # fmt: skip
    assert sorted(organ.heading for organ in VOCABULARY.organs) == sorted(headings)


@pytest.mark.parametrize("word", ["bulb", "tuber", "rhizome", "hip", "haw"])
def test_the_kinds_of_organs_that_the_format_names_are_there(word: str) -> None:
    found = VOCABULARY.organ(word)
    assert found is not None
    assert found[1] is not None
    assert found[1].name.removesuffix("s") == word


# ---- whether each word is whole -----------------------------------------------------------


def test_everything_is_defined_in_a_sentence_that_fits_a_card() -> None:
    defined: list[tuple[str, str]] = [(s.name, s.definition) for s in VOCABULARY.subjects]
    defined += [(p.name, p.definition) for s in VOCABULARY.subjects for p in s.parts]
    defined += [(q.name, q.definition) for q in VOCABULARY.qualifiers]
    defined += [(name_of(label), label.definition) for label in LABELS]
    defined += [(f"{name_of(label)}: {s.name}", s.definition) for label, s in STATES]
    assert [(name, text) for name, text in defined if not 8 <= len(text.strip()) <= 140] == []
    assert [(name, text) for name, text in defined if not text.endswith(".")] == []


def test_a_label_has_states_if_it_is_read_as_states() -> None:
    assert [name_of(x) for x in LABELS if (x.kind == "states") != bool(x.states)] == []


def test_every_character_of_an_organ_can_be_asked_for() -> None:
    unasked = [name_of(x) for x in ORGAN_LABELS if x.kind == "states" and not x.asks.endswith("?")]
    assert unasked == []


def test_every_character_that_is_not_firm_says_why() -> None:
    silent = [name_of(x) for x in ORGAN_LABELS if x.reliability != "firm" and not x.caveat]
    assert silent == []


def test_no_two_states_of_a_label_share_a_name_or_synonym() -> None:
    found = {name_of(x): twice(w for s in x.states for w in (s.name, *s.also)) for x in LABELS}
    assert {name: words for name, words in found.items() if words} == {}


def test_no_two_labels_of_a_subject_share_a_name_or_synonym() -> None:
    found = {
        subject.name: twice(w for x in subject.labels for w in (x.name, *x.also))
        for subject in VOCABULARY.subjects
    }
    assert {name: words for name, words in found.items() if words} == {}


def test_no_two_organs_and_parts_share_a_name_or_synonym() -> None:
    """A part stands alone in Season and Edible parts: its name must lead to one organ."""
    organs = [w for o in VOCABULARY.organs for w in {normal(o.name), normal(o.heading), *o.also}]
    parts = [w for o in VOCABULARY.organs for p in o.parts for w in (p.name, *p.also)]
    assert twice([*organs, *parts]) == []


def test_no_two_qualifiers_share_a_name_or_synonym() -> None:
    assert twice(w for q in VOCABULARY.qualifiers for w in (q.name, *q.also)) == []


def test_only_organs_have_parts() -> None:
    assert [s.name for s in VOCABULARY.subjects if s.parts and not s.is_organ] == []


# ---- what contradicts what ----------------------------------------------------------------


def test_what_excludes_another_state_is_a_state_that_excludes_it_too() -> None:
    one_sided = [
        (name_of(label), state.name, against)
        for label, state in STATES
        for against in state.excludes
        if state.name not in next(s for s in label.states if s.name == against).excludes
    ]
    assert one_sided == []


def test_no_state_excludes_itself() -> None:
    assert [(name_of(x), s.name) for x, s in STATES if s.name in s.excludes] == []


def test_neighbours_in_an_order_never_exclude_each_other() -> None:
    """Where one of two neighbours ends is a matter of opinion."""
    apart = [
        (name_of(label), one.name, other.name)
        for label in LABELS
        if label.ordered
        for one, other in pairwise(label.states)
        if other.name in one.excludes
    ]
    assert apart == []


def test_no_answer_to_the_length_of_the_day_excludes_another() -> None:
    """Many plants only flower sooner by it, and sorts of one kind differ. From memory."""
    label = VOCABULARY.label("growing", "day length")
    assert label is not None
    assert {s.name: s.excludes for s in label.states} == {
        "long-day": frozenset(), "short-day": frozenset(), "day-neutral": frozenset(),
    }  # fmt: skip


# ---- the files ----------------------------------------------------------------------------


def test_every_list_that_is_shared_is_used() -> None:
    assert set(SHARED["lists"]) == {label.shared for label in LABELS} - {""}


def test_the_order_of_the_subjects_names_each_of_them() -> None:
    assert SHARED["order"] == [subject.name for subject in VOCABULARY.subjects]


@pytest.mark.parametrize("path", FILES, ids=lambda path: str(path.name))
def test_no_key_of_a_file_stands_twice(path: Path) -> None:
    """The loader would take the second without a word."""
    assert read_yaml(path.read_text("utf-8"))[1] == ()


@pytest.mark.parametrize("path", FILES, ids=lambda path: str(path.name))
def test_the_states_stand_in_the_order_of_the_file(path: Path) -> None:
    """`damp to wet` means all that stand between them in the file."""
    file = raw(path)
    for name, label in file.get("labels", {}).items():
        held = SHARED["lists"][label["states from"]] if "states from" in label else label
        read = VOCABULARY.label(file["subject"], name)
        assert read is not None
        assert [state.name for state in read.states] == list(held.get("states", {}))
        assert read.ordered == (held.get("ordered") == "true")


@pytest.mark.parametrize("path", FILES, ids=lambda path: str(path.name))
def test_a_file_says_at_its_head_whom_it_follows_and_what_is_from_memory(path: Path) -> None:
    lines = path.read_text("utf-8").split("\n")
    head = lines[: next(i for i, line in enumerate(lines) if not line.startswith("#"))]
    words = " ".join(line.lstrip("# ") for line in head)
    assert "from memory" in words
    assert "No published glossary was followed" in words or " follow" in words


# ---- against the outside: Radford and others 1974, chapter 6 ------------------------------

TABLE = [
    (12, None, {"parallel": "linear"}),
    (3, 6, {"middle": "narrowly elliptic", "parallel": "narrowly oblong", "below": "lanceolate",
            "above": "oblanceolate"}),
    (3 / 2, 2, {"middle": "elliptic", "parallel": "oblong", "below": "ovate", "above": "obovate"}),
    (6 / 5, 6 / 5, {"middle": "widely elliptic", "below": "widely ovate",
                    "above": "widely obovate"}),
    (1, 1, {"middle": "circular", "parallel": "square", "below": "widely ovate",
            "above": "widely obovate"}),
    (5 / 6, 5 / 6, {"middle": "oblate"}),
    (1 / 2, 2 / 3, {"middle": "oblate"}),
]  # fmt: skip
"""Length to width from and to, then the shape by where it is widest. The table calls 1:1 `very
widely ovate` and 2:3–1:2 `transversely elliptic`; here a teacher has one word for both steps."""
CELLS = sorted({(name, at) for _, _, row in TABLE for at, name in row.items()})


@pytest.mark.parametrize(("name", "widest"), CELLS)
def test_a_shape_has_the_ratio_of_the_published_table(name: str, widest: str) -> None:
    rows = [(low, high) for low, high, row in TABLE if row.get(widest) == name]
    label = VOCABULARY.label("leaves", "shape")
    state = label.state(name) if label else None
    assert state is not None
    ratio = ratio_of(state)
    assert ratio is not None
    assert state.draw["widest"] == widest
    assert ratio.low == pytest.approx(min(low for low, _ in rows), abs=0.005)  # 5/6 as 0.83
    highs = [high for _, high in rows if high is not None]
    assert ratio.high == (pytest.approx(max(highs), abs=0.005) if highs else None)


def test_every_ratio_of_a_shape_can_be_read() -> None:
    unread = [
        (name_of(label), state.name, state.draw["ratio"])
        for label, state in STATES
        if "ratio" in state.draw and ratio_of(state) is None
    ]
    assert unread == []


@pytest.mark.parametrize("name", ["shape", "leaflet shape"])
def test_every_shape_of_a_leaf_has_a_ratio_and_says_where_it_is_widest(name: str) -> None:
    label = VOCABULARY.label("leaves", name)
    assert label is not None
    places = {"middle", "parallel", "below", "above"}
    told = {s.name: ("ratio" in s.draw, s.draw.get("widest") in places) for s in label.states}
    assert set(told.values()) == {(True, True)}


# ---- how files become a vocabulary --------------------------------------------------------

LISTS = """
lists:
  wetness:
    ordered: true
    apart: [[dry, wet]]
    states:
      dry: {definition: Without water.}
      damp: {definition: A little wet., also: [moist]}
      wet: {definition: Full of water.}
qualifiers:
  lower: {definition: Low on the stem., kind: place, also: [lowest]}
"""
SOIL = """
subject: habitat
heading: Habitat
definition: Where the plant grows.
labels:
  moisture:
    definition: How wet the soil is.
    kind: states
    aspect: place
    states from: wetness
"""
MARGIN = """
subject: leaves
heading: Leaves
organ: true
also: [foliage]
definition: The green parts.
parts:
  blades: {definition: The flat parts., also: [blade]}
labels:
  margin:
    definition: The edge of the blade.
    kind: states
    aspect: form
    reliability: firm
    asks: What is the edge like?
    apart: all
    states:
      entire: {definition: Without teeth.}
      toothed: {definition: With teeth., draw: {tooth: saw}, lead: edge toothed}
"""


def test_a_file_becomes_a_subject_whole() -> None:
    found = build_vocabulary({"shared.yml": LISTS, "leaves.yml": MARGIN})
    entire = State("entire", "Without teeth.", excludes=frozenset({"toothed"}))
    toothed = State("toothed", "With teeth.", (), frozenset({"entire"}), {"tooth": "saw"},
                    "edge toothed")  # fmt: skip
    margin = Label("leaves", "margin", "states", "The edge of the blade.", "form", "firm",
                   asks="What is the edge like?", states=(entire, toothed))  # fmt: skip
    blades = Part("leaves", "blades", "The flat parts.", ("blade",))
    leaves = Subject("leaves", "Leaves", is_organ=True, definition="The green parts.",
                     also=("foliage",), parts=(blades,), labels=(margin,))  # fmt: skip
    lower = Qualifier("lower", "place", "Low on the stem.", ("lowest",))
    assert found == Vocabulary((leaves,), (lower,))


def test_a_shared_list_gives_its_states_its_order_and_its_groups() -> None:
    found = build_vocabulary({"shared.yml": LISTS, "habitat.yml": SOIL})
    label = found.label("habitat", "moisture")
    assert label is not None
    assert (label.shared, label.ordered) == ("wetness", True)
    assert [(s.name, s.excludes) for s in label.states] == [
        ("dry", frozenset({"wet"})), ("damp", frozenset()), ("wet", frozenset({"dry"})),
    ]  # fmt: skip


def test_the_subjects_stand_in_the_order_that_is_told() -> None:
    """A subject that the list forgets comes last, rather than not at all."""
    files = {"a.yml": MARGIN, "z.yml": SOIL}
    found = build_vocabulary({**files, "shared.yml": f"order: [habitat]\n{LISTS}"})
    assert [subject.name for subject in found.subjects] == ["habitat", "leaves"]


def test_without_one_the_subjects_stand_in_the_order_of_their_files() -> None:
    found = build_vocabulary({"z.yml": SOIL, "shared.yml": LISTS, "a.yml": MARGIN})
    assert [subject.name for subject in found.subjects] == ["leaves", "habitat"]


@pytest.mark.parametrize(
    ("old", "new", "message"),
    [
        ("apart: all", "apart: [[entire, wavy]]",
         "leaves.yml: margin: `apart` names `wavy`, which is no state"),
        ("apart: all", "states from: colours", "leaves.yml: margin: no list `colours` in shared.yml"),
        ("apart: all", "states from: wetness",
         "leaves.yml: margin: `states` and `states from` stand together"),
    ],
)  # fmt: skip
def test_a_broken_file_is_named_with_what_is_wrong(old: str, new: str, message: str) -> None:
    with pytest.raises(VocabularyFault) as refusal:
        build_vocabulary({"shared.yml": LISTS, "leaves.yml": MARGIN.replace(old, new)})
    assert str(refusal.value) == message


def test_a_file_that_is_no_yaml_is_named() -> None:
    with pytest.raises(VocabularyFault, match=r"^leaves\.yml: "):
        build_vocabulary({"shared.yml": LISTS, "leaves.yml": "subject: [leaves\n"})


def test_a_broken_group_of_a_shared_list_is_named_there() -> None:
    with pytest.raises(VocabularyFault) as refusal:
        build_vocabulary({"shared.yml": LISTS.replace("[dry, wet]", "[dry, sodden]")})
    assert str(refusal.value) == "shared.yml: wetness: `apart` names `sodden`, which is no state"


@pytest.mark.parametrize(
    ("old", "new", "place"),
    [
        ("kind: states", "kind: stated", "labels.margin.kind"),
        ("aspect: form", "", "labels.margin.aspect"),
        ("reliability: firm", "reliability: sure", "labels.margin.reliability"),
        ("definition: Without teeth.", "definition: Smooth.", "labels.margin.states.entire.definition"),
        ("definition: The edge", f"definition: {'x' * 140}", "labels.margin.definition"),
        ("organ: true", "organs: true", "organs"),
    ],
)  # fmt: skip
def test_a_file_of_another_shape_is_named_with_the_place(old: str, new: str, place: str) -> None:
    with pytest.raises(VocabularyFault) as refusal:
        build_vocabulary({"shared.yml": LISTS, "leaves.yml": MARGIN.replace(old, new)})
    first, second, *_ = str(refusal.value).split("\n")
    assert first.startswith("leaves.yml: 1 validation error")
    assert second == place
