"""What a caution is, and what an outside source of one is."""

from dataclasses import dataclass
from datetime import date
from typing import Literal

Level = Literal["stop", "caution", "default"]


@dataclass(frozen=True)
class Origin:
    """A source as the care box prints it: short name, year (None: undated), and its key in the evidence room."""

    name: str
    year: int | None
    reference: str

    def __str__(self) -> str:
        return f"{self.name}, {self.year if self.year else 'undated'}"


@dataclass(frozen=True)
class Caution:
    """One line of the care box: what to do now (at most 12 words), why, who says so, and how grave it is."""

    key: str
    do_now: str
    why: str
    source: str
    level: Level


@dataclass(frozen=True)
class National:
    """A value one country sets: for which ages, from when, when last looked up, and where the number is kept.

    ages: the youngest player's years ('supervision') or the age group's number ('heading'), both ends in.
    one_session_a: at most one session with heading in that time; None: the source sets no such limit.
    """

    rule: Literal["supervision", "heading"]
    country: str
    ages: tuple[int, int]
    value: str  # key of the number in the evidence room
    origin: Origin
    valid_from: date | None  # None: the source gives no date
    checked_on: date
    one_session_a: Literal["week", "month"] | None = None
