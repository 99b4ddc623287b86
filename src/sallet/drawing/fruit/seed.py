"""One seed drawn from its recorded characters."""

from __future__ import annotations

import cmath
import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import GOLDEN, circle, smooth, straight
from sallet.drawing.example import Example
from sallet.drawing.fruit.body import OUTLINES, Body, bowed, measures
from sallet.drawing.fruit.surface import cover
from sallet.drawing.fruit.whole import polygon, set_out
from sallet.drawing.ink import Curve, Line, Mark, Path, put
from sallet.drawing.sketch import Sketch
from sallet.drawing.told import beside, characters

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.ink import Ink
    from sallet.drawing.told import Shown, Told


@dataclass(frozen=True, slots=True)
class Plan:
    """A shape of seeds: its outline, and what shows that it is angled or flat."""

    side: Path
    ratio: float
    bend: float = 0.0
    """How far the middle of the seed lies off the line between its ends, in lengths."""
    edges: int = 0
    flat: bool = False
    dust: bool = False


def _plan(name: str, ratio: float | None = None) -> Plan:
    return Plan(OUTLINES[name].side, ratio or OUTLINES[name].ratio)


_BEAN: Final = OUTLINES["ellipsoid"].side
_FACET: Final = Path(0j, (Line(0.8 + 0.1j), Line(1 + 0.58j), Line(0.5 + 0.94j), Line(1j)))
SHAPES: Final[Mapping[str, Plan]] = {
    "round": _plan("round"),
    "egg-shaped": _plan("egg-shaped"),
    "oblong": _plan("cylindrical", 2.0),
    "kidney-shaped": Plan(OUTLINES["cylindrical"].side, 1.8, 0.2),
    "angled": Plan(_FACET, 1.2, edges=2),
    "three-angled": Plan(OUTLINES["nut"].side, 1.3, edges=3),
    "flat": Plan(OUTLINES["disc"].side, 1.15, flat=True),
    "crescent": Plan(OUTLINES["spindle-shaped"].side, 3.0, 0.3),
    "needle-like": Plan(OUTLINES["spindle-shaped"].side, 8.0),
    "pear-shaped": _plan("pear-shaped", 1.5),
    "dust-like": Plan(OUTLINES["round"].side, 1.0, dust=True),
}
SURFACES: Final[Mapping[str, str]] = {
    "shiny": "shiny", "warty": "warty", "with cone-shaped bumps": "prickly", "ribbed": "ribbed",
    "wrinkled": "wrinkled", "hairy": "hairy", "pitted": "pits", "netted": "net",
}  # fmt: skip
"""What is drawn upon a seed, by the states of its surface."""
APPENDAGES: Final[Mapping[str, str]] = {
    "oily knob": "knob", "fleshy coat": "coat", "tuft of hairs": "tuft", "wing": "wing",
    "hooks": "hooks", "thread": "thread",
}  # fmt: skip


@dataclass(frozen=True)
class SeedForm:
    """What is drawn of a seed; None where it is not recorded or would change nothing."""

    shape: Shown[Plan]
    length: Shown[float] | None = None
    width: Shown[float] | None = None
    surface: Shown[str] | None = None
    appendage: Shown[str] | None = None


def seed_form(told: Told) -> SeedForm | None:
    """Return what a drawing shows of a seed; None where its shape is not recorded."""
    shape = told.pick("shape", SHAPES)
    if shape is None:
        return None
    if shape.value.dust:
        return SeedForm(shape)
    length, width = beside(told.length("length"), told.length("width"))
    surface, appendage = told.pick("surface", SURFACES), told.pick("appendage", APPENDAGES)
    return SeedForm(shape, length, width, surface, appendage)


def seed_ink(form: SeedForm, size: float) -> Ink:
    """Return a seed whose larger dimension is `size` units, its foot at 0."""
    plan = form.shape.value
    if plan.dust:
        return _dust(size)
    one = _body(form, size)
    around, upon = _skin(one, form.surface.value) if form.surface else ((), ())
    behind, before = _APPENDAGES[form.appendage.value](one) if form.appendage else ((), ())
    edges = (Mark(one.meridian(0.14, 0.0, 1.0), "line", "edge"),) if plan.edges else ()
    whole: Ink = (*around, Mark(one.path, "line", "seed"), *edges, *upon)
    if plan.bend:
        whole = tuple(_bowed(m, one.length, plan.bend) for m in whole if isinstance(m, Mark))
    return set_out((*behind, *whole, *before), _beside(plan, one), 0.16 * size)


def _body(form: SeedForm, size: float) -> Body:
    plan = form.shape.value
    both = form.length and form.width
    ratio = form.length.value / form.width.value if both and form.length and form.width else None
    length, width = measures(size, ratio or plan.ratio)
    return Body(plan.side, length, width)


def _beside(plan: Plan, one: Body) -> tuple[Ink, ...]:
    """Return the cut face of a seed with three edges, the narrow side of a flat one."""
    if plan.edges == 3:  # noqa: PLR2004
        return ((Mark(polygon(3, one.width / 2), "line", "section"),),)
    if plan.flat:
        thin = Body(_BEAN, one.length, max(3.0, 0.16 * one.width), at=-0.5j * one.length)
        return (thin.ink("edge-view"),)
    return ()


