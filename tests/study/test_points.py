"""Scoring as a game: toy tables one can solve in the head, and an outside view of every answer."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from turnout.study.points import best_play, guarded_zones


def test_a_saddle_needs_no_mixing():
    play = best_play([[3, 2], [1, 0]])
    assert (play.attack, play.guard, play.value, play.saddle) == ((1, 0), (0, 1), 2, True)


def test_matching_is_a_half_each():
    play = best_play([[1, 0], [0, 1]])
    assert play.attack == play.guard == (Fraction(1, 2), Fraction(1, 2)) and not play.saddle


def test_a_plan_that_is_always_worse_is_left_alone():
    play = best_play([[1, 0], [0, 1], [-1, -1]])
    assert play.attack[2] == 0 and play.value == Fraction(1, 2)


@given(
    st.integers(1, 4).flatmap(
        lambda columns: st.lists(
            st.lists(st.integers(-3, 3), min_size=columns, max_size=columns), min_size=1, max_size=4
        )
    )
)
def test_neither_side_gains_by_another_plan(gains):
    play = best_play(gains)
    assert sum(play.attack) == sum(play.guard) == 1 and min(*play.attack, *play.guard) >= 0
    rows = [sum(a * b for a, b in zip(row, play.guard, strict=True)) for row in gains]
    columns = [sum(a * b for a, b in zip(column, play.attack, strict=True)) for column in zip(*gains, strict=True)]
    assert max(rows) == play.value == min(columns)


@pytest.mark.parametrize("gains", [[], [[]], [[1, 2], [3]], [[0] * 7]])
def test_what_is_no_table_is_refused(gains):
    with pytest.raises(ValueError, match="plan"):
        best_play(gains)


def test_a_zone_worth_less_than_a_guarded_go_is_never_used():
    zones = guarded_zones([Fraction(1, 2), 3, 3])
    assert zones.used == (1, 2) and zones.attack[0] == zones.guard[0] == 0 and zones.value == Fraction(3, 2)


def test_a_guard_who_stops_half_leaves_a_dear_zone_alone():
    zones = guarded_zones([1, 4], stops=Fraction(1, 2))
    assert zones.used == (1,) and zones.value == 2


@given(
    st.lists(st.integers(1, 9), min_size=1, max_size=4), st.sampled_from([Fraction(1, 3), Fraction(4, 5), Fraction(1)])
)
def test_the_closed_form_agrees_with_the_solver_of_any_table(points, stops):
    gains = [
        [worth * (1 - stops) if at == zone else worth for at in range(len(points))] for zone, worth in enumerate(points)
    ]
    zones = guarded_zones(points, stops=stops)
    assert best_play(gains).value == zones.value
    assert sum(zones.attack) == sum(zones.guard) == 1 and min(zones.guard) >= 0


@pytest.mark.parametrize(("points", "stops"), [([], 1), ([0, 1], 1), ([1], 0), ([1], 2)])
def test_points_out_of_range_are_refused(points, stops):
    with pytest.raises(ValueError, match="worth more than 0"):
        guarded_zones(points, stops=stops)
