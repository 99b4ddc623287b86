"""Photographs for the pages: resized, upright, without metadata, as WebP and as JPEG."""

from __future__ import annotations

import hashlib
import io
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from PIL import Image, ImageCms, ImageOps

from sallet.lesson.reading import hyphened

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.lesson.model import Picture

WIDTHS: Final = (480, 960, 1600)
"""Pixels: a phone, a page, a page on a fine screen."""
FORMATS: Final = (("webp", "WEBP", 80), ("jpg", "JPEG", 84))
"""File ending, Pillow's name, quality."""


@dataclass(frozen=True)
class Copy:
    """One file of a photograph."""

    file: str
    """Its name in the site's folder of pictures."""
    ending: str
    width: int
    height: int


@dataclass(frozen=True)
class Photograph:
    """A picture of a lesson with its copies, small to large."""

    picture: Picture
    copies: tuple[Copy, ...]

    def of(self, ending: str) -> tuple[Copy, ...]:
        """Return the copies in one format."""
        return tuple(copy for copy in self.copies if copy.ending == ending)

    def srcset(self, ending: str, folder: str) -> str:
        """Return the copies in one format as the value of `srcset`."""
        return ", ".join(f"{folder}{copy.file} {copy.width}w" for copy in self.of(ending))

    @property
    def largest(self) -> Copy:
        """Return the largest JPEG."""
        return self.of("jpg")[-1]


def plan_copies(slug: str, name: str, data: bytes, size: tuple[int, int]) -> tuple[Copy, ...]:
    """Return the copies to make of a photograph that is `size` (width, height) when upright.

    A file's name holds a digest of the original and of how copies are made, so that an unchanged photograph is known by
    name and need not be drawn again.
    """
    settings = repr((WIDTHS, FORMATS)).encode()
    digest = hashlib.sha256(settings + data).hexdigest()[:10]
    stem = f"{slug}-{hyphened(name)}-{digest}"
    return tuple(
        Copy(f"{stem}-{width}.{ending}", ending, width, max(1, round(size[1] * width / size[0])))
        for ending, _, _ in FORMATS
        for width in _widths(size[0])
    )


def _widths(width: int) -> Sequence[int]:
    return sorted({*(w for w in WIDTHS if w < width), min(width, WIDTHS[-1])})


def make_copies(data: bytes, copies: Sequence[Copy]) -> Iterator[tuple[Copy, bytes]]:
    """Yield the copies of a photograph. The same bytes give the same copies."""
    image = upright(data)
    for copy in copies:
        yield copy, resized(image, (copy.width, copy.height), copy.ending)


def upright(data: bytes) -> Image.Image:
    """Return a photograph as it is to be seen: upright, in sRGB, on white."""
    with Image.open(io.BytesIO(data)) as image:
        return _on_white(_in_srgb(ImageOps.exif_transpose(image)))


def resized(image: Image.Image, size: tuple[int, int], ending: str) -> bytes:
    """Return a picture at a size in pixels, in the format of a file ending, without hidden data."""
    smaller = image.resize(size, Image.Resampling.LANCZOS)
    # A fresh image takes over pixels only: EXIF, GPS, comments and profiles stay behind.
    clean = Image.new("RGB", smaller.size)
    clean.paste(smaller)
    return _encoded(clean, ending)


def _in_srgb(image: Image.Image) -> Image.Image:
    """Return a picture in the colours that a browser takes for granted, by its own profile."""
    profile = image.info.get("icc_profile")
    if not profile:
        return image
    srgb = ImageCms.createProfile("sRGB")
    mode = "RGBA" if image.has_transparency_data else "RGB"
    try:
        own = ImageCms.ImageCmsProfile(io.BytesIO(profile))
        return ImageCms.profileToProfile(image, own, srgb, outputMode=mode) or image
    except (ImageCms.PyCMSError, OSError, ValueError):
        return image  # a broken profile, or one of another kind of picture


def _on_white(image: Image.Image) -> Image.Image:
    """Return a picture without transparency: an ink drawing lies on white paper."""
    if not image.has_transparency_data:
        return image.convert("RGB")
    paper = Image.new("RGBA", image.size, "white")
    return Image.alpha_composite(paper, image.convert("RGBA")).convert("RGB")


def _encoded(image: Image.Image, ending: str) -> bytes:
    _, name, quality = next(form for form in FORMATS if form[0] == ending)
    held = io.BytesIO()
    image.save(held, name, quality=quality)
    return held.getvalue()
