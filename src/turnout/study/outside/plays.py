"""What is simulated for a row, and one run of it: sums, log and frames under one seed."""

from dataclasses import dataclass
from functools import cached_property
from typing import Literal

import numpy as np

from turnout.play.abilities import squad_abilities
from turnout.play.kernel import columns as c
from turnout.play.kernel.weights import TABLE, weights
from turnout.play.recording import Recording
from turnout.play.scene import scene_of
from turnout.play.simulate import Sums, record, simulate
from turnout.practice.setup import Setup
from turnout.study.many import run_seed
from turnout.study.outside.games import GAMES, game_setup

FILM_HZ = 10.0
QUESTION = 3  # the outside rows' own block of run seeds
_SIDES = {0: "amber", 1: "blue", None: "everyone's"}
_SIGNS = {"set": "=", "times": "x"}


@dataclass(frozen=True)
class Change:
    """An ability of one side (0 amber, 1 blue, None both) that is set or multiplied; `column` of A by its name."""

    column: str
    how: Literal["set", "times"]
    by: float
    side: int | None = None


@dataclass(frozen=True)
class Play:
    """A game at numbers, size, age and level; what is altered in it. The same play is simulated once per seed.

    Keepers, where the game has them, come on top of the numbers.
    """

    game: str
    amber: int
    blue: int
    size_m: tuple[float, float]  # across, up the page
    age: int
    level: str = "settled"
    neutral: int = 0
    more: tuple[str, ...] = ()  # further sentences
    levels: tuple[tuple[int | None, str, str], ...] = ()  # side or both, capability, level
    changes: tuple[Change, ...] = ()
    weights: tuple[tuple[str, float], ...] = ()
    seconds: float = 300.0

    @property
    def setup(self) -> Setup:
        return game_setup(
            self.game, amber=self.amber, blue=self.blue, neutral=self.neutral, size_m=self.size_m, more=self.more
        )

    def says(self) -> str:
        """The play in a few words."""
        across, up = (f"{metres:.3g}" for metres in self.size_m)
        floaters = f" + {self.neutral}" if self.neutral else ""
        altered = [f"{_SIDES[side]} {capability} {level}" for side, capability, level in self.levels]
        altered += [f"{_SIDES[one.side]} {one.column} {_SIGNS[one.how]} {one.by:g}" for one in self.changes]
        altered += [f"{name} = {value:g}" for name, value in self.weights]
        more = [sentence.rstrip(".") for sentence in self.more] + altered
        keepers = " + keepers" if GAMES[self.game].keepers else ""
        who = f"{self.game} {self.amber}v{self.blue}{keepers}{floaters}"
        return ", ".join([who, f"{up} x {across} m", f"U{self.age} {self.level}", *more])


@dataclass(frozen=True, eq=False)
class Run:
    """One play under one seed. `W` are the weights it is played with, `A` the abilities (players, A_COLUMNS)."""

    play: Play
    setup: Setup
    seed: int
    seconds: float
    W: np.ndarray
    A: np.ndarray
    sums: Sums

    @cached_property
    def film(self) -> Recording:
        """The frames of the whole run, ten a second."""
        return record(
            self.setup, age=self.play.age, level=self.play.level, seed=self.seed, window=(0.0, self.seconds - 0.5),
            rate_hz=FILM_HZ, W=self.W, A=self.A,
        )  # fmt: skip

    @property
    def minutes(self) -> float:
        return float(self.sums.Q[c.Q_TIME]) / 60

    @cached_property
    def side(self) -> np.ndarray:
        """Side of every player (players,): 0 amber, 1 blue, 2 and more neutral."""
        scene = scene_of(self.setup)
        return scene.R[scene.roles, c.R_SIDE].astype(int)

    @cached_property
    def aim(self) -> np.ndarray:
        """The way amber attack as a unit vector (2,); (0, 0) where nobody attacks an end."""
        return scene_of(self.setup).aim[0]

    @cached_property
    def keeper(self) -> np.ndarray:
        """Whether a player keeps a goal (players,)."""
        scene = scene_of(self.setup)
        return scene.R[scene.roles, c.R_KEEPS] >= 0


def play_once(play: Play, number: int, *, W: np.ndarray | None = None, share: float = 1.0) -> Run:
    """Simulate a play under the seed of this number for `share` of its seconds; raises TurnoutError."""
    setup, seed, seconds = play.setup, run_seed(QUESTION, number), play.seconds * share
    A = abilities_of(play, seed)
    vector = altered_weights(W, play.weights)
    sums = simulate(setup, age=play.age, level=play.level, seed=seed, seconds=seconds, log=True, W=vector, A=A)
    return Run(play, setup, seed, seconds, vector, A, sums)


def altered_weights(W: np.ndarray | None, changes: tuple[tuple[str, float], ...]) -> np.ndarray:
    """The weights (default: those of the table) with some of them replaced; raises KeyError on an unknown name."""
    vector = weights() if W is None else W.copy()
    names = list(TABLE)
    for name, value in changes:
        if name not in TABLE:
            raise KeyError(name)
        vector[names.index(name)] = value
    return vector


def abilities_of(play: Play, seed: int) -> np.ndarray:
    """Abilities of everybody in a play: drawn around the level, then what the play alters."""
    scene = scene_of(play.setup)
    side = scene.R[scene.roles, c.R_SIDE]
    A = squad_abilities(scene.players, play.age, play.level, seed)
    for which, capability, level in play.levels:
        other = squad_abilities(scene.players, play.age, play.level, seed, **{capability: level})
        meant = np.ones(len(side), dtype=bool) if which is None else side == which
        A[meant] = other[meant]
    for change in play.changes:
        meant = np.ones(len(side), dtype=bool) if change.side is None else side == change.side
        column = getattr(c, change.column)
        A[meant, column] = change.by if change.how == "set" else A[meant, column] * change.by
    return A
