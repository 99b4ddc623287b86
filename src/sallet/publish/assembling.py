"""Assembles a course: reads the photographs, builds the pages, follows the links, writes."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from sallet.publish.links import lost_links
from sallet.publish.pages import build_pages
from sallet.publish.photographs import Copy, Photograph, make_copies, plan_copies
from sallet.publish.site import Site
from sallet.publish.writer import Written, kept_file, made_files, make_sure_it_is_ours, write_site

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.course.model import Course
    from sallet.findings import Finding
    from sallet.folder import Folder
    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson
    from sallet.publish.links import LostLink

PICTURES = "pictures/"


class LinksLost(Exception):
    """Pages lead to places that do not exist."""

    def __init__(self, lost: Sequence[LostLink]) -> None:
        links = "1 link" if len(lost) == 1 else f"{len(lost)} links"
        super().__init__(f"{links} of the pages lead{'s' if len(lost) == 1 else ''} nowhere")
        self.lost = tuple(lost)


def output_folder(folder: Folder, course: Course) -> Path:
    """Return the folder into which a course is assembled."""
    return (folder.home / course.into).resolve()


def assemble(
    folder: Folder, course: Course, findings: Sequence[Finding], *, draft: bool = False
) -> Written:
    """Write the site of a course that has been read and checked.

    Raises NotOurs, LinksLost or OSError; the old course then stays whole.
    """
    target = output_folder(folder, course)
    make_sure_it_is_ours(target)
    return write_site(target, site_files(folder, course, findings, target, draft=draft))


def site_files(
    folder: Folder,
    course: Course,
    findings: Sequence[Finding],
    target: Path,
    *,
    draft: bool = False,
) -> dict[str, bytes]:
    """Return the files of a course's site, by path; photographs come from `target` if there.

    Raises LinksLost where a page leads nowhere.
    """
    photographs = {
        lesson.slug: tuple(_photographs(lesson, folder.bank)) for lesson in folder.lessons
    }
    site = Site(course, folder.bank, folder.lessons, tuple(findings), photographs, draft)
    pages = list(build_pages(site))
    originals = [photograph for found in photographs.values() for photograph in found]
    files = {page.path: page.text.encode() for page in pages}
    files |= dict(_pictures(originals, folder.bank, target))
    lost = list(lost_links(pages, files))
    if lost:
        raise LinksLost(lost)
    return files


def _photographs(lesson: Lesson, bank: Bank) -> Iterator[Photograph]:
    for picture in lesson.pictures:
        at_hand = bank.pictures.get(picture.file.value)
        if at_hand:
            data = Path(at_hand.path).read_bytes()
            name = Path(picture.file.value).stem
            copies = plan_copies(lesson.slug, name, data, (at_hand.width, at_hand.height))
            yield Photograph(picture, copies)


def _pictures(
    photographs: Sequence[Photograph], bank: Bank, target: Path
) -> Iterator[tuple[str, bytes]]:
    known = made_files(target)
    for photograph in photographs:
        wanting: list[Copy] = []
        for copy in photograph.copies:
            path = f"{PICTURES}{copy.file}"
            # The name holds a digest of the original: the same name is the same picture.
            kept = kept_file(target, path, known)
            if kept is None:
                wanting.append(copy)
            else:
                yield path, kept
        if wanting:
            data = Path(bank.pictures[photograph.picture.file.value].path).read_bytes()
            for copy, made in make_copies(data, wanting):
                yield f"{PICTURES}{copy.file}", made
