"""Lets two folders change places in one step, where the system can do that."""

from __future__ import annotations

import ctypes
import os
import shutil
import sys
from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from pathlib import Path

_ASIDE: Final = "-old"
_HERE: Final = -100
"""AT_FDCWD of Linux: paths are taken from the working directory."""
_EXCHANGE: Final = 2
"""RENAME_EXCHANGE of renameat2(2), and RENAME_SWAP of macOS' renamex_np(2)."""


def exchange(new: Path, target: Path) -> None:
    """Put a folder in the place of another, which then stands in the first one's place.

    Where there is no target yet, the new folder is renamed. Where the system has no call that
    exchanges two folders, two renamings do it, and the old folder goes back if the second fails.
    """
    if not target.exists():
        new.rename(target)
        return
    if _exchanged(os.fsencode(new), os.fsencode(target)):
        return
    aside = new.with_name(f"{new.name}{_ASIDE}")
    target.rename(aside)
    try:
        new.rename(target)
    except OSError:
        aside.rename(target)
        raise
    aside.rename(new)


def restore(target: Path, prefix: str) -> None:
    """Put back an old folder that a kill between the two renamings left aside."""
    if not target.exists():
        for aside in sorted(target.parent.glob(f"{prefix}*{_ASIDE}"))[:1]:
            aside.rename(target)


def sweep(folder: Path, prefix: str) -> None:
    """Remove the unfinished folders that runs which were killed left behind.

    Their names hold the number of their process; those of a living process stay.
    """
    if os.name != "posix":
        return  # elsewhere asking after a process may end it
    for left in folder.glob(f"{prefix}*-*"):
        number = left.name.removeprefix(prefix).split("-")[0]
        if number.isdecimal() and not left.name.endswith(_ASIDE) and not _lives(int(number)):
            shutil.rmtree(left, ignore_errors=True)


def _lives(process: int) -> bool:
    try:
        os.kill(process, 0)
    except (ProcessLookupError, OverflowError):
        return False
    except OSError:
        return True  # somebody else's
    return True


def _exchanged(one: bytes, other: bytes) -> bool:
    try:
        library = ctypes.CDLL(None, use_errno=True)
        if sys.platform == "linux":
            return bool(library.renameat2(_HERE, one, _HERE, other, _EXCHANGE) == 0)
        if sys.platform == "darwin":
            return bool(library.renamex_np(one, other, _EXCHANGE) == 0)
    except (AttributeError, OSError, TypeError):
        pass  # an old system library, or none to be had: two renamings do it
    return False
