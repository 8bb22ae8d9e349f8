"""The shelf searched by what a person typed."""

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from turnout.evening.values import age_value, known_value, nearest, number, players_value
from turnout.practice.finding import Match, Wanted, alike, find, roles_of, without_each, words_of
from turnout.practice.shelf import practice_files
from turnout.practice.shelf_rows import Row, row_of

MINUTES = (1.0, 60.0)  # of one practice


@dataclass(frozen=True)
class Answered:
    """What was found. all: how many there are; without: wish -> how many there were without it (when none was found);
    near: a word that was asked -> the nearest that is written on the shelf."""

    wanted: Wanted
    matches: tuple[Match, ...]
    all: int
    files: tuple[Path, ...]
    without: Mapping[str, int]
    near: Mapping[str, str]


def search(words: list[str], asked: Mapping[str, str | None]) -> Answered:
    """The practices of the shelf that take what is asked: players, space, minutes, age, role, scored (None: whatever).

    Raises BadInput naming the option that cannot be read.
    """
    files = practice_files()
    rows = [row_of(file) for file in files.values()]
    wanted = wanted_of(words, asked, rows)
    matches = find(rows, wanted)
    lost = {} if matches else without_each(rows, wanted)
    near = {} if matches else near_words((*wanted.words, *wanted.scored), rows)
    return Answered(wanted, tuple(matches), len(rows), tuple(files.values()), lost, near)


def wanted_of(words: list[str], asked: Mapping[str, str | None], rows: list[Row]) -> Wanted:
    """The wishes as values; raises BadInput."""
    players, space, minutes = asked.get("players"), asked.get("space"), asked.get("minutes")
    age, role, scored = asked.get("age"), asked.get("role"), asked.get("scored")
    return Wanted(
        players=None if players is None else players_value(players),
        space_m=None if space is None else clear_space(space),
        minutes=None if minutes is None else part_minutes(minutes),
        age=None if age is None else age_value(age),
        role=None if role is None else known_value(role, roles_of(rows), name="--role", kind="a role on the shelf"),
        scored=tuple((scored or "").split()),
        words=tuple(word for text in words for word in text.split()),
    )


def clear_space(text: str) -> tuple[float, float]:
    """A typed space less its run-off, metres (across, up); raises BadInput."""
    from turnout.club.read import read_space

    space = read_space(text)
    return space.across_m - 2 * space.run_off_m, space.up_m - 2 * space.run_off_m


def part_minutes(text: str) -> float:
    """How long one practice is to last; raises BadInput."""
    units = ("m", "min", "mins", "minute", "minutes")
    return number(text, name="--minutes", low=MINUTES[0], high=MINUTES[1], what="a number of minutes", units=units)


def near_words(asked: tuple[str, ...], rows: list[Row]) -> dict[str, str]:
    """The nearest written word of each that is written nowhere."""
    known = words_of(rows)
    unknown = [word for word in asked if not any(alike(word, other) for other in known)]
    return {word: found for word in unknown if (found := nearest(word, known))}
