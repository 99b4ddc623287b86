"""The veins of a lobed blade: one to each lobe."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.drawing.ink import Curve, Line, Mark, Path

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.leaf.outline import Outline


def _midrib(outline: Outline) -> list[Mark]:
    end = next((tip for _, tip in reversed(outline.axes) if not round(tip.real, 6)), outline.tip)
    return [Mark(Path(0j, (Line(0.985j * end.imag),)), "fine", "midrib")]


def _sides(outline: Outline) -> list[tuple[complex, complex]]:
    """Return the axes of all lobes but the middle one, each from where it leaves the midrib."""
    axes = [(foot, tip) for foot, tip in outline.axes if round(tip.real, 6)]
    # Finger-like lobes have theirs from the midrib too, the lower from lower down.
    return [(foot or 0.42j * max(tip.imag, 0.0), tip) for foot, tip in axes]


def _curve(foot: complex, tip: complex, reach: float = 1.0) -> Path:
    end = foot + (tip - foot) * reach
    way = end - foot
    return Path(foot, (Curve(foot + 0.35 * way + 0.02j * abs(way), end - 0.3 * way, end),))


def _pinnate(outline: Outline) -> list[Mark]:
    lobes = [Mark(_curve(a, b), "fine", "lobevein") for a, b in _sides(outline)]
    return [*_midrib(outline), *lobes]


def _to_tips(outline: Outline) -> list[Mark]:
    lobes = [Mark(_curve(a, b, 1.06), "fine", "lobevein") for a, b in _sides(outline)]
    return [*_midrib(outline), *lobes]


def _net(outline: Outline) -> list[Mark]:
    """Return lobe veins with short branches of their own."""
    lines = _pinnate(outline)
    for foot, tip in _sides(outline):
        way = tip - foot
        for far, turn in ((0.45, 0.16 + 0.12j), (0.45, 0.16 - 0.12j), (0.7, 0.12 + 0.08j)):
            at = foot + way * far
            lines.append(Mark(Path(at, (Line(at + way * turn),)), "fine"))
    return lines


def _palmate(outline: Outline) -> list[Mark]:
    return [Mark(Path(0j, (Line(tip),)), "fine", "mainvein") for _, tip in outline.axes]


def _three(outline: Outline) -> list[Mark]:
    """Return the three strongest veins: those of the longest lobes."""
    tips = sorted((tip for _, tip in outline.axes), key=abs)[-3:]
    return [Mark(Path(0j, (Line(tip),)), "fine", "mainvein") for tip in tips]


LOBED: Final[Mapping[str, Callable[[Outline], list[Mark]]]] = {
    "pinnate": _pinnate,
    "net": _net,
    "palmate": _palmate,
    "1": _midrib,
    "3": _three,
    "teeth": _to_tips,
}
"""The ways of veins in a lobed blade, by the vocabulary's hint."""
