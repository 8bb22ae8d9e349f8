"""Session files: parts found on the shelf, steps taken, the hour adding up."""

from pathlib import Path

import pytest

from turnout.practice.shelf import SHELF
from turnout.problems import BadInput
from turnout.session.read import read_session

SHIPPED = SHELF / "sessions" / "hold-and-break.yaml"
HEAD = "session: Toy\nfor: U12\nminutes: 40\nexpected: 11-15\nparts:\n"


def written(tmp_path: Path, text: str) -> Path:
    path = tmp_path / "toy.yaml"
    path.write_text(text, encoding="utf-8")
    return path


def faults(tmp_path: Path, parts: str) -> list[tuple[int | None, str, str | None]]:
    with pytest.raises(BadInput) as caught:
        read_session(written(tmp_path, HEAD + parts))
    return [(problem.line, problem.read, problem.nearest) for problem in caught.value.problems]


def test_the_shipped_session_adds_up() -> None:
    session = read_session(SHIPPED)
    assert (session.key, session.age, session.minutes, session.expected) == ("hold-and-break", 12, 45, (11, 15))
    assert [part.practice.key for part in session.parts] == ["gull-square", "harbour-square", "breakwater"]
    assert sum(part.minutes for part in session.parts) == session.minutes
    assert session.parts[0].success == (0.30, 0.60) and session.parts[0].may_be_left_out


def test_steps_are_taken(tmp_path: Path) -> None:
    part = "  - practice: harbour-square\n    minutes: 16\n    steps: [one touch on the edge, More room]\n"
    practice = read_session(written(tmp_path, HEAD + part)).parts[0].practice
    assert practice.taken == ("One touch on the edge", "More room")
    assert "Edge players have 1 touch." in [rule.text for rule in practice.rules]
    assert practice.ground[0].across_m == pytest.approx(20 * 0.9144)


def test_every_fault_is_told_at_once(tmp_path: Path) -> None:
    parts = "  - practice: harbor-square\n    minutes: 16\n"
    parts += "  - practice: gull-square\n    minutes: 30\n    steps: [One tuch]\n"
    assert faults(tmp_path, parts) == [
        (6, "harbor-square", "harbour-square"),
        (10, "One tuch", "One touch"),
    ]


def test_parts_longer_than_the_hour(tmp_path: Path) -> None:
    parts = "  - practice: gull-square\n    minutes: 16\n  - practice: harbour-square\n    minutes: 30\n"
    assert (3, "minutes", None) in faults(tmp_path, parts)


def test_a_broken_practice_is_told_under_its_own_file(tmp_path: Path) -> None:
    (tmp_path / "toy-practice.yaml").write_text("practice: Toy\nground:\n  box: rectangel 3 x 3 m\npeople: {}\n")
    with pytest.raises(BadInput) as caught:
        read_session(written(tmp_path, HEAD + "  - practice: toy-practice\n    minutes: 10\n"))
    assert any(problem.file.endswith("toy-practice.yaml") and problem.line == 3 for problem in caught.value.problems)
