"""Rows about the shape of a side: width, length, the gap between the sides, passes that go past a defence."""

from dataclasses import replace

import numpy as np

from turnout.play.kernel import columns as c
from turnout.study.outside.measures import out_field
from turnout.study.outside.passes import arrivals, ball_log
from turnout.study.outside.plays import FILM_HZ, Play, Run
from turnout.study.outside.register import row

FIVES = Play("end zones", 5, 5, (25.0, 40.0), 14)
FOURS = Play("end zones", 4, 4, (24.0, 32.0), 14)


def side_with_ball(run: Run) -> np.ndarray:
    """Side of whoever had the ball last, per frame (frames,); -1 while play is stopped or before a first holder."""
    film, log = run.film, ball_log(run)
    owner = np.where(film.holder >= 0, run.side[film.holder], -1)
    last = np.maximum.accumulate(np.where(owner >= 0, np.arange(len(owner)), 0))
    owner = owner[last]
    stopped = np.zeros(len(owner), dtype=bool)
    for stop in log[log[:, c.LOG_KIND] == c.LOG_STOP, c.LOG_T]:
        starts = log[(log[:, c.LOG_KIND] == c.LOG_START) & (log[:, c.LOG_T] >= stop), c.LOG_T]
        end = starts[0] if len(starts) else np.inf
        stopped |= (film.t_s >= stop) & (film.t_s < end)
    return np.where(stopped, -1, owner)


def spread_m(run: Run, side: int) -> np.ndarray:
    """How wide and how long a side stands without its keeper (frames, 2): across and along the way it attacks."""
    places = run.film.players_m[:, out_field(run, side)]
    return np.stack([np.ptp(places @ _across(run), axis=1), np.ptp(places @ run.aim, axis=1)], axis=1)


def _across(run: Run) -> np.ndarray:
    return np.array([-run.aim[1], run.aim[0]])


@row("dir-23", FIVES, figures=("m wider", "m longer"))
def attack_is_larger(run: Run) -> tuple[float, float]:
    owner, spread = side_with_ball(run), [spread_m(run, side) for side in (0, 1)]
    attack = np.concatenate([spread[side][owner == side] for side in (0, 1)])
    defence = np.concatenate([spread[1 - side][owner == side] for side in (0, 1)])
    wider, longer = attack.mean(axis=0) - defence.mean(axis=0)
    return float(wider), float(longer)


@row("dir-31", replace(FIVES, size_m=(25.0, 40.0)), replace(FIVES, size_m=(25.0, 28.0)), figures="m smaller")
def shorter_pitch(long: Run, short: Run) -> float:
    return gap_m(long) - gap_m(short)


def gap_m(run: Run) -> float:
    """Metres between the middles of the two sides along the pitch, while the ball is in play."""
    middles = [run.film.players_m[:, out_field(run, side)].mean(axis=1) @ run.aim for side in (0, 1)]
    return float(np.abs(middles[0] - middles[1])[side_with_ball(run) >= 0].mean())


@row("dir-26", replace(FOURS, game="end zones with a floater", neutral=1), FOURS, figures="fewer a minute")
def floater_and_penetration(inside: Run, without: Run) -> float:
    return passes_past_per_min(without) - passes_past_per_min(inside)


def passes_past_per_min(run: Run) -> float:
    """Passes that arrive beyond at least half of the other side, who stood before the ball at the kick."""
    log, film = ball_log(run), run.film
    kicked, arrived = arrivals(log)
    kicked = kicked[arrived]
    frame = np.rint(log[kicked, c.LOG_T] * FILM_HZ).astype(int)
    kicked, frame = kicked[frame < len(film.t_s)], frame[frame < len(film.t_s)]
    past = 0
    for kick, at in zip(kicked, frame, strict=True):
        side = int(log[kick, c.LOG_SIDE])
        aim = run.aim if side == 0 else -run.aim
        begin, end = (log[row, c.LOG_X : c.LOG_Y + 1] @ aim for row in (kick, kick + 1))
        others = film.players_m[at, run.side == 1 - side] @ aim
        past += bool(((others > begin) & (others < end)).sum() * 2 >= len(others))
    return past / run.minutes


WITH_KEEPERS = Play("goals 12 x 6 ft", 5, 5, (30.0, 40.0), 18)


@row(
    "dir-24",
    WITH_KEEPERS,
    replace(WITH_KEEPERS, game="goals 12 x 6 ft, outer floaters", neutral=2),
    replace(WITH_KEEPERS, game="small goals"),
    figures=("m wider with outer floaters", "m wider with small goals"),
)
def what_widens_a_defence(plain: Run, floaters: Run, small: Run) -> tuple[float, float]:
    return defence_m(floaters) - defence_m(plain), defence_m(small) - defence_m(plain)


def defence_m(run: Run) -> float:
    """Width of the side without the ball, keeper left out, while the ball is in play."""
    owner = side_with_ball(run)
    return float(np.concatenate([spread_m(run, side)[owner == 1 - side, 0] for side in (0, 1)]).mean())
