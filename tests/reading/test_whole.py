"""A person's file is written back whole or not at all, and never over somebody else's change."""

import os
from pathlib import Path

import pytest

from turnout.problems import BadInput
from turnout.reading import whole
from turnout.reading.whole import read_draft, write_draft

TEXT = "\ufeffrules:\r\n  - A.  # ä\r\n"


@pytest.fixture
def path(tmp_path: Path) -> Path:
    file = tmp_path / "mine.yaml"
    file.write_bytes(TEXT.encode("utf-8"))
    file.chmod(0o640)
    return file


def test_mark_line_endings_and_mode_stay(path: Path) -> None:
    draft, stamp = read_draft(path)
    write_draft(path, draft.set(("rules", 0), "B."), stamp)
    assert path.read_bytes() == TEXT.replace("A.", "B.").encode("utf-8")
    assert path.stat().st_mode & 0o777 == 0o640
    assert os.listdir(path.parent) == [path.name]


def test_a_link_stays_a_link(path: Path) -> None:
    link = path.with_name("link.yaml")
    link.symlink_to(path)
    draft, stamp = read_draft(link)
    write_draft(link, draft.set(("rules", 0), "B."), stamp)
    assert link.is_symlink() and b"B." in path.read_bytes()


def test_what_somebody_else_wrote_meanwhile_is_not_written_over(path: Path) -> None:
    draft, stamp = read_draft(path)
    path.write_text("rules:\n  - C.\n", encoding="utf-8")
    with pytest.raises(BadInput, match="open it again"):
        write_draft(path, draft.set(("rules", 0), "B."), stamp)
    assert path.read_text("utf-8") == "rules:\n  - C.\n"


def test_two_edits_follow_each_other_by_their_stamps(path: Path) -> None:
    draft, stamp = read_draft(path)
    stamp = write_draft(path, draft := draft.set(("rules", 0), "B."), stamp)
    write_draft(path, draft.set(("rules", 0), "C."), stamp)
    assert b"C." in path.read_bytes()


def test_a_full_disk_leaves_the_file_and_no_scrap(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(_: int) -> None:
        raise OSError(28, "No space left on device")

    draft, stamp = read_draft(path)
    monkeypatch.setattr(whole.os, "fsync", full)
    with pytest.raises(BadInput, match="No space left"):
        write_draft(path, draft.set(("rules", 0), "B."), stamp)
    assert path.read_bytes() == TEXT.encode("utf-8") and os.listdir(path.parent) == [path.name]


def test_a_file_does_not_grow_past_what_can_be_read(path: Path) -> None:
    draft, stamp = read_draft(path)
    with pytest.raises(BadInput, match="at most 200 kB"):
        write_draft(path, draft.set(("rules", 0), "x" * 200_001), stamp)
    assert path.read_bytes() == TEXT.encode("utf-8")
