"""How a stem or a whole plant grows, as a few lines with the ground below: posture, branching."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import smooth, straight
from sallet.drawing.ink import Copy, Curve, Mark, Path, Place, box, put, turned
from sallet.drawing.sketch import Sketch
from sallet.drawing.stem.growth_branches import BRANCHES, branches, forked
from sallet.drawing.stem.growth_lines import (
    UNTOLD,
    WAYS,
    Way,
    ground_ink,
    mirrored,
    roots_along,
    soil,
    stem_walk,
    support_behind,
    tendrils_along,
)  # fmt: skip
from sallet.drawing.stem.winding import WINDS, loops
from sallet.drawing.told import characters

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.curves import Walk
    from sallet.drawing.ink import Ink, Pen
    from sallet.drawing.told import Shown, Told


@dataclass(frozen=True)
class GrowthForm:
    """What is shown of how a stem or a plant grows."""

    posture: Shown[Way] | None
    """None: the ground is dotted, and the stem goes straight up."""
    branching: Shown[str] | None
    stems: Shown[str] | None
    """How many rise from the ground: a key of STEMS, or `0`."""
    roots: Shown[str] | None
    """`nodes`, `all`, `tips`: where a stem of a recorded posture roots."""
    runners: Shown[str] | None
    """`short`, `long`."""
    winds: Shown[int] | None


STEMS: Final[Mapping[str, tuple[float, ...]]] = {
    "1": (0.0,),
    "3": (-13.0, 1.0, 15.0),
    "8": (-42.0, -33.0, -25.0, -18.0, -11.0, -5.0, 0.0, 6.0, 12.0, 19.0, 27.0, 35.0, 44.0),
}
"""Degrees by which stems from one foot lean, by the hint `stems`."""
_ROOTING: Final = {"at the nodes": "nodes", "all along": "all", "at the tips": "tips"}
_RUNNERS: Final = frozenset({"short", "long"})
_TIPPED: Final = frozenset({"arching", "weak", "rising", "lying", "scrambling"})
_LOW: Final = frozenset({"lying", "rising", "weak", "floating"})
"""Postures of stems that can root along the ground; `creeping` says it itself."""
_TWINE: Final = WAYS["twining"]
_FEW: Final = 3
_BESIDE: Final = 0.7


def growth_form(told: Told) -> GrowthForm | None:
    """Return the form of how something grows; None where nothing of it is recorded."""
    stems = told.hint("stems from the base", "stems")
    if stems and stems.value == "0":
        return GrowthForm(None, None, stems, None, None, None)
    posture = told.pick("posture", WAYS)
    branching = told.hint("branching", "branches")
    if branching and branching.value not in BRANCHES:
        branching = None
    runners = told.hint("runners", "runners")
    form = GrowthForm(
        posture=posture,
        branching=branching,
        stems=_told_stems(stems, posture, branching),
        roots=_roots(told, posture),
        runners=runners if runners and runners.value in _RUNNERS else None,
        winds=told.pick("twining direction", WINDS)
        if posture and posture.value is _TWINE
        else None,
    )
    if not (form.posture or form.branching or form.stems or form.runners):
        return None
    return form


def growth_ink(form: GrowthForm, size: float) -> Ink:
    """Return the lines, about `size` units high or long, the foot of the stem at the origin.

    Stems that do not stand are drawn alone, and how many there are and how they divide beside
    them: on a stem that lies nobody could tell branches from the ground.
    """
    if form.stems and form.stems.value == "0":
        return (*soil(-0.5 * size, 0.5 * size, size), *_tuft(size))
    divided = form.branching is not None or form.stems is not None
    stands = form.posture is None or form.posture.value is UNTOLD
    if divided and stands:
        return _scheme(form, size, told=form.posture is not None)
    posture = _posture(form, size)
    if not divided:
        return posture
    room = Place(complex(box(posture).right + 0.5 * size, 0))
    return (*posture, *put(_scheme(form, _BESIDE * size, told=False, runners=False), room))


def growth(told: Told, size: float) -> Sketch | None:
    """Return how a stem or a whole plant grows; `size` is its height or length in units."""
    form = growth_form(told)
    if form is None:
        return None
    wanted = ("posture", "branching", "stems from the base")
    known = {label for label in wanted if told.subject.label(label)}
    return Sketch(
        title="how it grows",
        ink=growth_ink(form, size),
        shows=characters(form),
        wants=tuple(x for x in wanted if x in known and x not in told.items),
    )


def _divided(kind: str, size: float, share: float) -> Ink:
    """Return one upright stem with its branches, `share` units for the lowest of them."""
    line = stem_walk(UNTOLD, size)
    if kind == "fork":
        return tuple(Mark(straight(*points), "line") for points in forked(line, size))
    stem = Mark(straight(line.points[0], line.points[-1]), "line")
    if kind in {"", "none"}:
        return (stem, _bud(line, size)) if kind else (stem,)
    grown = branches(kind, line, share)
    return (stem, *(Mark(straight(*points), "thin", "branch") for points in grown))


def _told_stems(
    stems: Shown[str] | None, posture: Shown[Way] | None, branching: Shown[str] | None
) -> Shown[str] | None:
    if stems is None or stems.value not in STEMS:
        return None
    # One stem is drawn anyhow where it stands or divides.
    drawn = branching is not None or (posture is not None and posture.value is UNTOLD)
    return None if drawn and stems.value == "1" else stems


def _roots(told: Told, posture: Shown[Way] | None) -> Shown[str] | None:
    roots = told.pick("rooting", _ROOTING)
    if roots is None or posture is None:
        return None
    name = posture.character.drawn
    if name not in (_TIPPED if roots.value == "tips" else _LOW):
        return None
    return roots


def _posture(form: GrowthForm, size: float) -> Ink:
    way = form.posture.value if form.posture else UNTOLD
    line = stem_walk(way, size)
    stems = [line, mirrored(line)] if way.mirrored else [line]
    ink: list[Mark | Copy] = []
    if way is _TWINE:
        ink += loops(size, form.winds.value if form.winds else None)
    else:
        # Where only runners are recorded, the stem they come from is dotted.
        pen: Pen = "line" if form.posture else "dotted"
        ink += (Mark(straight(*stem.points), pen, "stem") for stem in stems)
    if way.tendrils:
        ink += tendrils_along(line, size)
    rooting = form.roots.value if form.roots else ""
    if way.roots or rooting == "nodes":
        ink += roots_along(line, size, aside=way.support == "face")
    if rooting == "all":
        ink += roots_along(line, size, aside=False, count=19)
    if rooting == "tips":
        ink += _rooted_tip(line, size)
    reach = [p.real for stem in stems for p in stem.points]
    left, right = min([*reach, -0.3 * size]), max([*reach, 0.3 * size])
    if form.runners:
        ink += _runners(form.runners.value, size)
        left, right = min(left, -0.75 * size), max(right, 0.75 * size)
    edge = 0.06 * size
    ground = ground_ink(way, size, left - edge, right + edge)
    return (*support_behind(way, size), *ground, *ink)


def _scheme(form: GrowthForm, size: float, *, told: bool, runners: bool = True) -> Ink:
    """Return how many stems rise and how they divide; the ground is dotted if `told` is not."""
    leans = STEMS[form.stems.value] if form.stems else (0.0,)
    kind = form.branching.value if form.branching else ""
    many = len(leans) > 1
    share = (0.3 if len(leans) > _FEW else 0.5) * size if many else size
    piece = _divided(kind, size, share)
    ink: list[Mark | Copy] = [
        Copy(piece, turned(lean, scale=1 - 0.003 * abs(lean)), "stem") for lean in leans
    ]
    reach = (0.62 if many else 0.36) * size
    drawn = form.runners if runners else None
    if drawn:
        ink += _runners(drawn.value, size)
        reach = 0.81 * size
    if told:
        return (*soil(-reach, reach, size), *ink)
    ground = straight(complex(-reach, 0), complex(reach, 0))
    return (Mark(ground, "dotted", "ground"), *ink)


def _bud(line: Walk, size: float) -> Mark:
    """Return the one tip of a stem that does not divide."""
    tip, way = line.points[-1], line.heading(line.length)
    long, side = way * 0.085 * size, way * 0.022j * size
    return Mark(
        Path(
            tip - long * 0.2,
            (
                Curve(tip + side * 1.6, tip + long * 0.5 + side, tip + long),
                Curve(tip + long * 0.5 - side, tip - side * 1.6, tip - long * 0.2),
            ),
            closed=True,
        ),
        "line",
        "tip",
    )


def _rooted_tip(line: Walk, size: float) -> Ink:
    """Return the tip gone on down into the soil, with roots."""
    tip, way = line.points[-1], line.heading(line.length)
    down = complex(tip.real + 0.1 * size * (1 if way.real >= 0 else -1), 0)
    bend = tip + way * max(tip.imag * 0.5, 0.03 * size)
    marks = [
        Mark(Path(tip, (Curve(bend, down + 0.12j * size, down - 0.02j * size),)), "line", "stem")
    ]
    for fork in (-2, -1, 0, 1, 2):
        end = down + complex(0.035 * fork, -0.15 + 0.02 * abs(fork)) * size
        marks.append(
            Mark(smooth([down, (down + end) / 2 + 0.01 * size * fork, end]), "thin", "root")
        )
    return tuple(marks)


def _runners(kind: str, size: float) -> Ink:
    """Return stems along the ground on both sides: long ones root and bear a young plant."""
    long = 0.7 if kind == "long" else 0.34
    ink: list[Mark | Copy] = []
    for side in (-1, 1):
        end = complex(side * long * size, 0.012 * size)
        foot = complex(0, 0.015 * size)
        rise = complex(0, 0.1 * size)
        ink.append(
            Mark(Path(foot, (Curve(foot + (end - foot) * 0.3 + rise, end - (end - foot) * 0.3 + rise, end),)), "line", "runner")
        )  # fmt: skip
        if kind == "long":
            for fork in (-1, 0, 1):
                tip = end + complex(0.035 * fork, -0.13) * size
                ink.append(
                    Mark(smooth([end, (end + tip) / 2 + 0.008 * size * fork, tip]), "thin", "root")
                )
        ink += put(_leaves(0.13 * size), Place(end))
    return tuple(ink)


def _leaves(size: float) -> Ink:
    return tuple(Mark(_leaf(size, lean).path, "dotted") for lean in (-42, -8, 34))


def _leaf(size: float, lean: float) -> Mark:
    side = 0.13 * size
    path = Path(
        0j,
        (
            Curve(complex(side, 0.35 * size), complex(side, 0.75 * size), 1j * size),
            Curve(complex(-side, 0.75 * size), complex(-side, 0.35 * size), 0j),
        ),
        closed=True,
    )
    return Mark(path.placed(turned(lean)), "thin", "leaf")


def _tuft(size: float) -> Ink:
    """Return leaves and a flower stalk straight out of the ground."""
    ink: list[Mark | Copy] = []
    for x, lean, tall in ((-0.1, 38, 0.5), (0.1, -40, 0.5), (-0.05, 18, 0.62), (0.06, -17, 0.6)):
        ink += put((_leaf(tall * size, lean),), Place(complex(x * size * 0.6, 0)))
    stalk = straight(complex(0, -0.01 * size), complex(0, 0.85 * size))
    return (*ink, Mark(stalk, "line", "stalk"))
