"""Another program's ball and state, on places one can see."""

import pytest

from turnout.study.outside.other_rules import holder_sees, stepped_roll_m


def test_a_stepped_ball_runs_the_sum_of_its_steps():
    steps = [10 * 0.1 * 0.94**step for step in range(2000)]
    assert stepped_roll_m(speed_mps=10, keeps=0.94, step_s=0.1) == pytest.approx(sum(steps))
    with pytest.raises(ValueError, match="keeps"):
        stepped_roll_m(speed_mps=10, keeps=1, step_s=0.1)


def test_three_against_two_on_a_cross():
    distances, angles = holder_sees(keepers=[(0, 0), (4, 0), (0, 3)], takers=[(2, 0), (0, -5)])
    assert distances == (0, 4, 3, 2, 5, 4, 3, 2, 5, 2, pytest.approx(13**0.5))
    assert angles == pytest.approx((0, 90))
