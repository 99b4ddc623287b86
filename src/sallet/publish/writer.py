"""Writes the site beside the old one and puts it in its place in one step.

The published folder is always the old course or the new one, whole. A marker file says that
sallet made a folder; a folder with other things in it and no marker is never touched.
Files whose content did not change keep their place on the disk and their time. Files that
someone else put into a made folder are carried over.
"""

from __future__ import annotations

import contextlib
import hashlib
import json
import os
import shutil
import tempfile
from dataclasses import dataclass
from pathlib import Path, PurePosixPath
from typing import TYPE_CHECKING, Any, Final

from sallet.publish.exchange import exchange, restore, sweep

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

MARKER: Final = "made-by-sallet.json"
"""Lists the files that sallet wrote, with a digest of each."""
_BESIDE: Final = ".sallet-new-"


class NotOurs(Exception):
    """The output folder is not one that sallet may replace."""


@dataclass(frozen=True)
class Written:
    """What became of the files of a site."""

    new: tuple[str, ...]
    changed: tuple[str, ...]
    unchanged: tuple[str, ...]
    removed: tuple[str, ...]
    carried_over: tuple[str, ...]


def made_files(target: Path) -> dict[str, str]:
    """Return the digests of the files that sallet wrote into a folder, by path."""
    try:
        told: Any = json.loads((target / MARKER).read_text("utf-8"))
    except (OSError, ValueError):
        return {}
    files = told.get("files") if isinstance(told, dict) else None
    return {str(k): str(v) for k, v in files.items()} if isinstance(files, dict) else {}


def kept_file(target: Path, path: str, made: Mapping[str, str]) -> bytes | None:
    """Return a file of a folder as sallet wrote it; None where it is gone or another by now."""
    try:
        data = (target / path).read_bytes()
    except OSError:
        return None
    return data if made.get(path) == hashlib.sha256(data).hexdigest() else None


def make_sure_it_is_ours(target: Path) -> None:
    """Raise NotOurs for a target that is a file, or a folder with things sallet did not make."""
    if target.exists() and not target.is_dir():
        raise NotOurs(f"`{target}` is a file; expected a folder to write the course into")
    if target.is_dir() and any(target.iterdir()) and not (target / MARKER).is_file():
        raise NotOurs(
            f"`{target}` holds files that sallet did not make; "
            "name another folder in `into:`, or empty this one yourself"
        )


def write_site(target: Path, files: Mapping[str, bytes]) -> Written:
    """Put the files of a site in place of the old ones.

    Raises NotOurs, and OSError where the disk refuses; the old course then stays whole.
    """
    target = target.resolve()
    make_sure_it_is_ours(target)
    target.parent.mkdir(parents=True, exist_ok=True)
    restore(target, _BESIDE)
    sweep(target.parent, _BESIDE)
    old = made_files(target)
    beside = Path(tempfile.mkdtemp(prefix=f"{_BESIDE}{os.getpid()}-", dir=target.parent))
    try:
        written = _fill(beside, target, files, old)
        beside.chmod(0o755)  # mkdtemp's 0o700 would keep a web server out
        exchange(beside, target)
    finally:
        # After the exchange this is the old course; before it, the unfinished new one.
        shutil.rmtree(beside, ignore_errors=True)
    return written


def _fill(
    beside: Path, target: Path, files: Mapping[str, bytes], old: Mapping[str, str]
) -> Written:
    digests = {path: hashlib.sha256(data).hexdigest() for path, data in files.items()}
    same = {
        path
        for path in files
        if old.get(path) == digests[path] and kept_file(target, path, old) is not None
    }
    for path, data in files.items():
        if path in same:
            _keep(target / path, beside / path)
        else:
            _write(beside / path, data)
    others = tuple(_others(target, old, files))
    for path in others:
        _keep(target / path, beside / path)
    _mark(beside, target, digests)
    return Written(
        new=tuple(sorted(path for path in files if path not in old)),
        changed=tuple(sorted(path for path in files if path in old and path not in same)),
        unchanged=tuple(sorted(same)),
        removed=tuple(sorted(path for path in old if path not in files)),
        carried_over=others,
    )


def _mark(beside: Path, target: Path, digests: Mapping[str, str]) -> None:
    told = {"made by": "sallet", "files": dict(sorted(digests.items()))}
    text = json.dumps(told, indent=1, ensure_ascii=False) + "\n"
    with contextlib.suppress(OSError):
        if (target / MARKER).read_text("utf-8") == text:
            _keep(target / MARKER, beside / MARKER)
            return
    _write(beside / MARKER, text.encode())


def _write(path: Path, data: bytes) -> None:
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_bytes(data)


def _keep(old: Path, new: Path) -> None:
    """Let a file stand in the new folder too, as the same file where the disk allows it."""
    new.parent.mkdir(parents=True, exist_ok=True)
    if old.is_symlink():
        new.symlink_to(old.readlink())
        return
    try:
        os.link(old, new)
    except OSError:
        shutil.copy2(old, new)


def _others(target: Path, old: Mapping[str, str], files: Mapping[str, bytes]) -> Iterator[str]:
    """Yield the files of the old folder that sallet did not write and does not write now."""
    if not target.is_dir():
        return
    for path in sorted(target.rglob("*")):
        name = PurePosixPath(path.relative_to(target)).as_posix()
        if (path.is_file() or path.is_symlink()) and name not in {*old, *files, MARKER}:
            yield name
