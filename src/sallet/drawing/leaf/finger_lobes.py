"""Lobes that spread from the stalk's end like fingers."""

from __future__ import annotations

import cmath
import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import NOTHING, bezier
from sallet.drawing.leaf.contour import fullness
from sallet.drawing.leaf.lobes import Lobed
from sallet.drawing.leaf.run import Run

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.leaf.contour import Base
    from sallet.drawing.leaf.lobes import Lobing

MOST: Final = 7
"""More lobes than this cannot be told apart."""
_SPREAD: Final[Mapping[int, float]] = {2: 34, 3: 50, 4: 75, 5: 96, 6: 112, 7: 126}
"""Degrees from the middle lobe to the outermost, by the number of lobes."""
_SHORTER: Final[Mapping[int, float]] = {2: 0.1, 3: 0.2, 4: 0.32, 5: 0.42, 6: 0.47, 7: 0.52}
"""How much shorter than the middle lobe the outermost are."""
_WEDGED, _STRAIGHT = 62.0, 76.0
"""Degrees that the lobes spread at most above a base that narrows, or one without lobes."""
_ENDS: Final[Mapping[str, float]] = {"pointed": 0.0, "round": 0.42}
_BLUNT: Final = 0.16
"""How full a lobe ends, by the word for the lobes, and where nothing is recorded."""


_OFF: Final = 0.06
"""How far a lobe keeps off the ray through its notch, of the way to its own axis."""
_ROOM: Final = 0.3
"""Room for teeth between two lobes, of half the distance of their tips."""


def fingered(lobing: Lobing, length: float, base: Base, tip: float | None) -> Lobed:
    """Return a blade of finger-like lobes above a base; `tip` says how full each lobe ends."""
    number = max(2, min(lobing.number, MOST))
    spread = _SPREAD[number]
    if not base.lobes:
        spread = min(spread, _WEDGED if base.q >= 1 else _STRAIGHT)
    tips = [
        cmath.rect(
            length * (1 - _SHORTER[number] * abs(2 * k / (number - 1) - 1) ** 1.3),
            math.radians(90 - spread + 2 * spread * k / (number - 1)),
        )
        for k in range(number)
    ]
    soft = _ENDS.get(lobing.tips, _BLUNT if tip is None else tip)
    runs = _base(tips[0], base, length, math.radians(2 * spread / (number - 1)))
    at = runs[-1].points[-1]
    # From the lowest lobe of the right side to the middle; a middle lobe stands on the axis.
    ordered = tips[: (number + 1) // 2]
    for index, end in enumerate(ordered):
        if end.real < NOTHING * length:
            runs.append(Run(tuple(_side(at, complex(0, end.imag), soft))))
            break
        runs.append(Run(tuple(_side(at, end, soft))))
        if index + 1 < len(ordered):
            behind = ordered[index + 1]
            between = end / abs(end) + behind / abs(behind)
            far = (1 - lobing.depth) * (abs(end) + abs(behind)) / 2
            at = between / abs(between) * far
        else:
            # Lobes in pairs only: the notch stands on the axis.
            at = complex(0, (1 - lobing.depth) * abs(end))
        runs.append(Run(tuple(_side(at, end, soft)[::-1]), forward=False))
    axes = tuple((0j, tip * 0.92) for tip in tips)
    room = _ROOM * length * math.sin(math.radians(spread / (number - 1)))
    return Lobed(tuple(runs), tuple(runs), axes, room)


def _base(lowest: complex, base: Base, length: float, step: float) -> list[Run]:
    """Return the edge from the stalk's end until the underside of the lowest lobe."""
    if base.lobes:
        deep = base.depth * length
        shoulder = lowest * cmath.rect(0.55, -0.5 * step)
        shoulder = complex(shoulder.real, min(shoulder.imag, -deep * 0.6))
        edge = bezier(
            0j,
            complex(0.12 * length, -deep),
            complex(shoulder.real * 0.8, shoulder.imag - 0.25 * deep),
            shoulder,
        )
    else:
        shoulder = lowest * cmath.rect(0.55, -0.2 * step)
        shoulder = complex(shoulder.real, max(shoulder.imag, 0.03 * length))
        steps = [1 - math.cos(n / 10 * math.pi / 2) for n in range(11)]
        edge = [
            complex(shoulder.real * fullness(s, base.p, base.q), shoulder.imag * s) for s in steps
        ]
    return [Run(tuple(edge), toothed=False)]


def _side(notch: complex, tip: complex, soft: float) -> list[complex]:
    """Return the side of a finger from the notch to its tip, bulging a little."""
    way = tip / abs(tip)
    off = notch - way * (notch * way.conjugate()).real
    reach = abs(tip - notch)
    # A rounded finger ends across its axis, a pointed one along it.
    blunt = max(0.0, soft - 0.2) / 0.22
    return bezier(
        notch,
        _within(notch + 0.4 * way * reach + (0.4 - 0.15 * blunt) * off, notch, tip),
        _within(tip - 0.3 * (1 - blunt) * way * reach + (0.62 + soft) * off, notch, tip),
        tip,
    )


def _within(handle: complex, notch: complex, tip: complex) -> complex:
    """Return a handle turned into the sector between notch and tip: fingers cannot cross."""
    if notch == 0:
        return handle
    sector = cmath.phase(tip / notch)
    turn = cmath.phase(handle / notch) / sector if sector else 0.0
    return handle * cmath.rect(1.0, (max(_OFF, turn) - turn) * sector)
