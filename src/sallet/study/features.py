"""A contrast as words: the same on the page, on the card and in the briefing of a walk."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from sallet.lesson.model import Fact
    from sallet.lesson.vocabulary import Vocabulary
    from sallet.study.contrast import Contrast


@dataclass(frozen=True)
class Feature:
    """What tells a plant from another, in words."""

    organ: str
    """The organ, or the kind or piece of it, as a heading: `Leaves`, `Bulb`."""
    label: str
    this: str
    """The plant's own values, as its lesson has them."""
    that: str
    """Those of the other plant."""
    is_reliable: bool
    caveat: str
    """Why it may not be trusted by itself; empty for what is reliable."""


def feature_of(contrast: Contrast, vocabulary: Vocabulary) -> Feature:
    """Return a contrast in words."""
    fact = contrast.this
    return Feature(
        organ=organ_words(fact, vocabulary),
        label=contrast.label.name,
        this=fact.text,
        that=contrast.that.text,
        is_reliable=contrast.is_reliable,
        caveat=contrast.label.caveat,
    )


def organ_words(fact: Fact, vocabulary: Vocabulary) -> str:
    """Return the organ of a fact as a heading, or the kind or piece of it that is meant."""
    part = fact.part
    return part[:1].upper() + part[1:] if part else vocabulary.subject(fact.subject).heading


def feature_words(feature: Feature, other: str) -> str:
    """Return a feature as one line: `Leaves, gloss: glossy above; Lily of the valley: matt above`."""
    return f"{feature.organ}, {feature.label}: {feature.this}; {other}: {feature.that}"
