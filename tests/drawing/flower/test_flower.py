"""A flower shows what is recorded of it, says exactly that, and no more."""

from __future__ import annotations

from functools import cache
from itertools import combinations
from typing import TYPE_CHECKING, Final
from xml.etree import ElementTree as ET

import pytest
from shapely.geometry import LineString, Polygon
from shapely.ops import unary_union

from sallet.drawing.flower.flower import flower
from sallet.drawing.flower.tables import PLANS, USES
from sallet.drawing.ink import Copy, Mark, plain
from sallet.drawing.svg import ink_svg
from sallet.drawing.told import specimen
from sallet.lesson.vocabulary_file import load_vocabulary

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from sallet.drawing.ink import Ink
    from sallet.drawing.sketch import Sketch
    from sallet.drawing.told import Told

VOCABULARY: Final = load_vocabulary()
FLOWERS: Final = VOCABULARY.subject("flowers")
SIZE: Final = 150.0
NUMBERS: Final = {
    "petals": ("none", "1", "2", "3", "5", "8", "many"),
    "sepals": ("none", "2", "5"),
    "stamens": ("none", "2", "6", "14", "many"),
    "styles": ("none", "1", "3", "many"),
    "ray florets": ("none", "3", "13", "34", "many"),
    "petal length": ("4 mm", "9 mm"),
    "petal width": ("3 mm",),
    "width": ("20 mm",),
    "length": ("15 mm", "60 mm"),
}
LABELS: Final = tuple(sorted(frozenset().union(*USES.values())))
FULL: Final[dict[str, str]] = {
    "petals": "5", "symmetry": "radial", "petals fused or free": "free", "petal shape": "oval",
    "petal tip": "notched", "petal posture": "cupped", "petal length": "8 mm",
    "petal width": "5 mm", "width": "20 mm", "length": "18 mm", "sepals": "5",
    "sepals fused or free": "joined at the base", "sepal shape": "pointed",
    "sepal length beside the petals": "longer", "sepal posture": "spreading", "stamens": "10",
    "stamen length": "sticking out", "styles": "3", "stigma": "knob", "markings": "dark veins",
    "upper lip": "hooded", "lower lip": "three-lobed, spotted", "spur": "long and thin",
    "corolla tube": "curved", "florets": "tubes with straps round them", "ray florets": "13",
    "head bracts": "in several rows, spiny", "ovary position": "below", "calyx": "bell, ribbed",
}  # fmt: skip
SPECIMENS: Final = [
    {},
    {"petals": "5", "symmetry": "radial"},
    {"petals": "none", "sepals": "3", "symmetry": "radial", "petals and sepals": "sepals only"},
    {"petals": "none", "sepals": "3", "symmetry": "radial", "stamens": "many"},
    {"petals": "5", "symmetry": "radial", "sepals": "5", "sepal posture": "bent down"},
    {"petals": "6", "symmetry": "radial", "sepals": "5", "petals and sepals": "alike"},
    {"shape": "wheel", "sepals": "4", "petals": "none", "symmetry": "radial"},
    {"shape": "bell", "petals": "5"},
    {"florets": "all tubes", "ray florets": "5", "head bracts": "cottony"},
    {"florets": "all straps", "ray florets": "many"},
    *({"shape": shape} for shape in PLANS),
    *(FULL | {"shape": shape} for shape in PLANS),
    *(FULL | {"shape": s, "petals fused or free": "joined into a tube"} for s in PLANS),
    {label: value for label, value in FULL.items() if label not in {"florets", "shape"}},
    {k: v for k, v in FULL.items() if k not in {"florets", "petals fused or free", "width"}},
]


def told(words: Mapping[str, str]) -> Told:
    return specimen(VOCABULARY, "flowers", **words)


@cache
def _known(items: tuple[tuple[str, str], ...]) -> Sketch | None:
    return flower(told(dict(items)), SIZE)


def flower_of(words: Mapping[str, str]) -> Sketch | None:
    """Return a flower as it was drawn before from the same words: the drawing is a pure one."""
    return _known(tuple(sorted(words.items())))


