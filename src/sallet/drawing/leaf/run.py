"""A smooth piece of an outline."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Run:
    """A smooth piece of the outline; corners lie between runs."""

    points: tuple[complex, ...]
    forward: bool = True
    """Whether it runs towards a tip: teeth on it then look the way it goes."""
    toothed: bool = True
    """Whether the edge has teeth there at all."""
