"""One organ drawn."""

from __future__ import annotations

from sallet.drawing.curves import straight
from sallet.drawing.ink import Box, Mark
from sallet.drawing.sketch import Sketch


def test_a_sketch_takes_the_room_of_its_ink() -> None:
    sketch = Sketch("leaf", (Mark(straight(0j, 10 + 20j)),), ())
    assert sketch.box == Box(-0.8, -0.8, 10.8, 20.8)


def test_a_sketch_has_no_scale_and_wants_nothing_unless_told() -> None:
    sketch = Sketch("leaf", (), ())
    assert (sketch.scale, sketch.wants) == (None, ())
