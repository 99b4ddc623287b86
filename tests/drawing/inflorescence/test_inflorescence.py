"""A cluster's drawing shows what is recorded, says exactly that, and can be counted back."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final
from xml.etree import ElementTree as ET

import pytest
from shapely.geometry import Polygon

from sallet.drawing.inflorescence.form import USES
from sallet.drawing.inflorescence.inflorescence import inflorescence
from sallet.drawing.ink import Copy, Mark
from sallet.drawing.svg import ink_svg, standalone
from sallet.drawing.told import specimen
from sallet.lesson.vocabulary_file import load_vocabulary

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.drawing.ink import Ink, Path
    from sallet.drawing.sketch import Sketch
    from sallet.drawing.told import Told

VOCABULARY: Final = load_vocabulary()
SUBJECT: Final = VOCABULARY.subject("flowers")
FULL: Final = {
    "rays": "7", "flowers in a cluster": "9", "main branches": "3", "cluster shape": "domed",
    "flowering order": "middle first", "cluster stalk": "long", "ray length": "4 cm",
    "bracts": "turned down", "number of bracts": "5", "bracteoles": "papery, fringed",
    "number of bracteoles": "4", "petals": "5", "petal shape": "linear", "petal tip": "pointed",
    "spathe": "papery sheath", "posture": "nodding", "bulbils": "present",
    "heads on a stalk": "a few", "position": "at the top", "cluster width": "6 cm",
    "cluster length": "20 cm", "colour": "white", "sepals": "5", "ray surface": "hairy",
}  # fmt: skip
STATES: Final = {
    label: tuple(state.name for state in found.states)
    for label in (
        "cluster shape", "flowering order", "cluster stalk", "bracts", "bracteoles", "spathe",
        "posture", "bulbils", "heads on a stalk", "position",
    )
    if (found := SUBJECT.label(label))
}  # fmt: skip
LACKING: Final = (
    (), ("petals", "rays"), ("petals", "rays", "flowers in a cluster"),
    ("petals", "bracts", "bracteoles"), ("petals", "position", "cluster width"),
)  # fmt: skip
PLAIN: Final = {label: words for label, words in FULL.items() if not label.startswith("petal")}
PLANS: Final = tuple(USES)
LARGE: Final = frozenset({"compound umbel", "panicle"})


def told(**words: str) -> Told:
    """Return flowers told in words; `_` in a label stands for a space."""
    return specimen(VOCABULARY, "flowers", **words)


def drawn(told: Told, size: float = 100) -> Sketch:
    """Return the cluster, which must be drawn."""
    sketch = inflorescence(told, size)
    assert sketch is not None
    return sketch


def parts(ink: Ink, part: str) -> int:
    """Count the marks of one kind in the SVG, each copy for what it holds."""
    root = ET.fromstring(standalone(ink, drawn(told(inflorescence="single")).box))  # noqa: S314
    named = {e.get("id"): e for e in root.iter() if e.get("id")}

    def count(element: ET.Element) -> int:
        if element.tag.endswith("defs"):
            return 0
        own = part in (element.get("class") or "").split()
        target = named.get((element.get("href") or "").removeprefix("#"))
        inner = sum(map(count, element)) + (count_in(target) if target is not None else 0)
        return own + inner

    def count_in(group: ET.Element) -> int:
        return sum(map(count, group))

    return count(root)


def outlines(ink: Ink) -> Iterator[Path]:
    """Yield every closed path once, copies as the piece they are of."""
    seen = set()
    stack: list[Mark | Copy] = list(ink)
    while stack:
        one = stack.pop()
        if isinstance(one, Mark):
            if one.path.closed:
                yield one.path
        elif one.piece not in seen:
            seen.add(one.piece)
            stack += one.piece


def says_exactly_what_it_shows(given: Told, labels: tuple[str, ...]) -> None:
    """Assert that a label is said to be shown if and only if the drawing differs without it."""
    sketch = drawn(given)
    shown = [character.label for character in sketch.shows]
    assert sorted(shown) == sorted(set(shown))
    changing = set()
    for label in labels:
        without = inflorescence(given.without(label), 100)
        if without is None or (without.ink, without.scale) != (sketch.ink, sketch.scale):
            changing.add(label)
    assert changing == set(shown) & set(labels)


@pytest.mark.parametrize("plan", PLANS)
@pytest.mark.parametrize("lacking", LACKING, ids=str)
def test_the_words_name_exactly_what_is_drawn(plan: str, lacking: tuple[str, ...]) -> None:
    words = {"inflorescence": plan, **{k: v for k, v in FULL.items() if k not in lacking}}
    says_exactly_what_it_shows(told(**words), tuple(words))


@pytest.mark.parametrize("plan", PLANS)
@pytest.mark.parametrize("label", STATES)
def test_each_state_is_said_to_be_shown_only_where_it_changes_the_drawing(
    plan: str, label: str
) -> None:
    for state in STATES[label]:
        words = {"inflorescence": plan, **PLAIN, label: state}
        says_exactly_what_it_shows(told(**words), (label,))


@pytest.mark.parametrize("label", ["bracts", "bracteoles", "number of bracts"])
@pytest.mark.parametrize("plan", PLANS)
def test_what_is_not_there_is_said_only_where_it_changes_the_drawing(plan: str, label: str) -> None:
    says_exactly_what_it_shows(told(inflorescence=plan, **{**PLAIN, label: "none"}), tuple(PLAIN))


@pytest.mark.parametrize("plan", PLANS)
@pytest.mark.parametrize("lacking", LACKING, ids=str)
def test_closed_outlines_do_not_cross_themselves(plan: str, lacking: tuple[str, ...]) -> None:
    words = {k: v for k, v in PLAIN.items() if k not in lacking}
    paths = list(outlines(drawn(told(inflorescence=plan, **words), 200).ink))
    crossed = [
        path for path in paths if not Polygon([(p.real, p.imag) for p in path.points()]).is_valid
    ]
    assert crossed == []


@pytest.mark.parametrize("plan", PLANS)
def test_a_cluster_is_drawn_the_same_twice(plan: str) -> None:
    given = told(inflorescence=plan, **FULL)
    assert drawn(given) == drawn(given)


@pytest.mark.parametrize("plan", PLANS)
def test_a_figure_is_small(plan: str) -> None:
    most = 16_384 if plan in LARGE else 9_216
    for words in ({}, {"petals": "5"}, FULL):
        ink = drawn(told(inflorescence=plan, **words), 200).ink
        assert len(ink_svg(ink, "x")) <= most


def test_no_kind_of_cluster_no_drawing() -> None:
    assert inflorescence(told(petals="5", rays="12"), 200) is None


@pytest.mark.parametrize("rays", [1, 2, 3, 9, 12, 20, 40])
@pytest.mark.parametrize("plan", ["umbel", "compound umbel"])
def test_as_many_rays_as_recorded(plan: str, rays: int) -> None:
    assert parts(drawn(told(inflorescence=plan, rays=str(rays))).ink, "ray") == rays


@pytest.mark.parametrize("count", [1, 2, 3, 7, 9, 15, 30])
@pytest.mark.parametrize("petals", ["none", "5"])
@pytest.mark.parametrize(
    "plan",
    ["umbel", "raceme", "one-sided raceme", "spike", "corymb", "cyme", "coiled cyme", "head",
     "globe", "cluster in the leaf axil", "spikelet"],
)  # fmt: skip
def test_as_many_flowers_as_recorded(plan: str, count: int, petals: str) -> None:
    ink = drawn(told(inflorescence=plan, petals=petals, flowers_in_a_cluster=str(count))).ink
    assert parts(ink, "flower") == count


@pytest.mark.parametrize("plan", [plan for plan in PLANS if plan not in {"single", "in pairs"}])
def test_where_no_number_is_recorded_no_flower_counts(plan: str) -> None:
    assert parts(drawn(told(inflorescence=plan, petals="5")).ink, "flower") == 0


def test_one_flower_and_two() -> None:
    assert parts(drawn(told(inflorescence="single")).ink, "flower") == 1
    assert parts(drawn(told(inflorescence="in pairs")).ink, "flower") == 2


def test_each_ring_of_a_whorled_stem_has_the_recorded_number() -> None:
    ink = drawn(told(inflorescence="whorls", flowers_in_a_cluster="6")).ink
    assert parts(ink, "flower") == 3 * 6


@pytest.mark.parametrize("count", [1, 2, 3, 4, 5, 8])
@pytest.mark.parametrize("plan", ["flat-topped cyme", "panicle", "branched spike"])
def test_as_many_main_branches_as_recorded(plan: str, count: int) -> None:
    assert parts(drawn(told(inflorescence=plan, main_branches=str(count))).ink, "branch") == count


@pytest.mark.parametrize("count", [1, 3, 5, 8, 12])
@pytest.mark.parametrize("plan", ["single", "umbel", "compound umbel", "corymb", "head", "globe"])
def test_as_many_bracts_as_recorded(plan: str, count: int) -> None:
    for bracts in STATES["bracts"]:
        given = told(inflorescence=plan, bracts=bracts, number_of_bracts=str(count))
        assert parts(drawn(given).ink, "bract") == count


@pytest.mark.parametrize("count", [1, 3, 5, 8])
def test_as_many_bracteoles_under_each_little_umbel_as_recorded(count: int) -> None:
    for bracteoles in STATES["bracteoles"]:
        given = told(
            inflorescence="compound umbel", rays="7", bracteoles=bracteoles,
            number_of_bracteoles=str(count),
        )  # fmt: skip
        assert parts(drawn(given).ink, "bracteole") == 7 * count


@pytest.mark.parametrize("kind", ["bracts", "bracteoles"])
def test_an_umbel_without_bracts_differs_from_one_whose_bracts_are_not_recorded(kind: str) -> None:
    part = kind.removesuffix("s")
    base = {"inflorescence": "compound umbel", "rays": "9"}
    unknown, none, some = (
        drawn(told(**base, **words)).ink for words in ({}, {kind: "none"}, {kind: "present"})
    )
    assert [parts(ink, part) for ink in (unknown, none)] == [0, 0]
    assert parts(some, part) > 0
    assert len({unknown, none, some}) == 3


def test_of_none_and_present_the_first_is_drawn() -> None:
    base = {"inflorescence": "compound umbel", "rays": "9"}
    none = drawn(told(**base, bracts="none, present"))
    assert none.ink == drawn(told(**base, bracts="none")).ink
    assert [c.words for c in none.shows if c.label == "bracts"] == [
        "bracts: none (recorded: none, present)"
    ]
    assert parts(drawn(told(**base, bracts="present, none")).ink, "bract") > 0


def test_rays_and_branches_of_no_recorded_number_are_dotted() -> None:
    for plan, part in (("umbel", "ray"), ("compound umbel", "ray"), ("panicle", "branch")):
        marks = [m for m in drawn(told(inflorescence=plan)).ink if isinstance(m, Mark)]
        assert {m.pen for m in marks if m.part == part} == {"dotted"}


@pytest.mark.parametrize(
    ("plan", "label"),
    [("compound umbel", "cluster width"), ("corymb", "cluster width"), ("globe", "cluster width"),
     ("raceme", "cluster length"), ("spike", "cluster length"), ("catkin", "cluster length")],
)  # fmt: skip
def test_the_scale_is_that_of_the_cluster_without_its_stalk(plan: str, label: str) -> None:
    short = drawn(told(inflorescence=plan, **{label: "5 cm"}), 200)
    long = drawn(told(inflorescence=plan, **{label: "10 cm"}), 200)
    assert short.scale is not None
    assert short.scale == pytest.approx(2 * (long.scale or 0))
    assert short.scale * 50 == pytest.approx(200, rel=0.12)


def test_no_length_no_scale() -> None:
    assert drawn(told(inflorescence="umbel", rays="9", ray_length="3 cm")).scale is None
    assert drawn(told(inflorescence="umbel", cluster_width="at most 5 cm")).scale is None


@pytest.mark.parametrize("plan", PLANS)
def test_what_it_wants_would_change_it(plan: str) -> None:
    given = told(inflorescence=plan)
    sketch = drawn(given)
    for label in sketch.wants:
        more = inflorescence(told(inflorescence=plan, **{label: FULL[label]}), 100)
        if label == "cluster shape":
            continue  # `domed` is not an outline of every cluster
        assert more is not None
        assert (more.ink, more.scale) != (sketch.ink, sketch.scale), label
        assert label not in more.wants


def test_nothing_recorded_is_wanted_again() -> None:
    sketch = drawn(told(inflorescence="compound umbel", **FULL))
    assert sketch.wants == ()


def test_the_foot_of_a_long_stalk_lies_deeper_than_that_of_a_short_one() -> None:
    heights = [
        drawn(told(inflorescence="umbel", rays="9", cluster_stalk=stalk)).box.height
        for stalk in ("none to speak of", "short", "long")
    ]
    assert heights == sorted(heights)
    assert heights[2] > 1.5 * heights[0]


def test_numbers_in_the_svg_are_finite() -> None:
    for plan in PLANS:
        svg = ink_svg(drawn(told(inflorescence=plan, **FULL)).ink, "x")
        assert re.search(r"nan|inf", svg.replace("inflorescence", "")) is None
