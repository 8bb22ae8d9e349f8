"""Bad files, one kind of mistake each: file, line, column, what was read, what would do, nearest spelling."""

import csv
from pathlib import Path

import pytest

from turnout.club.check import check_file

FOLDER = Path(__file__).parent
EXPECTED = list(csv.DictReader((FOLDER / "expected.csv").read_text(encoding="utf-8").splitlines()))


def test_every_bad_file_has_its_expectation() -> None:
    assert {row["file"] for row in EXPECTED} == {path.stem for path in FOLDER.glob("*.yaml")}


@pytest.mark.parametrize("row", EXPECTED, ids=lambda row: row["file"])
def test_the_one_mistake_is_told(row: dict[str, str]) -> None:
    path = FOLDER / f"{row['file']}.yaml"
    (problem,) = check_file(path)
    assert (problem.file, problem.severity) == (str(path), "error")
    assert (str(problem.line), str(problem.column or "")) == (row["line"], row["column"])
    assert problem.read == row["read"]
    assert row["expected"] in problem.expected
    assert (problem.nearest or "") == row["nearest"]


@pytest.mark.parametrize(
    ("data", "expected"),
    [
        (b"practice: " + b"x" * 200_001, "at most 200 kB"),
        (b"practice: \xff\xfe", "not text"),
        (b"a: " + b"[" * 5000, "levels"),
        (b"a: &one [1, 2]\nb: *one\n", "anchors"),
        (b"", "empty"),
        (b"\x00\x00", "cannot be read"),
    ],
)
def test_what_cannot_be_read_is_told_alone(tmp_path: Path, data: bytes, expected: str) -> None:
    path = tmp_path / "bad.yaml"
    path.write_bytes(data)
    (problem,) = check_file(path)
    assert expected in problem.expected


def test_a_missing_file_and_a_folder(tmp_path: Path) -> None:
    assert "cannot be opened" in check_file(tmp_path / "nowhere.yaml")[0].expected
    assert "cannot be opened" in check_file(tmp_path)[0].expected


def test_all_mistakes_of_one_file_are_told_at_once(tmp_path: Path) -> None:
    good = (FOLDER.parents[1] / "src/turnout/shelf/harbour-square/practice.yaml").read_text(encoding="utf-8")
    bad = good.replace("16 x 16 yd", "16 x 16 yrd").replace("4 (2-5)", "4 (5-2)").replace("2 touches", "2 tuches")
    path = tmp_path / "bad.yaml"
    path.write_text(bad.replace("balls: 6", "balls: many"), encoding="utf-8")
    assert [(p.line, p.nearest) for p in check_file(path)] == [(6, "yd"), (8, "(2-5)"), (17, "touches"), (44, None)]
