"""What a capability, a level, an age, a surface or a shelter is worth: paired runs that differ in one thing.

Every experiment plays a game twice under the same seeds and compares one figure; the claim is the sign a coach would
expect (common practice, no source, unless one is named).
"""

from collections.abc import Callable, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Literal

import numpy as np

from turnout.play.abilities import squad_abilities
from turnout.play.kernel import columns as c
from turnout.play.kernel.weights import weights
from turnout.play.physics import GRAVITY_MPS2
from turnout.play.simulate import Sums, simulate
from turnout.play.surfaces import surface
from turnout.practice.ground import setup_of
from turnout.practice.read import read_practice
from turnout.practice.setup import Setup
from turnout.practice.shelf import practice_files
from turnout.study.figures import student90
from turnout.study.frozen import BLOCK_S, GAMES, KEEP, written
from turnout.study.many import run_seed

QUESTION, RUNS = 9, 160
STRIPS = (
    "west strip: strip 4 m inside the west side of pitch", "east strip: strip 4 m inside the east side of pitch",
    "strips: west strip, east strip",
)  # fmt: skip
# games asked about beside those of frozen.py: ground, people, sentences
MORE_GAMES: dict[str, tuple[tuple[str, ...], tuple[str, ...], tuple[str, ...]]] = {
    "4 v 4, side strips": (
        ("pitch: rectangle 24 x 20 m", *STRIPS), ("amber: 4 in pitch", "blue: 4 in pitch"),
        ("Play starts with a side.", "A side scores 1 for completing 6 passes in a row.",
         "When the ball goes out, the other side starts."),
    ),
    "4 v 3, side strips": (
        ("pitch: rectangle 20 x 14 m", *STRIPS), ("amber: 4 in pitch", "blue: 3 in pitch"), KEEP,
    ),
}  # fmt: skip


@dataclass(frozen=True)
class Variant:
    """How a game is played.

    age, level: of everybody · first: capabilities of the first side at levels of their own · scaled: ability columns
    times a factor, of everybody · first_scaled: of the first side · weights: of the simulator · rules: sentences
    added to a game written here · since_s, seconds: which part of the run counts
    """

    age: int = 12
    level: str = "settled"
    first: tuple[tuple[str, str], ...] = ()
    surface: str = "3G"
    scaled: tuple[tuple[int, float], ...] = ()
    first_scaled: tuple[tuple[int, float], ...] = ()
    weights: tuple[tuple[str, float], ...] = ()
    rules: tuple[str, ...] = ()
    since_s: float = 0.0
    seconds: float = BLOCK_S


Counted = Callable[[Sums, np.ndarray], tuple[float, ...]]


@dataclass(frozen=True)
class Outcome:
    """A figure of counts that add up over runs.

    counts: of a run and who is of the first side (players,) · figure: from counts (..., k) to figures (...)
    """

    name: str
    counts: Counted
    figure: Callable[[np.ndarray], np.ndarray] = lambda n: n[..., 0] / n[..., 1]


@dataclass(frozen=True)
class Experiment:
    """One question: a game, two variants, a figure, and whether it should rise (+1) or fall (-1) from a to b.

    guess: why it may come out otherwise, printed where it does · times: as many runs as a plain question, for small
    effects
    """

    name: str
    game: str
    a: Variant
    b: Variant
    outcome: Outcome
    claim: Literal[1, -1] = 1
    guess: str = ""
    times: int = 1


@dataclass(frozen=True)
class Paid:
    """The figure in both variants and the paired change with its 90 % interval."""

    experiment: Experiment
    before: float
    after: float
    low: float
    high: float

    @property
    def verdict(self) -> Literal["clear", "flat", "reversed"]:
        """Whether the change goes the claimed way, the interval clear of zero."""
        low, high = sorted((self.low * self.experiment.claim, self.high * self.experiment.claim))
        return "clear" if low > 0 else "reversed" if high < 0 else "flat"

    def why(self) -> str:
        """The answer in words, with the guess where it is not the expected one."""
        one = self.experiment
        guess = f" ({one.guess})" if one.guess and self.verdict != "clear" else ""
        return (
            f"{one.name}, {one.game}: {one.outcome.name} {self.before:.3g} to {self.after:.3g} "
            f"({self.low:+.2g} to {self.high:+.2g}): {self.verdict}{guess}"
        )


def paid(experiment: Experiment, *, runs: int = RUNS, threads: int = 2) -> Paid:
    """Play both variants under the same seeds, `runs` blocks each times what the question asks for."""
    game, outcome, runs = experiment.game, experiment.outcome, runs * experiment.times
    a = counts(game, experiment.a, outcome, runs=runs, threads=threads)
    b = counts(game, experiment.b, outcome, runs=runs, threads=threads)
    before, after = outcome.figure(a.sum(0)), outcome.figure(b.sum(0))
    half = jackknife(outcome.figure(left_out(b)) - outcome.figure(left_out(a)))
    change = float(after - before)
    return Paid(experiment, float(before), float(after), change - half, change + half)


def counts(game: str, variant: Variant, outcome: Outcome, *, runs: int, threads: int = 2) -> np.ndarray:
    """What an outcome counts in every run of a variant: (runs, k)."""
    mine = first_side(asked_game(game, variant.rules))
    late = played(game, variant, variant.seconds, runs, threads)
    found = np.array([outcome.counts(sums, mine) for sums in late])
    if not variant.since_s:
        return found
    early = played(game, variant, variant.since_s, runs, threads)
    return found - np.array([outcome.counts(sums, mine) for sums in early])


