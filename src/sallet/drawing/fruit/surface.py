"""What covers a fruit: hairs, prickles, warts, ribs and the like, on and round a body."""

from __future__ import annotations

import cmath
import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import GOLDEN, circle, smooth, straight
from sallet.drawing.ink import Copy, Curve, Mark, Path, Place

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.fruit.body import Body
    from sallet.drawing.ink import Ink

RIB_LINES: Final = (-0.66, -0.24, 0.24, 0.66)
"""Where ribs run that face the viewer; how many there are is not recorded."""
NARROW: Final = 36.0
"""On what is narrower than so many units a rib has no room for more than one line."""
_WAVES: Final = 8
"""The waves of a wavy rib along a fruit."""


def clothed(body: Body, surface: tuple[str, ...] = (), ribs: tuple[str, ...] = ()) -> Ink:
    """Return a body with its outline, ribs and surface."""
    under, over = cover(body, surface)
    lined = ribbed(body, ribs, RIB_LINES) if ribs else ()
    around = rib_bristles(body, RIB_LINES, ribs)
    return (*under, *around, Mark(outline(body, ribs), body.pen, "fruit"), *lined, *over)


def cover(body: Body, surface: tuple[str, ...]) -> tuple[Ink, Ink]:
    """Return what covers a body: what stands round it, behind, and what lies upon it."""
    under: Ink = ()
    over: Ink = ()
    for name in surface:
        around, upon = _SURFACES[name](body)
        under += around
        over += upon
    return under, over


def outline(body: Body, ribs: tuple[str, ...]) -> Path:
    """Return the outline of a body, wavy where its ribs are."""
    if "wavy" not in ribs:
        return body.path
    right = wavy_side(body)
    left = [complex(2 * body.at.real - p.real, p.imag) for p in reversed(right[1:-1])]
    return smooth([*right, *left], closed=True)


def wavy_side(body: Body) -> list[complex]:
    """Return points of the right side from foot to top, with a beaded edge."""
    return _wavy(body, 1.0, 0.02, 0.98)


def _wavy(body: Body, across: float, begin: float, end: float) -> list[complex]:
    deep = 0.021 * min(body.width, body.length)
    points = [body.on(0, 0)] if begin < 0.05 else []  # noqa: PLR2004 - the foot itself
    for n in range(2 * _WAVES + 1):
        share = begin + (end - begin) * n / (2 * _WAVES)
        out = deep if n % 2 else -deep
        fade = min(1.0, 4 * min(share, 1 - share) + 0.3)
        points.append(body.on(share, across) + out * fade)
    return [*points, body.top] if end > 0.95 else points  # noqa: PLR2004 - the top itself


def ribbed(body: Body, ribs: tuple[str, ...], lines: tuple[float, ...]) -> Ink:
    """Return the ribs that run along some lines, each a mark of the part `rib`."""
    return tuple(mark for across in lines for mark in _rib(body, ribs, across))


def _rib(body: Body, ribs: tuple[str, ...], across: float) -> Ink:
    wavy = "wavy" in ribs
    line = smooth(_wavy(body, across, 0.06, 0.94)) if wavy else body.meridian(across)
    relief = next((name for name in ("sharp", "thick", "low") if name in ribs), "")
    if relief == "low":
        return (Mark(line, "fine", "rib"),)
    if relief == "":
        return (Mark(line, "thin", "rib"),)
    if relief == "sharp":
        foot = (
            () if body.width < NARROW else (Mark(body.meridian(across * 1.1, 0.09, 0.91), "fine"),)
        )
        return (Mark(line, "line", "rib"), *foot)
    if wavy:
        edge = smooth([p + _BROAD * body.width / 2 for p in _wavy(body, across, 0.06, 0.94)])
        return (Mark(line, "thin", "rib"), Mark(edge, "thin"))
    return (Mark(_band(body, across, _BROAD), "thin", "rib"),)


_BROAD: Final = 0.13
"""How broad a thick rib is, in shares of half the width."""


def _band(body: Body, across: float, wide: float) -> Path:
    """Return a rib as a narrow band along the body, pointed or round at its ends."""
    shares = [0.05, 0.2, 0.4, 0.6, 0.8, 0.95]
    swell = [0.2, 0.8, 1.0, 1.0, 0.8, 0.2]
    half = body.width / 2
    right = [body.on(s, across) + wide * k * half for s, k in zip(shares, swell, strict=True)]
    left = [body.on(s, across) - wide * k * half for s, k in zip(shares, swell, strict=True)]
    return smooth([*right, *reversed(left)], closed=True)


