"""The interval of a ratio over blocks covers the truth as often as it says."""

import numpy as np
import pytest

from turnout.study.figures import ratio, student90

T90 = {1: 6.314, 2: 2.920, 3: 2.353, 5: 2.015, 10: 1.812, 30: 1.697, 120: 1.658}  # Student's t tables, two-sided 90 %


@pytest.mark.parametrize("freedom", [3, 5, 10, 30, 120])
def test_the_factor_is_the_table_s(freedom: int) -> None:
    assert student90(freedom) == pytest.approx(T90[freedom], rel=0.004)


def test_a_ratio_is_of_sums_not_a_mean_of_ratios() -> None:
    value, _ = ratio(np.array([1.0, 9.0]), np.array([10.0, 10.0]))
    assert value == 0.5
    value, _ = ratio(np.array([1.0, 90.0]), np.array([10.0, 100.0]))
    assert value == pytest.approx(91 / 110)


def test_nothing_counted_is_nothing() -> None:
    assert ratio(np.zeros(4), np.zeros(4)) == (0.0, 0.0)


def test_one_block_knows_no_interval() -> None:
    assert ratio(np.array([3.0]), np.array([6.0]))[1] == float("inf")


@pytest.mark.parametrize("blocks", [8, 20])
def test_ninety_in_a_hundred_intervals_hold(blocks: int) -> None:
    """2,000 made-up evenings: possessions a block vary, each succeeds with a chance of its block's own."""
    dice = np.random.default_rng(4)
    held = 0
    for _ in range(2000):
        under = dice.poisson(22, blocks).astype(float)
        chance = np.clip(dice.normal(0.3, 0.06, blocks), 0, 1)
        top = dice.binomial(under.astype(int), chance).astype(float)
        value, half = ratio(top, under)
        held += abs(value - 0.3) <= half
    assert 0.875 <= held / 2000 <= 0.925