def left_out(found: np.ndarray) -> np.ndarray:
    """The sum over runs with each run left out in turn: (runs, k) of (runs, k)."""
    return found.sum(0) - found


def jackknife(values: np.ndarray) -> float:
    """Half the 90 % interval of a figure from its values with each run left out."""
    runs = len(values)
    return student90(runs - 1) * float(np.sqrt((runs - 1) / runs * ((values - values.mean()) ** 2).sum()))


@cache
def asked_game(name: str, rules: Sequence[str] = ()) -> Setup:
    """A practice of the shelf or a game written here, by name; KeyError for others and for rules added to the shelf."""
    written_here = {**GAMES, **MORE_GAMES}
    if name not in written_here and not rules:
        return setup_of(read_practice(practice_files()[name]))
    ground, people, sentences = written_here[name]
    return written(ground, people, (*sentences, *rules))


def first_side(setup: Setup) -> np.ndarray:
    """Who plays for the first side (players,)."""
    first = setup.practice.sides[0]
    return np.array([group.side == first for group in setup.practice.groups for _ in range(setup.count(group.key))])


@lru_cache(maxsize=24)
def played(game: str, variant: Variant, seconds: float, runs: int, threads: int) -> tuple[Sums, ...]:
    """Every run of a variant, kept, since many questions share the plain one."""
    setup = asked_game(game, variant.rules)

    def one(number: int) -> Sums:
        return play(setup, variant, run_seed(QUESTION, number), seconds=seconds)

    with ThreadPoolExecutor(threads) as pool:
        return tuple(pool.map(one, range(runs)))


def play(setup: Setup, variant: Variant, seed: int, *, seconds: float, log: bool = False) -> Sums:
    """One run of a variant."""
    A, W = abilities_of(setup, variant, seed), weights_of(variant)
    return simulate(setup, age=variant.age, level=variant.level, seed=seed, seconds=seconds, A=A, W=W, log=log)


def abilities_of(setup: Setup, variant: Variant, seed: int) -> np.ndarray:
    """The abilities of everybody in a variant (players, A_COLUMNS)."""
    A = squad_abilities(setup.players, variant.age, variant.level, seed)
    mine = first_side(setup)
    if variant.first:
        A[mine] = squad_abilities(setup.players, variant.age, variant.level, seed, **dict(variant.first))[mine]
    for column, factor in variant.scaled:
        A[:, column] *= factor
    for column, factor in variant.first_scaled:
        A[mine, column] *= factor
    return A


def weights_of(variant: Variant) -> np.ndarray:
    """The weights of the simulator in a variant: tonight's surface, and those the variant changes."""
    ground = surface(variant.surface)
    slide = ground.friction * GRAVITY_MPS2
    return weights(**{"ROLL": ground.roll_mps2, "SLIDE": slide, "BOUNCE": ground.restitution, **dict(variant.weights)})


def _v(column: int, side: int | slice) -> Callable[[Sums], float]:
    return lambda sums: float(np.sum(sums.V[side, column]))


def _ratio_of_sides(name: str, top: int, under: int, side: int | slice) -> Outcome:
    over, below = _v(top, side), _v(under, side)
    return Outcome(name, lambda s, _: (over(s), below(s)))


def _minutes(sums: Sums, sides: int = 1) -> float:
    return float(sums.Q[c.Q_TIME]) / 60 * sides


def _free_and_pressed(sums: Sums, _: np.ndarray) -> tuple[float, ...]:
    passes, pressed = sums.S[:, c.S_PASSES].sum(), sums.S[:, c.S_PRESSED].sum()
    arrived, arrived_pressed = sums.S[:, c.S_COMPLETED].sum(), sums.S[:, c.S_PRESSED_OK].sum()
    return arrived - arrived_pressed, passes - pressed, arrived_pressed, pressed


BOTH = slice(0, 2)
ROW = _ratio_of_sides("passes in a row", c.V_RUN_SUM, c.V_SPELLS, 0)
ROWS = _ratio_of_sides("passes in a row, both sides", c.V_RUN_SUM, c.V_SPELLS, BOTH)
POSSESSION = _ratio_of_sides("seconds a possession", c.V_POSSESSION_S, c.V_POSSESSIONS, BOTH)
SCORE = Outcome("scores a minute", lambda s, _: (float(s.V[0, c.V_SCORES]), _minutes(s)))
SCORES = Outcome("scores a minute, both sides", lambda s, _: (float(s.V[:, c.V_SCORES].sum()), _minutes(s)))
ARRIVE = Outcome(
    "share of passes that arrive", lambda s, _: (s.S[:, c.S_COMPLETED].sum(), s.S[:, c.S_PASSES].sum())
)  # fmt: skip
HELD = Outcome("s on the ball a pass", lambda s, mine: (s.S[mine, c.S_HELD_S].sum(), s.S[mine, c.S_PASSES].sum()))
GAP = Outcome(
    "pass success, free less pressed", _free_and_pressed, lambda n: n[..., 0] / n[..., 1] - n[..., 2] / n[..., 3]
)
FAST = Outcome(
    "m above 16 km/h a player and minute", lambda s, _: (s.S[:, c.S_FAST].sum(), s.S[:, c.S_TIME].sum() / 60)
)  # fmt: skip
FAST_SHARE = Outcome(
    "share of metres above 16 km/h", lambda s, _: (s.S[:, c.S_FAST].sum(), s.S[:, c.S_DISTANCE].sum())
)  # fmt: skip
