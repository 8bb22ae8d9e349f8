"""Pressing and carrying: a tackler gets set, two press more than one, eyes follow the pass, a man runs on or past."""

import numpy as np
import pytest

from turnout.play.abilities import squad_abilities
from turnout.play.kernel import columns as c
from turnout.play.kernel.carrying import best_way
from turnout.play.kernel.chance import PURPOSES, seed_streams
from turnout.play.kernel.lanes import pressure_on
from turnout.play.kernel.marking import men_over
from turnout.play.kernel.seeing import look
from turnout.play.kernel.touching import tackler
from turnout.play.kernel.weights import TABLE, weights

W = weights()
STEP_S = TABLE["DT"].value
NO_LIMITS = np.zeros((0, c.L_COLUMNS), dtype=np.int64)
Spot = tuple[float, float]


def seeded() -> np.ndarray:
    chance = np.zeros((2 * PURPOSES, 2), dtype=np.int64)
    seed_streams(chance, 7)
    return chance


class Moment:
    """Player 0 on the ball at the origin, then his mates and opponents where they are said to be, on open ground."""

    def __init__(self, *others: tuple[int, Spot]) -> None:
        number = 1 + len(others)
        self.P = np.zeros((number, c.P_COLUMNS))
        self.who = np.zeros((number, c.I_COLUMNS), dtype=np.int64)
        self.able = squad_abilities(number, 14, "settled", 1)
        self.B, self.G = np.zeros(c.B_SIZE), np.zeros(c.G_SIZE, dtype=np.int64)
        self.roles = np.full((1, c.R_COLUMNS), -1.0)
        self.roles[0, [c.R_WAITS, c.R_NEUTRAL, c.R_SIDE]] = 0.0
        self.ground = np.zeros((1, c.Z_COLUMNS))
        self.ground[0, [c.Z_HX, c.Z_HY]] = 30.0
        self.P[:, c.TACKLE_LEFT], self.P[:, c.HX], self.P[:, c.FRESH] = 50.0, 1.0, 1.0
        self.B[c.SQ], self.B[c.NOW] = 25.0, 5.0
        for i, (team, spot) in enumerate(others, start=1):
            self.who[i, c.TEAM], self.P[i, [c.X, c.Y]] = team, spot

    def tackle_for(self, seconds: float) -> float:
        """How much of the way to a tackle player 1 makes in so many seconds."""
        chance, before = seeded(), self.P[1, c.TACKLE_LEFT]
        for _ in range(round(seconds / STEP_S)):
            tackler(self.P, self.who, self.able, self.B, self.G, self.roles, self.ground, NO_LIMITS, W, STEP_S, chance)
        return float(before - self.P[1, c.TACKLE_LEFT])

    def pressure(self) -> float:
        return pressure_on(self.who, self.P, 0, 0.0, 0.0, W)

    def way(self, *, forward: bool = True) -> tuple[float, float, float]:
        """What running is worth over staying, and where to."""
        aim = np.array([[1.0, 0.0], [-1.0, 0.0]]) if forward else np.zeros((2, 2))
        return best_way(self.P, self.who, self.able, self.B, self.G, self.roles, self.ground, NO_LIMITS, W, aim,
                        self.P, 0)  # fmt: skip


def test_a_tackler_needs_a_moment_to_get_set_and_no_longer() -> None:
    moment = Moment((1, (0.8, 0.0)))
    first, second, third = (moment.tackle_for(1.0) for _ in range(3))
    assert 0.0 < first < second
    assert moment.tackle_for(1.0) == pytest.approx(third)  # set is set


def test_one_who_runs_past_the_ball_is_no_tackler() -> None:
    stays, passes = Moment((1, (0.8, 0.0))), Moment((1, (0.8, 0.0)))
    stayed = stays.tackle_for(0.4) + stays.tackle_for(0.2)
    came = passes.tackle_for(0.4)
    passes.P[1, c.X] = 4.0
    assert passes.tackle_for(5.0) == 0.0
    passes.P[1, c.X] = 0.8
    assert came + passes.tackle_for(0.2) < stayed  # begins again


def test_a_ball_carried_fast_is_easier_to_take() -> None:
    still, runs = Moment((1, (0.8, 0.0))), Moment((1, (0.8, 0.0)))
    runs.P[0, c.VX] = 4.0
    assert runs.tackle_for(0.5) > 2.0 * still.tackle_for(0.5)


def test_two_press_more_than_one_and_less_than_twice() -> None:
    near, far = (1, (1.5, 0.0)), (1, (6.0, 0.0))
    one, two = Moment(near).pressure(), Moment(near, (1, (0.0, 1.5))).pressure()
    assert 0.0 < one < two < 2.0 * one
    assert Moment(near, far).pressure() == one
    assert Moment(near, (0, (0.0, 1.0))).pressure() == one  # a mate presses nobody
    assert Moment(*[(1, (0.5, 0.1 * k)) for k in range(6)]).pressure() == pytest.approx(1.8)


def test_men_over_are_counted_without_those_on_the_edge() -> None:
    moment = Moment((1, (1, 1)), (1, (2, 2)), (1, (3, 3)))
    assert men_over(moment.P, moment.who, moment.roles, 1) == 2
    moment.who[3, c.JOURNEY] = 1
    assert men_over(moment.P, moment.who, moment.roles, 1) == 1
    moment.roles[0, c.R_EDGE] = 0.0
    assert men_over(moment.P, moment.who, moment.roles, 1) == 0


def test_eyes_on_a_coming_pass_take_in_less() -> None:
    beside = (1, (3.0, 6.0))  # 63 degrees off the way he faces
    moment = Moment(beside)
    seen = np.zeros((2, 2, 5))
    look(moment.P, moment.who, seen, 0, 5.0, False, TABLE["EYES"].value)
    assert seen[0, 1, 4] == 0.0
    look(moment.P, moment.who, seen, 0, 5.0, False, TABLE["CONE"].value)
    assert seen[0, 1, 4] == 5.0


def test_with_a_direction_and_nobody_ahead_he_runs_on() -> None:
    worth, x, y = Moment((1, (-4.0, 0.0))).way()
    assert worth > 0.0 and x > 4.0 and y == pytest.approx(0.0, abs=1e-9)


def test_a_man_ahead_is_run_past_and_not_into() -> None:
    worth, x, y = Moment((1, (4.0, 0.0))).way()
    assert worth > 0.0 and x > 0.0 and abs(y) > 1.0


def test_without_a_direction_running_is_worth_no_more_than_keeping_it() -> None:
    worth, x, y = Moment((1, (1.5, 0.0))).way(forward=False)
    assert worth == 0.0 and x <= 0.0 and np.hypot(x, y) <= 1.0
