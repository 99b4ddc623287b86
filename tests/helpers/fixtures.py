"""Test cases as Markdown: a `##` title that states the claim, files in fences, what is found.

    ## a misspelt term is offered the nearest
    ~~~~ lesson.md
    …
    ~~~~
    ~~~~ findings
    lesson.md:4:11: warn: …
        → …
    ~~~~

No `findings` fence, or an empty one, says that nothing is found.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

_TITLE = re.compile(r"^## (.+)$", re.MULTILINE)
_FENCE = re.compile(r"^~~~~ (\S+)\n(.*?)^~~~~$", re.MULTILINE | re.DOTALL)


@dataclass(frozen=True)
class Case:
    """One test case."""

    fixture: str
    title: str
    files: dict[str, str]
    findings: str

    def __str__(self) -> str:
        return f"{self.fixture}: {self.title}"


def cases_in(path: Path) -> Iterator[Case]:
    """Yield the cases of a fixture file."""
    text = path.read_text("utf-8")
    # A lesson has `##` headings too: titles are looked for outside the fences.
    outside = _FENCE.sub(lambda m: re.sub(r"[^\n]", " ", m[0]), text)
    titles = list(_TITLE.finditer(outside))
    ends = [title.start() for title in titles[1:]] + [len(text)]
    for title, end in zip(titles, ends, strict=True):
        files = {m[1]: m[2] for m in _FENCE.finditer(text, title.end(), end)}
        findings = files.pop("findings", "").rstrip("\n")
        yield Case(path.stem, title[1], files, findings)
