"""Rows about running: how far, how fast, who more."""

from math import log, log2

import numpy as np

from turnout.play.kernel import columns as c
from turnout.play.kernel.weights import TABLE
from turnout.play.physics import sprint_m, stopping_distance_m
from turnout.play.surfaces import ball, surface
from turnout.study.outside.matches import MATCH_MIN, MATCHES
from turnout.study.outside.measures import (
    each,
    fast_metres_per_min,
    fast_share,
    metres_per_min,
    peak_mps,
    peak_share,
    share,
)
from turnout.study.outside.plays import FILM_HZ, Play, Run
from turnout.study.outside.register import row

PITCHES = {"40x25": (25.0, 40.0), "66x25": (25.0, 66.0), "40x50": (50.0, 40.0), "66x50": (50.0, 66.0)}
FIVES = {name: Play("end zones", 5, 5, size, 18) for name, size in PITCHES.items()}
SMALL = {age: Play("keep-ball", 4, 4, (20.0, 20.0), age) for age in (10, 12, 14)}
AGES = {age: Play("keep-ball", 4, 4, (20.0, 25.0), age) for age in (11, 15, 18)}
NEARLY_TOP = 0.99
WALK_MPS = 7 / 3.6  # slower than this is walking, common practice


def _declare_pitches() -> None:
    for name, play in FIVES.items():
        row(f"ssg-td-{name}", play, figures="m/min")(metres_per_min)
        row(f"ssg-peak-{name}", play, figures="m/s", needs=("S_PEAK",))(peak_mps)


_declare_pitches()


@row(
    "ssg-td-order", *FIVES.values(), figures=("66x25 more than 40x25", "40x50 more than 66x25", "66x50 more than 40x50")
)
def order_of_pitches(*runs: Run) -> list[float]:
    return [float(step) for step in np.diff([metres_per_min(run) for run in runs])]


@row("ssg-slope", *FIVES.values(), figures="m/min per doubling")
def slope_on_area(*runs: Run) -> float:
    doublings = [log2(run.play.size_m[0] * run.play.size_m[1] / 10) for run in runs]
    return float(np.polyfit(doublings, [metres_per_min(run) for run in runs], 1)[0])


@row("motion-09", *SMALL.values(), figures="players at 99 % of top speed", needs=("S_PEAK",))
def nobody_at_top_speed(*runs: Run) -> float:
    return float(sum((peak_share(run) >= NEARLY_TOP).sum() for run in runs))


@row("motion-11", FIVES["40x50"], figures="of top speed", needs=("S_PEAK_BALL",))
def peak_with_the_ball(run: Run) -> float:
    return float((each(run, "S_PEAK_BALL") / run.A[:, c.TOP]).mean())


@row("dir-01", figures="metres shorter")
def long_grass() -> float:
    """A ground ball struck at 10 m/s, with the surfaces play takes; no chance in it."""
    kick = {"speed_mps": 10.0, "inertia_ratio": ball("5").inertia_ratio, "drag_per_m": TABLE["DRAG"].value}
    short, wet = (
        stopping_distance_m(friction=ground.friction, deceleration_mps2=ground.roll_mps2, **kick)
        for ground in (surface("grass"), surface("wet grass"))
    )
    return short - wet


@row("dir-02", SMALL[12], AGES[18], figures="metres more to 99 % of top speed")
def way_to_top_speed(young: Run, grown: Run) -> float:
    """The players of two runs as they were drawn, sprinting from rest."""
    return _way_to_top_m(grown) - _way_to_top_m(young)


def _way_to_top_m(run: Run) -> float:
    late_s = log(1 / (1 - NEARLY_TOP)) / run.A[:, c.ALPHA]
    ways = zip(late_s, run.A, strict=True)
    return float(np.mean([sprint_m(time_s=t, alpha_per_s=A[c.ALPHA], top_speed_mps=A[c.TOP]) for t, A in ways]))


@row("dir-03", FIVES["40x50"], figures="m/s2 more", needs=("S_BRAKE", "S_PUSH"))
def braking_over_pushing(run: Run) -> float:
    return round(float((each(run, "S_BRAKE") - each(run, "S_PUSH")).mean()), 6)  # equal but for rounding is equal


@row("ssg-youth-band", *(Play("end zones", 5, 5, (20.0, 30.0), age) for age in (10, 13)), figures=("U10", "U13"))
def youth_metres(young: Run, older: Run) -> tuple[float, float]:
    return metres_per_min(young), metres_per_min(older)


@row("ssg-hs-share", Play("keep-ball", 5, 5, (30.0, 35.0), 18), figures="share of metres")
def fast_running_in_keep_ball(run: Run) -> float:
    return fast_share(run)


@row(
    "dir-14",
    Play("end zones", 7, 7, (31.7, 44.2), 13),
    Play("end zones", 7, 7, (44.8, 62.5), 13),
    Play("end zones", 11, 11, (39.6, 55.6), 13),
    figures="m/min more per e-fold of area than of players",
)
def area_over_numbers(base: Run, wide: Run, many: Run) -> float:
    """Area per player doubled at 7 a side against 11 a side at the same area per player."""
    area = (metres_per_min(wide) - metres_per_min(base)) / log(2)
    return area - abs(metres_per_min(many) - metres_per_min(base)) / log(11 / 7)


@row("dir-15", Play("keep-ball with neutrals", 4, 4, (25.0, 30.0), 18, neutral=2), figures="m/min less")
def neutrals_cover_less(run: Run) -> float:
    metres = [share(float(run.sums.U[at, c.U_DISTANCE]), float(run.sums.U[at, c.U_TIME]) / 60) for at in range(3)]
    return (metres[0] + metres[1]) / 2 - metres[2]


@row(
    "dir-17",
    *AGES.values(),
    figures=("fast U11 over U18", "fast U15 over U18", "walking U18 over U11", "walking U18 over U15"),
)
def younger_run_faster(*runs: Run) -> tuple[float, ...]:
    fast, slow = [fast_share(run) for run in runs], [walking_share(run) for run in runs]
    return fast[0] - fast[2], fast[1] - fast[2], slow[2] - slow[0], slow[2] - slow[1]


def walking_share(run: Run) -> float:
    """Share of player-time below 7 km/h, speeds over half a second."""
    every = int(FILM_HZ / 2)
    steps = np.diff(run.film.players_m[::every], axis=0)
    return float((np.hypot(steps[..., 0], steps[..., 1]) * 2 < WALK_MPS).mean())


ROOM = [Play("end zones", 5, 5, size, 16) for size in ((28.0, 35.7), (40.0, 50.0))]


@row("dir-18", *ROOM, figures=("m/min above 16 km/h more", "m/s faster"), needs=("S_PEAK",))
def room_to_sprint(tight: Run, wide: Run) -> tuple[float, float]:
    return fast_metres_per_min(wide) - fast_metres_per_min(tight), peak_mps(wide) - peak_mps(tight)


KEEP_OR_GOALS = [Play(game, 5, 5, (30.0, 40.0), 14) for game in ("keep-ball", "goals 12 x 6 ft")]


@row("dir-13", *KEEP_OR_GOALS, figures="m/min more in keep-ball")
def keep_ball_and_goals(keep: Run, goals: Run) -> float:
    return metres_per_min(keep) - metres_per_min(goals)


def _declare_matches() -> None:
    for name, play in MATCHES.items():
        row(f"ssg-youth-{name}", play, figures="m in 20 min")(metres_in_a_match)


def metres_in_a_match(run: Run) -> float:
    return MATCH_MIN * metres_per_min(run)


_declare_matches()
