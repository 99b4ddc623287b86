"""Flowers small enough to stand in a cluster: petals only, seen from four sides."""

from __future__ import annotations

import cmath
import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import ellipse, straight
from sallet.drawing.flower.petal import BLADES
from sallet.drawing.flower.tables import FLORETS, HEADS, PLANS
from sallet.drawing.ink import Copy, Curve, Line, Mark, Path, Place, put

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.ink import Ink
    from sallet.drawing.told import Told

SEPARATE: Final = 6
"""Up to how many petals are drawn one by one; more are the lobes of one outline."""
MOST: Final = 40
"""More petals than these cannot be told apart in a small flower."""
BUD: Final = 3
"""The tilt at which a flower is drawn in bud."""
_RATIOS: Final[Mapping[str, float]] = {"": 1.7, "star": 2.6, "cross": 1.5, "wheel": 1.15}
_LEAN: Final = (0.0, 38.0, 84.0)
"""From how far aside of its middle a flower is seen, by tilt, in degrees."""
_RISE: Final = (0.0, 26.0, 40.0)
"""How far the petals stand up over the level, by tilt, in degrees."""


def small_flower(told: Told, size: float, tilt: int) -> Ink | None:
    """Return a flower `size` units wide, petals only; None where too little is recorded.

    `tilt`: 0 from above, 1 half turned, 2 from the side, 3 a bud. It faces up the page, and its
    stalk ends at the origin. The upper lip of a two-sided flower is on its left: where such a
    flower looks to the left, it is to be mirrored.
    """
    shape = told.pick("shape", PLANS)
    plan = shape.value if shape else "head" if told.state("florets") else "face"
    if tilt == BUD or plan in NONE:
        return None if plan in NONE else _bud(size)
    if plan in TWO_SIDED:
        return _two_sided(plan, size)
    if plan in {"head", "thistle"}:
        return _head(told, size, tilt)
    if shape and plan == "turned" and tilt:
        return _body(shape.character.drawn, size, tilt)
    return _radial(told, size, tilt)


NONE: Final = frozenset({"catkin", "speck"})
"""Flowers without petals to draw."""
REGULAR: Final = frozenset({"radial", "almost radial"})


def _petals(told: Told) -> int:
    """Return how many petals are drawn; none where they are not recorded or not to be counted."""
    shape = told.hint("shape", "petals")
    petals = shape.as_(int(shape.value)) if shape else told.count("petals")
    return (
        petals.value if petals and petals.value <= MOST and petals.character.drawn != "many" else 0
    )


def _radial(told: Told, size: float, tilt: int) -> Ink | None:
    count, symmetry = _petals(told), told.state("symmetry")
    regular = symmetry is None or symmetry.value.name in REGULAR
    if not count or not (regular or told.state("shape")):
        return None
    shape, outline = told.hint("shape", "outline"), told.hint("petal shape", "ratio")
    name = shape.value if shape and shape.value in _RATIOS else ""
    ratio = float(outline.value) if outline else _RATIOS[name]
    tip = told.hint("petal tip", "tip")
    length = size / 2
    at = _seen(_LEAN[tilt], _RISE[tilt])
    if count > SEPARATE:
        return (Mark(scallop(count, length, 0.62).mapped(at), "thin", "petal"),)
    half = min(math.tan(math.pi / max(count, 3)) * length * 0.6, length / ratio / 2)
    one = small_petal(tip.value if tip else _end(told), length, half)
    first = 0.0 if tilt == 0 else math.pi / count
    turns = [cmath.rect(1, math.tau * k / count + first) for k in range(count)]
    if tilt == 0:
        piece: Ink = (Mark(one, "thin", "petal"),)
        return tuple(Copy(piece, Place(turn=turn)) for turn in turns)
    # What stands behind is laid down first.
    turns.sort(key=lambda turn: -(turn * 1j).imag)
    return tuple(Mark(one.placed(Place(turn=t)).mapped(at), "thin", "petal") for t in turns)


def _end(told: Told) -> str:
    shape = told.state("petal shape")
    return BLADES[shape.value.name].end if shape and shape.value.name in BLADES else ""


