"""Rows about one kick: how far it goes beside where it was aimed, by its speed, by the run-up and by the foot."""

from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from turnout.play.kernel import columns as c
from turnout.study.outside.on_the_ball import ADULTS
from turnout.study.outside.plays import FILM_HZ, Play, Run
from turnout.study.outside.register import row

SEEN_S = 0.1  # the ball must roll untouched so long for its direction to be read off the film
TWOS = [Play("passing in twos", 1, 1, (metres, 10.0), 18, "strong", seconds=900.0) for metres in (10.0, 20.0, 30.0)]
RUNNING_MPS, STANDING_MPS = 2.0, 1.0
ALIKE_MPS = (8.0, 14.0)  # kicks about as hard are compared
ACROSS = 0.5  # sine of the angle to the body from which a ball counts as played across it


@dataclass(frozen=True)
class Kicks:
    """The passes of a run whose way can be read: one entry each, (kicks,)."""

    off_deg: np.ndarray  # how far beside the aim it went
    speed_mps: np.ndarray
    restart: np.ndarray  # the ball lay still: the first pass of a start
    run_mps: np.ndarray  # the kicker's own speed
    side: np.ndarray  # sine from the body to the aim, positive where the inside of the better foot plays to


def kicks(run: Run) -> Kicks:
    """Every pass with its direction error; the film shows the ball on its way before anybody plays it."""
    log, film = run.sums.log, run.film
    at = np.flatnonzero(log[:-1, c.LOG_KIND] == c.LOG_PASS)
    frame = np.ceil((log[at, c.LOG_T] + SEEN_S) * FILM_HZ).astype(int)
    kept = (frame < len(film.t_s)) & (frame >= 4)
    at, frame = at[kept], frame[kept]
    kept = film.t_s[frame] < log[at + 1, c.LOG_T]
    at, frame = at[kept], frame[kept]
    spot, player = log[at, c.LOG_X : c.LOG_Y + 1], log[at, c.LOG_PLAYER].astype(int)
    meant, went = log[at, c.LOG_AIM_X : c.LOG_AIM_Y + 1] - spot, film.ball_m[frame] - spot
    before = np.floor(log[at, c.LOG_T] * FILM_HZ).astype(int)
    step = film.players_m[before, player] - film.players_m[before - 1, player]
    across = np.sin(_angle(film.facing[before, player], meant)) * run.A[player, c.FOOT]
    return Kicks(
        off_deg=np.degrees(np.abs(_angle(meant, went))),
        speed_mps=log[at, c.LOG_VALUE],
        restart=log[at - 1, c.LOG_KIND] == c.LOG_START,
        run_mps=np.hypot(*step.T) * FILM_HZ,
        side=across,
    )


def _angle(one: np.ndarray, other: np.ndarray) -> np.ndarray:
    """Signed angle from one direction to another, radians, (n, 2) each."""
    cross = one[:, 0] * other[:, 1] - one[:, 1] * other[:, 0]
    return np.arctan2(cross, (one * other).sum(axis=1))


def spread_deg(found: Kicks, which: np.ndarray) -> float:
    """Root mean square of the direction error of some kicks; not a number where there are none."""
    return float(np.sqrt((found.off_deg[which] ** 2).mean())) if which.any() else float("nan")


@row("dir-04", *TWOS, figures=("degrees wider: 20 m over 10 m apart", "30 m over 20 m"))
def harder_is_wider(*runs: Run) -> list[float]:
    """Two pass to each other with nobody near: the farther apart they stand, the harder they kick."""
    spreads = [spread_deg(found, ~found.restart) for found in map(kicks, runs)]
    return [after - before for before, after in pairwise(spreads)]


@row(
    "dir-05",
    ADULTS,
    figures=("degrees wider: on the move over a still ball", "with the other foot over the preferred one"),
)
def still_ball_and_better_foot(adults: Run) -> tuple[float, float]:
    """Kicks about as hard: restarts against passes on the run; balls across the body to either side."""
    found = kicks(adults)
    alike = (found.speed_mps >= ALIKE_MPS[0]) & (found.speed_mps < ALIKE_MPS[1])
    still, moving = alike & found.restart, alike & ~found.restart & (found.run_mps >= RUNNING_MPS)
    play = alike & ~found.restart
    preferred, other = play & (found.side > ACROSS), play & (found.side < -ACROSS)
    return (
        spread_deg(found, moving) - spread_deg(found, still),
        spread_deg(found, other) - spread_deg(found, preferred),
    )
