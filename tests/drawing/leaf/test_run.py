"""A smooth piece of an outline."""

from __future__ import annotations

from sallet.drawing.leaf.run import Run


def test_a_run_goes_towards_a_tip_and_has_teeth_unless_told_otherwise() -> None:
    assert Run((0j, 1j)) == Run((0j, 1j), forward=True, toothed=True)
    assert Run((0j, 1j)) != Run((0j, 1j), toothed=False)
