"""Photographs: upright, bare of metadata, never larger than they were."""

from __future__ import annotations

import hashlib
import io
from typing import Any

import pytest
from PIL import Image, ImageCms

from helpers.workshop import lesson_of
from sallet.publish.photographs import FORMATS, WIDTHS, Copy, Photograph, make_copies, plan_copies

DIGEST = hashlib.sha256(repr((WIDTHS, FORMATS)).encode() + b"x").hexdigest()[:10]
"""Of how copies are made and of a picture whose bytes are `x`."""
GPS, ORIENTATION, ARTIST = 0x8825, 0x0112, 0x013B
RED, BLUE = (200, 30, 30), (30, 30, 200)


def picture(width: int, height: int, form: str = "JPEG", **how: Any) -> bytes:
    """Return a picture whose left half is red and whose right half is blue."""
    image = Image.new("RGB", (width, height), BLUE)
    image.paste(RED, (0, 0, width // 2, height))
    held = io.BytesIO()
    image.save(held, form, **how)
    return held.getvalue()


def laden(orientation: int) -> bytes:
    """Return a picture with everything that a telephone writes into it."""
    exif = Image.Exif()
    exif[ORIENTATION] = orientation
    exif[ARTIST] = "Somebody"
    exif[GPS] = {1: "N", 2: (54.0, 24.0, 0.0), 3: "W", 4: (2.0, 36.0, 0.0)}
    profile = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()
    return picture(600, 300, exif=exif, icc_profile=profile, comment=b"at the ford")


def opened(data: bytes) -> Image.Image:
    """Return a picture, its pixels read."""
    image = Image.open(io.BytesIO(data))
    image.load()
    return image


def copies_of(data: bytes) -> list[tuple[Copy, Image.Image]]:
    """Return the copies of a picture, each with its image."""
    plan = plan_copies("ramsons", "leaf", data, upright_size(data))
    return [(copy, opened(made)) for copy, made in make_copies(data, plan)]


def upright_size(data: bytes) -> tuple[int, int]:
    """Return the width and height as the picture is to be seen."""
    image = opened(data)
    width, height = image.size
    return (height, width) if image.getexif().get(ORIENTATION, 1) >= 5 else (width, height)


def near(one: Any, other: tuple[int, int, int]) -> bool:
    """Return whether a pixel has a colour, but for what compression does to it."""
    return all(abs(a - b) < 25 for a, b in zip(one, other, strict=True))


# ---- what is planned ----------------------------------------------------------------------


@pytest.mark.parametrize(
    ("width", "widths"),
    [(300, [300]), (480, [480]), (481, [480, 481]), (960, [480, 960]), (1200, [480, 960, 1200]),
     (1600, [480, 960, 1600]), (4000, [480, 960, 1600])],
)  # fmt: skip
def test_no_copy_is_larger_than_the_picture(width: int, widths: list[int]) -> None:
    plan = plan_copies("ramsons", "leaf", b"x", (width, width // 2))
    assert [copy.width for copy in plan if copy.ending == "jpg"] == widths
    assert [copy.width for copy in plan if copy.ending == "webp"] == widths
    assert [copy.height for copy in plan] == [round(w / width * (width // 2)) for w in widths * 2]
    assert len({copy.file for copy in plan}) == len(plan)


def test_a_very_wide_picture_keeps_one_row_of_pixels() -> None:
    assert [copy.height for copy in plan_copies("a", "b", b"", (4000, 1))] == [1] * 6


def test_a_copy_is_named_after_plant_picture_content_and_width() -> None:
    plan = plan_copies("ramsons", "My leaf, no. 2", b"x", (300, 200))
    assert plan == (
        Copy(f"ramsons-my-leaf-no-2-{DIGEST}-300.webp", "webp", 300, 200),
        Copy(f"ramsons-my-leaf-no-2-{DIGEST}-300.jpg", "jpg", 300, 200),
    )


def test_the_copies_stand_in_the_page_by_width() -> None:
    text = "## Pictures\n### leaf.jpg\n- shows: one leaf\n"
    (told,) = lesson_of(text).pictures
    photograph = Photograph(told, plan_copies("a", "leaf", b"x", (700, 350)))
    assert photograph.srcset("jpg", "../pictures/") == (
        f"../pictures/a-leaf-{DIGEST}-480.jpg 480w, ../pictures/a-leaf-{DIGEST}-700.jpg 700w"
    )
    assert photograph.largest == Copy(f"a-leaf-{DIGEST}-700.jpg", "jpg", 700, 350)


# ---- what is made -------------------------------------------------------------------------


def test_every_copy_has_the_format_and_the_size_it_was_planned_with() -> None:
    made = copies_of(picture(1200, 601))
    assert [(c.width, c.height) for c, _ in made] == [image.size for _, image in made]
    formats = {"webp": "WEBP", "jpg": "JPEG"}
    assert [formats[copy.ending] for copy, _ in made] == [image.format for _, image in made]
    assert {copy.width for copy, _ in made} == {*WIDTHS[:2], 1200}


@pytest.mark.parametrize("orientation", range(1, 9))
def test_a_copy_stands_upright(orientation: int) -> None:
    """Source: the EXIF standard: where the picture's row 0 and column 0 are to be seen."""
    red_side = {1: "left", 2: "right", 3: "right", 4: "left", 5: "top", 6: "top", 7: "bottom",
                8: "bottom"}[orientation]  # fmt: skip
    for _, image in copies_of(laden(orientation)):
        width, height = image.size
        assert (width > height) == (orientation < 5)
        at = {"left": (5, height // 2), "right": (width - 5, height // 2), "top": (width // 2, 5),
              "bottom": (width // 2, height - 5)}  # fmt: skip
        assert [side for side, pixel in at.items() if near(image.getpixel(pixel), RED)
                and side in {red_side, *_across(red_side)}] == [red_side]  # fmt: skip


def _across(side: str) -> set[str]:
    return {"left", "right"} if side in {"left", "right"} else {"top", "bottom"}


def test_nothing_of_place_camera_or_person_stays_in_a_copy() -> None:
    data = laden(6)
    assert opened(data).getexif().get_ifd(GPS)  # the test would prove nothing without it
    for copy, image in copies_of(data):
        assert dict(image.getexif()) == {}
        assert {key for key in image.info if key not in _HARMLESS} == set(), copy.file
    plan = plan_copies("ramsons", "leaf", data, (300, 600))
    for _, made in make_copies(data, plan):
        assert [word for word in _TRACES if word in made] == []


_HARMLESS = {"jfif", "jfif_version", "jfif_unit", "jfif_density", "loop", "background",
             "timestamp", "duration"}  # fmt: skip
"""What the formats say of themselves."""
_TRACES = (b"Exif", b"EXIF", b"Somebody", b"at the ford", b"ICC", b"http://ns.adobe")


def test_the_same_picture_gives_the_same_copies() -> None:
    data = picture(500, 250)
    plan = plan_copies("ramsons", "leaf", data, (500, 250))
    assert list(make_copies(data, plan)) == list(make_copies(data, plan))


@pytest.mark.parametrize("mode", ["RGBA", "LA", "P"])
def test_what_is_transparent_lies_on_white_paper(mode: str) -> None:
    image = Image.new("RGBA", (40, 20), (0, 0, 0, 0))
    image.paste((0, 0, 0, 255), (0, 0, 20, 20))
    held = io.BytesIO()
    image.convert(mode).save(held, "PNG")
    for _, made in copies_of(held.getvalue()):
        assert near(made.getpixel((35, 10)), (255, 255, 255))
        assert near(made.getpixel((5, 10)), (0, 0, 0))


@pytest.mark.parametrize("mode", ["L", "CMYK", "1", "P"])
def test_a_picture_of_any_kind_becomes_one_of_plain_colours(mode: str) -> None:
    held = io.BytesIO()
    Image.new("RGB", (40, 20), "white").convert(mode).save(held, "TIFF")
    for _, made in copies_of(held.getvalue()):
        assert made.mode == "RGB"
        assert near(made.getpixel((20, 10)), (255, 255, 255))


def test_colours_of_another_profile_are_turned_into_those_a_browser_takes_for_granted() -> None:
    """In a profile whose red and blue have changed places, what is stored as red is blue."""
    srgb = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()
    swapped = srgb.replace(b"rXYZ", b"????").replace(b"bXYZ", b"rXYZ").replace(b"????", b"bXYZ")
    [(_, copy), *_] = copies_of(picture(300, 200, "PNG", icc_profile=swapped))
    assert near(copy.convert("RGB").getpixel((10, 10)), (30, 30, 200))


def test_a_broken_profile_leaves_the_picture_as_it_is() -> None:
    [(_, copy), *_] = copies_of(picture(300, 200, "PNG", icc_profile=b"no profile at all"))
    assert copy.size == (300, 200)
    assert near(copy.convert("RGB").getpixel((10, 10)), RED)
