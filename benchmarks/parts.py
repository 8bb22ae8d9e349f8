"""What each part of the simulator costs: the rate with one phase left out at a time, and how it grows with the step.

A phase is left out by compiling the run again with an idle function in its place. The play changes too (who does not
look decides on old pictures, who is not told where to go stands), so the parts need not add up to the whole; the passes
a minute still played stand beside. Legs and chasing cannot be left out this way: without them there is no play.

The split by step needs no such surgery: CPU time per simulated second is close to a + b / step; b is what every step
costs (legs, ball, chasing, clocks), a what decisions cost at their own times.
"""

import time
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from functools import partial
from types import FunctionType
from typing import Any

import numpy as np

from benchmarks.kernel import COUNTS, ROUNDS, SECONDS, yardstick
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
    "shape": "take_shape",
    "clocks": "clocks",
    "bodies_apart": "part_bodies",
}
STEPS_S = (0.0125, 0.025, 0.05)


def run() -> dict[str, Any]:
    """Ten players: the whole, the whole without each phase, and cost per step beside cost per decision."""
    setup = setup_of(read_practice(practice_files()["breakwater"]), COUNTS)
    runs = {"nothing": rebuilt("nothing"), **{words: rebuilt(name) for words, name in PHASES.items()}}
    rates = in_turns({words: partial(played_by, made, setup) for words, made in runs.items()})
    steps = in_turns({step_s: partial(play, setup, weights(DT=step_s)) for step_s in STEPS_S})
    a, b = by_step(steps)
    figures: dict[str, Any] = {"sim_s_per_cpu_s_whole": round(steps[0.025])}
    for words, rate in rates.items():
        figures[f"sim_s_per_cpu_s_without_{words}"] = round(rate)
        figures[f"share_of_time_{words}"] = round(1 - rates["nothing"] / rate, 3)
        with instead(runs[words]):
            figures[f"passes_per_min_without_{words}"] = passes_per_min(setup)
    figures["share_of_time_every_step"] = round(b / 0.025 / (a + b / 0.025), 3)
    figures["share_of_time_at_decisions"] = round(a / (a + b / 0.025), 3)
    return {"figures": figures, "yardstick": {"numpy_movement_step_sim_s_per_cpu_s_10_players": yardstick()}}


def in_turns(plays: Mapping[Any, Callable[[], None]]) -> dict[Any, float]:
    """Simulated seconds per CPU second of each, the best of some rounds taken in turns, so that all share the noise."""
    least = dict.fromkeys(plays, float("inf"))
    for _ in range(ROUNDS):
        for name, once in plays.items():
            began = time.process_time()
            once()
            least[name] = min(least[name], time.process_time() - began)
    return {name: SECONDS / seconds for name, seconds in least.items()}


def play(setup: Setup, W: np.ndarray | None = None) -> None:
    """One run of so many seconds."""
    simulate(setup, age=12, level="settled", seed=1, seconds=SECONDS, W=W)


def played_by(made: Any, setup: Setup) -> None:
    """One run by another kernel."""
    with instead(made):
        play(setup)


def passes_per_min(setup: Setup) -> float:
    """How much is still being played."""
    sums = simulate(setup, age=12, level="settled", seed=1, seconds=SECONDS)
    return round(float(sums.S[:, c.S_PASSES].sum()) / SECONDS * 60, 1)


def by_step(rates: Mapping[float, float]) -> tuple[float, float]:
    """CPU seconds per simulated second as a + b / step, least squares over the measured steps (s): a, b."""
    steps = np.array(list(rates))
    cost = 1.0 / np.array(list(rates.values()))
    b, a = np.polyfit(1.0 / steps, cost, 1)
    return float(a), float(b)


@contextmanager
def instead(made: Any) -> Iterator[None]:
    """Runs inside are played by another kernel."""
    kept = playing.run
    playing.run = made  # type: ignore[attr-defined]
    try:
        yield
    finally:
        playing.run = kept  # type: ignore[attr-defined]


def rebuilt(name: str) -> Any:
    """`run`, compiled again with the named function idle, or "nothing"; all it calls elsewhere stays compiled.

    Raises KeyError when kernel/playing.py calls no such function.
    """
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
