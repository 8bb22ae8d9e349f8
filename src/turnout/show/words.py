"""Figures, lengths and times as a coach says them."""

from collections.abc import Sequence
from math import floor

from turnout.measure import PACE_M, YARD_M

NUMBERS = (
    "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve",
)  # fmt: skip


def number_word(count: int) -> str:
    """A count in words up to twelve, in figures beyond."""
    return NUMBERS[count] if 0 <= count < len(NUMBERS) else str(count)


def players(count: int) -> str:
    """'1 player', '14 players'."""
    return f"{count} player" + ("" if count == 1 else "s")


def listed(items: Sequence[str]) -> str:
    """'a', 'a and b', 'a, b and c'."""
    return items[0] if len(items) == 1 else ", ".join(items[:-1]) + (f" and {items[-1]}" if items else "")


def figure(value: float) -> str:
    """A figure to the two places that mean something: 0.43, 4.4, 21."""
    if abs(value) >= 9.95:
        return f"{value:.0f}"
    text = f"{value:.1f}" if abs(value) >= 0.995 else f"{value:.2f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def yards_text(length_m: float) -> str:
    """A length in yards, whole unless it is not: '16 yd', '5.5 yd'."""
    return f"{_trim(length_m / YARD_M)} yd"


def paces_text(length_m: float, *, pace_m: float = PACE_M) -> str:
    """A length in whole paces."""
    count = max(1, round(length_m / pace_m))
    return f"{count} pace" + ("" if count == 1 else "s")


def metres_text(length_m: float) -> str:
    """A length in metres to one decimal."""
    return f"{_trim(length_m)} m"


def size_yards(across_m: float, up_m: float) -> str:
    """Two sides in yards: '16 x 20 yd'."""
    return f"{_trim(across_m / YARD_M)} x {_trim(up_m / YARD_M)} yd"


def clock(start: str, minutes: float) -> str:
    """The time of day so many minutes after `start` ('18:00'), to the nearest minute; a half goes up."""
    hour, minute = (int(part) for part in start.split(":"))
    total = floor(hour * 60 + minute + minutes + 0.5) % (24 * 60)
    return f"{total // 60:02d}:{total % 60:02d}"


def minutes_text(minutes: float) -> str:
    """'12 min', '2½ min', '50 s'."""
    if minutes < 1:
        return f"{round(minutes * 60)} s"
    whole, rest = divmod(round(minutes * 4), 4)
    return f"{whole}{('', '¼', '½', '¾')[rest]} min"


def _trim(value: float) -> str:
    return f"{value:.1f}".rstrip("0").rstrip(".")
