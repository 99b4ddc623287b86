"""How a plant is marked wherever it is named."""

from __future__ import annotations

import pytest

from helpers.workshop import bank_of, lesson_of
from sallet.lesson.dangers import DANGERS, danger_named, danger_of
from sallet.lesson.model import GRAVE


@pytest.mark.parametrize(
    ("head", "danger"),
    [("taught as: food", "food"), ("taught as: look-alike\ndanger: deadly", "deadly"),
     ("taught as: look-alike", "unknown")],
)  # fmt: skip
def test_a_plant_to_keep_away_from_is_marked_by_its_danger(head: str, danger: str) -> None:
    assert danger_of(lesson_of(f"---\n{head}\n---\n")) == danger


def test_every_danger_has_a_shape_and_a_word_of_its_own() -> None:
    assert {*GRAVE, "harmful", "harmless", "food", "unknown"} == DANGERS.keys()
    assert all(shape and word for shape, word in DANGERS.values())
    assert len({word for _, word in DANGERS.values()}) == len(DANGERS)


def test_what_is_not_told_is_marked_like_poison() -> None:
    assert DANGERS["unknown"][0] == DANGERS["poisonous"][0]


@pytest.mark.parametrize(
    ("there", "other", "danger"),
    [
        ("- danger: poisonous\n", "", "poisonous"),
        ("", "", "unknown"),
        ("", "taught as: food", "food"),
        ("", "taught as: look-alike\ndanger: deadly", "deadly"),
        ("- danger: harmless\n", "taught as: look-alike\ndanger: deadly", "deadly"),
        ("", "taught as: look-alike", "unknown"),
    ],
)
def test_a_look_alike_is_marked_by_its_own_lesson_first(
    there: str, other: str, danger: str
) -> None:
    files = {"a.md": f"---\nname: Ramsons\n---\n## Look-alikes\n### Arum\n{there}"}
    if other:
        files["b.md"] = f"---\nname: Arum\n{other}\n---\n"
    bank = bank_of(files)
    assert danger_named(bank.lessons[0].look_alikes[0], bank) == danger
