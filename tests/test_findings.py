"""Findings, as people, editors and build servers read them."""

from __future__ import annotations

import json

import pytest

from sallet import __version__
from sallet.findings import Finding, Severity, as_json, as_sarif, as_text, in_order, summary
from sallet.source import Source

TEXT = "## Leaves\n- margin: entyre\n\n\tindented: [^x]\n"
SOURCES = {"a.md": Source("a.md", TEXT)}
STATE = Finding("a.md", 2, 11, "unknown-state", Severity.WARN, "`entyre` is no known margin",
                "did you mean `entire`?")  # fmt: skip
SOURCE = Finding("a.md", 4, 12, "dangling-reference", Severity.STOP, "no source is defined",
                 "define it")  # fmt: skip
NOTE = Finding("b c/ä.md", 1, 1, "unreviewed", Severity.NOTE, "nobody has read it", "ask somebody")


def test_a_finding_is_printed_with_its_line_and_a_mark_below_the_column() -> None:
    assert as_text([STATE, SOURCE], SOURCES) == (
        "a.md:2:11: warn: `entyre` is no known margin [unknown-state]\n"
        "    - margin: entyre\n"
        "              ^\n"
        "    → did you mean `entire`?\n"
        "\n"
        "a.md:4:12: stop: no source is defined [dangling-reference]\n"
        "    \tindented: [^x]\n"
        "    \t          ^\n"
        "    → define it\n"
        "\n"
        "1 stop (to mend before publishing) · 1 warn (to look at)"
    )


def test_without_its_source_or_on_an_empty_line_a_finding_has_no_quotation() -> None:
    assert as_text([NOTE], SOURCES).split("\n")[:2] == [
        "b c/ä.md:1:1: note: nobody has read it [unreviewed]",
        "    → ask somebody",
    ]
    empty = Finding("a.md", 3, 1, "x", Severity.NOTE, "m", "h")
    assert as_text([empty], SOURCES).split("\n")[1] == "    → h"
    beyond = Finding("a.md", 99, 1, "x", Severity.NOTE, "m", "h")
    assert as_text([beyond], SOURCES).split("\n")[1] == "    → h"


def test_of_a_long_line_the_part_round_the_column_is_quoted() -> None:
    line = f"{'a' * 100} wrong {'b' * 100}"
    found = Finding("a.md", 1, 102, "x", Severity.WARN, "m", "h")
    _, quoted, mark, _, _, _ = as_text([found], {"a.md": Source("a.md", line)}).split("\n")
    assert quoted.startswith("    …aaa")
    assert quoted.endswith("bbb…")
    assert quoted[mark.index("^") :].startswith("wrong")
    assert len(quoted) < 100


def test_nothing_in_a_lesson_can_steer_the_terminal_or_turn_the_words_about() -> None:
    line = "a\x1b[2Jb\u202ec"
    found = Finding("a.md", 1, 2, "x", Severity.WARN, f"`{line}`", line)
    printed = as_text([found], {"a.md": Source("a.md", line)})
    assert "\x1b" not in printed
    assert "\u202e" not in printed
    assert "    a�[2Jb�c\n     ^\n" in printed


def test_colours_mark_the_severity_and_nothing_else() -> None:
    plain = as_text([STATE, NOTE], SOURCES)
    coloured = as_text([STATE, NOTE], SOURCES, colour=True)
    assert "\033[33;1mwarn\033[0m" in coloured
    assert "\033[36;1mnote\033[0m" in coloured
    for code in ("\033[33;1m", "\033[36;1m", "\033[0m"):
        coloured = coloured.replace(code, "")
    assert coloured == plain


@pytest.mark.parametrize(
    ("findings", "line"),
    [([], "nothing found"), ([NOTE, NOTE], "2 note (to know)"),
     ([NOTE, SOURCE], "1 stop (to mend before publishing) · 1 note (to know)")],
)  # fmt: skip
def test_the_summary_counts_the_gravest_first(findings: list[Finding], line: str) -> None:
    assert summary(findings) == line


def test_findings_stand_in_the_order_of_their_places_and_once() -> None:
    assert in_order([NOTE, SOURCE, STATE, SOURCE]) == [STATE, SOURCE, NOTE]


def test_severities_have_an_order() -> None:
    assert [s.rank for s in (Severity.NOTE, Severity.WARN, Severity.STOP)] == [0, 1, 2]


def test_the_json_has_exactly_this_shape() -> None:
    assert json.loads(as_json([STATE])) == {
        "findings": [
            {
                "file": "a.md",
                "line": 2,
                "column": 11,
                "check": "unknown-state",
                "severity": "warn",
                "message": "`entyre` is no known margin",
                "hint": "did you mean `entire`?",
            }
        ]
    }
    assert json.loads(as_json([])) == {"findings": []}
    assert "ä.md" in as_json([NOTE])


RULES = {"unknown-state": "A state that is not known.", "dangling-reference": "No source."}


def test_the_sarif_log_has_what_the_standard_requires() -> None:
    """SARIF 2.1.0 (OASIS Standard, 27 March 2020), members by section number."""
    log = json.loads(as_sarif([STATE, SOURCE, NOTE], RULES))
    assert log["version"] == "2.1.0"  # 3.13.2
    (run,) = log["runs"]  # 3.13.4
    driver = run["tool"]["driver"]  # 3.14.6, 3.18.2
    assert (driver["name"], driver["version"]) == ("sallet", __version__)  # 3.19.8
    assert [rule["id"] for rule in driver["rules"]] == list(RULES)  # 3.49.3
    assert [rule["shortDescription"]["text"] for rule in driver["rules"]] == list(RULES.values())
    assert run["columnKind"] == "unicodeCodePoints"  # 3.14.17
    for result in run["results"]:
        assert result["message"]["text"]  # 3.27.11
        assert result["level"] in {"none", "note", "warning", "error"}  # 3.27.10


def test_a_sarif_result_says_where_and_how_grave() -> None:
    first, second, third = json.loads(as_sarif([STATE, SOURCE, NOTE], RULES))["runs"][0]["results"]
    assert first == {
        "ruleId": "unknown-state",
        "level": "warning",
        "message": {"text": "`entyre` is no known margin. did you mean `entire`?"},
        "locations": [
            {
                "physicalLocation": {
                    "artifactLocation": {"uri": "a.md"},
                    "region": {"startLine": 2, "startColumn": 11},
                }
            }
        ],
    }
    assert (second["level"], third["level"]) == ("error", "note")
    # 3.4.3: a path is given as a URI reference, so blanks and letters beyond ASCII are escaped.
    place = third["locations"][0]["physicalLocation"]
    assert place["artifactLocation"]["uri"] == "b%20c/%C3%A4.md"
