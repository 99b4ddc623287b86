"""All that is printed: a literal table of what makes documents, and the documents typeset."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.publish.card_files import card_jobs
from sallet.publish.paper_poster import poster_papers
from sallet.publish.paper_questions import question_papers
from sallet.publish.paper_walks import walk_papers
from sallet.typesetting.engine import typeset
from sallet.typesetting.letters import legible

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from sallet.publish.site import Site
    from sallet.typesetting.engine import Progress
    from sallet.typesetting.jobs import Job


def _cards(site: Site) -> Iterator[tuple[str, Job]]:
    if site.printed:
        drawn = site.setting.drawn
        yield from card_jobs(
            site.printed.fitted, site.course, lambda lesson: drawn[lesson.slug].figures
        )


MAKERS: Final = (_cards, walk_papers, poster_papers, question_papers)
"""What makes documents of a course, each with its path in the site."""


def print_jobs(site: Site) -> dict[str, Job]:
    """Return the documents of a course by path; none where its cards were not measured."""
    return dict(made for maker in MAKERS for made in maker(site)) if site.printed else {}


def set_in_print(
    jobs: Mapping[str, Job],
    progress: Progress | None = None,
    missing: frozenset[str] = frozenset(),
) -> dict[str, bytes]:
    """Return documents typeset, by path; a draft may have letters that are `missing` in print.

    Raises Untypeset or EngineDied.
    """
    documents = [legible(job, missing) if missing else job for job in jobs.values()]
    return dict(zip(jobs, typeset(documents, progress), strict=True))
