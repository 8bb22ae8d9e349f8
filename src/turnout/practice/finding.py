"""Searching the shelf: which practices take what is asked, and which of the wishes leaves none."""

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, fields, replace
from typing import Any

from turnout.practice.shelf_rows import Row

ENDING = re.compile(r"(?<=\w{3})(?:ing|es|ed|s)$")  # so that “passes” finds “passing”
LEAST_LETTERS = 3  # of a word before it counts as the beginning of another


@dataclass(frozen=True)
class Wanted:
    """What is asked of a practice; None and () ask nothing. space_m: a clear rectangle (across, up), run-off left
    off; scored and words: words that must all be there."""

    players: int | None = None
    space_m: tuple[float, float] | None = None
    minutes: float | None = None
    age: int | None = None
    role: str | None = None
    scored: tuple[str, ...] = ()
    words: tuple[str, ...] = ()

    def asked(self) -> list[str]:
        """The names of the wishes that ask something."""
        return [field.name for field in fields(self) if getattr(self, field.name) not in (None, ())]

    def without(self, name: str) -> "Wanted":
        """The same without one wish."""
        nothing: Any = () if name in ("scored", "words") else None
        return replace(self, **{name: nothing})


@dataclass(frozen=True)
class Match:
    """A practice that takes what is asked. areas: how many the players are shared over (1 when none are asked)."""

    row: Row
    areas: int = 1


def find(rows: Iterable[Row], wanted: Wanted) -> list[Match]:
    """The practices that take everything asked, in order of their key."""
    found = (match(row, wanted) for row in sorted(rows, key=lambda row: row.key))
    return [one for one in found if one]


def without_each(rows: Sequence[Row], wanted: Wanted) -> dict[str, int]:
    """Wish -> how many practices there were without it, the others standing."""
    return {name: len(find(rows, wanted.without(name))) for name in wanted.asked()}


def match(row: Row, wanted: Wanted) -> Match | None:
    """A practice with its areas, or None when it does not take what is asked."""
    areas = 1 if wanted.players is None else row.areas(wanted.players)
    if areas is None or not plain_wishes(row, wanted):
        return None
    if wanted.space_m is not None and not row.fits_on(*wanted.space_m, areas):
        return None
    return Match(row, areas)


def plain_wishes(row: Row, wanted: Wanted) -> bool:
    """Whether minutes, age, role and words are met."""
    called = {word.casefold() for word in row.called}
    return (
        (wanted.minutes is None or row.minutes[0] <= wanted.minutes <= row.minutes[1])
        and (wanted.age is None or row.ages[0] <= wanted.age <= row.ages[1])
        and (wanted.role is None or wanted.role.casefold() in called)
        and all(any(spoken(word, scored) for scored in row.scored) for word in wanted.scored)
        and all(spoken(word, row.words) for word in wanted.words)
    )


def spoken(word: str, text: str) -> bool:
    """Whether a word stands in a text, in whatever ending."""
    return any(alike(word, other) for other in re.findall(r"[^\W_]+", text))


def alike(one: str, other: str) -> bool:
    """Whether a word begins another, or is the same but for its ending."""
    a, b = one.casefold(), other.casefold()
    begins = len(a) >= LEAST_LETTERS and b.startswith(a)
    return begins or ENDING.sub("", a) == ENDING.sub("", b)


def roles_of(rows: Iterable[Row]) -> tuple[str, ...]:
    """Every side, role and other word for one, in order of the alphabet."""
    return tuple(sorted({word for row in rows for word in row.called}))


def words_of(rows: Iterable[Row]) -> set[str]:
    """Every word written on the shelf."""
    return {word.casefold() for row in rows for word in re.findall(r"[^\W_]{3,}", row.words)}
