"""Rows about games with goals: shots, goals, crosses, and what the way of scoring does to play."""

import numpy as np

from turnout.play.kernel import columns as c
from turnout.study.outside.measures import (
    each,
    out_field,
    share,
    tackles_per_min,
    tackles_per_player_min,
    total,
    won_per_min,
)
from turnout.study.outside.passes import TAKEN, aimed_m, ball_log
from turnout.study.outside.plays import Play, Run
from turnout.study.outside.register import row

DUELS = [Play("goals 12 x 6 ft", 4, 4, size, 18, seconds=960.0) for size in ((20.0, 30.0), (30.0, 40.0))]
THREES = Play("small goals", 3, 3, (15.0, 25.0), 14)
SIXES = Play("small goals", 6, 6, (30.0, 40.0), 14)
PILOT_M = (22.9, 27.4)
LINE = Play("a line to run over", 4, 4, PILOT_M, 9)
TWO_GOALS = Play("small goals", 4, 4, PILOT_M, 9)
FOUR_GOALS = Play("two small goals each", 4, 4, PILOT_M, 9)
KEEPERS = Play("goals 12 x 6 ft", 3, 3, PILOT_M, 9)
TARGETS = [Play(game, 5, 5, (30.0, 40.0), 18) for game in ("small goals", "two small goals each")]
SHAPES = [
    Play("goals 16 x 7 ft, a floater", 6, 6, size, 18, neutral=1, seconds=900.0)
    for size in ((52.0, 40.0), (40.0, 52.0))
]
SHORT_M = 10.0  # a short pass is aimed less far
DRIBBLE_M = 3.0  # a dribble carries the ball at least so far
AREA_HALF_M, AREA_DEEP_M = 9.16, 9.0  # a seven-a-side goal's area, ten yards to either side and deep


@row("ssg-duel", *DUELS, figures="times")
def tackles_on_half_the_area(small: Run, large: Run) -> float:
    return share(tackles_per_min(small), tackles_per_min(large))


@row("ssg-shots", *DUELS, figures="times", needs=("S_SHOTS",))
def shots_on_twice_the_area(small: Run, large: Run) -> float:
    return share(total(large, "S_SHOTS"), total(small, "S_SHOTS"))


def scores_per_min(run: Run) -> float:
    """Scores of both sides: goals, or the ball run over the line."""
    return float(run.sums.V[:2, c.V_SCORES].sum()) / run.minutes


def passes_per_min(run: Run) -> float:
    """Passes played, both sides together."""
    return total(run, c.S_PASSES) / run.minutes


def short_passes(run: Run) -> int:
    """Passes aimed at a spot less than 10 m away."""
    return int((aimed_m(run) < SHORT_M).sum())


def dribbles(run: Run) -> int:
    """Balls carried at least 3 m from where they were taken to where they were passed, shot or lost."""
    log = ball_log(run)
    took = np.flatnonzero(np.isin(log[:-1, c.LOG_KIND], TAKEN))
    ends = (c.LOG_PASS, c.LOG_SHOT, c.LOG_TACKLE, c.LOG_OUT, c.LOG_STOP)
    ended = took[np.isin(log[took + 1, c.LOG_KIND], ends)]
    way = log[ended + 1, c.LOG_X : c.LOG_Y + 1] - log[ended, c.LOG_X : c.LOG_Y + 1]
    return int((np.hypot(*way.T) >= DRIBBLE_M).sum())


def each_min(run: Run, count: float) -> float:
    """A count of a whole run for one outfield player and minute."""
    return share(count, float(each(run, "S_TIME")[out_field(run)].sum()) / 60)


@row(
    "dir-19",
    THREES,
    SIXES,
    figures=("short passes more each, a minute", "dribbles more", "tackles more", "goals more"),
    needs=("S_GOALS",),
)
def three_and_six_a_side(three: Run, six: Run) -> tuple[float, ...]:
    counts = [
        (each_min(run, short_passes(run)), each_min(run, dribbles(run)), tackles_per_player_min(run),
         each_min(run, total(run, "S_GOALS")))
        for run in (three, six)
    ]  # fmt: skip
    return tuple(few - many for few, many in zip(*counts, strict=True))


@row(
    "dir-20",
    LINE,
    TWO_GOALS,
    FOUR_GOALS,
    KEEPERS,
    figures=(
        "goals a minute, line over two goals", "line over four goals", "line over keepers",
        "passes a minute, two goals over line", "two over four", "two over keepers",
    ),
)  # fmt: skip
def ways_of_scoring(*runs: Run) -> tuple[float, ...]:
    """Four a side, keepers among them; tricks on the ball are not simulated, so they are not claimed."""
    goals, passes = [scores_per_min(run) for run in runs], [passes_per_min(run) for run in runs]
    line = [goals[0] - goals[other] for other in (1, 2, 3)]
    return (*line, *(passes[1] - passes[other] for other in (0, 2, 3)))


@row("dir-25", *TARGETS, figures="balls won more a minute with one target")
def one_target_and_two(one: Run, two: Run) -> float:
    return won_per_min(one) - won_per_min(two)


def crosses_per_min(run: Run) -> float:
    """Passes in play aimed into the area before the other side's goal from a wide channel of that half.

    The channels lie to either side of the area's width. Corners and other restarts are no crosses.
    """
    log = ball_log(run)
    played = np.flatnonzero(log[1:, c.LOG_KIND] == c.LOG_PASS) + 1
    log = log[played[log[played - 1, c.LOG_KIND] != c.LOG_START]]
    forward = np.where(log[:, c.LOG_SIDE, None] == 0, run.aim, -run.aim)
    across = np.array([-run.aim[1], run.aim[0]])
    half_m = run.play.size_m[1] / 2
    start, end = log[:, c.LOG_X : c.LOG_Y + 1], log[:, c.LOG_AIM_X : c.LOG_AIM_Y + 1]
    wide = (np.abs(start @ across) > AREA_HALF_M) & ((start * forward).sum(axis=1) > 0)
    into = (np.abs(end @ across) <= AREA_HALF_M) & ((end * forward).sum(axis=1) >= half_m - AREA_DEEP_M)
    return float((wide & into).sum()) / run.minutes


@row("dir-30", *SHAPES, figures="crosses more a minute on the wide pitch", needs=("LOG_AIM_X",))
def crosses_on_a_wide_pitch(wide: Run, standard: Run) -> float:
    return crosses_per_min(wide) - crosses_per_min(standard)
