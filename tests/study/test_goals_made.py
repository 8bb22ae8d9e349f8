"""Telling goals apart by how they were made, on logs that fit on a line; and how far mates stand apart."""

import numpy as np
import pytest

from turnout.play.kernel import columns as c
from turnout.play.recording import Recording
from turnout.study.goals_made import MOST_SOLO, Goal, GoalsMade, goals_made, goals_of
from turnout.study.spacing import nearest_mate_m

KINDS = {
    "start": c.LOG_START, "pass": c.LOG_PASS, "control": c.LOG_CONTROL, "won": c.LOG_CUT_OUT, "tackle": c.LOG_TACKLE,
    "shot": c.LOG_SHOT, "block": c.LOG_BLOCK, "score": c.LOG_SCORE, "out": c.LOG_OUT,
}  # fmt: skip


def log(*events: tuple[str, int, float]) -> np.ndarray:
    """Events (kind, side, metres up the page), a second apart."""
    rows = np.zeros((len(events), c.LOG_COLUMNS))
    for number, (kind, side, y) in enumerate(events):
        rows[number, [c.LOG_T, c.LOG_KIND, c.LOG_SIDE, c.LOG_Y]] = number, KINDS[kind], side, y
    return rows


def way(*events: tuple[str, int, float]) -> str:
    (goal,) = goals_of(log(*events))
    return goal.way


def test_a_man_who_wins_it_runs_and_scores_made_a_solo_run() -> None:
    assert goals_of(log(("won", 0, 2), ("shot", 0, 9), ("score", 0, 15))) == [Goal("solo", 0, 7.0, 1.0, 13.0)]


def test_a_shot_within_four_metres_of_the_win_is_at_once() -> None:
    assert way(("tackle", 1, 8), ("shot", 1, 5), ("score", 1, 0)) == "at once"


def test_one_pass_since_the_win_is_enough() -> None:
    assert way(("won", 0, 2), ("pass", 0, 3), ("control", 0, 9), ("shot", 0, 9), ("score", 0, 15)) == "passed"


def test_passes_of_the_other_side_do_not_count() -> None:
    assert way(("pass", 1, 9), ("won", 0, 2), ("shot", 0, 9), ("score", 0, 15)) == "solo"


def test_a_rebound_belongs_to_the_same_run() -> None:
    assert way(("won", 0, 2), ("shot", 0, 4), ("block", 1, 6), ("shot", 0, 7), ("score", 0, 15)) == "solo"


def test_own_goals_and_restarts_are_other() -> None:
    assert way(("start", 0, 0), ("shot", 0, 9), ("score", 0, 15)) == "other"
    assert way(("pass", 0, 0), ("won", 1, 9), ("score", 0, 15)) == "other"
    assert way(("won", 0, 2), ("shot", 0, 9), ("tackle", 1, 9), ("shot", 1, 9), ("score", 0, 15)) == "other"


def test_after_a_goal_and_after_a_ball_out_counting_begins_again() -> None:
    win = (("won", 0, 2), ("pass", 0, 3), ("shot", 0, 9), ("score", 0, 15))
    assert [goal.way for goal in goals_of(log(*win, ("won", 1, 9), ("shot", 1, 2), ("score", 1, 0)))] == [
        "passed",
        "solo",
    ]
    assert way(*win[:2], ("out", 0, 4), ("won", 1, 9), ("shot", 1, 2), ("score", 1, 0)) == "solo"


@pytest.mark.parametrize(("share", "said"), [(0.1, "clear"), (0.24, "flat"), (0.4, "reversed")])
def test_the_verdict_is_about_the_quarter(share: float, said: str) -> None:
    assert 0.1 < MOST_SOLO < 0.4
    shares = {"solo": (share, 0.03), "at once": (0, 0), "passed": (1 - share, 0.03), "other": (0, 0)}
    assert GoalsMade("toy", 9, 1.0, 0.1, 3.0, 2.0, shares, 5.0, 1.0).verdict == said


@pytest.mark.parametrize("game", ("small goals 4 v 4", "keepers 5 v 5"))
def test_solo_runs_make_at_most_a_quarter_of_the_goals(game: str) -> None:
    found = goals_made(game, blocks=24)
    assert found.goals > 50
    assert sum(share for share, _ in found.shares.values()) == pytest.approx(1.0)
    assert found.verdict == "clear", found.why()


def test_spacing_is_of_the_side_with_the_ball() -> None:
    places = np.array([[[0.0, 0.0], [3.0, 4.0], [3.0, 10.0], [0.1, 0.0]]] * 3)
    film = Recording(
        seed=1, roles=("a", "b"), t_s=np.arange(3.0), players_m=places, facing=places, ball_m=places[:, 0],
        balls_m=np.zeros((3, 1, 3)), holder=np.array([0, 3, -1]), holders=np.array([[0], [3], [-1]]),
        role=np.array([[0, 0, 0, 1]] * 3), events=(),
    )  # fmt: skip
    assert nearest_mate_m(film, np.array([0, 1])) == pytest.approx([5.0, 5.0, 6.0])
