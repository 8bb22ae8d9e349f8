"""How fast the simulator plays: simulated seconds per CPU second, beside plain vectorised movement steps."""

import time
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import numpy as np

from turnout.play.abilities import squad_abilities
from turnout.play.simulate import simulate
from turnout.practice.ground import setup_of
from turnout.practice.read import read_practice
from turnout.practice.setup import Setup
from turnout.practice.shelf import practice_files
from turnout.study.many import Who, many

SECONDS, ROUNDS = 300.0, 6
COUNTS = {"amber": 4, "blue": 4, "neutral": 2}


def run() -> dict[str, Any]:
    """Rates for 6, 10, 13 and 22 players on one core, for ten on two threads, uncompiled cost left to the tests."""
    ten = setup_of(read_practice(practice_files()["breakwater"]), COUNTS)
    figures: dict[str, Any] = {
        "sim_s_per_cpu_s_6_players": rate(shipped("gull-square")),
        "sim_s_per_cpu_s_10_players": rate(ten),
        "sim_s_per_cpu_s_13_players": rate(shipped("harbour-square")),
        "sim_s_per_cpu_s_22_players": rate(twenty_two()),
    }
    figures["cost_of_22_over_10_players"] = round(
        figures["sim_s_per_cpu_s_10_players"] / figures["sim_s_per_cpu_s_22_players"], 2
    )
    figures["two_threads_over_one"] = round(threads(ten, 2) / threads(ten, 1), 2)
    yard, crowd = yardstick(), all_runs_at_once()
    figures["times_the_yardstick"] = round(figures["sim_s_per_cpu_s_10_players"] / yard, 1)
    figures["times_all_runs_at_once"] = round(figures["sim_s_per_cpu_s_10_players"] / crowd, 2)
    yardsticks = {
        "numpy_movement_step_sim_s_per_cpu_s_10_players": yard,
        "numpy_all_runs_at_once_0.1_s_steps_sim_s_per_cpu_s_10_players": crowd,
    }
    return {"figures": figures, "yardstick": yardsticks}


def shipped(key: str) -> Setup:
    """A shipped practice as designed."""
    return setup_of(read_practice(practice_files()[key]))


def twenty_two() -> Setup:
    """The end-zone game with eleven a side; its ranges are widened for the measurement only."""
    practice = read_practice(practice_files()["breakwater"])
    groups = tuple(replace(group, high=11) for group in practice.groups)
    return setup_of(replace(practice, groups=groups), {"amber": 11, "blue": 11, "neutral": 0}, (40.0, 55.0))


def rate(setup: Setup) -> int:
    """Simulated seconds per CPU second on one core, the best of some rounds."""
    A = squad_abilities(setup.players, 12, "settled", 1)
    simulate(setup, age=12, level="settled", seed=0, seconds=10, A=A)

    def play() -> None:
        for seed in range(4):
            simulate(setup, age=12, level="settled", seed=seed, seconds=SECONDS, A=A)

    return round(4 * SECONDS / best(play, time.process_time))


def threads(setup: Setup, number: int) -> float:
    """Simulated seconds per second of the clock on so many threads."""

    def play() -> None:
        list(many(setup, Who(), block_s=SECONDS, seed=1, first=0, number=16, threads=number))

    return 16 * SECONDS / best(play, time.perf_counter)


def best(work: Callable[[], None], clock: Callable[[], float]) -> float:
    """The least time of some rounds: what the machine can do when nobody else is on it."""
    times = []
    for _ in range(ROUNDS):
        began = clock()
        work()
        times.append(clock() - began)
    return min(times)


def yardstick() -> int:
    """The same ten bodies moved by numpy alone at the same step, one run: no ball, no eyes, no rules."""
    return moved(runs=1, players=10, step_s=0.025, steps=4000)


def all_runs_at_once() -> int:
    """The kindest case for numpy: the ten bodies of 512 runs in one array, at steps of 0.1 s, still no decisions."""
    return moved(runs=512, players=10, step_s=0.1, steps=100)


def moved(*, runs: int, players: int, step_s: float, steps: int) -> int:
    """Simulated seconds per CPU second of bodies that run to fixed spots, all runs in one array."""
    shape = (runs, players, 2)
    place, speed = np.zeros(shape), np.zeros(shape)
    target = np.arange(float(np.prod(shape))).reshape(shape) % 20.0

    def play() -> None:
        for _ in range(steps):
            wanted = target - place
            gap = np.sqrt((wanted**2).sum(axis=-1, keepdims=True)) + 1e-9
            push = np.clip((wanted / gap * 5 - speed) / 0.12, -5.5, 5.5)
            speed[:] = speed + push * step_s
            place[:] = place + speed * step_s

    return round(runs * steps * step_s / best(play, time.process_time))
