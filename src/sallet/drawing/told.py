"""What is told of one organ, as a drawing asks for it: one typical value to each character.

A drawing can show one value only. Of several, the first that is not `sometimes` or `rarely`
is taken, of a range between two states its first, of numbers and lengths the middle. The
words say which it was and what else is recorded.
"""

from __future__ import annotations

from dataclasses import dataclass, fields, is_dataclass, replace
from typing import TYPE_CHECKING, Any, Final, Generic, TypeVar

from sallet.lesson.facts import read_value
from sallet.lesson.value import Absent, Count, Item, Measure, StateRange, Term
from sallet.source import Span, Text

if TYPE_CHECKING:
    from collections.abc import Collection, Iterable, Iterator, Mapping

    from sallet.lesson.model import Fact
    from sallet.lesson.value import Value
    from sallet.lesson.vocabulary import State, Subject, Vocabulary

T = TypeVar("T")
U = TypeVar("U")

_KIND: Final = "kind"
MANY: Final = 24
"""How many are drawn where `many` are recorded: more than anyone counts at a glance."""
_MOST: Final = 60
"""The largest number that is drawn as such."""
_SLIMMEST: Final = 80.0
"""A thing that is recorded so many times as long as wide, or longer, cannot be drawn so."""
_UNCOUNTED: Final = 11
"""From so many on nobody counts: `12 or more` is many."""
_OTHERWISE: Final = frozenset({"mature", "ripe", "terminal"})
"""What is told of an organ full grown, or of its end, is told of it where nothing else is."""
PLACES: Final = frozenset({
    "spring", "summer", "autumn", "winter", "basal", "first year", "lower", "middle", "stem", "upper", "short shoots", "vigorous shoots",
    "flowering shoots", "sterile shoots", "male", "female",
})  # fmt: skip
"""Where on a plant an organ may differ so that each place has a drawing of its own."""
_SELDOM: Final = frozenset({"sometimes", "rarely"})


@dataclass(frozen=True, slots=True)
class Character:
    """A character that a drawing shows."""

    label: str
    """The label in the vocabulary."""
    drawn: str
    """What the drawing shows of it: a state, a number, a length."""
    told: str
    """All that is recorded of it there, in the words of the lesson."""

    @property
    def words(self) -> str:
        """Return the character in words: `leaflets: 7 (recorded: 5–7)`."""
        same = self.told.replace("\u00a0", " ").casefold() == self.drawn.casefold()
        return f"{self.label}: {self.drawn}" + ("" if same else f" (recorded: {self.told})")


@dataclass(frozen=True, slots=True)
class Shown(Generic[T]):
    """A value that a drawing shows, with the character it comes from."""

    value: T
    character: Character

    def as_(self, value: U) -> Shown[U]:
        """Return the same character with another value for the pen."""
        return Shown(value, self.character)


def beside(
    one: Shown[float] | None, other: Shown[float] | None
) -> tuple[Shown[float] | None, Shown[float] | None]:
    """Return two lengths of one thing, the second only where both can be seen in one drawing."""
    if one and other and not 1 / _SLIMMEST <= one.value / other.value <= _SLIMMEST:
        return one, None
    return one, other


def some(count: Shown[int] | None) -> Shown[int] | None:
    """Return a number if it is more than none."""
    return count if count and count.value > 0 else None


def characters(form: Any) -> tuple[Character, ...]:
    """Return the characters of a form: those of every field that is a Shown, each once.

    Fields that are forms themselves give theirs.
    """
    return tuple(dict.fromkeys(_characters(form)))


def _characters(form: Any) -> Iterator[Character]:
    for field in fields(form):
        value = getattr(form, field.name)
        if isinstance(value, Shown):
            yield value.character
        elif is_dataclass(value):
            yield from _characters(value)


