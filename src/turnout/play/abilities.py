"""What players of an age and a level can do: six capability groups and the body, one row of numbers per player.

Levels: new, learning, settled, strong. Where a published figure exists it comes from the evidence room; every other
number is free (no source was found), set to sense, with the ranges of docs/model.md.
"""

from typing import NamedTuple

import numpy as np

from turnout.evidence import value
from turnout.play.kernel import columns as c
from turnout.play.kernel.chance import MASK, mix
from turnout.play.sprint import AGES, sprint_profile

LEVELS = ("new", "learning", "settled", "strong")
CAPABILITIES = ("technique", "scanning", "positioning", "timing", "movement", "disguise")

# capability -> column -> (new, learning, settled, strong) at U14; free
LADDERS: dict[str, dict[int, tuple[float, float, float, float]]] = {
    "technique": {
        c.AIM_SD: (0.240, 0.144, 0.102, 0.077),
        c.WEIGHT_SD: (0.25, 0.17, 0.12, 0.09),
        c.CONTROL_S: (0.62, 0.50, 0.42, 0.35),
        c.CLEAN: (0.86, 0.94, 0.975, 0.99),
        c.TACKLES: (0.85, 0.95, 1.0, 1.05),
        c.NOISE: (0.30, 0.18, 0.11, 0.08),
        c.WEAK: (1.5, 1.4, 1.29, 1.2),  # settled: shimotashiro2024, from 95 % ellipses
    },
    "scanning": {c.SCAN: (0.12, 0.22, 0.34, 0.5), c.THINK_S: (0.52, 0.42, 0.34, 0.27)},
    "positioning": {c.SPOT_NOISE: (0.5, 0.3, 0.15, 0.05)},
    "timing": {c.RELEASE_S: (0.36, 0.26, 0.17, 0.09)},
    "movement": {c.MOVE_S: (0.9, 0.65, 0.48, 0.36), c.MOVE_PACE: (0.42, 0.54, 0.64, 0.74)},
    "disguise": {c.DISGUISE_S: (0.0, 0.04, 0.09, 0.16)},
}
AGE_FACTOR = {c.AIM_SD: 0.095, c.CONTROL_S: 0.06, c.THINK_S: 0.06, c.NOISE: 0.05}  # worse per year under U14, free
CLUMSIER_A_YEAR = 0.15  # more first touches missed for every year under U14, fewer up to U18, free
SPREAD = {c.TOP: 0.05, c.AIM_SD: 0.15, c.CONTROL_S: 0.12, c.THINK_S: 0.12, c.SCAN: 0.2}  # between players, free


class Youngest(NamedTuple):
    """What is taken for the youngest age group simulated; free, below every measured age."""

    age: int = 7
    top_mps: float = 5.4
    push_mps2: float = 5.6
    kick_mps: float = 9.0


YOUNGEST = Youngest()
# no table for girls was found: shares of the boys' figures at 18, from memory, to be moved within 0.8 to 1
GIRLS_AT_18 = {c.TOP: 0.89, c.ACCEL: 0.92, c.CRUISE: 0.89, c.KICK_TOP: 0.82}
SEX_SHARE = {"boys": 0.0, "mixed": 0.5, "girls": 1.0}
LEFT_FOOTED = 0.2  # about one in five, common knowledge; from memory
CRUISE_SHARE = 0.35  # pace kept up without tiring as a share of top speed, free
HANDS_M = {7: 0.9, 18: 1.9}  # how far a keeper dives to a side: about his height less a standing reach, free
READS_FROM_AGE = 7  # the youngest run hard at everything; an adult takes the time he has; a straight line between, free
OLDEST_AGE = 18  # from here on an adult's top speed
GROWN_REACTION_S = 0.37  # zemkova: choice stepping of adults, 0.35 to 0.40
ACCEL_CAP_MPS2 = 5.8  # tracking shows 99 % of accelerations within about 4.5 m/s2; nobody near 10


