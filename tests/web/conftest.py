"""The demo course assembled once, a browser, and the outside checkers.

Where Chromium, Java or the packages of package.json are missing, these tests are skipped;
with the environment variable CI set they fail instead.
"""

from __future__ import annotations

import os
import shutil
from pathlib import Path
from typing import TYPE_CHECKING

import pytest
from playwright.sync_api import Browser, sync_playwright

from sallet.folder import read_path
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.publish.assembling import look_through, site_files
from sallet.publish.writer import write_site

if TYPE_CHECKING:
    from collections.abc import Iterator

PROJECT = Path(__file__).resolve().parents[2]
PACKAGES = Path(__file__).parent / "node_modules"


def _need(what: str, *, found: bool) -> None:
    if not found and os.environ.get("CI"):
        pytest.fail(f"{what} is missing")
    if not found:
        pytest.skip(f"{what} is missing")


@pytest.fixture(scope="session")
def demo(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return the demo course, assembled."""
    folder = read_path(PROJECT / "demo_course", load_vocabulary())
    assert folder.course is not None
    target = tmp_path_factory.mktemp("demo") / "site"
    write_site(target, site_files(look_through(folder, folder.course), target))
    return target


@pytest.fixture(scope="session")
def chromium() -> Iterator[Browser]:
    """Return Debian's Chromium, headless."""
    path = shutil.which("chromium")
    _need("chromium", found=path is not None)
    with sync_playwright() as playwright:
        arguments = ["--no-sandbox", "--disable-gpu", "--disable-background-networking"]
        browser = playwright.chromium.launch(executable_path=path, args=arguments)
        yield browser
        browser.close()


@pytest.fixture(scope="session")
def axe() -> str:
    """Return the source of axe-core."""
    path = PACKAGES / "axe-core" / "axe.min.js"
    _need("axe-core (npm ci --prefix tests/web)", found=path.is_file())
    return path.read_text("utf-8")


@pytest.fixture(scope="session")
def html_checker() -> list[str]:
    """Return the command that runs the Nu HTML checker."""
    java, jar = shutil.which("java"), PACKAGES / "vnu-jar" / "build" / "dist" / "vnu.jar"
    _need("java", found=java is not None)
    _need("vnu-jar (npm ci --prefix tests/web)", found=jar.is_file())
    return [str(java), "-jar", str(jar)]


@pytest.fixture(scope="session")
def pdf_reader() -> str:
    """Return poppler's pdftotext."""
    path = shutil.which("pdftotext")
    _need("pdftotext", found=path is not None)
    return str(path)
