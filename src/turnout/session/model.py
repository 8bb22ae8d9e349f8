"""A session: practices in order, with their share of the hour."""

from dataclasses import dataclass

from turnout.practice.model import Practice


@dataclass(frozen=True)
class Part:
    """One practice of the hour with the steps taken and the success the coach wants (shares, 0 to 1)."""

    practice: Practice  # steps applied
    minutes: float
    steps: tuple[str, ...] = ()
    success: tuple[float, float] | None = None
    may_be_left_out: bool = False


@dataclass(frozen=True)
class Session:
    """The hour as written: aim, age group, expected turnout, parts in order."""

    key: str
    name: str
    age: int
    aim: str
    minutes: float
    expected: tuple[int, int]
    parts: tuple[Part, ...]
