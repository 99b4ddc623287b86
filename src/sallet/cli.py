"""The commands. Only this module touches the terminal, the environment and the exit code.

Exit codes: 0 clean, 1 something stops the course, 2 wrong usage or a disk that refuses.
"""

from __future__ import annotations

import io
import json
import shutil
import sys
import traceback
from dataclasses import replace
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

import click

from sallet import __version__
from sallet.cards.sizes import CARD_SIZES, PAPERS
from sallet.checks import CHECKS
from sallet.checks.catalogue import summary_of
from sallet.course.printing import EDGES, card_name
from sallet.course.reading import course_schema
from sallet.explaining import explain_words, nothing_known
from sallet.findings import Finding, as_json, as_sarif, as_text, stopping, summary
from sallet.folder import (
    COURSE_FILE,
    REFUSED,
    REFUSED_ABOUT,
    Folder,
    NotFound,
    lessons_folder,
    read_path,
)
from sallet.lesson.front_matter import front_matter_schema
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.plan_data import plan_json
from sallet.plan_text import moved_text, plan_text
from sallet.publish.assembling import (
    Checked,
    LinksLost,
    as_draft,
    assemble,
    look_through,
    print_cards,
)
from sallet.publish.card_files import SHEETS, is_card_file
from sallet.publish.writer import NotOurs, Written
from sallet.season.planning import make_plan
from sallet.season.spots import place_at
from sallet.starting import InTheWay, new_course, new_lesson, write_new
from sallet.typesetting.engine import EngineDied

if TYPE_CHECKING:
    from collections.abc import Callable

    from sallet.course.model import Course, Place
    from sallet.course.printing import CardName
    from sallet.typesetting.engine import Progress

CLEAN: Final = 0
STOPPED: Final = 1
USAGE: Final = 2

_NARROWEST: Final = 40
_WIDEST: Final = 100
"""Columns to which text is set on a terminal; into a file or a pipe always the most."""

_HERE = click.Path(path_type=Path)


@click.group(context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 92})
@click.version_option(__version__, prog_name="sallet")
def commands() -> None:
    """Make a checked course from lessons on wild edible plants: one Markdown file a plant."""


@commands.command(short_help="Look for faults in a course or a lesson.")
@click.argument("path", type=_HERE, default=".")
@click.option(
    "--format",
    "form",
    type=click.Choice(["text", "json", "sarif"]),
    default="text",
    help="For people, for programs, or SARIF 2.1.0 for editors and build servers.",
)
@click.option("--cards", is_flag=True, help="Measure the field cards too; makes no file.")
def check(path: Path, form: str, *, cards: bool) -> None:
    """Look for faults in a course folder (default: here), a folder of lessons or one lesson.

    Exit code 0 if nothing stops the course, 1 if something does.
    """
    if cards:
        folder, course = _course_at(path)
        findings = list(look_through(folder, course, teller("cards measured")).findings)
    else:
        folder = read_path(path, load_vocabulary())
        findings = folder.findings()
    click.echo(_formatted(findings, folder, form))
    sys.exit(STOPPED if stopping(findings) else CLEAN)


def _formatted(findings: list[Finding], folder: Folder, form: str) -> str:
    if form == "json":
        return as_json(findings)
    if form == "sarif":
        rules = {module.ID: summary_of(module) for module in CHECKS}
        return as_sarif(findings, rules | {REFUSED: REFUSED_ABOUT.split("\n", 1)[0]})
    return as_text(findings, folder.sources, colour=_colour())


def _colour() -> bool:
    return _terminal()


def _terminal() -> bool:
    return sys.stdout.isatty()


@commands.command(short_help="Explain a check, a label or a term.")
@click.argument("name", nargs=-1)
@click.option(
    "--json", "as_schema", is_flag=True, help="For `course.yml` and `lesson`: the JSON Schema."
)
def explain(name: tuple[str, ...], *, as_schema: bool) -> None:
    """Explain a check, a label, a term or a part of the plant. Without NAME: what there is.

    `sallet explain course.yml --json` prints a JSON Schema with which an editor completes and
    checks course.yml as you type; `sallet explain lesson --json` one for a lesson's head.
    """
    words = " ".join(name)
    if as_schema:
        _print_schema(words)
        return
    text = explain_words(words, load_vocabulary())
    if text is None:
        click.echo(nothing_known(words, load_vocabulary()), err=True)
        sys.exit(USAGE)
    click.echo(text)


def _print_schema(words: str) -> None:
    schemas: dict[str, Callable[[], dict[str, Any]]] = {
        "course.yml": course_schema,
        "course": course_schema,
        "lesson": front_matter_schema,
    }
    if words not in schemas:
        message = "a JSON Schema is there for `course.yml` and for `lesson`"
        raise click.UsageError(message)
    click.echo(json.dumps(schemas[words](), indent=2, ensure_ascii=False))


def _card_size(
    context: click.Context, option: click.Parameter, words: str | None
) -> CardName | None:
    if words is None:
        return None
    found = [name for name in CARD_SIZES if name == card_name(words)]
    if not found:
        message = f"expected one of {', '.join(CARD_SIZES)}"
        raise click.BadParameter(message, context, option)
    return found[0]


