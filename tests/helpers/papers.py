"""Typesets papers, and reads them back with poppler and qpdf."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import tempfile
import xml.etree.ElementTree as ET
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

import pytest

from helpers.courses import site_of
from helpers.lessons import BANK, LESSONS
from sallet.checks.running import run_checks
from sallet.course.reading import read_course
from sallet.publish.site import Site
from sallet.source import Source
from sallet.typesetting.engine import typeset

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.typesetting.jobs import Job

MILLIMETRES: Final = 25.4 / 72
"""In a point."""
HOSTILE: Final = (
    r"""Ten # leaves $x$ *no [\] @key <tag> `tick` #read("/etc/passwd") \ #pagebreak() ~ = _a"""
)
"""Words that would be commands, if the engine read them as such."""
WRITTEN: Final = (
    HOSTILE.replace("`", r"\`").replace("*", r"\*").replace("<", r"\<").replace(r"\]", r"\\]")
)
"""The same as a lesson writes them, in Markdown."""


@cache
def demo_site() -> Site:
    """Return the site of the course that comes with the project."""
    path = Path(__file__).parents[2] / "demo_course" / "course.yml"
    course = read_course(Source("course.yml", path.read_text("utf-8")))
    return Site(course, BANK, LESSONS, tuple(run_checks(BANK, LESSONS, course)), {})


def letter_site(**files: str) -> Site:
    """Return the site of a course printed on Letter."""
    return site_of({"course.yml": "cards: {paper: Letter}\n", **files})


def pdfs_of(jobs: Iterator[tuple[str, Job]]) -> dict[str, bytes]:
    """Return papers typeset, by path."""
    made = dict(jobs)
    return dict(zip(made, typeset(list(made.values())), strict=True))


def words_of(pdf: bytes) -> str:
    """Return all words of a document in the order in which they are read aloud."""
    return " ".join(_run("pdftotext", "-raw", "-nopgbrk", "FILE", "-", pdf=pdf).split())


def bare(words: str) -> str:
    """Return words without what breaking lines does to them: spaces and hyphens."""
    return "".join(words.split()).replace("-", "").replace("\u00ad", "")


def text_of(pdf: bytes) -> str:
    """Return the letters between the running heads and the page numbers, as `bare` has them."""
    return "".join(pages_of(pdf))


def pages_of(pdf: bytes, margin: float = 18) -> tuple[str, ...]:
    """Return the letters of each page less its running head and its number, as `bare` has them."""
    (width, height), *_ = sizes_of(pdf)
    sides = (0, margin, width, height - 2 * margin)
    box = [str(round(side / MILLIMETRES)) for side in sides]
    cut = [part for pair in zip(("-x", "-y", "-W", "-H"), box, strict=True) for part in pair]
    text = _run("pdftotext", "-raw", *cut, "FILE", "-", pdf=pdf)
    return tuple(map(bare, text.removesuffix("\f").split("\f")))


def sizes_of(pdf: bytes) -> list[tuple[float, float]]:
    """Return the width and the height of each page in millimetres, to a tenth."""
    told = _run("pdfinfo", "-l", "-1", "FILE", pdf=pdf).splitlines()
    sides = [
        line.split("size:")[1].split()
        for line in told
        if line.startswith("Page ") and "size:" in line
    ]
    return [
        (round(float(wide) * MILLIMETRES, 1), round(float(high) * MILLIMETRES, 1))
        for wide, _, high, *_ in sides
    ]


def info_of(pdf: bytes) -> dict[str, str]:
    """Return what a document says of itself."""
    lines = _run("pdfinfo", "FILE", pdf=pdf).splitlines()
    return {key: value.strip() for key, _, value in (line.partition(":") for line in lines)}


def structure_of(pdf: bytes) -> str:
    """Return the tags of a document with their attributes and words."""
    return _run("pdfinfo", "-struct-text", "FILE", pdf=pdf)


def alternatives_of(pdf: bytes) -> list[str]:
    """Return the words that stand for the pictures of a document."""
    return list(_alternatives(json.loads(_run("qpdf", "--json", "FILE", pdf=pdf))))


def _alternatives(node: Any) -> Iterator[str]:
    if isinstance(node, dict):
        if "/Alt" in node:
            yield node["/Alt"].removeprefix("u:")
        node = list(node.values())
    if isinstance(node, list):
        for inner in node:
            yield from _alternatives(inner)


def fonts_of(pdf: bytes) -> set[tuple[str, bool]]:
    """Return the fonts of a document, and whether each is embedded."""
    rows = [line.split() for line in _run("pdffonts", "FILE", pdf=pdf).splitlines()[2:]]
    return {(row[0].split("+")[-1].split("-")[0], row[-5] == "yes") for row in rows}


def heights_of(pdf: bytes) -> dict[str, float]:
    """Return how high the line of each word is, in points."""
    text = _run("pdftotext", "-bbox", "FILE", "-", pdf=pdf)
    words = ET.fromstring(text).iter("{http://www.w3.org/1999/xhtml}word")  # noqa: S314
    return {w.text or "": float(w.attrib["yMax"]) - float(w.attrib["yMin"]) for w in words}


def assert_is_sound(pdf: bytes) -> None:
    """Assert that a document is whole, tagged, and carries every font that it needs."""
    assert "No syntax or stream encoding errors found" in _run("qpdf", "--check", "FILE", pdf=pdf)
    assert fonts_of(pdf) == {("LibertinusSerif", True)}
    assert info_of(pdf)["Tagged"] == "yes"


def _run(command: str, *options: str, pdf: bytes) -> str:
    if not (path := shutil.which(command)):
        (pytest.fail if os.environ.get("CI") else pytest.skip)(f"{command} is not installed")
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "paper.pdf"
        file.write_bytes(pdf)
        told = [str(file) if option == "FILE" else option for option in options]
        return subprocess.run([path, *told], check=True, capture_output=True, text=True).stdout
