"""What there is to typeset, and how it is handed to the process that does it.

A job is a template with its values and pictures. It is laid into a fresh folder of its own: the
templates and the pictures copied, the values as JSON. The engine sees nothing but that folder; words
go in as values and are never read as markup.
"""

from __future__ import annotations

import json
import shutil
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any, Final, Literal

from sallet.typesetting.words import all_printable

if TYPE_CHECKING:
    from collections.abc import Mapping
    from pathlib import Path

Wanted = Literal["pdf", "told"]
"""A PDF, or what the template tells of itself: the value of its metadata labelled `told`."""

MAIN: Final = "main.typ"
DATA: Final = "data.json"
ORDER: Final = "order.json"
PDF: Final = "made.pdf"
TOLD: Final = "told.json"
FAILED: Final = "failed.json"


@dataclass(frozen=True)
class Job:
    """One document to typeset."""

    template: str
    """The name of a file in the folder of print templates, without its ending."""
    data: Mapping[str, Any]
    """What the template is given, as JSON holds it."""
    pictures: Mapping[str, bytes] = field(default_factory=dict)
    """Its pictures by file name."""
    wanted: Wanted = "pdf"
    cards: int = 1
    """How many cards' worth of memory it takes, at a guess."""


class Untypeset(Exception):
    """The engine refused a document; the message is the engine's."""

    def __init__(self, template: str, message: str, details: str) -> None:
        super().__init__(f"the template `{template}` could not be typeset: {message}")
        self.template = template
        self.details = details


def lay_out(job: Job, folder: Path, templates: Path) -> None:
    """Fill a job's folder, which is made anew."""
    folder.mkdir()
    for template in templates.glob("*.typ"):
        shutil.copyfile(template, folder / template.name)
    shutil.copyfile(templates / f"{job.template}.typ", folder / MAIN)
    (folder / DATA).write_text(json.dumps(all_printable(job.data), ensure_ascii=False), "utf-8")
    (folder / ORDER).write_text(json.dumps({"wanted": job.wanted}), "utf-8")
    for name, data in job.pictures.items():
        (folder / name).write_bytes(data)


def made(job: Job, folder: Path) -> Any:
    """Return what became of a job: the bytes of its PDF, or what it told. Raises Untypeset."""
    failed = folder / FAILED
    if failed.exists():
        told = json.loads(failed.read_text("utf-8"))
        raise Untypeset(job.template, told["message"], told["details"])
    if job.wanted == "pdf":
        return (folder / PDF).read_bytes()
    return json.loads((folder / TOLD).read_text("utf-8"))
