"""Coats of bulbs and corms: skins, nets, fibres, scales."""

from __future__ import annotations

import cmath
import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import smooth, straight
from sallet.drawing.ink import Copy, Curve, Mark, Path, Place

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping, Sequence

    from sallet.drawing.ink import Ink
    from sallet.drawing.underground.shape import Body


def coat(body: Body, kind: str, neck: float) -> tuple[Ink, Ink]:
    """Return the coat of a bulb or corm, behind it and on it; `neck` is half its neck's breadth."""
    return _COATS[kind](body, neck)


def _meridian(body: Body, share: float, begin: float = 0.06, end: float = 0.95) -> Path:
    steps = [begin + (end - begin) * n / 3 for n in range(4)]
    side = 1 if share >= 0 else -1
    return smooth([
        complex(body.wide(t, side) * share, -t * body.long) for t in steps
    ])  # fmt: skip


def _tuft(body: Body, neck: float, tips: Sequence[float], pen: str = "fine") -> Ink:
    marks = []
    for number, share in enumerate(tips):
        foot = complex(neck * share, -0.05 * body.long)
        long = (0.15 + 0.05 * math.sin(number * 2.4)) * body.long
        tip = complex(foot.real * 1.9, long)
        marks.append(
            Mark(
                smooth([foot, (foot + tip) / 2 + 0.15 * foot.real, tip]),
                "fine" if pen == "fine" else "thin",
            )
        )
    return tuple(marks)


def _papery(body: Body, neck: float) -> tuple[Ink, Ink]:
    veins = [
        Mark(_meridian(body, share), "fine") for share in (-0.8, -0.52, -0.2, 0.16, 0.48, 0.78)
    ]
    # A thin skin that comes away at one side.
    top, low = body.at(0.18, 1), body.at(0.62, 1)
    out = 0.2 * body.half
    flap = Path(
        top,
        (
            Curve(top + out * 1.1, complex(top.real + out * 2.3, (top.imag + low.imag) / 2), low + out * 1.5),
            Curve(low + out * 1.1 + 2j, low + out * 0.9 + 4j, low + out * 0.6),
            Curve(low + out * 0.5 + 1j, low + out * 0.2 + 3j, low),
        ),
    )  # fmt: skip
    tatters = _tuft(body, neck, (-0.9, 0.9), "thin")
    return (*tatters, Mark(flap.shut(), "thin", "coat")), tuple(veins)


def _leathery(body: Body, neck: float) -> tuple[Ink, Ink]:
    """Return a thick skin that goes up into a tube about the neck."""
    collar, high = neck * 1.5, 0.3 * body.long
    jag = 0.03 * body.long
    rim = [
        complex(collar, high), complex(collar * 0.4, high - jag), complex(-collar * 0.1, high + jag / 2),
        complex(-collar * 0.55, high - jag), complex(-collar, high),
    ]  # fmt: skip
    right, left = _around(body)
    low = 0.06j * body.long
    down = smooth([rim[-1], low - collar * 1.02, *left[:2]])
    up = smooth([rim[0], low + collar * 1.02, *right[:2]]).reversed()
    belly = smooth([*left[1:], *right[:0:-1]])
    cracks = [
        Mark(_meridian(body, share, begin, begin + 0.22), "thin")
        for share, begin in ((-0.62, 0.3), (-0.2, 0.4), (0.3, 0.3), (0.66, 0.4))
    ]
    tube = straight(*rim).then(down)
    return (
        Mark(tube.then(belly).then(up).shut(), "paper"),
        Mark(belly, "dotted" if body.guessed else "line", "coat"),
        Mark(up.then(tube), "line", "coat"),
    ), tuple(cracks)


