"""Every contradiction the language allows: a file that has it, the sentence it stands at, the other one and a cure."""

import pytest

from turnout.club.check import check_file
from turnout.practice.clash_changes import CHANGES
from turnout.practice.clash_ground import GROUND
from turnout.practice.clash_limits import LIMITS
from turnout.practice.clash_scores import SCORES

HEAD = """practice: Toy
ground:
  pitch: rectangle 20 x 30 yd
  north end: strip 4 yd inside the north end of pitch
  south end: strip 4 yd inside the south end of pitch
  heart: square 6 yd at the centre of pitch
  goal: goal 12 x 6 ft at the north end of pitch
people:
  amber: 4 (2-6) in pitch
  blue inside: 3 (1-4) in pitch
  blue edge: 2 (2) on the edge of pitch
  blue guard: 2 (1-3) in heart
  neutral: 1 (0-2) in pitch
rules:
  - A side scores 1 for completing 6 passes in a row.
"""
FIRST = HEAD.count("\n") + 1  # the line of the first sentence a case adds
PLACES = HEAD.count("\n", 0, HEAD.index("people:"))

CASES: list[tuple[str, list[str], int, str]] = [  # check, sentences, which of them is answered, what the answer says
    ("said_twice", ["Everyone has 2 touches.", "Everyone has 3 touches."], 1, "keep one of the two"),
    ("said_twice", ["A score with the head counts 2.", "A score with the head counts 3."], 1, "keep one of the two"),
    ("said_twice", ["A turn lasts 2 minutes.", "A turn lasts 90 seconds."], 1, "keep one of the two"),
    ("said_twice", ["Play starts with amber.", "Play starts with a pass from neutrals."], 1, "keep one of the two"),
    ("said_twice", ["At most 2 amber players may be in the heart.", "At most 3 amber players may be in the heart."], 1,
     "keep one of the two"),
    ("said_twice", ["Amber must shoot within 8 seconds.", "Amber must shoot within 9 seconds."], 1, "keep one"),
    ("said_twice", ["Passes to neutrals count 2.", "Passes to neutrals do not count."], 1, "keep one of the two"),
    ("said_twice", ["Neutrals play for amber.", "Neutrals play for the side with the ball."], 1, "keep one"),
    ("unknown_groups", ["Amber edge players have 1 touch."], 0, "amber has no edge players"),
    ("in_and_out", ["Amber stay in the north end.", "Amber stay out of the north end."], 1, "keeps them in it"),
    ("in_and_out", ["Amber stay in the north end.", "Amber stay in the south end."], 1, "no ground in common"),
    ("in_and_out", ["Amber stay out of the pitch."], 0, "could stand nowhere"),
    ("in_and_out", ["Guard players stay in the north end."], 0, "could stand nowhere"),
    ("too_many", ["At most 1 guard player may be in the heart."], 0, "2 are at home there"),
    ("too_many", ["At least 4 guard players must stay in the heart."], 0, "never more than 3"),
    ("most_under_least", ["At most 1 amber player may be in the heart.",
                          "At least 2 amber players must stay in the heart."], 1, "cannot be"),
    ("out_of_reach", ["Amber must shoot within 8 seconds.", "Amber may not shoot."], 0, "take one of the two out"),
    ("only_and_may_not", ["Only amber may tackle.", "Amber may not tackle."], 1, "take one of the two out"),
    ("out_of_reach", ["Only inside players may shoot.", "Amber must shoot within 8 seconds."], 1, "nobody can do this"),
    ("still_and_moving", ["Edge players stand still.", "Edge players may come in to the pitch."], 1, "take one of the"),
    ("out_of_reach", ["A side scores 1 for stopping the ball in the heart.", "Everyone has 1 touch."], 0,
     "more than one touch"),
    ("out_of_reach", ["Amber score 1 for receiving in the heart.", "Amber stay out of the heart."], 0,
     "nobody can do this"),
    ("out_of_reach", ["Neutrals may not score.", "When neutrals score, the other side starts."], 1, "never happens"),
    ("out_of_reach", ["Amber have 1 touch.", "Blue stay out of the heart until amber have 2 touches."], 1, "never"),
    ("out_of_reach", ["A side scores 1 for heading the ball.", "No heading."], 0, "nobody can do this"),
    ("out_of_reach", ["A side scores 1 for passing over the heart.", "Passes stay on the ground."], 0, "nobody can"),
    ("out_of_reach", ["A side scores 2 for passing into the heart.", "No passes into the heart."], 0, "nobody can"),
    ("out_of_reach", ["A score counts only after amber enter the heart.", "Amber stay out of the heart."], 0,
     "never happens"),
    ("out_of_reach", ["Only inside players may shoot.", "Amber score 1 for shooting."], 1, "nobody can do this"),
    ("ways_shut", ["A score with the head counts 2.", "No heading."], 0, "no score can be made so"),
    ("ways_shut", ["A score counts only from inside the heart.", "A score counts only from inside the north end."], 1,
     "no score is made in both"),
    ("ways_shut", ["A score counts only from inside the south end.", "Everyone stays out of the south end."], 0,
     "no score can be made so"),
    ("after_the_turn", ["A turn lasts 60 seconds.", "Blue stay out of the heart until 90 seconds pass."], 1,
     "this never comes"),
    ("too_few", ["A score counts only after a side completes 3 passes between guard players."], -1, ""),
    ("two_restarts", ["When a side scores, amber start.", "When a side scores, neutrals play in a new ball."], 1,
     "restarts play too"),
    ("nobody_can_move", ["When a side scores, its nearest edge player comes in."], 0, "give it a range"),
    ("waiting_for_ever", ["When a side scores, the player who has waited longest joins the inside players."], 0,
     "nobody waits"),
    ("ends_of_nobody", ["Amber attack the goal.", "When a side scores, the sides change ends."], 1, "add “Amber"),
    ("no_direction", ["A side scores 1 for receiving in the attacking end."], 0, "what a side attacks"),
    ("in_a_line", ["Amber score 1 for running the ball through the goal."], 0, "is a line"),
    ("in_a_line", ["No passes into the goal."], 0, "is a line"),
]  # fmt: skip


