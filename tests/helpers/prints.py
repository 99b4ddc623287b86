"""Small templates in the tests, beside the shipped ones that they build on."""

from __future__ import annotations

import shutil
from typing import TYPE_CHECKING, Final

import sallet.typesetting.engine
from sallet.shipped import templates_folder

if TYPE_CHECKING:
    from collections.abc import Mapping
    from pathlib import Path

    import pytest

ECHO: Final = """\
#import "common.typ": *
#set document(title: data.title)
#document-text("en", {
  heading(data.title)
  for runs in data.lines { block(in-words(runs)) }
})
"""
"""Sets lines of runs below a title, as every template sets words."""


def use_templates(folder: Path, monkeypatch: pytest.MonkeyPatch, texts: Mapping[str, str]) -> None:
    """Have the engine use some templates besides the shipped ones, all laid into a folder."""
    shutil.copytree(templates_folder() / "print", folder / "print")
    for name, text in texts.items():
        (folder / "print" / f"{name}.typ").write_text(text, "utf-8")
    monkeypatch.setattr(sallet.typesetting.engine, "templates_folder", lambda: folder)


def echo_data(*lines: str, title: str = "Words") -> dict[str, object]:
    """Return the values for `ECHO`: each line in plain, bold and slanted letters."""
    styles = ("plain", "strong", "emphasis")
    return {"title": title, "lines": [[[f"{line} ", style] for style in styles] for line in lines]}