def drawn(words: Mapping[str, str]) -> Sketch:
    sketch = flower_of(words)
    assert sketch is not None
    return sketch


def without(words: Mapping[str, str], label: str) -> dict[str, str]:
    return {key: value for key, value in words.items() if key != label}


def values(label: str) -> tuple[str, ...]:
    known = FLOWERS.label(label)
    assert known is not None
    return tuple(state.name for state in known.states) or NUMBERS[label]


def parts(ink: Ink, part: str) -> int:
    """Return how many marks of a kind stand in the SVG, copies of copies included."""
    root = ET.fromstring(f'<svg xmlns:x="x">{ink_svg(ink, "n")}</svg>')  # noqa: S314 - our own
    groups = {group.get("id"): group for group in root.iter("g") if group.get("id")}

    def count(element: ET.Element) -> int:
        own = part in (element.get("class") or "").split()
        inner = list(element)
        if element.tag == "use":
            inner = list(groups[(element.get("href") or "")[1:]])
        return own + sum(count(child) for child in inner if child.tag != "defs")

    return count(root)


def crossing(ink: Ink) -> Iterator[Mark]:
    """Yield the closed outlines that cross themselves."""
    for mark in plain(ink):
        points = [(round(p.real, 3), round(p.imag, 3)) for p in mark.path.points()]
        if mark.path.closed and points[0] != points[-1]:
            points.append(points[0])
        distinct = [p for k, p in enumerate(points) if k == 0 or p != points[k - 1]]
        if mark.path.closed and len(distinct) > 3 and not LineString(distinct).is_simple:
            yield mark


def look(sketch: Sketch | None) -> tuple[Ink, float | None] | None:
    return (sketch.ink, sketch.scale) if sketch else None


def shown(sketch: Sketch | None) -> set[str]:
    return {character.label for character in sketch.shows} if sketch else set()


@pytest.mark.parametrize("words", SPECIMENS, ids=str)
def test_the_words_name_exactly_what_is_drawn(words: dict[str, str]) -> None:
    whole = flower_of(words)
    for label in words:
        less = flower_of(without(words, label))
        assert (look(less) != look(whole)) == (label in shown(whole)), label


@pytest.mark.parametrize("words", SPECIMENS, ids=str)
def test_a_state_that_changes_nothing_is_not_named(words: dict[str, str]) -> None:
    for label in LABELS:
        less = flower_of(without(words, label))
        for value in values(label):
            more = flower_of({**words, label: value})
            if more is not None:
                assert (look(less) != look(more)) == (label in shown(more)), (label, value)


@pytest.mark.parametrize("label", sorted({label.name for label in FLOWERS.labels} - set(LABELS)))
def test_other_labels_change_nothing(label: str) -> None:
    known = FLOWERS.label(label)
    assert known is not None
    for state in known.states:
        for words in ({"petals": "5", "symmetry": "radial"}, FULL | {"shape": "lipped"}):
            assert look(flower(told({**words, label: state.name}), SIZE)) == look(
                flower(told(words), SIZE)
            )


@pytest.mark.parametrize("words", SPECIMENS, ids=str)
def test_no_closed_outline_crosses_itself(words: dict[str, str]) -> None:
    seen: set[Ink] = set()
    for label in LABELS:
        for value in values(label):
            sketch = flower_of({**words, label: value})
            if sketch and sketch.ink not in seen:
                seen.add(sketch.ink)
                assert [*crossing(sketch.ink)] == [], (label, value)


MAIN: Final = ("petals", "petal shape", "petal tip", "petals fused or free", "symmetry", "sepals")


@pytest.mark.parametrize(("one", "other"), [*combinations(MAIN, 2)])
def test_pairs_of_states_are_drawn_without_crossing(one: str, other: str) -> None:
    for first in values(one):
        for second in values(other):
            words = {"shape": "wheel", "petals": "5", one: first, other: second}
            sketch = flower(told(words), SIZE)
            assert sketch is None or [*crossing(sketch.ink)] == [], (first, second)


