"""The published folder is always the old course or the new one, whole."""

from __future__ import annotations

import hashlib
import json
import re
import signal
import subprocess
import sys
from typing import TYPE_CHECKING

import pytest

from sallet.publish import writer
from sallet.publish.writer import (
    MARKER,
    NotOurs,
    Written,
    kept_file,
    made_files,
    make_sure_it_is_ours,
    write_site,
)

if TYPE_CHECKING:
    from pathlib import Path

OLD = {"index.html": b"old index", "plants/elder.html": b"elder", "plants/yew.html": b"yew"}
NEW = {"index.html": b"new index", "plants/elder.html": b"elder", "words.html": b"words"}


def tree(folder: Path) -> dict[str, bytes]:
    """Return all files below a folder, by path."""
    files = (path for path in sorted(folder.rglob("*")) if path.is_file())
    return {path.relative_to(folder).as_posix(): path.read_bytes() for path in files}


def names_in(folder: Path) -> list[str]:
    """Return what lies in a folder."""
    return sorted(path.name for path in folder.iterdir())


def course(folder: Path) -> dict[str, bytes]:
    """Return the files of a folder without the marker."""
    return {path: data for path, data in tree(folder).items() if path != MARKER}


@pytest.fixture
def site(tmp_path: Path) -> Path:
    """Return a folder that holds the old course."""
    target = tmp_path / "site"
    write_site(target, OLD)
    return target


# ---- what is written ----------------------------------------------------------------------


@pytest.mark.parametrize("there", [False, True])
def test_a_course_is_written_into_a_new_or_empty_folder(tmp_path: Path, there: bool) -> None:  # noqa: FBT001
    target = tmp_path / "deep" / "site"
    if there:
        target.mkdir(parents=True)
    told = write_site(target, OLD)
    assert told == Written(tuple(sorted(OLD)), (), (), (), ())
    assert course(target) == OLD
    assert names_in(target.parent) == ["site"]
    assert target.stat().st_mode & 0o777 == 0o755


def test_the_marker_lists_every_file_with_its_digest(site: Path) -> None:
    """Source: SHA-256 as the standard library has it (FIPS 180-4)."""
    digests = {path: hashlib.sha256(data).hexdigest() for path, data in OLD.items()}
    assert json.loads((site / MARKER).read_text("utf-8")) == {"made by": "sallet", "files": digests}
    assert made_files(site) == digests


def test_a_new_course_replaces_the_old_one(site: Path) -> None:
    told = write_site(site, NEW)
    assert told == Written(
        new=("words.html",),
        changed=("index.html",),
        unchanged=("plants/elder.html",),
        removed=("plants/yew.html",),
        carried_over=(),
    )
    assert course(site) == NEW
    assert names_in(site.parent) == ["site"]


def test_a_file_that_did_not_change_stays_the_same_file(site: Path) -> None:
    """The same inode and time, so that what copies the folder elsewhere sees no change."""
    before = {path: (site / path).stat() for path in OLD}
    write_site(site, NEW)
    after = (site / "plants/elder.html").stat()
    kept = before["plants/elder.html"]
    assert (after.st_ino, after.st_mtime_ns) == (kept.st_ino, kept.st_mtime_ns)
    assert (site / "index.html").stat().st_ino != before["index.html"].st_ino


def test_the_same_course_again_changes_nothing(site: Path) -> None:
    before = {path: (site / path).stat() for path in (*OLD, MARKER)}
    assert write_site(site, OLD) == Written((), (), tuple(sorted(OLD)), (), ())
    after = {path: (site / path).stat() for path in (*OLD, MARKER)}
    assert [(s.st_ino, s.st_mtime_ns) for s in after.values()] == [
        (s.st_ino, s.st_mtime_ns) for s in before.values()
    ]


def test_a_file_that_someone_changed_is_written_anew(site: Path) -> None:
    (site / "index.html").write_bytes(b"defaced")
    told = write_site(site, OLD)
    assert told.changed == ("index.html",)
    assert course(site) == OLD


def test_a_file_that_someone_deleted_is_written_anew(site: Path) -> None:
    (site / "index.html").unlink()
    assert write_site(site, OLD).changed == ("index.html",)
    assert course(site) == OLD


def test_files_that_someone_else_put_there_are_carried_over(site: Path) -> None:
    (site / "map").mkdir()
    (site / "map" / "walk.gpx").write_bytes(b"a walk")
    (site / "CNAME").write_bytes(b"hedge.example")
    (site / "latest").symlink_to("index.html")
    told = write_site(site, NEW)
    assert told.carried_over == ("CNAME", "latest", "map/walk.gpx")
    assert course(site) == {**NEW, "CNAME": b"hedge.example", "map/walk.gpx": b"a walk",
                            "latest": b"new index"}  # fmt: skip
    assert (site / "latest").is_symlink()


def test_a_course_may_be_written_where_a_link_points(site: Path) -> None:
    link = site.parent / "public"
    link.symlink_to(site)
    write_site(link, NEW)
    assert link.is_symlink()
    assert course(site) == NEW


def test_what_sallet_wrote_is_known_by_its_digest(site: Path) -> None:
    made = made_files(site)
    assert kept_file(site, "index.html", made) == b"old index"
    assert kept_file(site, "words.html", made) is None
    (site / "index.html").write_bytes(b"defaced")
    assert kept_file(site, "index.html", made) is None
    (site / "CNAME").write_bytes(b"x")
    assert kept_file(site, "CNAME", made) is None


