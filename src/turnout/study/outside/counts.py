"""Rows that count what players do: actions, tackles, balls out and won, by format and by pitch."""

from dataclasses import replace
from math import log

import numpy as np

from turnout.study.outside.measures import (
    actions_per_min,
    actions_per_player_min,
    out_per_min,
    pass_success,
    share,
    tackles_per_min,
)
from turnout.study.outside.plays import Play, Run
from turnout.study.outside.register import row, waits

# Pitches of the formats are an association's usual ones: the study did not record its own. Across, up the page.
FORMATS = {5: (30.0, 40.0), 8: (52.5, 68.0), 11: (68.0, 105.0)}
YOUNG = {players: Play("end zones", players, players, FORMATS[players], 10) for players in (5, 8)}
OLDER = {players: Play("end zones", players, players, FORMATS[players], 13) for players in (5, 8, 11)}
DUELS = [Play("end zones", 5, 5, size, 18) for size in ((20.0, 30.0), (30.0, 40.0))]
THREES = Play("end zones", 3, 3, (25.0, 30.0), 18, "strong")
NINES = Play("end zones", 9, 9, (50.0, 60.0), 18, "strong")
KEEP = [Play("keep-ball", 5, 5, size, 14) for size in ((25.0, 30.0), (28.9, 34.6), (32.3, 38.7))]
LITTLE = Play("end zones", 5, 5, (20.0, 30.0), 10)


@row("ssg-act-ratio-1", YOUNG[5], YOUNG[8], figures="times")
def fives_over_eights(five: Run, eight: Run) -> float:
    return share(actions_per_player_min(five), actions_per_player_min(eight))


@row("ssg-act-ratio-2", OLDER[8], OLDER[11], figures="times")
def eights_over_elevens(eight: Run, eleven: Run) -> float:
    return share(actions_per_player_min(eight), actions_per_player_min(eleven))


@row("ssg-act-exponent", *OLDER.values(), figures="exponent")
def exponent_of_numbers(*runs: Run) -> float:
    numbers = [log(run.play.amber) for run in runs]
    return float(np.polyfit(numbers, [log(actions_per_player_min(run)) for run in runs], 1)[0])


@row("ssg-duel", *DUELS, figures="times")
def tackles_on_half_the_area(small: Run, large: Run) -> float:
    return share(tackles_per_min(small), tackles_per_min(large))


@row("dir-27", THREES, NINES, figures=("actions more a minute, all", "actions fewer a minute, each"))
def all_and_each(three: Run, nine: Run) -> tuple[float, float]:
    each = actions_per_player_min(three) - actions_per_player_min(nine)
    return actions_per_min(nine) - actions_per_min(three), each


@row("dir-28", *KEEP, figures=("100 over 75 m2", "125 over 100 m2"))
def success_with_area(*runs: Run) -> list[float]:
    return [float(step) for step in np.diff([pass_success(run) for run in runs])]


@row(
    "dir-29",
    LITTLE,
    replace(LITTLE, size_m=(30.0, 40.0)),
    figures=("actions more each on the small", "balls out more on the small", "success higher on the large"),
)
def small_and_large(small: Run, large: Run) -> tuple[float, float, float]:
    more = actions_per_player_min(small) - actions_per_player_min(large)
    return more, out_per_min(small) - out_per_min(large), pass_success(large) - pass_success(small)


waits("ssg-act-u10-5v5", "ssg-act-u10-8v8", "ssg-act-u13-8v8", "ssg-act-u13-11v11", "ssg-shots", "ssg-poss")
waits("dir-19", "dir-20", "dir-25")
