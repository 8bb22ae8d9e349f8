"""What a country offers an age on a date, and the full pitch."""

from datetime import date

import pytest

from turnout.club.formats import formats, match_format
from turnout.club.pitch import LONGER, pitch_faults


def sides(age, on, country="England"):
    found = match_format(age=age, on=on, country=country)
    return found and found.sides


def test_the_tables_change_on_the_first_of_july():
    assert sides(11, date(2026, 6, 30)) == "9v9" and sides(11, date(2026, 7, 1)) == "7v7"
    assert sides(7, date(2026, 6, 30)) == "5v5" and sides(7, date(2026, 7, 1)) == "3v3"


def test_a_row_carries_the_pitch_and_who_says_so():
    row = match_format(age=7, on=date(2026, 9, 5))
    assert (row.length_m, row.width_m, row.goal_width_m, row.ball, row.reference) == (15, 10, 1.2, "3", "fa-3v3")
    assert not row.check and match_format(age=9, on=date(2026, 9, 5)).check
    old = match_format(age=9, on=date(2020, 9, 5))
    assert (old.sides, old.ball, old.minutes) == ("7v7", None, None)


def test_nothing_is_offered_below_the_table_or_before_it():
    assert sides(5, date(2026, 9, 5)) is None
    assert sides(9, date(2001, 9, 5)) is None
    assert sides(9, date(2026, 9, 5), "Atlantis") is None


@pytest.mark.parametrize(
    ("country", "age", "offered"),
    [("Germany", 8, "3v3 or 5v5"), ("Netherlands", 12, "8v8"), ("Netherlands", 15, "11v11"), ("USA", 9, "7v7")],
)
def test_other_countries(country, age, offered):
    assert sides(age, date(2026, 9, 5), country) == offered


def test_no_two_rows_of_a_country_overlap():
    for one in formats():
        for other in formats():
            same = one.country == other.country and one is not other
            ages = one.ages[0] <= other.ages[1] and other.ages[0] <= one.ages[1]
            dates = one.valid_from <= (other.valid_to or date.max) and other.valid_from <= (one.valid_to or date.max)
            assert not (same and ages and dates), (one, other)


def test_a_full_pitch_by_the_laws():
    assert pitch_faults(touchline_m=105, goal_line_m=68) == ()
    assert pitch_faults(touchline_m=90, goal_line_m=90) == (LONGER,)
    assert len(pitch_faults(touchline_m=80, goal_line_m=95)) == 3
