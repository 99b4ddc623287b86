"""A flower cluster in plain numbers, as those who draw it ask for it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from sallet.drawing.inflorescence.bracts import SHAPES, Run, bract
from sallet.drawing.inflorescence.space import Piece, direction

if TYPE_CHECKING:
    from sallet.drawing.inflorescence.form import InflorescenceForm
    from sallet.drawing.inflorescence.space import Eye, Vec
    from sallet.drawing.inflorescence.whorls import Whorl
    from sallet.drawing.told import Shown


@dataclass(frozen=True)
class Cluster:
    """What is recorded of a cluster. None and empty words: not recorded."""

    plan: str
    flowers: int | None
    rays: int | None
    branches: int | None
    outline: str
    order: str
    face: str
    bracts: Whorl | None
    bract_number: int | None
    bracteoles: Whorl | None
    bracteole_number: int | None
    spathe: str
    bulbils: int
    heads: int | None
    steep: float | None = None
    """The length of the rays divided by the width of the umbel."""


def cluster(form: InflorescenceForm) -> Cluster:
    """Return a form without where its values come from."""

    def word(shown: Shown[str] | None) -> str:
        return shown.value if shown else ""

    def number(shown: Shown[int] | None) -> int | None:
        return shown.value if shown else None

    return Cluster(
        plan=form.plan.value,
        flowers=number(form.flowers),
        rays=number(form.rays),
        branches=number(form.branches),
        outline=word(form.outline),
        order=word(form.order),
        face=word(form.face),
        bracts=form.bracts.value if form.bracts else None,
        bract_number=number(form.bract_number),
        bracteoles=form.bracteoles.value if form.bracteoles else None,
        bracteole_number=number(form.bracteole_number),
        spathe=word(form.spathe),
        bulbils=number(form.bulbils) or 0,
        heads=number(form.heads),
        steep=form.steep.value if form.steep else None,
    )


def lone_bract(eye: Eye, whorl: Whorl, foot: Vec, way: Vec, length: float) -> Piece:
    """Return the bract at the foot of one flower of a spire, on the side of its stalk."""
    polar = {"down": (95, 165), "level": (80, 95), "up": (40, 12)}.get(whorl.kind.posture, (72, 58))
    azimuth = way.azimuth
    length *= SHAPES[whorl.kind.form].length
    bend = foot + direction(azimuth, polar[0]) * (length * 0.45)
    tip = bend + direction(azimuth, polar[1]) * (length * 0.6)
    run = Run(eye.at(foot), eye.at(bend), eye.at(tip))
    return Piece(eye.depth(tip), bract(whorl.kind, run, length, "bract"))
