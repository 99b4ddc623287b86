"""Looks at PDFs with tools from outside: poppler, qpdf, pikepdf and a checker of PDF/UA.

Where a program is missing, the tests that need it are skipped; with the environment variable CI set
they fail instead.
"""

from __future__ import annotations

import os
import re
import shutil
import subprocess
import tempfile
import xml.etree.ElementTree as ET
from dataclasses import dataclass
from html import unescape
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

import pikepdf
import pytest
from pdfua import validate
from PIL import Image

if TYPE_CHECKING:
    from helpers.turning import Rectangle

POINT: Final = 25.4 / 72
"""Millimetres."""
_XHTML: Final = "{http://www.w3.org/1999/xhtml}"
_BOX: Final = re.compile(r"^Page +\d+ (\w+Box): +(.+)$", re.MULTILINE)
_SIZE: Final = re.compile(r"^Page +\d+ size: +([\d.]+) x ([\d.]+) pts", re.MULTILINE)
_NOT_APPLIED: Final = frozenset({"UA-14-001"})
"""A rule of the checker that fails on its own account: headings are followed here instead."""


def printed(program: str, *arguments: str | Path) -> str:
    """Return what a program from outside prints; it must end well."""
    path = shutil.which(program)
    if path is None:
        (pytest.fail if os.environ.get("CI") else pytest.skip)(f"{program} is missing")
    done = subprocess.run(
        [str(path), *map(str, arguments)],
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
    )
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


# ---- the document -------------------------------------------------------------------------


def info_of(pdf: Path) -> dict[str, str]:
    """Return what pdfinfo says of a document, by its words for it."""
    lines = (line.partition(":") for line in printed("pdfinfo", pdf).splitlines())
    return {name.strip(): value.strip() for name, _, value in lines}


def page_sizes(pdf: Path) -> list[tuple[float, float]]:
    """Return width and height of each page in millimetres."""
    told = printed("pdfinfo", "-f", "1", "-l", "9999", pdf)
    return [(float(w) * POINT, float(h) * POINT) for w, h in _SIZE.findall(told)]


def page_boxes(pdf: Path) -> dict[str, list[tuple[float, ...]]]:
    """Return the boxes of each page by name: left, bottom, right and top in millimetres."""
    told = printed("pdfinfo", "-box", "-f", "1", "-l", "9999", pdf)
    boxes: dict[str, list[tuple[float, ...]]] = {}
    for name, numbers in _BOX.findall(told):
        boxes.setdefault(name, []).append(tuple(float(n) * POINT for n in numbers.split()))
    return boxes


def fonts_of(pdf: Path) -> list[tuple[str, bool]]:
    """Return the name of each font, without the letters of its subset, and whether it is embedded."""
    found = []
    for line in printed("pdffonts", pdf).splitlines()[2:]:
        *_, embedded, _, _, _, _ = line.split()
        found.append((line.split()[0].partition("+")[2], embedded == "yes"))
    return found


def assert_is_sound(pdf: Path) -> None:
    """Assert that qpdf finds no fault in the file's structure."""
    assert "No syntax or stream encoding errors found" in printed("qpdf", "--check", pdf)


def metadata_of(pdf: Path) -> dict[str, object]:
    """Return the XMP metadata of a document, by the names `pdfaid:part` and the like."""
    names = {
        "http://purl.org/dc/elements/1.1/": "dc",
        "http://www.aiim.org/pdfa/ns/id/": "pdfaid",
        "http://www.aiim.org/pdfua/ns/id/": "pdfuaid",
        "http://ns.adobe.com/xap/1.0/": "xmp",
    }
    with pikepdf.open(pdf) as document:
        found = dict(document.open_metadata())
    parts = ((key[1:].partition("}"), value) for key, value in found.items())
    return {f"{names[uri]}:{name}": value for (uri, _, name), value in parts if uri in names}


