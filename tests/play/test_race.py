"""Races for a ball: sums, order and limits beside the worked outcomes of the evidence."""

import pytest

from turnout.evidence import Unknown
from turnout.play.race import control_rate_per_s, mean_control_s, race_shares

RATE = 4.3


def test_shares_are_of_one_ball():
    shares = race_shares(lateness_s=(0.1, 0.4, -0.2), rates_per_s=(RATE, RATE, 2.0))
    assert sum(shares) == pytest.approx(1) and min(shares) > 0
    assert shares[0] > shares[1]


def test_at_the_same_time_shares_go_by_rates():
    assert race_shares(lateness_s=(0.3, 0.3), rates_per_s=(1.0, 3.0)) == pytest.approx((0.25, 0.75))


def test_who_is_far_too_late_gets_nothing_and_alone_everything():
    assert race_shares(lateness_s=(0.0, 30.0), rates_per_s=(RATE, RATE))[1] < 1e-9
    assert race_shares(lateness_s=(2.0,), rates_per_s=(RATE,)) == pytest.approx((1.0,))


def test_coming_later_costs_about_the_delay():
    standing, late = mean_control_s(rate_per_s=RATE), mean_control_s(lateness_s=5.0, rate_per_s=RATE)
    assert standing == pytest.approx(1 / RATE, rel=1e-4)
    assert 4.5 < late - standing < 5.5


def test_sets_and_roles():
    assert control_rate_per_s() == 4.3 and control_rate_per_s(keeper=True) == pytest.approx(12.9)
    assert control_rate_per_s(setting="B", defends=True) == pytest.approx(3.99 * 1.72)
    assert control_rate_per_s(setting="A", defends=True) == 4.3
    with pytest.raises(Unknown):
        control_rate_per_s(setting="C")


def test_a_ball_nobody_can_control_is_refused():
    with pytest.raises(ValueError, match="every rate is 0"):
        race_shares(lateness_s=(0.0, 1.0), rates_per_s=(0.0, 0.0))
