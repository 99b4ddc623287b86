"""Two-sided flowers seen from the side: pea, hooded and violet flowers, by hand-placed curves.

The curves are placed for a flower 100 units long that looks to the right, its foot near the
origin; a violet is 100 units wide, turned a little to the right, its throat at the origin.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import curved, ellipse, smooth, straight
from sallet.drawing.flower.calyx import Frame, calyx_of
from sallet.drawing.flower.lips import lipped
from sallet.drawing.flower.petal import Blade, petal
from sallet.drawing.ink import Mark, Path, put, turned

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.flower.form import FlowerForm
    from sallet.drawing.ink import Ink, Pen

LENGTH: Final = 100.0
"""How long the flower is for which the curves are placed."""


def side_ink(form: FlowerForm, size: float) -> Ink:
    """Return a two-sided flower, `size` units long (a violet: wide)."""
    return put(_DRAWN[form.plan](form), turned(0, scale=size / LENGTH))


STANDARD: Final = curved(
    24 - 2j, 20 + 10j, 2 + 24j, -2 + 46j, -5 + 64j, 6 + 80j, 22 + 83j,
    30 + 84.5j, 35 + 83j, 38 + 79j, 42 + 84j, 50 + 84.5j, 56 + 82j,
    71 + 77j, 77 + 60j, 71 + 42j, 66 + 26j, 50 + 14j, 42 + 2j,
).shut()  # fmt: skip
CREASE: Final = curved(38 + 79j, 37 + 60j, 38 + 36j, 33 + 12j)
VEINS: Final = (
    curved(29 + 14j, 26 + 30j, 12 + 42j, 12 + 62j), curved(31 + 14j, 32 + 36j, 24 + 50j, 25 + 70j),
    curved(36 + 14j, 44 + 36j, 51 + 50j, 51 + 70j), curved(38 + 14j, 48 + 28j, 62 + 42j, 63 + 60j),
)  # fmt: skip
FAR_WING: Final = curved(
    32 + 4j, 44 + 24j, 68 + 33j, 87 + 25j, 99 + 19j, 104 + 7j, 97 - 4j, 80 - 12j, 50 - 8j, 32 + 4j
).shut()
KEEL: Final = curved(
    27 - 2j, 36 - 18j, 52 - 32j, 70 - 34j, 86 - 35j, 98 - 26j, 99 - 11j,
    98 - 7j, 94 - 5j, 90 - 6j, 70 - 2j, 48 + 2j, 27 - 2j,
).shut()  # fmt: skip
NEAR_WING: Final = curved(
    25 + 0j, 36 + 13j, 57 + 20j, 76 + 14j, 90 + 9j, 97 - 2j, 92 - 11j,
    86 - 21j, 66 - 23j, 52 - 16j, 42 - 11j, 34 - 4j, 25 + 0j,
).shut()  # fmt: skip
_PEA_WALL: Final = ((0.06, 0.0), (0.095, 0.1), (0.1, 0.34))


def _pea(form: FlowerForm) -> Ink:
    marks = form.marks.value if form.marks else ()
    calyx = calyx_of(form, Frame(9 + 0j, 1 + 0.06j, LENGTH), _PEA_WALL)
    return (
        *calyx.behind,
        Mark(STANDARD, part="petal"),
        Mark(CREASE, "fine"),
        *(Mark(vein, "fine") for vein in VEINS if "veins" in marks),
        *((Mark(ellipse(33 + 40j, 5, 9), "solid"),) if "blotch" in marks else ()),
        Mark(FAR_WING, part="petal"),
        Mark(KEEL, part="petal"),
        Mark(NEAR_WING, part="petal"),
        *calyx.before,
    )


HOOD: Final = curved(
    14 + 32j, 2 + 54j, 6 + 94j, 40 + 98j, 66 + 101j, 78 + 74j, 84 + 60j,
    88 + 52j, 94 + 47j, 100 + 43j, 88 + 39j, 76 + 43j, 66 + 42j,
    52 + 41j, 46 + 32j, 38 + 24j, 30 + 20j, 20 + 22j, 14 + 32j,
).shut()  # fmt: skip
HOOD_SIDE: Final = curved(30 + 26j, 40 + 50j, 80 + 52j, 84 + 26j, 86 + 4j, 46 - 6j, 30 + 26j).shut()
HOOD_LOW: Final = curved(40 + 12j, 42 - 6j, 62 - 24j, 74 - 20j, 82 - 16j, 72 + 4j, 58 + 8j).shut()


def _hooded(_form: FlowerForm) -> Ink:
    # Of what stands below the hood nothing is said by the word.
    return (
        Mark(HOOD_LOW, "dotted"), Mark(HOOD_SIDE, "paper"), Mark(HOOD_SIDE, "dotted"),
        Mark(HOOD, part="hood"),
    )  # fmt: skip


_OVAL: Final = Blade(1.3, 0.6, 0.0, (0.3, 0.1, 0.4))
_LOWEST: Final = Blade(1.1, 0.64, 0.0, (0.5, 0.16, 0.4))
_VIOLET: Final = (
    (petal(_OVAL, "round", 53, 17), 25, -1 + 2j), (petal(_OVAL, "round", 53, 17), -20, 1 + 2j),
    (petal(_LOWEST, "notch", 56, 26), 180, 0 - 1j), (petal(_OVAL, "round", 52, 15), 113, -1 + 0j),
    (petal(_OVAL, "round", 52, 15), -110, 1 + 0j),
)  # fmt: skip
"""The two upper petals, the lowest, and the two at the sides: how each is turned, and its foot."""
SPUR: Final[Mapping[str, Path]] = {
    "": smooth((12j, -24 + 20j, -46 + 23j, -57 + 17j, -50 + 9j, -28 + 4j, -4j)),
    "some": smooth((12j, -24 + 20j, -46 + 23j, -57 + 17j, -50 + 9j, -28 + 4j, -4j)),
    "long": smooth((8j, -26 + 19j, -58 + 24j, -76 + 23j, -74 + 16j, -44 + 11j, -4j)),
    "short": smooth((14j, -20 + 24j, -44 + 28j, -58 + 18j, -50 + 6j, -28 + 2j, -4j)),
    "curved": smooth((12j, -26 + 16j, -46 + 22j, -56 + 38j, -64 + 34j, -58 + 12j, -28 + 2j, -4j)),
    "straight": smooth((12j, -26 + 18j, -58 + 22j, -66 + 15j, -58 + 9j, -26 + 4j, -4j)),
    "bulge": smooth((14j, -18 + 22j, -38 + 22j, -46 + 14j, -38 + 5j, -4j)),
}
"""The spur behind a violet."""


def _violet(form: FlowerForm) -> Ink:
    spur = form.spur.value[0] if form.spur else ""
    pen: Pen = "line" if spur else "dotted"
    petals = [
        Mark(one.outline.placed(turned(degrees, foot)).mapped(_half_turned), part="petal")
        for one, degrees, foot in _VIOLET
    ]
    return (
        Mark(SPUR[spur].shut(), "paper"), Mark(SPUR[spur], pen, "spur"),
        *petals[:3], *_violet_marks(form), *petals[3:],
    )  # fmt: skip


def _half_turned(point: complex) -> complex:
    # What lies to the left of the throat is seen shorter.
    return complex(point.real * (0.86 if point.real < 0 else 1.0), point.imag)


_LINES: Final = tuple(
    curved(x * 0.2 - 10j, x * 0.3 - 20j, x - 24j, x - (37 - abs(x) * 0.4) * 1j)
    for x in (-14, -7, 0, 7, 14)
)
_DOTS: Final = (-8 - 28j, 8 - 28j, 0 - 34j, -5 - 20j, 5 - 20j, 0 - 25j, -13 - 34j, 13 - 34j)
_EYES: Final[Mapping[str, tuple[Mark, ...]]] = {
    "pale": (Mark(curved(-11 - 14j, -7 - 19j, 7 - 19j, 11 - 14j), "thin"),),
    "yellow": (
        Mark(curved(-11 - 14j, -7 - 19j, 7 - 19j, 11 - 14j), "thin"),
        Mark(curved(-8 - 10j, -5 - 14j, 5 - 14j, 8 - 10j), "thin"),
    ),
    "dark": (Mark(ellipse(-12j, 6, 6), "solid"),),
    "blotch": (Mark(ellipse(-24j, 9, 8), "solid"),),
    "veins": tuple(Mark(line, "fine") for line in _LINES),
    "spots": tuple(Mark(straight(p, p)) for p in _DOTS),
}


def _violet_marks(form: FlowerForm) -> Ink:
    return tuple(m for name in (form.marks.value if form.marks else ()) for m in _EYES[name])


_DRAWN: Final = {"pea": _pea, "lipped": lipped, "hooded": _hooded, "violet": _violet}
