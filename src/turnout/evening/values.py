"""Values a person types, read kindly: turnouts, minutes, spaces, ages, levels, names. What is wrong is said."""

import difflib
import re
from collections.abc import Iterable
from typing import NoReturn

from turnout.problems import BadInput, Problem

LEAST, MOST = 6, 24  # the turnouts every practice is asked about
LEVELS = ("new", "learning", "settled", "strong")
AGES = (6, 18)
MINUTES = (10.0, 180.0)
MINUTE_WORDS, SECOND_WORDS = ("m", "min", "mins", "minute", "minutes"), ("s", "sec", "secs", "second", "seconds")
MOST_SEED = 2**31 - 1
SECONDS = (60.0, 360_000.0)  # simulated: a minute to a hundred hours


def refuse(name: str, read: object, expected: str, nearest: str | None = None) -> NoReturn:
    """Stop with one problem about a value; `name` is the option or field it was typed into."""
    raise BadInput([Problem(name, None, None, str(read), expected, nearest)])


def nearest(word: str, known: Iterable[str]) -> str | None:
    """The known word nearest in spelling, or None."""
    names = {name.casefold(): name for name in known}
    close = difflib.get_close_matches(word.casefold(), names, n=1, cutoff=0.5)
    return names[close[0]] if close else None


def players_value(text: str, *, name: str = "--players") -> int:
    """A turnout from 6 to 24."""
    expected = f"a whole number of players from {LEAST} to {MOST}, such as 14"
    if not re.fullmatch(r"\s*\d{1,4}\s*", str(text)):
        refuse(name, text, expected)
    count = int(text)
    if not LEAST <= count <= MOST:
        refuse(name, text, expected, str(min(max(count, LEAST), MOST)))
    return count


def players_range(text: str, *, name: str = "--players") -> range:
    """`14` or `6-24` as a range of turnouts."""
    ends = re.fullmatch(r"\s*(\d{1,4})\s*(?:-|–|to)\s*(\d{1,4})\s*", text)
    if ends is None:
        count = players_value(text, name=name)
        return range(count, count + 1)
    first, last = (players_value(end, name=name) for end in ends.groups())
    if first > last:
        refuse(name, text, "the smaller turnout first", f"{last}-{first}")
    return range(first, last + 1)


def number(text: str, *, name: str, low: float, high: float, what: str, units: tuple[str, ...] = ()) -> float:
    """A number between two ends, both allowed; only its own `units` may follow. what: 'a number of minutes'."""
    found = re.fullmatch(r"\s*(\d+(?:[.,]\d+)?)\s*([a-z]*)\.?\s*", str(text), re.IGNORECASE)
    value = float(found[1].replace(",", ".")) if found and found[2].casefold() in ("", *units) else None
    if value is None or not low <= value <= high:
        refuse(name, text, f"{what} from {low:.0f} to {high:.0f}")
    return value


def whole_number(text: str, *, name: str, low: int, high: int, what: str) -> int:
    """A whole number between two ends, ends included."""
    if not re.fullmatch(r"\s*\d{1,10}\s*", str(text), re.ASCII) or not low <= int(text) <= high:
        refuse(name, text, f"{what} from {low} to {high}")
    return int(text)


def seed_value(text: str, *, name: str = "--seed") -> int:
    """A seed: the same seed gives the same answer."""
    return whole_number(text, name=name, low=0, high=MOST_SEED, what="a whole number")


def minutes_value(text: str, *, name: str = "--minutes") -> float:
    """The length of the hour in minutes."""
    return number(text, name=name, low=MINUTES[0], high=MINUTES[1], what="a number of minutes", units=MINUTE_WORDS)


def seconds_value(text: str, *, name: str = "--seconds") -> float:
    """The most simulated seconds a part may take."""
    return number(text, name=name, low=SECONDS[0], high=SECONDS[1], what="a number of seconds", units=SECOND_WORDS)


def age_value(text: str, *, name: str = "--age") -> int:
    """`U12` or `12` as 12."""
    found = re.fullmatch(r"\s*[uU]?-?\s*(\d{1,2})s?\s*", text)
    if found is None or not AGES[0] <= int(found[1]) <= AGES[1]:
        refuse(name, text, f"an age group from U{AGES[0]} to U{AGES[1]}, such as U12")
    return int(found[1])


def level_value(text: str, *, name: str = "--level") -> str:
    """One of the four levels."""
    return known_value(text, LEVELS, name=name, kind="a level")


def known_value(text: str, known: Iterable[str], *, name: str, kind: str) -> str:
    """A word that must be one of those known, in any case."""
    words = tuple(known)
    for word in words:
        if word.casefold() == text.strip().casefold():
            return word
    refuse(name, text, f"{kind}: {', '.join(words)}", nearest(text, words))
