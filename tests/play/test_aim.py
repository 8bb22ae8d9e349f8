"""Spread of directions and metres at the target say the same thing three ways."""

from math import atan2, degrees, radians
from random import Random

import pytest

from turnout.play import aim


@pytest.mark.parametrize(("distance_m", "share"), [(8.0, 0.5), (15.0, 0.95), (30.0, 0.8)])
def test_there_and_back(distance_m, share):
    spread = aim.spread_deg(distance_m=distance_m, within_m=1.2, share=share)
    assert aim.share_within(distance_m=distance_m, within_m=1.2, spread_deg=spread) == pytest.approx(share)
    assert aim.within_m(distance_m=distance_m, spread_deg=spread, share=share) == pytest.approx(1.2)


def test_drawn_kicks_fall_within_as_often_as_said():
    draw, edge = Random(2), degrees(atan2(1.0, 12.0))
    inside = sum(abs(draw.gauss(0, 4.0)) <= edge for _ in range(20_000)) / 20_000
    assert aim.share_within(distance_m=12, within_m=1, spread_deg=4) == pytest.approx(inside, abs=0.01)


def test_a_straight_line_is_the_tangent():
    assert aim.within_m(distance_m=10, spread_deg=1, share=0.6827) == pytest.approx(10 * radians(1), rel=1e-3)
