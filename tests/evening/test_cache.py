"""A forecast is found again under its key, and only a whole one."""

import pytest

from turnout.evening.cache import forecast_from_plain, forecast_to_plain, keep, recall
from turnout.study.model import Band, Figure, Forecast

FIGURE = Figure(3.1, 2.9, 3.3, "passes", "side", Band(1, 2, 3, 4, 8))
FORECAST = Forecast(
    "busy-middle", 600.0, 7, 20, 180.0, (("passes_in_a_row", FIGURE),), (("neutral", (("touches", 4.0),)),),
    (("cut out", 41), ("out", 12)), True, "stamp",
)  # fmt: skip


def test_what_is_kept_is_found_equal(tmp_path):
    keep("abc", FORECAST, tmp_path)
    assert recall("abc", tmp_path) == FORECAST
    assert recall("abd", tmp_path) is None


def test_plain_form_comes_back_equal():
    assert forecast_from_plain(forecast_to_plain(FORECAST)) == FORECAST


@pytest.mark.parametrize(
    "damage", [b"", b"{", b"[]", b"null", b'{"form": 0}', b'{"form": 1, "key": "abc", "forecast": {}}', b"\xff"]
)
def test_a_damaged_entry_counts_as_none(tmp_path, damage):
    keep("abc", FORECAST, tmp_path)
    (tmp_path / "forecasts" / "abc.json").write_bytes(damage)
    assert recall("abc", tmp_path) is None


def test_an_entry_cut_short_counts_as_none(tmp_path):
    keep("abc", FORECAST, tmp_path)
    path = tmp_path / "forecasts" / "abc.json"
    path.write_bytes(path.read_bytes()[:-20])
    assert recall("abc", tmp_path) is None


def test_an_entry_under_a_wrong_name_counts_as_none(tmp_path):
    keep("abc", FORECAST, tmp_path)
    (tmp_path / "forecasts" / "abc.json").rename(tmp_path / "forecasts" / "xyz.json")
    assert recall("xyz", tmp_path) is None


def test_a_disk_that_refuses_costs_nothing_but_time(tmp_path):
    (tmp_path / "forecasts").write_text("in the way")
    keep("abc", FORECAST, tmp_path)
    assert recall("abc", tmp_path) is None


def test_the_folder_can_be_named(monkeypatch, tmp_path):
    monkeypatch.setenv("TURNOUT_CACHE", str(tmp_path))
    keep("abc", FORECAST)
    assert recall("abc") == FORECAST
    assert [path.name for path in tmp_path.rglob("*.json")] == ["abc.json"]
