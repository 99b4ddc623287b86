"""The templates of the pages, set up."""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING

from jinja2 import Environment, FileSystemLoader, StrictUndefined, select_autoescape

from sallet.season.dates import clock_words, date_words, short_date
from sallet.shipped import templates_folder

if TYPE_CHECKING:
    from collections.abc import Iterable

    from sallet.lesson.value import Window


@cache
def site_templates() -> Environment:
    """Return the templates of the pages: all text escaped, a missing value an error."""
    environment = Environment(
        loader=FileSystemLoader(templates_folder() / "site"),
        autoescape=select_autoescape(disabled_extensions=("css",), default=True),
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=True,
    )
    environment.filters["long_date"] = date_words
    environment.filters["short_date"] = short_date
    environment.filters["clock"] = clock_words
    environment.filters["day_numbers"] = day_numbers
    return environment


def day_numbers(windows: Iterable[Window]) -> str:
    """Return windows as a page's script reads them: `60-151 274-90`, days of a 365-day year."""
    return " ".join(f"{window.first}-{window.last}" for window in windows)
