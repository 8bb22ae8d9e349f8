"""The parts of the simulator: a phase left out is really left out, and only while it is."""

import numpy as np
import pytest
from shipped_practices import shipped

from benchmarks.kernel import moved
from benchmarks.parts import by_step, instead, rebuilt
from turnout.play.kernel import columns as c
from turnout.play.simulate import Sums, simulate


def played() -> Sums:
    return simulate(shipped("breakwater"), age=12, level="settled", seed=3, seconds=30.0)


def test_cost_by_step_is_split_exactly_when_it_is_a_plus_b_over_step() -> None:
    a, b = 2e-5, 4e-7
    measured = {step: 1 / (a + b / step) for step in (0.0125, 0.025, 0.05)}
    assert by_step(measured) == pytest.approx((a, b))  # type: ignore[arg-type]


def test_a_phase_is_left_out_and_comes_back() -> None:
    before = played()
    with instead(rebuilt("move")):
        frozen = played()
    assert frozen.S[:, c.S_DISTANCE].sum() == 0.0 < before.S[:, c.S_DISTANCE].sum()
    assert np.array_equal(played().S, before.S)


def test_a_phase_there_is_not_is_refused() -> None:
    with pytest.raises(KeyError):
        rebuilt("juggle")


def test_the_yardstick_moves_every_run() -> None:
    assert moved(runs=4, players=3, step_s=0.1, steps=5) > 0
