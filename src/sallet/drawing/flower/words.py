"""How the recorded words and numbers of a flower are taken for its drawing."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from sallet.drawing.told import MANY, Character, Shown

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.told import Told


def is_many(count: Shown[int] | None) -> bool:
    """Return whether `many` are recorded, and not a number."""
    return count is not None and count.character.drawn == "many"


def number(count: Shown[int] | None) -> int:
    """Return how many are drawn: none where nothing is recorded, a crowd for `many`."""
    if count is None:
        return 0
    return max(count.value, MANY) * 3 // 2 if is_many(count) else count.value


def several(told: Told, label: str, among: Mapping[str, str]) -> Shown[tuple[str, ...]] | None:
    """Return what a table holds for the usual states of a label, as one character."""
    found = {state.value.name: state for state in told.usual(label).states(label)}
    drawn = [state for name, state in found.items() if name in among]
    if not drawn:
        return None
    names = ", ".join(state.value.name for state in drawn)
    character = Character(label, names, told.states(label)[0].character.told)
    return Shown(tuple(among[state.value.name] for state in drawn), character)


def first(found: Shown[tuple[str, ...]] | None) -> Shown[tuple[str, ...]] | None:
    """Return only the first of several states."""
    return one_of(found, set(found.value)) if found else None


def one_of(found: Shown[tuple[str, ...]] | None, rivals: set[str]) -> Shown[tuple[str, ...]] | None:
    """Return several states, of those that rule one another out only the first."""
    if found is None:
        return None
    names = found.character.drawn.split(", ")
    chosen = next((value for value in found.value if value in rivals), "")
    kept = [
        (value, name)
        for value, name in zip(found.value, names, strict=True)
        if value == chosen or value not in rivals
    ]
    drawn = ", ".join(name for _, name in kept)
    return Shown(tuple(value for value, _ in kept), replace(found.character, drawn=drawn))
