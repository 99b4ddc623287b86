"""A card as values: the words of a line, the lines of a side."""

from __future__ import annotations

from helpers.cards import card_of
from sallet.cards.model import SIDES, Block, Line, Photograph, Side
from sallet.cards.plain import Run
from sallet.lesson.bank import PictureFile
from sallet.lesson.model import NO_PROSE, NOWHERE, Picture
from sallet.source import Text


def test_the_text_of_a_line_is_its_runs_without_the_label() -> None:
    line = Line((Run("no "), Run("raw", "strong"), Run(" leaf")), label="allergy")
    assert line.text == "no raw leaf"
    assert Line(()).text == ""


def test_the_lines_of_a_side_are_those_of_its_blocks_in_their_order() -> None:
    one, two, three = (Line((Run(word),)) for word in ("one", "two", "three"))
    side = Side("front", (Block("Know it by", (one, two)), Block("Tell it from", (three,))))
    assert tuple(side.lines) == (one, two, three)


def test_a_card_has_two_sides_in_the_order_of_their_names() -> None:
    card = card_of("---\nname: Ramsons\n---\n## Cautions\n- law: Ask.\n")
    assert tuple(side.name for side in card.sides) == SIDES == ("front", "back")
    assert card.sides == (card.front, card.back)


def credit(by: str, licence: str) -> str:
    """Return the credit of a photograph."""
    picture = Picture(Text("leaf.jpg", NOWHERE), "a leaf", by, licence, (), NO_PROSE, NOWHERE)
    return Photograph(picture, PictureFile("leaf.jpg", 10, 10)).credit


def test_a_credit_says_whose_a_picture_is_and_how_it_may_be_used() -> None:
    assert credit("M. Holloway", "CC BY 4.0") == "M. Holloway, CC BY 4.0"
    assert credit("M. Holloway", "") == "M. Holloway"
    assert credit("", "CC BY 4.0") == "CC BY 4.0"


def test_letters_are_counted_with_the_labels() -> None:
    card = card_of("---\nname: R\n---\n## Cautions\n- law: Ask.\n- skin: Wash.\n")
    assert card.back.letters == len("lawAsk.skinWash.")
    assert card.front.letters == 0
