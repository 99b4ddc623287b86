"""The colours: WCAG 2.2's contrast, on light paper, on dark paper and in print."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

import pytest
from PIL import ImageColor

from sallet.publish.palette import DARK, LIGHT, MARKED, OKABE_ITO, PAIRS, contrast
from sallet.publish.templates import site_templates

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

CSS: Final = site_templates().get_template("style.css").render(light=LIGHT, dark=DARK)


@dataclass(frozen=True)
class Rule:
    """One rule of the style sheet, with the at-rule round it."""

    within: str
    selector: str
    declarations: tuple[tuple[str, str], ...]


def rules_of(css: str, within: str = "") -> Iterator[Rule]:
    """Yield the rules of a style sheet; what stands in `@media` comes with its condition."""
    css = re.sub(r"/\*.*?\*/", "", css, flags=re.DOTALL)
    at = 0
    while match := re.compile(r"([^{}]+)\{").search(css, at):
        end, depth = match.end(), 1
        while depth:
            depth += {"{": 1, "}": -1}.get(css[end], 0)
            end += 1
        head, body = match[1].strip(), css[match.end() : end - 1]
        if "{" in body:
            yield from rules_of(body, head)
        else:
            pairs = (d.split(":", 1) for d in body.split(";") if d.strip())
            yield Rule(within, head, tuple((k.strip(), v.strip()) for k, v in pairs))
        at = end


RULES: Final = tuple(rules_of(CSS))


def properties_of(within: str) -> dict[str, str]:
    """Return the custom properties that `:root` sets, by name without the dashes."""
    return {
        name.removeprefix("--"): value
        for rule in RULES
        if (rule.within, rule.selector) == (within, ":root")
        for name, value in rule.declarations
        if name.startswith("--") and value.startswith("#")
    }


PRINT: Final = LIGHT | properties_of("@media print")


@pytest.mark.parametrize(
    ("colour", "ratio"),
    [("#000000", 21.0), ("#767676", 4.5422), ("#777777", 4.4781), ("#595959", 7.0047),
     ("#949494", 3.0335), ("#0000ff", 8.5925), ("#ff0000", 3.9985), ("#008000", 5.1374),
     ("#ffff00", 1.0738)],
)  # fmt: skip
def test_contrast_against_white_is_as_published(colour: str, ratio: float) -> None:
    """By the formula of WCAG 2.2; #767676 at 4.54 and yellow at 1.07 are published figures too."""
    assert contrast(colour, "#ffffff") == pytest.approx(ratio, abs=5e-5)
    assert contrast("#ffffff", colour) == contrast(colour, "#ffffff")


def test_the_darkest_grey_that_passes_and_the_lightest_that_fails() -> None:
    """Source: WCAG 2.2, 1.4.3: 4.5 to one, not rounded up to it."""
    assert contrast("#767676", "#ffffff") >= 4.5 > contrast("#777777", "#ffffff")


def test_a_colour_has_no_contrast_to_itself() -> None:
    assert contrast("#2c5a2e", "#2c5a2e") == 1


@pytest.mark.parametrize("colours", [LIGHT, DARK, PRINT], ids=["light", "dark", "print"])
def test_every_pair_that_meets_has_its_contrast(colours: Mapping[str, str]) -> None:
    """Source: WCAG 2.2, 1.4.3 for words and 1.4.11 for shapes."""
    found = {(a, b): round(contrast(colours[a], colours[b]), 2) for a, b, _ in PAIRS}
    low = {(a, b): found[a, b] for a, b, least in PAIRS if contrast(colours[a], colours[b]) < least}
    assert low == {}


def test_words_need_four_and_a_half_to_one_and_shapes_three() -> None:
    assert {least for _, _, least in PAIRS} == {4.5, 3.0}
    assert {a for a, _, least in PAIRS if least < 4.5} == {"hairline"}


def test_light_and_dark_have_the_same_colours_and_each_is_in_a_pair() -> None:
    assert set(LIGHT) == set(DARK) == {name for a, b, _ in PAIRS for name in (a, b)}
    assert len(PAIRS) == len({(a, b) for a, b, _ in PAIRS})


@pytest.mark.parametrize(
    ("name", "red", "green", "blue"),
    [("black", 0, 0, 0), ("orange", 230, 159, 0), ("sky blue", 86, 180, 233),
     ("bluish green", 0, 158, 115), ("yellow", 240, 228, 66), ("blue", 0, 114, 178),
     ("vermillion", 213, 94, 0), ("reddish purple", 204, 121, 167)],
)  # fmt: skip
def test_the_colours_of_the_map_are_as_published(
    name: str, red: int, green: int, blue: int
) -> None:
    """Source: Okabe and Ito 2008, Color Universal Design, the palette's RGB values."""
    assert OKABE_ITO[name] == f"#{red:02x}{green:02x}{blue:02x}"
    assert len(OKABE_ITO) == 8


def test_the_marks_of_every_pattern_are_seen_on_its_colour() -> None:
    """Source: WCAG 2.2, 1.4.11."""
    assert {ground for _, ground, _ in MARKED} == set(OKABE_ITO) - {"black"}
    low = {
        ground: contrast(OKABE_ITO[mark], OKABE_ITO[ground])
        for mark, ground, least in MARKED
        if contrast(OKABE_ITO[mark], OKABE_ITO[ground]) < least
    }
    assert low == {}


def test_the_style_sheet_holds_both_papers() -> None:
    assert properties_of("") == LIGHT
    assert properties_of("@media (prefers-color-scheme: dark)") == DARK


def test_in_print_no_colour_is_named_that_the_screen_lacks() -> None:
    assert set(PRINT) == set(LIGHT)
    assert {PRINT[name] for name in ("paper", "mount", "label", "leaf-wash", "iron-wash")} == {
        "#ffffff"
    }


def test_colours_are_named_only_through_the_palette() -> None:
    """Outside `:root` no rule holds a colour of its own."""
    literal = re.compile(
        r"#[0-9a-f]{3,8}\b|\b(?:rgb|hsl|hwb|lab|lch|oklab|oklch|color)a?\(", re.IGNORECASE
    )
    named = {*ImageColor.colormap, "canvas", "canvastext", "linktext", "graytext"}
    found = [
        (rule.selector, name, value)
        for rule in RULES
        if rule.selector != ":root"
        for name, value in rule.declarations
        if literal.search(value) or named & set(re.findall(r"(?<![-\w])[a-z]+(?![-\w])", value))
    ]
    assert found == []


def test_every_custom_property_that_is_used_is_set_and_every_colour_is_used() -> None:
    used = set(re.findall(r"var\(--([\w-]+)\)", CSS))
    assert used == {*LIGHT, "text"}


def test_every_colour_that_a_rule_sets_on_a_ground_is_a_listed_pair() -> None:
    found = set()
    for rule in RULES:
        colours = {
            n: m[1] for n, v in rule.declarations if (m := re.search(r"var\(--([\w-]+)\)", v))
        }
        ground = colours.get("background") or colours.get("background-color")
        if ground and "color" in colours:
            found.add((colours["color"], ground))
    assert len(found) > 2
    assert found - {(a, b) for a, b, least in PAIRS if least >= 4.5} == set()
