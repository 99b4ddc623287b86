"""A lipped flower seen from the side: a tube that opens in an upper and a lower lip.

The curves are placed for a flower 100 units long that looks to the right; its tube ends in a
throat between three points, from which the lips spring.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle, curved, straight
from sallet.drawing.flower.calyx import Frame, calyx_of
from sallet.drawing.flower.words import number
from sallet.drawing.ink import Curve, Mark, Path

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from sallet.drawing.flower.form import FlowerForm
    from sallet.drawing.ink import Ink, Pen

BACK: Final = 30 + 72j
"""Where the upper lip springs from the tube."""
CHIN: Final = 46 + 46j
"""Where the lower lip springs from the tube."""
THROAT: Final = 58 + 52j
"""Where the two lips meet inside."""
_UP: Final = 0.75 + 0.66j
"""The way in which the tube runs into the upper lip."""


UPPER: Final[Mapping[str, Path]] = {
    "hood": curved(
        BACK, 42 + 83j, 54 + 99j, 74 + 98j, 92 + 97j, 102 + 80j, 100 + 61j,
        96 + 67j, 91 + 70j, 84 + 70j, 70 + 70j, 62 + 60j, THROAT,
    ),
    "hood notch": curved(
        BACK, 42 + 83j, 54 + 99j, 74 + 98j, 92 + 97j, 103 + 82j, 103 + 66j,
        101 + 69j, 98 + 71j, 94 + 72j, 95 + 68j, 94 + 65j, 92 + 62j,
        90 + 68j, 87 + 70j, 82 + 70j, 70 + 70j, 62 + 60j, THROAT,
    ),
    "flat": curved(
        BACK, 40 + 81j, 45 + 92j, 48 + 104j, 51 + 114j, 61 + 115j, 64 + 106j,
        69 + 92j, 64 + 70j, THROAT,
    ),
    "notch": curved(
        BACK, 38 + 79j, 40 + 92j, 45 + 104j, 49 + 112j, 56 + 113j, 59 + 106j,
        64 + 112j, 72 + 111j, 73 + 102j, 74 + 86j, 64 + 68j, THROAT,
    ),
    "none": curved(BACK, 38 + 74j, 52 + 66j, THROAT),
    "": curved(BACK, 42 + 83j, 50 + 104j, 66 + 103j, 82 + 102j, 74 + 72j, THROAT),
}  # fmt: skip
"""Upper lips, from the back of the tube to the throat."""
LOWER: Final[Mapping[str, Path]] = {
    "whole": curved(
        CHIN, 56 + 40j, 60 + 26j, 66 + 14j, 72 + 2j, 88 + 0j, 97 + 10j,
        105 + 20j, 98 + 34j, 86 + 40j, 76 + 45j, 66 + 47j, THROAT,
    ),
    "two": curved(
        CHIN, 56 + 40j, 58 + 26j, 60 + 12j, 61 - 5j, 76 - 10j, 82 + 3j,
        89 - 4j, 104 + 0j, 105 + 15j, 106 + 30j, 80 + 40j, THROAT,
    ),
    "three": curved(
        CHIN, 42 + 36j, 43 + 20j, 54 + 19j, 63 + 18j, 68 + 28j, 67 + 36j,
        70 + 20j, 71 + 4j, 85 + 3j, 99 + 2j, 108 + 14j, 104 + 26j,
        102 + 33j, 96 + 37j, 90 + 38j, 99 + 38j, 104 + 45j, 99 + 51j,
        93 + 57j, 72 + 55j, THROAT,
    ),
    "": curved(
        CHIN, 56 + 40j, 60 + 26j, 66 + 14j, 72 + 2j, 88 + 0j, 97 + 10j,
        105 + 20j, 98 + 34j, 86 + 40j, 76 + 45j, 66 + 47j, THROAT,
    ),
}  # fmt: skip
"""Lower lips, from the chin to the throat."""
_HUMPS: Final = (
    curved(53 + 42j, 53 + 51j, 64 + 51j, 64 + 42j), curved(65 + 44j, 65 + 52j, 75 + 52j, 75 + 43j),
)  # fmt: skip
_TEETH: Final = (
    curved(47 + 47j, 46 + 42j, 44 + 36j, 45 + 31j, 49 + 35j, 53 + 40j, 55 + 43j),
    curved(66 + 49j, 70 + 53j, 75 + 57j, 80 + 59j, 79 + 54j, 77 + 50j, 74 + 46j),
)
_SPOTS: Final = (72 + 28j, 80 + 32j, 78 + 22j, 87 + 24j, 84 + 14j, 75 + 15j, 92 + 16j, 88 + 33j)
_REACH: Final[Mapping[str, float]] = {"": 68.0, "short": 40.0, "long": 104.0}
_BEND: Final[Mapping[str, float]] = {"": 0.08, "straight": 0.0, "curved": 0.26}
_SPUR: Final[Mapping[str, tuple[float, float, float]]] = {
    "some": (30, 5, 0.0), "long": (56, 3.4, 0.05), "short": (22, 8, 0.05), "curved": (40, 4.6, 0.4),
    "straight": (44, 4.6, 0.0), "bulge": (9, 9, 0.0),
}  # fmt: skip
"""How long a spur is, half how thick, and how far it is bent."""


@dataclass(frozen=True)
class Tube:
    """The tube of a lipped flower, from its foot to the throat."""

    foot: complex
    axis: complex
    """The way in which it runs, of length one."""
    reach: float
    bend: float
    swollen: bool
    spurred: bool
    """Whether a spur runs on from its foot."""


def lipped(form: FlowerForm) -> Ink:
    """Return a lipped flower 100 units long that looks to the right."""
    names = form.tube.value if form.tube else ()
    reach = next((_REACH[name] for name in names if name in _REACH), _REACH[""])
    bend = next((_BEND[name] for name in names if name in _BEND), _BEND[""])
    middle = (BACK + CHIN) / 2
    axis = (0.62 + 0.78j) / abs(0.62 + 0.78j)
    tube = Tube(middle - axis * reach, axis, reach, bend, "swollen" in names, form.spur is not None)
    bowed = axis * (1 + 1j * bend * 1.6)
    frame = Frame(tube.foot, bowed / abs(bowed), 100.0)
    calyx = calyx_of(form, frame, ((0.05, 0.0), (0.06, 0.12), (0.09, 0.3)))
    return (
        *calyx.behind,
        *_upper(form),
        *_lower(form),
        *_tube(tube),
        *_spur(form, tube),
        *_stamens(form),
        *calyx.before,
    )


def _tube(tube: Tube) -> Ink:
    axis, reach = tube.axis, tube.reach
    out = axis * 1j * reach * tube.bend
    swell = axis * -0.2j * reach if tube.swollen else 0j
    third = axis * reach / 3
    high, low = tube.foot + axis * 5j, tube.foot - axis * 5j
    chin = Curve(CHIN - third * 0.9 + out * 0.6 + swell, low + third * 1.1 + out + swell, low)
    end = Curve(low - axis * 5, high - axis * 5, high)
    back = Curve(high + third * 1.2 + out, BACK - _UP * reach * 0.3 + out * 0.4, BACK)
    path = Path(CHIN, (chin, end, back))
    fill = Mark(path.then(straight(BACK, THROAT, CHIN)).shut(), "paper")
    if tube.spurred:
        return (fill, Mark(Path(CHIN, (chin,))), Mark(Path(high, (back,))))
    return (fill, Mark(path))


def _upper(form: FlowerForm) -> Ink:
    key = " ".join(form.upper_lip.value) if form.upper_lip else ""
    pen: Pen = "line" if key else "dotted"
    return (Mark(UPPER[key].shut(), "paper"), Mark(UPPER[key], pen, "upper"))


def _lower(form: FlowerForm) -> Ink:
    lip: Sequence[str] = form.lower_lip.value if form.lower_lip else ()
    key = next((name for name in lip if name in LOWER), "")
    pen: Pen = "line" if key else "dotted"
    return (
        *(Mark(tooth.shut()) for tooth in _TEETH if "teeth" in lip),
        Mark(LOWER[key].shut(), "paper"),
        Mark(LOWER[key], pen, "lower"),
        *(Mark(hump, "thin") for hump in _HUMPS if "humps" in lip),
        *(Mark(straight(p, p)) for p in _SPOTS if "spots" in lip),
    )


def _spur(form: FlowerForm, tube: Tube) -> Ink:
    if form.spur is None:
        return ()
    length, half, bend = _SPUR[form.spur.value[0]]
    foot, way = tube.foot, -tube.axis
    side = way * 1j
    start, sag = foot - way * 4, side * length * bend * 0.2
    end = foot + way * length + side * length * bend
    path = Path(
        start + side * 5,
        (
            Curve(foot + side * half + way * length * 0.4 - sag, end + side * half - way * length * 0.3, end + side * half * 0.8),
            Curve(end + (side + way) * half, end + (way - side) * half, end - side * half * 0.8),
            Curve(end - side * half - way * length * 0.3, foot - side * half + way * length * 0.4 - sag, start - side * 5),
        ),
    )  # fmt: skip
    return (Mark(path.shut(), "paper"), Mark(path, part="spur"))


def _stamens(form: FlowerForm) -> Ink:
    count = number(form.stamens)
    marks: list[Mark] = []
    for k in range(count):
        share = (k + 0.5) / count - 0.5
        end = THROAT + 58 + (2 + share * 26) * 1j
        begin = THROAT + share * 6j
        line = Path(begin, (Curve(begin + 24 + 8j, end - 20 + 6j, end),))
        marks += (Mark(line, "thin", "stamen"), Mark(circle(end, 2.2), "thin"))
    return tuple(marks)
