"""Rows that count what players do: actions, tackles, balls out and won, by format and by pitch."""

from dataclasses import replace
from math import log

import numpy as np

from turnout.study.outside.matches import MATCH_MIN, MATCHES, match
from turnout.study.outside.measures import (
    actions_per_min,
    actions_per_player_min,
    out_per_min,
    pass_success,
    share,
)
from turnout.study.outside.plays import Play, Run
from turnout.study.outside.register import row

THREES = Play("goals 12 x 6 ft", 3, 3, (25.0, 30.0), 18, "strong")
NINES = Play("goals 16 x 7 ft", 9, 9, (50.0, 60.0), 18, "strong")
KEEP = [Play("keep-ball", 5, 5, size, 14) for size in ((25.0, 30.0), (28.9, 34.6), (32.3, 38.7))]
LITTLE = Play("goals 12 x 6 ft", 4, 4, (20.0, 30.0), 10)


def actions_in_a_match(run: Run) -> float:
    return MATCH_MIN * actions_per_player_min(run)


def _declare_matches() -> None:
    for name, play in MATCHES.items():
        row(f"ssg-act-{name}", play, figures="actions in 20 min")(actions_in_a_match)


_declare_matches()


@row("ssg-act-ratio-1", MATCHES["u10-5v5"], MATCHES["u10-8v8"], figures="times")
def fives_over_eights(five: Run, eight: Run) -> float:
    return share(actions_per_player_min(five), actions_per_player_min(eight))


@row("ssg-act-ratio-2", MATCHES["u13-8v8"], MATCHES["u13-11v11"], figures="times")
def eights_over_elevens(eight: Run, eleven: Run) -> float:
    return share(actions_per_player_min(eight), actions_per_player_min(eleven))


@row("ssg-act-exponent", match(5, 13), *(MATCHES[f"u13-{a}v{a}"] for a in (8, 11)), figures="exponent")
def exponent_of_numbers(*runs: Run) -> float:
    numbers = [log(run.play.amber + 1) for run in runs]  # the keeper is one of a side
    return float(np.polyfit(numbers, [log(actions_per_player_min(run)) for run in runs], 1)[0])


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
