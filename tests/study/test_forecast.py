"""A forecast says how sure it is, can be stopped, and moves the right way."""

import math

import numpy as np
import pytest
from shipped_practices import KEYS, shipped

from turnout.play.kernel import columns as c
from turnout.play.simulate import simulate
from turnout.practice.ground import setup_of
from turnout.practice.setup import Setup
from turnout.study.figures import CAUSES, RECIPES
from turnout.study.forecast import LEAST_BLOCKS, forecast
from turnout.study.many import BLOCK_SEEDS, Who, many, run_seed
from turnout.study.model import Forecast

PROMISED = {
    "passes_in_a_row", "success", "passes_per_min", "pass_success", "possession_s", "regains_per_side_min",
    "touches_per_player_min", "actions_per_player_min", "distance_m_per_player_min", "fast_share", "rolling_share",
    "waiting_share", "scores_per_side_min",
}  # fmt: skip


def asked(setup: Setup, seconds: float = 1800, **more: object) -> Forecast:
    return forecast(setup, **{"age": 12, "level": "settled", "seconds": seconds, "seed": 3, **more})  # type: ignore[arg-type]


@pytest.mark.parametrize("key", KEYS)
def test_every_promised_figure_with_its_interval_and_its_block(key: str) -> None:
    made = asked(shipped(key))
    assert set(dict(made.figures)) >= PROMISED
    for name, figure in made.figures:
        assert figure.low <= figure.value <= figure.high, name
        band = figure.one_block
        assert band.p5 <= band.p25 <= band.p50 <= band.p75 <= band.p95, name
        assert all(math.isfinite(x) for x in (figure.low, figure.high, band.p5, band.p95)), name
    assert tuple(cause for cause, _ in made.ends) == CAUSES
    assert {role for role, _ in made.by_role} == {group.key for group in shipped(key).practice.groups}


def test_same_question_same_answer_on_any_threads() -> None:
    setup = shipped("harbour-square")
    assert asked(setup, threads=1) == asked(setup, threads=3)


def test_another_seed_another_sample_within_the_interval() -> None:
    setup = shipped("harbour-square")
    first, second = asked(setup, 7200, seed=1), asked(setup, 7200, seed=2)
    assert first.figure("pass_success").value != second.figure("pass_success").value
    for name in ("pass_success", "touches_per_player_min", "distance_m_per_player_min"):
        one, two = first.figure(name), second.figure(name)
        assert abs(one.value - two.value) < 2.5 * (one.high - one.value + two.high - two.value), name


def test_more_time_sharpens_and_the_stop_rule_ends_it() -> None:
    setup = shipped("harbour-square")
    short, long = asked(setup, 1200), asked(setup, 100_000)
    width = [f.figure("success").high - f.figure("success").low for f in (short, long)]
    assert width[1] < width[0]
    assert long.settled and long.simulated_s < 100_000
    assert long.figure("success").high - long.figure("success").value <= 0.03
    assert long.blocks >= LEAST_BLOCKS


def test_it_tells_how_far_it_is_and_keeps_what_it_has_when_stopped() -> None:
    told: list[float] = []
    made = asked(shipped("gull-square"), 36_000, progress=told.append, stop=lambda: len(told) >= 2)
    assert told == sorted(told) and len(told) == 2
    assert 0 < made.simulated_s < 36_000 and not made.settled


def test_waiting_players_are_counted() -> None:
    made = asked(shipped("gull-square"), 600, waiting=2)
    assert made.figure("waiting_share").value == pytest.approx(2 / 8)


def test_run_seeds_of_different_questions_never_meet() -> None:
    assert run_seed(1, BLOCK_SEEDS - 1) < run_seed(2, 0)


def test_figures_are_made_of_what_was_counted() -> None:
    made = asked(shipped("harbour-square"))
    ends = dict(made.ends)
    minutes = made.simulated_s / 60
    assert made.figure("losses_per_min").value == pytest.approx((sum(ends.values()) - ends["scored"]) / minutes)
    assert set(RECIPES) == set(dict(made.figures))


@pytest.mark.parametrize("key", KEYS)
def test_better_squads_keep_the_ball_longer(key: str) -> None:
    # pairs whom nobody hinders score with every pass through a gate, and a score ends the passes in a row
    name = "scores_per_side_min" if key == "lock-gates" else "passes_in_a_row"
    worse, better = (asked(shipped(key), 7200, level=level).figure(name) for level in ("new", "strong"))
    assert worse.high < better.low


@pytest.mark.parametrize("key", KEYS)
def test_more_room_means_more_running(key: str) -> None:
    """Published direction: distance a minute rises with the area per player (casamichana2018); not on edges."""
    setup = shipped(key)
    practice, field = setup.practice, setup.field
    inside = [role for role, group in enumerate(practice.groups) if not group.home.on_edge]

    def metres(size: float) -> np.ndarray:
        larger = setup_of(practice, size_m=(field.across_m * size, field.up_m * size))
        runs = many(larger, Who(), block_s=240, seed=3, first=0, number=30)
        return np.array([s.U[inside, c.U_DISTANCE].sum() / s.U[inside, c.U_TIME].sum() for s in runs])

    more = metres(1.4) - metres(0.8)
    assert more.mean() > 1.7 * more.std(ddof=1) / len(more) ** 0.5


def test_long_wet_grass_stops_the_ball_sooner_than_the_hall_floor() -> None:
    """Published direction: longer grass shortens the roll (openturf); in play fewer balls run out."""
    setup = shipped("breakwater")

    def out_per_min(ground: str, seed: int) -> float:
        log = simulate(setup, age=12, level="settled", seed=seed, seconds=1800, surface=ground, log=True).log
        return float((log[:, c.LOG_KIND] == c.LOG_OUT).sum()) / 30

    fewer = np.array([out_per_min("hall", seed) - out_per_min("wet grass", seed) for seed in range(20)])
    assert fewer.mean() > 1.7 * fewer.std(ddof=1) / len(fewer) ** 0.5