def errors(folder, text: str) -> list[tuple[int | None, str]]:  # type: ignore[no-untyped-def]
    path = folder / "toy.yaml"
    path.write_text(text, encoding="utf-8")
    return [(problem.line, problem.expected) for problem in check_file(path) if problem.severity == "error"]


@pytest.mark.parametrize(("check", "rules", "at", "words"), CASES, ids=[" / ".join(case[1]) for case in CASES])
def test_a_clash_is_told_at_its_sentence(tmp_path, check: str, rules: list[str], at: int, words: str) -> None:  # type: ignore[no-untyped-def]
    found = errors(tmp_path, HEAD + "".join(f"  - {rule}\n" for rule in rules))
    if at < 0:
        assert found == []
        return
    assert [line for line, _ in found] == [FIRST + at]
    assert words in found[0][1]
    if len(rules) == 2 and check != "ends_of_nobody":
        assert f"line {FIRST + 1 - at}" in found[0][1]  # the other sentence


@pytest.mark.parametrize(
    ("old", "new", "line", "words"),
    [
        ("blue inside: 3 (1-4)", "blue inside: amber + 4 (1-4)", 10, "outside its range"),
        ("heart: square 6 yd at the centre of pitch", "heart: square 6 yd at (40, 0)", 6, "the ball is out there"),
        (
            "neutral: 1 (0-2) in pitch",
            "waiting for amber: 1 (0-2) behind the south end of pitch",
            13,
            "no turn ever ends",
        ),
        ("blue edge: 2 (2)", "blue edge: 0 (0)", 15, "nobody is ever blue edge"),
        ("blue guard: 2 (1-3) in heart", "blue guard: 1 (1) in heart", 15, "needs two of them"),
        ("north end: strip 4 yd inside", "north end: strip 4 yd beyond", 15, "the ball is out when it leaves"),
        (
            "pitch: rectangle 20 x 30 yd\n",
            "first: gate 3 yd at (0, 0)\n  pitch: rectangle 20 x 30 yd\n",
            3,
            "first place",
        ),
    ],
)
def test_a_line_that_cannot_hold(tmp_path, old: str, new: str, line: int, words: str) -> None:  # type: ignore[no-untyped-def]
    rules = ["Edge players have 1 touch.", "A side scores 1 for completing 2 passes between guard players.",
             "A side scores 1 for receiving in the north end."]  # fmt: skip
    extra = {"nobody is ever": 0, "needs two": 1, "the ball is out when": 2}
    rule = next((rules[number] for start, number in extra.items() if words.startswith(start)), "")
    found = errors(tmp_path, HEAD.replace(old, new) + (f"  - {rule}\n" if rule else ""))
    assert [at for at, _ in found] == [FIRST if rule else line]
    assert words in found[0][1]