def rib_bristles(body: Body, lines: tuple[float, ...], ribs: tuple[str, ...]) -> Ink:
    """Return short stiff hairs along ribs, all pointing to the tip."""
    if "with bristles" not in ribs:
        return ()
    long = 0.05 * min(body.length, 3 * body.width) + 1.6
    found = []
    for across in (-1.0, *lines, 1.0):
        for n in range(5):
            share = 0.2 + 0.155 * n + 0.03 * abs(across)
            root = body.on(share, across)
            way = complex(0.72 if across > 0 else -0.72, 0.8)
            found.append(Mark(straight(root, root + way * long), "thin"))
    return tuple(found)


def _unit(body: Body) -> float:
    return min(body.length, body.width, 0.5 * max(body.length, body.width))


def _count(body: Body, every: float, least: int, most: int) -> int:
    around = 2 * (body.length + body.width)
    return max(least, min(most, 2 * round(around / every / 2)))


def _leaning(out: complex, degrees: float) -> complex:
    # Hairs lean to the tip: those of the right against the clock, those of the left with it.
    return out * cmath.exp(1j * math.radians(degrees if out.real >= 0 else -degrees))


def _hairy(body: Body) -> tuple[Ink, Ink]:
    long = 0.07 * _unit(body) + 2.4
    edge = []
    for n, (root, out) in enumerate(body.rim(_count(body, 9, 24, 40), 0.03, 0.97)):
        way = _leaning(out, 20 + 9 * (n % 3 - 1)) * long * (1 + 0.16 * (n % 2))
        edge.append(
            Mark(
                Path(root, (Curve(root + way * 0.4, root + way * 0.7, root + way + 0.18j * long),)),
                "fine",
            )
        )
    face = []
    for n, root in enumerate(body.scatter(_count(body, 17, 9, 18), 0.74)):
        way = cmath.rect(long * 0.8, math.radians(64 + 20 * (n % 3)))
        face.append(Mark(straight(root, root + way), "fine"))
    return tuple(edge), tuple(face)


def _bristly(body: Body) -> tuple[Ink, Ink]:
    long = 0.12 * _unit(body) + 3.2
    edge = tuple(
        Mark(straight(root, root + _leaning(out, 12) * long), "thin")
        for root, out in body.rim(_count(body, 17, 16, 34), 0.03, 0.97)
    )
    face = tuple(
        Mark(
            straight(
                root, root + cmath.rect(long * 0.6, math.radians(80 - 60 * _aside(body, root)))
            ),
            "thin",
        )
        for root in body.scatter(_count(body, 26, 6, 14), 0.7)
    )
    return edge, face


def _aside(body: Body, point: complex) -> float:
    return (point.real - body.at.real) / (body.width / 2)


def _prickly(body: Body) -> tuple[Ink, Ink]:
    long = 0.12 * _unit(body) + 3
    edge = tuple(
        Mark(_thorn(root - out * 1.2, out * (long + 1.2), long * 0.24), "thin")
        for root, out in body.rim(_count(body, 28, 12, 22), 0.04, 0.96)
    )
    face = tuple(
        Mark(
            _thorn(
                root,
                cmath.rect(long * 0.7, math.radians(90 - 70 * _aside(body, root))),
                long * 0.24,
            ),
            "thin",
        )
        for root in body.scatter(_count(body, 40, 5, 11), 0.66)
    )
    return edge, face


def _thorn(root: complex, way: complex, half: float) -> Path:
    side = way / abs(way) * 1j * half
    tip = root + way
    return Path(
        root + side,
        (Curve(root + side * 0.4 + way * 0.3, tip, tip), Curve(tip, root - side * 0.4 + way * 0.3, root - side)),
    )  # fmt: skip


def _hook(root: complex, out: complex, long: float) -> Path:
    turn = -1j if out.real >= 0 else 1j
    tip = root + out * long
    return Path(
        root,
        (
            Curve(root + out * long * 0.4, root + out * long * 0.7, tip),
            Curve(
                tip + out * long * 0.3, tip + (out * 0.34 + out * turn * 0.36) * long,
                tip + (out * -0.02 + out * turn * 0.36) * long,
            ),
        ),
    )  # fmt: skip


