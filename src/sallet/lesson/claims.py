"""Words that promise a cure, and words that only report one."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from sallet.source import Span, Text

if TYPE_CHECKING:
    from collections.abc import Iterator

CLAIMS: Final = (
    "cure", "cures", "curing", "cured", "heal", "heals", "healing", "healed", "treats",
    "remedy for", "remedies for", "remedy against", "remedies against", "relieves",
)  # fmt: skip
HEDGES: Final = (
    "traditional", "traditionally", "tradition", "folk", "folklore", "formerly", "historically",
    "is said to", "are said to", "was said to", "were said to", "said to be", "it is said",
    "is used for", "are used for", "was used", "were used", "used to be", "has been used",
    "have been used", "once used", "used as", "old herbals", "herbals", "herbalists",
    "is reported", "are reported", "was reported", "were reported", "reported to", "reputed",
    "believed", "was thought", "were thought", "held to", "claimed", "claims", "studied",
    "study", "studies", "trial", "trials", "tested", "not proven", "unproven",
)  # fmt: skip
DENIALS: Final = frozenset({
    "no", "not", "never", "nor", "neither", "none", "nothing", "nobody", "without", "cannot",
    "hardly", "don't", "doesn't", "can't", "won't", "isn't",
})  # fmt: skip
"""Where one of these stands before the claim in its sentence, the sentence denies it."""
NO_DENIALS: Final = ("not only", "not just", "no doubt", "nothing but")
OTHER_SENSES: Final = (
    "cured meat", "cured meats", "cured ham", "cured fish", "sweet treats", "as treats",
    "little treats",
)  # fmt: skip
"""Kitchen senses of the same words."""


def _any_of(phrases: tuple[str, ...]) -> re.Pattern[str]:
    longest_first = sorted(phrases, key=len, reverse=True)
    words = "|".join(re.escape(phrase).replace(r"\ ", r"\s+") for phrase in longest_first)
    # Self-heal and all-heal are plants, not promises.
    return re.compile(rf"(?<![\w-])(?:{words})(?![\w-])", re.IGNORECASE)


_CLAIM: Final = _any_of(CLAIMS)
_HEDGE: Final = _any_of(HEDGES)
_NO_DENIAL: Final = _any_of(NO_DENIALS)
_OTHER: Final = _any_of(OTHER_SENSES)
_SENTENCE_END: Final = re.compile(r"[.!?;:](?:\[\^[^\]\s]+\])*\s")
_WORD: Final = re.compile(r"[\w']+")


def claims_in(text: Text) -> Iterator[Text]:
    """Yield each claim of a passage that its sentence does not deny."""
    plain = _OTHER.sub(lambda match: "_" * len(match[0]), text.value)
    for start, end in _sentences(plain):
        denied_from = _denial(plain[start:end]) + start
        for match in _CLAIM.finditer(plain, start, end):
            if match.start() < denied_from:
                at = text.span.start + match.start()
                yield Text(" ".join(match[0].split()), Span(at, at + len(match[0])))


def _sentences(words: str) -> Iterator[tuple[int, int]]:
    start = 0
    for match in _SENTENCE_END.finditer(words):
        yield start, match.end()
        start = match.end()
    yield start, len(words)


def _denial(sentence: str) -> int:
    """Return where a sentence begins to deny, or its end."""
    plain = _NO_DENIAL.sub(lambda match: "_" * len(match[0]), sentence).replace("’", "'")
    found = (match.start() for match in _WORD.finditer(plain) if match[0].casefold() in DENIALS)
    return next(found, len(sentence))


def is_hedged(words: str) -> bool:
    """Return whether a passage says whose claim it is."""
    return bool(_HEDGE.search(words))
