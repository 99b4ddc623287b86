"""A small course in the tests whose keys can be worked out by hand."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from helpers.courses import seen

if TYPE_CHECKING:
    from sallet.publish.key_couplets import CoupletLines, LeadLine

POISONOUS: Final = "taught as: look-alike\ndanger: poisonous"
DEADLY: Final = "taught as: look-alike\ndanger: deadly"
FOOD: Final = "taught as: food"


def lesson(name: str, *facts: str, head: str = FOOD, more: str = "") -> str:
    """Return a lesson; a fact names its organ: `Leaves arrangement: opposite`."""
    organs = dict.fromkeys(fact.split(" ", 1)[0] for fact in facts)
    body = "".join(
        f"### {organ}\n"
        + "".join(f"- {f.split(' ', 1)[1]}\n" for f in facts if f.startswith(organ))
        for organ in organs
    )
    return f"---\nname: {name}\n{head}\n---\n## Identification\n{body}\n{more}"


SUMMER: Final = "## Season\n- leaves: April to October\n- flowers: June\n"
ALL_YEAR: Final = "## Season\n- leaves: all year\n- flowers: June\n"
ALTERNATE: Final = "Leaves arrangement: alternate"
OPPOSITE: Final = "Leaves arrangement: opposite"
LOOKS: Final = (
    "## Look-alikes\n### Dwarf elder\nx\n- danger: poisonous\n\n### Yew\nx\n- danger: deadly\n\n"
    "### Guelder rose\nx\n- danger: harmless\n\n### Danewort\nx\n"
)
HEDGE: Final = {
    "course.yml": "title: Hedge\nplace: {name: Askerby}\n",
    "elder.md": lesson("Elder", OPPOSITE, "Stem interior: solid", "Flowers petals: 5",
                       more=SUMMER + LOOKS),
    "dwarf-elder.md": lesson("Dwarf elder", OPPOSITE, "Stem interior: hollow", "Flowers petals: 5",
                             head=POISONOUS, more=SUMMER),
    "hemlock.md": lesson("Hemlock", ALTERNATE, "Stem interior: hollow", "Flowers petals: 5",
                         head=DEADLY, more=SUMMER + "## Look-alikes\n### Dock\nx\n"),
    "sorrel.md": lesson("Sorrel", ALTERNATE, "Stem interior: solid", "Flowers petals: 6",
                        more=ALL_YEAR),
    "dock.md": lesson("Dock", ALTERNATE, "Stem interior: solid", "Flowers petals: 6",
                      more=ALL_YEAR),
    "mercury.md": lesson("Mercury", OPPOSITE, "Stem interior: solid", head=DEADLY,
                         more="## Season\n- leaves: April to June\n"),
}  # fmt: skip
"""Dock and sorrel are not told apart at all; nothing is told of mercury's flowers."""


def lines_of(couplets: tuple[CoupletLines, ...]) -> list[str]:
    """Return couplets as they would be read out: number, number before it, words, where to."""
    return [
        f"{c.number} ({c.came_from}) {c.organ}, {seen(c.label).text}: {seen(lead.states).text} → {_way(lead)}"
        for c in couplets
        for lead in c.leads
    ]


def _way(lead: LeadLine) -> str:
    if lead.ending is None:
        return str(lead.number)
    return ", ".join(name.lesson.name for name in lead.ending.names)