_CRESTS: Final[Mapping[str, float]] = {
    "notch": 0.88, "inrolled": 0.84, "heart": 0.84, "half split": 0.55, "split": 0.2,
}  # fmt: skip
"""How far out the cut in the end of a petal reaches."""
_SHARP: Final = frozenset({"point", "taper"})


def small_petal(tip: str, length: float, half: float) -> Path:
    """Return a plain petal of few curves, its foot at the origin."""
    top = 1j * length
    if tip in _CRESTS:
        crest, cut = complex(half * 0.5, length), 1j * length * _CRESTS[tip]
        return Path(
            0j,
            (
                Curve(complex(half * 0.8, length * 0.25), complex(half * 1.5, length), crest),
                Line(cut),
                Line(-crest.conjugate()),
                Curve(complex(-half * 1.5, length), complex(-half * 0.8, length * 0.25), 0j),
            ),
            closed=True,
        )
    low, high = (1.0, 0.72) if tip in _SHARP else (0.9, 1.0)
    wide = half * (0.9 if tip in _SHARP else 1.36)
    return Path(
        0j,
        (
            Curve(complex(half * low, length * 0.22), complex(wide, length * high), top),
            Curve(complex(-wide, length * high), complex(-half * low, length * 0.22), 0j),
        ),
        closed=True,
    )


def scallop(count: int, radius: float, notch: float) -> Path:
    """Return a closed outline of lobes; between them it falls back to a share of the radius."""
    step = math.tau / count
    dip = 1 - (1 - notch) * min(1.0, 8 / count)
    points = [cmath.rect(radius * dip, math.pi / 2 + step * (k + 0.5)) for k in range(count)]
    out = (1 + (1 / dip - 1) * 1.35) * cmath.exp(-0.1j * step)
    pieces = tuple(
        Curve(a * out, b * out.conjugate(), b)
        for a, b in zip(points, points[1:] + points[:1], strict=True)
    )
    return Path(points[0], pieces, closed=True)


def _seen(lean: float, rise: float) -> Callable[[complex], complex]:
    # The petals lie on a cone that stands `rise` over the level.
    flat, deep = math.cos(math.radians(lean)), math.sin(math.radians(lean))
    level, up = math.cos(math.radians(rise)), math.sin(math.radians(rise))

    def at(point: complex) -> complex:
        return complex(point.real * level, point.imag * level * flat + abs(point) * up * deep)

    return at


def _bud(size: float) -> Ink:
    long, half = size * 0.5, size * 0.17
    edge = Path(
        0j,
        (
            Curve(complex(half * 1.3, long * 0.1), complex(half * 1.2, long * 0.75), 1j * long),
            Curve(complex(-half * 1.2, long * 0.75), complex(-half * 1.3, long * 0.1), 0j),
        ),
        closed=True,
    )
    return (Mark(edge, "thin", "petal"),)


def _head(told: Told, size: float, tilt: int) -> Ink | None:
    shape, florets = told.pick("shape", HEADS), told.pick("florets", FLORETS)
    kind = shape.value if shape else florets.value if florets else "daisy"
    radius, rays = size / 2, told.count("ray florets")
    flat = math.cos(math.radians(_LEAN[tilt] * 0.88))
    middle = 0j if tilt == 0 else complex(0, size * (0.06 if tilt == 1 else 0.2))
    cup = Path(
        complex(-0.24 * size, middle.imag),
        (
            Curve(complex(-0.2 * size, 0.02 * size), complex(-0.1 * size, 0), 0j),
            Curve(complex(0.1 * size, 0), complex(0.2 * size, 0.02 * size), complex(0.24 * size, middle.imag)),
        ),
        closed=True,
    )  # fmt: skip
    ink: list[Mark] = [Mark(cup, "thin")] if tilt else []
    disc = Mark(ellipse(middle, radius * 0.34, radius * 0.34 * flat), "thin")
    if kind == "thistle" and tilt:
        fan = (
            complex(x, 1 - 0.4 * x * x) * size * 0.5 for x in (-0.7, -0.42, -0.14, 0.14, 0.42, 0.7)
        )
        foot = middle + 0.04j * size
        return (*(Mark(straight(foot + way.real * 0.5, foot + way), "thin") for way in fan), *ink)
    if kind in {"tubes", "thistle"}:
        return (*ink, Mark(ellipse(middle, radius * 0.6, radius * 0.6 * flat), "thin"))
    if rays is None or not rays.value:
        return None
    count = rays.value if rays.character.drawn != "many" else 21

    def at(point: complex) -> complex:
        return middle + complex(point.real, point.imag * flat)

    edge = Mark(scallop(min(count, 24), radius, 0.74).mapped(at), "thin", "ray")
    return (*ink, edge, disc) if kind == "daisy" else (*ink, edge)


