"""Players look where they run, pairs share out the gates, and a free pass is worth having."""

import numpy as np
import pytest
from shipped_practices import KEYS, shipped

from turnout.play.abilities import squad_abilities
from turnout.play.kernel import columns as c
from turnout.play.kernel.gates import share_gates
from turnout.play.kernel.moving import APART_S, look_ahead, move
from turnout.play.kernel.weights import TABLE, weights
from turnout.play.scene import scene_of
from turnout.play.simulate import record, simulate

STEP_S, BODY_M = TABLE["DT"].value, 0.55
Spot = tuple[float, float]


def run(*players: tuple[Spot, Spot], teams: tuple[int, ...] = (0, 0, 0), seconds: float = 8.0) -> np.ndarray:
    """Players run from a spot to another; those with the ball are team 0: their places, (steps, players, 2)."""
    number = len(players)
    P, B = np.zeros((number, c.P_COLUMNS)), np.zeros(c.B_SIZE)
    who = np.zeros((number, c.I_COLUMNS), dtype=np.int64)
    able = squad_abilities(number, 12, "settled", 1)
    for i, (here, there) in enumerate(players):
        P[i, [c.X, c.Y]], P[i, [c.TX, c.TY]], P[i, c.PACE], P[i, c.FRESH] = here, there, 4.0, 1.0
        who[i, c.TEAM] = teams[i]
    S, U, places = np.zeros((number, c.S_COLUMNS)), np.zeros((1, c.U_COLUMNS)), []
    for step in range(round(seconds / STEP_S)):
        if step % round(APART_S / STEP_S) == 0:
            look_ahead(P, who, 0, number, 0)
        move(P, who, able, B, weights(), STEP_S, -1, S, U)
        places.append(P[:, [c.X, c.Y]].copy())
    return np.array(places)


def nearest_m(places: np.ndarray, one: int, other: int) -> float:
    return float(np.hypot(*(places[:, one] - places[:, other]).T).min())


def test_a_runner_goes_round_a_team_mate_who_stands_in_the_way() -> None:
    places = run(((0, 0), (12, 0)), ((6, 0), (6, 0)))
    assert nearest_m(places, 0, 1) > 2 * BODY_M
    assert places[-1, 0] == pytest.approx((12, 0), abs=0.1)
    assert places[-1, 1] == pytest.approx((6, 0), abs=0.01)  # nobody pushed him


def test_two_who_run_at_each_other_pass_on_the_same_hand_and_arrive() -> None:
    places = run(((0, 0), (12, 0)), ((12, 0), (0, 0)))
    assert nearest_m(places, 0, 1) > 2 * BODY_M
    assert places[-1, 0] == pytest.approx((12, 0), abs=0.1) and places[-1, 1] == pytest.approx((0, 0), abs=0.1)
    assert places[:, 0, 1].min() < -0.3 and places[:, 1, 1].max() > 0.3  # both on their right


def test_a_free_way_is_run_straight() -> None:
    places = run(((0, 0), (12, 0)), ((6, 4), (6, 4)))
    assert np.abs(places[:, 0, 1]).max() < 1e-9


@pytest.mark.parametrize("beside", [(5.5, 0.0), (6.5, 0.0), (6.0, 0.6)])
def test_whoever_stands_at_the_spot_keeps_nobody_from_it(beside: Spot) -> None:
    places = run(((0, 0), (6, 0)), (beside, beside))
    assert np.hypot(*(places[-1, 0] - (6, 0))) < 0.3


def test_an_opponent_is_met_and_defenders_close_in_side_by_side() -> None:
    met = run(((0, 0), (12, 0)), ((6, 0), (6, 0)), teams=(0, 1))
    beside = run(((0, 0), (12, 0)), ((6, 0), (6, 0)), teams=(1, 1))
    assert np.abs(met[:, 0, 1]).max() < 1e-9 and np.abs(beside[:, 0, 1]).max() < 1e-9


def test_pairs_share_out_the_gates_and_take_another_when_through() -> None:
    scene = scene_of(shipped("lock-gates"))
    balls = len(scene.units)
    who, B = np.zeros((scene.players, c.I_COLUMNS), dtype=np.int64), np.zeros((balls, c.B_SIZE))
    G = np.full((balls, c.G_SIZE), -1, dtype=np.int64)
    G[:, c.UNIT], G[:, c.BALL_TEAM] = np.arange(balls), 0  # all balls in the middle, by the same gates
    share_gates(who, B, G, scene.Z, scene.L, scene.T, scene.units)
    first = G[:, c.NEXT_GATE].copy()
    assert (first >= 0).all() and len(set(first)) == balls
    share_gates(who, B, G, scene.Z, scene.L, scene.T, scene.units)
    assert np.array_equal(G[:, c.NEXT_GATE], first)  # nobody changes his mind on the way
    G[2, c.LAST_GATE] = first[2]
    share_gates(who, B, G, scene.Z, scene.L, scene.T, scene.units)
    assert G[2, c.NEXT_GATE] not in first and len(set(G[:, c.NEXT_GATE])) == balls


def test_pairs_begin_each_on_their_own_ground() -> None:
    film = record(shipped("lock-gates"), age=12, level="settled", seed=4, window=(0, 1))
    gap = np.hypot(*np.moveaxis(film.players_m[0, :, None] - film.players_m[0], 2, 0))
    assert gap[~np.eye(len(gap), dtype=bool)].min() > 1.0


def test_a_practice_of_one_side_plays_on_when_the_ball_is_out() -> None:
    setup = shipped("lock-gates")
    assert not any("goes out" in rule.source.text for rule in setup.practice.rules)  # by the default alone
    sums = simulate(setup, age=12, level="settled", seed=6, seconds=600, log=True)
    assert sums.E[0, c.OUT] > 5
    assert sums.Q[c.Q_ROLLING] > 0.9 * sums.Q[c.Q_TIME]
    kinds, players = sums.log[:, c.LOG_KIND], sums.log[:, c.LOG_PLAYER].astype(int)
    late = (kinds == c.LOG_PASS) & (sums.log[:, c.LOG_T] > 570)
    assert set(players[late] // 2) == set(range(6))  # every pair still plays


@pytest.mark.parametrize("key", KEYS)
def test_first_passes_after_a_start_are_seldom_lost(key: str) -> None:
    V = sum(simulate(shipped(key), age=12, level="settled", seed=seed, seconds=300).V for seed in range(2000, 2060))
    assert V[:, c.V_FREE].sum() > 500
    assert V[:, c.V_FREE_LOST].sum() <= 0.05 * V[:, c.V_FREE].sum()
