"""Run many blocks of a setup: one seed each, any number of threads, the same answer."""

import os
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from itertools import islice

import numpy as np

from turnout.play.simulate import Sums, simulate
from turnout.practice.setup import Setup

BLOCK_SEEDS = 1 << 20  # every question's seed owns a block of run seeds of its own


@dataclass(frozen=True)
class Who:
    """Whose play is simulated: the age group, the squad's level, and on what surface."""

    age: int = 12
    level: str = "settled"
    surface: str = "3G"
    sex: str = "boys"


def run_seed(seed: int, number: int) -> int:
    """The seed of one run: blocks of different question seeds do not overlap."""
    return seed * BLOCK_SEEDS + number


def many(
    setup: Setup,
    who: Who,
    *,
    block_s: float,
    seed: int,
    first: int,
    number: int,
    threads: int | None = None,
    W: np.ndarray | None = None,
) -> Iterator[Sums]:
    """Blocks `first` to `first + number`, in order of their number whatever the threads."""

    def one(index: int) -> Sums:
        return simulate(
            setup, age=who.age, level=who.level, surface=who.surface, sex=who.sex,
            seed=run_seed(seed, index), seconds=block_s, W=W,
        )  # fmt: skip

    workers = threads or min(8, os.cpu_count() or 1)
    numbers = iter(range(first, first + number))
    with ThreadPoolExecutor(workers) as pool:
        while batch := list(islice(numbers, 4 * workers)):
            yield from pool.map(one, batch)
