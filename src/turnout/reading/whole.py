"""Files written whole or not at all, and a person's file written back after an edit."""

import hashlib
import os
import secrets
import shutil
from codecs import BOM_UTF8
from pathlib import Path

from turnout.problems import BadInput, Problem
from turnout.reading.edit import Draft, draft_of
from turnout.reading.load import LARGEST_BYTES, read_bytes, text_of


def write_whole(path: Path, content: bytes) -> None:
    """Write `content` so that a reader sees the old file or the new one, never half of either.

    Raises OSError when the disk refuses; the old file is then untouched and no scrap is left.
    """
    scrap = path.with_name(f".{path.name}.{secrets.token_hex(4)}.part")
    try:
        with scrap.open("xb") as file:
            file.write(content)
            file.flush()
            os.fsync(file.fileno())
        if path.exists():
            shutil.copymode(path, scrap)
        scrap.replace(path)
    except BaseException:
        scrap.unlink(missing_ok=True)
        raise


def stamp_of(data: bytes) -> str:
    """Names the content of a file: who edits it later says which content was seen."""
    return hashlib.sha256(data).hexdigest()


def read_draft(path: str | Path) -> tuple[Draft, str]:
    """The file at `path` as a draft, and the stamp of its content; raises BadInput."""
    data = read_bytes(path)
    return draft_of(text_of(data, str(path)), str(path)), stamp_of(data)


def write_draft(path: str | Path, draft: Draft, stamp: str) -> str:
    """Write an edited draft over the file it was read from and answer with its new stamp.

    Raises BadInput, the file untouched, when its content is no longer what `stamp` names or the disk refuses. A byte
    order mark, line endings, a link and the file's mode stay as they were.
    """
    place = Path(path).resolve()
    now = read_bytes(path)
    if stamp_of(now) != stamp:
        raise refused(path, "changed meanwhile", "somebody else has written this file; open it again, then edit")
    mark = BOM_UTF8 if now.startswith(BOM_UTF8) else b""
    data = mark + draft.text.encode("utf-8")
    if len(data) > LARGEST_BYTES:
        raise refused(path, f"{len(data) // 1000} kB", f"a file is at most {LARGEST_BYTES // 1000} kB of text")
    try:
        if data != now:
            write_whole(place, data)
    except OSError as error:
        raise refused(path, error.strerror or str(error), "the file could not be written and stays as it was") from None
    return stamp_of(data)


def refused(path: str | Path, read: str, expected: str) -> BadInput:
    """Why a file is not written."""
    return BadInput([Problem(str(path), None, None, read, expected)])