@pytest.mark.parametrize("text", ["", "no json", "[]", '{"files": 3}', '{"other": {}}', "\0"])
def test_a_broken_marker_knows_no_files(site: Path, text: str) -> None:
    (site / MARKER).write_text(text, "utf-8")
    assert made_files(site) == {}
    write_site(site, NEW)
    assert {path: tree(site)[path] for path in NEW} == NEW


# ---- what is never touched ----------------------------------------------------------------


def test_a_folder_with_other_things_in_it_is_never_touched(tmp_path: Path) -> None:
    (tmp_path / "thesis.txt").write_text("years of work")
    message = (
        f"`{tmp_path}` holds files that sallet did not make; "
        "name another folder in `into:`, or empty this one yourself"
    )
    for refusing in (make_sure_it_is_ours, lambda target: write_site(target, NEW)):
        with pytest.raises(NotOurs, match=f"^{re.escape(message)}$"):
            refusing(tmp_path)
    assert tree(tmp_path) == {"thesis.txt": b"years of work"}


def test_a_file_is_never_replaced_by_a_folder(tmp_path: Path) -> None:
    target = tmp_path / "thesis.txt"
    target.write_text("years of work")
    message = f"`{target}` is a file; expected a folder to write the course into"
    with pytest.raises(NotOurs, match=f"^{re.escape(message)}$"):
        write_site(target, NEW)
    assert tree(tmp_path) == {"thesis.txt": b"years of work"}


# ---- when something goes wrong ------------------------------------------------------------


def refuse(*_: object, **__: object) -> None:
    """Raise what a full disk raises."""
    raise OSError(28, "No space left on device")


@pytest.mark.parametrize("stage", ["tempfile.mkdtemp", "_fill", "_write", "_keep", "_mark",
                                   "_others", "Path.chmod", "exchange", "os.link+shutil.copy2"])  # fmt: skip
def test_the_old_course_is_whole_after_a_failure_at_every_stage(
    site: Path, monkeypatch: pytest.MonkeyPatch, stage: str
) -> None:
    (site / "CNAME").write_bytes(b"hedge.example")
    before = tree(site)
    for name in stage.split("+"):
        monkeypatch.setattr(f"sallet.publish.writer.{name}", refuse)
    with pytest.raises(OSError, match="No space left on device"):
        write_site(site, NEW)
    monkeypatch.undo()
    assert tree(site) == before
    assert names_in(site.parent) == ["site"]


@pytest.mark.parametrize("nth", [0, 1, 2])
def test_the_old_course_is_whole_after_a_failure_at_every_file(
    site: Path, monkeypatch: pytest.MonkeyPatch, nth: int
) -> None:
    before, real, calls = tree(site), writer._write, iter(range(9))  # noqa: SLF001

    def write(path: Path, data: bytes) -> None:
        if next(calls) == nth:
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_bytes(data[:2])
            refuse()
        real(path, data)

    monkeypatch.setattr(writer, "_write", write)
    with pytest.raises(OSError, match="No space left on device"):
        write_site(site, NEW)
    assert tree(site) == before
    assert names_in(site.parent) == ["site"]


def test_a_first_course_that_fails_leaves_nothing(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(writer, "exchange", refuse)
    with pytest.raises(OSError, match="No space left on device"):
        write_site(tmp_path / "site", NEW)
    assert names_in(tmp_path) == []


KILLED = """
import os, signal, sys
from pathlib import Path
from sallet.publish import exchange, writer

stage, target = sys.argv[1], Path(sys.argv[2])

def die(*_, **__):
    os.kill(os.getpid(), signal.SIGKILL)

if stage == "between the renamings":
    exchange._exchanged = lambda one, other: False
    rename = Path.rename
    Path.rename = lambda path, to: die() if path.name.startswith(".sallet-new-") else rename(path, to)
elif stage == "after the exchange":
    writer.shutil.rmtree = die
else:
    real, calls = writer._write, iter(range(9))
    writer._write = lambda path, data: die() if str(next(calls)) == stage else real(path, data)
writer.write_site(target, {"index.html": b"new index", "plants/elder.html": b"elder",
                           "words.html": b"words"})
"""


def killed_at(stage: str, target: Path) -> None:
    """Write the new course in a process of its own that is killed at a stage."""
    run = subprocess.run(
        [sys.executable, "-c", KILLED, stage, str(target)], check=False, timeout=60
    )
    assert run.returncode == -signal.SIGKILL


@pytest.mark.parametrize("stage", ["0", "1", "2"])
def test_the_old_course_is_whole_after_the_process_was_killed(site: Path, stage: str) -> None:
    before = tree(site)
    killed_at(stage, site)
    assert tree(site) == before
    write_site(site, NEW)
    assert course(site) == NEW


def test_the_new_course_is_whole_if_the_process_was_killed_after_the_exchange(site: Path) -> None:
    killed_at("after the exchange", site)
    assert course(site) == NEW


def test_an_old_course_left_aside_by_a_kill_is_put_back(site: Path) -> None:
    """Where the system cannot exchange two folders, two renamings have a moment between them."""
    before = tree(site)
    (site / "CNAME").write_bytes(b"hedge.example")
    killed_at("between the renamings", site)
    assert not site.exists()
    told = write_site(site, NEW)
    assert told.carried_over == ("CNAME",)
    assert course(site) == {**NEW, "CNAME": b"hedge.example"}
    assert before[MARKER] != tree(site)[MARKER]
