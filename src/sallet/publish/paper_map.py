"""The season map as drawings for paper: the same drawing as on the page, with a style of its own.

The engine that typesets knows classes in a style sheet, but neither variables nor `min()`; so every
measure is worked out here. One unit of the drawing is a millimetre on the smallest paper.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise
from math import ceil
from typing import TYPE_CHECKING, Final
from xml.etree import ElementTree as ET

from sallet.publish.map_shape import SHEET
from sallet.publish.palette import LIGHT, OKABE_ITO
from sallet.publish.season_map import MOST, TALL, blocks_of, map_sheets
from sallet.typesetting.words import printable

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import date

    from sallet.season.here import PlantYear

FONT: Final = "Libertinus Serif"
SMALLEST: Final = 7 * 25.4 / 72
"""Millimetres of the smallest letters: 7 points, as on the cards."""
NAME: Final = 2.95
"""Height of the letters of a plant's name, in lanes: the name's line is about as high."""
LARGEST: Final = 2.7
"""Millimetres of those letters where there is room, and of those of the months."""
MOST_LANES: Final = NAME * TALL / SMALLEST
"""So many lanes a sheet may have before the names would be smaller than the smallest letters."""
_HEAD: Final = 3.6 * LARGEST
"""Millimetres of the head with the months."""
_SWATCH: Final = 2.8
"""Millimetres of a lane in the key."""
_BEYOND: Final = 0.25
"""So far, in lanes, an upright line of the key stands out above and below."""
_SVG: Final = "http://www.w3.org/2000/svg"


@dataclass(frozen=True)
class PaperMap:
    """A sheet of the season map: its drawing, and the key with a drawing for each line."""

    years: tuple[PlantYear, ...]
    drawing: bytes
    shape: float
    """Its height by its width."""
    least: float
    """By how much it may shrink before the names are smaller than the smallest letters."""
    key: tuple[tuple[bytes, str], ...]
    """What each pattern and line means."""


def paper_maps(
    years: Sequence[PlantYear], sessions: Sequence[date], width: float
) -> tuple[PaperMap, ...]:
    """Return the map on as few sheets as it needs; `width` is in millimetres."""
    return tuple(_paper_map(part, sessions, width) for part in parts_of(years))


def parts_of(years: Sequence[PlantYear]) -> tuple[Sequence[PlantYear], ...]:
    """Return the plants of each sheet: as few sheets of like length as let the names be read."""
    for count in range(ceil(len(years) / MOST), len(years) + 1):
        ends = [len(years) * number // count for number in range(count + 1)] if count else [0]
        parts = tuple(years[first:last] for first, last in pairwise(ends))
        if all(_lanes(part) <= MOST_LANES for part in parts):
            return parts
    return tuple((year,) for year in years)


def _lanes(years: Sequence[PlantYear]) -> float:
    last = blocks_of(years, SHEET)[-1]
    return last.top + last.height


def _paper_map(years: Sequence[PlantYear], sessions: Sequence[date], width: float) -> PaperMap:
    (sheet,) = map_sheets(years, sessions)
    # A control character in a plant's name is none in HTML's eyes, and breaks XML.
    head, body, key = ET.fromstring(f"<div>{printable(sheet)}</div>")  # noqa: S314 - our own
    lane = float(body.attrib["font-size"].removesuffix("mm"))
    height = float(body.attrib["height"].removesuffix("em")) * lane
    body.attrib |= {"font-size": f"{lane}", "height": f"{height:.3f}", "y": f"{_HEAD:.3f}"}
    return PaperMap(
        years=tuple(years),
        drawing=_svg((head, body), style(lane), (0, 0, width, _HEAD + height)),
        shape=(_HEAD + height) / width,
        least=SMALLEST / name_size(lane),
        key=tuple((_swatch(item[0]), "".join(item.itertext()).strip()) for item in key),
    )


def name_size(lane: float) -> float:
    """Return the height of the letters of a name in millimetres, for lanes of so many."""
    return min(NAME * lane, LARGEST)


def _swatch(drawing: ET.Element) -> bytes:
    above = _BEYOND * _SWATCH
    drawing.set("font-size", f"{_SWATCH}")
    return _svg((drawing,), style(_SWATCH), (0, -above, 3 * _SWATCH, _SWATCH + 2 * above))


def _svg(parts: Sequence[ET.Element], rules: str, box: tuple[float, float, float, float]) -> bytes:
    svg = ET.Element("svg", {
        "xmlns": _SVG, "viewBox": " ".join(f"{side:.3f}" for side in box),
        "width": f"{box[2]:.3f}mm", "height": f"{box[3]:.3f}mm",
    })  # fmt: skip
    ET.SubElement(svg, "style").text = rules
    for part in parts:
        ET.SubElement(svg, part.tag, part.attrib).extend(part)
    return ET.tostring(svg, encoding="unicode").encode()


def style(lane: float) -> str:
    """Return the rules of a drawing whose lanes have so many millimetres."""
    ink, iron, leaf = OKABE_ITO["black"], LIGHT["iron"], LIGHT["leaf"]
    edge, soft, harm = min(0.07 * lane, 0.15), min(0.05 * lane, 0.1), min(0.16 * lane, 0.4)
    return f"""
text {{ font-family: "{FONT}"; fill: {ink}; }}
.head {{ font-size: {LARGEST}px; }}
.part {{ display: none; }}
.none {{ display: inline; font-size: {SMALLEST:.3f}px; }}
.name text {{ font-size: {name_size(lane):.3f}px; }}
tspan {{ fill: {iron}; }}
.food, .harmless {{ fill: {leaf}; }}
line.month, line.between, line.week {{ stroke: {LIGHT["hairline"]}; stroke-width: .12px; }}
line.session {{ stroke: {ink}; stroke-width: .15px; stroke-dasharray: .5px .8px; }}
.edge {{ stroke: {ink}; stroke-width: {edge:.3f}px; }}
.seen {{ fill: #ffffff; }}
.doubt {{ fill: #ffffff; stroke: {iron}; stroke-dasharray: .8px .5px; }}
.harm {{ stroke: {iron}; stroke-width: {harm:.3f}px; }}
rect.soft {{ fill-opacity: .45; }}
line.soft {{ stroke: {ink}; stroke-width: {soft:.3f}px; }}
.rim {{ stroke: #ffffff; }}
.stripe {{ stroke: {ink}; }}
"""
