"""One petal or sepal laid flat: its sides by its outline, its outer end by its tip."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.ink import Curve, Line, Mark, Path

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.ink import Ink, Piece


@dataclass(frozen=True)
class Blade:
    """The outline of a petal of length one."""

    ratio: float
    """How many times longer than wide."""
    widest: float
    """How far out it is widest."""
    foot: float
    """How wide its foot is beside its greatest width."""
    rise: tuple[float, float, float] = (0.35, 0.25, 0.4)
    """The handles of a side: outwards and upwards from the foot, downwards from the widest."""
    end: str = ""
    """The end that the outline has by its definition."""


BLADES: Final[Mapping[str, Blade]] = {
    "round": Blade(1.05, 0.54, 0.3, (0.6, 0.08, 0.45), "arc"),
    "oval": Blade(1.6, 0.5, 0.3, (0.45, 0.15, 0.45)),
    "broad at the tip": Blade(1.45, 0.7, 0.22, (0.2, 0.3, 0.35)),
    "linear": Blade(5.0, 0.55, 0.85, (0.5, 0.2, 0.4)),
    "lance-shaped": Blade(3.4, 0.4, 0.45, (0.4, 0.2, 0.4), "taper"),
    "heart-shaped": Blade(1.05, 0.68, 0.22, (0.3, 0.2, 0.4), "heart"),
    "spoon-shaped": Blade(1.9, 0.74, 0.2, (0.0, 0.62, 0.26)),
    "triangular": Blade(1.2, 0.1, 0.9, (0.3, 0.3, 0.4), "taper"),
}
"""The outlines of petals; proportions after the hints of the vocabulary."""


@dataclass(frozen=True)
class Petal:
    """A petal with its foot at the origin and its end upwards, in units."""

    side: Path
    """The right side, from the foot to the widest place."""
    end: Path
    """The right half of the outer end, from the widest place to the middle line."""
    inner: tuple[Path, ...] = ()
    """Lines beside the edge: a tip that is folded inwards, the threads of a fringe."""

    @property
    def rim(self) -> Path:
        """Return the whole edge from foot to foot, open."""
        return self.side.then(self.outer).then(self.side.mirrored().reversed())

    @property
    def outer(self) -> Path:
        """Return the outer end from side to side, open."""
        return self.end.then(self.end.mirrored().reversed())

    @property
    def outline(self) -> Path:
        """Return the edge closed across the foot."""
        return self.rim.shut()


def petal(blade: Blade, tip: str, length: float, half: float, foot: float | None = None) -> Petal:
    """Return a petal of a length and half a width, in units; `tip` is a key of ENDS.

    `foot` is half the width of the foot in units, if it is not to follow the outline.
    """
    narrow = half * blade.foot if foot is None else foot
    out, up, down = blade.rise
    high = length * blade.widest
    begin, broad = complex(narrow, 0), complex(half, high)
    side = Curve(
        complex(narrow + (half - narrow) * out, high * up), complex(half, high * (1 - down)), broad
    )
    rest = length - high
    pieces = tuple(
        Line(_out(p.end, half, high, rest)) if isinstance(p, Line)
        else Curve(*(_out(q, half, high, rest) for q in (p.first, p.second, p.end)))
        for p in ENDS[tip]
    )  # fmt: skip
    if tip in DEEP:
        pieces = _deep(half, length, high, DEEP[tip])
    inner: tuple[Path, ...] = ()
    if tip == "fringe":
        inner = _threads(half, length, high)
    if tip == "inrolled":
        low, top = length * 0.6, length - rest * 0.3
        tongue = Path(
            complex(-half * 0.16, top),
            (
                Curve(complex(-half * 0.1, low + (top - low) / 2), complex(0, low), complex(0, low)),
                Curve(complex(0, low), complex(half * 0.1, low + (top - low) / 2), complex(half * 0.16, top)),
            ),
        )  # fmt: skip
        inner = (tongue,)
    return Petal(Path(begin, (side,)), Path(broad, pieces), inner)


def _threads(half: float, length: float, high: float) -> tuple[Path, ...]:
    # Eleven threads of unequal length that spread a little.
    rest = length - high
    return tuple(
        Path(
            complex(half * x, high + rest * 0.37),
            (Line(complex(half * x * 1.28, high + rest * (1.06 - 0.22 * x * x - 0.12 * (k % 2)))),),
        )
        for k, x in enumerate((at - 5) / 5.4 for at in range(11))
    )


def _out(point: complex, half: float, high: float, rest: float) -> complex:
    return complex(point.real * half, high + point.imag * rest)


def _deep(half: float, length: float, high: float, depth: float) -> tuple[Piece, ...]:
    # Two lobes side by side: each ends round, and the cut between them runs down to a point.
    crest, floor = complex(half * 0.6, length), complex(0, length * (1 - depth))
    return (
        Curve(complex(half, high + (length - high) * 0.5), complex(half * 0.92, length), crest),
        Curve(complex(half * 0.3, length), complex(half * 0.12, floor.imag + length * depth * 0.5), floor),
    )  # fmt: skip


def _zigzag(teeth: int, depth: float, shoulder: complex) -> tuple[Piece, ...]:
    # Half of an odd number of teeth, the middle one on the middle line.
    pieces: list[Piece] = [Curve(complex(1, 0.5), complex(1, 0.7), shoulder)]
    step = shoulder.real / (teeth / 2)
    across = shoulder.real
    for at in range((teeth + 1) // 2):
        across -= step / 2
        lift = 1 - 0.5 * (across * across) * (1 - shoulder.imag)
        pieces.append(Line(complex(across, lift)))
        across -= step / 2
        if at < teeth // 2:
            pieces.append(Line(complex(across, lift - depth)))
    return tuple(pieces)


DEEP: Final = {"half split": 0.5, "split": 0.86}
"""How deep the two-lobed ends are cut, beside the length of the petal."""
ENDS: Final[Mapping[str, tuple[Piece, ...]]] = {
    "round": (Curve(1 + 0.6j, 0.6 + 1j, 1j),),
    "drawn out": (Curve(1 + 0.3j, 0.12 + 0.4j, 1j),),
    "arc": (Curve(1 + 0.55j, 0.55 + 1j, 1j),),
    "point": (Curve(1 + 0.5j, 0.28 + 0.72j, 1j),),
    "taper": (Curve(1 + 0.35j, 0.35 + 0.7j, 1j),),
    "flat": (Curve(1 + 0.5j, 0.98 + 0.75j, 0.9 + 0.95j), Curve(0.6 + 1j, 0.3 + 1j, 1j)),
    "notch": (
        Curve(1 + 0.55j, 0.82 + 1j, 0.46 + 1j), Curve(0.25 + 1j, 0.08 + 0.92j, 0.74j),
    ),
    "heart": (
        Curve(1 + 0.6j, 0.85 + 1j, 0.5 + 1j), Curve(0.25 + 1j, 0.06 + 0.85j, 0.42j),
    ),
    "inrolled": (
        Curve(1 + 0.6j, 0.85 + 1j, 0.5 + 1j), Curve(0.32 + 1j, 0.22 + 0.95j, 0.16 + 0.7j),
        Line(0.7j),
    ),
    "half split": (),
    "split": (),
    "teeth": _zigzag(5, 0.17, 0.94 + 0.84j),
    "fringe": (Curve(1 + 0.25j, 1 + 0.3j, 0.96 + 0.4j), Curve(0.7 + 0.34j, 0.4 + 0.34j, 0.34j)),
    "open": (Curve(1 + 0.55j, 0.58 + 1j, 1j),),
}  # fmt: skip
"""The right half of an outer end, from the widest place (1) to the middle line, the end at 1j."""


def petal_ink(one: Petal, *, foot: str, dotted: bool) -> Ink:
    """Return a petal that hides what lies behind it.

    `foot`: `shut` where it stands free, `open` where it runs on into its neighbours, `off` where
    nothing is recorded of it and its sides end before the middle. `dotted` where its outer end
    is not recorded.
    """
    side = cut(one.side, OFF) if foot == "off" else one.side
    left = side.mirrored().reversed()
    if dotted:
        known = side.then(cut(one.end.reversed(), 1 - PLAIN).reversed())
        rest = cut(one.end, PLAIN)
        other = known.mirrored().reversed()
        edge = (Mark(other.then(known)),) if foot == "shut" else (Mark(known), Mark(other))
        tip = rest.then(rest.mirrored().reversed())
        return (Mark(one.outline, "paper"), *edge, Mark(tip, "dotted"))
    if foot == "shut":
        return (Mark(one.outline), *_folded(one))
    whole = side.then(one.outer).then(left)
    return (Mark(one.outline, "paper"), Mark(whole), *_folded(one))


PLAIN: Final = 0.34
"""Up to where the outer end of a petal is drawn of which only the tip is not recorded."""
OFF: Final = 0.3
"""How far out the sides of a petal begin where nothing is recorded of its foot."""


def _folded(one: Petal) -> Ink:
    return tuple(Mark(line, "thin") for line in one.inner)


def cut(path: Path, share: float) -> Path:
    """Return what is left of a path of one curve behind a share of it (de Casteljau)."""
    (curve,) = path.pieces
    if isinstance(curve, Line):
        return Path(path.start + (curve.end - path.start) * share, (curve,))
    a, b, c, d = path.start, curve.first, curve.second, curve.end
    ab, bc, cd = (p + (q - p) * share for p, q in ((a, b), (b, c), (c, d)))
    abc, bcd = ab + (bc - ab) * share, bc + (cd - bc) * share
    return Path(abc + (bcd - abc) * share, (Curve(bcd, cd, d),))
