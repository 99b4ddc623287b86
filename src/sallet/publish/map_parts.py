"""How each kind of part is drawn on the season map: a colour, and a pattern that tells it alone.

All lengths are in `em` of the drawing, and one em is the height of a lane.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final, Literal

from markupsafe import Markup

from sallet.publish.palette import OKABE_ITO

if TYPE_CHECKING:
    from sallet.lesson.model import Timing

Pattern = Literal["solid", "dots", "dashes", "checks", "level", "upright", "grid"]


@dataclass(frozen=True)
class Look:
    """How the bars of a kind of part are filled."""

    key: str
    words: str
    """What it stands for, in the key of the map."""
    colour: str
    """A name of OKABE_ITO."""
    pattern: Pattern


LOOKS: Final = (
    Look("leaves", "leaves, young shoots, buds", "bluish green", "solid"),
    Look("flowers", "flowers", "reddish purple", "dots"),
    Look("fruit", "fruit", "vermillion", "dashes"),
    Look("seeds", "seeds, nuts", "orange", "checks"),
    Look("roots", "roots, bulbs", "blue", "level"),
    Look("stem", "stem, bark, sap", "sky blue", "upright"),
    Look("plant", "whole plant, other parts", "yellow", "grid"),
)
"""Every kind of part; no two share a colour or a pattern."""
OF_ORGAN: Final = {
    "leaves": "leaves", "buds": "leaves", "flowers": "flowers", "fruit": "fruit", "seeds": "seeds",
    "roots": "roots", "stem": "stem", "bark": "stem", "sap": "stem", "whole plant": "plant",
}  # fmt: skip
"""The look of each organ of the vocabulary; what names no organ is drawn as the whole plant."""
OF_PART: Final = {
    "young shoots": "leaves", "shoot tips": "leaves", "seedlings": "leaves", "regrowth": "leaves",
    "growth below ground": "roots", "dead stems": "stem",
    "nuts": "seeds", "milky nuts": "seeds", "nutlets": "seeds", "mast": "seeds",
}  # fmt: skip
"""Parts that a forager takes for another kind of part than the organ they are listed under."""


@dataclass(frozen=True)
class Stroke:
    """A line of marks along a bar, in em of the drawing: a continuous one has no dashes."""

    y: str
    """How far down the bar it runs."""
    thick: float
    dashes: tuple[float, ...] = ()
    """Mark, gap, mark, gap …; a mark of nothing with round ends is a dot."""
    shift: float = 0.0


MARKS: Final[dict[Pattern, tuple[Stroke, ...]]] = {
    "solid": (),
    "dots": (Stroke("28%", 0.24, (0, 0.5), -0.2), Stroke("72%", 0.24, (0, 0.5), -0.45)),
    "dashes": (Stroke("50%", 0.24, (0.7, 0.35)),),
    "checks": (Stroke("25%", 0.42, (0.42, 0.42)), Stroke("75%", 0.42, (0.42, 0.42), 0.42)),
    "level": (Stroke("33%", 0.11), Stroke("67%", 0.11)),
    "upright": (Stroke("50%", 0.84, (0.1, 0.4), -0.2),),
    "grid": (Stroke("50%", 0.84, (0.1, 0.4), -0.2), Stroke("50%", 0.11)),
}
"""The strokes of each pattern, in ink.

They are dashed lines and not tiles: a browser prints tiles as coarse pictures, lines stay sharp.
"""
STRIPES: Final = (
    ("rim", Stroke("50%", 0.84, (1.1, 0.9))),
    ("stripe", Stroke("50%", 0.84, (0.22, 0.22, 0.22, 0.22, 0.22, 0.9))),
)
"""The stripes over what harms, from edge to edge of the bar; between them its part still shows."""


def look_of(timing: Timing) -> Look:
    """Return how a part is drawn."""
    key = OF_PART.get(timing.part) or OF_ORGAN.get(timing.organ, "plant")
    return next(look for look in LOOKS if look.key == key)


def fill_of(look: Look) -> str:
    """Return a look's colour as `#rrggbb`."""
    return OKABE_ITO[look.colour]


def marks(look: Look) -> Markup:
    """Return the marks of a look, for the drawing of one bar."""
    ink = Markup('stroke="{}"').format(OKABE_ITO["black"])
    return Markup("").join(_stroke(ink, stroke) for stroke in MARKS[look.pattern])


def stripes() -> Markup:
    """Return the stripes over what harms; the style sheet gives them ink and paper."""
    return Markup("").join(_stroke(Markup('class="{}"').format(k), s) for k, s in STRIPES)


def _stroke(how: Markup, stroke: Stroke) -> Markup:
    dashes = Markup(' stroke-dasharray="{}" stroke-dashoffset="{}"').format(
        " ".join(map(em, stroke.dashes)), em(stroke.shift)
    )
    round_ends = Markup(' stroke-linecap="round"') if 0 in stroke.dashes else ""
    return Markup('<line {} x1="0" y1="{}" x2="100%" y2="{}" stroke-width="{}"{}{}/>').format(
        how, stroke.y, stroke.y, em(stroke.thick), dashes if stroke.dashes else "", round_ends
    )


def em(length: float) -> str:
    """Return a length as an attribute of the drawing has it."""
    return f"{length:.3f}".rstrip("0").rstrip(".") + "em"
