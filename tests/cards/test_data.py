"""A card as its template is given it: plain values, complete, and words never as markup."""

from __future__ import annotations

import json

import pytest

from helpers.cards import card_of, cards_of
from sallet.cards.content import FOOD_STANDING, KEEP
from sallet.cards.data import card_data, runs_data, side_data, size_data
from sallet.cards.model import Block, Line, Side
from sallet.cards.plain import Run
from sallet.cards.sizes import CardSize, Size
from sallet.cards.strip import strip_data
from sallet.lesson.dangers import DANGERS

COURSE = "title: Walks\naddress: https://example.org/\nemergency: ring 999\n"
RAMSONS = """\
---
name: Ramsons
also called: [wild garlic, bear's garlic]
scientific name: Allium ursinum L.
family: Amaryllidaceae
taught as: food
---
## Look-alikes
### Arum
An *arrow*.
- scientific name: Arum maculatum L.
- danger: deadly

## Season
- leaves: May

## Cautions
- law: Ask.[^memory]
"""
MONTHS = strip_data([])["months"]


def test_a_card_is_given_whole() -> None:
    card = card_of(RAMSONS, COURSE)
    assert card.address is not None
    assert card_data(card) == {
        "name": "Ramsons",
        "scientific": "Allium ursinum L.",
        "family": "Amaryllidaceae",
        "also": ["wild garlic", "bear's garlic"],
        "food": True,
        "danger": "food",
        "shape": "❧",
        "word": "food",
        "front": [
            {
                "title": "Tell it from",
                "lines": [
                    {
                        "label": "Arum",
                        "danger": "deadly",
                        "shape": "▲▲",
                        "word": "deadly",
                        "scientific": "Arum maculatum L.",
                        "runs": [["An ", "plain"], ["arrow", "emphasis"], [".", "plain"]],
                    }
                ],
                "run-on": False,
            }
        ],
        "back": [
            {
                "title": "Take care",
                "lines": [
                    {
                        "label": "law",
                        "danger": "",
                        "shape": "",
                        "word": "",
                        "scientific": "",
                        "runs": [["Ask.", "plain"]],
                    }
                ],
                "run-on": False,
            }
        ],
        "strip": strip_data(card.rows),
        "credit": "",
        "stamps": ["Not yet checked by a second reader.", "Partly from memory."],
        "standing": " ".join(FOOD_STANDING),
        "emergency": ["ring 999", KEEP],
        "course": "Walks",
        "address": {
            "url": "https://example.org/plants/lesson.html",
            "squares": card.address.squares,
        },
    }


def test_what_is_not_there_is_empty_and_none_is_missing() -> None:
    bare = card_data(card_of("---\nname: Ramsons\n---\n", "title: Walks\n"))
    assert set(bare) == set(card_data(card_of(RAMSONS, COURSE)))
    assert bare["address"] is None
    assert (bare["scientific"], bare["family"], bare["also"], bare["front"]) == ("", "", [], [])


@pytest.mark.parametrize("danger", ["deadly", "poisonous", "harmful", "harmless"])
def test_a_danger_has_its_shape_and_its_word(danger: str) -> None:
    head = f"---\nname: Yew\ntaught as: look-alike\ndanger: {danger}\n---\n"
    data = card_data(card_of(head))
    assert (data["danger"], data["food"]) == (danger, False)
    assert (data["shape"], data["word"]) == DANGERS[danger]


def test_a_danger_that_is_not_told_says_so() -> None:
    data = card_data(card_of("---\nname: Yew\ntaught as: look-alike\n---\n"))
    assert (data["shape"], data["word"]) == ("▲", "danger not stated")


def test_a_photograph_has_its_credit() -> None:
    pictures = (
        "## Pictures\n### leaf.jpg\n- shows: a leaf\n- credit: Ann Bell\n- licence: CC BY 4.0\n"
    )
    files = {"a.md": f"---\nname: Ramsons\n---\n{pictures}", "leaf.jpg": "2400x1600"}
    (card,) = cards_of(files)
    assert card_data(card)["credit"] == "Photograph: Ann Bell, CC BY 4.0"


def test_the_values_are_such_as_json_holds() -> None:
    data = card_data(card_of(RAMSONS.replace("Ask.", 'Ask "him" \\ #read($x$) é ▲.'), COURSE))
    again = json.loads(json.dumps(data))
    assert again == json.loads(json.dumps(data, ensure_ascii=False))
    assert again["back"][0]["lines"][0]["runs"] == [['Ask "him" \\ #read($x$) é ▲.', "plain"]]


def test_lines_that_run_on_say_so() -> None:
    line = Line((Run("stringy"),), label="leaf stalks")
    (block,) = side_data(Side("back", (Block("Cut away", (line, line), run_on=True),)))
    assert (block["title"], len(block["lines"]), block["run-on"]) == ("Cut away", 2, True)


def test_a_size_is_told_in_millimetres() -> None:
    size = CardSize(Size(105, 148), margin=5, picture=28)
    assert size_data(size) == {"width": 105, "height": 148, "margin": 5, "picture": 28}


def test_words_keep_their_style() -> None:
    assert runs_data([Run("a "), Run("b", "strong")]) == [["a ", "plain"], ["b", "strong"]]
