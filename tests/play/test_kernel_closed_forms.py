"""The simulator steps ball and legs in its own lines; held here to the closed forms and to the outside rows."""

import numpy as np
import pytest

from turnout.club.keys import SURFACES as TONIGHT
from turnout.evidence import checks
from turnout.play import physics
from turnout.play.abilities import abilities
from turnout.play.kernel import columns as c
from turnout.play.kernel.moving import move
from turnout.play.kernel.rolling import PATH_STEP_S, PATH_STEPS, predict, roll_ball
from turnout.play.kernel.weights import TABLE, weights
from turnout.play.surfaces import SURFACES

STEP_S = TABLE["DT"].value
SLIDE, ROLL, DRAG = (TABLE[name].value for name in ("SLIDE", "ROLL", "DRAG"))


def share(speed_mps: float) -> float:
    """Where a ball struck at this speed begins to roll, as a share of it: what the kick sets."""
    return TABLE["ROLL_SHARE"].value - TABLE["ROLL_SHARE_DRAG"].value * speed_mps


def kicked(speed_mps: float, *, rolling: bool = False) -> np.ndarray:
    ball = np.zeros(c.B_SIZE)
    ball[c.BVX], ball[c.BVY] = 0.6 * speed_mps, 0.8 * speed_mps
    ball[c.ROLL_BELOW] = speed_mps if rolling else share(speed_mps) * speed_mps
    return ball


def run_on(ball: np.ndarray, seconds: float) -> float:
    w = weights()
    for _ in range(round(seconds / STEP_S)):
        roll_ball(ball, w, STEP_S)
    return float(np.hypot(ball[c.BX], ball[c.BY]))


@pytest.mark.parametrize("speed_mps", [1.0, 3.43, 8.0])
def test_a_rolling_ball_stops_where_the_closed_form_does(speed_mps: float) -> None:
    expected = physics.roll_m(speed_mps=speed_mps, deceleration_mps2=ROLL, drag_per_m=DRAG)
    assert run_on(kicked(speed_mps, rolling=True), 20) == pytest.approx(expected, abs=0.01)


@pytest.mark.parametrize("speed_mps", [4.0, 9.0, 15.0])
def test_a_struck_ball_slides_then_rolls_as_the_closed_form_does(speed_mps: float) -> None:
    whole = {"deceleration_mps2": SLIDE, "drag_per_m": DRAG}
    slid = physics.roll_m(speed_mps=speed_mps, **whole) - physics.roll_m(
        speed_mps=share(speed_mps) * speed_mps, **whole
    )
    rolled = physics.roll_m(speed_mps=share(speed_mps) * speed_mps, deceleration_mps2=ROLL, drag_per_m=DRAG)
    assert run_on(kicked(speed_mps), 30) == pytest.approx(slid + rolled, rel=0.01)


@pytest.mark.parametrize("speed_mps", [4.0, 9.0, 15.0])
def test_the_roll_begins_where_the_real_slide_grips(speed_mps: float) -> None:
    real = physics.stopping_distance_m(
        speed_mps=speed_mps,
        friction=SLIDE / physics.GRAVITY_MPS2,
        inertia_ratio=2 / 3,
        deceleration_mps2=ROLL,
        drag_per_m=DRAG,
    )
    assert run_on(kicked(speed_mps), 30) == pytest.approx(real, rel=0.02)


def test_everybody_foresees_the_ball_where_it_will_be() -> None:
    path = np.zeros((PATH_STEPS, 2))
    ball = kicked(9.0)
    predict(ball, weights(), path)
    for index in (4, 14, 29):
        fresh = kicked(9.0)
        assert run_on(fresh, (index + 1) * PATH_STEP_S) == pytest.approx(float(np.hypot(*path[index])), abs=0.05)


def sprint_splits(age: int, marks: tuple[float, ...]) -> list[float]:
    """Seconds the simulated player needs from rest to each mark, straight ahead, no reaction."""
    players = np.zeros((1, c.P_COLUMNS))
    able = abilities(age)[None, :].copy()
    players[0, c.TX], players[0, c.PACE], players[0, c.HX] = 200.0, able[0, c.TOP], 1.0
    players[0, c.FRESH] = 1.0
    whole = np.zeros((1, c.I_COLUMNS), dtype=np.int64)
    ball, sums, by_role = np.zeros(c.B_SIZE), np.zeros((1, c.S_COLUMNS)), np.zeros((1, c.U_COLUMNS))
    times, places = [0.0], [0.0]
    while places[-1] < marks[-1]:
        move(players, whole, able, ball, weights(), STEP_S, -1, sums, by_role)
        times.append(times[-1] + STEP_S)
        places.append(float(players[0, c.X]))
    return [float(np.interp(mark, places, times)) for mark in marks]


@pytest.mark.parametrize("age", [10, 12, 14])
def test_simulated_children_run_the_published_splits(age: int) -> None:
    rows = {check.id: check for check in checks()}
    marks = (10.0, 20.0, 30.0)
    published = [float(rows[f"motion-03-u{age}-{mark:g}"].expected) for mark in marks]
    assert sprint_splits(age, marks) == pytest.approx(published, rel=0.06)  # the rows' own tolerance


def test_every_surface_a_coach_can_name_has_a_ball_on_it() -> None:
    assert set(TONIGHT) == set(SURFACES)
