"""Whether simulated play looks like football: what somebody who knows the game would question first, counted."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from turnout.play.kernel import columns as c
from turnout.play.recording import Recording
from turnout.play.simulate import Sums, record, simulate
from turnout.practice.setup import Setup

RATE_HZ = 10.0
CLOSE_M = 2.0
STILL_MPS = 0.5
TURN_MPS = 1.0  # a reversal counts only when running at least this fast before and after
HARD_MPS2 = 6.0  # tracking: 99 % of accelerations lie within about 4.5 m/s2, nothing near 10
SEEDS = (1, 2, 3)

# What is wanted of each figure, (low, high); free, set to sense, where no source is named beside the figure.
WANTED: dict[str, tuple[float, float]] = {
    "still_share": (0.05, 0.55),
    "close_pairs": (0.0, 0.8),
    "reversals_per_player_min": (0.0, 4.0),
    "hard_share": (0.0, 0.01),
    "free_first_pass_lost": (0.0, 0.05),
    "first_pass_gap": (0.0, 0.10),
    "ball_jump_m": (0.0, 2.5),  # 25 m/s: nobody young kicks harder
}


@dataclass(frozen=True)
class Looks:
    """Seven figures of believable play, and the greatest way of the ball between two frames a tenth of a second apart.

    The sixth figure is a pair: first passes lost, and the share of all passes lost beside it.
    """

    still_share: float  # of off-ball player-time, below 0.5 m/s
    close_pairs: float  # mean number of pairs of one side under 2 m
    reversals_per_player_min: float  # turns of more than 90 degrees from one tenth of a second to the next
    hard_share: float  # of player-time, accelerations beyond 6 m/s2 either way
    free_first_pass_lost: float  # share of first passes nobody may close down at once that were lost
    first_pass_lost: float  # share of possession spells that end before a first pass arrives
    one_minus_success: float  # share of all passes lost
    scores_per_min: float
    ball_jump_m: float

    @property
    def first_pass_gap(self) -> float:
        """How far spells that die before a first pass are from what the pass success makes one expect."""
        return abs(self.first_pass_lost - self.one_minus_success)

    def why(self) -> tuple[str, ...]:
        """Every figure as a sentence, with what was wanted where it is not met."""
        return (
            f"{self.still_share:.0%} of the time without the ball was spent standing{self._judged('still_share')}.",
            f"{self.close_pairs:.2f} pairs of a side stood within 2 m at any moment{self._judged('close_pairs')}.",
            f"{self.reversals_per_player_min:.1f} sharp turns a player and minute"
            f"{self._judged('reversals_per_player_min')}.",
            f"{self.hard_share:.2%} of the time a player sped up or braked beyond 6 m/s²{self._judged('hard_share')}.",
            f"{self.free_first_pass_lost:.0%} of free first passes were lost{self._judged('free_first_pass_lost')}.",
            f"{self.first_pass_lost:.0%} of spells died before a first pass, {self.one_minus_success:.0%} of all passes"
            f" were lost{self._judged('first_pass_gap')}.",
            f"{self.scores_per_min:.1f} scores a minute, both sides together.",
            f"The ball moved {self.ball_jump_m:.1f} m at most between two frames a tenth of a second apart"
            f"{self._judged('ball_jump_m')}.",
        )

    def missed(self) -> tuple[str, ...]:
        """The names of the figures outside what is wanted."""
        return tuple(name for name, (low, high) in WANTED.items() if not low <= getattr(self, name) <= high)

    def _judged(self, name: str) -> str:
        low, high = WANTED[name]
        if name not in self.missed():
            return ""
        return f" (wanted: {low:g} to {high:g})" if low else f" (wanted: at most {high:g})"


def looks(
    setup: Setup, *, age: int, level: str, seeds: Sequence[int] = SEEDS, seconds: float = 400.0, surface: str = "3G"
) -> Looks:
    """Measure a setup's play over one run of so many simulated seconds from every seed."""
    side = sides_of_roles(setup)
    runs = []
    for seed in seeds:
        sums = simulate(setup, age=age, level=level, seed=seed, seconds=seconds, surface=surface)
        whole = (0.0, seconds)
        film = record(setup, age=age, level=level, seed=seed, window=whole, rate_hz=RATE_HZ, surface=surface)
        runs.append((film, sums))
    return looks_of(runs, side)


