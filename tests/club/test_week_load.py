"""The load of a week, by hand."""

import pytest

from turnout.club.load import session_load, week_of


def test_two_days():
    week = week_of([100, 300])
    assert (week.total, week.mean, week.sd, week.monotony, week.strain) == (400, 200, 100, 2, 800)
    assert week_of([100, 300], spread="sample").sd == pytest.approx(20000**0.5)


def test_days_alike_have_neither_monotony_nor_strain():
    week = week_of([0.1] * 7)
    assert (week.sd, week.monotony, week.strain) == (0, None, None)
    assert week.total == pytest.approx(0.7)


@pytest.mark.parametrize(("minutes", "effort"), [(-1, 3), (60, 11), (60, -1)])
def test_what_is_off_the_scale_is_refused(minutes, effort):
    with pytest.raises(ValueError, match="effort is 0 to 10"):
        session_load(minutes=minutes, effort=effort)


def test_one_day_is_no_week():
    with pytest.raises(ValueError, match="at least two days"):
        week_of([300])
