"""Heat, cold and thunder, at the edges of their bands."""

import pytest

from turnout.care.weather import air_heat, cold, heat_band, thunder_clear_min, wbgt_estimate_c, wind_chill_c


def test_damp_air_is_worse_than_dry_and_hot_than_mild():
    assert wbgt_estimate_c(air_c=28, humidity_pct=80) > wbgt_estimate_c(air_c=28, humidity_pct=30)
    assert wbgt_estimate_c(air_c=32, humidity_pct=50) > wbgt_estimate_c(air_c=20, humidity_pct=50)
    with pytest.raises(ValueError, match="0 to 100"):
        wbgt_estimate_c(air_c=20, humidity_pct=0.6 * 1000)


@pytest.mark.parametrize(
    ("wbgt_c", "country", "band"),
    [
        (29.9, "England", "red"),
        (30.0, "England", "black"),
        (30.0, "USA", "amber"),
        (33.3, "USA", "black"),
        (24.6, "Elsewhere", "amber"),
        (27.3, "Australia", "orange"),
    ],
)
def test_bands_belong_to_a_country(wbgt_c, country, band):
    assert heat_band(wbgt_c=wbgt_c, country=country) == band


@pytest.mark.parametrize(
    ("air_c", "country", "said"),
    [
        (30.0, "England", "go"),
        (30.5, "England", "STOP"),
        (30.5, "USA", "STOP"),
        (25.9, "Australia", "go"),
        (26.0, "Australia", "CAUTION"),
        (32.0, "Australia", "CAUTION"),
        (32.1, "Australia", "STOP"),
    ],
)
def test_air_stops_above_the_limit(air_c, country, said):
    assert air_heat(air_c=air_c, country=country) == said


def test_wind_makes_cold_colder_and_calm_or_mild_air_stays_what_it_is():
    assert wind_chill_c(air_c=-5, wind_kmph=40) < wind_chill_c(air_c=-5, wind_kmph=10) < -5
    assert wind_chill_c(air_c=-5, wind_kmph=3) == -5
    assert wind_chill_c(air_c=15, wind_kmph=40) == 15


@pytest.mark.parametrize(("chill_c", "said"), [(0.0, "go"), (-0.1, "CAUTION"), (-10.0, "CAUTION"), (-10.1, "STOP")])
def test_cold(chill_c, said):
    assert cold(chill_c=chill_c) == said


def test_each_thunder_starts_the_wait_again():
    assert thunder_clear_min([]) is None
    assert thunder_clear_min([5]) == 35
    assert thunder_clear_min([12, 0, 41]) == 71
