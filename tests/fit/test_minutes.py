"""Minutes: they add up exactly, and the cheapest is the cheapest of all."""

from itertools import product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from toy_practices import end_zones, keep_ball, overload, toy_session

from turnout.fit import prices
from turnout.fit.minutes import can_share_out, least_minutes, share_out, shares
from turnout.session.model import Part


def hour(timings) -> float:
    return sum(timing.minutes + timing.changeover_min for timing in timings)


@settings(max_examples=150, deadline=None)
@given(st.integers(20, 260).map(lambda halves: halves / 2), st.integers(1, 3))
def test_the_hour_adds_up_exactly_or_is_refused(total, count):
    parts = toy_session().parts[:count]
    timings = share_out(parts, total)
    assert (timings is not None) == can_share_out(parts, total)
    if timings is None:
        longest = sum(part.practice.arrange.minutes[1] * prices.LONGEST_SHARE for part in parts) + 3 * (count - 1)
        assert total < least_minutes(parts) or total > longest
        return
    assert hour(timings) == pytest.approx(total, abs=1e-9)
    for part, timing in zip(parts, timings, strict=True):
        low, high = part.practice.arrange.block_minutes
        assert all(low <= minutes <= high for minutes in timing.blocks)
        assert part.practice.arrange.minutes[0] <= timing.minutes
        assert timing.minutes <= part.practice.arrange.minutes[1] * prices.LONGEST_SHARE
    assert all(2 <= timing.changeover_min <= 3 for timing in timings[:-1])
    assert timings[-1].changeover_min == 0


def test_an_odd_total_still_adds_up():
    timings = share_out(toy_session().parts, 52.3)
    assert timings is not None
    assert hour(timings) == pytest.approx(52.3, abs=1e-9)


def test_the_cheapest_is_found_against_trying_everything():
    from turnout.fit.minutes import _asked, _choices

    parts = (Part(keep_ball(), 10), Part(overload(), 14))
    wanted = shares(parts, 30.0)
    every = [
        first.price + second.price
        for (one, first), (two, second) in product(
            _choices(_asked(parts[0]), wanted[0], False), _choices(_asked(parts[1]), wanted[1], True)
        )
        if one + two == 60
    ]
    timings = share_out(parts, 30.0)
    assert timings is not None
    assert sum(timing.price for timing in timings) == pytest.approx(min(every))


def test_blocks_follow_the_clock_of_a_swap():
    (timing,) = share_out((Part(end_zones(), 17),), 17.0) or ()
    assert timing.blocks == (3, 3, 3, 3, 3)
    assert timing.rest_min == 0.5


def test_nothing_shorter_than_the_least_fills():
    parts = toy_session().parts
    assert share_out(parts, least_minutes(parts)) is not None
    assert share_out(parts, least_minutes(parts) - 0.5) is None
