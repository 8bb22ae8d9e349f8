"""Where a group is at home: in a place, on its edge or some of its sides, behind one in a line, or at a point."""

import re
from collections.abc import Mapping
from typing import Any

from turnout.practice.model import Home, PlaceDef
from turnout.practice.place_parts import (
    COORDINATE,
    SIDES,
    UNIT,
    PlaceError,
    area_called,
    known_unit,
    place_called,
    point,
)
from turnout.problems import TurnoutError
from turnout.reading import nearest

SINGLE = (*SIDES, "left", "right")
DOUBLE = ("long", "short")
TWO = re.compile(r"(.+) with the ball, (.+?) without(?: it| the ball)?")
IN = re.compile(r"(in|from|on the edge of) (.+)")
BEHIND = re.compile(r"behind the (\w+) (?:end|side) of (.+)")
ON = re.compile(r"on the (\w+)(?: and (\w+))? (?:ends?|sides?) of (.+)")
AT = re.compile(rf"at \({COORDINATE}, ?{COORDINATE}\)(?: ?{UNIT})?")
HOMES = (
    "a home reads “in”, “from”, “on the edge of”, “on the long sides of”, “behind the south end of” a place or "
    "“at (0, -12)”"
)


class PeopleError(TurnoutError):
    """A people line that cannot be read."""

    def __init__(self, read: str, expected: str, near: str | None = None):
        self.read = read
        self.expected = expected
        self.nearest = near
        super().__init__(f"read “{read}”; {expected}")


def homes_of(said: str, places: Mapping[str, PlaceDef]) -> tuple[Home, Home | None]:
    """The home with the ball and, where it differs, the one without it; raises PeopleError."""
    two = TWO.fullmatch(said)
    try:
        if two is None:
            return home_of(said, places), None
        return playing(two[1], places), playing(two[2], places)
    except PlaceError as error:
        expected = error.expected.replace("no place above", "no place under ground")
        raise PeopleError(error.read, expected, error.nearest) from None


def playing(said: str, places: Mapping[str, PlaceDef]) -> Home:
    """One of two homes of a role; raises PeopleError for one that is off the field or a line."""
    home = home_of(said, places)
    if home.behind is not None or not home.fence:
        expected = "with two homes each is “in” a place, “on” its edge or one of its sides, or “at” a point"
        raise PeopleError(said, expected)
    area_called(home.place, places, "one of two homes")
    return home


def home_of(said: str, places: Mapping[str, PlaceDef]) -> Home:
    """One home; raises PeopleError or PlaceError."""
    if found := IN.fullmatch(said):
        return Home(place_called(found[2], places), found[1] == "on the edge of", found[1] != "from")
    if found := BEHIND.fullmatch(said):
        behind: Any = one_of(found[1], SIDES, "the sides of a place are north, south, east and west")
        place_called(found[2], places)
        return Home(area_called(found[2], places, "a line of those who wait"), behind=behind)
    if found := ON.fullmatch(said):
        return Home(area_called(found[3], places, "a side"), on_edge=True, sides=sides_of(found[1], found[2]))
    if found := AT.fullmatch(said):
        unit = known_unit(found[3] or "yd")
        return Home(next(iter(places)), at=point((found[1], found[2]), unit, said), at_unit=unit)
    raise PeopleError(said, HOMES)


def sides_of(first: str, second: str | None) -> tuple[str, ...]:
    """The sides of a place that a group stands on: one, two, the long or the short ones."""
    if second is None:
        known = (*SINGLE, *DOUBLE)
        return (one_of(first, known, f"the sides of a place are {', '.join(known[:-1])} and {known[-1]}"),)
    told = "two sides are two of north, south, east, west, left and right"
    return one_of(first, SINGLE, told), one_of(second, SINGLE, told)


def one_of(word: str, known: tuple[str, ...], expected: str) -> str:
    """A word of a few; raises PeopleError."""
    if word not in known:
        raise PeopleError(word, expected, nearest(word, known))
    return word
