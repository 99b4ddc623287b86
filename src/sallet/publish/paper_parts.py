"""What the papers of a course have in common: the head of each, and words as templates take them."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from sallet.cards.content import KEEP
from sallet.cards.data import danger_data
from sallet.cards.sizes import PAPERS
from sallet.lesson.dangers import danger_of
from sallet.publish.sheets import STAMPS

if TYPE_CHECKING:
    from sallet.lesson.model import Lesson
    from sallet.publish.site import Site


def head_data(site: Site, title: str) -> dict[str, Any]:
    """Return what every paper is given; the paper's size is in millimetres, held upright."""
    course = site.course
    size = PAPERS[course.cards.paper]
    return {
        "title": f"{title} · {course.title}" if course.title else title,
        "course": course.title,
        "author": [course.teacher] if course.teacher else [],
        "language": course.language,
        "paper": {"width": size.width, "height": size.height},
        "draft": site.draft,
    }


def emergency_data(site: Site) -> dict[str, Any]:
    """Return whom to ring, as course.yml says it, and what is true whoever is rung."""
    return {"lines": list(site.course.emergency), "keep": KEEP}


def plant_data(lesson: Lesson) -> dict[str, str]:
    """Return how a plant is named: its names, and its danger in shape and word."""
    front = lesson.front
    return {
        "name": lesson.name,
        "scientific": front.scientific_name,
        **danger_data(danger_of(lesson)),
    }


def unread_words(lesson: Lesson) -> str:
    """Return the stamp of a lesson that no second reader has checked; nothing where one has."""
    return "" if lesson.front.is_checked else STAMPS["unreviewed"]
