"""The surface tonight is played on reaches the simulator."""

from dataclasses import replace

from shipped_practices import shipped

from turnout.evening.fits import fit_evening
from turnout.evening.forecasts import forecast_setup
from turnout.evening.load import load_evening
from turnout.evening.replays import recorded


def test_the_surface_is_part_of_the_question(tmp_path, monkeypatch) -> None:
    monkeypatch.setenv("TURNOUT_CACHE", str(tmp_path))
    asked = {"age": 12, "level": "settled", "seed": 3, "seconds": 600.0, "block_s": 120.0}
    hall, wet = (forecast_setup(shipped("harbour-square"), surface=name, **asked) for name in ("hall", "wet grass"))
    assert hall.figure("passes_per_min") != wet.figure("passes_per_min")
    assert replace(hall) == forecast_setup(shipped("harbour-square"), surface="hall", **asked)


def test_the_replay_is_played_on_tonights_surface(tmp_path, monkeypatch) -> None:
    monkeypatch.setenv("TURNOUT_CACHE", str(tmp_path))
    evening = load_evening(None)
    answers = [fit_evening(replace(evening, tonight=replace(evening.tonight, surface=name))) for name in ("3G", "hall")]
    grass, hall = (recorded(answer, answer.fitted.parts[0]) for answer in answers)
    assert grass.ball_m.shape != hall.ball_m.shape or (grass.ball_m != hall.ball_m).any()
