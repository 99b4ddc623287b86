"""Where a link to a heading of a lesson leads on the plant's page."""

from __future__ import annotations

import re

import pytest

from helpers.courses import pages_of, seen
from helpers.workshop import lesson_of
from sallet.publish.anchors import double_idents, idents_by_place, section_idents

TEXT = """---
name: Ramsons
---
{links}

## Songs
La.
## Identification
### Leaves
- margin: entire
### Bulb
- width: 1 cm
## Look-alikes
### Lords-and-ladies
### Dog’s mercury
## Season
- leaves: May
## Parts to Remove
- stalks: tough
## Preparation
### Green oil
Press.
## Habitat
- setting: woodland
## Cautions
- dogs: no
## Songs
Lo.
## Sources
[^a]: A source.
"""
IDENTS = {
    "identification": "organs",
    "leaves": "organs",
    "bulb": "organs",
    "roots": "organs",
    "look-alikes": "apart",
    "lords-and-ladies": "double-lords-and-ladies",
    "dogs-mercury": "double-dogs-mercury",
    "season": "year",
    "parts-to-remove": "removed",
    "preparation": "preparation",
    "green-oil": "preparation",
    "habitat": "habitat",
    "cautions": "cautions",
    "songs": "section-1",
    "sources": "sources",
}


def test_every_heading_has_its_place() -> None:
    found = dict(idents_by_place(lesson_of(TEXT)))
    found.pop("", None)
    assert found == IDENTS


def test_every_place_is_on_the_page() -> None:
    links = " ".join(f"[x](#{place})" for place in IDENTS)
    page = seen(pages_of({"course.yml": "", "a.md": TEXT.format(links=links)})["plants/a.html"])
    idents = {e.attributes["id"] for e in page.elements if "id" in e.attributes}
    assert set(IDENTS.values()) - idents == set()
    led = {link.attributes["href"] for link in page.all("a")}
    assert {f"#{ident}" for ident in IDENTS.values()} - led == set()


@pytest.mark.parametrize(
    "text",
    ["## Look-alikes\nNone known.\n", "## Questions\nNone.\n", "## Pictures\nNone.\n",
     "## Sources\nNone.\n", "---\ntaught as: look-alike\n---\n## Edible parts\n- leaves: May\n"],
)  # fmt: skip
def test_a_section_that_the_page_does_not_set_leads_to_its_top(text: str) -> None:
    heading = re.search(r"## (.*)", text)
    assert heading
    place = heading[1].lower().replace(" ", "-")
    page = pages_of({"course.yml": "", "a.md": f"{text}\n## Songs\n[x](#{place})\n"})[
        "plants/a.html"
    ]
    assert '<a href="#sheet">x</a>' in page


def test_no_two_sections_and_no_two_look_alikes_share_a_place() -> None:
    lesson = lesson_of(
        "## Doubles\n## Sheet\n## Sheet\n## Look-alikes\n### Yew\n### yew\n### 櫟\n### …\n"
    )
    assert section_idents(lesson) == ("section-1", "section-2", "section-3", "section-4")
    assert double_idents(lesson) == ("double-yew", "double-yew-2", "double-櫟", "double-")
