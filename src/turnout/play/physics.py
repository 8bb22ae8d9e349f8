"""Ball and running in closed form: what the simulator must agree with. Pure functions, SI units, keyword-only."""

from dataclasses import dataclass
from math import atan, cos, exp, expm1, hypot, log1p, pi, radians, sin, sqrt, tan

GRAVITY_MPS2 = 9.81
NO_DRAG_PER_M = 1e-9  # less air than this is none: its closed forms would only lose digits
FLIGHT_STEP_S = 0.005  # halving it moves the worked flights by less than a millimetre


# The ball on the ground


def ramp_speed_mps(*, drop_m: float, inertia_ratio: float) -> float:
    """Speed of a ball rolled down a ramp of height `drop_m` without slipping, m/s.

    inertia_ratio: I/(m r^2), 2/3 for a thin shell. Energy: v^2 = 2 g h / (1 + k).
    """
    return sqrt(2 * GRAVITY_MPS2 * drop_m / (1 + inertia_ratio))


def uniform_deceleration_mps2(*, speed_mps: float, roll_m: float) -> float:
    """The one deceleration that stops `speed_mps` in `roll_m` without air drag: v^2 / (2 d)."""
    return speed_mps**2 / (2 * roll_m)


def rolling_part_mps2(*, speed_mps: float, roll_m: float, drag_per_m: float) -> float:
    """What is left for the ground when air drag c v^2 takes its part of a roll of `roll_m` from `speed_mps`.

    The inverse of `roll_m` below: a = c v^2 / (exp(2 c d) - 1).
    """
    if drag_per_m < NO_DRAG_PER_M:
        return uniform_deceleration_mps2(speed_mps=speed_mps, roll_m=roll_m)
    return drag_per_m * speed_mps**2 / expm1(2 * drag_per_m * roll_m)


def ground_drag_mps2(*, speed_mps: float, drag_per_m: float) -> float:
    """Deceleration by the air of a ball moving at `speed_mps`: c v^2, c in 1/m (evidence: air.drag-per-metre)."""
    return drag_per_m * speed_mps**2


def roll_m(*, speed_mps: float, deceleration_mps2: float, drag_per_m: float = 0.0) -> float:
    """Metres a ball in pure roll runs to rest under dv/dt = -(a + c v^2): ln(1 + c v^2 / a) / (2 c)."""
    if drag_per_m < NO_DRAG_PER_M:
        return speed_mps**2 / (2 * deceleration_mps2)
    return log1p(drag_per_m * speed_mps**2 / deceleration_mps2) / (2 * drag_per_m)


def roll_s(*, speed_mps: float, deceleration_mps2: float, drag_per_m: float = 0.0) -> float:
    """Seconds a ball in pure roll runs to rest under dv/dt = -(a + c v^2): atan(v sqrt(c/a)) / sqrt(a c)."""
    if drag_per_m < NO_DRAG_PER_M:
        return speed_mps / deceleration_mps2
    return atan(speed_mps * sqrt(drag_per_m / deceleration_mps2)) / sqrt(deceleration_mps2 * drag_per_m)


def rolled_speed_mps(*, speed_mps: float, deceleration_mps2: float, drag_per_m: float, time_s: float) -> float:
    """Speed after `time_s` of pure roll under dv/dt = -(a + c v^2), m/s; 0 once at rest."""
    if time_s >= roll_s(speed_mps=speed_mps, deceleration_mps2=deceleration_mps2, drag_per_m=drag_per_m):
        return 0.0
    return _slowed_mps(speed_mps, deceleration_mps2, drag_per_m, time_s)


def slide_ratio(*, inertia_ratio: float) -> float:
    """Speed at pure roll over launch speed of a ball struck without spin, no drag: 1 / (1 + k)."""
    return 1 / (1 + inertia_ratio)


@dataclass(frozen=True)
class Slide:
    """The sliding stretch of a struck ground ball, up to pure roll."""

    time_s: float
    distance_m: float
    speed_mps: float


