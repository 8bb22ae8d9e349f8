"""People lines: `amber inside: 4 (2-5) in square`, ties, keepers, many small sides and those who wait."""

import re
from collections.abc import Mapping

from turnout.practice.home_words import PeopleError, homes_of
from turnout.practice.model import GOALS, LINES, Group, Home, PlaceDef, Source, Tie
from turnout.reading import nearest

__all__ = ["SHAPES", "PeopleError", "read_people"]

MOST = 24  # players of one group; a turnout is at most 24
COUNT = r"(?P<count>\d{1,3})"
TIE = r"(?P<group>[^\d()]+?)(?: (?P<sign>[+\-−]) ?(?P<offset>\d{1,2}))?"
RANGE = r"(?: \((?P<low>\d{1,3})(?: ?[-–] ?(?P<high>\d{1,3}))?\))?"
OF = r"(?: of (?P<of>\d{1,2}))?"
HOME = r"(?P<home>(?:in|from|on|behind|at) .+)"
LINE = re.compile(rf"(?:{COUNT}|{TIE}){RANGE}{OF} {HOME}")
SHAPES = (
    "“4 (2-5) in square”", "“3 on the edge of square”", "“amber inside - 1 (1-4) in square”", "“1 in north goal”",
    "“6 (2-10) of 2 in square”", "“2 (0-6) behind the south end of pitch”", "“2 (0-3) on the long sides of pitch”",
    "“1 at (0, -12)”", "“2 on the left side of pitch with the ball, in pitch without”",
)  # fmt: skip
SHAPE = f"people read like {', '.join(SHAPES[:-1])} or {SHAPES[-1]}"


def read_people(
    key: str, text: str, places: Mapping[str, PlaceDef], above: Mapping[str, Group], source: Source | None = None
) -> Group:
    """One people line as a group: the first word of `key` is the side, the rest the role. `above` are the groups a
    tie may follow. Raises PeopleError."""
    found = LINE.fullmatch(" ".join(text.split()))
    if found is None:
        raise PeopleError(text, SHAPE)
    side, role, feeds = named(key)
    tie, count = tie_of(found, above)
    low, high = range_of(found, count, tie)
    if tie:
        count = min(high, max(low, count))
    home, without = homes_of(found["home"], places)
    of = unit_size(found, home, tie, role)
    check_range(found, count, low, high, of)
    check_line(found, home, places[home.place].kind, of)
    check_feeds(key, home, feeds)
    keeper = places[home.place].kind == "goal"
    return Group(
        side, role, count * of, low * of, high * of, home, tie, source, of=of, keeper=keeper, without=without,
        feeds=feeds,
    )  # fmt: skip


def named(key: str) -> tuple[str, str, tuple[str, ...]]:
    """Side, role and whom those who wait are waiting for: `waiting for attackers` has the role “for attackers”."""
    side, _, role = " ".join(key.split()).partition(" ")
    return side, role, (role.removeprefix("for "),) if role.startswith("for ") else ()


def check_feeds(key: str, home: Home, feeds: tuple[str, ...]) -> None:
    """Raise PeopleError for a line that waits for a role and stands elsewhere."""
    if feeds and home.behind is None:
        raise PeopleError(key, "those who wait for a role stand “behind the south end of …”")


def unit_size(found: re.Match[str], home: Home, tie: Tie | None, role: str) -> int:
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
    if home.on_edge or home.at or home.behind:
        raise PeopleError(how_of(home), "many small sides are at home in a place: “in” or “from”")
    return of


def how_of(home: Home) -> str:
    """The words before the place of a home that is not inside it."""
    return "at" if home.at else "behind" if home.behind else "on" if home.sides else "on the edge of"


def check_line(found: re.Match[str], home: Home, kind: str, of: int) -> None:
    """Raise PeopleError for a home that is a line, unless it is a keeper's goal."""
    if kind == "goal" and home.fence and not home.on_edge and of == 1:
        if (high := int(found["high"] or found["low"] or found["count"] or 1)) > 1:
            raise PeopleError(str(high), "one keeper is in a goal: “1 in …”, or “1 (0-1) in …” if it may be left out")
        return
    if kind in GOALS:
        said = "a small goal has no keeper; a keeper is “in” a goal" if kind == "small goal" else "a keeper is “in” it"
        raise PeopleError(home.place, f"a {kind} is a line: {said}, for example “1 in {home.place}”")
    if kind in LINES:
        raise PeopleError(home.place, "a gate is a line and nobody's home; name the place around it")


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
