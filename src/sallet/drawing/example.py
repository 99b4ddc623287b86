"""How a word of the vocabulary is shown: on a neutral specimen, with that one state put in."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from sallet.drawing.sketch import Sketch
from sallet.drawing.told import Told

if TYPE_CHECKING:
    from collections.abc import Mapping

Draw = Callable[[Told, float], Sketch | None]
"""From what is told of an organ and the units of its main length to its drawing."""


@dataclass(frozen=True)
class Example:
    """The specimen on which the states of a label are shown."""

    organ: str
    label: str
    base: Mapping[str, str]
    """What else the specimen is, by label, in the words of a lesson."""
    draw: Draw


def without(base: Mapping[str, str], *labels: str) -> dict[str, str]:
    """Return a specimen's words but for some labels."""
    return {label: value for label, value in base.items() if label not in labels}
