"""Whether simulated play looks like football: standing, bunching, zigzags, hard accelerations, early losses."""

from dataclasses import dataclass

import numpy as np

from turnout.play.kernel import columns as c
from turnout.play.recording import Recording
from turnout.play.simulate import record, simulate
from turnout.practice.setup import Setup

CLOSE_M = 2.0
TURN_MPS = 1.0  # a reversal counts only when running at least this fast before and after
RATE_HZ = 10.0


@dataclass(frozen=True)
class Looks:
    """Figures a football person would question first. Shares are of off-ball player-time unless said."""

    still_share: float  # below 0.5 m/s
    close_pairs: float  # mean number of pairs of one side within 2 m
    reversals_per_player_min: float  # turns of more than 90 degrees within 0.1 s
    hard_share: float  # of player-time above 6 m/s2
    first_pass_lost: float  # spells lost before a first pass
    one_minus_success: float  # 1 - pass success, to hold it against
    free_first_pass_lost: float


def looks(setup: Setup, *, age: int, level: str, seed: int, seconds: float = 600.0) -> Looks:
    """Measure a setup's play over one run of so many simulated seconds."""
    sums = simulate(setup, age=age, level=level, seed=seed, seconds=seconds)
    film = record(setup, age=age, level=level, seed=seed, window=(0.0, seconds), rate_hz=RATE_HZ)
    side = np.array([setup.practice.sides.index(group.side) for group in setup.practice.groups])[film.role]
    V = sums.V.sum(axis=0)
    return Looks(
        still_share=float(sums.S[:, c.S_STILL].sum() / sums.S[:, c.S_OFF_BALL].sum()),
        close_pairs=_close_pairs(film, side),
        reversals_per_player_min=_reversals(film) / (film.players_m.shape[1] * seconds / 60),
        hard_share=float(sums.S[:, c.S_HARD].sum() / sums.S[:, c.S_TIME].sum()),
        first_pass_lost=float(V[c.V_FIRST_LOST] / max(1.0, V[c.V_FIRST])),
        one_minus_success=1 - float(sums.S[:, c.S_COMPLETED].sum() / max(1.0, sums.S[:, c.S_PASSES].sum())),
        free_first_pass_lost=float(V[c.V_FREE_LOST] / max(1.0, V[c.V_FREE])),
    )


def _close_pairs(film: Recording, side: np.ndarray) -> float:
    gap = film.players_m[:, :, None, :] - film.players_m[:, None, :, :]
    close = (np.hypot(gap[..., 0], gap[..., 1]) < CLOSE_M) & (side[:, :, None] == side[:, None, :])
    players = film.players_m.shape[1]
    return float((close.sum(axis=(1, 2)) - players).mean() / 2)


def _reversals(film: Recording) -> int:
    speed = np.diff(film.players_m, axis=0) * RATE_HZ
    fast = np.hypot(speed[..., 0], speed[..., 1]) > TURN_MPS
    dot = (speed[1:] * speed[:-1]).sum(axis=2)
    return int(((dot < 0) & fast[1:] & fast[:-1]).sum())