@dataclass(frozen=True)
class Told:
    """What is recorded of one organ in one place, by label, the typical first."""

    subject: Subject
    items: Mapping[str, tuple[Item, ...]]
    where: str = ""
    """`lower`, `first year`, `male`, or an empty string for the organ as such."""

    @property
    def organ(self) -> str:
        """Return the organ's name in the vocabulary."""
        return self.subject.name

    def state(self, label: str) -> Shown[State] | None:
        """Return the state of a label."""
        known = self.subject.label(label)
        for item in self.items.get(label, ()):
            if isinstance(item.value, StateRange) and known:
                state = known.state(item.value.ends[0].name)
                if state:
                    return Shown(state, self._character(label, state.name))
        return None

    def states(self, label: str) -> tuple[Shown[State], ...]:
        """Return all states of a label that may hold together: `ragged, leafy`."""
        known = self.subject.label(label)
        return tuple(
            Shown(state, self._character(label, state.name))
            for item in self.items.get(label, ())
            if isinstance(item.value, StateRange) and known
            and (state := known.state(item.value.ends[0].name))
        )  # fmt: skip

    def hint(self, label: str, key: str) -> Shown[str] | None:
        """Return what the vocabulary tells a drawing about the state of a label."""
        shown = self.state(label)
        if shown is None or key not in shown.value.draw:
            return None
        return shown.as_(shown.value.draw[key])

    def hint_number(self, label: str, key: str) -> Shown[float] | None:
        """Return a hint of the vocabulary that is a number; None where it is none."""
        hint = self.hint(label, key)
        try:
            return hint.as_(float(hint.value)) if hint else None
        except ValueError:
            return None

    def pick(self, label: str, among: Mapping[str, T]) -> Shown[T] | None:
        """Return what a table holds for the state of a label; None where it holds nothing."""
        shown = self.state(label)
        if shown is None or shown.value.name not in among:
            return None
        return shown.as_(among[shown.value.name])

    def count(self, label: str) -> Shown[int] | None:
        """Return the middle of a number, its least where no most is told, MANY for `many`.

        A number that nobody would count in a drawing is drawn as many.
        """
        for item in self.items.get(label, ()):
            if isinstance(item.value, Count):
                low, high = item.value.low, item.value.high
                number = low if high is None else (low + high + 1) // 2
                if number > _MOST or (high is None and low >= _UNCOUNTED):
                    return Shown(MANY, self._character(label, "many"))
                drawn = f"{low} or more" if high is None else str(number)
                return Shown(number, self._character(label, drawn))
        return None

    def length(self, label: str) -> Shown[float] | None:
        """Return the middle of a length, in millimetres. One told by its end alone has none."""
        for item in self.items.get(label, ()):
            value = item.value
            if isinstance(value, Measure) and value.low + value.high > 0 and not _end_only(value):
                middle = float(value.low + value.high) / 2
                return Shown(middle, self._character(label, millimetres(middle)))
        return None

    def is_none(self, label: str) -> Shown[bool] | None:
        """Return True where the thing is recorded as not there."""
        first = next(iter(self.items.get(label, ())), None)
        if first is None or not isinstance(first.value, Absent):
            return None
        return Shown(value=True, character=self._character(label, "none"))

    def with_(self, label: str, items: tuple[Item, ...]) -> Told:
        """Return the same with another value for one label."""
        return replace(self, items={**self.items, label: items})

    def without(self, label: str) -> Told:
        """Return the same with nothing told of one label."""
        return replace(self, items={k: v for k, v in self.items.items() if k != label})

    def only(self, labels: Collection[str]) -> Told:
        """Return the same with nothing told but of some labels."""
        return replace(self, items={k: v for k, v in self.items.items() if k in labels})

    def usual(self, label: str) -> Told:
        """Return the same without what a label is seldom, where it is something usually."""
        items = self.items.get(label, ())
        return self.with_(label, tuple(filter(_is_rule, items)) or items[:1])

    def _character(self, label: str, drawn: str) -> Character:
        told = ", ".join(map(_in_words, self.items.get(label, ())))
        return Character(label, drawn, told)


