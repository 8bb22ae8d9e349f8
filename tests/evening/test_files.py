"""Written whole or not at all."""

import pytest

from turnout.evening.files import write_folder, write_whole
from turnout.problems import BadInput


def test_a_failed_write_leaves_the_old_file_and_no_scrap(tmp_path, monkeypatch):
    path = tmp_path / "cards.pdf"
    write_whole(path, b"old")
    monkeypatch.setattr("os.fsync", lambda _: (_ for _ in ()).throw(OSError("disk full")))
    with pytest.raises(OSError, match="disk full"):
        write_whole(path, b"new and longer")
    assert [(file.name, file.read_bytes()) for file in tmp_path.iterdir()] == [("cards.pdf", b"old")]


def test_a_folder_is_made_and_written(tmp_path):
    paths = write_folder(tmp_path / "new" / "out", {"a.txt": b"1", "b.txt": b"2"})
    assert [path.read_bytes() for path in paths] == [b"1", b"2"]
    assert len(list((tmp_path / "new" / "out").iterdir())) == 2


def test_one_unwritable_file_leaves_all_as_they_were(tmp_path, monkeypatch):
    write_folder(tmp_path, {"a.txt": b"old a", "b.txt": b"old b"})
    from pathlib import Path

    whole = Path.write_bytes

    def refuse_b(self, content):
        if "b.txt" in self.name:
            raise OSError(28, "No space left on device")
        return whole(self, content)

    monkeypatch.setattr(Path, "write_bytes", refuse_b)
    with pytest.raises(BadInput, match="No space left"):
        write_folder(tmp_path, {"a.txt": b"new a", "b.txt": b"new b"})
    assert {file.name: file.read_bytes() for file in tmp_path.iterdir()} == {"a.txt": b"old a", "b.txt": b"old b"}


def test_a_file_in_the_way_is_told(tmp_path):
    (tmp_path / "out").write_text("a file, not a folder")
    with pytest.raises(BadInput, match="name a folder you may write in"):
        write_folder(tmp_path / "out", {"a.txt": b"1"})