@pytest.mark.parametrize("words", SPECIMENS, ids=str)
def test_a_flower_drawn_twice_is_the_same(words: dict[str, str]) -> None:
    assert flower(told(words), SIZE) == flower(told(words), SIZE)


@pytest.mark.parametrize("count", [1, 2, 3, 4, 5, 6, 8, 12, 21])
@pytest.mark.parametrize("shape", ["star", "wheel", "saucer", "bell", "plate on a tube", "cup"])
def test_as_many_petals_as_recorded(shape: str, count: int) -> None:
    assert parts(drawn({"shape": shape, "petals": str(count)}).ink, "petal") == count


@pytest.mark.parametrize("joined", values("petals fused or free"))
@pytest.mark.parametrize("tip", values("petal tip"))
def test_as_many_petals_as_recorded_however_they_are_joined(joined: str, tip: str) -> None:
    words = {"symmetry": "radial", "petals": "5", "petals fused or free": joined, "petal tip": tip}
    assert parts(drawn(words).ink, "petal") == 5


def test_a_range_is_drawn_by_its_middle() -> None:
    sketch = drawn({"symmetry": "radial", "petals": "5–7"})
    assert parts(sketch.ink, "petal") == 6
    assert [c.words for c in sketch.shows] == ["symmetry: radial", "petals: 6 (recorded: 5–7)"]


def test_many_are_drawn_as_a_crowd() -> None:
    words = {"symmetry": "radial", "petals": "many", "stamens": "many", "styles": "many"}
    ink = drawn(words).ink
    assert {part: parts(ink, part) > 24 for part in ("petal", "stamen", "style")} == {
        "petal": True, "stamen": True, "style": True,
    }  # fmt: skip


@pytest.mark.parametrize("part", ["sepal", "stamen", "style"])
@pytest.mark.parametrize("count", [1, 2, 5, 6, 10, 17])
def test_as_many_small_parts_as_recorded(part: str, count: int) -> None:
    words = {"symmetry": "radial", "petals": "5", f"{part}s": str(count)}
    assert parts(drawn(words).ink, part) == count


@pytest.mark.parametrize("count", [1, 3, 4, 5, 6])
@pytest.mark.parametrize("shape", ["bell", "tube", "lipped", "pea"])
def test_as_many_teeth_of_the_calyx_as_recorded(shape: str, count: int) -> None:
    assert parts(drawn({"shape": shape, "petals": "5", "sepals": str(count)}).ink, "sepal") == count


@pytest.mark.parametrize("count", [3, 5, 13, 21, 34, 40])
@pytest.mark.parametrize("shape", ["daisy", "dandelion"])
def test_as_many_straps_as_recorded(shape: str, count: int) -> None:
    assert parts(drawn({"shape": shape, "ray florets": str(count)}).ink, "ray") == count


@pytest.mark.parametrize("length", values("sepal length beside the petals"))
@pytest.mark.parametrize("shape", ["star", "cross", "wheel"])
@pytest.mark.parametrize("joined", values("petals fused or free"))
def test_sepals_behind_the_petals_can_be_seen(shape: str, length: str, joined: str) -> None:
    words = {
        "shape": shape, "petals": "5", "petals fused or free": joined, "petal tip": "rounded",
        "sepals": "4" if shape == "cross" else "5", "sepal length beside the petals": length,
    }  # fmt: skip
    ink = drawn(words).ink
    covers = [
        Polygon([(p.real, p.imag) for p in mark.path.points()])
        for one in ink
        if one.part != "sepal"
        for mark in plain((one,))
        if mark.path.closed
    ]
    sepals = [one for one in ink if isinstance(one, Copy) and one.part == "sepal"]
    for sepal in sepals:
        shape_of = [Polygon([(p.real, p.imag) for p in m.path.points()]) for m in plain((sepal,))]
        seen = unary_union(shape_of).difference(unary_union(covers))
        assert seen.area > 0.03 * unary_union(shape_of).area


