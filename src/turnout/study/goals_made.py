"""How goals come about, read off the log: built up, run alone after a win, shot at once after it, or otherwise.

A goal is made without a pass when its side played none since it won the ball in play. Carried SOLO_M or more from
there to the shot it is a solo run; nearer than that it was shot at once, which is the reward of a win near goal.
"""

from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from typing import Literal

import numpy as np

from turnout.play.kernel import columns as c
from turnout.play.simulate import Sums
from turnout.study.figures import ratio
from turnout.study.many import run_seed
from turnout.study.pays import QUESTION, Variant, asked_game, play

SOLO_M = 4.0
MOST_SOLO = 0.25
BLOCK_S, BLOCKS = 480.0, 100
WAYS = ("solo", "at once", "passed", "other")
WON = (c.LOG_CUT_OUT, c.LOG_TACKLE)
AFRESH = (c.LOG_START, c.LOG_OUT, c.LOG_STOP)


@dataclass(frozen=True)
class Goal:
    """One goal: how it was made, passes of the side before the shot; without a pass also how the win led to it.

    carried_m: from the win to the shot · after_s: from the win to the shot · won_m: from the win to where it went in
    """

    way: Literal["solo", "at once", "passed", "other"]
    passes: int
    carried_m: float = 0.0
    after_s: float = 0.0
    won_m: float = 0.0


@dataclass(frozen=True)
class GoalsMade:
    """The goals of a game: so many a minute, shots a minute, and the shares of the ways with their 90 % half widths."""

    game: str
    goals: int
    goals_per_min: float
    goals_half: float
    shots_per_min: float
    passes: float  # before a goal, mean
    shares: dict[str, tuple[float, float]]
    won_m: float  # from the goal, where the ball was won for a goal shot at once, median
    after_s: float  # from there to the shot, median

    @property
    def verdict(self) -> Literal["clear", "flat", "reversed"]:
        """Whether solo runs are at most MOST_SOLO of the goals, the interval clear of it."""
        share, half = self.shares["solo"]
        return "clear" if share + half < MOST_SOLO else "reversed" if share - half > MOST_SOLO else "flat"

    def why(self) -> str:
        """The answer in words."""
        ways = ", ".join(f"{self.shares[way][0]:.0%} {way}" for way in WAYS)
        return (
            f"{self.game}: {self.goals_per_min:.2f} goals a minute, {self.passes:.1f} passes before one; {ways}; "
            f"solo runs at most {MOST_SOLO:.0%}: {self.verdict}"
        )


def goals_made(game: str, variant: Variant | None = None, *, blocks: int = BLOCKS, threads: int = 2) -> GoalsMade:
    """Play a game to goals and tell its goals apart, both sides together."""
    setup, how = asked_game(game), variant or Variant()

    def one(number: int) -> Sums:
        return play(setup, how, run_seed(QUESTION, number), seconds=BLOCK_S, log=True)

    with ThreadPoolExecutor(threads) as pool:
        sums = list(pool.map(one, range(blocks)))
    return summed(game, sums)


def summed(game: str, runs: Sequence[Sums]) -> GoalsMade:
    """The goals of logged runs."""
    found = [goals_of(run.log) for run in runs]
    each = np.array([[sum(goal.way == way for goal in goals) for way in WAYS] for goals in found], dtype=float)
    minutes = np.array([float(run.Q[c.Q_TIME]) / 60 for run in runs])
    per_min, half = ratio(each.sum(1), minutes)
    shots = sum(float(run.V[:, c.V_SHOTS].sum()) for run in runs)
    passes = [goal.passes for goals in found for goal in goals if goal.way != "other"]
    shares = {way: ratio(each[:, number], each.sum(1)) for number, way in enumerate(WAYS)}
    at_once = [goal for goals in found for goal in goals if goal.way == "at once"]
    return GoalsMade(
        game, int(each.sum()), per_min, half, shots / float(minutes.sum()), float(np.mean(passes or [0])), shares,
        won_m=float(np.median([goal.won_m for goal in at_once] or [0])),
        after_s=float(np.median([goal.after_s for goal in at_once] or [0])),
    )  # fmt: skip


def goals_of(log: np.ndarray) -> list[Goal]:
    """The goals in a log (events, LOG_COLUMNS) of one ball, in a game in which nothing else scores."""
    goals: list[Goal] = []
    won: np.ndarray | None = None  # the row in which the side on the ball won it in play
    shot: np.ndarray | None = None  # its last shot
    passes = 0
    for row in log:
        kind = int(row[c.LOG_KIND])
        if kind == c.LOG_SCORE:
            goals.append(_goal(row, won, shot, passes))
        if kind == c.LOG_PASS:
            passes += 1
        elif kind == c.LOG_SHOT:
            shot = row
        elif kind in WON or kind in AFRESH or kind == c.LOG_SCORE:
            won, shot, passes = row if kind in WON else None, None, 0
    return goals


def _goal(row: np.ndarray, won: np.ndarray | None, shot: np.ndarray | None, passes: int) -> Goal:
    """Other: into the own goal, without a shot, or straight from a restart."""
    if shot is None or shot[c.LOG_SIDE] != row[c.LOG_SIDE]:
        return Goal("other", passes)
    if passes:
        return Goal("passed", passes)
    if won is None:
        return Goal("other", 0)
    carried_m = _apart_m(won, shot)
    after_s = float(shot[c.LOG_T] - won[c.LOG_T])
    return Goal("solo" if carried_m >= SOLO_M else "at once", 0, carried_m, after_s, _apart_m(won, row))


def _apart_m(one: np.ndarray, other: np.ndarray) -> float:
    return float(np.hypot(*(other[c.LOG_X : c.LOG_Y + 1] - one[c.LOG_X : c.LOG_Y + 1])))
