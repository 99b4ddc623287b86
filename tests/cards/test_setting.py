"""What the cards of a course have in common."""

from __future__ import annotations

from helpers.cards import setting_of

RAMSONS = "---\nname: Ramsons\n---\n## Season\n- leaves: March to June\n"
HAZEL = (
    "---\nname: Hazel\n---\n## Season\n- nuts: September\n## Edible parts\n- nuts: September; raw\n"
)
VIOLET = "---\nname: Sweet violet\n---\n## Season\n- flowers: February\n## Edible parts\n- flowers: February; raw\n"
FILES = {"course.yml": "title: Walks\n", "a.md": HAZEL, "b.md": VIOLET}


def test_the_cards_are_in_season_order() -> None:
    assert [lesson.name for lesson in setting_of(FILES).lessons] == ["Sweet violet", "Hazel"]


def test_only_what_the_course_teaches_has_a_card() -> None:
    setting = setting_of({**FILES, "course.yml": "plants: [Hazel]\n"})
    assert [lesson.name for lesson in setting.lessons] == ["Hazel"]
    assert {lesson.name for lesson in setting.bank.lessons} == {"Hazel", "Sweet violet"}
