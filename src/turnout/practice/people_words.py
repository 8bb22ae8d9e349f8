"""People lines: `amber inside: 4 (2-5) in square` and its ties."""

import re
from collections.abc import Mapping

from turnout.practice.ground_words import PlaceError, place_called
from turnout.practice.model import Group, Home, PlaceDef, Source, Tie
from turnout.problems import TurnoutError
from turnout.reading import nearest

MOST = 24  # players of one group; a turnout is at most 24
COUNT = r"(?P<count>\d{1,3})"
TIE = r"(?P<group>[^\d()]+?)(?: (?P<sign>[+\-−]) ?(?P<offset>\d{1,2}))?"
RANGE = r"(?: \((?P<low>\d{1,3})(?: ?[-–] ?(?P<high>\d{1,3}))?\))?"
HOME = r"(?P<how>in|from|on the edge of) (?P<place>.+)"
LINE = re.compile(rf"(?:{COUNT}|{TIE}){RANGE} {HOME}")
SHAPE = "people read like “4 (2-5) in square”, “3 on the edge of square” or “amber inside - 1 (1-4) in square”"


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
    check_range(found, count, low, high)
    return Group(side, role, count, low, high, home_of(found, places), tie, source)


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


def check_range(found: re.Match[str], count: int, low: int, high: int) -> None:
    """Raise PeopleError for a range that ends before it begins, or a count outside it."""
    written = f"({found['low']}-{found['high']})" if found["low"] else str(count)
    if high > MOST:
        raise PeopleError(written, f"a group has at most {MOST} players")
    if low > high:
        raise PeopleError(written, "a range goes from the fewest to the most", f"({high}-{low})")
    if not low <= count <= high:
        raise PeopleError(f"{count} {written}", f"the designed number lies inside its range {low}-{high}")


def home_of(found: re.Match[str], places: Mapping[str, PlaceDef]) -> Home:
    """Where the group belongs."""
    try:
        place = place_called(found["place"], places)
    except PlaceError as error:
        raise PeopleError(
            error.read, error.expected.replace("no place above", "no place under ground"), error.nearest
        ) from None
    return Home(place, found["how"] == "on the edge of", found["how"] != "from")
