"""The motion rows, answered by the running model and the table of ages."""

from math import cos, hypot, pi, sin

from asking import Departure, Given, answers

from turnout.play import physics
from turnout.play.abilities import abilities
from turnout.play.kernel import columns
from turnout.play.kernel.weights import TABLE
from turnout.play.sprint import AGES, SprintProfile, sprint_profile

STEP_S = 0.0005


def stepped(given: Given, heading: float, time_s: float, velocity_mps: tuple[float, float]) -> tuple[float, float]:
    """Where small steps of dv/dt = alpha (v_max u - v) lead from the origin: midpoint rule, no closed form."""
    place, speed = [0.0, 0.0], list(velocity_mps)
    drive = (given["vmax"] * cos(heading), given["vmax"] * sin(heading))
    for _ in range(round(time_s / STEP_S)):
        for axis in (0, 1):
            half = speed[axis] + STEP_S / 2 * given["alpha"] * (drive[axis] - speed[axis])
            place[axis] += STEP_S * half
            speed[axis] += STEP_S * given["alpha"] * (drive[axis] - half)
    return place[0], place[1]


@answers("motion-01")
def reach_is_a_disc(given: Given) -> Departure:
    worst = 0.0
    for time_s, velocity in ((0.5, (0.0, 0.0)), (1.5, (5.0, -2.0))):
        centre = [
            physics.reach_centre_m(start_m=0.0, velocity_mps=each, alpha_per_s=given["alpha"], time_s=time_s)
            for each in velocity
        ]
        radius = physics.reach_radius_m(alpha_per_s=given["alpha"], top_speed_mps=given["vmax"], time_s=time_s)
        for heading in range(36):
            x, y = stepped(given, heading * pi / 18, time_s, velocity)
            worst = max(worst, abs(hypot(x - centre[0], y - centre[1]) - radius) / radius)
    return Departure(worst)


@answers("motion-02-10", "motion-02-20", "motion-02-30")
def adult_sprint(given: Given) -> float:
    return physics.sprint_time_s(distance_m=given["d"], alpha_per_s=given["alpha"], top_speed_mps=given["vmax"])


def age_of(given: Given) -> int:
    return int(str(dict.__getitem__(given, "age")).removeprefix("U"))


def timed(profile: SprintProfile, distance_m: float) -> float:
    return physics.sprint_time_s(
        distance_m=distance_m, alpha_per_s=profile.alpha_per_s, top_speed_mps=profile.top_speed_mps
    )


@answers(*(f"motion-03-u{age}-{metres}" for age in AGES for metres in (10, 20, 30)))
def boys_sprint(given: Given) -> float:
    return timed(sprint_profile(age=age_of(given), season="end"), given["d"])


@answers("motion-04-u10", "motion-04-u12", "motion-04-u14", how="looked up")
def top_speed(given: Given) -> float:
    return sprint_profile(age=age_of(given)).top_speed_mps


@answers("motion-05", how="looked up")
def initial_acceleration(given: Given) -> tuple[float, ...]:
    seasons = [sprint_profile(age=age, season=season) for age in AGES for season in ("mid", "end")]
    return tuple(profile.first_mps2 for profile in seasons)


@answers("motion-06")
def time_constant(given: Given) -> tuple[float, ...]:
    return tuple(1 / sprint_profile(age=age).alpha_per_s for age in AGES)


@answers("motion-07", "motion-08")
def gate_plus_offset(given: Given) -> float:
    return timed(sprint_profile(age=age_of(given)), given["d"])


@answers("motion-10", how="looked up")
def deceleration_cap(given: Given) -> float:
    return TABLE["BRAKE"].value


@answers("react-8-9", "react-10-11", "react-12-13", how="looked up")
def reaction_of_simulated_children(given: Given) -> tuple[float, ...]:
    years = (int(each) for each in given.numbers)
    return tuple(float(abilities(age=year + 1)[columns.REACT_S]) for year in years)  # 8 to 9 years: U9 and U10


@answers("pass-08", how="looked up")
def wider_with_the_other_foot(given: Given) -> float:
    return float(abilities(age=18, level="settled")[columns.WEAK])


@answers("pass-10", how="looked up")
def top_kick_speed(given: Given) -> float:
    return float(abilities(age=age_of(given))[columns.KICK_TOP])
