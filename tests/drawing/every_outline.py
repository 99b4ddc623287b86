"""Draws every shape with every margin, tip and base, and ends with an error if one is wrong.

All 138,720 take some minutes, so that this is a step of its own and not one of the tests:

    PYTHONPATH=tests .venv/bin/python tests/drawing/every_outline.py
"""

from __future__ import annotations

import sys
from itertools import product
from multiprocessing import Pool

from helpers.leaves import form_of
from helpers.outlines import LABELS, TABLES, faults_of


def wrong_of(shape: str) -> tuple[str, int, list[str]]:
    """Return a shape, how many outlines it was drawn with, and what is wrong with which."""
    wrong, count = [], 0
    for rest in product(*TABLES[1:]):
        words = dict(zip(LABELS, (shape, *rest), strict=True))
        count += 1
        wrong += [f"{words}: {fault}" for fault in faults_of(form_of(words))]
    return shape, count, wrong


def main() -> int:
    """Draw them all, as many shapes at a time as there are processors."""
    drawn, faults = 0, 0
    with Pool() as pool:
        for shape, count, wrong in pool.imap_unordered(wrong_of, TABLES[0]):
            drawn += count
            faults += len(wrong)
            for line in wrong[:5]:
                sys.stdout.write(f"{shape}: {line}\n")
    sys.stdout.write(f"{drawn} outlines drawn, {faults} faults\n")
    return 1 if faults or not drawn else 0


if __name__ == "__main__":
    sys.exit(main())