def abilities(age: int, level: str = "settled", *, sex: str = "boys", **levels: str) -> np.ndarray:
    """One player's row (A_COLUMNS,) at an age group (12 for U12); capabilities may stand at levels of their own.

    sex: 'boys', 'girls' or 'mixed', of the squad; it changes running and kicking from U13 on
    Raises KeyError on an unknown capability or sex, ValueError on an unknown level.
    """
    row = np.zeros(c.A_COLUMNS)
    for capability, ladder in LADDERS.items():
        step = LEVELS.index(levels.pop(capability, level))
        for column, rungs in ladder.items():
            row[column] = rungs[step] * (1 + AGE_FACTOR.get(column, 0.0) * max(-4, 14 - age))
    if levels:
        raise KeyError(next(iter(levels)))
    row[c.CLEAN] = 1 - (1 - row[c.CLEAN]) * (1 + CLUMSIER_A_YEAR * max(-4, 14 - age) * (1 if age < 14 else 0.3))
    row[c.FOOT] = 1.0
    _body(row, age)
    _by_sex(row, age, sex)
    return row


def squad_abilities(number: int, age: int, level: str, seed: int, *, sex: str = "boys", **levels: str) -> np.ndarray:
    """Abilities of `number` players drawn around their level: (players, A_COLUMNS). The draw belongs to the seed."""
    rows = np.tile(abilities(age, level, sex=sex, **levels), (number, 1))
    for player in range(number):
        for column, spread in SPREAD.items():
            key = mix(mix(seed & MASK) ^ mix(player * 64 + column))
            rows[player, column] *= 1 + spread * (key / 2**31 - 1.0)
        if mix(mix(seed & MASK) ^ mix(player * 64 + c.FOOT)) < LEFT_FOOTED * 2**32:
            rows[player, c.FOOT] = -1.0
    return rows


def _by_sex(row: np.ndarray, age: int, sex: str) -> None:
    """Girls run and kick like boys up to U12; at 18 by these shares of the boys' table."""
    for column, at_18 in GIRLS_AT_18.items():
        row[column] *= 1 - SEX_SHARE[sex] * (1 - np.interp(age, [12, OLDEST_AGE], [1.0, at_18]))
    row[c.ALPHA] = row[c.ACCEL] / row[c.TOP] if SEX_SHARE[sex] else row[c.ALPHA]


def _body(row: np.ndarray, age: int) -> None:
    """Top speed, push, kick and reaction by age; between and beyond the measured ages a straight line (free)."""
    measured = [sprint_profile(age=each, season="end") for each in AGES]
    ages = [YOUNGEST.age, *AGES, OLDEST_AGE]
    tops = [YOUNGEST.top_mps, *(each.top_speed_mps for each in measured), value("sprint.adult.vmax").number]
    pushes = [YOUNGEST.push_mps2, *(each.first_mps2 for each in measured), measured[-1].first_mps2]
    top, push = np.interp(age, ages, tops), np.interp(age, ages, pushes)
    row[c.TOP], row[c.ALPHA] = top, push / top
    row[c.ACCEL] = min(ACCEL_CAP_MPS2, push)
    row[c.CRUISE] = CRUISE_SHARE * top
    row[c.READS] = np.interp(age, [READS_FROM_AGE, OLDEST_AGE], [0.0, 1.0])
    row[c.REACH_M] = np.interp(age, list(HANDS_M), list(HANDS_M.values()))
    kicks = [YOUNGEST.kick_mps, value("kick.max.u11").number, value("kick.max.u20").number]
    row[c.KICK_TOP] = np.interp(age, [YOUNGEST.age, 11, 20], kicks)
    measured_s = [value(f"reaction.foot.player.{years}y").number for years in ("8-9", "10-11", "12-13")]
    row[c.REACT_S] = np.interp(age - 1, [8.5, 10.5, 12.5, OLDEST_AGE], [*measured_s, GROWN_REACTION_S])
