"""Rows about having the ball: how soon it is lost in control, how long a side keeps it."""

from dataclasses import replace

import numpy as np

from turnout.play.kernel import columns as c
from turnout.study.outside.measures import share, total
from turnout.study.outside.on_the_ball import ADULTS
from turnout.study.outside.passes import BALL, TAKEN, ball_log
from turnout.study.outside.plays import FILM_HZ, Play, Run
from turnout.study.outside.register import row

NEAR_M = 2.0  # pressed: an opponent so near, as the kernel counts the seconds held under pressure
LONG = replace(ADULTS, seconds=1800.0)  # free losses are rare, and a ratio over few of them is too high
THREES = Play("goals 12 x 6 ft", 3, 3, (20.0, 30.0), 15, seconds=900.0)
CLUSTERS = 3


def lost_in_control(run: Run) -> tuple[int, int]:
    """Balls lost in control under pressure and free: tackles; touches that let the ball go; balls carried out.

    A touch that let it go counts when an opponent or the line had the ball next. A pass that fails is no such loss.
    """
    log = run.sums.log
    log = log[np.isin(log[:, c.LOG_KIND], [*BALL, c.LOG_SPILL, c.LOG_BLOCK])]
    pressed, free = int(total(run, "S_LOST_HELD")), 0
    for at in np.flatnonzero(lost_by_touch(log)):
        near = nearest_opponent_m(run, int(log[at, c.LOG_PLAYER]), float(log[at, c.LOG_T])) < NEAR_M
        pressed, free = pressed + near, free + (not near)
    return pressed, free


def lost_by_touch(log: np.ndarray) -> np.ndarray:
    """Rows (events,) at which a player let the ball go without a kick or a tackle, and his side had lost it."""
    kind, side = log[:, c.LOG_KIND], log[:, c.LOG_SIDE]
    lost = np.zeros(len(log), dtype=bool)
    for at in np.flatnonzero(kind[:-1] == c.LOG_SPILL):
        after = log[at + 1]
        miscontrolled = after[c.LOG_KIND] == c.LOG_CUT_OUT and after[c.LOG_VALUE] == c.MISCONTROLLED
        lost[at] = miscontrolled and after[c.LOG_OTHER] == log[at, c.LOG_PLAYER]
        lost[at] |= after[c.LOG_KIND] == c.LOG_OUT and after[c.LOG_VALUE] == c.OUT and after[c.LOG_SIDE] == side[at]
    carried = np.isin(kind[:-1], TAKEN) & (kind[1:] == c.LOG_OUT) & (log[1:, c.LOG_PLAYER] == log[:-1, c.LOG_PLAYER])
    lost[1:] |= carried
    return lost


def nearest_opponent_m(run: Run, player: int, t_s: float) -> float:
    """Metres from a player to the nearest opponent at a time of the run."""
    film = run.film
    places = film.players_m[min(len(film.t_s) - 1, round(t_s * FILM_HZ))]
    others = places[run.side == 1 - run.side[player]]
    return float(np.hypot(*(others - places[player]).T).min())


@row("touch-03", LONG, figures="times", needs=("S_LOST_HELD", "S_HELD_S", "S_HELD_PRESSED_S"))
def danger_of_holding(adults: Run) -> float:
    """Not a number under a seed where nobody lost the ball free."""
    pressed, free = lost_in_control(adults)
    pressed_s = total(adults, "S_HELD_PRESSED_S")
    free_s = total(adults, "S_HELD_S") - pressed_s - standing_over_s(adults)
    return share(pressed, pressed_s) / share(free, free_s) if free else float("nan")


def standing_over_s(run: Run) -> float:
    """Seconds a restart waits for its kick: nobody may take that ball, so it is neither pressed nor free."""
    log = ball_log(run)
    starts = np.flatnonzero(log[:-1, c.LOG_KIND] == c.LOG_START)
    return float((log[starts + 1, c.LOG_T] - log[starts, c.LOG_T]).sum())


def possessions_s(run: Run) -> np.ndarray:
    """Seconds (possessions,) a side kept the ball: from taking it until the other side takes it or play stops."""
    lengths, since, owner = [], 0.0, -1
    for event in ball_log(run):
        t_s, kind, side = event[c.LOG_T], event[c.LOG_KIND], int(event[c.LOG_SIDE])
        if kind in (c.LOG_OUT, c.LOG_STOP):
            taken = -1
        elif kind in (c.LOG_START, *TAKEN):
            taken = side
        else:
            continue
        if taken != owner:
            lengths += [t_s - since] if owner >= 0 else []
            since, owner = t_s, taken
    return np.array(lengths)


def centres(values: np.ndarray, number: int) -> np.ndarray:
    """Rising centres of so many clusters of values on a line (Lloyd's way from evenly spaced quantiles)."""
    middle = np.quantile(values, (np.arange(number) + 0.5) / number)
    for _ in range(200):
        nearest = np.abs(values[:, None] - middle).argmin(axis=1)
        moved = [values[nearest == one].mean() if (nearest == one).any() else middle[one] for one in range(number)]
        if np.allclose(moved, middle):
            break
        middle = np.array(moved)
    return np.sort(middle)


@row("ssg-poss", THREES, figures=("s, short", "s, medium", "s, long"))
def three_lengths(run: Run) -> list[float]:
    return [float(centre) for centre in centres(possessions_s(run), CLUSTERS)]