TUBES: Final[Mapping[str, tuple[float, float, float, float]]] = {
    "saucer": (0.1, 0.5, 0.42, 0.5), "cup": (0.16, 0.46, 0.72, 0.38), "bell": (0.5, 0.36, 0.95, 0.5),
    "urn": (0.4, 0.62, 0.9, 0.24), "tube": (0.14, 0.14, 1.4, 0.2), "thimble": (0.26, 0.3, 1.3, 0.42),
    "funnel": (0.05, 0.16, 1.1, 0.5), "trumpet": (0.08, 0.08, 1.3, 0.5),
    "plate on a tube": (0.06, 0.06, 0.9, 0.5), "goblet from the ground": (0.05, 0.4, 1.2, 0.34),
}  # fmt: skip
"""Two widths of the side of a flower, its length and the width of its mouth."""


def _body(name: str, size: float, tilt: int) -> Ink:
    low, high, tall, mouth = (share * size for share in TUBES[name])
    tall *= 0.86 if tilt == 1 else 1.0
    deep = mouth * (0.5 if tilt == 1 else 0.24)
    right = complex(mouth, tall)
    side = Curve(complex(low, 0), complex(high, tall * 0.7), right)
    front = Curve(right - 1j * deep, complex(-mouth, tall - deep), complex(-mouth, tall))
    back = Curve(complex(-high, tall * 0.7), complex(-low, 0), 0j)
    body = Path(0j, (side, front, back), closed=True)
    return (Mark(ellipse(1j * tall, mouth, deep * 0.76), "thin"), Mark(body, "thin", "petal"))


def _curve(start: complex, *rest: complex) -> Path:
    threes = zip(rest[::3], rest[1::3], rest[2::3], strict=True)
    return Path(start, tuple(Curve(*three) for three in threes), closed=True)


_TWO_LIPS: Final = (
    _curve(0j, 6 + 24j, 20 + 34j, 34 + 38j, 46 + 20j, 70 - 6j, 84 + 12j, 92 + 26j, 76 + 36j, 50 + 44j,
           54 + 58j, 74 + 54j, 86 + 56j, 84 + 92j, 40 + 98j, 26 + 64j, 10 + 44j, -6 + 18j, 0j),
)  # fmt: skip
TWO_SIDED: Final[Mapping[str, tuple[Path, ...]]] = {
    "lipped": _TWO_LIPS,
    "hooded": (
        _curve(10 + 0j, -10 + 40j, 20 + 96j, 54 + 62j, 62 + 52j, 74 + 46j, 86 + 44j, 60 + 30j, 50 + 10j, 10 + 0j),
    ),
    "pea": (
        _curve(0j, -40 + 60j, 8 + 100j, 34 + 78j, 64 + 70j, 52 + 30j, 20 + 2j, 12 + 0j, 6 + 0j, 0j),
        _curve(4 - 2j, 30 - 44j, 86 - 34j, 84 - 2j, 70 + 24j, 30 + 20j, 4 - 2j),
    ),
    "violet": (
        _curve(0j, -26 + 54j, 26 + 64j, 40 + 40j, 44 + 26j, 20 + 8j, 0j),
        _curve(0j, 40 + 22j, 66 + 4j, 52 - 16j, 40 - 26j, 14 - 8j, 0j),
        _curve(0j, 34 - 26j, 24 - 62j, -2 - 56j, -26 - 52j, -18 - 16j, 0j),
    ),
}  # fmt: skip
"""Two-sided flowers about 100 units long that look to the right, their feet at the origin."""


def _two_sided(plan: str, size: float) -> Ink:
    place = Place(turn=1j * size / 100)
    return put(tuple(Mark(path, "thin", "petal") for path in TWO_SIDED[plan]), place)
