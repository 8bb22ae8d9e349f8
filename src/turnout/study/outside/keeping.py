"""Rows about keeping the ball from others: fixed policies, three against one, unequal numbers."""

from dataclasses import replace

from turnout.study.outside.measures import episode_s, metres_by_side, pass_success, passes_per_possession
from turnout.study.outside.plays import Change, Play, Run
from turnout.study.outside.register import row

THREE_TWO = Play("keep it from them", 3, 2, (20.0, 20.0), 18)
RANDOM = (Change("NOISE", "set", 50.0, side=0),)  # what a decision is worth drowns in noise
HOLDING = (("HOLD", 50.0),)  # passes only when the sentence of eight seconds on the ball makes him
TASKS = [
    replace(THREE_TWO, size_m=size, **policy)
    for size in ((20.0, 20.0), (25.0, 25.0))
    for policy in ({}, {"changes": RANDOM}, {"weights": HOLDING})
]
THREE_ONE = {age: Play("keep it from them", 3, 1, (10.0, 10.0), age) for age in (10, 12, 14, 16)}
QUICKER = tuple(Change(column, "times", 0.7, side=0) for column in ("CONTROL_S", "THINK_S", "RELEASE_S"))
TRUER = tuple(Change(column, "times", 0.7, side=0) for column in ("AIM_SD", "WEIGHT_SD"))
UNEQUAL = {
    (age, blue): Play("keep-ball", 4, blue, (25.0, 30.0), age) for age in (11, 15, 18) for blue in (2, 4, 6)
}  # fmt: skip


@row("keep-order", *TASKS, figures=("sensible over random, 20 m", "random over hold, 20 m", "25 m", "25 m"))
def order_of_policies(*runs: Run) -> tuple[float, ...]:
    times = [episode_s(run) for run in runs]
    return times[0] - times[1], times[1] - times[2], times[3] - times[4], times[4] - times[5]


@row("keep-area", *TASKS, figures=("sensible, s longer", "random", "hold"))
def longer_on_bigger_squares(*runs: Run) -> tuple[float, ...]:
    times = [episode_s(run) for run in runs]
    return times[3] - times[0], times[4] - times[1], times[5] - times[2]


@row("dir-06", *THREE_ONE.values(), figures=("U12 over U10", "U14 over U10", "U16 over U10"))
def youngest_keep_it_shorter(*runs: Run) -> list[float]:
    first, *others = (passes_per_possession(run) for run in runs)
    return [other - first for other in others]


@row(
    "dir-07",
    THREE_ONE[14],
    replace(THREE_ONE[14], changes=QUICKER),
    replace(THREE_ONE[14], changes=TRUER),
    figures=("quicker", "truer"),
)
def quick_and_true(plain: Run, quicker: Run, truer: Run) -> tuple[float, float]:
    base = passes_per_possession(plain)
    return passes_per_possession(quicker) - base, passes_per_possession(truer) - base


@row("dir-21", UNEQUAL[18, 2], UNEQUAL[18, 6], figures=("4v2: m/min more", "4v6: m/min more"))
def outnumbered_cover_more(two: Run, six: Run) -> tuple[float, float]:
    four, outnumbered = metres_by_side(two)
    alone, crowd = metres_by_side(six)
    return outnumbered - four, alone - crowd


@row(
    "dir-22",
    *UNEQUAL.values(),
    figures=tuple(f"U{age}: 4v{a} over 4v{b}" for age in (11, 15, 18) for a, b in ((2, 4), (4, 6))),
)
def success_goes_with_superiority(*runs: Run) -> list[float]:
    success = [pass_success(run, 0) for run in runs]
    return [success[at + step] - success[at + step + 1] for at in (0, 3, 6) for step in (0, 1)]
