"""Assembles a course: reads the photographs, builds the pages, follows the links, writes."""

from __future__ import annotations

from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING

from sallet.drawing.figures import figures
from sallet.findings import in_order
from sallet.publish.card_files import card_jobs, is_card_file
from sallet.publish.links import lost_links
from sallet.publish.pages import build_pages
from sallet.publish.photographs import Copy, Photograph, make_copies, plan_copies
from sallet.publish.prints import print_jobs, set_in_print
from sallet.publish.site import Site
from sallet.publish.writer import Written, kept_file, made_files, make_sure_it_is_ours, write_site

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.cards.printed import Printed
    from sallet.course.model import Course
    from sallet.findings import Finding
    from sallet.folder import Folder
    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson
    from sallet.publish.links import LostLink
    from sallet.typesetting.engine import Progress

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


@dataclass(frozen=True)
class Checked:
    """A course that has been read, checked and measured."""

    folder: Folder
    course: Course
    findings: tuple[Finding, ...] = ()
    printed: Printed | None = None
    draft: bool = False

    @property
    def target(self) -> Path:
        """Return the folder into which it is assembled."""
        return output_folder(self.folder, self.course)

    @property
    def missing(self) -> frozenset[str]:
        """Return the letters of its texts that no font of print has."""
        return self.printed.missing if self.printed else frozenset()


def look_through(folder: Folder, course: Course, progress: Progress | None = None) -> Checked:
    """Return a course with all that is found in its lessons and in its cards, which are measured.

    `progress` is told of the cards.
    """
    printed = folder.measured(progress)
    found = folder.print_findings(printed) if printed else []
    return Checked(folder, course, tuple(in_order([*folder.findings(), *found])), printed)


def as_draft(checked: Checked, progress: Progress | None = None) -> Checked:
    """Return a course with faults that stop it as a draft: its cards say so, and are measured again."""
    return replace(checked, printed=checked.folder.measured(progress, draft=True), draft=True)


def assemble(checked: Checked, progress: Progress | None = None) -> Written:
    """Write the site of a course; `progress` is told of the documents that are typeset.

    Raises NotOurs, LinksLost, Untypeset, EngineDied or OSError; the old course then stays whole.
    """
    make_sure_it_is_ours(checked.target)
    return write_site(checked.target, site_files(checked, checked.target, progress))


def print_cards(checked: Checked, target: Path, progress: Progress | None = None) -> Written:
    """Write the field cards of a course into a folder; what else sallet made there stays.

    Raises NotOurs, Untypeset, EngineDied or OSError; the folder then stays as it was.
    """
    make_sure_it_is_ours(target)
    fitted = checked.printed.fitted if checked.printed else ()
    vocabulary = checked.folder.bank.vocabulary
    jobs = dict(card_jobs(fitted, checked.course, lambda lesson: figures(lesson.facts, vocabulary)))
    return write_site(target, dict(_others(target)) | set_in_print(jobs, progress, checked.missing))


def _others(target: Path) -> Iterator[tuple[str, bytes]]:
    for path in made_files(target):
        if not is_card_file(path) and (target / path).is_file():
            yield path, (target / path).read_bytes()


def site_files(
    checked: Checked, target: Path, progress: Progress | None = None
) -> dict[str, bytes]:
    """Return the files of a course's site, by path; photographs come from `target` if there.

    Raises LinksLost where a page leads nowhere, Untypeset or EngineDied where print fails.
    """
    folder = checked.folder
    photographs = {
        lesson.slug: tuple(_photographs(lesson, folder.bank)) for lesson in folder.lessons
    }
    site = Site(
        checked.course, folder.bank, folder.lessons, checked.findings, photographs,
        checked.draft, checked.printed,
    )  # fmt: skip
    prints = print_jobs(site)
    pages = list(build_pages(site, prints))
    originals = [photograph for found in photographs.values() for photograph in found]
    files = {page.path: page.text.encode() for page in pages}
    files |= dict(_pictures(originals, folder.bank, target))
    lost = list(lost_links(pages, {*files, *prints}))
    if lost:
        raise LinksLost(lost)
    return files | set_in_print(prints, progress, checked.missing)


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