def millimetres(length: float) -> str:
    """Return a length in words: `8 mm`, `15 cm`, `1.5 m`."""
    centimetre, metre = 10, 1000
    if length >= metre:
        return f"{length / metre:.3g} m"
    if length >= 2 * centimetre:
        return f"{length / centimetre:.3g} cm"
    return f"{length:.3g} mm"


def _end_only(measure: Measure) -> bool:
    # `at most 50 cm` is read as nought to fifty: its middle is no length anyone has seen.
    return measure.low == 0


def _in_words(item: Item) -> str:
    # The place of what is drawn is said of the whole drawing; another place is said here.
    apart = sorted(item.where & _OTHERWISE)
    return f"{item.text} ({', '.join(apart)})" if apart else item.text


def told(facts: Iterable[Fact], subject: Subject, where: str = "", part: str = "") -> Told:
    """Return what is told of an organ, or of a kind or piece of it, in one place.

    What stands under `### Bulb` is told of the roots, and that they are a bulb.
    """
    found: dict[str, list[Item]] = {}
    for fact in facts:
        if not fact.known or fact.subject != subject.name:
            continue
        kind = None if part or not fact.part else _kind(fact, subject)
        if fact.part == part or kind:
            found.setdefault(fact.label, []).extend(fact.items)
        if kind and _KIND not in found:
            found[_KIND] = [kind]
    chosen = {label: _holding(items, where) for label, items in found.items()}
    return Told(subject, {label: items for label, items in chosen.items() if items}, where)


def _kind(fact: Fact, subject: Subject) -> Item | None:
    """Return the kind of the organ that the heading above a fact says, if it says one."""
    label = subject.label(_KIND)
    state = label.state(fact.part) if label else None
    if state is None:
        return None
    value = StateRange((state.name,), (Term(state.name, fact.part),))
    return Item(value, fact.part, fact.span)


def _holding(items: Iterable[Item], where: str) -> tuple[Item, ...]:
    """Return the values that hold in a place, those told of it alone before the general.

    Where nothing but exceptions is told there is nothing to draw.
    """
    every = list(items)
    here = [item for item in every if where in item.where and item.where <= PLACES]
    if not any(map(_is_rule, here)):
        here = [item for item in every if not item.where]
    if not any(map(_is_rule, here)):
        here = [item for item in every if item.where and item.where <= _OTHERWISE]
    if not any(map(_is_rule, here)):
        return ()
    return tuple(sorted(here, key=lambda item: not _is_rule(item)))


def _is_rule(item: Item) -> bool:
    """Return whether a value is more than an exception: `sometimes opposite` draws nothing."""
    return not item.qualifier_names & _SELDOM


def places_told(facts: Iterable[Fact], organ: str, labels: Iterable[str]) -> Iterator[str]:
    """Yield the places that one of some labels of an organ tells something of its own for."""
    wanted = set(labels)
    seen: set[str] = set()
    for fact in facts:
        if fact.subject == organ and not fact.part and fact.label in wanted:
            for item in fact.items:
                if item.where <= PLACES and _is_rule(item):
                    yield from sorted(item.where - seen)
                    seen |= item.where


def specimen(vocabulary: Vocabulary, organ: str, **values: str) -> Told:
    """Return an organ told in the words of a lesson: `specimen(v, "leaves", shape="ovate")`.

    `_` in a label's name may stand for a space. Raises KeyError for a word that the vocabulary
    does not know: specimens ship with sallet.
    """
    subject = vocabulary.subject(organ)
    items: dict[str, tuple[Item, ...]] = {}
    for words, value in values.items():
        label = subject.label(words.replace("_", " "))
        if label is None:
            raise KeyError(words)
        read, faults = read_value(Text(value, Span(0, len(value))), label, vocabulary)
        if faults:
            raise KeyError(value)
        items[label.name] = read
    return Told(subject, items)


def value_of(told: Told, label: str) -> Value | None:
    """Return the first value told of a label, as it was read."""
    items = told.items.get(label, ())
    return items[0].value if items else None
