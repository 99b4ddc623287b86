"""Two folders change places."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from sallet.publish import exchange as module
from sallet.publish.exchange import exchange, restore, sweep


@pytest.fixture
def new(tmp_path: Path) -> Path:
    """Return a new folder beside where the course is."""
    return folder(tmp_path / ".new-1", "new")


@pytest.fixture
def by_renaming(monkeypatch: pytest.MonkeyPatch) -> None:
    """Let the system have no call that exchanges two folders."""
    monkeypatch.setattr(module, "_exchanged", lambda *_: False)


def folder(path: Path, word: str) -> Path:
    """Return a folder that holds one file."""
    path.mkdir()
    (path / "index.html").write_text(word)
    return path


def held(path: Path) -> str:
    """Return what the file of a folder holds."""
    return (path / "index.html").read_text()


def test_where_nothing_is_yet_the_new_folder_takes_the_place(new: Path) -> None:
    target = new.parent / "site"
    exchange(new, target)
    assert held(target) == "new"
    assert not new.exists()


def test_two_folders_change_places(new: Path) -> None:
    target = folder(new.parent / "site", "old")
    exchange(new, target)
    assert (held(target), held(new)) == ("new", "old")


@pytest.mark.usefixtures("by_renaming")
def test_two_folders_change_places_by_renaming(new: Path) -> None:
    target = folder(new.parent / "site", "old")
    exchange(new, target)
    assert (held(target), held(new)) == ("new", "old")
    assert sorted(path.name for path in new.parent.iterdir()) == [".new-1", "site"]


@pytest.mark.usefixtures("by_renaming")
def test_the_old_folder_goes_back_if_the_new_one_cannot_take_its_place(
    new: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    target, real = folder(new.parent / "site", "old"), Path.rename

    def rename(path: Path, to: Path) -> Path:
        if path == new:
            raise OSError(13, "Permission denied")
        return real(path, to)

    monkeypatch.setattr(Path, "rename", rename)
    with pytest.raises(OSError, match="Permission denied"):
        exchange(new, target)
    assert (held(target), held(new)) == ("old", "new")


@pytest.mark.parametrize("library", [AttributeError, OSError, TypeError])
def test_a_system_without_the_call_is_no_error(
    new: Path, monkeypatch: pytest.MonkeyPatch, library: type[Exception]
) -> None:
    def missing(*_: object, **__: object) -> None:
        raise library

    monkeypatch.setattr("sallet.publish.exchange.ctypes.CDLL", missing)
    target = folder(new.parent / "site", "old")
    exchange(new, target)
    assert (held(target), held(new)) == ("new", "old")


def test_an_old_folder_left_aside_is_put_back(tmp_path: Path) -> None:
    folder(tmp_path / ".new-7-old", "old")
    restore(tmp_path / "site", ".new-")
    assert held(tmp_path / "site") == "old"


def test_a_folder_that_is_there_is_not_replaced_by_one_left_aside(tmp_path: Path) -> None:
    folder(tmp_path / ".new-7-old", "old")
    folder(tmp_path / "site", "newer")
    restore(tmp_path / "site", ".new-")
    assert held(tmp_path / "site") == "newer"


def test_where_nothing_was_left_nothing_is_put_back(tmp_path: Path) -> None:
    folder(tmp_path / ".new-7", "unfinished")
    restore(tmp_path / "site", ".new-")
    assert not (tmp_path / "site").exists()


def test_what_a_killed_run_left_is_swept_away_and_nothing_else(tmp_path: Path) -> None:
    """Only the unfinished folder of a process that is no more; its number was just in use."""
    with subprocess.Popen([sys.executable, "-c", ""]) as gone:
        gone.wait()
    folder(tmp_path / f".new-{gone.pid}-x", "unfinished")
    for name in (f".new-{os.getpid()}-x", f".new-{gone.pid}-x-old", ".new-mine", "site"):
        folder(tmp_path / name, "kept")
    sweep(tmp_path, ".new-")
    kept = [f".new-{os.getpid()}-x", f".new-{gone.pid}-x-old", ".new-mine", "site"]
    assert sorted(path.name for path in tmp_path.iterdir()) == sorted(kept)