def sides_of_roles(setup: Setup) -> np.ndarray:
    """The side (number) of every role of a setup: (roles,)."""
    return np.array([setup.practice.sides.index(group.side) for group in setup.practice.groups])


def looks_of(runs: Sequence[tuple[Recording, Sums]], side: np.ndarray) -> Looks:
    """The figures of runs that are filmed from start to end at RATE_HZ. side: (roles,)."""
    films = [film for film, _ in runs]
    V = np.sum([sums.V.sum(axis=0) for _, sums in runs], axis=0)
    S = np.sum([sums.S.sum(axis=0) for _, sums in runs], axis=0)
    minutes = sum(float(sums.Q[c.Q_TIME]) for _, sums in runs) / 60
    return Looks(
        still_share=_mean([still(film) for film in films]),
        close_pairs=_mean([close_pairs(film, side[film.role]) for film in films]),
        reversals_per_player_min=_mean([reversals(film) for film in films]) * RATE_HZ * 60,
        hard_share=_mean([hard(film) for film in films]),
        free_first_pass_lost=_share(V[c.V_FREE_LOST], V[c.V_FREE]),
        first_pass_lost=_share(V[c.V_FIRST_LOST], V[c.V_FIRST]),
        one_minus_success=_share(S[c.S_PASSES] - S[c.S_COMPLETED], S[c.S_PASSES]),
        scores_per_min=float(V[c.V_SCORES]) / minutes,
        ball_jump_m=max(ball_jump(film) for film in films),
    )


def still(film: Recording) -> np.ndarray:
    """Whether each player without the ball stands: (moments without the ball,)."""
    with_ball = (np.arange(film.players_m.shape[1]) == film.holders[1:, :, None]).any(axis=1)
    return (_size(velocity(film)) < STILL_MPS)[~with_ball]


def close_pairs(film: Recording, side: np.ndarray) -> np.ndarray:
    """Pairs of one side within 2 m: (frames,). side: (frames, players)."""
    gap = _size(film.players_m[:, :, None, :] - film.players_m[:, None, :, :])
    close = (gap < CLOSE_M) & (side[:, :, None] == side[:, None, :])
    return (close.sum(axis=(1, 2)) - film.players_m.shape[1]) / 2


def reversals(film: Recording) -> np.ndarray:
    """Whether each player turns back on himself while running: (frames - 2, players)."""
    speed = velocity(film)
    fast = _size(speed) > TURN_MPS
    dot = (speed[1:] * speed[:-1]).sum(axis=2)
    return (dot < 0) & fast[1:] & fast[:-1]


def hard(film: Recording) -> np.ndarray:
    """Whether each player's velocity changes faster than 6 m/s2: (frames - 2, players)."""
    return _size(np.diff(velocity(film), axis=0)) * RATE_HZ > HARD_MPS2


def ball_jump(film: Recording) -> float:
    """The longest way of any ball from one frame to the next, height included, m."""
    return float(np.linalg.norm(np.diff(film.balls_m, axis=0), axis=2).max())


def velocity(film: Recording) -> np.ndarray:
    """Mean velocity from each frame to the next, m/s: (frames - 1, players, 2)."""
    return np.diff(film.players_m, axis=0) * RATE_HZ


def _size(vectors: np.ndarray) -> np.ndarray:
    return np.hypot(vectors[..., 0], vectors[..., 1])


def _mean(parts: Sequence[np.ndarray]) -> float:
    return float(np.concatenate([part.ravel() for part in parts]).mean())


def _share(part: float, whole: float) -> float:
    return float(part) / max(1.0, float(whole))