def slide(*, speed_mps: float, friction: float, inertia_ratio: float, drag_per_m: float = 0.0) -> Slide:
    """The slide of a ball struck along the ground without spin until it rolls.

    Centre: dv/dt = -(mu g + c v^2); rim: d(r w)/dt = mu g / k; it rolls when v = r w. Without drag after
    v0 k / (mu g (1 + k)) seconds; with drag that is the upper end of a bisection.
    """
    grip_mps2 = friction * GRAVITY_MPS2
    late_s = speed_mps * inertia_ratio / (grip_mps2 * (1 + inertia_ratio))
    early_s = 0.0 if drag_per_m >= NO_DRAG_PER_M else late_s
    for _ in range(60 if early_s < late_s else 0):
        middle_s = (early_s + late_s) / 2
        slips = _slowed_mps(speed_mps, grip_mps2, drag_per_m, middle_s) > grip_mps2 * middle_s / inertia_ratio
        early_s, late_s = (middle_s, late_s) if slips else (early_s, middle_s)
    end_mps = _slowed_mps(speed_mps, grip_mps2, drag_per_m, late_s)
    return Slide(late_s, _between_m(speed_mps, end_mps, grip_mps2, drag_per_m), end_mps)


def stopping_distance_m(
    *, speed_mps: float, friction: float, inertia_ratio: float, deceleration_mps2: float, drag_per_m: float = 0.0
) -> float:
    """Metres a ball struck along the ground runs to rest: its slide, then its roll at `deceleration_mps2`."""
    first = slide(speed_mps=speed_mps, friction=friction, inertia_ratio=inertia_ratio, drag_per_m=drag_per_m)
    rest_m = roll_m(speed_mps=first.speed_mps, deceleration_mps2=deceleration_mps2, drag_per_m=drag_per_m)
    return first.distance_m + rest_m


def _slowed_mps(speed_mps: float, steady_mps2: float, drag_per_m: float, time_s: float) -> float:
    if drag_per_m < NO_DRAG_PER_M:
        return speed_mps - steady_mps2 * time_s
    scale_mps = sqrt(steady_mps2 / drag_per_m)
    return scale_mps * tan(atan(speed_mps / scale_mps) - sqrt(steady_mps2 * drag_per_m) * time_s)


def _between_m(start_mps: float, end_mps: float, steady_mps2: float, drag_per_m: float) -> float:
    whole_m = roll_m(speed_mps=start_mps, deceleration_mps2=steady_mps2, drag_per_m=drag_per_m)
    return whole_m - roll_m(speed_mps=end_mps, deceleration_mps2=steady_mps2, drag_per_m=drag_per_m)


# The ball in the air


def air_drag_per_m(*, air_density_kgpm3: float, drag_coefficient: float, radius_m: float, mass_kg: float) -> float:
    """The c of the drag deceleration c v^2, 1/m: rho Cd A / (2 m) with A = pi r^2 (goff2010, eqs 1-2)."""
    return air_density_kgpm3 * drag_coefficient * pi * radius_m**2 / (2 * mass_kg)


def terminal_speed_mps(*, drag_per_m: float) -> float:
    """Speed of a fall at which air drag carries the ball's weight: sqrt(g / c)."""
    return sqrt(GRAVITY_MPS2 / drag_per_m)


@dataclass(frozen=True)
class Flight:
    """A lofted ball without spin, from level ground back to it."""

    range_m: float
    time_s: float
    apex_m: float
    landing_mps: float


def flight(*, speed_mps: float, angle_deg: float, drag_per_m: float, step_s: float = FLIGHT_STEP_S) -> Flight:
    """Fly a ball without spin under gravity and drag c v^2; fourth-order steps of `step_s`, landing interpolated."""
    now = (0.0, 0.0, speed_mps * cos(radians(angle_deg)), speed_mps * sin(radians(angle_deg)))
    apex_m, steps = 0.0, 0
    while True:
        before, now, steps = now, _fly_on(now, drag_per_m, step_s), steps + 1
        apex_m = max(apex_m, now[1])
        if now[1] <= 0:
            break
    share = before[1] / (before[1] - now[1])
    x_m, _, across_mps, up_mps = (a + share * (b - a) for a, b in zip(before, now, strict=True))
    return Flight(x_m, (steps - 1 + share) * step_s, apex_m, hypot(across_mps, up_mps))


