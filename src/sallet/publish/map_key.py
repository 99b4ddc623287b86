"""The key of the season map: each pattern and each line with its meaning in words."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from markupsafe import Markup

from sallet.publish.map_bars import doubt_bar, full_bar, soft_bar, thin_bar
from sallet.publish.map_lanes import lanes_of
from sallet.publish.map_parts import LOOKS
from sallet.season.strip import NOT_SURE

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.publish.map_parts import Look
    from sallet.season.here import PlantYear

_MIDDLE: Final = (120, 245)
_ENDS: Final = ((50, 119), (246, 315))
"""The days of the year that the bars fill in the swatch of the uncertain ends."""
_WHOLE: Final = (1, 365)


def looks_in(years: Sequence[PlantYear]) -> tuple[Look, ...]:
    """Return the looks whose colours and patterns a map shows, in the order of the key."""
    drawn = {
        lane.look.key for year in years for lane in lanes_of(year) if lane.rows[-1].kind != "seen"
    }
    return tuple(look for look in LOOKS if look.key in drawn)


def map_key(years: Sequence[PlantYear], *, on_paper: bool = False) -> Markup:
    """Return the key as a list."""
    looks = looks_in(years)
    doubted = any(year.not_sure for year in years)
    items = [*_parts(looks), *_meanings((looks or LOOKS)[0], doubted=doubted, on_paper=on_paper)]
    return Markup('<ul class="map-key">{}</ul>').format(Markup("").join(items))


def _parts(looks: Sequence[Look]) -> Iterator[Markup]:
    return (_item(full_bar("eaten", look, _WHOLE), look.words) for look in looks)


def _meanings(look: Look, *, doubted: bool, on_paper: bool) -> Iterator[Markup]:
    yield _item(full_bar("eaten", look, _WHOLE), "full bar: to eat")
    if doubted:
        yield _item(doubt_bar(_WHOLE), f"high hollow bar, broken edge: to eat, but {NOT_SURE}")
    yield _item(thin_bar(_WHOLE), "thin hollow bar: to be seen, not to eat")
    yield _item(full_bar("harm", look, _WHOLE), "striped bar: part of a plant to keep away from")
    ends = [soft_bar("eaten", look, run) for run in _ENDS]
    firm = full_bar("eaten", look, _MIDDLE)
    yield _item(Markup("").join(ends) + firm, "low pale end: these days are uncertain")
    yield _item(_upright("session"), "broken line: the class meets, by its number")
    if not on_paper:
        yield _item(_upright("today"), "thick line: today")


def _upright(kind: str) -> Markup:
    return Markup('<line class="{}" x1="50%" y1="-20%" x2="50%" y2="120%"/>').format(kind)


def _item(inside: Markup, words: str) -> Markup:
    return Markup(
        '<li><svg class="swatch" aria-hidden="true" width="3em" height="1em" overflow="visible">'
        "{}</svg> {}</li>"
    ).format(inside, words)
