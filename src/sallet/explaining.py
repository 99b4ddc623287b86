"""`sallet explain`: what a check, a label, a term or a part of the plant means."""

from __future__ import annotations

from difflib import get_close_matches
from textwrap import wrap
from typing import TYPE_CHECKING, Final

from sallet.checks import CHECKS
from sallet.checks.catalogue import page_of, summary_of
from sallet.drawing.kinds import HABIT, KINDS
from sallet.folder import REFUSED, REFUSED_ABOUT
from sallet.lesson.vocabulary import normal

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.lesson.vocabulary import Label, Subject, Vocabulary

_WIDE: Final = 88


def explain_words(words: str, vocabulary: Vocabulary) -> str | None:
    """Return what there is to say of some words, or None where they name nothing known.

    A word may name several things: `colour` is a label of the leaves, the flowers and more.
    """
    if not words.strip():
        return _contents(vocabulary)
    if normal(words) in {"drawing", "drawings"}:
        return _drawings()
    blocks = [*_checks(words), *_subjects(words, vocabulary), *_terms(words, vocabulary)]
    return "\n\n".join(dict.fromkeys(blocks)) or None


def nothing_known(words: str, vocabulary: Vocabulary) -> str:
    """Return a message for words that name nothing, with those spelt most like them."""
    names = {module.ID for module in CHECKS}
    for subject in vocabulary.subjects:
        names |= {subject.name, *(label.name for label in subject.labels)}
        names |= {state.name for label in subject.labels for state in label.states}
    close = get_close_matches(normal(words), sorted(names), n=4, cutoff=0.6)
    near = f"; near it are {', '.join(f'`{name}`' for name in close)}" if close else ""
    return f"sallet: `{words}` is no check, label or term{near}"


def _contents(vocabulary: Vocabulary) -> str:
    lines = ["Checks", *(_entry(m.ID, f"{m.SEVERITY.value}: {summary_of(m)}") for m in CHECKS)]
    lines += ["", "Parts of the plant and sections of a lesson, with their labels"]
    for subject in vocabulary.subjects:
        labels = ", ".join(label.name for label in subject.labels)
        lines.append(_entry(subject.name, labels or subject.definition))
    lines += ["", "`sallet explain margin` or `sallet explain leaves` says more;"]
    lines += ["`sallet explain drawings` says what to record that a plant is drawn."]
    return "\n".join(lines)


def _drawings() -> str:
    lines = [
        "Drawings",
        *_wrapped(
            "A plant is drawn from what its lesson records, and from nothing else. What is not"
            " recorded is left out, or dotted where a line cannot do without it. Of several"
            " values the first is drawn, of numbers and lengths the middle. Lower and upper"
            " leaves that differ are drawn side by side."
        ),
        "",
    ]
    kinds = (*KINDS, HABIT)
    lines += [_drawn(kind.name, kind.organ, kind.needs, kind.shows) for kind in kinds]
    return "\n".join(lines)


def _drawn(name: str, organ: str, needs: str, shows: Sequence[str]) -> str:
    also = [label for label in shows if f"`{label}`" not in needs]
    more = f" It also shows {', '.join(also)}." if also else ""
    return _entry(f"{name} ({organ})", f"needs {needs}.{more}")


def _wrapped(text: str) -> list[str]:
    return [f"  {line}" for line in wrap(text, _WIDE - 2)]


def _entry(name: str, text: str) -> str:
    lines = wrap(text, _WIDE - 6) or [""]
    return "\n".join([f"  {name}", *(f"      {line}" for line in lines)])


def _checks(words: str) -> Iterator[str]:
    name = words.strip().casefold()
    if name == REFUSED:
        yield f"{REFUSED} (stop)\n\n{REFUSED_ABOUT}"
    for module in CHECKS:
        if name == module.ID:
            yield page_of(module)


def _subjects(words: str, vocabulary: Vocabulary) -> Iterator[str]:
    for subject in vocabulary.subjects:
        if normal(words) in {normal(w) for w in (subject.name, subject.heading, *subject.also)}:
            yield _subject(subject)
        for part in subject.parts:
            if normal(words) in {normal(w) for w in (part.name, *part.also)}:
                yield f"{part.name} ({subject.heading})\n  {part.definition}"


def _subject(subject: Subject) -> str:
    lines = [f"{subject.heading}\n  {subject.definition}"]
    lines += [_entry(label.name, label.definition) for label in subject.labels]
    drawn = [_drawn(k.name, k.organ, k.needs, k.shows) for k in KINDS if k.organ == subject.name]
    if drawn:
        lines += ["", "  Drawn of it, in a plant's plate:", *drawn]
    return "\n".join(lines)


def _terms(words: str, vocabulary: Vocabulary) -> Iterator[str]:
    for subject in vocabulary.subjects:
        for label in subject.labels:
            if subject.label(words) is label:
                yield _label(subject, label)
            state = label.state(words)
            if state:
                also = f"\n  also: {', '.join(state.also)}" if state.also else ""
                place = f"{subject.heading}, {label.name}"
                against = ", ".join(s.name for s in label.states if s.name in state.excludes)
                never = f"\n  never together with: {against}" if against else ""
                yield f"{state.name} ({place})\n  {state.definition}{also}{never}"


_KINDS: Final = {
    "states": "one of the terms below",
    "measure": "a length, such as `10–25 cm`",
    "count": "a number, such as `5` or `4–6` or `many`",
    "words": "your own words",
    "times": "a time of year, such as `late February to June`",
    "zones": "hardiness zones, such as `4–8`",
}


def _label(subject: Subject, label: Label) -> str:
    lines = [f"{label.name} ({subject.heading})", f"  {label.definition}"]
    if label.also:
        lines.append(f"  also: {', '.join(label.also)}")
    lines.append(f"  write {_KINDS[label.kind]}")
    if subject.is_organ:
        lines.append(f"  to tell plants apart: {label.reliability}. {label.caveat}".rstrip())
        if label.tells_of:
            lines.append(f"  counts as one with all that tells of: {label.tells_of}")
        if label.watched:
            lines.append("  shows over weeks or years only: it makes no day sure")
    lines += [_entry(state.name, state.definition) for state in label.states]
    return "\n".join(lines)
