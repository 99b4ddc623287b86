"""How a fruit is held: its stalk, the stem or the soil beside it, and how it is turned."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import smooth, straight
from sallet.drawing.ink import Curve, Mark, Path, box, put, turned

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.ink import Ink, Pen

_STOUT: Final = 0.034
"""How broad a stalk is drawn at its foot, in shares of the unit."""


def held(fruit: Ink, unit: float, posture: str, stalk: str) -> Ink:
    """Return a fruit with its foot at 0 as it is held; `unit` is about its width.

    Neither recorded: a dotted stump shows where the stalk is.
    """
    if posture:
        return _POSTURES[posture](fruit, unit, stalk == "thick")
    return _STALKS[stalk](fruit, unit)


def _stalk(path: Path, unit: float, pen: Pen = "line", *, thick: bool = False) -> Ink:
    """Return a stalk along a path from the stem to the fruit."""
    if not thick:
        return (Mark(path, pen, "stalk"),)
    points = path.points(6)
    half = _STOUT * unit + 1.6
    right, left = [], []
    for n, p in enumerate(points):
        ahead = points[min(n + 1, len(points) - 1)] - points[max(n - 1, 0)]
        side = ahead / abs(ahead) * -1j * half * (0.7 + 0.75 * n / len(points))
        right.append(p + side)
        left.append(p - side)
    return (Mark(smooth(right).then(smooth(left).reversed()).shut(), "line", "stalk"),)


def _stem(x: float, low: float, high: float, unit: float) -> Ink:
    """Return a piece of an upright stem, open at both ends."""
    half = 0.03 * unit + 1.6
    return tuple(
        Mark(straight(complex(x + d, low), complex(x + d, high)), "line", "stem")
        for d in (-half, half)
    )


def _soil(left: float, right: float, y: float) -> Ink:
    line = Mark(straight(complex(left, y), complex(right, y)), "line", "soil")
    step = (right - left) / 9
    dashes = tuple(
        Mark(straight(complex(x, y - 1), complex(x - 5, y - 6)), "fine")
        for x in (left + step * (n + 0.8) for n in range(9))
    )
    return (line, *dashes)


def _stump(fruit: Ink, unit: float) -> Ink:
    return (*_stalk(straight(-0.22j * unit - 5j, 0j), unit, "dotted"), *fruit)


def _up(fruit: Ink, unit: float, thick: bool = False) -> Ink:  # noqa: FBT001, FBT002
    path = Path(-0.55j * unit - 8j, (Curve(-0.3j * unit + 0.02 * unit, -0.2j * unit, 0j),))
    return (*_stalk(path, unit, thick=thick), *fruit)


def _thick(fruit: Ink, unit: float) -> Ink:
    return (*_stalk(straight(-0.4j * unit - 8j, 0j), unit, thick=True), *fruit)


def _side(fruit: Ink, unit: float, thick: bool) -> Ink:  # noqa: FBT001
    long = 0.4 * unit + 8
    path = Path(complex(-long, -0.1 * long), (Curve(-0.6 * long, -0.3 * long + 0j, 0j),))
    room = 0.6 * unit + 8
    return (
        *_stem(-long, -room, room, unit), *_stalk(path, unit, thick=thick),
        *put(fruit, turned(-90)),
    )  # fmt: skip


def _down(fruit: Ink, unit: float, thick: bool) -> Ink:  # noqa: FBT001
    reach, high = 0.42 * unit + 6, 0.3 * unit + 6
    path = Path(
        complex(-reach, -0.9 * unit - 8),
        (
            Curve(
                complex(-reach, -0.3 * unit),
                complex(-reach, 0.6 * high),
                complex(-0.55 * reach, high),
            ),
            Curve(complex(-0.25 * reach, 1.22 * high), complex(-0.1 * reach, 0.5 * high), 0j),
        ),
    )
    return (*_stalk(path, unit, thick=thick), *put(fruit, turned(-150)))


def _straight_down(fruit: Ink, unit: float, thick: bool) -> Ink:  # noqa: FBT001
    long = 0.5 * unit + 8
    half = 0.03 * unit + 1.6
    twig = tuple(
        Mark(
            straight(complex(-0.5 * unit - 6, long + d), complex(0.5 * unit + 6, long + d)),
            "line",
            "stem",
        )
        for d in (0.0, 2 * half)
    )
    return (*twig, *_stalk(straight(1j * long, 0j), unit, thick=thick), *put(fruit, turned(180)))


def _pressed(fruit: Ink, unit: float, thick: bool) -> Ink:  # noqa: FBT001
    room = box(fruit)
    half = 0.03 * unit + 1.6
    x = room.left - half - 1.5
    path = Path(
        complex(x + half, -0.3 * unit - 6),
        (Curve(complex(0.3 * x, -0.28 * unit - 5), complex(0, -0.16 * unit - 3), 0j),),
    )
    return (
        *_stem(x, -0.45 * unit - 10, room.top + 0.15 * unit + 4, unit),
        *_stalk(path, unit, thick=thick), *fruit,
    )  # fmt: skip


def _turned(fruit: Ink, unit: float, thick: bool = False) -> Ink:  # noqa: FBT001, FBT002
    reach = 0.34 * unit + 7
    room = box(fruit)
    path = Path(
        complex(-reach, 0.14 * unit + 5),
        (
            Curve(
                complex(-0.5 * reach, 0.3 * unit + 8), complex(-0.06 * reach, 0.24 * unit + 6), 0j
            ),
        ),
    )
    left = max(reach, -room.left + 0.06 * unit + 4)
    bridge = Path(
        complex(-left, 0.06 * unit + 2),
        (
            Curve(
                complex(-left * 0.7, 0.1 * unit + 4),
                complex(-reach * 1.1, 0.12 * unit + 5),
                path.start,
            ),
        ),
    )
    whole = bridge.then(path)
    return (
        *_stem(-left, -0.75 * room.top, 0.45 * unit + 10, unit),
        *_stalk(whole, unit, thick=thick), *put(fruit, turned(184)),
    )  # fmt: skip


def _bow(fruit: Ink, unit: float) -> Ink:
    reach, high = 0.62 * unit + 8, 0.52 * unit + 8
    path = Path(
        complex(-reach, -0.15 * unit),
        (
            Curve(
                complex(-0.9 * reach, 0.8 * high),
                complex(-0.6 * reach, high),
                complex(-0.4 * reach, high),
            ),
            Curve(complex(-0.14 * reach, high), complex(0.0, 0.6 * high), 0j),
        ),
    )
    room = box(fruit)
    return (
        *_stem(-reach, -0.75 * room.top, 0.5 * high, unit), *_stalk(path, unit),
        *put(fruit, turned(180)),
    )  # fmt: skip


def _ground(fruit: Ink, unit: float, thick: bool) -> Ink:  # noqa: FBT001
    lying = put(fruit, turned(-84))
    room = box(lying)
    y = room.bottom + 0.8
    left = -0.6 * unit - 8
    path = Path(
        complex(left, y + 1), (Curve(complex(0.6 * left, y + 2), complex(0.3 * left, 0), 0j),)
    )
    return (
        *_soil(left * 1.1, room.right + 0.3 * unit + 6, y),
        *_stalk(path, unit, thick=thick),
        *lying,
    )


def _tuft(fruit: Ink, unit: float, thick: bool) -> Ink:  # noqa: FBT001
    room = box(fruit)
    y = -0.12 * unit - 3
    leaves = []
    for x, out, high in ((-0.2, -1.0, 1.25), (-0.1, -0.62, 1.6), (0.1, 0.62, 1.5), (0.2, 1.0, 1.2)):
        root = complex(x * unit, y)
        end = complex(out * (room.width * 0.75 + 0.3 * unit), y + high * (room.top - y))
        inner = Curve(
            root + complex(0.1 * out * unit, 0.5 * high * room.top),
            end - complex(0.5 * out * unit, 0.3 * room.top),
            end,
        )
        outer = Curve(
            end - complex(0.1 * out * unit, 0.5 * room.top),
            root + complex(0.7 * out * unit, 0.3 * room.top),
            root + 0.12 * out * unit,
        )
        leaves.append(Mark(Path(root, (inner, outer)), "dotted", "leaf"))
    wide = room.width * 0.75 + 0.4 * unit
    return (
        *leaves, *_soil(-wide, wide, y), *_stalk(straight(1j * y, 0j), unit, thick=thick), *fruit,
    )  # fmt: skip


def _coil(fruit: Ink, unit: float) -> Ink:
    points = []
    turns, high, wide = 5, 0.7 * unit + 12, 0.16 * unit + 3
    for n in range(turns * 8 + 1):
        angle = math.radians(90 + 45 * n)
        points.append(
            complex(
                wide * math.cos(angle),
                wide * 0.5 * math.sin(angle) - high * (1 - n / (turns * 8)) - 0.6 * wide,
            )
        )
    return (*_stalk(smooth([points[0] - 0.2j * unit, *points, 0j]), unit), *fruit)


def _stalkless(fruit: Ink, unit: float) -> Ink:
    half = 0.03 * unit + 1.6
    wide = 0.55 * unit + 6
    stem = tuple(
        Mark(straight(complex(-wide, -d), complex(wide, -d)), "line", "stem")
        for d in (0.6, 2 * half)
    )
    return (*stem, *fruit)


_POSTURES: Final[Mapping[str, Callable[[Ink, float, bool], Ink]]] = {
    "up": _up,
    "side": _side,
    "down": _down,
    "straight down": _straight_down,
    "stem": _pressed,
    "turned": _turned,
    "ground": _ground,
    "tuft": _tuft,
}
_STALKS: Final[Mapping[str, Callable[[Ink, float], Ink]]] = {
    "": _stump,
    "up": _up,
    "turned": _turned,
    "bow": _bow,
    "thick": _thick,
    "coil": _coil,
    "none": _stalkless,
}