def _hooked(body: Body) -> tuple[Ink, Ink]:
    long = 0.13 * _unit(body) + 2.8
    edge = tuple(
        Mark(_hook(root, out, long), "thin")
        for root, out in body.rim(_count(body, 22, 14, 28), 0.04, 0.97)
    )
    face = tuple(
        Mark(
            _hook(root, cmath.rect(1, math.radians(90 - 70 * _aside(body, root))), long * 0.7),
            "thin",
        )
        for root in body.scatter(_count(body, 34, 6, 14), 0.7)
    )
    return edge, face


def _dots(body: Body, radius: float, every: float, pen: str, most: int) -> Ink:
    piece: Ink = (Mark(circle(0j, radius), "solid" if pen == "solid" else "fine"),)
    return tuple(
        Copy(piece, Place(p)) for p in body.scatter(_count(body, every, 7, most), 0.8, 0.1, 0.92)
    )


def _warty(body: Body) -> tuple[Ink, Ink]:
    radius = 0.03 * _unit(body) + 1.3
    bump: Ink = (Mark(circle(0j, radius), "thin"),)
    edge = tuple(
        Copy(bump, Place(root)) for root, _ in body.rim(_count(body, 15, 14, 32), 0.04, 0.97)
    )
    face = tuple(Mark(_arc(p, radius), "thin") for p in body.scatter(_count(body, 17, 7, 22), 0.78))
    return edge, face


def _arc(at: complex, radius: float) -> Path:
    return Path(
        at + radius * 1j,
        (Curve(at + radius * (0.55 + 1j), at + radius * (1 + 0.55j), at + radius),
         Curve(at + radius * (1 - 0.55j), at + radius * (0.55 - 1j), at - radius * 1j)),
    )  # fmt: skip


def _wrinkled(body: Body) -> tuple[Ink, Ink]:
    long = 0.11 * _unit(body) + 1.6
    face = []
    for n, p in enumerate(body.scatter(_count(body, 15, 8, 24), 0.72, 0.1, 0.9)):
        way = cmath.rect(long, math.radians(20 + GOLDEN * n))
        bend = way * 1j * 0.45
        face.append(
            Mark(Path(p - way, (Curve(p - way * 0.4 + bend, p + way * 0.1 + bend, p),
                                Curve(p + way * 0.3 - bend, p + way * 0.6 - bend, p + way))), "fine")
        )  # fmt: skip
    return (), tuple(face)


def _glandular(body: Body) -> tuple[Ink, Ink]:
    long = 0.07 * _unit(body) + 2.6
    knob: Ink = (
        Mark(straight(0j, long * 1j), "fine"),
        Mark(circle(1j * (long + 0.8), 1.3), "solid"),
    )
    places = [(root, out) for root, out in body.rim(_count(body, 19, 14, 30), 0.05, 0.97)]
    edge = tuple(Copy(knob, Place(root, out / 1j)) for root, out in places)
    face = tuple(Mark(circle(p, 1.3), "solid") for p in body.scatter(_count(body, 34, 5, 12), 0.7))
    return edge, face


def _shiny(body: Body) -> tuple[Ink, Ink]:
    # The window that a wet or polished thing shows: a light fleck with a sharp edge.
    shares = (0.52, 0.62, 0.72, 0.8)
    outer = [body.on(s, -0.74) for s in shares]
    inner = [body.on(s, -0.74 + 0.2 * k) for s, k in zip(shares, (0, 1, 1, 0), strict=True)]
    fleck = smooth([*outer, *reversed(inner[1:-1])], closed=True)
    return (), (Mark(fleck, "fine", "fleck"),)


def _lined(body: Body) -> tuple[Ink, Ink]:
    return (), tuple(Mark(body.meridian(a), "fine", "rib") for a in RIB_LINES)


def _dotted(body: Body) -> tuple[Ink, Ink]:
    return (), _dots(body, 0.9 + 0.006 * _unit(body), 13, "solid", 30)


def _beaded(body: Body) -> tuple[Ink, Ink]:
    return (), _dots(body, 1.5 + 0.024 * _unit(body), 8, "fine", 54)


_SURFACES: Final[Mapping[str, Callable[[Body], tuple[Ink, Ink]]]] = {
    "shiny": _shiny,
    "hairy": _hairy,
    "bristly": _bristly,
    "prickly": _prickly,
    "hooked": _hooked,
    "warty": _warty,
    "wrinkled": _wrinkled,
    "glandular": _glandular,
    "ribbed": _lined,
    "dotted": _dotted,
    "beaded": _beaded,
}
"""What is drawn round a body, behind its outline, and upon it."""