_State = tuple[float, float, float, float]  # x m, z m, velocity x m/s, velocity z m/s


def _fly_on(state: _State, drag_per_m: float, step_s: float) -> _State:
    one = _change(state, drag_per_m)
    two = _change(_moved(state, one, step_s / 2), drag_per_m)
    three = _change(_moved(state, two, step_s / 2), drag_per_m)
    four = _change(_moved(state, three, step_s), drag_per_m)
    mean = tuple((a + 2 * b + 2 * c + d) / 6 for a, b, c, d in zip(one, two, three, four, strict=True))
    return _moved(state, mean, step_s)  # type: ignore[arg-type]


def _change(state: _State, drag_per_m: float) -> _State:
    _, _, across_mps, up_mps = state
    drag_per_s = drag_per_m * hypot(across_mps, up_mps)
    return across_mps, up_mps, -drag_per_s * across_mps, -GRAVITY_MPS2 - drag_per_s * up_mps


def _moved(state: _State, change: _State, step_s: float) -> _State:
    x, z, u, w = (value + step_s * slope for value, slope in zip(state, change, strict=True))
    return x, z, u, w


def rebound_m(*, drop_m: float, restitution: float) -> float:
    """Height of the first bounce after a drop from `drop_m`: e^2 h."""
    return restitution**2 * drop_m


def restitution(*, drop_m: float, rebound_m: float) -> float:
    """Speed after over before a bounce that rises to `rebound_m` after a drop from `drop_m`: sqrt(rebound / drop)."""
    return sqrt(rebound_m / drop_m)


# Running: dv/dt = alpha (v_max u - v), u the unit vector the player drives towards


def sprint_m(*, time_s: float, alpha_per_s: float, top_speed_mps: float) -> float:
    """Metres run from rest in `time_s`, no reaction time (furusawa1927, fujimura2005)."""
    return top_speed_mps * (time_s + expm1(-alpha_per_s * time_s) / alpha_per_s)


def sprint_speed_mps(*, time_s: float, alpha_per_s: float, top_speed_mps: float) -> float:
    """Speed reached from rest after `time_s`: v_max (1 - exp(-alpha t))."""
    return -top_speed_mps * expm1(-alpha_per_s * time_s)


def sprint_time_s(*, distance_m: float, alpha_per_s: float, top_speed_mps: float) -> float:
    """Seconds from rest over `distance_m`, no reaction time; `sprint_m` solved by Newton steps."""
    if distance_m <= 0:
        return 0.0
    run = {"alpha_per_s": alpha_per_s, "top_speed_mps": top_speed_mps}
    time_s = distance_m / top_speed_mps + 1 / alpha_per_s  # late, so the convex curve is met from one side
    for _ in range(50):
        miss_m = sprint_m(time_s=time_s, **run) - distance_m
        if abs(miss_m) < 1e-10:
            break
        time_s -= miss_m / sprint_speed_mps(time_s=time_s, **run)
    return time_s


def reach_centre_m(*, start_m: float, velocity_mps: float, alpha_per_s: float, time_s: float) -> float:
    """Centre of all a player can reach after `time_s`, one axis: x0 + v0 (1 - exp(-alpha t)) / alpha (fujimura2005)."""
    return start_m - velocity_mps * expm1(-alpha_per_s * time_s) / alpha_per_s


def reach_radius_m(*, alpha_per_s: float, top_speed_mps: float, time_s: float) -> float:
    """Radius of the disc a player can reach after `time_s`; the same run as from rest (disc: narizuka2023)."""
    return sprint_m(time_s=time_s, alpha_per_s=alpha_per_s, top_speed_mps=top_speed_mps)


def driven(
    *, start_m: float, velocity_mps: float, drive: float, alpha_per_s: float, top_speed_mps: float, time_s: float
) -> tuple[float, float]:
    """Place and speed on one axis after driving towards `drive` (-1 to 1, the unit vector's part) for `time_s`."""
    goal_mps, left = top_speed_mps * drive, exp(-alpha_per_s * time_s)
    place_m = start_m + goal_mps * time_s + (velocity_mps - goal_mps) * (1 - left) / alpha_per_s
    return place_m, goal_mps + (velocity_mps - goal_mps) * left
