"""The keys of course.yml, as an editor offers them."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from sallet.course.keys import CardFields, CourseFields, PlaceFields, SessionFields

if TYPE_CHECKING:
    from pydantic import BaseModel

UNTOLD = {"place", "elevation"}
"""Told by what they hold."""


@pytest.mark.parametrize("model", [CourseFields, PlaceFields, SessionFields, CardFields])
def test_each_key_is_told_to_the_writer_and_none_is_needed(model: type[BaseModel]) -> None:
    told = {name for name, field in model.model_fields.items() if field.description}
    assert set(model.model_fields) - told <= UNTOLD
    assert [name for name, field in model.model_fields.items() if field.is_required()] == []


@pytest.mark.parametrize("model", [CourseFields, PlaceFields, SessionFields, CardFields])
def test_a_key_is_written_with_blanks_where_its_name_has_low_lines(model: type[BaseModel]) -> None:
    written = [field.alias or name for name, field in model.model_fields.items()]
    assert [word for word in written if "_" in word] == []
