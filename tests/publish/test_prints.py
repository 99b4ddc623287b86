"""All that is printed besides the pages."""

from __future__ import annotations

from dataclasses import replace

import pytest

from helpers.cards import setting_of
from helpers.courses import site_of
from sallet.cards.printed import measure_print
from sallet.publish.prints import print_jobs, set_in_print
from sallet.typesetting.jobs import Job, Untypeset

FILES = {
    "course.yml": (
        "title: Walks\nplace: {name: Askerby}\nemergency: [Ring 999]\n"
        "sessions: [{date: 2027-04-03}, {date: 2027-04-03}]\n"
    ),
    "ash.md": (
        "---\nname: Ash\n---\n## Season\n- leaves: May\n## Questions\n1. Which?\n"
        "   - [x] This.\n   - [ ] That.\n   > For this is right.\n"
    ),
}


def test_cards_walk_sheets_posters_and_the_test_paper_are_printed() -> None:
    site = replace(site_of(FILES), printed=measure_print(setting_of(FILES)))
    assert list(print_jobs(site)) == [
        "print/field-cards.pdf", "print/field-cards-single.pdf", "print/cards/ash.pdf",
        "print/walks/2027-04-03.pdf", "print/walks/2027-04-03-2.pdf",
        "print/season-map-a4.pdf", "print/season-map-a3.pdf",
        "print/test-paper.pdf", "print/test-answers.pdf",
    ]  # fmt: skip


def test_nothing_is_printed_of_what_was_not_measured() -> None:
    assert print_jobs(site_of(FILES)) == {}


def test_documents_are_set_by_path_and_progress_is_told() -> None:
    told: list[tuple[int, int]] = []
    jobs = {f"{n}.pdf": Job("letters", {"letters": [n]}) for n in "ab"}
    made = set_in_print(jobs, lambda done, count: told.append((done, count)))
    assert list(made) == ["a.pdf", "b.pdf"]
    assert all(data.startswith(b"%PDF") for data in made.values())
    assert told == [(1, 2), (2, 2)]


def test_what_the_engine_refuses_is_an_error() -> None:
    with pytest.raises(Untypeset, match="☠"):
        set_in_print({"a.pdf": Job("letters", {"letters": ["☠"]})})
