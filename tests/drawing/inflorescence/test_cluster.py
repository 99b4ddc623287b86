"""A cluster in plain numbers."""

from __future__ import annotations

from typing import Final

from sallet.drawing.inflorescence.bracts import Kind
from sallet.drawing.inflorescence.cluster import Cluster, cluster, lone_bract
from sallet.drawing.inflorescence.form import inflorescence_form
from sallet.drawing.inflorescence.space import ORIGIN, Eye, direction
from sallet.drawing.inflorescence.whorls import Whorl
from sallet.drawing.ink import box
from sallet.drawing.told import specimen
from sallet.lesson.vocabulary_file import load_vocabulary

VOCABULARY: Final = load_vocabulary()


def of(**words: str) -> Cluster:
    form = inflorescence_form(specimen(VOCABULARY, "flowers", **words))
    assert form is not None
    return cluster(form)


def test_what_is_not_recorded_is_none_or_empty() -> None:
    assert of(inflorescence="raceme") == Cluster(
        "raceme", None, None, None, "", "", "", None, None, None, None, "", 0, None
    )


def test_what_is_recorded_is_there() -> None:
    found = of(
        inflorescence="umbel", rays="7–9", cluster_shape="flat", bracts="turned down",
        number_of_bracts="5", spathe="papery sheath", bulbils="present",
        flowering_order="middle first", cluster_width="4 cm", ray_length="3 cm",
    )  # fmt: skip
    assert found == Cluster(
        plan="umbel", flowers=None, rays=8, branches=None, outline="flat", order="out", face="",
        bracts=Whorl(Kind(posture="down")), bract_number=5, bracteoles=None,
        bracteole_number=None, spathe="sheath", bulbils=3, heads=None, steep=0.75,
    )  # fmt: skip


def test_the_bract_of_a_flower_stands_on_the_side_of_its_stalk() -> None:
    for azimuth, side in ((0, 1), (180, -1)):
        room = box(lone_bract(Eye(0), Whorl(), ORIGIN, direction(azimuth, 60), 30).ink)
        assert (room.left + room.right) * side > 20


def test_the_bract_of_a_flower_points_down_where_told_to() -> None:
    whorl = Whorl(Kind(posture="down"))
    assert box(lone_bract(Eye(0), whorl, ORIGIN, direction(0, 60), 30).ink).bottom < -12
