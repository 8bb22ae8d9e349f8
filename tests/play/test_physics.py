"""Closed forms against small steps that know no closed form, toy cases first."""

from math import cos, hypot, isclose, pi, radians, sin

import pytest
from hypothesis import given
from hypothesis import strategies as st

from turnout.play import physics

DRAG = 0.024


def test_toy_cases_in_the_head() -> None:
    assert isclose(physics.ramp_speed_mps(drop_m=1.0, inertia_ratio=1.0), 9.81**0.5)
    assert physics.roll_m(speed_mps=4.0, deceleration_mps2=1.0) == 8.0
    assert physics.roll_s(speed_mps=4.0, deceleration_mps2=1.0) == 4.0
    assert physics.slide_ratio(inertia_ratio=1.0) == 0.5
    assert physics.rebound_m(drop_m=2.0, restitution=0.5) == 0.5
    assert physics.restitution(drop_m=2.0, rebound_m=0.5) == 0.5


@pytest.mark.parametrize(("roll_m", "rolling_mps2"), [(3, 1.82), (4, 1.33), (8, 0.60), (10, 0.46), (12, 0.36)])
def test_what_is_left_for_the_ground_when_the_air_takes_its_part(roll_m: float, rolling_mps2: float) -> None:
    left = physics.rolling_part_mps2(speed_mps=3.43, roll_m=roll_m, drag_per_m=DRAG)
    assert left == pytest.approx(rolling_mps2, abs=0.005)
    assert physics.roll_m(speed_mps=3.43, deceleration_mps2=left, drag_per_m=DRAG) == pytest.approx(roll_m)


def test_without_drag_the_whole_deceleration_is_the_grounds() -> None:
    still = physics.rolling_part_mps2(speed_mps=3.43, roll_m=6, drag_per_m=0.0)
    assert still == physics.uniform_deceleration_mps2(speed_mps=3.43, roll_m=6)
    assert physics.rolling_part_mps2(speed_mps=3.43, roll_m=6, drag_per_m=1e-7) == pytest.approx(still, rel=1e-5)


def stepped_ball(speed_mps: float, friction: float, k: float, roll_mps2: float, drag: float, step_s: float = 1e-4):
    """Slide then roll by midpoint steps of centre and rim: time and place where it grips, place of rest."""
    rim = place = now = 0.0
    grip = grip_m = None
    while speed_mps > 0:
        steady = friction * physics.GRAVITY_MPS2 if grip is None else roll_mps2
        half = speed_mps - step_s / 2 * (steady + drag * speed_mps**2)
        place += step_s * half
        speed_mps -= step_s * (steady + drag * half**2)
        rim += step_s * friction * physics.GRAVITY_MPS2 / k
        now += step_s
        if grip is None and speed_mps <= rim:
            grip, grip_m = now, place
    return grip, grip_m, place


@pytest.mark.parametrize("drag", [0.0, DRAG])
@pytest.mark.parametrize("speed_mps", [3.0, 8.0, 15.0])
def test_slide_and_stop_agree_with_small_steps(speed_mps: float, drag: float) -> None:
    ball = {"speed_mps": speed_mps, "friction": 0.42, "inertia_ratio": 2 / 3, "drag_per_m": drag}
    grip_s, grip_m, rest_m = stepped_ball(speed_mps, 0.42, 2 / 3, 0.8, drag)
    slide = physics.slide(**ball)
    assert slide.time_s == pytest.approx(grip_s, abs=3e-4)
    assert slide.distance_m == pytest.approx(grip_m, abs=0.005)
    assert physics.stopping_distance_m(deceleration_mps2=0.8, **ball) == pytest.approx(rest_m, abs=0.005)


@given(st.floats(0.1, 25), st.floats(0.05, 3), st.floats(0, 0.05))
def test_a_roll_slows_to_rest_in_its_time_and_place(speed: float, roll: float, drag: float) -> None:
    run = {"speed_mps": speed, "deceleration_mps2": roll, "drag_per_m": drag}
    rest_s = physics.roll_s(**run)
    assert physics.rolled_speed_mps(time_s=rest_s, **run) == 0
    steps = 400
    speeds = [physics.rolled_speed_mps(time_s=rest_s * (i + 0.5) / steps, **run) for i in range(steps)]
    assert speeds == sorted(speeds, reverse=True)
    assert sum(speeds) * rest_s / steps == pytest.approx(physics.roll_m(**run), rel=1e-3)


