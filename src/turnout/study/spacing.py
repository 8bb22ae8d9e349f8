"""How far the players of a side are from their nearest team-mate while the side has the ball."""

import numpy as np

from turnout.play.recording import Recording
from turnout.play.simulate import record
from turnout.study.looks import sides_of_roles
from turnout.study.many import run_seed
from turnout.study.pays import QUESTION, Variant, abilities_of, asked_game, weights_of

RATE_HZ, RUNS = 2.0, 24


def spacing_m(game: str, variant: Variant, *, runs: int = RUNS) -> float:
    """Metres to the nearest mate of the first side's players, mean over the first runs of the variant."""
    setup = asked_game(game, variant.rules)
    side = sides_of_roles(setup)
    gaps = []
    for number in range(runs):
        seed = run_seed(QUESTION, number)
        A, W = abilities_of(setup, variant, seed), weights_of(variant)
        film = record(setup, age=variant.age, level=variant.level, seed=seed, window=(0.0, variant.seconds),
                      rate_hz=RATE_HZ, A=A, W=W)  # fmt: skip
        gaps.append(nearest_mate_m(film, side))
    return float(np.concatenate(gaps).mean())


def nearest_mate_m(film: Recording, side: np.ndarray) -> np.ndarray:
    """Metres to the nearest mate of every player of side 0 in every frame in which one of them has the ball.

    side: (roles,)
    """
    whose = side[film.role]
    frames = np.flatnonzero(film.holder >= 0)
    frames = frames[whose[frames, film.holder[frames]] == 0]
    found = []
    for frame in frames:
        ours = film.players_m[frame, whose[frame] == 0]
        gap = np.linalg.norm(ours[:, None] - ours[None], axis=2)
        np.fill_diagonal(gap, np.inf)
        found.append(gap.min(1))
    return np.concatenate(found) if found else np.zeros(0)