def ua_finds(pdf: Path) -> list[tuple[str, str]]:
    """Return what breaks PDF/UA-1, as far as a program can say.

    pdfua applies rules for 16 of the 106 failure conditions in the Matterhorn protocol (PDF
    Association, version 1.1) that programs can decide: the rest is not checked here.
    """
    report = validate(str(pdf))
    assert {
        outcome.rule_id for outcome in report.outcomes if outcome.skipped_reason
    } <= _NOT_APPLIED
    return [(finding.rule_id, finding.message) for finding in report.findings]


def structure_of(pdf: Path) -> list[str]:
    """Return the kinds of all elements of the structure tree in its order: `H1`, `P`, `Figure`."""
    with pikepdf.open(pdf) as document:
        return _kinds(document.Root.StructTreeRoot)


def headings_of(pdf: Path) -> list[int]:
    """Return the levels of the headings in their order."""
    return [int(kind[1:]) for kind in structure_of(pdf) if re.fullmatch("H[1-6]", kind)]


def _kinds(element: pikepdf.Object) -> list[str]:
    own = [str(element.S)[1:]] if "/S" in element else []
    inside: Any = element.get("/K", [])
    children: list[Any] = list(inside) if isinstance(inside, pikepdf.Array) else [inside]
    # Numbers are pieces of the page, which have no kind of their own.
    inner = (child for child in children if isinstance(child, pikepdf.Dictionary))
    return own + [kind for child in inner for kind in _kinds(child)]


# ---- its words ----------------------------------------------------------------------------


@dataclass(frozen=True)
class Word:
    """A word and what it covers of its page, in millimetres from the page's left upper corner."""

    text: str
    left: float
    top: float
    right: float
    bottom: float


def text_of(pdf: Path) -> str:
    """Return the words of a document in the order of reading, with one space between."""
    return " ".join(printed("pdftotext", "-enc", "UTF-8", pdf, "-").split())


def words_on(pdf: Path) -> list[list[Word]]:
    """Return the words of each page with their places."""
    told = printed("pdftotext", "-bbox", "-enc", "UTF-8", pdf, "-")
    root = ET.fromstring(told)  # noqa: S314 - poppler's own
    return [
        [_word(word) for word in page.iter(f"{_XHTML}word")] for page in root.iter(f"{_XHTML}page")
    ]


def _word(element: ET.Element) -> Word:
    sides = (float(element.attrib[side]) * POINT for side in ("xMin", "yMin", "xMax", "yMax"))
    return Word(unescape(element.text or ""), *sides)


def pages_of(pdf: Path) -> list[str]:
    """Return the letters of each page in the order in which they are set, as `bare` has them."""
    return list(map(bare, printed("pdftotext", "-raw", "-enc", "UTF-8", pdf, "-").split("\f")[:-1]))


def bare(words: str) -> str:
    """Return words without what breaking lines does to them: blanks and hyphens."""
    return "".join(words.split()).replace("-", "").replace("\u00ad", "")


# ---- its picture --------------------------------------------------------------------------


def rasters_of(pdf: Path, dots: int) -> list[Image.Image]:
    """Return the pages as pictures in greys, with so many dots to the inch."""
    with tempfile.TemporaryDirectory() as folder:
        printed("pdftoppm", "-gray", "-r", str(dots), pdf, Path(folder) / "page")
        return [_picture(path) for path in sorted(Path(folder).iterdir())]


def _picture(path: Path) -> Image.Image:
    with Image.open(path) as picture:
        return picture.convert("L")


def cut_out(page: Image.Image, part: Rectangle, dots: int) -> Image.Image:
    """Return part of a page's picture."""
    left, top, right, bottom = (round(side / 25.4 * dots) for side in part)
    return page.crop((left, top, right, bottom))


def darkest(picture: Image.Image) -> int:
    """Return the grey of a picture's darkest dot: 0 for black, 255 for bare paper."""
    return int(picture.getextrema()[0]) if 0 not in picture.size else 255  # type: ignore[arg-type]
