"""Contradictions and doubts, each at its sentence; the sentences beside them stay silent."""

import pytest

from turnout.club.check import check_file

HEAD = """practice: Toy
ground:
  square: rectangle 16 x 16 yd
  north end: strip 3 yd inside the north end of square
people:
  amber inside: 4 (2-5) in square
  amber edge: 1 (0-1) on the edge of square
  blue: 3 (1-4) in square
rules:
  - A side scores 1 for completing 6 passes in a row.
  - Amber score 1 for receiving in the north end.
"""


def findings(tmp_path, *rules: str) -> list[tuple[int | None, str, str]]:  # type: ignore[no-untyped-def]
    path = tmp_path / "toy.yaml"
    path.write_text(HEAD + "".join(f"  - {rule}\n" for rule in rules), encoding="utf-8")
    return [(problem.line, problem.severity, problem.expected) for problem in check_file(path)]


@pytest.mark.parametrize(
    ("rules", "line", "severity", "words"),
    [
        (["Everyone has 2 touches.", "Everyone has 3 touches."], 13, "error", "keep one of the two"),
        (["Play starts with amber.", "Play starts with blue."], 13, "error", "keep one of the two"),
        (["Blue edge players have 2 touches."], 12, "error", "blue has no edge players"),
        (["Blue stay out of the square."], 12, "error", "could stand nowhere"),
        (["Blue stay in the north end.", "Blue stay out of the north end."], 13, "error", "keeps them in it"),
        (["Amber stay out of the north end."], 11, "error", "nobody can do this"),
        (["Only passes between edge players count."], 12, "error", "two of them on one side"),
        (["When a side wins the ball, its nearest edge player comes in."], 12, "warning", "go out again"),
        (["When the ball goes out, blue start.", "The ball comes back in with a kick-in."], 13, "error",
         "restarts play too"),
    ],
)  # fmt: skip
def test_one_finding(tmp_path, rules, line, severity, words) -> None:  # type: ignore[no-untyped-def]
    found = findings(tmp_path, *rules)
    assert [(at, kind) for at, kind, _ in found] == [(line, severity)]
    assert words in found[0][2]


@pytest.mark.parametrize(
    "rules",
    [
        ["Everyone has 3 touches.", "Amber edge players have 2 touches."],  # the narrower sentence holds
        ["Amber stay out of the north end until the ball enters it."],
        ["When the ball goes out, blue start.", "When a side scores, blue start."],
        ["Everyone has 1 touch.", "Amber inside players have 2 touches.",
         "Amber score 1 for running the ball into the north end."],
    ],
)  # fmt: skip
def test_no_finding(tmp_path, rules) -> None:  # type: ignore[no-untyped-def]
    assert findings(tmp_path, *rules) == []


def with_place(tmp_path, line: str, rule: str = "") -> list[tuple[int | None, str, str]]:  # type: ignore[no-untyped-def]
    path = tmp_path / "toy.yaml"
    text = HEAD.replace("people:", f"  {line}\npeople:") + (f"  - {rule}\n" if rule else "")
    path.write_text(text, encoding="utf-8")
    return [(problem.line, problem.severity, problem.expected) for problem in check_file(path)]


def test_an_unused_place_is_a_doubt(tmp_path) -> None:  # type: ignore[no-untyped-def]
    ((line, severity, words),) = with_place(tmp_path, "lane: strip 3 yd inside the west side of square")
    assert (line, severity) == (5, "warning") and "lane" in words


def test_a_list_of_places_has_no_edge(tmp_path) -> None:  # type: ignore[no-untyped-def]
    found = with_place(tmp_path, "both: square, north end", "Blue move only along the edge of both.")
    assert [(line, severity) for line, severity, _ in found] == [(13, "error")]
