"""What each part of the simulator costs: the rate with one phase left out at a time, and how it grows with the step.

A phase is left out by compiling the run again with an idle function in its place. The play changes too (who does not
look decides on old pictures, who is not told where to go stands), so the parts need not add up to the whole; the passes
a minute still played stand beside. Legs and chasing cannot be left out this way: without them there is no play.

The split by step needs no such surgery: CPU time per simulated second is close to a + b / step; b is what every step
costs (legs, ball, chasing, clocks), a what decisions cost at their own times.
"""

import time
from collections.abc import Iterator
from contextlib import contextmanager
from types import FunctionType
from typing import Any

import numpy as np

from benchmarks.kernel import COUNTS, SECONDS, best, yardstick
from turnout.play.abilities import squad_abilities
from turnout.play.kernel import columns as c
from turnout.play.kernel import playing
from turnout.play.kernel.weights import weights
from turnout.play.simulate import simulate
from turnout.practice.ground import setup_of
from turnout.practice.read import read_practice
from turnout.practice.setup import Setup
from turnout.practice.shelf import practice_files

PHASES = {  # what a coach would call it: the function of kernel/playing.py
    "seeing": "see",
    "support": "support",
    "marking": "mark",
    "clocks": "clocks",
    "bodies_apart": "part_bodies",
}
STEPS_S = (0.0125, 0.025, 0.05)


def run() -> dict[str, Any]:
    """Ten players: the whole, the whole without each phase, and cost per step beside cost per decision."""
    setup = setup_of(read_practice(practice_files()["breakwater"]), COUNTS)
    whole = rate(setup)
    with without("nothing"):
        again = rate(setup)
        figures: dict[str, Any] = {
            "sim_s_per_cpu_s_whole": whole,
            "sim_s_per_cpu_s_whole_compiled_again": again,
            "passes_per_min_whole": passes_per_min(setup),
        }
    for words, name in PHASES.items():
        with without(name):
            left = rate(setup)
            figures[f"passes_per_min_without_{words}"] = passes_per_min(setup)
        figures[f"sim_s_per_cpu_s_without_{words}"] = left
        figures[f"share_of_time_{words}"] = round(1 - again / left, 3)
    a, b = by_step({step_s: rate(setup, weights(DT=step_s)) for step_s in STEPS_S})
    figures["share_of_time_every_step"] = round(b / 0.025 * whole, 3)
    figures["share_of_time_at_decisions"] = round(a * whole, 3)
    return {"figures": figures, "yardstick": {"numpy_movement_step_sim_s_per_cpu_s_10_players": yardstick()}}


def rate(setup: Setup, W: np.ndarray | None = None) -> int:
    """Simulated seconds per CPU second on one core, the best of some rounds."""
    A = squad_abilities(setup.players, 12, "settled", 1)
    simulate(setup, age=12, level="settled", seed=0, seconds=10, W=W, A=A)

    def play() -> None:
        simulate(setup, age=12, level="settled", seed=1, seconds=SECONDS, W=W, A=A)

    return round(SECONDS / best(play, time.process_time))


def passes_per_min(setup: Setup) -> float:
    """How much is still being played."""
    sums = simulate(setup, age=12, level="settled", seed=1, seconds=SECONDS)
    return round(float(sums.S[:, c.S_PASSES].sum()) / SECONDS * 60, 1)


def by_step(rates: dict[float, int]) -> tuple[float, float]:
    """CPU seconds per simulated second as a + b / step, least squares over the measured steps (s): a, b."""
    steps = np.array(list(rates))
    cost = 1.0 / np.array(list(rates.values()))
    b, a = np.polyfit(1.0 / steps, cost, 1)
    return float(a), float(b)


@contextmanager
def without(name: str) -> Iterator[None]:
    """Runs inside are played with one phase idle, or "nothing"; raises KeyError when no such function is called."""
    kept = playing.run
    playing.run = rebuilt(name)  # type: ignore[attr-defined]
    try:
        yield
    finally:
        playing.run = kept  # type: ignore[attr-defined]


def rebuilt(name: str) -> Any:
    """`run`, compiled again with the named function idle; everything it calls elsewhere stays compiled."""
    import numba

    own = {key: part.py_func for key, part in vars(playing).items() if own_kernel(part)}
    if name != "nothing" and not any(name in part.__code__.co_names for part in own.values()):
        raise KeyError(name)
    spoken = {**vars(playing), name: numba.njit(nogil=True, _nrt=False)(idle)}
    for key, part in own.items():
        if key != name:
            fresh = FunctionType(part.__code__, spoken, key, part.__defaults__)
            spoken[key] = numba.jit(**vars(playing)[key].targetoptions)(fresh)
    return spoken["run"]


def own_kernel(part: Any) -> bool:
    """Whether something in kernel/playing.py is a compiled function written there."""
    plain = getattr(part, "py_func", None)
    return plain is not None and plain.__module__ == playing.__name__


def idle(*_: Any) -> None:
    """A phase that does nothing."""
