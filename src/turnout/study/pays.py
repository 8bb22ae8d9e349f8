"""What a capability, a level, an age, a surface or a shelter is worth: paired runs that differ in one thing.

Every experiment plays a game twice under the same seeds and compares one figure; the claim is the sign a coach would
expect (common practice, no source, unless one is named).
"""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, replace
from typing import Literal

import numpy as np

from turnout.play.abilities import squad_abilities
from turnout.play.kernel import columns as c
from turnout.play.simulate import Sums, simulate
from turnout.practice.setup import Setup
from turnout.study.figures import student90
from turnout.study.frozen import BLOCK_S, frozen_game
from turnout.study.many import run_seed

QUESTION = 9
Outcome = tuple[str, Callable[[Sums], float], Callable[[Sums], float]]
RUNS: Outcome = ("passes in a row", lambda s: s.V[0, c.V_RUN_SUM], lambda s: s.V[0, c.V_SPELLS])
ARRIVE: Outcome = (
    "share of passes that arrive",
    lambda s: s.S[:, c.S_COMPLETED].sum(),
    lambda s: s.S[:, c.S_PASSES].sum(),
)
HELD: Outcome = ("seconds on the ball a pass", lambda s: s.S[:, c.S_HELD_S].sum(), lambda s: s.S[:, c.S_PASSES].sum())
FAST: Outcome = (
    "share of metres above 16 km/h",
    lambda s: s.S[:, c.S_FAST].sum(),
    lambda s: s.S[:, c.S_DISTANCE].sum(),
)


@dataclass(frozen=True)
class Variant:
    """How a game is played: age, level of all, levels of the first side's capabilities, surface, abilities scaled."""

    age: int = 12
    level: str = "settled"
    first: tuple[tuple[str, str], ...] = ()
    surface: str = "3G"
    scaled: tuple[tuple[int, float], ...] = ()  # ability column, factor, for everybody
    seconds: float = BLOCK_S


@dataclass(frozen=True)
class Experiment:
    """One question: a game, two variants, a figure, and whether it should rise (+1) or fall (-1) from a to b."""

    name: str
    game: str
    a: Variant
    b: Variant
    outcome: Outcome
    claim: Literal[1, -1] = 1


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
        """The answer in words."""
        one = self.experiment
        return (
            f"{one.name}, {one.game}: {one.outcome[0]} {self.before:.3g} to {self.after:.3g} "
            f"({self.low:+.2g} to {self.high:+.2g}): {self.verdict}"
        )


def paid(experiment: Experiment, *, runs: int = 160, threads: int = 2) -> Paid:
    """Play both variants under the same seeds."""
    setup = frozen_game(experiment.game)
    seeds = [run_seed(QUESTION, number) for number in range(runs)]

    def pair(seed: int) -> tuple[tuple[float, float], tuple[float, float]]:
        _, top, under = experiment.outcome
        first, second = _played(setup, experiment.a, seed), _played(setup, experiment.b, seed)
        return (top(first), under(first)), (top(second), under(second))

    with ThreadPoolExecutor(threads) as pool:
        found = np.array(list(pool.map(pair, seeds)))
    a, b = found[:, 0], found[:, 1]
    before, after = a[:, 0].sum() / a[:, 1].sum(), b[:, 0].sum() / b[:, 1].sum()
    half = _half(a, b)
    return Paid(experiment, float(before), float(after), float(after - before - half), float(after - before + half))


def _half(a: np.ndarray, b: np.ndarray) -> float:
    """Half the 90 % interval of the difference of two ratios, paired, by the jackknife."""
    left_a, left_b = a.sum(0) - a, b.sum(0) - b
    change = left_b[:, 0] / left_b[:, 1] - left_a[:, 0] / left_a[:, 1]
    runs = len(change)
    return student90(runs - 1) * float(np.sqrt((runs - 1) / runs * ((change - change.mean()) ** 2).sum()))


def _played(setup: Setup, variant: Variant, seed: int) -> Sums:
    A = squad_abilities(setup.players, variant.age, variant.level, seed)
    if variant.first:
        better = squad_abilities(setup.players, variant.age, variant.level, seed, **dict(variant.first))
        first = setup.practice.sides[0]
        sides = [group.side for group in setup.practice.groups for _ in range(setup.count(group.key))]
        mine = np.array([side == first for side in sides])
        A[mine] = better[mine]
    for column, factor in variant.scaled:
        A[:, column] *= factor
    return simulate(
        setup, age=variant.age, level=variant.level, seed=seed, seconds=variant.seconds, surface=variant.surface, A=A
    )


def experiments() -> tuple[Experiment, ...]:
    """The questions asked of every model."""
    plain = Variant()
    found = []
    for game in ("4 v 2, 12 m", "harbour-square", "breakwater", "keepers 5 v 5"):
        found += [
            Experiment(f"{worse} to {better}", game, Variant(level=worse), Variant(level=better), ARRIVE)
            for worse, better in (("new", "learning"), ("learning", "settled"), ("settled", "strong"))
        ]
        found += [
            Experiment(f"U{young} to U{old}", game, Variant(age=young), Variant(age=old), ARRIVE)
            for young, old in ((8, 10), (10, 12), (12, 14), (14, 16))
        ]
    for capability in ("technique", "positioning", "scanning", "timing", "disguise"):
        found += [
            Experiment(f"{capability}, new to strong", game, Variant(first=((capability, "new"),)),
                       Variant(first=((capability, "strong"),)), RUNS)
            for game in ("4 v 2, 12 m", "harbour-square")
        ]  # fmt: skip
    found += [
        Experiment("scanning buys thinking time", "harbour-square", Variant(scaled=((c.SCAN, 0.2),)),
                   Variant(scaled=((c.SCAN, 3.0),)), HELD, -1),
        Experiment("long wet grass", "keepers 5 v 5", plain, replace(plain, surface="wet grass"), ARRIVE, -1),
        Experiment("pass weight twice as unsure", "breakwater", plain, Variant(scaled=((c.WEIGHT_SD, 2.0),)), ARRIVE,
                   -1),
        Experiment("tired in a long game", "keepers 5 v 5", plain, Variant(seconds=600.0), FAST, -1),
    ]  # fmt: skip
    return tuple(found)
