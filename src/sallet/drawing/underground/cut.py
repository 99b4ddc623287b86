"""Roots and stores cut lengthwise: layers, full flesh, hollows, walls, a core."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle, smooth, straight
from sallet.drawing.ink import Copy, Curve, Mark, Path, Place
from sallet.drawing.stem.section_fill import stippled, strewn, within

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.ink import Ink, Pen
    from sallet.drawing.underground.shape import Body

LAYERS: Final = (0.84, 0.66, 0.47, 0.27)
NECK: Final = 0.17
"""How far the neck of a bulb goes up, in shares of its length."""
_GRAINS: Final = 84.0
"""About as many dots are strewn over a cut."""


def cut_ink(body: Body, inside: str, pen: Pen) -> Ink:
    """Return the face of a body cut lengthwise; `inside` is a state of `interior` or empty."""
    edge = Mark(body.edge(), pen, "cut")
    return (edge, *(_INSIDES[inside](body) if inside else ()))


def bulb_cut(body: Body, inside: str, pen: Pen, neck: float) -> Ink:
    """Return a bulb cut lengthwise: thick leaves one within the other on a short stem.

    Its flesh is stippled where it is recorded that it is layered.
    """
    edge = body.necked(neck, NECK * body.long)
    if inside not in {"", "layered"}:
        return (Mark(edge, pen, "cut"), *_INSIDES[inside](body))
    ink: list[Mark | Copy] = [Mark(edge, pen, "cut")]
    low = -0.94 * body.long
    for share in LAYERS:
        for sign in (1, -1):
            foot = complex(sign * (0.05 + 0.2 * share) * body.half, low)
            sides = [
                complex(sign * body.wide(t, sign) * share, -t * body.long)
                for t in (0.86, 0.7, 0.52, 0.34, 0.2)
            ]
            top = complex(sign * neck * share * 0.85, (NECK * share - 0.02) * body.long)
            ink.append(Mark(smooth([foot, *sides, top]), "thin", "layer"))
    plate = Path(
        complex(-0.3 * body.half, low),
        (
            Curve(complex(-0.1 * body.half, low + 0.09 * body.long), complex(0.1 * body.half, low + 0.09 * body.long), complex(0.3 * body.half, low)),
            Curve(complex(0.2 * body.half, low - 0.08 * body.long), complex(-0.2 * body.half, low - 0.08 * body.long), complex(-0.3 * body.half, low)),
        ),
        closed=True,
    )  # fmt: skip
    if inside:
        ink += _grains(body, lambda p: within(_trimmed(body, 0.92), p))
    return (*ink, Mark(plate, "thin", "plate"))


def corm_cut(body: Body, inside: str, pen: Pen, neck: float) -> Ink:
    """Return a corm cut lengthwise: one piece, with its shoot; stippled where told solid."""
    face = cut_ink(body, inside, pen)
    bud = Path(
        complex(-neck * 0.8, -0.08 * body.long),
        (
            Curve(complex(-neck * 0.8, 0.04 * body.long), complex(-neck * 0.3, 0.14 * body.long), complex(0, 0.2 * body.long)),
            Curve(complex(neck * 0.3, 0.14 * body.long), complex(neck * 0.8, 0.04 * body.long), complex(neck * 0.8, -0.08 * body.long)),
        ),
    )  # fmt: skip
    return (*face, Mark(bud.shut(), "thin", "shoot"))


def _trimmed(body: Body, share: float) -> list[complex]:
    return body.edge(share).points(4)


def _grains(body: Body, inside: Callable[[complex], bool], number: float = _GRAINS) -> Ink:
    down = 0.5j * body.long
    spacing = (2 * body.half * body.long / number) ** 0.5
    dots = stippled(2 * body.half, body.long, spacing, lambda p: inside(p - down))
    return tuple(Mark(dot.path.placed(Place(-down)), dot.pen) for dot in dots)


def _solid(body: Body) -> Ink:
    edge = _trimmed(body, 0.9)
    return _grains(body, lambda p: within(edge, p))


def _fleshy(body: Body) -> Ink:
    """Return juicy flesh: small drops among the dots."""
    edge = _trimmed(body, 0.82)
    drop = max(1.5, 0.055 * body.half)
    piece = (Mark(circle(0j, drop), "fine"),)
    found = []
    for p in strewn(30, 2 * body.half, body.long):
        at = p - 0.5j * body.long
        if within(edge, at):
            found.append(Copy(piece, Place(at)))
    return tuple(found)


def _layered(body: Body) -> Ink:
    return tuple(
        Mark(Path(e.start, e.pieces), "thin", "layer") for e in (body.edge(s) for s in LAYERS)
    )


def _hollow(body: Body) -> Ink:
    outer, inner = _trimmed(body, 0.92), _trimmed(body, 0.64)
    dots = _grains(body, lambda p: within(outer, p) and not within(inner, p), 120.0)
    return (*dots, Mark(body.edge(0.58), "thin", "hollow"))


def _chambered(body: Body) -> Ink:
    outer, inner = _trimmed(body, 0.92), _trimmed(body, 0.74)
    dots = _grains(body, lambda p: within(outer, p) and not within(inner, p), 120.0)
    room = body.edge(0.68)
    walls = []
    for number in range(1, 8):
        down = 0.5 + (number / 8 - 0.5) * 0.68
        wide = body.wide(0.5 + (down - 0.5) / 0.68) * 0.68
        left = body.wide(0.5 + (down - 0.5) / 0.68, -1) * 0.68
        y = -down * body.long
        walls.append(Mark(straight(complex(-left, y), complex(wide, y)), "thin", "wall"))
    return (*dots, Mark(room, "thin", "hollow"), *walls)


def _core(body: Body) -> Ink:
    """Return a hard thread from top to bottom."""
    points = [
        complex(0.03 * body.half * (-1) ** n, -(0.04 + 0.86 * n / 4) * body.long) for n in range(5)
    ]
    side = 0.07 * body.half
    marks = [
        Mark(smooth([p + d for p in points]), "line" if not d else "fine", "core" if not d else "")
        for d in (-side, 0, side)
    ]
    return (*marks, *_solid_beside(body, 0.16 * body.half))


def _solid_beside(body: Body, clear: float) -> Ink:
    edge = _trimmed(body, 0.9)
    return _grains(body, lambda p: abs(p.real) > clear and within(edge, p), 80.0)


def _ringed(body: Body) -> Ink:
    """Return darker and lighter rings: every second is stippled."""
    bands = [(0.94, 0.8), (0.62, 0.46), (0.28, 0.0)]
    edges = [(_trimmed(body, a), _trimmed(body, b) if b else []) for a, b in bands]
    lines = [
        Mark(Path(e.start, e.pieces), "fine")
        for e in (body.edge(s) for s in (0.8, 0.62, 0.46, 0.28))
    ]

    def dark(p: complex) -> bool:
        return any(within(o, p) and not (i and within(i, p)) for o, i in edges)

    return (*lines, *_grains(body, dark, 190.0))


_INSIDES: Final[Mapping[str, Callable[[Body], Ink]]] = {
    "solid": _solid, "fleshy": _fleshy, "layered": _layered, "hollow": _hollow,
    "chambered": _chambered, "woody core": _core, "ringed": _ringed,
}  # fmt: skip
INSIDES: Final = {state: state for state in _INSIDES}
"""The states of `interior`."""