def _around(body: Body) -> tuple[list[complex], list[complex]]:
    """Return the sides of a body below its neck, a skin's thickness outside it."""
    wide = body.half * 0.09
    sides = []
    for sign, points in zip((1, -1), body.points(), strict=True):
        sides.append(
            [
                p + sign * wide - (0.8j * wide if p.imag < -body.long / 2 else 0)
                for p in points
                if p.imag < -0.12 * body.long
            ]
        )
    return sides[0], sides[1]


def _netted(body: Body, neck: float) -> tuple[Ink, Ink]:
    del neck
    marks = []
    for turn in (1, -1):
        for number in range(11):
            begin = -1.9 + 3.8 * number / 10
            points = []
            for step in range(6):
                down = 0.05 + 0.9 * step / 5
                share = begin + turn * (step / 5 - 0.5) * 1.6
                if abs(share) <= 1:
                    points.append(
                        complex(body.wide(down, 1 if share > 0 else -1) * share, -down * body.long)
                    )
            if len(points) > 1:
                marks.append(Mark(smooth(points), "fine"))
    return (), tuple(marks)


def _fibres(body: Body, neck: float) -> tuple[Ink, Ink]:
    lines = [Mark(_meridian(body, -0.94 + 1.88 * n / 14, 0.04, 0.97), "fine") for n in range(15)]
    return _tuft(body, neck, [-1 + 2 * n / 8 for n in range(9)]), tuple(lines)


def _woolly(body: Body, neck: float) -> tuple[Ink, Ink]:
    marks = []
    for number in range(26):
        share = -1 + 2 * (number + 0.5) / 26
        foot = complex(neck * 1.3 * share, -0.02 * body.long)
        tip = foot + complex(neck * share * 1.3, (0.13 + 0.05 * math.sin(number * 2.4)) * body.long)
        side = 0.09 * neck * (1 if number % 2 else -1) * 4
        way = tip - foot
        marks.append(
            Mark(
                Path(foot, (Curve(foot + way * 0.35 + side, foot + way * 0.7 - side, tip),)), "fine"
            )
        )
    seams = [Mark(_meridian(body, share, 0.05, 0.6), "thin") for share in (-0.55, 0.5)]
    curls = []
    for share in (-0.55, 0.5):
        for number in range(9):
            down = 0.08 + 0.055 * number
            at = complex(body.wide(down) * share, -down * body.long)
            curls.append(Mark(straight(at, at + complex(4 if number % 2 else -4, 2)), "fine"))
    return tuple(marks), (*seams, *curls)


def _loose(body: Body, neck: float) -> tuple[Ink, Ink]:
    """Return thick scales that lie on one another like tiles."""
    del neck
    long, half = 0.4 * body.long, 0.34 * body.half
    scale = Path(
        -1j * long * 0.5,
        (
            Curve(complex(half * 1.2, -long * 0.4), complex(half * 1.1, long * 0.25), 1j * long * 0.5),
            Curve(complex(-half * 1.1, long * 0.25), complex(-half * 1.2, -long * 0.4), -1j * long * 0.5),
        ),
        closed=True,
    )  # fmt: skip
    piece = (Mark(scale, "line"),)
    ink = []
    for down, shares in (
        (0.24, (-0.3, 0.3)),
        (0.42, (-0.68, 0.68, 0.0)),
        (0.58, (-0.9, 0.9, -0.34, 0.34)),
        (0.74, (-0.72, 0.72, 0.0)),
    ):
        for share in shares:
            at = complex(body.wide(down) * share, -down * body.long)
            ink.append(Copy(piece, Place(at, cmath.rect(1, math.radians(-16 * share))), "scale"))
    return (), tuple(ink)


_COATS: Final[Mapping[str, Callable[[Body, float], tuple[Ink, Ink]]]] = {
    "papery": _papery, "leathery": _leathery, "netted": _netted, "parallel fibres": _fibres,
    "woolly": _woolly, "loose scales": _loose,
}  # fmt: skip
COATS: Final = {state: state for state in _COATS}
"""The states of `coat` that leave ink."""