@given(st.floats(0.5, 30), st.floats(0.1, 1.0), st.floats(0.3, 1.0))
def test_drag_only_ever_shortens_a_slide(speed: float, friction: float, k: float) -> None:
    ball = {"speed_mps": speed, "friction": friction, "inertia_ratio": k}
    free, dragged = physics.slide(**ball), physics.slide(drag_per_m=DRAG, **ball)
    assert free.speed_mps == pytest.approx(speed * physics.slide_ratio(inertia_ratio=k))
    assert dragged.time_s <= free.time_s and dragged.distance_m <= free.distance_m


def test_flight_without_drag_is_a_parabola() -> None:
    loft = physics.flight(speed_mps=18.0, angle_deg=40.0, drag_per_m=0.0)
    up = 18 * sin(radians(40))
    assert loft.time_s == pytest.approx(2 * up / physics.GRAVITY_MPS2, abs=1e-4)
    assert loft.apex_m == pytest.approx(up**2 / (2 * physics.GRAVITY_MPS2), abs=1e-3)
    assert loft.landing_mps == pytest.approx(18.0, abs=0.01)


def test_flight_with_drag_agrees_with_small_steps_and_with_its_own_half_steps() -> None:
    x = z = now = 0.0
    u, w, step = 20 * cos(radians(30)), 20 * sin(radians(30)), 1e-5
    while z >= 0:
        drag = 0.0132 * hypot(u, w)
        x, z = x + step * u, z + step * w
        u, w = u - step * drag * u, w - step * (physics.GRAVITY_MPS2 + drag * w)
        now += step
    loft = physics.flight(speed_mps=20, angle_deg=30, drag_per_m=0.0132)
    half = physics.flight(speed_mps=20, angle_deg=30, drag_per_m=0.0132, step_s=physics.FLIGHT_STEP_S / 2)
    assert (loft.range_m, loft.time_s) == pytest.approx((x, now), abs=2e-3)
    assert abs(loft.range_m - half.range_m) < 1e-3


def test_a_fall_ends_at_its_terminal_speed() -> None:
    drag = physics.air_drag_per_m(air_density_kgpm3=1.2, drag_coefficient=0.45, radius_m=0.11, mass_kg=0.43)
    speed = 0.0
    for _ in range(200_000):
        speed += 1e-4 * (physics.GRAVITY_MPS2 - physics.ground_drag_mps2(speed_mps=speed, drag_per_m=drag))
    assert speed == pytest.approx(physics.terminal_speed_mps(drag_per_m=drag), rel=1e-3)


@given(st.floats(0.01, 60), st.floats(0.5, 2.0), st.floats(3, 10))
def test_sprint_time_is_the_inverse_of_sprint_distance(distance: float, alpha: float, top: float) -> None:
    run = {"alpha_per_s": alpha, "top_speed_mps": top}
    time_s = physics.sprint_time_s(distance_m=distance, **run)
    assert physics.sprint_m(time_s=time_s, **run) == pytest.approx(distance, abs=1e-6)
    assert time_s > distance / top


def test_no_distance_takes_no_time() -> None:
    assert physics.sprint_time_s(distance_m=0.0, alpha_per_s=1.3, top_speed_mps=7.8) == 0.0


def test_driving_agrees_with_small_steps_and_stays_inside_the_disc() -> None:
    alpha, top, time_s = 0.95, 6.5, 1.2
    for heading in range(12):
        axes = []
        for part, start_mps in ((cos(heading * pi / 6), 3.0), (sin(heading * pi / 6), -1.0)):
            run = {"alpha_per_s": alpha, "time_s": time_s}
            place, speed = physics.driven(start_m=1.0, velocity_mps=start_mps, drive=part, top_speed_mps=top, **run)
            x, v = 1.0, start_mps
            for _ in range(12_000):
                x, v = x + 1e-4 * v, v + 1e-4 * alpha * (top * part - v)
            assert (place, speed) == pytest.approx((x, v), abs=2e-3)
            axes.append(place - physics.reach_centre_m(start_m=1.0, velocity_mps=start_mps, **run))
        assert hypot(*axes) == pytest.approx(physics.reach_radius_m(top_speed_mps=top, **run))
