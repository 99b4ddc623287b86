"""The shape of a vocabulary file, and how the files become one Vocabulary."""

from __future__ import annotations

from functools import cache
from importlib.resources import files
from typing import TYPE_CHECKING, Annotated, Any, Final, Literal, TypeVar

import yaml
from pydantic import BaseModel, ConfigDict, Field, ValidationError

from sallet.lesson.vocabulary import Label, Part, Qualifier, State, Subject, Vocabulary

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping, Sequence

_LOADER: Final[Any] = getattr(yaml, "CBaseLoader", yaml.BaseLoader)
"""Leaves every scalar a string. The files ship with sallet, and a test sees that no key stands
twice; so the fast loader will do, where reading with places would take a second."""
Definition = Annotated[str, Field(min_length=8, max_length=140)]


class VocabularyFault(Exception):
    """A vocabulary file that ships with sallet is broken: a fault of ours, not of a lesson."""


class _Strict(BaseModel):
    model_config = ConfigDict(extra="forbid", frozen=True, populate_by_name=True)


M = TypeVar("M", bound=_Strict)


class _State(_Strict):
    definition: Definition
    also: tuple[str, ...] = ()
    draw: dict[str, str] = Field(default_factory=dict)
    lead: str = ""


class _StateList(_Strict):
    ordered: bool = False
    apart: Literal["all", "none"] | tuple[tuple[str, ...], ...] = "none"
    states: dict[str, _State] = Field(default_factory=dict)


class _Label(_StateList):
    definition: Definition
    kind: Literal["states", "measure", "count", "words", "times", "zones"]
    aspect: Literal[
        "form", "number", "size", "colour", "surface", "smell", "taste", "touch",
        "behaviour", "place", "time", "use", "harm",
    ]  # fmt: skip
    reliability: Literal["firm", "fair", "weak"] = "fair"
    caveat: str = ""
    asks: str = ""
    also: tuple[str, ...] = ()
    tells_of: str = Field(default="", alias="tells of")
    watched: bool = False
    states_from: str = Field(default="", alias="states from")


class _Part(_Strict):
    definition: Definition
    also: tuple[str, ...] = ()


class _File(_Strict):
    subject: str
    heading: str
    organ: bool = False
    also: tuple[str, ...] = ()
    definition: Definition
    parts: dict[str, _Part] = Field(default_factory=dict)
    labels: dict[str, _Label] = Field(default_factory=dict)


class _Qualifier(_Strict):
    definition: Definition
    kind: Literal["place", "age", "season", "sex", "frequency"]
    also: tuple[str, ...] = ()


class _Shared(_Strict):
    order: tuple[str, ...] = ()
    lists: dict[str, _StateList]
    qualifiers: dict[str, _Qualifier]


SHARED = "shared.yml"


@cache
def load_vocabulary() -> Vocabulary:
    """Return the vocabulary that ships with sallet."""
    folder = files("sallet.lesson") / "vocabulary"
    return build_vocabulary(
        {
            item.name: item.read_text("utf-8")
            for item in folder.iterdir()
            if item.name.endswith(".yml")
        }
    )


def build_vocabulary(texts: Mapping[str, str]) -> Vocabulary:
    """Return the Vocabulary of some files, given by name; `shared.yml` must be among them.

    Raises VocabularyFault, naming the file, where one is not of the shape above.
    """
    shared = _read(_Shared, SHARED, texts[SHARED])
    for name, held in shared.lists.items():
        _check_groups(f"{SHARED}: {name}", held)
    subjects = [
        _subject(name, _read(_File, name, text), shared.lists)
        for name, text in sorted(texts.items())
        if name != SHARED
    ]
    qualifiers = tuple(
        Qualifier(name, q.kind, q.definition, q.also) for name, q in shared.qualifiers.items()
    )
    return Vocabulary(tuple(sorted(subjects, key=lambda s: _place(s, shared))), qualifiers)


def _place(subject: Subject, shared: _Shared) -> int:
    # A file that the list forgets comes last, rather than not at all.
    return shared.order.index(subject.name) if subject.name in shared.order else len(shared.order)


def _read(model: type[M], name: str, text: str) -> M:
    try:
        return model.model_validate(yaml.load(text, _LOADER))  # noqa: S506 - strings only
    except (yaml.YAMLError, ValidationError) as error:
        raise VocabularyFault(f"{name}: {error}") from None


def _subject(name: str, file: _File, lists: Mapping[str, _StateList]) -> Subject:
    for word, label in file.labels.items():
        _check_label(f"{name}: {word}", label, lists)
    return Subject(
        name=file.subject,
        heading=file.heading,
        is_organ=file.organ,
        also=file.also,
        definition=file.definition,
        parts=tuple(Part(file.subject, n, p.definition, p.also) for n, p in file.parts.items()),
        labels=tuple(_label(file.subject, n, label, lists) for n, label in file.labels.items()),
    )


def _check_label(where: str, label: _Label, lists: Mapping[str, _StateList]) -> None:
    if label.states_from and label.states_from not in lists:
        raise VocabularyFault(f"{where}: no list `{label.states_from}` in {SHARED}")
    if label.states_from and label.states:
        raise VocabularyFault(f"{where}: `states` and `states from` stand together")
    _check_groups(where, label)


def _check_groups(where: str, held: _StateList) -> None:
    for word in {word for group in _groups(held) for word in group} - set(held.states):
        raise VocabularyFault(f"{where}: `apart` names `{word}`, which is no state")


def _label(subject: str, name: str, label: _Label, lists: Mapping[str, _StateList]) -> Label:
    held: _StateList = lists[label.states_from] if label.states_from else label
    return Label(
        subject=subject,
        name=name,
        kind=label.kind,
        definition=label.definition,
        aspect=label.aspect,
        reliability=label.reliability,
        caveat=label.caveat,
        asks=label.asks,
        also=label.also,
        tells_of=label.tells_of,
        watched=label.watched,
        ordered=held.ordered,
        shared=label.states_from,
        states=tuple(_states(held)),
    )


def _states(held: _StateList) -> Iterator[State]:
    groups = _groups(held)
    for name, state in held.states.items():
        against = {word for group in groups if name in group for word in group} - {name}
        yield State(name, state.definition, state.also, frozenset(against), state.draw, state.lead)


def _groups(held: _StateList) -> Sequence[Sequence[str]]:
    if held.apart == "all":
        return [tuple(held.states)]
    return [] if held.apart == "none" else held.apart
