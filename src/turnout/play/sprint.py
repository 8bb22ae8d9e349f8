"""How fast children of an age run: top speed and first acceleration, from one table of club boys."""

from dataclasses import dataclass
from typing import Literal

from turnout.evidence import number

AGES = (10, 12, 14)  # sprintprofile2025, Table 2: boys of U10, U12 and U14
Season = Literal["mid", "end", "mean"]


@dataclass(frozen=True)
class SprintProfile:
    """Top speed and initial acceleration of an age group; `note` says where the table does not reach."""

    top_speed_mps: float
    first_mps2: float
    note: str

    @property
    def alpha_per_s(self) -> float:
        """The rate of dv/dt = alpha (v_max - v): initial acceleration over top speed."""
        return self.first_mps2 / self.top_speed_mps


def sprint_profile(*, age: float, season: Season = "mean") -> SprintProfile:
    """The sprint of club boys in age group U`age`, linear between the table's ages and held at its ends.

    season: mid or end of the season, or the mean of both. Nothing was found for girls' splits: the note says so.
    """
    at = min(max(age, AGES[0]), AGES[-1])
    notes = ["boys' table; no figures were found for girls"]
    if at != age:
        notes.append(f"the table ends at U{at:g}: U{age:g} is shown as U{at:g}")
    return SprintProfile(_between(at, "v0", season), _between(at, "f0", season), "; ".join(notes))


def _between(age: float, part: str, season: Season) -> float:
    below = max(known for known in AGES if known <= age)
    above = min(known for known in AGES if known >= age)
    share = (age - below) / (above - below) if above > below else 0.0
    return (1 - share) * _known(below, part, season) + share * _known(above, part, season)


def _known(age: int, part: str, season: Season) -> float:
    seasons = ("mid", "end") if season == "mean" else (season,)
    return sum(number(f"sprint.boys.u{age}.{part}.{each}") for each in seasons) / len(seasons)
