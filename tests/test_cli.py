"""The commands: what they print, where, and the exit code."""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
from dataclasses import dataclass
from datetime import datetime
from typing import TYPE_CHECKING, Any

import click
import pytest

from sallet import __version__, cli
from sallet.checks import card_too_full, no_name, not_in_print, running, unknown_state
from sallet.checks.catalogue import page_of, summary_of
from sallet.course.reading import course_schema
from sallet.lesson.front_matter import front_matter_schema
from sallet.publish.writer import MARKER

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path


CLEAN = "---\nname: Yew\ntaught as: look-alike\ndanger: deadly\n---\n"
WARNED = "---\nname: Elder\n---\n## Identification\n### Leaves\n- margin: entyre\n"
STOPPED = "---\nname:\n---\n"


@dataclass(frozen=True)
class Run:
    """What a command did."""

    code: int
    out: str
    err: str


if TYPE_CHECKING:
    Sallet = Callable[..., Run]


@pytest.fixture
def sallet(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> Sallet:
    """Return a function that runs a command as from a shell, with two checks only."""
    for module in (running, cli):
        monkeypatch.setattr(module, "CHECKS", (no_name, unknown_state))

    def run(*arguments: str) -> Run:
        monkeypatch.setattr(sys, "argv", ["sallet", *arguments])
        try:
            cli.main()
            code: Any = 0
        except SystemExit as end:
            code = end.code
        printed = capsys.readouterr()
        return Run(code or 0, printed.out, printed.err)

    return run


@pytest.fixture
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Return a working folder with a course that has one lesson."""
    monkeypatch.chdir(tmp_path)
    (tmp_path / "lessons").mkdir()
    (tmp_path / "course.yml").write_text("title: Hedge\n")
    lay(tmp_path, "yew", CLEAN)
    return tmp_path


def lay(home: Path, name: str, text: str) -> None:
    """Write a lesson."""
    (home / "lessons" / f"{name}.md").write_text(text, "utf-8")


def pages(home: Path) -> dict[str, bytes]:
    """Return the files of the output folder."""
    out = home / "site_out"
    files = (path for path in out.rglob("*") if path.is_file())
    return {path.relative_to(out).as_posix(): path.read_bytes() for path in files}


def counted(home: Path) -> tuple[str, int]:
    """Return what is told of pages and papers, and how many files there are, without their list."""
    names = [name for name in pages(home) if name != MARKER]
    made, papers = (sum(name.endswith(end) for name in names) for end in (".html", ".pdf"))
    return f"{made} pages and {papers} papers", len(names)


# ---- check --------------------------------------------------------------------------------


@pytest.mark.usefixtures("home")
def test_a_clean_course_is_found_clean(sallet: Sallet) -> None:
    assert sallet("check") == Run(0, "nothing found\n", "")


def test_warnings_are_printed_and_are_no_failure(sallet: Sallet, home: Path) -> None:
    lay(home, "elder", WARNED)
    assert sallet("check", "lessons/elder.md") == Run(0, """\
lessons/elder.md:6:11: warn: `entyre` is no known margin [unknown-state]
    - margin: entyre
              ^
    → did you mean `entire`?

1 warn (to look at)
""", "")  # fmt: skip


def test_what_stops_the_course_is_exit_code_1(sallet: Sallet, home: Path) -> None:
    lay(home, "elder", WARNED)
    lay(home, "ash", STOPPED)
    assert sallet("check") == Run(1, """\
lessons/ash.md:2:6: stop: the plant has no name, expected its common name behind `name:` [no-name]
    name:
         ^
    → write `name: Ramsons`, or what the plant is called, between the `---` lines

lessons/elder.md:6:11: warn: `entyre` is no known margin [unknown-state]
    - margin: entyre
              ^
    → did you mean `entire`?

1 stop (to mend before publishing) · 1 warn (to look at)
""", "")  # fmt: skip


def test_a_course_may_raise_a_warning_to_a_stop(sallet: Sallet, home: Path) -> None:
    lay(home, "elder", WARNED)
    (home / "course.yml").write_text("raise: {unknown-state: stop}\n")
    run = sallet("check")
    assert run.code == 1
    assert run.out.startswith("lessons/elder.md:6:11: stop: `entyre` is no known margin")


def test_findings_for_programs(sallet: Sallet, home: Path) -> None:
    lay(home, "ash", STOPPED)
    run = sallet("check", "--format", "json")
    assert (run.code, run.err) == (1, "")
    assert json.loads(run.out) == {"findings": [{
        "file": "lessons/ash.md", "line": 2, "column": 6, "check": "no-name", "severity": "stop",
        "message": "the plant has no name, expected its common name behind `name:`",
        "hint": "write `name: Ramsons`, or what the plant is called, between the `---` lines",
    }]}  # fmt: skip


def test_findings_for_editors_and_build_servers(sallet: Sallet, home: Path) -> None:
    """Source: SARIF 2.1.0 (OASIS standard): version, tool.driver, level, physicalLocation."""
    lay(home, "elder", WARNED)
    run = sallet("check", ".", "--format", "sarif")
    about = "A file that cannot be opened, or cannot be read as text."
    rules = [(no_name.ID, summary_of(no_name)), (unknown_state.ID, summary_of(unknown_state)),
             ("refused-file", about)]  # fmt: skip
    region = {"startLine": 6, "startColumn": 11}
    place = {"artifactLocation": {"uri": "lessons/elder.md"}, "region": region}
    assert (run.code, run.err) == (0, "")
    assert json.loads(run.out) == {
        "$schema": "https://json.schemastore.org/sarif-2.1.0.json",
        "version": "2.1.0",
        "runs": [{
            "tool": {"driver": {
                "name": "sallet", "version": __version__,
                "rules": [{"id": i, "shortDescription": {"text": text}} for i, text in rules],
            }},
            "columnKind": "unicodeCodePoints",
            "results": [{
                "ruleId": "unknown-state", "level": "warning",
                "message": {"text": "`entyre` is no known margin. did you mean `entire`?"},
                "locations": [{"physicalLocation": place}],
            }],
        }],
    }  # fmt: skip


def test_on_a_terminal_the_severity_is_coloured(
    sallet: Sallet, home: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    lay(home, "elder", WARNED)
    monkeypatch.setattr(cli, "_colour", lambda: True)
    monkeypatch.setattr(click, "echo", lambda text, **_: print(text))  # noqa: T201 - click strips colours
    first = sallet("check").out.split("\n")[0]
    assert first == (
        "lessons/elder.md:6:11: \033[33;1mwarn\033[0m: `entyre` is no known margin [unknown-state]"
    )


# ---- explain ------------------------------------------------------------------------------


def test_a_check_is_explained(sallet: Sallet) -> None:
    assert sallet("explain", "no-name") == Run(0, page_of(no_name) + "\n", "")


def test_a_term_of_several_words_is_explained(sallet: Sallet) -> None:
    assert sallet("explain", "finely", "serrate").out.startswith(
        "finely serrate (Leaves, margin)\n"
    )


def test_a_word_that_names_nothing_is_wrong_usage(sallet: Sallet) -> None:
    assert sallet("explain", "qqqq") == Run(2, "", "sallet: `qqqq` is no check, label or term\n")


@pytest.mark.parametrize(
    ("name", "schema"),
    [("course.yml", course_schema), ("course", course_schema), ("lesson", front_matter_schema)],
)
def test_the_schemas_for_editors_are_printed(
    sallet: Sallet, name: str, schema: Callable[[], Any]
) -> None:
    run = sallet("explain", name, "--json")
    assert (run.code, run.err) == (0, "")
    assert json.loads(run.out) == schema()


# ---- assemble -----------------------------------------------------------------------------


def test_a_course_is_assembled_and_the_way_to_it_is_told(sallet: Sallet, home: Path) -> None:
    run = sallet("assemble")
    made, files = counted(home)
    assert run == Run(0, f"""\
{made} in site_out: {files} files new, 0 changed, 0 as they were, 0 removed
open site_out/index.html
""", "")  # fmt: skip
    assert (home / "site_out" / "plants" / "yew.html").is_file()
    assert sallet("assemble", "course.yml").out.startswith(
        f"{made} in site_out: 0 files new, 0 changed, {files} as they were, 0 removed\n"
    )


def test_what_was_found_and_what_was_kept_is_told(sallet: Sallet, home: Path) -> None:
    lay(home, "elder", WARNED)
    sallet("assemble")
    (home / "site_out" / "CNAME").write_text("hedge.example")
    (home / "lessons" / "yew.md").unlink()
    run = sallet("assemble")
    told = run.out.split("\n")[0]
    assert told.startswith(f"{counted(home)[0]} in site_out: 0 files new, ")
    assert told.endswith(", 2 removed")  # its page and its card
    assert run.out.split("\n")[1:] == [
        "kept what sallet did not make: CNAME",
        "open site_out/index.html",
        "found: 1 warn (to look at); `sallet check --cards` tells more",
        "",
    ]


def test_what_stops_the_course_leaves_the_old_pages_as_they_were(
    sallet: Sallet, home: Path
) -> None:
    sallet("assemble")
    before = pages(home)
    lay(home, "elder", WARNED)
    lay(home, "ash", STOPPED)
    assert sallet("assemble") == Run(1, "", """\
lessons/ash.md:2:6: stop: the plant has no name, expected its common name behind `name:` [no-name]
    name:
         ^
    → write `name: Ramsons`, or what the plant is called, between the `---` lines

1 stop (to mend before publishing)

Nothing was made, and what was there before is as it was.
""")  # fmt: skip
    assert pages(home) == before


def test_a_draft_is_assembled_in_spite_of_what_stops_the_course(sallet: Sallet, home: Path) -> None:
    lay(home, "ash", STOPPED)
    run = sallet("assemble", "--draft")
    assert (run.code, run.err) == (0, "")
    stamped = [path for path, data in pages(home).items() if b"<strong>Draft.</strong>" in data]
    assert sorted(stamped) == sorted(path for path in pages(home) if path.endswith(".html"))


def test_a_clean_course_is_no_draft_whatever_was_asked(sallet: Sallet, home: Path) -> None:
    sallet("assemble", "--draft")
    assert [path for path, data in pages(home).items() if b"<strong>Draft.</strong>" in data] == []


def test_a_folder_of_other_things_is_never_written_into(sallet: Sallet, home: Path) -> None:
    (home / "course.yml").write_text("into: lessons\n")
    assert sallet("assemble") == Run(2, "", (
        f"sallet: `{home.resolve() / 'lessons'}` holds files that sallet did not make; "
        "name another folder in `into:`, or empty this one yourself\n"
    ))  # fmt: skip
    assert [path.name for path in (home / "lessons").iterdir()] == ["yew.md"]


def test_links_that_lead_nowhere_are_told(sallet: Sallet, home: Path) -> None:
    (home / "course.yml").write_text("about: See [this](nowhere.html).\n")
    assert sallet("assemble") == Run(2, "", (
        "sallet: 1 link of the pages leads nowhere:\n  index.html → nowhere.html\n"
    ))  # fmt: skip
    assert not (home / "site_out").exists()


# ---- cards --------------------------------------------------------------------------------

LONG = (
    "---\nname: Elder\n---\n## Cautions\n- law: "
    + "Ask the owner of the hedge first. " * 200
    + "\n"
)
TOO_FULL = """\
lessons/elder.md:5:8: stop: the back of the field card does not fit on A6: at 7 points it is {over} mm too tall; the longest is the caution on law [card-too-full]
"""


def cards_in(folder: Path) -> list[str]:
    """Return the files of print in a folder, by path."""
    found = (path for path in folder.rglob("*") if path.suffix == ".pdf")
    return sorted(path.relative_to(folder).as_posix() for path in found)


def test_cards_are_made_for_the_printer_the_shop_and_each_plant(sallet: Sallet, home: Path) -> None:
    assert sallet("cards") == Run(0, """\
1 cards, A6 on A4, backs for a turn over the long edge: 3 files in site_out
the smallest text is 10 points
open site_out/print/field-cards.pdf
""", "")  # fmt: skip
    assert cards_in(home / "site_out") == [
        "print/cards/yew.pdf", "print/field-cards-single.pdf", "print/field-cards.pdf",
    ]  # fmt: skip


def test_size_paper_edge_and_folder_can_be_asked_for(sallet: Sallet, home: Path) -> None:
    asked = ("--size", "3x5 in", "--paper", "letter", "--duplex", "short edge", "--into", "paper")
    assert (
        sallet("cards", *asked).out
        == """\
1 cards, 3×5 in on Letter, backs for a turn over the short edge: 3 files in paper
the smallest text is 10 points
open paper/print/field-cards.pdf
"""
    )
    assert len(cards_in(home / "paper")) == 3
    assert not (home / "site_out").exists()


def test_the_pages_that_were_assembled_stay_where_cards_are_made_anew(
    sallet: Sallet, home: Path
) -> None:
    sallet("assemble")
    before = pages(home)
    lay(home, "ash", CLEAN.replace("Yew", "Ash"))
    sallet("cards")
    after = pages(home)
    changed = {path for path in after if after[path] != before.get(path)}
    assert changed - {"made-by-sallet.json"} == {
        "print/cards/ash.pdf", "print/field-cards-single.pdf", "print/field-cards.pdf",
    }  # fmt: skip
    assert before.keys() <= after.keys()
    (home / "lessons" / "ash.md").unlink()
    sallet("cards")
    assert pages(home) == before


def test_a_card_that_cannot_hold_its_cautions_is_never_made(
    sallet: Sallet, home: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    for module in (running, cli):
        monkeypatch.setattr(module, "CHECKS", (card_too_full,))
    lay(home, "elder", LONG)
    run = sallet("cards")
    assert (run.code, run.out) == (1, "")
    assert re.fullmatch(
        re.escape(TOO_FULL).replace(r"\{over\}", "[0-9.]+"), run.err.split("    ")[0]
    )
    assert run.err.endswith("\nNothing was made, and what was there before is as it was.\n")
    assert not (home / "site_out").exists()
    assert sallet("check", "--cards").out.startswith(run.err.split(" at 7 points")[0])
    assert sallet("check", "--cards").code == 1
    assert sallet("check").code == 0


def test_a_draft_has_the_cards_that_fit_and_names_the_others(
    sallet: Sallet, home: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    for module in (running, cli):
        monkeypatch.setattr(module, "CHECKS", (card_too_full,))
    lay(home, "elder", LONG)
    assert sallet("cards", "--draft").out.startswith(
        "left out, for it does not fit: Elder\n1 cards, A6 on A4, "
    )
    assert cards_in(home / "site_out") == [
        "print/cards/yew.pdf", "print/field-cards-single.pdf", "print/field-cards.pdf",
    ]  # fmt: skip


def test_a_draft_shows_where_a_letter_cannot_be_printed(
    sallet: Sallet, home: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    for module in (running, cli):
        monkeypatch.setattr(module, "CHECKS", (not_in_print,))
    (home / "course.yml").write_text("title: Hedge ☠\nsessions: [{date: 2027-04-03, title: ☠}]\n")
    lay(home, "elder", CLEAN.replace("Yew", "Elder ✗") + "## Season\n- leaves: May\n")
    assert sallet("assemble").code == 1
    run = sallet("assemble", "--draft")
    assert (run.code, run.err) == (0, "")
    assert "print/cards/elder.pdf" in cards_in(home / "site_out")


def test_a_course_may_have_no_cards(
    sallet: Sallet, home: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    for module in (running, cli):
        monkeypatch.setattr(module, "CHECKS", (card_too_full,))
    (home / "course.yml").write_text("title: Hedge\ncards: none\n")
    lay(home, "elder", LONG)
    assert sallet("assemble").code == 0
    assert [path for path in cards_in(home / "site_out") if "card" in path] == []
    run = sallet("cards")
    assert (run.code, run.out) == (2, "")
    assert run.err.endswith("course.yml says `cards: none`; say there which size they have\n")


def test_cards_are_made_of_a_course_only(sallet: Sallet, home: Path) -> None:  # noqa: ARG001
    for command in (("cards", "lessons"), ("check", "--cards", "lessons/yew.md")):
        run = sallet(*command)
        assert (run.code, run.out) == (2, "")
        assert run.err.endswith("is no course; expected a folder with a course.yml\n")


def test_a_size_that_there_is_not_is_told(sallet: Sallet, home: Path) -> None:  # noqa: ARG001
    run = sallet("cards", "--size", "B5")
    assert run.code == 2
    assert run.err.endswith("Invalid value for '--size': expected one of A6, A7, 4×6 in, 3×5 in\n")


def test_a_terminal_is_told_how_far_it_is(
    home: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    del home
    monkeypatch.setattr(sys.stderr, "isatty", lambda: True)
    tell = cli.teller("cards measured")
    assert tell is not None
    tell(12, 20)
    tell(20, 20)
    assert capsys.readouterr().err == "\r12 of 20 cards measured\r20 of 20 cards measured\n"


# ---- plan ---------------------------------------------------------------------------------

PLANNED = """title: Hedge
place: {name: Askerby, latitude: 54.4, longitude: -2.6, elevation: 150 m}
sessions: [{date: 2027-06-05}]
"""
ELDER = """---
name: Elder
seen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}
---
## Edible parts
- flowers: June; boiled
"""


@pytest.fixture
def walk(home: Path) -> Path:
    """Return a working folder with a course that teaches elder in its one session."""
    (home / "lessons" / "yew.md").unlink()
    (home / "course.yml").write_text(PLANNED)
    lay(home, "elder", ELDER)
    return home


@pytest.mark.usefixtures("walk")
def test_a_course_is_planned(sallet: Sallet) -> None:
    assert sallet("plan", "--on", "2027-06-12") == Run(0, """\
