"""Tidying writes sentences the printed way and nothing else."""

import re
from pathlib import Path

import pytest

from turnout.evening.check import tidy_files
from turnout.practice.read import read_practice
from turnout.practice.shelf import practice_files
from turnout.practice.tidy import every_rule

MINE = """\
practice: Harbour   # by the sea
ground: {square:   rectangle 16 x 16 yd}
people:
    amber inside: 4 (2-5) in square
    blue inside: amber inside - 1 (1-4) in square
    amber edge: 3 (2-5) on the edge of square
    blue edge: 3 (2-5) on the edge of square
also called:
    edge: [helper]

rules:
# how it goes
-   play STARTS with amber inside   # at once
- 'a side scores 1 for completing 6 passes in a row'
- >
  helpers have
  2 touches

- Nobody tackles edge players.
steps:
- harder: quick
  change: [the helpers have 1 touch.]
"""
TIDY = (
    MINE.replace("play STARTS with amber inside", "Play starts with amber inside players.")
    .replace(
        "'a side scores 1 for completing 6 passes in a row'", "'A side scores 1 for completing 6 passes in a row.'"
    )
    .replace(">\n  helpers have\n  2 touches", "Edge players have 2 touches.")
    .replace("[the helpers have 1 touch.]", "[Edge players have 1 touch.]")
)


def test_only_what_differs_from_print_is_written(tmp_path: Path) -> None:
    path = tmp_path / "harbour.yaml"
    path.write_text(MINE.replace("\n", "\r\n"), encoding="utf-8", newline="")
    before = [rule.phrase for rule in every_rule(read_practice(path))]
    changes, problems = tidy_files([path])
    assert not problems and path.read_bytes().decode() == TIDY.replace("\n", "\r\n")
    assert [(one.line, one.now) for one in changes] == [
        (13, "Play starts with amber inside players."),
        (14, "A side scores 1 for completing 6 passes in a row."),
        (15, "Edge players have 2 touches."),
        (22, "Edge players have 1 touch."),
    ]
    assert [rule.phrase for rule in every_rule(read_practice(path))] == before
    assert tidy_files([path]) == ([], [])


@pytest.mark.parametrize("key", sorted(practice_files()))
def test_the_shelf_tidied_says_the_same_in_the_printed_words(tmp_path: Path, key: str) -> None:
    path = tmp_path / f"{key}.yaml"
    text = practice_files()[key].read_text("utf-8")
    lower = re.sub(r"(?m)^(  - )([A-Z])", lambda found: found[1] + found[2].lower(), text)
    path.write_text(lower, encoding="utf-8")
    before = [rule.phrase for rule in every_rule(read_practice(path))]
    changes, problems = tidy_files([path])
    rules = every_rule(read_practice(path))
    assert changes and not problems
    assert [rule.phrase for rule in rules] == before and all(rule.text == rule.source.text for rule in rules)
    sentences = {rule.text for rule in rules}
    kept = [line for line in path.read_text("utf-8").split("\n") if line.lstrip(" -") not in sentences]
    assert all(line in text.split("\n") for line in kept)


def test_a_file_with_a_fault_and_one_of_another_kind_stay(tmp_path: Path) -> None:
    bad, squad = tmp_path / "bad.yaml", tmp_path / "squad.yaml"
    bad.write_text(MINE.replace("2 touches", "2 tuches"), encoding="utf-8")
    squad.write_text("squad: Saltmarsh\nplayers: [Ada,   Bram]\n", encoding="utf-8")
    before = bad.read_bytes(), squad.read_bytes()
    changes, problems = tidy_files([bad, squad])
    assert (bad.read_bytes(), squad.read_bytes()) == before and not changes
    assert [re.sub(r".*/", "", problem.file) for problem in problems] == ["bad.yaml"]
