"""Lessons of two plants that are taken for each other, for the tests of their pages."""

from __future__ import annotations

from typing import Final

RAMSONS: Final = """---
name: Ramsons
scientific name: Allium ursinum L.
taught as: food
---
Garlic.

## Identification
### Whole plant
- habit: bulb plant
### Leaves
- attachment: stalked[^flora]
- gloss: glossy above matt beneath
  The other way round.
- tip: acute
- smell when crushed: garlic
### Flowers
- inflorescence: umbel
### Roots
- kind: bulb

## Look-alikes
### Lily of the valley
Two leaves from one shoot.[^flora]
- settled by: marked while in flower[^memory]
- on the card: two leaves in one shoot

### Few-flowered garlic
Little bulbs among the flowers.
- scientific name: Allium paradoxum (M.Bieb.) G.Don
- danger: harmless
#### Leaves
- attachment: stalkless

## Season
- leaves: March to June
- flowers: May
- fruit: June

## Edible parts
- leaves: April to May; raw

[^flora]: A flora.
[^memory]: From memory.
"""
LILY: Final = """---
name: Lily of the valley
scientific name: Convallaria majalis L.
taught as: look-alike
danger: poisonous
---
White bells.

## Identification
### Leaves
- attachment: stalked, stalkless
- gloss: matt above glossy beneath
- tip: acute
- margin: entire
### Flowers
- inflorescence: one-sided raceme[^bells]
### Roots
- kind: rhizome

## Look-alikes
### Ramsons
Its leaves stand singly.
- on the card: one leaf to a stalk

## Season
- leaves: all year
- flowers: May to June

[^bells]: Bells and all.
"""
COURSE: Final = "title: Wood\n"
FILES: Final = {"course.yml": COURSE, "ramsons.md": RAMSONS, "lily-of-the-valley.md": LILY}