def _place(context: click.Context, option: click.Parameter, words: str | None) -> Place | None:
    if words is None:
        return None
    try:
        return place_at(words)
    except ValueError as error:
        raise click.BadParameter(str(error), context, option) from error


@commands.command(short_help="Plan the sessions by the season.")
@click.argument("path", type=_HERE, default=".")
@click.option(
    "--at",
    "at",
    callback=_place,
    metavar="LAT,LON,ELEV",
    help="Plan for another place, such as 57.4,-2.6,450 (degrees north, degrees east, metres), "
    "and show how the year moves.",
)
@click.option(
    "--on",
    "on",
    type=click.DateTime(["%Y-%m-%d"]),
    metavar="YYYY-MM-DD",
    help="A day to look at instead of today.",
)
@click.option("--json", "as_data", is_flag=True, help="For programs.")
def plan(path: Path, at: Place | None, on: datetime | None, *, as_data: bool) -> None:
    """Show which plant is taught in which session and why, and what is in season today."""
    folder, course = _course_at(path)
    today = on.date() if on else datetime.now().astimezone().date()
    here = make_plan(course, folder.bank, folder.lessons)
    there = replace(course, place=at, seen_here=()) if at else course
    shown = make_plan(there, folder.bank, folder.lessons) if at else here
    if as_data:
        click.echo(plan_json(shown, there, today))
    else:
        click.echo(plan_text(shown, there, today, _width()))
        if at:
            click.echo(f"\n{moved_text(here, shown, _width())}")
    stops = stopping(folder.findings())
    if stops:
        click.echo(f"\n{summary(stops)}; `sallet check` tells what is wrong", err=True)


def _width() -> int:
    if not _terminal():
        return _WIDEST
    return max(_NARROWEST, min(_WIDEST, shutil.get_terminal_size().columns))


def _course_at(path: Path) -> tuple[Folder, Course]:
    folder = read_path(path, load_vocabulary())
    if folder.course is None:
        message = f"`{path}` is no course; expected a folder with a course.yml"
        raise click.UsageError(message)
    return folder, folder.course


@commands.command("assemble", short_help="Make the pages, cards and papers of a course.")
@click.argument("path", type=_HERE, default=".")
@click.option("--draft", is_flag=True, help="Assemble in spite of faults; every page says DRAFT.")
def assemble_course(path: Path, *, draft: bool) -> None:
    """Assemble a course into its output folder: its pages, its field cards, its papers to print.

    The pages open from disk and on any host. A lesson with a fault that stops leaves the old pages as they are.
    """
    checked = _checked(*_course_at(path), draft=draft)
    written = assemble(checked, teller("documents typeset"))
    click.echo(_told(written, list(checked.findings), checked.target))


@commands.command(short_help="Make the field cards of a course, ready to print.")
@click.argument("path", type=_HERE, default=".")
@click.option("--size", callback=_card_size, help="The cards: A6, A7, 4x6 in or 3x5 in.")
@click.option("--paper", type=click.Choice(PAPERS, case_sensitive=False), help="The paper.")
@click.option(
    "--duplex",
    type=click.Choice(EDGES),
    help="The edge over which the printer turns the sheet.",
)
@click.option(
    "--into", type=_HERE, help="The folder to write into; the course's if you say nothing."
)
@click.option("--draft", is_flag=True, help="In spite of faults; every card says DRAFT.")
def cards(path: Path, into: Path | None, *, draft: bool, **asked: Any) -> None:
    """Make the field cards: one PDF for the printer, one for a print shop, and one for each plant.

    They go into the folder `print`. What the options leave open is as course.yml says. Pages that
    were assembled before stay as they are. A card that cannot hold all its cautions is never made.
    """
    folder, course = _course_at(path)
    if not course.cards.wanted:
        raise click.UsageError("course.yml says `cards: none`; say there which size they have")
    given = {name: value for name, value in asked.items() if value}
    course = replace(course, cards=replace(course.cards, **given))
    checked = _checked(replace(folder, course=course), course, draft=draft)
    target = into.resolve() if into else checked.target
    written = print_cards(checked, target, teller("documents typeset"))
    click.echo(_cards_told(checked, written, target))


def _checked(folder: Folder, course: Course, *, draft: bool) -> Checked:
    """Return a course that may be published; what stops it is told, and ends the command."""
    checked = look_through(folder, course, teller("cards measured"))
    stops = stopping(checked.findings)
    if stops and not draft:
        click.echo(as_text(stops, folder.sources, colour=_colour()), err=True)
        click.echo("\nNothing was made, and what was there before is as it was.", err=True)
        sys.exit(STOPPED)
    # A course without a fault that stops is no draft, whatever was asked.
    return as_draft(checked, teller("cards measured")) if stops else checked


def teller(words: str) -> Progress | None:
    """Return what tells how far it is, on a terminal only and on one line of it."""
    if not sys.stderr.isatty():
        return None

    def tell(done: int, count: int) -> None:
        end = "\n" if done == count else ""
        click.echo(f"\r{done} of {count} {words}{end}", err=True, nl=False)

    return tell


