"""`sallet plan --json`: the course's plan for programs."""

from __future__ import annotations

import json
from typing import TYPE_CHECKING, Any

from sallet.lesson.values.times import month_and_day
from sallet.season.hopkins import spot_of
from sallet.season.move import windows_of
from sallet.season.teachable import day_of
from sallet.season.words import row_words

if TYPE_CHECKING:
    from datetime import date

    from sallet.course.model import Course
    from sallet.season.here import PlantYear, Row
    from sallet.season.plan import Meeting, Plan, Taught
    from sallet.season.telling import Telling


def plan_json(plan: Plan, course: Course, today: date) -> str:
    """Return the plan as JSON: dates as ISO 8601, days of the year as MM-DD, lengths in minutes.

    Plants are named as their pages are; days by which the year is moved are positive where spring
    is later.
    """
    return json.dumps(_plan(plan, course, today), indent=2, ensure_ascii=False)


def _plan(plan: Plan, course: Course, today: date) -> dict[str, Any]:
    spot = spot_of(course.place)
    return {
        "course": course.title,
        "place": {
            "name": course.place.name,
            "latitude": spot.latitude if spot else None,
            "longitude": spot.longitude if spot else None,
            "elevation": spot.elevation if spot else None,
        },
        "taught in season": len(plan.in_season),
        "look-alike pairs": {"all": len(plan.pairs), "together": plan.pairs_together},
        "plants": [_plant(year, plan) for year in plan.years],
        "sessions": [_meeting(meeting) for meeting in plan.meetings],
        "out of season": [
            {
                "plant": taught.lesson.slug,
                "session": meeting.number,
                "nearest": _iso(taught.nearest),
            }
            for meeting, taught in plan.out_of_season
        ],
        "without a session": [
            {"plant": unplaced.what.year.lesson.slug, "nearest": _iso(unplaced.nearest)}
            for unplaced in plan.unplaced
        ],
        "today": {
            "date": today.isoformat(),
            "in season": [
                {"plant": w.year.lesson.slug, "stages": list(w.stages(day_of(today)))}
                for w in plan.plants
                if w.is_on(day_of(today))
            ],
            "to keep away from": [
                {
                    "plant": w.year.lesson.slug,
                    "stages": list(w.stages(day_of(today))),
                    "sure": w.is_about(day_of(today)),
                }
                for w in plan.plants
                if not w.year.lesson.is_food
                and (w.is_about(day_of(today)) or w.is_unsure_on(day_of(today)))
            ],
        },
    }


def _plant(year: PlantYear, plan: Plan) -> dict[str, Any]:
    return {
        "plant": year.lesson.slug,
        "name": year.lesson.name,
        "taught as": year.lesson.front.taught_as,
        "danger": year.lesson.front.danger,
        "moved": {
            "spring": _days(year.move.spring),
            "autumn": _days(year.move.autumn),
            "half year": year.move.to_other_half,
            "left out": list(year.shift.left_out),
            "seen here": [o.observation.words for o in year.observed],
        },
        "parts": [_row(row) for row in year.rows],
        "not yet sure": [
            _doubt(telling) for telling in plan.tellings.get(year.lesson.slug, ()) if telling.unsure
        ],
    }


def _doubt(telling: Telling) -> dict[str, Any]:
    return {
        "look-alike": telling.name,
        "danger": telling.danger,
        "days": [[_day(w.first), _day(w.last)] for w in windows_of(telling.unsure)],
        "settled by": telling.settled_by or None,
    }


def _days(days: float) -> float:
    return round(days, 1) or 0.0  # never -0.0


def _row(row: Row) -> dict[str, Any]:
    return {
        "part": row.name,
        "eaten": row.kind == "eaten",
        "when": row_words(row),
        "estimate": row.about,
        "days": [[_day(window.first), _day(window.last)] for window in row.windows],
    }


def _meeting(meeting: Meeting) -> dict[str, Any]:
    session = meeting.session
    return {
        "session": meeting.number,
        "date": session.date.isoformat(),
        "starts": session.starts.isoformat("minutes") if session.starts else None,
        "minutes": session.minutes,
        "title": session.title,
        "meets at": session.meets_at,
        "holds": session.holds,
        "plants": [_taught(taught) for taught in meeting.taught],
    }


def _taught(taught: Taught) -> dict[str, Any]:
    return {
        "plant": taught.lesson.slug,
        "in season": taught.in_season,
        "stages": list(taught.stages),
        "named in course.yml": taught.pinned,
        "taken for": [lesson.slug for lesson in taught.confused_with],
        "look-alikes near": [
            {"plant": lesson.slug, "session": number} for lesson, number in taught.near
        ],
        "after": [lesson.slug for lesson in taught.after],
        "nearest": _iso(taught.nearest),
    }


def _iso(day: date | None) -> str | None:
    return day.isoformat() if day else None


def _day(day: int) -> str:
    month, on = month_and_day(day)
    return f"{month:02}-{on:02}"