def test_what_is_not_recorded_is_left_out() -> None:
    ink = drawn({"symmetry": "radial", "petals": "5"}).ink
    assert {p: parts(ink, p) for p in ("petal", "sepal", "stamen", "style")} == {
        "petal": 5, "sepal": 0, "stamen": 0, "style": 0,
    }  # fmt: skip


@pytest.mark.parametrize(
    "words",
    [
        {},
        {"petals": "5"},
        {"symmetry": "radial"},
        {"symmetry": "two-sided", "petals": "5"},
        {"symmetry": "lopsided", "petals": "5"},
        {"symmetry": "radial", "petals": "none"},
        {"symmetry": "radial", "sepals": "5"},
        {"shape": "star"},
    ],
    ids=str,
)
def test_nothing_is_guessed(words: dict[str, str]) -> None:
    assert flower(told(words), SIZE) is None


def test_a_flower_of_sepals_is_drawn_where_it_is_told_to_have_no_petals() -> None:
    sketch = drawn({"symmetry": "radial", "petals": "none", "sepals": "3"})
    assert (parts(sketch.ink, "sepal"), parts(sketch.ink, "petal")) == (3, 0)


def test_an_unknown_end_is_dotted_and_a_known_one_is_not() -> None:
    base = {"symmetry": "radial", "petals": "5"}
    pens = [
        {mark.pen for mark in plain(drawn(words).ink)}
        for words in (base, base | {"petal tip": "pointed"})
    ]
    assert pens == [{"paper", "line", "dotted"}, {"paper", "line"}]


def test_hidden_stamens_are_not_drawn_and_that_is_said() -> None:
    words = {"symmetry": "radial", "petals": "5", "stamens": "6", "stamen length": "hidden"}
    sketch = drawn(words)
    assert parts(sketch.ink, "stamen") == 0
    assert shown(sketch) == {"symmetry", "petals", "stamen length"}


@pytest.mark.parametrize(
    ("words", "scale"),
    [
        ({"symmetry": "radial", "petals": "5"}, None),
        ({"symmetry": "radial", "petals": "5", "width": "30 mm"}, 5.0),
        ({"symmetry": "radial", "petals": "5", "width": "20–40 mm"}, 5.0),
        ({"shape": "bell", "petals": "5", "length": "3 cm"}, 5.0),
        ({"shape": "pea", "length": "15 mm"}, 10.0),
        ({"shape": "violet", "width": "15 mm"}, 10.0),
        ({"shape": "daisy", "ray florets": "13", "width": "3 cm"}, 5.0),
    ],
    ids=str,
)
def test_the_scale_follows_the_recorded_length(words: dict[str, str], scale: float | None) -> None:
    assert drawn(words).scale == scale


def test_a_length_of_the_petals_gives_the_scale_where_no_width_is_recorded() -> None:
    sketch = drawn({"symmetry": "radial", "petals": "5", "petal length": "10 mm"})
    assert sketch.scale == pytest.approx(SIZE / 2 * 0.955 / 10)


def test_a_mouth_is_as_wide_as_recorded() -> None:
    words = {"shape": "funnel", "petals": "5", "petal tip": "rounded", "length": "30 mm"}
    for width in (20, 40):
        sketch = drawn(words | {"width": f"{width} mm"})
        assert sketch.box.width == pytest.approx(SIZE * width / 30, rel=0.03)


def test_what_more_is_wanted_is_said() -> None:
    assert drawn({"shape": "violet", "width": "15 mm"}).wants == ("spur",)
    assert drawn({"shape": "violet", "width": "15 mm", "spur": "curved"}).wants == ()


def test_the_title_says_where_it_grows_and_how_it_is_seen() -> None:
    given = told({"shape": "daisy", "head bracts": "spiny"})
    sketch = flower(type(given)(given.subject, given.items, "female"), SIZE)
    assert sketch is not None
    assert sketch.title == "female flower head from above and from the side"


@pytest.mark.parametrize("words", SPECIMENS, ids=str)
def test_an_ordinary_flower_is_a_small_file(words: dict[str, str]) -> None:
    sketch = flower(told(words), SIZE)
    assert sketch is None or len(ink_svg(sketch.ink, "x")) < 6500
