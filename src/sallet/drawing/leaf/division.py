"""From what is told of a divided leaf to its form."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Final

from sallet.drawing.leaf.blade_form import LEAFLET, BladeForm, blade_form
from sallet.drawing.leaf.counts import fitting
from sallet.drawing.told import MANY, Shown, value_of
from sallet.lesson.value import Count

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.told import Told


@dataclass(frozen=True, slots=True)
class Pattern:
    """How a leaf is divided."""

    kind: str
    """feather, palm, foot, threes or thread."""
    fixed: int = 0
    """Number of leaflets where the word says it."""
    times: int = 1
    end: str = ""
    """Of a feather: leaflet, none, tendril, or nothing where it is not recorded."""
    fine: bool = False
    """Into very small and very many segments."""
    mixed: bool = False
    """Small leaflets between the large ones."""


PATTERNS: Final[Mapping[str, Pattern]] = {
    "trifoliate": Pattern("palm", 3),
    "twice in threes": Pattern("threes", 9, 2),
    "thrice in threes": Pattern("threes", 27, 3),
    "once pinnate": Pattern("feather"),
    "pinnate with an end leaflet": Pattern("feather", end="leaflet"),
    "pinnate without an end leaflet": Pattern("feather", end="none"),
    "pinnate with a tendril": Pattern("feather", end="tendril"),
    "large and small leaflets mixed": Pattern("feather", mixed=True),
    "twice pinnate": Pattern("feather", times=2, end="leaflet"),
    "thrice pinnate": Pattern("feather", times=3, end="leaflet"),
    "four times pinnate": Pattern("feather", times=4, end="leaflet"),
    "ferny": Pattern("feather", times=3, end="leaflet", fine=True),
    "thread-like segments": Pattern("thread", times=3),
    "palmate": Pattern("palm"),
    "foot-like": Pattern("foot"),
}
"""The patterns by the states of `division`."""
LONGEST: Final = 0.46
"""A leaflet is never longer than so much of its leaf, or it would cover its neighbours."""
_OUTLINES: Final[Mapping[str, float]] = {
    "triangular": 0.0, "ovate": 0.28, "widely ovate": 0.26, "lanceolate": 0.33,
    "broadly lanceolate": 0.3, "elliptic": 0.5, "oblong": 0.55, "obovate": 0.68,
    "oblanceolate": 0.7, "diamond-shaped": 0.45, "narrowly elliptic": 0.48,
}  # fmt: skip
"""Where a divided blade is widest, by the states of `shape`."""
_END: Final = "terminal"
_FEW: Final = 2
"""A leaf divided oftener than this has segments too small to show their edges and ends."""
_MOST_FEATHER, _MOST_PALM, _MOST_FOOT = 45, 9, 11


@dataclass(frozen=True)
class Division:
    """Everything that the drawing of a divided blade shows."""

    pattern: Shown[Pattern]
    leaflet: BladeForm | None
    """None where the shape of the leaflets is not recorded: they are dotted."""
    end_only: bool = False
    """Whether the shape is recorded of the end leaflet alone: the others are dotted."""
    number: Shown[int] | None = None
    """Of leaflets on the whole leaf, the end leaflet too; a feather's without an end is even."""
    outline: Shown[float] | None = None
    """Where the whole blade is widest, 0 at the foot and 1 at the tip."""
    sizes: Shown[str] | None = None
    stalks: Shown[str] | None = None
    length: Shown[float] | None = None
    """Of the whole blade, in millimetres."""

    @property
    def millimetres(self) -> float | None:
        """Return the length of the whole blade in life."""
        return self.length.value if self.length else None

    @property
    def ratio(self) -> float:
        """Return the length of a leaflet divided by its width; of a dotted one about two."""
        return self.leaflet.ratio if self.leaflet else 2.1

    @property
    def share(self) -> float | None:
        """Return the length of a leaflet in lengths of the leaf; None where it is not recorded.

        Nor where leaflets so long would hide one another.
        """
        leaflet = self.leaflet.length if self.leaflet else None
        if leaflet is None or self.length is None:
            return None
        share = leaflet.value / self.length.value
        return share if share < LONGEST else None


