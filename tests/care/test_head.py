"""Heading caps and the way back after a knock."""

from datetime import date

import pytest

from turnout.care import care_box
from turnout.care.head import heading_again_on, heading_cap, return_after_knock


@pytest.mark.parametrize(
    ("age", "headers", "often"), [(9, 0, None), (11, 0, None), (12, 5, "month"), (13, 5, "week"), (16, 10, "week")]
)
def test_caps_in_england(age, headers, often):
    cap = heading_cap(age=age)
    assert (cap.headers, cap.one_session_a) == (headers, often)


def test_where_a_table_says_nothing_there_is_no_cap():
    assert heading_cap(age=17) is None
    assert heading_cap(age=13, country="USA") is None  # a weekly band, no single number
    assert heading_cap(age=10, country="Elsewhere").headers == 0


def test_the_next_day_with_heading():
    month, week = heading_cap(age=12), heading_cap(age=13)
    assert heading_again_on(month, date(2027, 1, 31)) == date(2027, 3, 3)
    assert heading_again_on(week, date(2027, 1, 31)) == date(2027, 2, 7)
    assert heading_again_on(week, None) is None


def test_a_cap_above_none_is_no_stop_in_the_care_box():
    facts = {"players": 12, "adults": 2, "first_aider": True, "run_off_m": 3.0, "outdoors": True, "uses_goals": False}
    shown = [caution.key for caution in care_box(age=13, country="England", **facts)]
    assert "heading" not in shown


def test_back_to_training_before_the_match():
    back = return_after_knock(date(2028, 2, 20))  # a leap year
    assert (back.head_risk_training, back.match) == (date(2028, 3, 6), date(2028, 3, 12))
    assert back.origin.reference == "uk-concussion"
