"""Every pass of a run out of its log: how far it was meant and went, how fast, whether it arrived."""

import numpy as np

from turnout.play.kernel import columns as c
from turnout.study.outside.plays import FILM_HZ, Run

# what decides where the ball is; a spill on the way to a team-mate does not end a pass
BALL = [c.LOG_START, c.LOG_PASS, c.LOG_CONTROL, c.LOG_CUT_OUT, c.LOG_TACKLE, c.LOG_OUT, c.LOG_STOP]
BALL += [c.LOG_SHOT, c.LOG_SAVE]
TAKEN = (c.LOG_START, c.LOG_CONTROL, c.LOG_CUT_OUT, c.LOG_TACKLE)


def ball_log(run: Run) -> np.ndarray:
    """The rows of the log that say who has the ball (events, LOG_COLUMNS)."""
    log = run.sums.log
    return log[np.isin(log[:, c.LOG_KIND], BALL)]


def arrivals(log: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Rows (passes,) at which a pass was played, and whether the next row is its arrival."""
    kicked = np.flatnonzero(log[:-1, c.LOG_KIND] == c.LOG_PASS)
    after = log[kicked + 1]
    return kicked, (after[:, c.LOG_KIND] == c.LOG_CONTROL) & (after[:, c.LOG_OTHER] == log[kicked, c.LOG_PLAYER])


def ways(log: np.ndarray, kicked: np.ndarray) -> np.ndarray:
    """Metres (passes, 2) from the kick to wherever the ball was next played."""
    return log[kicked + 1, c.LOG_X : c.LOG_Y + 1] - log[kicked, c.LOG_X : c.LOG_Y + 1]


def flights(run: Run) -> tuple[np.ndarray, np.ndarray]:
    """Metres and mean speed m/s of every pass that arrived, two arrays (arrived,)."""
    log = ball_log(run)
    kicked, arrived = arrivals(log)
    metres = np.hypot(*ways(log, kicked).T)
    seconds = log[kicked + 1, c.LOG_T] - log[kicked, c.LOG_T]
    good = arrived & (seconds > 0)
    return metres[good], metres[good] / seconds[good]


def aimed_m(run: Run) -> np.ndarray:
    """Metres (passes,) from the kick to the spot aimed at."""
    log = run.sums.log[run.sums.log[:, c.LOG_KIND] == c.LOG_PASS]
    return np.hypot(log[:, c.LOG_AIM_X] - log[:, c.LOG_X], log[:, c.LOG_AIM_Y] - log[:, c.LOG_Y])


def mean_speed_mps(run: Run, low_m: float, high_m: float) -> float:
    """Mean speed of passes that arrived after this many metres; not a number where there was none."""
    metres, speed = flights(run)
    ours = speed[(metres >= low_m) & (metres < high_m)]
    return float(ours.mean()) if len(ours) else float("nan")


def completion(run: Run, low_m: float, high_m: float) -> float:
    """Share of the passes meant for a man this far away at the kick that arrived."""
    log, film = ball_log(run), run.film
    kicked, arrived = arrivals(log)
    frame = np.rint(log[kicked, c.LOG_T] * FILM_HZ).astype(int)
    kept = frame < len(film.t_s)
    kicked, arrived, frame = kicked[kept], arrived[kept], frame[kept]
    man = film.players_m[frame, log[kicked, c.LOG_OTHER].astype(int)]
    metres = np.hypot(*(man - log[kicked, c.LOG_X : c.LOG_Y + 1]).T)
    ours = arrived[(metres >= low_m) & (metres < high_m)]
    return float(ours.mean()) if len(ours) else float("nan")


def on_ball_s(run: Run) -> float:
    """Seconds from the first touch to the pass, over holds in play that end with a pass."""
    log = ball_log(run)
    took = np.flatnonzero(np.isin(log[:-1, c.LOG_KIND], TAKEN[1:]))
    after = log[took + 1]
    passed = (after[:, c.LOG_KIND] == c.LOG_PASS) & (after[:, c.LOG_PLAYER] == log[took, c.LOG_PLAYER])
    return float((after[passed, c.LOG_T] - log[took[passed], c.LOG_T]).mean())


def touches_per_hold(run: Run) -> float:
    """Touches of a player from taking the ball until he has passed or lost it."""
    holds = np.isin(run.sums.log[:, c.LOG_KIND], TAKEN).sum()
    return float(run.sums.S[:, c.S_TOUCHES].sum()) / max(1, int(holds))
