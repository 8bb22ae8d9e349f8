"""The game a country offers an age group on a date: sides, pitch, goal, ball and time, from the dated tables."""

from dataclasses import dataclass
from datetime import date
from functools import cache
from re import fullmatch

from turnout.evidence import Value, values

COUNTRIES = {"England": "ENG", "Germany": "DEU", "Netherlands": "NLD", "USA": "USA"}
OLDEST_GROUP = 99


@dataclass(frozen=True)
class MatchFormat:
    """One row of a country's table: for which age groups, between which dates, and who says so. None: not said.

    sides: players a side as the source words it ('5v5', '2v2 or 3v3'). minutes likewise. Lengths in metres.
    """

    country: str
    ages: tuple[int, int]
    valid_from: date
    valid_to: date | None
    sides: str
    length_m: float | None
    width_m: float | None
    goal_width_m: float | None
    goal_height_m: float | None
    ball: str | None
    minutes: str | None
    reference: str
    check: bool  # the source is to be asked before it is relied on


def match_format(*, age: int, on: date, country: str = "England") -> MatchFormat | None:
    """What `country` offers the age group U`age` on a date; None where its table says nothing, or no match at all.

    Where an old and a new table both stand, the one that started last counts. Countries whose tables go by years of
    age instead of age groups are not read.
    """
    rows = [row for row in formats() if row.country == country and row.ages[0] <= age <= row.ages[1]]
    valid = [row for row in rows if row.valid_from <= on and (row.valid_to is None or on <= row.valid_to)]
    return max(valid, key=lambda row: row.valid_from, default=None)


@cache
def formats() -> tuple[MatchFormat, ...]:
    """Every row of every country's table that goes by age groups."""
    stems = [
        key.removesuffix(".players") for key in values() if fullmatch(r"format\.[A-Z]{3}\.\d{4}\..+\.players", key)
    ]
    names = {code: name for name, code in COUNTRIES.items()}
    return tuple(_row(stem, names[stem.split(".")[1]]) for stem in stems if stem.split(".")[1] in names)


def _row(stem: str, country: str) -> MatchFormat:
    players = values()[f"{stem}.players"]
    facts = dict(part.strip().split("=") for part in players.about.split(";") if part.count("=") == 1)
    ends = facts.get("valid_to")
    return MatchFormat(
        country,
        _ages(facts["ages"]),
        date.fromisoformat(facts["valid_from"]),
        date.fromisoformat(ends) if ends else None,
        str(players.value),
        _number(f"{stem}.length"),
        _number(f"{stem}.width"),
        _number(f"{stem}.goal-width"),
        _number(f"{stem}.goal-height"),
        _said(values().get(f"{stem}.ball")),
        _said(values().get(f"{stem}.minutes")),
        players.ref,
        any("CHECK" in value.about for key, value in values().items() if key.startswith(f"{stem}.")),
    )


def _ages(text: str) -> tuple[int, int]:
    """'u7' is (7, 7), 'u7-u8' (7, 8), 'u13-up' from 13."""
    first, _, last = text.removeprefix("u").partition("-")
    return int(first), OLDEST_GROUP if last == "up" else int(last.removeprefix("u") or first)


def _number(key: str) -> float | None:
    return values()[key].number if key in values() else None


def _said(value: Value | None) -> str | None:
    if value is None or value.value is None:
        return None
    return f"{value.value:g}" if isinstance(value.value, float) else value.value
