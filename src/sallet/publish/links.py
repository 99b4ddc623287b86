"""Follows every link inside the site before it replaces the old one."""

from __future__ import annotations

import posixpath
from dataclasses import dataclass
from html.parser import HTMLParser
from typing import TYPE_CHECKING
from urllib.parse import unquote, urlsplit

if TYPE_CHECKING:
    from collections.abc import Collection, Iterable, Iterator, Mapping

    from sallet.publish.pages import Page


@dataclass(frozen=True)
class LostLink:
    """A link that leads nowhere."""

    page: str
    target: str


class _Reader(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.targets: list[str] = []
        self.idents: set[str] = set()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        for name, value in attrs:
            if name == "id" and value:
                self.idents.add(value)
            elif name == "popovertarget" and value:
                self.targets.append(f"#{value}")
            elif name in {"href", "src"} and value:
                self.targets.append(value)
            elif name == "srcset" and value:
                self.targets += [part.split()[0] for part in value.split(",")]
        del tag


def lost_links(pages: Iterable[Page], other_files: Collection[str]) -> Iterator[LostLink]:
    """Yield the links of the pages that lead to no page, file or place of the site."""
    read = {page.path: _read(page.text) for page in pages if page.path.endswith(".html")}
    files = {*read, *other_files}
    idents = {path: reader.idents for path, reader in read.items()}
    for path, reader in read.items():
        for target in reader.targets:
            if not _leads_somewhere(path, target, files, idents):
                yield LostLink(path, target)


def _read(text: str) -> _Reader:
    reader = _Reader()
    reader.feed(text)
    reader.close()
    return reader


def _leads_somewhere(
    page: str, target: str, files: Collection[str], idents: Mapping[str, Collection[str]]
) -> bool:
    parts = urlsplit(target)
    if parts.scheme or parts.netloc:
        return parts.scheme in {"http", "https", "mailto", "tel"}
    path = page
    if parts.path:
        path = posixpath.normpath(posixpath.join(posixpath.dirname(page), unquote(parts.path)))
    if path not in files:
        return False
    return not parts.fragment or path not in idents or unquote(parts.fragment) in idents[path]