Hedge · Askerby, 54.4° N, 2.6° W, 150 m above the sea
As seen at 54.4° N, 2.6° W, 150 m above the sea.

1 plant, 1 session
Taught in season: 1 of 1 plant

  1  Saturday 5 June 2027
     1 plant
   · Elder – to eat: flowers

In season on Saturday 12 June 2027
   · Elder – to eat: flowers
""", "")  # fmt: skip


@pytest.mark.usefixtures("walk")
@pytest.mark.parametrize("spot", ["57.4,-2.6,150", "57.4, \u22122.6, 492 ft"])
def test_a_course_is_planned_for_another_place_and_what_moves_is_told(
    sallet: Sallet, spot: str
) -> None:
    run = sallet("plan", "--at", spot, "--on", "2027-06-12")
    assert (run.code, run.err) == (0, "")
    assert run.out.startswith("Hedge · 57.4° N, 2.6° W, 150 m above the sea\nEstimated from ")
    assert "   ! Elder – not in season; nearest date Sunday 13 June 2027\n" in run.out
    assert run.out.endswith("""
How the year would move (where the course meets → at the other place)
   · Elder
       flowers to eat: June → about mid June to early July
""")


@pytest.mark.usefixtures("walk")
def test_what_was_seen_where_the_course_meets_is_nothing_for_another_place(
    sallet: Sallet, walk: Path
) -> None:
    lay(walk, "elder", f"{ELDER}## Season\n- flowers: June\n")
    (walk / "course.yml").write_text(f"{PLANNED}seen here: {{Elder flowers: 5 June 2026}}\n")
    assert "moved by what was seen here: flowers from 5 June 2026." in sallet("plan").out
    away = sallet("plan", "--at", "54.4,-2.6,150").out
    assert away.split("\n")[1] == "As seen at 54.4° N, 2.6° W, 150 m above the sea."
    assert "flowers: 5 June to about early July → June\n" in away


@pytest.mark.usefixtures("walk")
def test_without_a_day_the_plan_looks_at_today(sallet: Sallet) -> None:
    days = {datetime.now().astimezone().date()}
    run = sallet("plan", "--json")
    days.add(datetime.now().astimezone().date())  # midnight may pass between
    assert json.loads(run.out)["today"]["date"] in {day.isoformat() for day in days}


@pytest.mark.usefixtures("walk")
def test_the_plan_for_programs(sallet: Sallet) -> None:
    run = sallet("plan", "course.yml", "--json", "--on", "2027-06-12", "--at", "57.4,-2.6,150")
    assert (run.code, run.err) == (0, "")
    plan = json.loads(run.out)
    assert plan["place"] == {"name": "", "latitude": 57.4, "longitude": -2.6, "elevation": 150}
    assert plan["today"] == {"date": "2027-06-12", "in season": [], "to keep away from": []}


@pytest.mark.parametrize("form", [[], ["--json"]])
def test_a_course_with_faults_that_stop_is_planned_and_they_are_told(
    sallet: Sallet, walk: Path, form: list[str]
) -> None:
    lay(walk, "ash", STOPPED)
    run = sallet("plan", *form)
    assert run.code == 0
    assert "Elder" in run.out
    assert run.err == "\n1 stop (to mend before publishing); `sallet check` tells what is wrong\n"


@pytest.mark.usefixtures("walk")
@pytest.mark.parametrize(
    ("arguments", "message"),
    [(["--at", "north"],
      "'--at': expected degrees north, degrees east and the height, such as 57.4,-2.6,450"),
     (["--at", "91,0"], "'--at': 91 is no latitude, expected -90 to 90"),
     (["--at", "1,200"], "'--at': 200 is no longitude, expected -180 to 180"),
     (["--at", "1,2,high"], "'--at': expected a height such as `180 m` or `590 ft`"),
     (["--at", "1,2,9001"], "'--at': 9001 is no height above the sea, expected -450 to 9000 m"),
     (["--on", "12 June"], "'--on': '12 June' does not match the format '%Y-%m-%d'.")],
)  # fmt: skip
def test_a_place_or_a_day_that_cannot_be_read_is_wrong_usage(
    sallet: Sallet, arguments: list[str], message: str
) -> None:
    run = sallet("plan", *arguments)
    assert (run.code, run.out) == (2, "")
    assert run.err.split("\n")[-2] == f"Error: Invalid value for {message}"


@pytest.mark.parametrize(
    ("columns", "widest"), [("60", 60), ("1", 40), ("300", 100)],
)  # fmt: skip
@pytest.mark.usefixtures("walk")
def test_on_a_terminal_the_plan_is_as_wide_as_that_within_reason(
    sallet: Sallet, monkeypatch: pytest.MonkeyPatch, columns: str, widest: int
) -> None:
    monkeypatch.setenv("COLUMNS", columns)
    monkeypatch.setattr(cli, "_terminal", lambda: True)
    lines = sallet("plan", "--at", "57.4,-2.6,450").out.split("\n")
    assert widest - 12 < max(map(len, lines)) <= widest


# ---- start, draft -------------------------------------------------------------------------


def test_a_course_is_started_and_a_lesson_drafted(
    sallet: Sallet, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    assert sallet("start", "Beck", "--title", "By the beck") == Run(0, """\
