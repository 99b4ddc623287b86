"""Winged fruits, cones and burs."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle, ellipse, smooth, straight
from sallet.drawing.fruit.body import Body
from sallet.drawing.fruit.surface import cover
from sallet.drawing.fruit.whole import Drawn, bodies
from sallet.drawing.ink import Copy, Curve, Mark, Path, Place, put, turned

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.fruit.form import FruitForm
    from sallet.drawing.ink import Ink


def samara(form: FruitForm, size: float) -> Drawn:
    """Return a nut with a wing: all round it, on one side, or, where not recorded, dotted."""
    wing = form.wings.value if form.wings else ""
    if wing == "all round":
        rim = Body(_RIM, size, 0.84 * size)
        nut = ellipse(0.52j * size, 0.12 * size, 0.17 * size)
        veins = _rays(0.52j * size, (0.13 * size, 0.18 * size), (0.3 * size, 0.36 * size))
        return Drawn((*rim.ink("wing"), *veins, Mark(nut, "line", "nut")), size, 0.84 * size)
    if wing == "a pair":
        return double_samara(form, size)
    if wing in _BRACTS:
        return _BRACTS[wing](size)
    width = 0.24 * size
    pen_known = wing == "one long wing"
    blade = Path(
        complex(0, 0.02 * size),
        (
            Curve(
                complex(0.34 * width, 0.2 * size),
                complex(0.56 * width, 0.4 * size),
                complex(0.52 * width, 0.68 * size),
            ),
            Curve(
                complex(0.5 * width, 0.86 * size),
                complex(0.3 * width, 0.97 * size),
                complex(0.02 * width, size),
            ),
            Curve(
                complex(-0.3 * width, 0.97 * size),
                complex(-0.5 * width, 0.86 * size),
                complex(-0.52 * width, 0.68 * size),
            ),
            Curve(
                complex(-0.56 * width, 0.4 * size),
                complex(-0.34 * width, 0.2 * size),
                complex(0, 0.02 * size),
            ),
        ),
        closed=True,
    )
    nut = smooth(
        [
            0j,
            0.25 * width + 0.14j * size,
            0.22 * width + 0.3j * size,
            0.42j * size,
            -0.22 * width + 0.3j * size,
            -0.25 * width + 0.14j * size,
        ],
        closed=True,
    )
    veins = (
        tuple(
            Mark(
                Path(
                    complex(0.12 * x * width, 0.43 * size),
                    (
                        Curve(
                            complex(0.2 * x * width, 0.6 * size),
                            complex(0.36 * x * width, 0.75 * size),
                            complex(0.3 * x * width, 0.92 * size),
                        ),
                    ),
                ),
                "fine",
            )
            for x in (-1, -0.4, 0.4, 1)
        )
        if pen_known
        else ()
    )
    return Drawn(
        (Mark(blade, "line" if pen_known else "dotted", "wing"), *veins, Mark(nut, "line", "nut")),
        size, width,
    )  # fmt: skip


_RIM: Final = Path(
    0j,
    (
        Curve(0.5 + 0.02j, 1 + 0.22j, 1 + 0.52j), Curve(1 + 0.8j, 0.6 + 1j, 0.2 + 1j),
        Curve(0.1 + 0.99j, 0.06 + 0.94j, 0.86j),
    ),
)  # fmt: skip


def _rays(centre: complex, inner: tuple[float, float], outer: tuple[float, float]) -> Ink:
    return tuple(
        Mark(
            straight(
                centre + complex(inner[0] * math.cos(a), inner[1] * math.sin(a)),
                centre + complex(outer[0] * math.cos(a), outer[1] * math.sin(a)),
            ),
            "fine",
        )
        for a in (2 * math.pi * (n + 0.5) / 16 for n in range(16))
    )


def double_samara(form: FruitForm, size: float) -> Drawn:
    """Return two winged nuts joined; their wings are dotted, as their angle is not recorded."""
    long = 0.62 * size

    def at(x: float, y: float) -> complex:
        return complex(x, y) * long

    nut = ellipse(at(0.15, 0.0), 0.155 * long, 0.125 * long)
    wing = Path(
        at(0.02, 0.1),
        (
            Curve(at(0.3, 0.2), at(0.62, 0.2), at(0.86, 0.14)), Curve(at(1.02, 0.08), at(1.06, -0.1), at(0.96, -0.2)),
            Curve(at(0.84, -0.3), at(0.5, -0.2), at(0.16, -0.1)),
        ),
        closed=True,
    )  # fmt: skip
    veins = tuple(
        Mark(
            Path(
                at(0.3, 0.1),
                (Curve(at(0.5, 0.14), at(0.66, 0.12 - 0.06 * n), at(0.8, 0.06 - 0.075 * n)),),
            ),
            "fine",
        )
        for n in range(4)
    )
    known = bool(form.wings and form.kind and form.kind.value == "double samara")
    one: Ink = (
        Mark(wing, "line" if known else "dotted", "wing"),
        *(veins if known else ()),
        Mark(nut, "line", "nut"),
    )
    right = put(one, turned(24, 0.14j * long))
    left = put(right, turned(0, mirrored=True))
    return Drawn((*right, *left), size, size)


def _strap(size: float) -> Drawn:
    """Return a strap-like bract from whose middle a fruit hangs."""
    width = 0.22 * size
    strap = Body(_STRAP, size, width)
    vein = Mark(straight(0j, 0.9j * size), "fine")
    low = 0.46j * size
    stalk = Mark(
        Path(low, (Curve(low + complex(0.2, 0.12) * size, complex(0.3, 0.36) * size, complex(0.3, 0.16) * size),)),
        "line", "stalk",
    )  # fmt: skip
    nut = Mark(circle(complex(0.3, 0.1) * size, 0.062 * size), "line", "nut")
    return Drawn((*strap.ink("wing"), vein, stalk, nut), size, width)


_STRAP: Final = Path(
    0j, (Curve(0.8 + 0.05j, 1 + 0.2j, 1 + 0.45j), Curve(1 + 0.75j, 0.8 + 0.97j, 1j))
)


def _three_lobed(size: float) -> Drawn:
    """Return a bract of three points with a nut at its foot."""
    right = Path(
        0j,
        (
            Curve(
                complex(0.2, -0.02) * size, complex(0.46, 0.14) * size, complex(0.44, 0.52) * size
            ),
            Curve(
                complex(0.34, 0.46) * size, complex(0.22, 0.34) * size, complex(0.15, 0.3) * size
            ),
            Curve(complex(0.18, 0.56) * size, complex(0.12, 0.86) * size, 1j * size),
        ),
    )
    bract = right.then(right.placed(turned(0, mirrored=True)).reversed()).shut()
    veins = tuple(
        Mark(
            Path(0.1j * size, (Curve(0.2j * size + 0.4 * end, 0.7 * end + 0.05j * size, end),)),
            "fine",
        )
        for end in (complex(x, y) * size for x, y in ((-0.4, 0.42), (0.0, 0.86), (0.4, 0.42)))
    )
    nut = Body(_NUT, 0.2 * size, 0.17 * size, at=0.01j * size)
    return Drawn((Mark(bract, "line", "wing"), *veins, *nut.ink("nut")), size, 0.9 * size)


_BRACTS: Final[Mapping[str, Callable[[float], Drawn]]] = {
    "a leafy strap": _strap,
    "a three-lobed bract": _three_lobed,
}


def winged_nut(form: FruitForm, size: float) -> Drawn:
    """Return a nut in three wings: two at the sides, one in front, the nut below seen beside."""
    what = form.wing_surface.value if form.wing_surface else ""
    ratio = form.ratio or 1.6
    long = 0.62 * size
    wing = _wing(size, what)
    warts = {"one wart": 1, "three warts": 3}.get(what, 0)
    front = (*wing, *(_wart(0j, size) if warts else ()))
    side = (
        *_turned_away(wing, 0.17 * size),
        *(_wart(0.33 * size + 0.03j * size, size) if warts > 1 else ()),
    )
    right = put(side, Place(0.05j * size))
    left = put(right, turned(0, mirrored=True))
    nut = Body(_NUT, long, long / ratio)
    edge = Mark(nut.meridian(0.14, 0.0, 1.0), "line", "edge")
    inner: Ink = put((*nut.ink("nut"), edge), Place(-nut.middle))
    return Drawn((*right, *left, *front), long, long / ratio, None, (inner,))


_NUT: Final = Path(0j, (Curve(0.6 + 0.04j, 1 + 0.2j, 1 + 0.42j), Curve(1 + 0.66j, 0.4 + 0.86j, 1j)))


def _wart(at: complex, size: float) -> Ink:
    return (Mark(ellipse(at + 0.24j * size, 0.07 * size, 0.11 * size), "line", "wart"),)


def _turned_away(ink: Ink, shift: float) -> Ink:
    """Return a wing seen from its side: narrower, its upper end off the axis."""
    return put(ink, Place(complex(shift, 0), complex(0.86, -0.1)))


def _wing(size: float, what: str) -> Ink:
    """Return one wing, heart-shaped at the foot, plain with its veins or toothed as recorded."""
    one = Body(_WING, size, 0.66 * size)
    if what == "toothed":
        teeth = tuple(
            Mark(_tooth(root, out, 0.075 * size), "line", "tooth")
            for root, out in one.rim(12, 0.16, 0.62)
        )
        return (*teeth, *one.ink("wing"))
    return (*one.ink("wing"), *(_net(size) if what == "without warts" else ()))


_WING: Final = Path(
    0j,
    (
        Curve(0.3 - 0.02j, 0.7 + 0j, 0.88 + 0.16j), Curve(1.1 + 0.36j, 0.98 + 0.58j, 0.66 + 0.76j),
        Curve(0.4 + 0.9j, 0.14 + 0.97j, 1j),
    ),
)  # fmt: skip


def _tooth(root: complex, out: complex, long: float) -> Path:
    side = out * 0.3j * long
    inner = root - out * 0.2 * long
    return straight(inner + side, root + out * long, inner - side)


def _net(size: float) -> Ink:
    """Return the veins of a plain wing."""
    veins = [Mark(straight(0.04j * size, 0.9j * size), "fine")]
    for n in range(4):
        low, wide = 0.1 + 0.17 * n, 0.27 - 0.045 * n
        for x in (-1, 1):
            root, end = 1j * low * size, complex(x * wide, low + 0.13) * size
            bend = Curve(root + 0.5 * x * wide * size, end - 0.05j * size, end)
            veins.append(Mark(Path(root, (bend,)), "fine"))
    return tuple(veins)


def cone(form: FruitForm, size: float) -> Drawn:
    """Return a cone: scales that overlap, in spirals; their number is not recorded."""
    one = bodies(form, size)[0]
    radius = 0.155 * math.sqrt(one.length * one.width)
    scale = _cone_scale(radius)
    rows = max(5, round(one.length / (0.92 * radius)))
    found = []
    for row in range(rows):
        share = 0.02 + 0.9 * (row + 0.35) / rows
        half = max(0.2 * radius, one.half(max(share, 0.07)) - 0.45 * radius)
        step = min(2.4, 1.5 * radius / half)
        for k in range(-6, 7):
            angle = (k + 0.5 * (row % 2)) * step
            if abs(angle) <= 0.5 * math.pi + 0.06:
                at = one.at + complex(half * math.sin(angle), share * one.length)
                lean = -34 * math.sin(angle) * (1 - 0.8 * share)
                found.append((-row, -abs(angle), Copy(scale, turned(lean, at), "scale")))
    found.sort(key=lambda f: (f[0], f[1]))
    return Drawn(tuple(copy for _, _, copy in found), one.length, one.width)


def _cone_scale(radius: float) -> Ink:
    """Return one scale, its foot below, its free edge up."""
    return (
        Mark(
            Path(
                complex(-0.8, -0.2) * radius,
                (Curve(complex(-1.0, 0.5) * radius, complex(-0.5, 1.0) * radius, 1.06j * radius),
                 Curve(complex(0.5, 1.0) * radius, complex(1.0, 0.5) * radius, complex(0.8, -0.2) * radius),
                 Curve(complex(0.5, -0.5) * radius, complex(-0.5, -0.5) * radius, complex(-0.8, -0.2) * radius)),
                closed=True,
            ),
            "thin",
        ),
    )  # fmt: skip


def bur(form: FruitForm, size: float) -> Drawn:
    """Return a fruit covered with hooks."""
    one = bodies(form, size)[0]
    around, upon = cover(one, ("hooked",))
    return Drawn((*around, Mark(one.path, one.pen, "fruit"), *upon), one.length, one.width)
