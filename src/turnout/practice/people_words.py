"""People lines: `amber inside: 4 (2-5) in square`, ties, keepers, many small sides and those who wait."""

import re
from collections.abc import Mapping
from typing import Any

from turnout.practice.model import GOALS, LINES, Group, Home, PlaceDef, Source, Tie
from turnout.practice.place_parts import PlaceError, area_called, place_called
from turnout.problems import TurnoutError
from turnout.reading import nearest

MOST = 24  # players of one group; a turnout is at most 24
COUNT = r"(?P<count>\d{1,3})"
TIE = r"(?P<group>[^\d()]+?)(?: (?P<sign>[+\-−]) ?(?P<offset>\d{1,2}))?"
RANGE = r"(?: \((?P<low>\d{1,3})(?: ?[-–] ?(?P<high>\d{1,3}))?\))?"
OF = r"(?: of (?P<of>\d{1,2}))?"
HOME = r"(?P<how>in|from|on the edge of|behind the (?P<side>\w+) (?:end|side) of) (?P<place>.+)"
LINE = re.compile(rf"(?:{COUNT}|{TIE}){RANGE}{OF} {HOME}")
SHAPES = (
    "“4 (2-5) in square”", "“3 on the edge of square”", "“amber inside - 1 (1-4) in square”", "“1 in north goal”",
    "“6 (2-10) of 2 in square”", "“2 (0-6) behind the south end of pitch”",
)  # fmt: skip
SHAPE = f"people read like {', '.join(SHAPES[:-1])} or {SHAPES[-1]}"
SIDES = ("north", "south", "east", "west")


class PeopleError(TurnoutError):
    """A people line that cannot be read."""

    def __init__(self, read: str, expected: str, near: str | None = None):
        self.read = read
        self.expected = expected
        self.nearest = near
        super().__init__(f"read “{read}”; {expected}")


def read_people(
    key: str, text: str, places: Mapping[str, PlaceDef], above: Mapping[str, Group], source: Source | None = None
) -> Group:
    """One people line as a group: the first word of `key` is the side, the rest the role. `above` are the groups a
    tie may follow. Raises PeopleError."""
    found = LINE.fullmatch(" ".join(text.split()))
    if found is None:
        raise PeopleError(text, SHAPE)
    side, _, role = " ".join(key.split()).partition(" ")
    tie, count = tie_of(found, above)
    low, high = range_of(found, count, tie)
    if tie:
        count = min(high, max(low, count))
    of = unit_size(found, tie, role)
    check_range(found, count, low, high, of)
    home = home_of(found, places)
    check_line(found, places[home.place].kind, of)
    keeper = places[home.place].kind == "goal"
    return Group(side, role, count * of, low * of, high * of, home, tie, source, of=of, keeper=keeper)


def unit_size(found: re.Match[str], tie: Tie | None, role: str) -> int:
    """How many players each of many small sides has (`of 2`), 1 without; raises PeopleError where they cannot be."""
    if found["of"] is None:
        return 1
    of = int(found["of"])
    if not 2 <= of <= MOST // 2:
        raise PeopleError(f"of {found['of']}", f"small sides have from 2 to {MOST // 2} players each")
    if tie:
        raise PeopleError(f"of {of}", "how many small sides there are is a number, not another group's")
    if role:
        raise PeopleError(f"of {of}", f"many small sides go by one word, such as “pairs: 6 (3-10) of {of} in …”")
    if found["how"] not in ("in", "from"):
        raise PeopleError(found["how"], "many small sides are at home in a place: “in” or “from”")
    return of


def check_line(found: re.Match[str], kind: str, of: int) -> None:
    """Raise PeopleError for a home that is a line, unless it is a keeper's goal."""
    if kind == "goal" and found["how"] == "in" and of == 1:
        if (high := int(found["high"] or found["low"] or found["count"] or 1)) > 1:
            raise PeopleError(str(high), "one keeper is in a goal: “1 in …”, or “1 (0-1) in …” if it may be left out")
        return
    if kind in GOALS:
        said = "a small goal has no keeper; a keeper is “in” a goal" if kind == "small goal" else "a keeper is “in” it"
        raise PeopleError(found["place"], f"a {kind} is a line: {said}, for example “1 in {found['place']}”")
    if kind in LINES:
        raise PeopleError(found["place"], "a gate is a line and nobody's home; name the place around it")


def tie_of(found: re.Match[str], above: Mapping[str, Group]) -> tuple[Tie | None, int]:
    """The tie, if the count is another group's, and the designed count."""
    if found["count"]:
        return None, int(found["count"])
    name = found["group"].strip()
    own = next((key for key in above if key.casefold() == name.casefold()), None)
    if own is None:
        listed = ", ".join(above) or "none"
        raise PeopleError(name, f"a tie follows a group on a line above (groups: {listed})", nearest(name, above))
    offset = int(found["offset"] or 0) * (-1 if found["sign"] in ("-", "−") else 1)
    return Tie(own, offset), above[own].count + offset


def range_of(found: re.Match[str], count: int, tie: Tie | None) -> tuple[int, int]:
    """The allowed range; without one a number is fixed and a tie may be anything from none to the most."""
    if found["low"] is None:
        return (0, MOST) if tie else (count, count)
    low = int(found["low"])
    return low, int(found["high"]) if found["high"] else low


def check_range(found: re.Match[str], count: int, low: int, high: int, of: int = 1) -> None:
    """Raise PeopleError for a range that ends before it begins, a count outside it, or too many small sides."""
    written = f"({found['low']}-{found['high']})" if found["low"] else str(count)
    if high * of > MOST:
        raise PeopleError(
            written, f"a group has at most {MOST} players" + (f": {MOST // of} of {of}" if of > 1 else "")
        )
    if of > 1 and low < 1:
        raise PeopleError(written, "of many small sides at least one plays")
    if low > high:
        raise PeopleError(written, "a range goes from the fewest to the most", f"({high}-{low})")
    if not low <= count <= high:
        raise PeopleError(f"{count} {written}", f"the designed number lies inside its range {low}-{high}")


def home_of(found: re.Match[str], places: Mapping[str, PlaceDef]) -> Home:
    """Where the group belongs."""
    behind: Any = found["side"]
    if behind is not None and behind not in SIDES:
        raise PeopleError(behind, "the sides of a place are north, south, east and west", nearest(behind, SIDES))
    try:
        place = place_called(found["place"], places)
        if behind is not None:
            area_called(place, places, "a line of those who wait")
    except PlaceError as error:
        raise PeopleError(
            error.read, error.expected.replace("no place above", "no place under ground"), error.nearest
        ) from None
    return Home(place, found["how"] == "on the edge of", found["how"] != "from", behind)
