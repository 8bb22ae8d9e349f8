"""Units, paces, shares, markings, areas, time, adults: answered by measure, club, care and the values."""

import re

from asking import Given, answers

from turnout.care import adults_needed, youngest_age
from turnout.club.spaces import area_per_player_m2, area_word, usable_share
from turnout.evidence import number, value
from turnout.measure import metres, pace_length_m, step_length_m

# ---- units


@answers("unit-yd")
def yards_to_metres(given: Given) -> tuple[float, ...]:
    return tuple(metres(each, "yd") for each in given.numbers)


@answers("pace-01")
def pace_on_the_area(given: Given) -> tuple[float, ...]:
    yards, *paces = given.numbers
    return tuple(pace_length_m(known_m=metres(yards, "yd"), paces=count) for count in paces)


@answers("pace-02")
def child_steps(given: Given) -> tuple[float, ...]:
    pairs = zip(given.numbers[::2], given.numbers[1::2], strict=True)
    return tuple(step_length_m(speed_mps=speed, stride_s=stride) for speed, stride in pairs)


# ---- shares and markings


def share_of(*names: str) -> tuple[float, ...]:
    pitch = {"length_m": number("g3.playing.length"), "width_m": number("g3.playing.width")}
    sizes = [usable_share(name, edge_m=number("share.edge-margin"), **pitch) for name in names]
    return (*(length for length, _ in sizes), sizes[0][1])


SHARES = {
    "half": ("half",),
    "third-end": ("end third",),
    "third-middle": ("middle third",),
    "quarter": ("quarter",),
    "sixth-end": ("end sixth",),
    "eighth": ("middle eighth", "end eighth"),
}


def _answer_share(key: str, names: tuple[str, ...]) -> None:
    answers(f"share-{key}")(lambda given: share_of(*names))


def _answer_marking(key: str, *parts: str) -> None:
    answers(f"pitch-{key}", how="looked up")(lambda given: tuple(number(f"pitch.{part}") for part in parts))


for each, shares in SHARES.items():
    _answer_share(each, shares)
_answer_marking("goal", "goal-width", "goal-height")
_answer_marking("goal-area", "goal-area-width", "goal-area-depth")
_answer_marking("penalty-area", "penalty-area-width", "penalty-area-depth")
_answer_marking("penalty-mark", "penalty-mark")
_answer_marking("centre-circle-radius", "circle-radius")
_answer_marking("corner-arc", "corner-arc")


# ---- area per player


@answers("area-01")
def area_without_keepers(given: Given) -> float:
    across_m, up_m, one, other = given.numbers
    return area_per_player_m2(across_m=across_m, up_m=up_m, outfield=int(one + other))


@answers("area-02")
def area_of_pilot_pitches(given: Given) -> tuple[float, ...]:
    sizes, players = given.text.split(";")
    sides = [[metres(float(side), "yd") for side in pair] for pair in re.findall(r"(\d+)x(\d+)", sizes)]
    counts = [int(count) for count in re.findall(r"\d+", players)]
    grounds = zip(sides, counts, strict=True)
    return tuple(area_per_player_m2(across_m=a, up_m=b, outfield=count) for (a, b), count in grounds)


@answers("area-03")
def area_words(given: Given) -> str:
    return "; ".join(area_word(each) for each in given.numbers)


@answers("area-05", how="looked up")
def area_that_reaches_match_distance(given: Given) -> tuple[float, ...]:
    keep_ball, keepers = (value(f"app.match-distance.{kind}") for kind in ("possession", "with-keepers"))
    return tuple(x for each in (keep_ball, keepers) for x in (each.number, ((each.high or 0) - (each.low or 0)) / 2))


# ---- time


@answers("time-02")
def typical_hour(given: Given) -> tuple[float, ...]:
    hour_min = given.numbers[-1]
    return tuple(
        hour_min * number(f"session.typical.{part}") for part in ("playing", "training", "inactive", "transition")
    )


@answers("time-03", how="looked up")
def ball_rolling_mark(given: Given) -> float:
    return given.numbers[0] * number("session.ball-rolling.target")


# ---- adults


@answers("adults-8-13", "adults-8-6", "adults-10-16", "adults-10-17", "adults-14-20", "adults-14-21")
def adults(given: Given) -> int:
    youngest, players = (int(each) for each in given.numbers)
    group = next(age for age in range(5, 19) if youngest_age(age) == youngest)
    return adults_needed(players=players, age=group)
