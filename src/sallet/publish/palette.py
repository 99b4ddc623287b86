"""The colours of the pages, by what they are for, on light and on dark paper.

Every pair of a colour and the ground it stands on is listed in PAIRS with the least
contrast it must have by WCAG 2.2: 4.5 for words (1.4.3), 3 for shapes and edges (1.4.11).
"""

from __future__ import annotations

from typing import Final

LIGHT: Final = {
    "paper": "#f7f1e3",
    "mount": "#efe6d0",
    "label": "#fffaf0",
    "ink": "#27221a",
    "faded": "#5d5340",
    "hairline": "#8f805f",
    "leaf": "#2c5a2e",
    "leaf-wash": "#e3ead2",
    "iron": "#8a2a1a",
    "iron-wash": "#f6e0d4",
    "link": "#27425e",
}
DARK: Final = {
    "paper": "#1c1914",
    "mount": "#25211a",
    "label": "#2b261e",
    "ink": "#ece3cf",
    "faded": "#bcb093",
    "hairline": "#82765c",
    "leaf": "#a5c993",
    "leaf-wash": "#26301f",
    "iron": "#f0a08a",
    "iron-wash": "#3a211a",
    "link": "#a9c4e2",
}
OKABE_ITO: Final = {
    "black": "#000000",
    "orange": "#e69f00",
    "sky blue": "#56b4e9",
    "bluish green": "#009e73",
    "yellow": "#f0e442",
    "blue": "#0072b2",
    "vermillion": "#d55e00",
    "reddish purple": "#cc79a7",
}
"""Colours that those who see few colours still tell apart (Okabe and Ito 2008, Color Universal Design).

They fill the bars of the season map, the same on light and on dark paper.
"""
WORDS: Final = 4.5
SHAPES: Final = 3.0
PAIRS: Final[tuple[tuple[str, str, float], ...]] = (
    ("ink", "paper", WORDS),
    ("ink", "mount", WORDS),
    ("ink", "label", WORDS),
    ("ink", "leaf-wash", WORDS),
    ("ink", "iron-wash", WORDS),
    ("faded", "paper", WORDS),
    ("faded", "mount", WORDS),
    ("faded", "label", WORDS),
    ("faded", "leaf-wash", WORDS),
    ("faded", "iron-wash", WORDS),
    ("leaf", "paper", WORDS),
    ("leaf", "mount", WORDS),
    ("leaf", "label", WORDS),
    ("leaf", "leaf-wash", WORDS),
    ("iron", "paper", WORDS),
    ("iron", "mount", WORDS),
    ("iron", "label", WORDS),
    ("iron", "iron-wash", WORDS),
    ("link", "paper", WORDS),
    ("link", "mount", WORDS),
    ("link", "label", WORDS),
    ("link", "leaf-wash", WORDS),
    ("link", "iron-wash", WORDS),
    ("paper", "iron", WORDS),
    ("paper", "leaf", WORDS),
    ("hairline", "paper", SHAPES),
    ("hairline", "mount", SHAPES),
    ("hairline", "label", SHAPES),
)
MARKED: Final[tuple[tuple[str, str, float], ...]] = tuple(
    ("black", name, SHAPES) for name in OKABE_ITO if name != "black"
)
"""The marks of a pattern and the colours that they stand on."""


def contrast(one: str, other: str) -> float:
    """Return the contrast ratio of two colours `#rrggbb`, 1 to 21, by WCAG 2.2's formula."""
    light, dark = sorted((_luminance(one), _luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def _luminance(colour: str) -> float:
    red, green, blue = (_linear(int(colour[i : i + 2], 16) / 255) for i in (1, 3, 5))
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def _linear(part: float) -> float:
    threshold = 0.04045
    return part / 12.92 if part <= threshold else float(((part + 0.055) / 1.055) ** 2.4)
