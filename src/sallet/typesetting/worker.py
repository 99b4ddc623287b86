"""The process that typesets: `python -m sallet.typesetting.worker FOLDER` does the jobs in a folder.

It is a process of its own because the engine keeps what it has set in memory: when it ends, all of
that is given back. After each job it writes a line, so that whoever waits can see it move.
"""

from __future__ import annotations

import json
import sys
from datetime import UTC, datetime
from pathlib import Path
from typing import Final

import typst

from sallet.typesetting.jobs import DATA, FAILED, MAIN, ORDER, PDF, TOLD

STANDARDS: Final[list[typst.PDFStandard]] = ["a-2a", "ua-1"]
"""PDF/A-2a (ISO 19005-2) and PDF/UA-1 (ISO 14289-1): the engine refuses what breaks either."""
DATED: Final = datetime(2000, 1, 1, tzinfo=UTC)
"""The date in every document: the standards want one, and the same words must give the same file."""
_NO_PACKAGES: Final = "packages"


def typeset_folder(folder: Path) -> None:
    """Do the jobs of a folder, each in a folder of its own, in the order of their names."""
    fonts = typst.Fonts(include_system_fonts=False)
    for job in sorted(path for path in folder.iterdir() if path.is_dir()):
        try:
            _typeset(job, fonts)
        except typst.TypstError as error:
            told = {"message": error.message, "details": error.diagnostic}
            (job / FAILED).write_text(json.dumps(told), "utf-8")
        sys.stdout.write(f"{job.name}\n")
        sys.stdout.flush()


def _typeset(job: Path, fonts: typst.Fonts) -> None:
    nowhere = str(job / _NO_PACKAGES)  # no such folder: nothing of this computer is found
    compiler = typst.Compiler(
        str(job / MAIN), root=str(job), font_paths=fonts, ignore_system_fonts=True,
        sys_inputs={"data": DATA}, package_path=nowhere, package_cache_path=nowhere,
    )  # fmt: skip
    if json.loads((job / ORDER).read_text("utf-8"))["wanted"] == "told":
        told = compiler.query("<told>", field="value", one=True)
        (job / TOLD).write_text(told if isinstance(told, str) else json.dumps(told), "utf-8")
        return
    made = compiler.compile(format="pdf", pdf_standards=STANDARDS, timestamp=DATED)
    if not isinstance(made, bytes):
        raise TypeError(made)
    (job / PDF).write_bytes(made)


if __name__ == "__main__":
    typeset_folder(Path(sys.argv[1]))