def division(told: Told) -> Division | None:
    """Return how a leaf is divided; None where it is simple or nothing is recorded."""
    pattern = told.pick("division", PATTERNS)
    if pattern is None:
        return None
    once = pattern.value.times == 1
    shapes = told.items.get(LEAFLET.shape, ())
    form = Division(
        pattern=pattern,
        leaflet=None if pattern.value.kind == "thread" else blade_form(told, LEAFLET),
        end_only=bool(shapes) and all(item.where == {_END} for item in shapes),
        length=told.length("length"),
    )
    if pattern.value.kind == "feather":
        form = _with_pairs(form, told) if once else replace(
            form, outline=told.pick("shape", _OUTLINES)
        )  # fmt: skip
    elif not pattern.value.fixed and pattern.value.kind != "thread":
        number = fitting(told, "leaflets", _ABLE[pattern.value.kind])
        form = replace(form, number=number)
    if once and pattern.value.kind in {"feather", "palm"}:
        stalks = told.hint("leaflet stalk", "stalk")
        joined = stalks is not None and stalks.value == "joined"
        form = replace(form, stalks=None if joined and pattern.value.kind == "palm" else stalks)
    return replace(form, leaflet=_seen(form))


_ABLE: Final[Mapping[str, Callable[[int], bool]]] = {
    "palm": lambda number: 1 < number <= _MOST_PALM,
    "foot": lambda number: number % 2 == 1 and 3 <= number <= _MOST_FOOT,  # noqa: PLR2004
    "leaflet": lambda number: number >= MANY or (number % 2 == 1 and number > 1),
    "none": lambda number: number >= MANY or (number % 2 == 0 and number > 0),
    "tendril": lambda number: number >= MANY or (number % 2 == 0 and number > 0),
}
"""Numbers of leaflets that can be drawn, by pattern or by a feather's end."""


def _end_by_number(told: Told) -> str:
    """Return how a feather ends whose number of leaflets is odd, or even; of `5–8` nobody knows."""
    value = value_of(told, "leaflets")
    if not isinstance(value, Count) or value.high is None or (value.low + value.high) % 2:
        return ""
    return "leaflet" if value.low % 2 else "none"


def _with_pairs(form: Division, told: Told) -> Division:
    """Return a feather with its number of leaflets, its end and their sizes."""
    pattern = form.pattern.value
    end = pattern.end or _end_by_number(told)
    number = fitting(told, "leaflets", _ABLE[end or "none"])
    if number and end:
        pattern = replace(pattern, end=end)
    if number is None:
        pairs = told.count("pairs of leaflets")
        number = pairs.as_(2 * pairs.value + (pattern.end == "leaflet")) if pairs else None
    if number and number.value > _MOST_FEATHER:
        crowded = number.character.drawn == "many"
        number = number.as_(MANY + (pattern.end == "leaflet")) if crowded else None
    sizes = told.hint("leaflet size", "sizes")
    if sizes and sizes.value == "mixed" and pattern.mixed:
        sizes = None
    return replace(form, pattern=form.pattern.as_(pattern), number=number, sizes=sizes)


def _seen(form: Division) -> BladeForm | None:
    """Return what can be seen of a leaflet."""
    leaflet = form.leaflet
    if leaflet is None:
        return None
    if form.pattern.value.kind == "feather" and form.pattern.value.times > _FEW:
        leaflet = replace(leaflet, margin=None, fringe=None, tip=None, base=None)
    if leaflet.length and leaflet.width:
        return leaflet
    once = form.pattern.value.kind == "feather" and form.pattern.value.times == 1
    used = once and form.share is not None
    return replace(leaflet, width=None, length=leaflet.length if used else None)
