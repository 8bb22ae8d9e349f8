"""Worked rotation designs, taken from outside, that a verifier and a scheduler can be held to."""

from dataclasses import dataclass
from functools import cache

from turnout.evidence.loader import find_key, read_rows

Group = tuple[int, ...]


@dataclass(frozen=True)
class Design:
    """Rounds of groups of players numbered from 0; groups 2i and 2i + 1 of a round meet when `opposed`."""

    key: str
    rounds: tuple[tuple[Group, ...], ...]
    opposed: bool

    @property
    def players(self) -> int:
        return 1 + max(player for groups in self.rounds for group in groups for player in group)


def design(key: str) -> Design:
    """The worked design filed under `key` ('whist-8', 'halves-14', ...); raises Unknown with the nearest key."""
    return find_key(designs(), key, "design")


@cache
def designs() -> dict[str, Design]:
    """Every worked design by key."""
    lines: dict[str, list[str]] = {}
    for row in read_rows("designs.csv"):
        lines.setdefault(row["design"], []).append(row["groups"])
    return {key: _design(key, rounds) for key, rounds in lines.items()}


def _design(key: str, rounds: list[str]) -> Design:
    opposed = any("v" in line for line in rounds)
    return Design(key, tuple(tuple(map(_group, line.replace("v", " ").split())) for line in rounds), opposed)


def _group(text: str) -> Group:
    return tuple(int(letter, 16) for letter in text)  # one sign a player: 0 to 9, then A to F
