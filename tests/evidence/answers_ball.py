"""The ball rows, answered by the physics of the simulator."""

from asking import Given, answers

from turnout.evidence import number, value
from turnout.play import physics
from turnout.play.surfaces import ball, surface

DRAG = number("air.drag-per-metre")
GRASS = ("grass", "wet grass")
RAMP_MPS = 3.43


@answers("ball-01")
def size_five_radius(given: Given) -> float:
    return ball("5").radius_m


@answers("ball-02")
def size_five_mass(given: Given) -> float:
    return ball("5").mass_kg


@answers("ball-03")
def ramp_speed(given: Given) -> float:
    _, two, three = given.numbers
    return physics.ramp_speed_mps(drop_m=given["h"], inertia_ratio=two / three)


def rolls(*names: str) -> tuple[float, ...]:
    at = {"speed_mps": RAMP_MPS, "drag_per_m": DRAG}
    return tuple(physics.roll_m(deceleration_mps2=surface(name).roll_mps2, **at) for name in names)


@answers("ball-04")
def ramp_roll_on_3g(given: Given) -> tuple[float, ...]:
    return rolls("3G")


@answers("ball-05")
def ramp_roll_on_standard_turf(given: Given) -> float:
    rolling_mps2 = number("roll.decel.artificial.standard")
    return physics.roll_m(speed_mps=given["v0"], deceleration_mps2=rolling_mps2, drag_per_m=DRAG)


@answers("ball-06")
def ramp_roll_on_grass(given: Given) -> tuple[float, ...]:
    return rolls(*GRASS)


@answers(*(f"ball-07-{metres:02d}" for metres in (2, 3, 4, 6, 8, 10, 12, 14)))
def uniform_deceleration(given: Given) -> float:
    return physics.uniform_deceleration_mps2(speed_mps=given["v0"], roll_m=given["d"])


@answers("ball-08")
def slide_ratio_of_a_shell(given: Given) -> float:
    return physics.slide_ratio(inertia_ratio=number("roll.inertia.k"))


@answers("ball-09")
def slide_ratio(given: Given) -> float:
    return physics.slide_ratio(inertia_ratio=given["k"])


def grass_slide(speed_mps: float) -> physics.Slide:
    k = ball("5").inertia_ratio
    return physics.slide(speed_mps=speed_mps, friction=surface("grass").friction, inertia_ratio=k, drag_per_m=DRAG)


@answers("ball-10")
def slide_ratio_with_drag(given: Given) -> tuple[float, ...]:
    return tuple(grass_slide(launch).speed_mps / launch for launch in given.numbers)


@answers("ball-11-08", "ball-11-10", "ball-11-12")
def stopping_distance(given: Given) -> float:
    return physics.stopping_distance_m(
        speed_mps=given["v0"], friction=given["mu"], inertia_ratio=given["k"], deceleration_mps2=given["a"]
    )


@answers("ball-12a", "ball-12b", "ball-12c")
def slide_time(given: Given) -> tuple[float, ...]:
    return tuple(grass_slide(kick).time_s for kick in given.numbers)


@answers("ball-13", how="looked up")
def rolling_after_the_slide(given: Given) -> tuple[float, ...]:
    return (surface("grass").roll_mps2,)


@answers("ball-14")
def drag_on_the_ground(given: Given) -> float:
    return physics.ground_drag_mps2(speed_mps=given["v"], drag_per_m=DRAG)


@answers("ball-15")
def rebound_on_3g(given: Given) -> float:
    return physics.rebound_m(drop_m=2.0, restitution=surface("3G").restitution)


@answers("ball-16")
def rebound_on_grass(given: Given) -> tuple[float, ...]:
    return tuple(physics.rebound_m(drop_m=2.0, restitution=surface(name).restitution) for name in GRASS)


@answers("ball-17")
def restitution_on_turf(given: Given) -> tuple[float, ...]:
    turf = ("3G", *GRASS)
    highest = max(value(key).high or 0.0 for key in ("turf.restitution.artificial", "turf.restitution.grass"))
    return (*(surface(name).restitution for name in turf), highest)


def fly(given: Given) -> physics.Flight:
    cross_section = {"mass_kg": given["m"], "radius_m": given["r"]}
    drag = physics.air_drag_per_m(
        air_density_kgpm3=number("air.density"), drag_coefficient=given["Cd"], **cross_section
    )
    return physics.flight(speed_mps=given["v0"], angle_deg=given["angle"], drag_per_m=drag)


@answers("ball-18-range", "ball-19", "ball-20")
def lofted_range(given: Given) -> float:
    return fly(given).range_m


@answers("ball-18-time")
def lofted_time(given: Given) -> float:
    return fly(given).time_s


@answers("ball-18-apex")
def lofted_apex(given: Given) -> float:
    return fly(given).apex_m


@answers("ball-18-landing-speed")
def lofted_landing(given: Given) -> float:
    return fly(given).landing_mps


@answers("ball-21")
def terminal_speed(given: Given) -> float:
    drag = physics.air_drag_per_m(
        air_density_kgpm3=given["rho"], drag_coefficient=given["Cd"], radius_m=given["r"], mass_kg=given["m"]
    )
    return physics.terminal_speed_mps(drag_per_m=drag)


@answers("ball-22")
def vacuum_range(given: Given) -> float:
    return physics.flight(speed_mps=given["v0"], angle_deg=given["angle"], drag_per_m=given["Cd"]).range_m