def _bowed(mark: Mark, length: float, bend: float) -> Mark:
    """Return a mark of an upright seed bent sideways, its ends kept on the axis."""

    def off(height: float) -> float:
        share = height / length
        return 4 * bend * length * share * (1 - share)

    return replace(mark, path=bowed(mark.path, off))


def _skin(one: Body, name: str) -> tuple[Ink, Ink]:
    if name == "pits":
        radius = 0.02 * min(one.length, one.width) + 0.8
        return (), tuple(Mark(circle(p, radius), "solid") for p in one.scatter(19, 0.78))
    if name == "net":
        return (), _net(one)
    around, upon = cover(one, (name,))
    return _flat(around), _flat(upon)


def _flat(ink: Ink) -> Ink:
    """Return copies as marks, so that a bent seed can bend them."""
    found: list[Mark] = []
    for one in ink:
        if isinstance(one, Mark):
            found.append(one)
        else:
            found += [m for m in put(one.piece, one.place) if isinstance(m, Mark)]
    return tuple(found)


def _net(one: Body) -> Ink:
    """Return a network of ridges: lines along the seed and lines across it."""
    along = [Mark(one.meridian(x, 0.06, 0.94), "fine") for x in (-0.75, -0.4, 0.0, 0.4, 0.75)]
    across = []
    for n in range(7):
        share = 0.14 + 0.12 * n
        points = [one.on(share - 0.04 * (1 - x * x), x) for x in (-0.97, -0.5, 0.0, 0.5, 0.97)]
        across.append(Mark(smooth(points), "fine"))
    return (*along, *across)


def _dust(size: float) -> Ink:
    """Return a pinch of dust: seeds too small to have a shape."""
    golden = math.radians(GOLDEN)
    return tuple(
        Mark(circle(0.5j * size + cmath.rect(0.4 * size * math.sqrt((n + 0.5) / 40), n * golden), 0.9), "solid", "seed")
        for n in range(40)
    )  # fmt: skip


def _knob(one: Body) -> tuple[Ink, Ink]:
    r = 0.2 * one.width
    foot = one.at - 0.5j * r
    knob = smooth(
        [
            foot + r * p
            for p in (1.1 + 0.5j, 0.6 + 1j, -0.6 + 1j, -1.1 + 0.5j, -0.8 - 0.7j, 0.5 - 0.9j)
        ],
        closed=True,
    )
    return (Mark(knob, "line", "knob"),), ()


def _coat(one: Body) -> tuple[Ink, Ink]:
    coat = Body(OUTLINES["round"].side, 0.78 * one.length, 1.3 * one.width, at=-0.1j * one.length)
    shares = [0.0, 0.2, 0.5, 0.8, 0.96]
    right = [coat.on(s, 1) for s in shares]
    rim = [
        complex(x * right[-1].real, right[-1].imag + 0.03 * one.length * (-1) ** n)
        for n, x in enumerate((0.5, 0, -0.5))
    ]
    left = [complex(-p.real, p.imag) for p in reversed(right[1:])]
    return (), (Mark(smooth([*right, *rim, *left], closed=True), "line", "coat"),)


def _tuft(one: Body) -> tuple[Ink, Ink]:
    long = 0.9 * one.length
    return tuple(
        Mark(straight(one.top, one.top + cmath.rect(long, math.radians(90 + 5.5 * n))), "fine")
        for n in range(-8, 9)
    ), ()


def _wing(one: Body) -> tuple[Ink, Ink]:
    blade = Body(
        OUTLINES["ellipsoid"].side, 2.1 * one.length, 1.25 * one.width, at=-0.05j * one.length
    )
    veins = tuple(Mark(blade.meridian(x, 0.5, 0.94), "fine") for x in (-0.5, 0.0, 0.5))
    return (Mark(blade.path, "line", "wing"), *veins), ()


def _hooks(one: Body) -> tuple[Ink, Ink]:
    around, upon = cover(one, ("hooked",))
    return around, upon


def _thread(one: Body) -> tuple[Ink, Ink]:
    long = 0.6 * one.length
    path = Path(-1j * long, (Curve(complex(0.3, -0.8) * long, complex(-0.3, -0.3) * long, one.at),))
    return (Mark(path, "line", "thread"),), ()


_APPENDAGES: Final[Mapping[str, Callable[[Body], tuple[Ink, Ink]]]] = {
    "knob": _knob,
    "coat": _coat,
    "tuft": _tuft,
    "wing": _wing,
    "hooks": _hooks,
    "thread": _thread,
}


def seed(told: Told, size: float) -> Sketch | None:
    """Return a seed drawn from what is told; None where its shape is not recorded."""
    form = seed_form(told)
    if form is None:
        return None
    ink = seed_ink(form, size)
    wants = tuple(w for w in ("length", "width", "surface", "appendage") if w not in told.items)
    return Sketch("seed", ink, characters(form), _scale(form, size), wants)


def _scale(form: SeedForm, size: float) -> float | None:
    """Return units to a millimetre; a pinch of dust has none."""
    if form.shape.value.dust:
        return None
    one = _body(form, size)
    if form.length:
        return one.length / form.length.value
    return one.width / form.width.value if form.width else None


EXAMPLES: Final = (
    Example("seeds", "shape", {}, seed),
    Example("seeds", "surface", {"shape": "egg-shaped"}, seed),
    Example("seeds", "appendage", {"shape": "egg-shaped"}, seed),
)
"""The labels of seeds whose states can be drawn."""
