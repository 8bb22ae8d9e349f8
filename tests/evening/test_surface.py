"""The surface tonight is played on reaches the simulator."""

from dataclasses import replace

from shipped_practices import shipped
from turnout.evening.forecasts import forecast_setup


def test_the_surface_is_part_of_the_question(tmp_path, monkeypatch) -> None:
    monkeypatch.setenv("TURNOUT_CACHE", str(tmp_path))
    asked = {"age": 12, "level": "settled", "seed": 3, "seconds": 600.0, "block_s": 120.0}
    hall, wet = (forecast_setup(shipped("harbour-square"), surface=name, **asked) for name in ("hall", "wet grass"))
    assert hall.figure("passes_per_min") != wet.figure("passes_per_min")
    assert replace(hall) == forecast_setup(shipped("harbour-square"), surface="hall", **asked)
