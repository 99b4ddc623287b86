"""What comes with sallet besides its code: where the templates lie."""

from __future__ import annotations

from pathlib import Path


class TemplatesMissing(Exception):
    """The installation lacks the templates."""


def templates_folder() -> Path:
    """Return the folder of templates: inside the package once installed, else beside src/."""
    package = Path(__file__).resolve().parent
    for folder in (package / "templates", package.parent.parent / "templates"):
        if folder.is_dir():
            return folder
    raise TemplatesMissing("the folder `templates` is missing from this installation of sallet")
