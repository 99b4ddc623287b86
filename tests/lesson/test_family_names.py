"""Names of families, after Article 18 of the Shenzhen Code (2018)."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sallet.lesson.family_names import STANDARD, is_family_name, standard_family


@pytest.mark.parametrize(
    ("old", "standard"),
    [("Palmae", "Arecaceae"), ("Gramineae", "Poaceae"), ("Cruciferae", "Brassicaceae"),
     ("Leguminosae", "Fabaceae"), ("Guttiferae", "Clusiaceae"), ("Umbelliferae", "Apiaceae"),
     ("Labiatae", "Lamiaceae"), ("Compositae", "Asteraceae")],
)  # fmt: skip
def test_the_eight_old_names_of_article_18_5_are_the_standard_ones(old: str, standard: str) -> None:
    assert standard_family(old) == standard
    assert standard_family(old.upper()) == standard


def test_the_peas_alone_go_with_their_family() -> None:
    """Article 18.6, from memory: Papilionaceae where they are a family apart from the rest."""
    assert standard_family("Papilionaceae") == "Fabaceae"


@pytest.mark.parametrize(
    ("written", "family"),
    [("Apiaceae", "Apiaceae"), ("apiaceae", "Apiaceae"), ("ROSACEAE", "Rosaceae"),
     ("Rosaceae Juss.", "Rosaceae"), ("Apiaceae (Umbelliferae)", "Apiaceae"),
     ("Umbelliferae (Apiaceae)", "Apiaceae"), ("  Rosaceae\n", "Rosaceae")],
)  # fmt: skip
def test_a_family_is_one_however_it_is_written(written: str, family: str) -> None:
    assert standard_family(written) == family


@pytest.mark.parametrize(
    ("written", "kept"),
    [("Carrot family", "Carrot family"), (" carrot   family ", "carrot family"),
     ("Rosaceae?", "Rosaceae?"), ("Apiaceae/Umbelliferae", "Apiaceae/Umbelliferae"),
     ("Allium", "Allium"), ("", ""), ("  ", "")],
)  # fmt: skip
def test_what_is_no_scientific_name_is_taken_for_none(written: str, kept: str) -> None:
    assert standard_family(written) == kept


@pytest.mark.parametrize(
    ("word", "is_one"),
    [("Rosaceae", True), ("rosaceae", True), ("Rosaceae*", False), ("Rosa", False),
     ("Umbelliferae", False), ("", False)],
)  # fmt: skip
def test_a_familys_name_is_known_by_its_ending(word: str, is_one: bool) -> None:  # noqa: FBT001
    assert is_family_name(word) is is_one


def test_every_old_name_stands_as_it_is_looked_up_and_leads_to_a_name_of_today() -> None:
    assert [old for old in STANDARD if old != old.lower()] == []
    assert [new for new in STANDARD.values() if not is_family_name(new)] == []


@given(st.text(max_size=30))
def test_a_standard_name_is_its_own(words: str) -> None:
    assert standard_family(standard_family(words)) == standard_family(words)
