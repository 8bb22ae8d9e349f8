"""What a week asks of a group: minutes times the effort the coach gave the session. Of the group, never of a child."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import sqrt
from typing import Literal

HARDEST = 10.0  # of the ten-point scale of effort (evidence: load.anchor)
Spread = Literal["population", "sample"]


@dataclass(frozen=True)
class Week:
    """The load of a week, arbitrary units (minutes times effort); monotony and strain None where they have no meaning.

    monotony: mean day over spread of days; strain: total times monotony. `spread` says which of the two SDs it is.
    """

    total: float
    mean: float
    sd: float
    monotony: float | None
    strain: float | None
    spread: Spread


def session_load(*, minutes: float, effort: float) -> float:
    """The load of one session or match: minutes times effort, 0 to 10 (evidence: foster2001).

    Raises ValueError on negative minutes or an effort off the scale.
    """
    if minutes < 0 or not 0 <= effort <= HARDEST:
        raise ValueError(f"minutes are not negative and effort is 0 to {HARDEST:.0f}, not {minutes} and {effort}")
    return minutes * effort


def week_of(days: Sequence[float], *, spread: Spread = "population") -> Week:
    """The week of daily loads, rest days as 0 (evidence: foster1998, which leaves the kind of SD open: say which).

    Days that are all alike have no spread, so neither monotony nor strain: None, and no division. Raises ValueError
    for fewer than two days.
    """
    if len(days) < 2:
        raise ValueError("a week has at least two days to compare; rest days count as 0")
    mean = sum(days) / len(days)
    away = sum((day - mean) ** 2 for day in days)
    sd = 0.0 if max(days) == min(days) else sqrt(away / (len(days) - (spread == "sample")))
    monotony = mean / sd if sd > 0 else None
    total = float(sum(days))
    return Week(total, mean, sd, monotony, None if monotony is None else total * monotony, spread)
