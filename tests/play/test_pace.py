"""How fast players run without the ball: in time and in balance, by age, tired, and at a stop."""

import numpy as np
import pytest
from shipped_practices import shipped

from turnout.play.abilities import abilities
from turnout.play.kernel import columns as c
from turnout.play.kernel.moving import move
from turnout.play.kernel.pacing import press_pace, price_of_moving, support_pace
from turnout.play.kernel.weights import TABLE, weights
from turnout.play.simulate import record
from turnout.study.frozen import frozen_game

STEP_S = TABLE["DT"].value
W = weights()


def moment(age: int, *, away_m: float, side_m: float = 30.0):  # type: ignore[no-untyped-def]
    """Two players of an age: the holder at the ball, the other so far off, sent 4 m sideways."""
    P, whole = np.zeros((2, c.P_COLUMNS)), np.zeros((2, c.I_COLUMNS), dtype=np.int64)
    A = np.tile(abilities(age), (2, 1))
    B, G = np.zeros(c.B_SIZE), np.zeros(c.G_SIZE, dtype=np.int64)
    P[:, c.FRESH] = 1.0
    P[1, c.X], P[1, c.TX], P[1, c.TY] = away_m, away_m, 4.0
    B[c.SQ] = side_m
    G[c.TARGET] = -1
    return P, whole, A, B, G


def support_mps(age: int, **changes: float) -> float:
    P, whole, A, B, G = moment(age, away_m=changes.get("away_m", 10.0))
    B[c.T_READY] = changes.get("ready_s", 0.0)
    P[1, c.FRESH] = changes.get("fresh", 1.0)
    A[1, c.MOVE_PACE] *= changes.get("moves", 1.0)
    return float(support_pace(P, whole, A, B, G, W, np.zeros((2, 2)), 1))


def price(age: int, *, away_m: float, side_m: float, directed: bool = False, rear: bool = False, fresh: float = 1.0):  # type: ignore[no-untyped-def]
    P, whole, A, B, _ = moment(age, away_m=away_m, side_m=side_m)
    whole[1, c.WIDE], P[1, c.FRESH] = 2 if rear else 0, fresh
    return price_of_moving(P, whole, A, B, directed, 1)


def peak_mps(age: int, way_m: float, *, chasing: bool) -> float:
    """Fastest speed of a player sent from rest to a spot straight ahead as fast as he can."""
    P, whole, A, B, _ = moment(age, away_m=0.0)
    P[1, c.TX], P[1, c.TY], P[1, c.HX], P[1, c.PACE] = way_m, 0.0, 1.0, A[1, c.TOP]
    whole[1, c.CHASING] = chasing
    S, U, fastest = np.zeros((2, c.S_COLUMNS)), np.zeros((1, c.U_COLUMNS)), 0.0
    for _ in range(400):
        move(P, whole, A, B, W, STEP_S, 0, S, U)
        fastest = max(fastest, float(np.hypot(P[1, c.VX], P[1, c.VY])))
    assert P[1, c.X] == pytest.approx(way_m, abs=0.1)  # he stops at it, not beyond
    return fastest


def test_who_reads_the_play_takes_the_time_he_has() -> None:
    assert support_mps(18, ready_s=1.5) < support_mps(18, ready_s=0.5)
    assert support_mps(18, away_m=12.0, ready_s=0.8) < support_mps(18, away_m=4.0, ready_s=0.8)


def test_a_child_hurries_where_an_adult_has_time() -> None:
    shares = [support_mps(age, ready_s=1.5) / abilities(age)[c.TOP] for age in (8, 11, 15, 18)]
    assert shares == sorted(shares, reverse=True)


def test_the_tired_support_slower_and_the_frozen_not_at_all() -> None:
    assert support_mps(12, fresh=0.2) < support_mps(12)
    assert support_mps(12, moves=0.0) == 0.0


def test_moving_is_cheap_near_the_ball_to_a_child_and_dear_far_from_it() -> None:
    assert price(9, away_m=5.0, side_m=20.0) < price(18, away_m=5.0, side_m=20.0)
    assert price(9, away_m=20.0, side_m=60.0) > price(18, away_m=20.0, side_m=60.0)


def test_the_rear_man_rests_in_a_game_with_a_direction_only() -> None:
    where = {"away_m": 10.0, "side_m": 50.0}
    assert price(18, directed=True, rear=True, **where) > 2 * price(18, directed=True, **where)
    assert price(18, rear=True, **where) == price(18, **where)
    assert price(18, fresh=0.3, **where) > price(18, **where)


@pytest.mark.parametrize("gap_m", [2.0, 5.0, 10.0])
def test_an_adult_closes_down_in_balance_a_child_at_full_pace(gap_m: float) -> None:
    share = [_press(age, gap_m) for age in (8, 12, 18)]
    assert share == sorted(share, reverse=True)
    assert max(share) <= TABLE["PRESS_PACE"].value + 1e-9


def _press(age: int, gap_m: float) -> float:
    row = abilities(age)
    return float(press_pace(row[None, :], W, 0, gap_m)) / float(row[c.TOP])


def test_who_need_not_be_first_stays_slower_on_a_short_way() -> None:
    easy, race = (peak_mps(18, 8.0, chasing=chasing) for chasing in (False, True))
    assert easy < 0.95 * race
    assert peak_mps(7, 8.0, chasing=False) == pytest.approx(peak_mps(7, 8.0, chasing=True))


def test_nobody_sprints_to_a_restart() -> None:
    film = record(frozen_game("keepers 5 v 5"), age=14, level="settled", seed=4, window=(0.0, 300.0))
    speed = np.hypot(*np.moveaxis(np.diff(film.players_m, axis=0), 2, 0)) * 10
    stops = [event.t_s for event in film.events if event.kind == "stop"]
    starts = [event.t_s for event in film.events if event.kind == "start"]
    seen = 0
    for stop_s in stops:
        start_s = min((start for start in starts if start >= stop_s), default=300.0)
        first, last = int((stop_s + 2.0) * 10), int(start_s * 10)  # two seconds to slow down
        seen += max(0, last - first)
        assert speed[first:last].max(initial=0.0) < 3.7
    assert seen > 100


def test_the_ball_out_of_the_air_falls_and_does_not_jump() -> None:
    film = record(shipped("harbour-square"), age=12, level="settled", seed=2, window=(0.0, 400.0))
    assert np.linalg.norm(np.diff(film.balls_m, axis=0), axis=2).max() < 2.5
