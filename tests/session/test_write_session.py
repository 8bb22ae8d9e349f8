"""Edits of a session's parts; what is not touched stays."""

from pathlib import Path

import pytest

from turnout.club.writing import edit_file
from turnout.problems import BadInput
from turnout.session.read import read_session
from turnout.session.writing import add_part, change_part, take_part

MINE = """\
session: Wet Thursday   # hall is taken
for: U12
minutes: "45"
parts:
  # to begin
  - practice: gull-square
    minutes: 12      # until all are here
    may be left out: yes

  - {practice: harbour-square, minutes: 16}   # the main thing
"""


@pytest.fixture
def path(tmp_path: Path) -> Path:
    file = tmp_path / "thursday.yaml"
    file.write_text(MINE, encoding="utf-8")
    return file


def test_parts_change_come_and_go(path: Path) -> None:
    edit_file(path, lambda d: change_part(d, 1, "minutes", "14"))
    assert path.read_text("utf-8") == MINE.replace("minutes: 12 ", "minutes: 14 ")
    edit_file(path, lambda d: change_part(d, 2, "success", "30-60 %"))
    assert "{practice: harbour-square, minutes: 16, success: 30-60 %}   # the main thing" in path.read_text("utf-8")
    edit_file(path, lambda d: add_part(d, "breakwater", 15, may_be_left_out="yes"))
    session = read_session(path)
    assert [(part.practice.key, part.minutes) for part in session.parts] == [
        ("gull-square", 14), ("harbour-square", 16), ("breakwater", 15),
    ]  # fmt: skip
    assert session.parts[1].success == (0.3, 0.6) and session.parts[2].may_be_left_out


def test_a_part_put_in_and_taken_out_leaves_no_trace(path: Path) -> None:
    edit_file(path, lambda d: add_part(d, "breakwater", 15, number=2))
    assert [part.practice.key for part in read_session(path).parts] == ["gull-square", "breakwater", "harbour-square"]
    edit_file(path, lambda d: take_part(d, 2))
    assert path.read_text("utf-8") == MINE


@pytest.mark.parametrize(
    ("change", "told"),
    [
        (lambda d: change_part(d, 1, "minutes", "40"), "more than the 45 there are"),
        (lambda d: change_part(d, 1, "minits", "4"), "Did you mean “minutes”?"),
        (lambda d: add_part(d, "gul-square", 5), "Did you mean “gull-square”?"),
        (lambda d: take_part(d, 3), "no item 3"),
    ],
)
def test_what_would_not_read_is_refused(path: Path, change: object, told: str) -> None:
    with pytest.raises(BadInput) as caught:
        edit_file(path, change)  # type: ignore[arg-type]
    assert told in str(caught.value) and path.read_text("utf-8") == MINE
