"""Radial flowers with their petals spread, seen from above."""

from __future__ import annotations

import cmath
import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle
from sallet.drawing.flower.marks import marks_ink, veil
from sallet.drawing.flower.middle import REACH, stamens_ink, styles_ink
from sallet.drawing.flower.petal import BLADES, Blade, Petal, cut, petal, petal_ink
from sallet.drawing.flower.sepals import sepal
from sallet.drawing.flower.words import is_many, number
from sallet.drawing.ink import Copy, Mark, put, turned

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.flower.form import FlowerForm
    from sallet.drawing.ink import Ink, Place


@dataclass(frozen=True)
class Habit:
    """What the shape of the whole flower says of its petals."""

    blade: Blade
    room: float
    """How much of its room between two neighbours a petal may fill."""
    pinch: float = 0.9
    """How wide the foot of a petal is beside its room."""
    sinus: float = 1.0
    """How far out joined petals part beside those of other flowers."""
    told: bool = False
    """Whether the shape says enough to draw the outer end without dots."""


_PLAIN: Final = Blade(1.6, 0.6, 0.3)
HABITS: Final[Mapping[str, Habit]] = {
    "": Habit(_PLAIN, 0.9),
    "star": Habit(Blade(2.7, 0.42, 0.5, (0.4, 0.2, 0.4), "taper"), 0.66, 0.8, 0.9, told=True),
    "cross": Habit(Blade(1.5, 0.72, 0.16, (0.0, 0.5, 0.3), "arc"), 0.86, 0.6, 0.85, told=True),
    "wheel": Habit(Blade(1.1, 0.56, 0.3, (0.6, 0.1, 0.4), "arc"), 1.0, 1.0, 1.15, told=True),
}
"""Flowers seen from above, by their shape."""
SINUS: Final[Mapping[str, float]] = {"base": 0.2, "some": 0.33, "tube": 0.48}
"""How far out joined petals part, beside the width of the flower."""
CROSS: Final = 4
"""How many petals make a cross, by the meaning of the word."""
SHOWING: Final = 0.82
"""How much of their room petals fill where sepals are drawn behind them."""
_FOOT: Final = 0.045
"""Where the petals begin, beside half the flower."""
_FEET: Final = {"no": "shut", "two": "shut", "base": "open", "some": "open", "tube": "open"}


@dataclass(frozen=True)
class Wheel:
    """How the petals of a flower stand, in units."""

    count: int
    radius: float
    inner: float
    """Where the petals begin."""
    one: Petal
    half: float
    """Half of a petal's greatest width."""


def face_ink(form: FlowerForm, size: float) -> Ink:
    """Return a flower `size` units wide, its middle at the origin."""
    if is_naked(form):
        return _sepals_only(form, size)
    wheel = wheel_of(form, size)
    return (*_behind(form, wheel), *_petals(form, wheel), *_middle(form, wheel))


def is_naked(form: FlowerForm) -> bool:
    """Return whether a flower seen from above is drawn by its sepals alone."""
    return form.petals is None and not (form.shape and form.shape.value == "cross")


def wheel_of(form: FlowerForm, size: float) -> Wheel:
    """Return the sizes of the petals from their number, outline and recorded lengths."""
    count = number(form.petals) or CROSS
    habit = HABITS[form.shape.value if form.shape else ""]
    blade = BLADES[form.petal_shape.value] if form.petal_shape else habit.blade
    radius = size / 2
    inner = _FOOT * radius
    joined = form.joined.value if form.joined else ""
    if joined in SINUS:
        inner = SINUS[joined] * radius * habit.sinus
    elif form.petal_length and form.width:
        inner = radius * min(0.5, max(0.03, 1 - 2 * form.petal_length.value / form.width.value))
    length = radius - inner
    room = math.tan(math.pi / max(count, 3)) * (inner + blade.widest * length) * habit.room
    if form.many_petals:
        room *= 2.2
    if form.sepals:
        # What stands behind the petals must show between them.
        room *= SHOWING
    half = min(room, (radius * 0.94) / blade.ratio / 2 * (habit.room if form.petal_shape else 1))
    whole = form.petal_length.value if form.petal_length else None
    if whole is None and form.width:
        whole = form.width.value / 2
    if form.petal_width and whole:
        half = min(form.petal_width.value / whole * radius / 2, radius * 0.9)
    foot = half * blade.foot * (0.5 if joined == "no" else 1.0)
    foot = min(foot, inner * math.tan(math.pi / max(count, 3))) * habit.pinch
    if joined in SINUS:
        foot = inner * math.tan(math.pi / max(count, 3))
        half = max(half, foot * 0.4)
    tip = form.petal_tip.value if form.petal_tip else blade.end or "open"
    if tip in {"split", "half split"} and not form.petal_width:
        half = max(half, room * 0.9)
    return Wheel(count, radius, inner, petal(blade, tip, length, half, foot), half)


