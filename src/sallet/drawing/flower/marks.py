"""What is drawn on a petal: spots, veins, eyes, and how it is held."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle, ellipse, straight
from sallet.drawing.ink import Curve, Mark, Path

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.flower.form import FlowerForm
    from sallet.drawing.flower.petal import Petal
    from sallet.drawing.ink import Ink


def marks_ink(form: FlowerForm, one: Petal, half: float) -> Ink:
    """Return the marks on one petal whose foot is at the origin."""
    if form.marks is None:
        return ()
    length = one.end.end.imag if one.end.end.imag > one.end.start.imag * 0.8 else one.end.start.imag
    return tuple(mark for name in form.marks.value for mark in _MARKS[name](length, half))


def veins(length: float, half: float) -> Ink:
    """Return fine lines that run into the petal from its foot."""
    return tuple(
        Mark(
            Path(
                complex(half * x * 0.25, length * 0.12),
                (
                    Curve(
                        complex(half * x * 0.3, length * 0.3),
                        complex(half * x, length * 0.4),
                        complex(half * x, length * y),
                    ),
                ),
            ),
            "fine",
        )
        for x, y in ((-0.55, 0.58), (-0.28, 0.66), (0, 0.7), (0.28, 0.66), (0.55, 0.58))
    )


_SPOTS: Final = ((0, 0.5), (-0.42, 0.46), (0.42, 0.46), (-0.2, 0.62), (0.22, 0.64), (0.02, 0.34))


def _dots(length: float, half: float) -> Ink:
    at = [complex(x * half, y * length) for x, y in _SPOTS]
    return tuple(Mark(straight(p, p)) for p in at)


def _ringed(length: float, half: float) -> Ink:
    size = max(0.8, half * 0.08)
    at = [complex(x * half, y * length) for x, y in _SPOTS[:4]]
    return tuple(
        mark
        for point in at
        for mark in (Mark(straight(point, point)), Mark(circle(point, size * 2.2), "fine"))
    )


def _blotch(length: float, half: float) -> Ink:
    return (Mark(ellipse(complex(0, length * 0.36), half * 0.4, length * 0.12), "solid"),)


def _bow(share: float, pen: str, length: float, half: float) -> Mark:
    reach, wide = length * share, half * 0.66
    path = Path(
        complex(-wide, reach * 0.72),
        (
            Curve(
                complex(-wide * 0.5, reach), complex(wide * 0.5, reach), complex(wide, reach * 0.72)
            ),
        ),
    )
    return Mark(path, "dotted" if pen == "dotted" else "fine")


def _pale(length: float, half: float) -> Ink:
    return (_bow(0.42, "fine", length, half),)


def _yellow(length: float, half: float) -> Ink:
    return (_bow(0.36, "fine", length, half), _bow(0.3, "fine", length, half))


def _dark(length: float, half: float) -> Ink:
    reach, wide = length * 0.32, half * 0.5
    path = Path(
        complex(-wide, reach * 0.8),
        (
            Curve(complex(-wide * 0.5, reach * 1.1), complex(wide * 0.5, reach * 1.1), complex(wide, reach * 0.8)),
            Curve(complex(wide * 0.6, reach * 0.4), complex(wide * 0.3, 0), 0j),
            Curve(complex(-wide * 0.3, 0), complex(-wide * 0.6, reach * 0.4), complex(-wide, reach * 0.8)),
        ),
        closed=True,
    )  # fmt: skip
    return (Mark(path, "solid"),)


def _stripe(length: float, half: float) -> Ink:
    return tuple(
        Mark(
            Path(
                complex(half * x, length * 0.06),
                (
                    Curve(
                        complex(half * x, length * 0.4),
                        complex(half * x, length * 0.6),
                        complex(half * x * 0.6, length * 0.9),
                    ),
                ),
            ),
            "fine",
        )
        for x in (-0.1, 0.0, 0.1)
    )


_MARKS: Final[Mapping[str, Callable[[float, float], Ink]]] = {
    "spots": _dots, "veins": veins, "rings": _ringed, "blotch": _blotch, "pale": _pale,
    "yellow": _yellow, "dark": _dark, "lines": _stripe,
}  # fmt: skip


def veil(form: FlowerForm, one: Petal, half: float) -> Ink:
    """Return the lines by which a petal seen from above shows that it is not held flat."""
    posture = form.petal_posture.value if form.petal_posture else ""
    length = max(one.end.end.imag, one.end.start.imag)
    return tuple(
        Mark(
            Path(
                complex(-half * wide, length * low),
                (Curve(complex(-half * wide * 0.5, length * high), complex(half * wide * 0.5, length * high), complex(half * wide, length * low)),),
            ),
            "thin",
        )
        for wide, low, high in _VEILS.get(posture, ())
    )  # fmt: skip


_VEILS: Final[Mapping[str, tuple[tuple[float, float, float], ...]]] = {
    "cupped": ((0.62, 0.66, 0.9),),
    "upright": ((0.62, 0.6, 0.84), (0.5, 0.7, 0.92)),
    "back": ((0.7, 0.6, 0.44),),
    "tips": ((0.6, 0.8, 0.72),),
}
