"""What of a flower's recorded characters its drawing shows."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.flower import tables
from sallet.drawing.flower.words import first, is_many, one_of, several
from sallet.drawing.told import some

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.told import Shown, Told


@dataclass(frozen=True)
class FlowerForm:
    """What is drawn of a flower; None where it is not recorded or would change nothing."""

    plan: str
    """From where it is drawn and by which rules: a key of USES."""
    shape: Shown[str] | None = None
    symmetry: Shown[str] | None = None
    perianth: Shown[str] | None = None
    """`none` where there are no petals, `alike` where no sepals are told from them."""
    petals: Shown[int] | None = None
    joined: Shown[str] | None = None
    petal_shape: Shown[str] | None = None
    petal_tip: Shown[str] | None = None
    petal_posture: Shown[str] | None = None
    petal_length: Shown[float] | None = None
    petal_width: Shown[float] | None = None
    width: Shown[float] | None = None
    length: Shown[float] | None = None
    sepals: Shown[int] | None = None
    sepals_joined: Shown[str] | None = None
    sepal_shape: Shown[str] | None = None
    sepal_length: Shown[float] | None = None
    sepal_posture: Shown[str] | None = None
    calyx: Shown[tuple[str, ...]] | None = None
    stamens: Shown[int] | None = None
    stamen_length: Shown[str] | None = None
    styles: Shown[int] | None = None
    stigma: Shown[str] | None = None
    upper_lip: Shown[tuple[str, ...]] | None = None
    lower_lip: Shown[tuple[str, ...]] | None = None
    spur: Shown[tuple[str, ...]] | None = None
    tube: Shown[tuple[str, ...]] | None = None
    florets: Shown[str] | None = None
    rays: Shown[int] | None = None
    bracts: Shown[tuple[str, ...]] | None = None
    marks: Shown[tuple[str, ...]] | None = None
    ovary: Shown[str] | None = None

    @property
    def many_petals(self) -> bool:
        """Return whether more petals are recorded than anyone counts."""
        return is_many(self.petals)


def flower_form(told: Told) -> FlowerForm | None:
    """Return what a drawing shows of a flower; None where too little is recorded to draw one."""
    plan = _plan(told)
    if plan is None:
        return None
    kept = told.only(tables.USES[plan])
    return _ALL[plan](kept, plan) if plan in _ALL else _side(kept, plan)


def _plan(told: Told) -> str | None:
    shape = told.pick("shape", tables.PLANS)
    if shape:
        return shape.value
    if told.pick("florets", tables.FLORETS):
        return "head"
    symmetry = told.pick("symmetry", tables.SYMMETRIES)
    return "face" if symmetry and symmetry.value in {"radial", "nearly"} else None


def _face(told: Told, plan: str) -> FlowerForm | None:
    shape = told.hint("shape", "outline")
    cross = shape is not None and shape.value == "cross"
    petals = None if cross else some(told.count("petals"))
    naked = _naked(told) if not (petals or cross) else None
    if not (petals or cross or naked):
        return None
    symmetry = told.pick("symmetry", tables.SYMMETRIES)
    if naked:
        return _without_petals(told, shape, symmetry, naked)
    if shape and symmetry and symmetry.value == "radial":
        symmetry = None
    width, length = told.length("width"), told.length("petal length")
    joined = told.pick("petals fused or free", tables.JOINED)
    if joined and joined.value == "two" and petals and petals.value == 1:
        joined = None
    if width and joined and joined.value in {"base", "some", "tube"}:
        # Where joined petals begin to part is not told by their length.
        length = None
    wide = told.length("petal width") if width or length else None
    outline = told.pick("petal shape", _names(told))
    stamens, reach = _stamens(told)
    perianth, sepals, posture = _sepals(told)
    styles = some(told.count("styles"))
    return FlowerForm(
        plan,
        shape=shape,
        symmetry=symmetry,
        perianth=perianth,
        petals=petals,
        joined=joined,
        petal_shape=outline,
        petal_tip=told.hint("petal tip", "tip"),
        petal_posture=told.pick("petal posture", tables.FACE_POSTURES),
        petal_length=length,
        petal_width=wide,
        width=width,
        sepals=sepals,
        sepal_shape=told.pick("sepal shape", tables.SEPAL_SHAPES) if sepals else None,
        sepal_length=told.pick("sepal length beside the petals", tables.SEPAL_LENGTHS)
        if sepals
        else None,
        sepal_posture=posture,
        stamens=stamens,
        stamen_length=reach,
        styles=styles,
        stigma=_stigma(told, styles),
        marks=_marks(told, plan),
    )


def _names(told: Told) -> Mapping[str, str]:
    state = told.state("petal shape")
    return {state.value.name: state.value.name} if state else {}


def _naked(told: Told) -> Shown[str] | None:
    """Return that there are no petals, where sepals are recorded that can be drawn instead."""
    if not some(told.count("sepals")):
        return None
    only = told.pick("petals and sepals", {"sepals only": "none"})
    none = told.is_none("petals")
    return only or (none.as_("none") if none else None)


def _without_petals(
    told: Told, shape: Shown[str] | None, symmetry: Shown[str] | None, naked: Shown[str]
) -> FlowerForm:
    # Where it is told twice that there are no petals, neither tells the drawing anything alone.
    regular = symmetry is not None and symmetry.value in {"radial", "nearly"}
    only = told.pick("petals and sepals", {"sepals only": "none"})
    twice = told.is_none("petals") is not None and only is not None
    stamens, reach = _stamens(told, beside_petals=False)
    styles = some(told.count("styles"))
    return FlowerForm(
        "face",
        shape=None if regular else shape,
        symmetry=None if shape else symmetry,
        perianth=None if twice else naked,
        width=told.length("width"),
        sepals=some(told.count("sepals")),
        sepal_shape=told.pick("sepal shape", tables.SEPAL_SHAPES),
        stamens=stamens,
        stamen_length=reach,
        styles=styles,
        stigma=_stigma(told, styles),
    )


def _stamens(
    told: Told, *, beside_petals: bool = True
) -> tuple[Shown[int] | None, Shown[str] | None]:
    count, reach = some(told.count("stamens")), told.pick("stamen length", tables.REACHES)
    if count is None or not beside_petals:
        return count, None
    return (None if reach and reach.value == "hidden" else count), reach


def _stigma(told: Told, styles: Shown[int] | None) -> Shown[str] | None:
    # In a crowd of styles the shape of each cannot be seen.
    return told.pick("stigma", tables.STIGMAS) if styles and not is_many(styles) else None


def _sepals(
    told: Told,
) -> tuple[Shown[str] | None, Shown[int] | None, Shown[str] | None]:
    """Return what hides the sepals, how many are drawn, and that they are bent down."""
    count = some(told.count("sepals"))
    alike = told.pick("petals and sepals", {"alike": "alike", "sepals shed": "alike"})
    bent = told.pick("sepal posture", {"bent down": "down"})
    if count is None:
        return None, None, None
    if alike:
        return (None if bent else alike), None, None
    return None, (None if bent else count), bent


def _side(told: Told, plan: str) -> FlowerForm:
    sepals, calyx = some(told.count("sepals")), _calyx(told)
    stamens = some(told.count("stamens"))
    out = told.pick("stamen length", {"sticking out": "out"}) if stamens else None
    petals = some(told.count("petals"))
    return FlowerForm(
        plan,
        shape=told.hint("shape", "outline"),
        petals=petals,
        joined=_seams(told) if petals else None,
        petal_tip=told.hint("petal tip", "tip") if petals else None,
        petal_posture=told.pick("petal posture", tables.POSTURES),
        length=told.length("length"),
        width=told.length("width"),
        sepals=sepals,
        sepals_joined=told.hint("sepals fused or free", "joined") if sepals and not calyx else None,
        sepal_shape=told.pick("sepal shape", tables.TOOTH_SHAPES) if sepals else None,
        sepal_posture=told.pick("sepal posture", tables.SEPAL_POSTURES) if sepals else None,
        calyx=calyx,
        stamens=stamens if out else None,
        stamen_length=out,
        upper_lip=_upper_lip(told),
        lower_lip=_lower_lip(told),
        spur=first(several(told, "spur", tables.SPURS)),
        tube=_tube(told, plan),
        marks=_marks(told, plan),
        ovary=told.pick("ovary position", tables.OVARIES),
    )


def _seams(told: Told) -> Shown[str] | None:
    shape, joined = told.hint("shape", "outline"), told.pick("petals fused or free", tables.SEAMS)
    if shape and shape.value in tables.TUBULAR and joined and joined.value in {"some", "tube"}:
        return None
    return joined


def _head(told: Told, plan: str) -> FlowerForm:
    shape, florets = told.pick("shape", tables.HEADS), told.pick("florets", tables.FLORETS)
    if shape and florets:
        if shape.value == florets.value:
            # The florets say the same and more.
            shape = None
        else:
            florets = None
    rays = some(told.count("ray florets"))
    if florets and florets.value == "tubes":
        rays = None
    return FlowerForm(
        plan,
        shape=shape,
        florets=florets,
        rays=rays,
        bracts=one_of(several(told, "head bracts", tables.BRACTS), {"one", "several"}),
        width=told.length("width"),
    )


def _tiny(told: Told, plan: str) -> FlowerForm:
    styles = some(told.count("styles"))
    stamens = some(told.count("stamens"))
    return FlowerForm(
        plan,
        shape=told.hint("shape", "outline"),
        sepals=some(told.count("sepals")),
        stamens=stamens,
        styles=styles,
        stigma=_stigma(told, styles),
        width=told.length("width"),
    )


_ALL: Final[Mapping[str, Callable[[Told, str], FlowerForm | None]]] = {
    "face": _face,
    "head": _head,
    "thistle": _head,
    "catkin": _tiny,
    "speck": _tiny,
}


def _marks(told: Told, plan: str) -> Shown[tuple[str, ...]] | None:
    among = tables.MARKED.get(plan, frozenset())
    return several(
        told, "markings", {name: pen for name, pen in tables.MARKS.items() if name in among}
    )


def _upper_lip(told: Told) -> Shown[tuple[str, ...]] | None:
    """Return the form of the upper lip: of several states those that hold together."""
    lip = several(told, "upper lip", tables.LIPS_UP)
    if lip and set(lip.value) == {"hood", "notch"}:
        return lip.as_(("hood", "notch"))
    return first(lip)


def _lower_lip(told: Told) -> Shown[tuple[str, ...]] | None:
    # One outline, and whatever stands on it.
    return one_of(several(told, "lower lip", tables.LIPS_LOW), {"three", "two", "whole"})


def _calyx(told: Told) -> Shown[tuple[str, ...]] | None:
    return one_of(several(told, "calyx", tables.CALYXES), set(tables.CALYXES.values()) - {"ribbed"})


def _tube(told: Told, plan: str) -> Shown[tuple[str, ...]] | None:
    # A turned body is straight unless it is said to be bent.
    among = (
        tables.TUBES
        if plan == "lipped"
        else {k: v for k, v in tables.TUBES.items() if k != "straight"}
    )
    bent = one_of(several(told, "corolla tube", among), {"straight", "curved"})
    return one_of(bent, {"short", "long"})
