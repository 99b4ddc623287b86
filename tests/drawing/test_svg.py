"""Ink as SVG: the same points, the same places, everything within its room."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from helpers.leaves import read_paths
from sallet.drawing.curves import circle, straight
from sallet.drawing.ink import Copy, Curve, Ink, Line, Mark, Path, Place, box, plain, turned
from sallet.drawing.svg import ink_svg, path_data, standalone, style, view_box

NEAR = 0.06
"""Half a tenth, and a little for the floats."""
POINTS = st.complex_numbers(max_magnitude=900, allow_nan=False, allow_infinity=False)
PIECES = st.one_of(st.builds(Line, POINTS), st.builds(Curve, POINTS, POINTS, POINTS))
PATHS = st.builds(Path, POINTS, st.lists(PIECES, min_size=1, max_size=60).map(tuple), st.booleans())
PLACES = st.builds(
    turned, st.floats(-360, 360), POINTS, st.floats(0.2, 3.0), mirrored=st.booleans()
)


def corners(path: Path) -> list[complex]:
    """Return all points and handles of a path."""
    found = [path.start]
    for piece in path.pieces:
        found += [piece.first, piece.second] if isinstance(piece, Curve) else []
        found.append(piece.end)
    return found


def near(one: complex, other: complex, most: float = NEAR) -> bool:
    """Return whether two points are the same but for rounding, across and up."""
    return abs(one.real - other.real) <= most and abs(one.imag - other.imag) <= most


@given(path=PATHS)
def test_path_data_read_back_are_the_same_points_however_long_the_path(path: Path) -> None:
    (read,) = read_paths(path_data(path))
    assert read.closed == path.closed
    assert [type(piece) for piece in read.pieces] == [type(piece) for piece in path.pieces]
    assert all(near(a, b) for a, b in zip(corners(read), corners(path), strict=True))


def test_roundings_never_add_up() -> None:
    path = straight(*(complex(0.04 * n, -0.04 * n) for n in range(2000)))
    (read,) = read_paths(path_data(path))
    assert near(read.end, path.end)


def test_path_data_is_short_and_y_runs_downwards() -> None:
    path = Path(0.5 + 2j, (Line(1 + 2j), Line(1 + 1.5j), Curve(1j, 2j, 3 + 0j)), closed=True)
    assert path_data(path) == "M.5-2l.5 0 0 .5c-1 .5-1-.5 2 1.5z"


def placed(text: str) -> list[list[complex]]:
    """Return the points of all paths of SVG, copies resolved by their transforms."""
    root = ET.fromstring(f"<svg>{text}</svg>")  # noqa: S314
    pieces = {e.get("id"): e for e in root.iter("g") if e.get("id")}
    found: list[list[complex]] = []

    def visit(element: ET.Element, moves: list[list[float]]) -> None:
        for child in element:
            if child.tag == "path":
                paths = read_paths(child.get("d") or "")
                found.extend([through(p, moves) for p in corners(path)] for path in paths)
            elif child.tag == "use":
                visit(pieces[(child.get("href") or "")[1:]], [matrix(child), *moves])
            elif child.tag != "defs":
                visit(child, moves)

    visit(root, [])
    return found


def matrix(element: ET.Element) -> list[float]:
    """Return a transform as the six numbers of a matrix."""
    name, text = re.fullmatch(r"(\w+)\((.*)\)", element.get("transform") or "").groups()  # type: ignore[union-attr]
    numbers = [float(n) for n in text.split()]
    return [1, 0, 0, 1, *numbers] if name == "translate" else numbers


def through(point: complex, moves: list[list[float]]) -> complex:
    """Return where transforms, the inner first, put a point; y upwards outside."""
    x, y = point.real, -point.imag
    for a, b, c, d, e, f in moves:
        x, y = a * x + c * y + e, b * x + d * y + f
    return complex(x, -y)


@given(places=st.lists(PLACES, min_size=2, max_size=5), outer=PLACES)
def test_copies_lie_where_put_would_lay_them(places: list[Place], outer: Place) -> None:
    piece: Ink = (Mark(straight(0j, 40 + 10j, 30j), "fine", "leaflet"),)
    branch: Ink = tuple(Copy(piece, place) for place in places)
    ink: Ink = (Copy(branch, outer), Copy(branch, replace(outer, at=outer.at + 5)))
    wanted = [corners(mark.path) for mark in plain(ink)]
    drawn = placed(ink_svg(ink, "x"))
    # Three decimals of a matrix, a tenth of a unit, each at two depths.
    most = 0.1 * (1 + abs(outer.turn)) + 2 * 0.0005 * (sum(abs(p.at) for p in places) + 200)
    assert len(drawn) == len(wanted)
    for one, other in zip(drawn, wanted, strict=True):
        assert all(near(a, b, most) for a, b in zip(one, other, strict=True))


def test_a_piece_that_stands_once_is_drawn_in_place_and_one_that_repeats_is_named_once() -> None:
    piece: Ink = (Mark(circle(0j, 2), "solid"),)
    once = ink_svg((Copy(piece, Place(5 + 0j), "dot"),), "x")
    twice = ink_svg((Copy(piece, Place(5 + 0j), "dot"), Copy(piece, Place(9 + 2j), "dot")), "x")
    assert "<use" not in once
    assert once.startswith('<g class="dot"><path class="solid" d="M7 0')
    assert twice.count("<path") == 1
    assert re.findall(r"<use[^>]*>", twice) == [
        '<use class="dot" href="#x-1" transform="translate(5 0)"/>',
        '<use class="dot" href="#x-1" transform="translate(9 -2)"/>',
    ]


def test_fine_lines_that_are_nothing_by_name_share_an_element_and_parts_do_not() -> None:
    lines: Ink = tuple(Mark(straight(0j, complex(n, 1)), "fine") for n in range(3))
    parts: Ink = tuple(Mark(straight(0j, complex(n, 1)), "fine", "vein") for n in range(3))
    assert ink_svg(lines, "x").count("<path") == 1
    assert ink_svg(parts, "x").count("<path") == 3


@pytest.mark.parametrize(
    ("mark", "classes"),
    [
        (Mark(straight(0j, 1 + 0j)), "open"),
        (Mark(circle(0j, 1)), ""),
        (Mark(circle(0j, 1), "fine", "hole"), "fine hole"),
        (Mark(straight(0j, 1 + 0j), "dotted"), "dotted open"),
        (Mark(straight(0j, 1 + 0j, 1j), "solid", "spine"), "solid spine"),
        (Mark(straight(0j, 1 + 0j, 1j), "paper"), "paper"),
    ],
)
def test_pen_and_part_become_classes(mark: Mark, classes: str) -> None:
    element = ET.fromstring(ink_svg((mark,), "x"))  # noqa: S314
    assert (element.get("class") or "") == classes


@given(path=PATHS)
def test_a_view_box_holds_every_line_with_its_width(path: Path) -> None:
    room = box((Mark(path),))
    left, top, wide, high = (int(n) for n in view_box(room).split())
    for p in path.points():
        assert left + 0.8 <= p.real <= left + wide - 0.8
        assert top + 0.8 <= -p.imag <= top + high - 0.8


def test_a_drawing_alone_has_its_colours_and_its_room() -> None:
    ink: Ink = (Mark(circle(0j, 10)),)
    root = ET.fromstring(standalone(ink, box(ink), ink_colour="#123", paper="#fed"))  # noqa: S314
    assert root.get("viewBox") == "-12 -12 24 24"
    rules = root[0].text or ""
    assert rules == style("#123", "#fed")
    assert "fill:#fed;stroke:#123;stroke-width:1.6" in rules
