"""How long a key is, and how short any key could be.

A mean is over plants, each met as often as any other. A plant that several leads reach counts with
the mean of its ways. Bounds: Osborne 1963 (New Phytologist 62); Payne and Preece 1980 (Journal of
the Royal Statistical Society A 143: 253); Shannon's entropy.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import floor, log2
from typing import TYPE_CHECKING

from sallet.study.couplets import End

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.study.couplets import Key
    from sallet.study.table import Plants


@dataclass(frozen=True)
class Way:
    """An end of a key, the number of couplets before it, and how likely each plant goes there."""

    plants: Plants
    steps: int
    share: dict[int, float]


def ways_of(key: Key) -> tuple[Way, ...]:
    """Return the ends of a key from the first lead to the last."""
    return tuple(_ways(key, 0, {}))


def _ways(key: Key, steps: int, share: dict[int, float]) -> Iterator[Way]:
    if isinstance(key, End):
        yield Way(key.plants, steps, {p: share.get(p, 1.0) for p in key.plants})
        return
    left, right = (plants_of(lead.goes_to) for lead in key.leads)
    halved = {p: share.get(p, 1.0) / (2 if p in left and p in right else 1) for p in left | right}
    for lead in key.leads:
        yield from _ways(lead.goes_to, steps + 1, halved)


def plants_of(key: Key) -> Plants:
    """Return the plants that a key leads to."""
    if isinstance(key, End):
        return key.plants
    return plants_of(key.leads[0].goes_to) | plants_of(key.leads[1].goes_to)


def mean_steps(key: Key) -> float:
    """Return the mean number of couplets to a plant; 0 for a key without couplets."""
    plants = plants_of(key)
    steps = sum(way.steps * share for way in ways_of(key) for share in way.share.values())
    return steps / len(plants) if plants else 0.0


def shortest_mean(ends: int) -> float:
    """Return the least mean number of steps of any key to some equally likely ends (Osborne)."""
    if ends <= 1:
        return 0.0
    whole = floor(log2(ends))
    return (ends * whole + 2 * (ends - (1 << whole))) / ends


def longest_mean(ends: int) -> float:
    """Return the greatest mean number of steps: one end split off at every couplet."""
    return (ends + 2) * (ends - 1) / (2 * ends) if ends > 1 else 0.0


def entropy(weights: Sequence[float]) -> float:
    """Return the entropy of some weights in bits: no key is shorter in the mean."""
    whole = sum(weights)
    return sum(w / whole * log2(whole / w) for w in weights if w > 0)
