"""A path cut at heights: the pieces between two of them, and those beyond."""

from __future__ import annotations

from typing import TYPE_CHECKING

from sallet.drawing.ink import Curve, Path

if TYPE_CHECKING:
    from sallet.drawing.ink import Piece

_HALVINGS = 24


def parted(path: Path, begin: float, until: float) -> tuple[list[Path], list[Path]]:
    """Return the runs of a path between two heights, and those outside."""
    inner: list[Path] = []
    outer: list[Path] = []
    at, last = path.start, inner
    for piece in _cut(path, begin, until):
        group = inner if begin <= _point(at, piece, 0.5).imag <= until else outer
        if group and group is last:
            group[-1] = Path(group[-1].start, (*group[-1].pieces, piece))
        else:
            group.append(Path(at, (piece,)))
        at, last = piece.end, group
    return inner, outer


def _cut(path: Path, *heights: float) -> list[Piece]:
    pieces, at = [], path.start
    for piece in path.pieces:
        rest: Piece = piece
        for height in sorted(heights, reverse=piece.end.imag < at.imag):
            if (at.imag - height) * (rest.end.imag - height) < 0:
                first, rest = _halved(at, rest, _crossing(at, rest, height))
                pieces.append(first)
                at = first.end
        pieces.append(rest)
        at = rest.end
    return pieces


def _point(start: complex, piece: Piece, t: float) -> complex:
    if not isinstance(piece, Curve):
        return start + (piece.end - start) * t
    u = 1 - t
    return (
        u**3 * start + 3 * u * u * t * piece.first + 3 * u * t * t * piece.second + t**3 * piece.end
    )


def _crossing(start: complex, piece: Piece, height: float) -> float:
    low, high = 0.0, 1.0
    below = start.imag < height
    for _ in range(_HALVINGS):
        middle = (low + high) / 2
        if (_point(start, piece, middle).imag < height) == below:
            low = middle
        else:
            high = middle
    return (low + high) / 2


def _halved(start: complex, piece: Piece, t: float) -> tuple[Piece, Piece]:
    """Return a piece cut in two (de Casteljau)."""
    if not isinstance(piece, Curve):
        return type(piece)(start + (piece.end - start) * t), piece
    a = start + (piece.first - start) * t
    b = piece.first + (piece.second - piece.first) * t
    c = piece.second + (piece.end - piece.second) * t
    d, e = a + (b - a) * t, b + (c - b) * t
    middle = d + (e - d) * t
    return Curve(a, d, middle), Curve(e, c, piece.end)
