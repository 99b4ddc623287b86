"""Typesets jobs in child processes, so many at a time that memory stays bounded."""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

from sallet.shipped import templates_folder
from sallet.typesetting.jobs import lay_out, made

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from sallet.typesetting.jobs import Job

CARDS_AT_ONCE: Final = 100
"""So many cards one process sets: about 1.5 MB each, which it gives back when it ends."""
_NOBODY: Final = "http://127.0.0.1:9"
"""The port of discarded words: nobody answers there."""
_OFFLINE: Final = dict.fromkeys(("https_proxy", "HTTPS_PROXY", "all_proxy", "ALL_PROXY"), _NOBODY)
"""The engine would fetch a package that a template imports; this way it reaches nobody."""
Progress = Callable[[int, int], None]
"""Told how many are done, of how many."""


class EngineDied(Exception):
    """The process that typesets ended without having done its work."""


def typeset(jobs: Sequence[Job], progress: Progress | None = None) -> Iterator[Any]:
    """Yield what becomes of each job, in order: the bytes of a PDF, or what the template told.

    Raises Untypeset where the engine refuses a document, EngineDied where its process ends early.
    """
    done = 0
    for batch in batches(jobs):
        with tempfile.TemporaryDirectory(prefix="sallet-print-") as name:
            folder = Path(name)
            places = [folder / f"{number:04}" for number in range(len(batch))]
            for job, place in zip(batch, places, strict=True):
                lay_out(job, place, templates_folder() / "print")
            for _ in _run(folder):
                done += 1
                if progress:
                    progress(done, len(jobs))
            yield from (made(job, place) for job, place in zip(batch, places, strict=True))


def batches(jobs: Iterable[Job]) -> Iterator[list[Job]]:
    """Yield jobs in runs that one process may do: one job, or some of few cards together."""
    batch: list[Job] = []
    for job in jobs:
        if batch and sum(one.cards for one in (*batch, job)) > CARDS_AT_ONCE:
            yield batch
            batch = []
        batch.append(job)
    if batch:
        yield batch


def _run(folder: Path) -> Iterator[str]:
    command = [sys.executable, "-m", "sallet.typesetting.worker", str(folder)]
    offline = os.environ | _OFFLINE | {"no_proxy": "", "NO_PROXY": ""}
    complaints = folder / "complaints.txt"
    with (
        complaints.open("w", encoding="utf-8") as errors,
        subprocess.Popen(  # noqa: S603 - our own module, our own folder
            command, stdout=subprocess.PIPE, stderr=errors, text=True, encoding="utf-8", env=offline
        ) as process,
    ):
        try:
            yield from process.stdout or ()
        except BaseException:
            process.kill()
            raise
    if process.returncode:
        last = complaints.read_text("utf-8").strip().splitlines()[-1:]
        told = " ".join(last) or f"its process ended with {process.returncode}"
        raise EngineDied(f"typesetting failed: {told}")
