"""A finding: what is wrong, where, how grave, and what to do; and how findings are printed."""

from __future__ import annotations

import json
from dataclasses import asdict, dataclass
from enum import StrEnum
from typing import TYPE_CHECKING, Any, Final
from unicodedata import category
from urllib.parse import quote

from sallet import __version__

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping, Sequence

    from sallet.source import Source


class Severity(StrEnum):
    """How grave a finding is."""

    NOTE = "note"
    WARN = "warn"
    STOP = "stop"

    @property
    def rank(self) -> int:
        """Return 0 for a note, 1 for a warning, 2 for what is never published."""
        return list(Severity).index(self)


@dataclass(frozen=True)
class Finding:
    """One thing wrong with a lesson or course. Positions count from 1."""

    file: str
    line: int
    column: int
    check: str
    severity: Severity
    message: str
    hint: str


def stopping(findings: Iterable[Finding]) -> list[Finding]:
    """Return the findings with which a course is never published."""
    return [finding for finding in findings if finding.severity is Severity.STOP]


def in_order(findings: Iterable[Finding]) -> list[Finding]:
    """Return findings by file and place, without repetitions."""
    return sorted(set(findings), key=lambda f: (f.file, f.line, f.column, f.check, f.message))


def as_json(findings: Iterable[Finding]) -> str:
    """Return `{"findings": [{"file", "line", "column", "check", "severity", …}]}`."""
    return json.dumps({"findings": [asdict(f) for f in findings]}, indent=2, ensure_ascii=False)


# ---- for people ---------------------------------------------------------------------------

_COLOURS: Final = {Severity.STOP: "31", Severity.WARN: "33", Severity.NOTE: "36"}


def as_text(
    findings: Sequence[Finding], sources: Mapping[str, Source], *, colour: bool = False
) -> str:
    """Return findings for a terminal, each with the line at fault and a mark below it."""
    blocks = [_block(finding, sources.get(finding.file), colour=colour) for finding in findings]
    return "\n\n".join([*blocks, summary(findings)])


def _block(finding: Finding, source: Source | None, *, colour: bool) -> str:
    severity = finding.severity.value
    if colour:
        severity = f"\033[{_COLOURS[finding.severity]};1m{severity}\033[0m"
    place = _visible(f"{finding.file}:{finding.line}:{finding.column}")
    lines = [f"{place}: {severity}: {_visible(finding.message)} [{finding.check}]"]
    if source and finding.line <= len(source.line_starts):
        lines += _quoted(_visible(source.line(finding.line)), finding.column)
    lines.append(f"    → {_visible(finding.hint)}")
    return "\n".join(lines)


def _visible(text: str) -> str:
    """Return text in which no character can steer the terminal or turn the words about."""
    return "".join("�" if c != "\t" and category(c) in _UNSEEN else c for c in text)


_UNSEEN: Final = frozenset({"Cc", "Cf", "Cs", "Zl", "Zp"})
_WIDE: Final = 88


def _quoted(line: str, column: int) -> list[str]:
    """Return the part of a line round a column, with a mark below it."""
    if not line.strip():
        return []
    start = max(0, column - 1 - _WIDE // 2) if len(line) > _WIDE else 0
    part = line[start : start + _WIDE].rstrip()
    lead = "…" if start else ""
    tail = "…" if start + _WIDE < len(line) else ""
    before = "".join(c if c == "\t" else " " for c in line[start : column - 1])
    return [f"    {lead}{part}{tail}", f"    {' ' * len(lead)}{before}^"]


def summary(findings: Sequence[Finding]) -> str:
    """Return one line that counts the findings."""
    counts = {s: sum(f.severity is s for f in findings) for s in reversed(Severity)}
    if not findings:
        return "nothing found"
    words = {Severity.STOP: "to mend before publishing", Severity.WARN: "to look at",
             Severity.NOTE: "to know"}  # fmt: skip
    return " · ".join(f"{n} {s.value} ({words[s]})" for s, n in counts.items() if n)


# ---- for editors and build servers --------------------------------------------------------

_LEVELS: Final = {Severity.STOP: "error", Severity.WARN: "warning", Severity.NOTE: "note"}


def as_sarif(findings: Iterable[Finding], rules: Mapping[str, str]) -> str:
    """Return a SARIF 2.1.0 log (OASIS standard); `rules` gives each check's one-line summary."""
    log = {
        "$schema": "https://json.schemastore.org/sarif-2.1.0.json",
        "version": "2.1.0",
        "runs": [
            {
                "tool": {"driver": _driver(rules)},
                "columnKind": "unicodeCodePoints",
                "results": [_result(finding) for finding in findings],
            }
        ],
    }
    return json.dumps(log, indent=2, ensure_ascii=False)


def _driver(rules: Mapping[str, str]) -> dict[str, Any]:
    return {
        "name": "sallet",
        "version": __version__,
        "rules": [{"id": i, "shortDescription": {"text": text}} for i, text in rules.items()],
    }


def _result(finding: Finding) -> dict[str, Any]:
    region = {"startLine": finding.line, "startColumn": finding.column}
    location = {"artifactLocation": {"uri": quote(finding.file)}, "region": region}
    return {
        "ruleId": finding.check,
        "level": _LEVELS[finding.severity],
        "message": {"text": f"{finding.message}. {finding.hint}"},
        "locations": [{"physicalLocation": location}],
    }
