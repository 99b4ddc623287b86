"""How the templates are set up."""

from __future__ import annotations

from datetime import date, time
from typing import TYPE_CHECKING

import pytest
from jinja2 import UndefinedError

from sallet.course.model import Session
from sallet.lesson.value import Window
from sallet.publish.templates import site_templates
from sallet.shipped import templates_folder

if TYPE_CHECKING:
    from pathlib import Path


def rendered(text: str, **values: object) -> str:
    """Return what a template of the pages makes of some values."""
    return site_templates().from_string(text).render(values)


def test_all_text_is_escaped() -> None:
    assert rendered("{{ words }}", words='<b title="x">&') == "&lt;b title=&#34;x&#34;&gt;&amp;"


@pytest.mark.parametrize("text", ["{{ lost }}", "{{ there.lost }}", "{% if lost %}{% endif %}"])
def test_a_missing_value_is_an_error(text: str) -> None:
    with pytest.raises(UndefinedError):
        rendered(text, there=Window(1, 2))


def test_dates_and_hours_are_said_in_words() -> None:
    day = date(2027, 4, 3)
    assert rendered("{{ day|long_date }}", day=day) == "Saturday 3 April 2027"
    assert rendered("{{ day|short_date }}", day=day) == "3 April"
    session = Session(day, starts=time(10), minutes=150)
    assert rendered("{{ session|clock }}", session=session) == "10:00–12:30"


@pytest.mark.parametrize(
    "path", sorted((templates_folder() / "site").iterdir()), ids=lambda p: p.name
)
def test_every_template_can_be_read_and_marks_nothing_safe_by_itself(path: Path) -> None:
    """Only what `Scribe` and its like have escaped is let through, and they say so in Python."""
    site_templates().get_template(path.name)
    assert "|safe" not in path.read_text("utf-8").replace(" ", "")