def _cards_told(checked: Checked, written: Written, target: Path) -> str:
    made = [p for p in (*written.new, *written.changed, *written.unchanged) if is_card_file(p)]
    fitted = checked.printed.fitted if checked.printed else ()
    ready = [one for one in fitted if one.fits]
    asked, folder = checked.course.cards, _near(target)
    lines = [
        f"left out, for it does not fit: {one.card.lesson.name}" for one in fitted if not one.fits
    ]
    sheet = f"{asked.size} on {asked.paper}, backs for a turn over the {asked.duplex}"
    lines.append(f"{len(ready)} cards, {sheet}: {len(made)} files in {folder}")
    if ready:
        smallest = min(side.points for one in ready for side in one.sides.values())
        lines += [f"the smallest text is {smallest:g} points", f"open {_near(target / SHEETS)}"]
    if checked.findings:
        found = summary(list(checked.findings))
        lines.append(f"found: {found}; `sallet check --cards` tells more")
    return "\n".join(lines)


def _told(written: Written, findings: list[Finding], target: Path) -> str:
    files = (*written.new, *written.changed, *written.unchanged)
    pages, papers = ([p for p in files if p.endswith(end)] for end in (".html", ".pdf"))
    lines = [
        f"{len(pages)} pages and {len(papers)} papers in {_near(target)}: {_counted(written)}",
        f"open {_near(target / 'index.html')}",
    ]
    if written.carried_over:
        lines.insert(1, f"kept what sallet did not make: {', '.join(written.carried_over)}")
    if findings:
        lines.append(f"found: {summary(findings)}; `sallet check --cards` tells more")
    return "\n".join(lines)


def _counted(written: Written) -> str:
    counts = {
        "files new": written.new,
        "changed": written.changed,
        "as they were": written.unchanged,
        "removed": written.removed,
    }
    return ", ".join(f"{len(files)} {words}" for words, files in counts.items())


def _near(path: Path) -> str:
    try:
        return path.relative_to(Path.cwd()).as_posix()
    except ValueError:
        return str(path)


@commands.command(short_help="Start a new course.")
@click.argument("folder", type=_HERE)
@click.option("--title", help="The course's title; the folder's name if you give none.")
def start(folder: Path, title: str | None) -> None:
    """Start a new course in FOLDER: a course.yml to fill in, and a place for its lessons."""
    write_new(folder, new_course(title or folder.resolve().name))
    click.echo(
        f"{_near(folder.resolve() / COURSE_FILE)} is there to be filled in. Next:\n"
        f"  cd {folder}\n"
        '  sallet draft "Stinging nettle"'
    )


@commands.command(short_help="Draft a new lesson.")
@click.argument("name")
@click.option("--look-alike", is_flag=True, help="A plant to keep away from.")
@click.option("--in", "path", type=_HERE, default=".", help="The course; here if you say nothing.")
def draft(name: str, path: Path, *, look_alike: bool) -> None:
    """Draft a new lesson on the plant NAME: headings and bullets to fill in.

    `sallet check` then tells what is missing.
    """
    if not name.strip():
        raise click.UsageError("name the plant")
    file, text = new_lesson(name, "look-alike" if look_alike else "food")
    folder = lessons_folder(path)
    write_new(folder, {file: text})
    shown = _near((folder / file).resolve())
    click.echo(f"{shown} is there to be filled in. `sallet check {shown}` tells what is missing.")


def main() -> None:
    """Run a command; whatever happens, its user reads a sentence and never a traceback."""
    _let_every_letter_through()
    try:
        commands(standalone_mode=False)
    except click.ClickException as error:
        error.show()
        sys.exit(USAGE)
    except click.exceptions.Abort:
        _fail("stopped")
    except (NotFound, NotOurs, InTheWay, EngineDied) as refusal:
        _fail(str(refusal))
    except LinksLost as lost:
        _fail("\n".join([f"{lost}:", *(f"  {link.page} → {link.target}" for link in lost.lost)]))
    except OSError as error:
        _fail(f"{error.filename or 'the disk'}: {error.strerror or error}")
    except Exception as error:  # noqa: BLE001 - the last resort, which says whose fault it is
        _fail(_our_fault(error))


def _let_every_letter_through() -> None:
    # An older code page lacks `→`: a terminal then shows `?`, a file or pipe gets UTF-8.
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            if stream.isatty():
                stream.reconfigure(errors="replace")
            else:
                stream.reconfigure(encoding="utf-8")


def _fail(message: str) -> None:
    click.echo(f"sallet: {message}", err=True)
    sys.exit(USAGE)


def _our_fault(error: Exception) -> str:
    last = traceback.extract_tb(error.__traceback__)[-1]
    where = f"{Path(last.filename).name}, line {last.lineno}"
    return (
        f"a fault in sallet itself, not in your lessons: {type(error).__name__}: {error} ({where}).\n"
        "Nothing was changed. Please report it, with the lesson that brings it about."
    )
