"""Leaves divided again and again: side branches that are feathers themselves, or threads."""

from __future__ import annotations

import cmath
import math
from dataclasses import replace
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import straight
from sallet.drawing.ink import Copy, Mark, Place, turned
from sallet.drawing.leaf.leaflets import axis, dotted_leaflet, leaflet_ink
from sallet.drawing.leaf.lobes import Lobing
from sallet.drawing.leaf.outline import outline

if TYPE_CHECKING:
    from sallet.drawing.ink import Ink, Pen
    from sallet.drawing.leaf.division import Division

_SEGMENTS: Final = Lobing("feather", 7, 0.62)
"""The last of three divisions is drawn as lobes of the smallest segments."""
_WIDEST: Final = 0.22
"""Where a blade is widest whose outline is not recorded."""
_FAT: Final = 2.4
"""Leaflets longer than so many widths would reach into the next branch."""


def plume(form: Division, size: float) -> Ink:
    """Return a blade divided twice and more, `size` units long."""
    times = form.pattern.value.times
    widest = form.outline.value if form.outline else _WIDEST
    pairs = 6
    longest = 0.5 * size
    # Two models, so that the pen is not much thinner on the small branches than on the large.
    models = [(share * longest, _branch(form, share * longest, times - 1)) for share in (1.0, 0.5)]
    ink: list[Mark | Copy] = [axis(size * 0.97)]
    for pair in range(pairs):
        far = pair / pairs
        at = 1j * size * 0.92 * (1 - (1 - far) ** 1.2)
        long = longest * _profile(widest, far)
        model_long, model = models[0] if long > 0.66 * longest else models[1]
        for sign in (1, -1):
            place = turned(sign * (66 - 16 * far), at, long / model_long, mirrored=sign < 0)
            ink.append(Copy(model, place, "branch"))
    ink.append(Copy(models[1][1], turned(0, 0.8j * size, 0.2 * size / models[1][0]), "branch"))
    return tuple(ink)


def _profile(widest: float, far: float) -> float:
    """Return the length of a side branch by its height, 1 for the longest."""
    if far <= widest:
        return 0.55 + 0.45 * far / widest if widest else 1.0
    return 1 - 0.86 * float(((far - widest) / (1 - widest)) ** 1.1)


def _branch(form: Division, length: float, times: int) -> Ink:
    """Return a side branch that is divided `times` more."""
    pairs, angle = (7 if form.pattern.value.fine else 5), 56
    pitch = 0.76 / pairs * length
    # As broad as the pitch allows: what overlaps cannot be read.
    longest = min(form.ratio, _FAT) * pitch * math.sin(math.radians(angle)) * 0.95
    piece = leaflet_ink(form, longest, "thin")
    if times > 1:
        longest = (0.19 if form.pattern.value.fine else 0.24) * length
        finest = times > 2  # noqa: PLR2004 - a feather of feathers of feathers of feathers
        piece = _twig(form, longest) if finest else _segment(form, longest, "thin")
    paired = _paired(piece, angle)
    return (
        Mark(straight(0j, 0.96j * length), "thin"),
        *(
            Copy(
                paired,
                Place(1j * length * (0.1 + 0.76 * pair / pairs), 1 - 0.6 * pair / pairs + 0j),
            )
            for pair in range(pairs)
        ),
        Copy(piece, turned(0, 0.84j * length, 0.5)),
    )


def _paired(piece: Ink, angle: float) -> Ink:
    """Return two of a piece, right and left of an axis: put as one, they are written once."""
    return tuple(Copy(piece, turned(sign * angle, mirrored=sign < 0)) for sign in (1, -1))


def _segment(form: Division, length: float, pen: Pen) -> Ink:
    """Return a lobed segment of the leaflets' shape; its edge is too small to be read."""
    if form.leaflet is None:
        return dotted_leaflet(length)
    return (Mark(outline(replace(form.leaflet.blank, lobing=_SEGMENTS), length).path, pen),)


def _twig(form: Division, length: float) -> Ink:
    piece = _segment(form, 0.34 * length, "fine")
    paired = _paired(piece, 52)
    return (
        Mark(straight(0j, 0.9j * length), "fine"),
        *(
            Copy(paired, Place(1j * length * (0.16 + 0.24 * pair), 1 - 0.24 * pair + 0j))
            for pair in range(3)
        ),
        Copy(piece, turned(0, 0.7j * length, 0.8)),
    )


def thread(form: Division, size: float) -> Ink:
    """Return a blade of threads: axes only, as often branched as the leaf is divided."""
    twig: Ink = tuple(
        Mark(straight(at, at + cmath.rect(0.09 * size, math.radians(90 + sign * 40))), "fine")
        for at in (0.05j * size, 0.11j * size)
        for sign in (1, -1)
    )
    stages = form.pattern.value.times - 1
    branch: Ink = (Mark(straight(0j, 0.17j * size), "fine"), *twig)
    for _ in range(stages - 1):
        branch = (
            Mark(straight(0j, 0.42j * size), "thin"),
            *(
                Copy(branch, turned(sign * 42, 0.42j * size * at, 1 - 0.5 * at))
                for at in (0.15, 0.38, 0.6, 0.8)
                for sign in (1, -1)
            ),
        )
    return (
        axis(size * 0.98, 1.0),
        *(
            Copy(
                branch,
                turned(sign * 52, 1j * size * (0.06 + 0.8 * pair / 6), 1 - 0.75 * pair / 6),
                "branch",
            )
            for pair in range(6)
            for sign in (1, -1)
        ),
    )
