"""How the templates are found and set up."""

from __future__ import annotations

from datetime import date, time
from pathlib import Path

import pytest
from jinja2 import UndefinedError

from sallet.course.model import Session
from sallet.lesson.value import Window
from sallet.publish import templates
from sallet.publish.templates import TemplatesMissing, site_templates, templates_folder


def rendered(text: str, **values: object) -> str:
    """Return what a template of the pages makes of some values."""
    return site_templates().from_string(text).render(values)


def test_the_templates_lie_in_the_project_or_in_the_package() -> None:
    assert templates_folder() == Path(__file__).parents[2] / "templates"
    assert (templates_folder() / "site" / "frame.html").is_file()


def test_an_installation_without_templates_says_so(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(templates, "__file__", str(tmp_path / "a" / "b" / "c" / "templates.py"))
    with pytest.raises(TemplatesMissing) as missing:
        templates_folder()
    assert str(missing.value) == (
        "the folder `templates` is missing from this installation of sallet"
    )


def test_the_packages_own_templates_go_first(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    package = tmp_path / "src" / "sallet"
    for folder in (package / "templates", tmp_path / "templates"):
        folder.mkdir(parents=True)
    monkeypatch.setattr(templates, "__file__", str(package / "publish" / "templates.py"))
    assert templates_folder() == package / "templates"


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
