"""Movement off the ball is worth something: from set starts, with reaction times children have."""

import numpy as np
import pytest

from turnout.play.abilities import abilities
from turnout.play.kernel import columns as c
from turnout.study.frozen import GOAL_GAMES, KEEP_BALLS, Frozen, _compared, frozen


def pays(name: str) -> Frozen:
    return frozen(name, runs=160)


def test_standing_still_costs_in_at_least_four_of_five_keep_balls() -> None:
    found = [pays(name) for name in KEEP_BALLS]
    assert sum(one.pays for one in found) >= 4, [one.why() for one in found]
    assert not any(one.low > 0 for one in found)


@pytest.mark.parametrize("name", GOAL_GAMES)
def test_standing_still_costs_goals(name: str) -> None:
    found = frozen(name, runs=480)
    assert found.pays, found.why()


def test_nobody_reacts_faster_than_children_were_measured() -> None:
    """montes2000: 0.35 to 0.47 s for a foot's reaction, ages 8 to 13."""
    assert all(0.33 <= abilities(age)[c.REACT_S] <= 0.48 for age in (9, 11, 12, 13, 14))


def test_the_paired_change_is_the_change_of_the_ratio() -> None:
    moving = np.array([[10.0, 2.0], [12.0, 2.0], [11.0, 2.0]])
    same, half = _compared("toy", "x", moving, moving), _compared("toy", "x", moving, moving * [0.5, 1.0])
    assert (same.change, same.low, same.high) == (0.0, 0.0, 0.0)
    assert not same.pays
    assert half.change == pytest.approx(-0.5)
    assert half.pays