Beck/course.yml is there to be filled in. Next:
  cd Beck
  sallet draft "Stinging nettle"
""", "")  # fmt: skip
    assert sallet("draft", "St. John's wort", "--in", "Beck") == Run(0, (
        "Beck/lessons/st-john-s-wort.md is there to be filled in. "
        "`sallet check Beck/lessons/st-john-s-wort.md` tells what is missing.\n"
    ), "")  # fmt: skip
    assert "title: By the beck\n" in (tmp_path / "Beck" / "course.yml").read_text("utf-8")
    head = (tmp_path / "Beck" / "lessons" / "st-john-s-wort.md").read_text("utf-8")
    assert head.startswith("---\nname: St. John's wort\n")


def test_nothing_is_written_over(sallet: Sallet, home: Path) -> None:
    assert sallet("start", ".") == Run(
        2, "", "sallet: `course.yml` is there already; nothing was written\n"
    )
    assert sallet("draft", "Yew") == Run(
        2, "", "sallet: `lessons/yew.md` is there already; nothing was written\n"
    )
    assert (home / "course.yml").read_text() == "title: Hedge\n"
    assert (home / "lessons" / "yew.md").read_text() == CLEAN


# ---- wrong usage, and faults of our own ---------------------------------------------------


@pytest.mark.parametrize(
    ("arguments", "message"),
    [(["nonsense"], "Error: No such command 'nonsense'."),
     (["check", "a", "b"], "Error: Got unexpected extra argument (b)"),
     (["check", "--format", "xml"],
      "Error: Invalid value for '--format': 'xml' is not one of 'text', 'json', 'sarif'."),
     (["check", "--colour"], "Error: No such option '--colour'."),
     (["explain", "margin", "--json"],
      "Error: a JSON Schema is there for `course.yml` and for `lesson`"),
     (["assemble", "lessons"], "Error: `lessons` is no course; expected a folder with a course.yml"),
     (["plan", "lessons"], "Error: `lessons` is no course; expected a folder with a course.yml"),
     (["draft"], "Error: Missing argument 'NAME'."),
     (["start"], "Error: Missing argument 'FOLDER'.")],
)  # fmt: skip
@pytest.mark.usefixtures("home")
def test_wrong_usage_is_exit_code_2_and_a_sentence(
    sallet: Sallet, arguments: list[str], message: str
) -> None:
    run = sallet(*arguments)
    assert (run.code, run.out) == (2, "")
    assert run.err.split("\n")[-2] == message


@pytest.mark.parametrize("command", ["check", "assemble", "cards", "plan"])
@pytest.mark.parametrize(
    ("path", "message"),
    [("nowhere", "there is no `nowhere`; expected a course folder or a lesson file"),
     ("empty", "`empty` holds neither a course.yml nor a lesson (a file ending in .md)")],
)  # fmt: skip
def test_where_nothing_is_to_be_read_that_is_told(
    sallet: Sallet, home: Path, command: str, path: str, message: str
) -> None:
    (home / "empty").mkdir()
    assert sallet(command, path) == Run(2, "", f"sallet: {message}\n")


@pytest.mark.parametrize("arguments", [["--version"], ["--help"], ["check", "-h"]])
def test_help_and_version_are_no_failure(sallet: Sallet, arguments: list[str]) -> None:
    run = sallet(*arguments)
    assert (run.code, run.err) == (0, "")
    assert run.out.startswith((f"sallet, version {__version__}\n", "Usage: "))


def test_every_command_says_what_it_is_for(sallet: Sallet) -> None:
    listed = re.findall(r"^  ([a-z]+)  +(\S.*)$", sallet("--help").out, re.MULTILINE)
    assert {"assemble", "cards", "check", "draft", "explain", "plan", "start"} <= {
        name for name, _ in listed
    }
    assert all(words.endswith(".") for _, words in listed)


@pytest.mark.usefixtures("home")
def test_a_disk_that_refuses_is_told_with_its_file(
    sallet: Sallet, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuse(*_: object, **__: object) -> None:
        raise OSError(28, "No space left on device", "site_out/index.html")

    monkeypatch.setattr(cli, "assemble", refuse)
    assert sallet("assemble") == Run(
        2, "", "sallet: site_out/index.html: No space left on device\n"
    )


@pytest.mark.usefixtures("home")
def test_a_disk_that_refuses_without_a_file_is_told(
    sallet: Sallet, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuse(*_: object) -> None:
        raise OSError("something odd")

    monkeypatch.setattr(cli, "read_path", refuse)
    assert sallet("check") == Run(2, "", "sallet: the disk: something odd\n")


@pytest.mark.parametrize("fault", [ValueError("seven"), KeyError("x"), RecursionError("deep")])
@pytest.mark.parametrize("command", ["check", "assemble", "cards", "plan"])
@pytest.mark.usefixtures("home")
def test_a_fault_of_our_own_is_a_sentence_and_no_traceback(
    sallet: Sallet, monkeypatch: pytest.MonkeyPatch, command: str,
    fault: Exception,
) -> None:  # fmt: skip
    def fail(*_: object) -> None:
        raise fault

    monkeypatch.setattr(cli, "read_path", fail)
    run = sallet(command)
    assert (run.code, run.out) == (2, "")
    assert re.fullmatch(
        rf"sallet: a fault in sallet itself, not in your lessons: {type(fault).__name__}: "
        rf"{re.escape(str(fault))} \(test_cli\.py, line \d+\)\.\n"
        r"Nothing was changed\. Please report it, with the lesson that brings it about\.\n",
        run.err,
    )


@pytest.mark.usefixtures("home")
def test_one_who_stops_a_command_reads_that_it_stopped(
    sallet: Sallet, monkeypatch: pytest.MonkeyPatch
) -> None:
    def interrupt(*_: object) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr(cli, "read_path", interrupt)
    run = sallet("check")
    assert (run.code, run.out, run.err.strip()) == (2, "", "sallet: stopped")


@pytest.mark.parametrize("encoding", ["ascii", "cp1252"])
def test_the_program_runs_as_a_module_and_prints_its_own_signs_everywhere(
    home: Path, encoding: str
) -> None:
    """Into a pipe also where the terminal is set to an older code page, which lacks them."""
    lay(home, "elder", WARNED)
    run = subprocess.run(
        [sys.executable, "-m", "sallet", "check", "lessons/elder.md"],
        capture_output=True, check=False, timeout=120,
        env={**os.environ, "PYTHONIOENCODING": encoding, "LC_ALL": "C"},
    )  # fmt: skip
    assert b"Traceback" not in run.stderr
    assert run.returncode in {0, 1}
    assert "→ did you mean `entire`?" in run.stdout.decode("utf-8")
