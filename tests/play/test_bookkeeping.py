"""What is counted adds up, the ball never jumps, nothing stands still for ever, restarts are walked."""

from itertools import pairwise

import numpy as np
import pytest
from shipped_practices import KEYS, shipped

from turnout.play.kernel import columns as c
from turnout.play.simulate import events_of, record, simulate

AGE, LEVEL = 12, "settled"


@pytest.mark.parametrize("key", KEYS)
def test_ends_by_cause_sum_to_all_spells(key: str) -> None:
    sums = simulate(shipped(key), age=AGE, level=LEVEL, seed=11, seconds=1200)
    spells = sums.V[:, c.V_SPELLS]
    assert spells.sum() > 50
    assert np.array_equal(sums.E[:, : c.STOPPED].sum(axis=1), spells)
    assert sums.E[:, c.STOPPED].sum() == 0
    assert np.array_equal(sums.H.sum(axis=1), spells)
    runs = np.arange(c.RUN_CAP + 1)
    assert np.array_equal((sums.H * runs).sum(axis=1), sums.V[:, c.V_RUN_SUM])


@pytest.mark.parametrize("key", KEYS)
def test_counts_agree_with_the_log(key: str) -> None:
    sums = simulate(shipped(key), age=AGE, level=LEVEL, seed=12, seconds=600, log=True)
    events = events_of(sums.log)
    assert sum(e.kind == "pass" for e in events) == sums.S[:, c.S_PASSES].sum()
    assert sum(e.kind == "control" and e.other >= 0 for e in events) == sums.S[:, c.S_COMPLETED].sum()
    assert sum(e.kind == "score" for e in events) == sums.V[:, c.V_SCORES].sum()
    assert all(later.t_s >= earlier.t_s - 0.026 for earlier, later in pairwise(events))


@pytest.mark.parametrize("key", KEYS)
def test_the_ball_never_jumps(key: str) -> None:
    film = record(shipped(key), age=AGE, level=LEVEL, seed=13, window=(0, 240), rate_hz=40)
    step_m = np.hypot(*np.diff(film.ball_m, axis=0).T)
    assert step_m.max() <= 15.0 * 0.025  # no kick of an under-12 is faster than 15 m/s
    body_m = np.hypot(*np.moveaxis(np.diff(film.players_m, axis=0), 2, 0))
    assert body_m.max() <= 8.0 * 0.025


@pytest.mark.parametrize("key", KEYS)
def test_something_always_happens_within_twelve_seconds(key: str) -> None:
    for seed in range(40):
        log = simulate(shipped(key), age=AGE, level=LEVEL, seed=seed, seconds=240, log=True).log
        times = [0.0, *log[:, 0], 240.0]
        assert max(np.diff(times)) < 12.0, seed


def test_a_restart_is_walked_to() -> None:
    film = record(shipped("breakwater"), age=AGE, level=LEVEL, seed=3, window=(0, 240), rate_hz=10)
    stops = [e for e in film.events if e.kind == "stop" and e.t_s > 1]
    starts = [e for e in film.events if e.kind == "start"]
    assert stops
    for stop in stops:
        start = next((s for s in starts if s.t_s > stop.t_s), None)
        if start is None:
            continue
        frame = int(start.t_s * 10)
        taker = film.players_m[frame, start.player]
        assert np.hypot(*(taker - film.ball_m[frame])) < 1.0
        assert start.t_s - stop.t_s > 0.3


def test_a_recording_repeats_the_run_it_was_found_in() -> None:
    setup = shipped("harbour-square")
    log = events_of(simulate(setup, age=AGE, level=LEVEL, seed=9, seconds=90, log=True).log)
    film = record(setup, age=AGE, level=LEVEL, seed=9, window=(30, 60))
    assert film.events == tuple(e for e in log if 30 <= e.t_s <= 60)
    assert film.t_s[0] == pytest.approx(30) and film.t_s[-1] == pytest.approx(60)


@pytest.mark.parametrize("key", KEYS)
def test_bodies_do_not_pass_through_one_another(key: str) -> None:
    film = record(shipped(key), age=AGE, level=LEVEL, seed=3, window=(0, 600), rate_hz=10)
    gap = film.players_m[:, :, None] - film.players_m[:, None]
    apart_m = np.hypot(gap[..., 0], gap[..., 1])
    players = np.arange(apart_m.shape[1])
    apart_m[:, players, players] = np.inf
    assert (apart_m.min(axis=(1, 2)) < 0.3).mean() < 0.005  # a collision lasts a frame at most