def _petals(form: FlowerForm, wheel: Wheel) -> Ink:
    joined = form.joined.value if form.joined else ""
    habit = HABITS[form.shape.value if form.shape else ""]
    dotted = form.petal_tip is None and not (
        BLADES[form.petal_shape.value].end if form.petal_shape else habit.told
    )
    marks = (*marks_ink(form, wheel.one, wheel.half), *veil(form, wheel.one, wheel.half))
    piece = (*petal_ink(wheel.one, foot=_FEET.get(joined, "off"), dotted=dotted), *marks)
    places = [
        turned(
            360 * k / wheel.count,
            cmath.rect(wheel.inner * s, math.tau * k / wheel.count + math.pi / 2),
            s,
        )
        for k, s in enumerate(_sizes(form, wheel.count))
    ]
    disc: Ink = ()
    if joined in SINUS:
        disc = (Mark(circle(0j, wheel.inner / math.cos(math.pi / max(3, wheel.count))), "paper"),)
    throat: Ink = ()
    if joined == "tube":
        throat = (Mark(circle(0j, wheel.radius * 0.13), "thin"),)
    pair: Ink = ()
    if joined == "two":
        low = wheel.count // 2
        first, second = places[low], places[(low + 1) % wheel.count]
        pair = (
            *_pair(wheel.one, first, second, dotted=dotted),
            *put(marks, first),
            *put(marks, second),
        )
        places = [place for place in places if place not in (first, second)]
    return (*disc, *(Copy(piece, place, "petal") for place in places), *pair, *throat)


def _pair(one: Petal, first: Place, second: Place, *, dotted: bool) -> Ink:
    """Return two petals side by side that are grown together in their lower half."""
    inner, far = cut(one.side, JOIN), one.side.mirrored().reversed()
    near = inner.mirrored().reversed().placed(first)
    outer = one.outer
    cleft = near.then(inner.placed(second))
    sides = (one.side.placed(first), cleft, far.placed(second))
    fills = tuple(Mark(one.outline.placed(place), "paper", "petal") for place in (first, second))
    if dotted:
        ends = tuple(Mark(outer.placed(place), "dotted") for place in (first, second))
        return (*fills, *(Mark(side) for side in sides), *ends)
    whole = sides[0].then(outer.placed(first)).then(cleft).then(outer.placed(second)).then(sides[2])
    return (*fills, Mark(whole))


JOIN: Final = 0.5
"""How far out two petals are joined, beside the length of their sides."""


def _sizes(form: FlowerForm, count: int) -> list[float]:
    symmetry = form.symmetry.value if form.symmetry else "radial"
    if symmetry == "nearly":
        return [0.84 if k == count // 2 else 1.0 for k in range(count)]
    return [_UNEQUAL[symmetry](k / count) for k in range(count)]


_UNEQUAL: Final[Mapping[str, Callable[[float], float]]] = {
    "radial": lambda _: 1.0,
    "one": lambda turn: 0.86 - 0.16 * math.cos(math.tau * turn),
    "none": lambda turn: 0.84 - 0.16 * math.cos(math.tau * (turn - 0.17)) * (1 - 0.5 * turn),
}
"""How large a petal is, by how far round the flower it stands from the top."""


def _behind(form: FlowerForm, wheel: Wheel) -> Ink:
    if form.sepals is None:
        return ()
    count = form.sepals.value
    share = form.sepal_length.value if form.sepal_length else 0.92
    length = wheel.radius * share
    shape = form.sepal_shape.value if form.sepal_shape else ""
    half = min(math.tan(math.pi / max(count, 3)) * length * 0.42, length * 0.2)
    piece = sepal(shape, length, half, dotted=form.sepal_length is None)
    offset = 180 / wheel.count
    return tuple(Copy(piece, turned(offset + 360 * k / count), "sepal") for k in range(count))


def _sepals_only(form: FlowerForm, size: float) -> Ink:
    count = form.sepals.value if form.sepals else 0
    shape = form.sepal_shape.value if form.sepal_shape else ""
    half = min(math.tan(math.pi / max(count, 3)) * size * 0.21, size * 0.17)
    piece = sepal(shape, size / 2, half, dotted=False, foot="off")
    sepals = tuple(Copy(piece, turned(360 * k / count), "sepal") for k in range(count))
    return (*sepals, *_stamens_and_styles(form, size / 2, 90 / max(count, 1)))


def _middle(form: FlowerForm, wheel: Wheel) -> Ink:
    return _stamens_and_styles(form, wheel.radius, 90 / wheel.count)


def _stamens_and_styles(form: FlowerForm, radius: float, turn: float) -> Ink:
    stamens: Ink = ()
    if form.stamens:
        reach = REACH[form.stamen_length.value if form.stamen_length else ""] * radius
        crowd = is_many(form.stamens)
        stamens = stamens_ink(form.stamens.value, reach, radius * 0.06, crowd=crowd, turn=turn)
    styles: Ink = ()
    if form.styles:
        stigma = form.stigma.value if form.stigma else ""
        crowd = is_many(form.styles)
        styles = styles_ink(form.styles.value, radius * 0.25, stigma, crowd=crowd)
    return (*stamens, *styles)