def test_bibs_that_are_not_to_change(tmp_path) -> None:  # type: ignore[no-untyped-def]
    swap = "  - Every 3 minutes, the next group changes places with the neutrals.\n"
    assert errors(tmp_path, HEAD + swap) == []
    ((line, said),) = errors(tmp_path, HEAD + swap + "arrange:\n  bibs may change: no\n")
    assert line == FIRST and "bibs may change: no" in said


def test_drift_is_a_doubt(tmp_path) -> None:  # type: ignore[no-untyped-def]
    path = tmp_path / "toy.yaml"
    path.write_text(HEAD + "  - When a side scores, the scorer joins the guard players.\n", encoding="utf-8")
    (problem,) = [problem for problem in check_file(path) if "nothing uses" not in problem.expected]
    assert (problem.line, problem.severity) == (FIRST, "warning") and "add a sentence" in problem.expected


def test_steps_that_clash_are_told_at_the_step(tmp_path) -> None:  # type: ignore[no-untyped-def]
    step = "  - No heading.\nsteps:\n  - harder: Heads\n    add:\n      - A score with the head counts 3.\n"
    ((line, said),) = errors(tmp_path, HEAD + step)
    assert line == FIRST + 4 and "the step Heads" in said and "No heading" in said


@pytest.mark.parametrize(
    "rules",
    [
        ["Amber have 3 touches.", "Everyone has 2 touches."],  # the narrower sentence holds
        ["At most 2 guard players may be in the heart.", "At least 1 guard player must stay in the heart."],
        ["Neutrals may not score.", "Amber must shoot within 8 seconds."],
        ["Amber attack the goal.", "Blue attack the south end.", "When a side scores, the sides change ends."],
        ["No heading.", "A score with the first touch counts 2."],
        ["A turn lasts 60 seconds.", "Blue stay out of the heart until 10 seconds pass."],
        ["Passes between neutrals do not count.", "No passes between guard players."],
        ["When a side scores, its nearest edge player comes in and its farthest inside player goes out."],
        [
            "Amber stay in the north end while blue have the ball.",
            "Amber stay in the south end until the ball enters it.",
        ],
    ],
)
def test_sentences_that_hold_together(tmp_path, rules: list[str]) -> None:  # type: ignore[no-untyped-def]
    assert errors(tmp_path, HEAD + "".join(f"  - {rule}\n" for rule in rules)) == []


def test_every_check_says_what_it_finds() -> None:
    checks = (*LIMITS, *SCORES, *CHANGES, *GROUND)
    assert all(check.__doc__ and check.__doc__.endswith(".") for check in checks)
    assert {case[0] for case in CASES} <= {check.__name__ for check in checks}
