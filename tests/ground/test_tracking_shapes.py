"""The comparison with tracked play: its sums on invented play whose answers are known. No sample is kept here."""

import json
import runpy
from pathlib import Path

import numpy as np
import pytest

ROOT = Path(__file__).parents[2]


@pytest.fixture(scope="module")
def script() -> dict:
    return runpy.run_path(str(ROOT / "tools" / "tracking-shapes"))


def rolling(slowing: float, start: float = 8.0, seconds: float = 4.0, height: float = 0.11) -> np.ndarray:
    """A ball that rolls to the east and slows down evenly: (frames, 3)."""
    t = np.arange(0.0, seconds, 0.1)
    return np.column_stack([start * t - slowing * t**2 / 2, np.zeros_like(t), np.full_like(t, height)])


def test_equal_samples_overlap_wholly_and_strangers_not_at_all(script: dict) -> None:
    edges = np.arange(0.0, 10.1, 1.0)
    low, high = np.linspace(0.1, 3.9, 50), np.linspace(5.1, 8.9, 50)
    assert script["overlap"](low, low, edges) == pytest.approx(1.0)
    assert script["overlap"](low, high, edges) == 0.0
    assert script["overlap"](low, np.concatenate([low, high]), edges) == pytest.approx(0.5)
    assert script["overlap_of_shape"](low, 2 * low) == pytest.approx(1.0)


def test_a_free_roll_is_found_with_its_deceleration(script: dict) -> None:
    assert script["rolls"](rolling(0.8)) == pytest.approx(0.8)
    assert len(script["rolls"](rolling(0.8))) >= 5


def test_what_flies_turns_stands_or_is_hit_is_no_roll(script: dict) -> None:
    bend = rolling(0.8)
    angle = np.arange(len(bend)) * 0.2
    bend[:, 1] = np.cumsum(np.sin(angle))
    kicked = rolling(20.0, start=30.0, seconds=1.4)
    for ball in (rolling(0.8, height=1.0), bend, rolling(0.0, start=1.0), kicked):
        assert len(script["rolls"](ball)) == 0
    held = rolling(0.8)
    held[:] = np.nan
    assert len(script["rolls"](held)) == 0


def test_speed_and_acceleration_of_an_even_run(script: dict) -> None:
    t = np.arange(0.0, 5.0, 0.1)
    player = np.column_stack([t**2, np.zeros_like(t)])[:, None, :]  # 2 m/s2
    found = script["measures"]([script["Play"](t, player, t, rolling(0.8))])
    assert found["acceleration"] == pytest.approx(2.0)
    assert found["speed"][0] == pytest.approx(0.4)  # the mean of the first four tenths of a second


def test_shares_of_pace_are_of_all_the_time(script: dict) -> None:
    assert script["paces"](np.array([0.1, 1.0, 1.5, 3.0])) == pytest.approx((0.25, 0.5, 0.25, 0.0))


def sample(folder: Path) -> None:
    """Two seconds at 50 Hz in the sample's form, invented: two outfield players, a keeper and a ball."""
    times = [n / 50 for n in range(101)]
    people = [
        {"personId": {"n": number}, "role": {"name": role}, "centroid": [{"time": t, "pos": [speed * t, number]}]}
        for t in times
        for number, role, speed in ((1, "Outfielder", 2.0), (2, "Outfielder", 3.0), (3, "Goalkeeper", 0.0))
    ]
    balls = [{"time": t, "pos": [5 * t, 0.0, 0.1], "play": "In" if t < 1.5 else "Out"} for t in times]
    (folder / "toy.samples.ball").write_text(json.dumps({"samples": {"ball": balls}}))
    (folder / "toy.samples.centroids").write_text(json.dumps({"samples": {"people": people}}))


def test_sample_files_are_read_as_outfield_players_and_a_ball_in_play(script: dict, tmp_path: Path) -> None:
    sample(tmp_path)
    (play,) = script["tracked"](tmp_path)
    assert play.players_m.shape[1] == 2
    assert play.ball_t_s[-1] < 1.5
    found = script["measures"]([play])
    assert sorted({round(float(speed), 6) for speed in found["speed"]}) == [2.0, 3.0]


def test_gaps_are_not_bridged(script: dict) -> None:
    t = np.array([0.0, 0.1, 1.0, 1.1])
    made = script["at_times"](t, t[:, None], np.array([0.05, 0.5, 1.05]))
    assert np.isnan(made[:, 0]).tolist() == [False, True, False]


def test_without_the_sample_it_says_how_to_get_it(
    script: dict, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setitem(script["main"].__globals__, "sample_folder", lambda given: None)
    assert script["main"]([]) == 1
    assert "pip install --no-deps kloppy" in capsys.readouterr().err
