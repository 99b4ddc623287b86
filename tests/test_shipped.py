"""Where what comes with sallet is found."""

from __future__ import annotations

from pathlib import Path

import pytest

from sallet import shipped
from sallet.shipped import TemplatesMissing, templates_folder


def test_the_templates_lie_in_the_project_or_in_the_package() -> None:
    assert templates_folder() == Path(__file__).parents[1] / "templates"
    assert (templates_folder() / "site" / "frame.html").is_file()


def test_an_installation_without_templates_says_so(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(shipped, "__file__", str(tmp_path / "a" / "b" / "shipped.py"))
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
    monkeypatch.setattr(shipped, "__file__", str(package / "shipped.py"))
    assert templates_folder() == package / "templates"
