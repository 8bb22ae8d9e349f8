"""Typed values: read kindly, refused with a way out."""

import pytest

from turnout.evening.values import (
    age_value,
    level_value,
    minutes_value,
    players_range,
    players_value,
    seconds_value,
    seed_value,
)
from turnout.problems import BadInput


def test_good_values():
    assert players_value(" 14 ") == 14
    assert players_range("6-24") == range(6, 25)
    assert players_range("11") == range(11, 12)
    assert players_range("8 to 18") == range(8, 19)
    assert minutes_value("60") == minutes_value("60 min") == 60.0
    assert seconds_value("90 s") == 90.0 and seed_value(" 0 ") == 0
    assert age_value("U12") == age_value("12") == age_value("u12s") == 12
    assert level_value("Settled") == "settled"


@pytest.mark.parametrize("text", ["", "0", "-3", "5", "25", "1e1", "14.5", "fourteen", "999999999999", "٣٣", "14; rm"])
def test_nonsense_turnouts_are_refused(text):
    with pytest.raises(BadInput, match="from 6 to 24"):
        players_value(text)


def test_the_nearest_turnout_is_offered():
    with pytest.raises(BadInput) as caught:
        players_value("31")
    assert caught.value.problems[0].nearest == "24"


@pytest.mark.parametrize("text", ["24-6", "6-99", "6-", "a-b"])
def test_nonsense_ranges_are_refused(text):
    with pytest.raises(BadInput):
        players_range(text)


@pytest.mark.parametrize("text", ["", "-1", "1.5", "abc", "2147483648", "7 s"])
def test_nonsense_seeds_are_refused(text):
    with pytest.raises(BadInput, match="a whole number from 0 to 2147483647"):
        seed_value(text)


@pytest.mark.parametrize("text", ["", "nan", "inf", "0", "9.9", "1000", "-60", "an hour", "60 s", "60 hours"])
def test_nonsense_minutes_are_refused(text):
    with pytest.raises(BadInput, match="minutes"):
        minutes_value(text)


def test_a_level_spelled_wrong_gets_the_nearest():
    with pytest.raises(BadInput) as caught:
        level_value("setled")
    assert caught.value.problems[0].nearest == "settled"


@pytest.mark.parametrize("text", ["U99", "adults", "", "U5"])
def test_nonsense_ages_are_refused(text):
    with pytest.raises(BadInput, match="U12"):
        age_value(text)
