"""Figures of one run out of its sums and its log. A share of nothing is 0."""

import numpy as np

from turnout.play.kernel import columns as c
from turnout.study.outside.plays import Run

LOST = slice(0, c.SCORED)  # causes of a lost ball
ACTIONS = ("S_RECEIVED", "S_PASSES", "S_SHOTS", "S_CUT_OUT", "S_TACKLES")


def each(run: Run, name: str) -> np.ndarray:
    """The column of S called `name`, per player (players,); a row says under `needs` that the kernel must have it."""
    return run.sums.S[:, getattr(c, name)]


def total(run: Run, column: int | str, side: int | None = None) -> float:
    """A column of S added over players, or over those of one side."""
    values = each(run, column) if isinstance(column, str) else run.sums.S[:, column]
    return float(values.sum() if side is None else values[run.side == side].sum())


def share(top: float, under: float) -> float:
    return top / under if under > 0 else 0.0


def out_field(run: Run, side: int | None = None) -> np.ndarray:
    """Who is no keeper (players,), of everybody or of one side."""
    return ~run.keeper if side is None else ~run.keeper & (run.side == side)


def metres_per_min(run: Run, side: int | None = None) -> float:
    """Metres an outfield player covers in a minute."""
    ours = out_field(run, side)
    return share(float(each(run, "S_DISTANCE")[ours].sum()), float(each(run, "S_TIME")[ours].sum()) / 60)


def pass_success(run: Run, side: int | None = None) -> float:
    """Share of passes that arrive."""
    return share(total(run, c.S_COMPLETED, side), total(run, c.S_PASSES, side))


def failed_passes_per_min(run: Run) -> float:
    """Passes that do not arrive, both sides together."""
    return (total(run, c.S_PASSES) - total(run, c.S_COMPLETED)) / run.minutes


def lost_per_min(run: Run) -> float:
    """Balls lost by either side, however."""
    return float(run.sums.E[:, LOST].sum()) / run.minutes


def passes_per_possession(run: Run, side: int = 0) -> float:
    """Passes in a row of a side from having the ball to losing it."""
    return share(float(run.sums.V[side, c.V_RUN_SUM]), float(run.sums.V[side, c.V_SPELLS]))


def actions(run: Run) -> float:
    """Technical actions of the outfield players: passes received, passes, shots, balls cut out, tackles that won it."""
    return sum(float(each(run, name)[out_field(run)].sum()) for name in ACTIONS)


def actions_per_min(run: Run) -> float:
    """Technical actions of all outfield players together in a minute."""
    return actions(run) / run.minutes


def actions_per_player_min(run: Run) -> float:
    """Technical actions of one outfield player in a minute."""
    return share(actions(run), float(each(run, "S_TIME")[out_field(run)].sum()) / 60)


def tackles_per_min(run: Run) -> float:
    """Tackles that won the ball, both sides together."""
    return total(run, c.S_TACKLES) / run.minutes


def tackles_per_player_min(run: Run) -> float:
    """Tackles that won the ball, of one outfield player in a minute."""
    ours = out_field(run)
    return share(float(each(run, "S_TACKLES")[ours].sum()), float(each(run, "S_TIME")[ours].sum()) / 60)


def out_per_min(run: Run) -> float:
    """How often the ball goes out."""
    return float(run.sums.E[:, [c.OUT, c.DEFLECTED_OUT]].sum()) / run.minutes


def won_per_min(run: Run) -> float:
    """Balls won in play, both sides together."""
    return float(run.sums.V[:, c.V_REGAINS].sum()) / run.minutes


def fast_share(run: Run) -> float:
    """Share of the metres run above 16 km/h."""
    return share(total(run, c.S_FAST), total(run, c.S_DISTANCE))


def fast_metres_per_min(run: Run) -> float:
    """Metres above 16 km/h of a player in a minute."""
    return share(total(run, c.S_FAST), total(run, c.S_TIME) / 60)


def peak_mps(run: Run) -> float:
    """Fastest speed of a player in the run, mean over players."""
    return float(each(run, "S_PEAK").mean())


def peak_share(run: Run) -> np.ndarray:
    """Fastest speed of every player over his top speed (players,)."""
    return each(run, "S_PEAK") / run.A[:, c.TOP]


def metres_by_side(run: Run) -> tuple[float, float]:
    """Metres per player and minute of amber and of blue."""
    return metres_per_min(run, 0), metres_per_min(run, 1)


def episode_s(run: Run) -> float:
    """Seconds of play between two balls lost by amber."""
    return share(float(run.sums.Q[c.Q_ROLLING]), float(run.sums.E[0, LOST].sum()))


def scored_share(run: Run) -> float:
    """Share of spells with the ball, of either side, that end in a score."""
    return share(float(run.sums.E[:, c.SCORED].sum()), float(run.sums.E[:, : c.STOPPED].sum()))
