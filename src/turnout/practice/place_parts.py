"""What every place expression is made of: a length, the name of a place above, and the fault of one that fails."""

from collections.abc import Mapping

from turnout.measure import UNITS_M, metres
from turnout.practice.model import AREAS, PlaceDef
from turnout.problems import TurnoutError
from turnout.reading import nearest

NUMBER = r"(\d{1,4}(?:\.\d{1,3})?)"
UNIT = r"([a-z]+)"
COORDINATE = r"([+\-−]?\d{1,3}(?:\.\d{1,2})?)"
SIDES = ("north", "south", "east", "west")
FARTHEST_M = 100.0
SMALLEST_M, LARGEST_M = 0.5, 150.0  # anything outside is a slip of the pen; own choice
UNIT_WORDS = {
    "yards": "yd", "yard": "yd", "yds": "yd", "metres": "m", "metre": "m", "meters": "m", "feet": "ft", "foot": "ft",
    "pace": "paces", "steps": "paces",
}  # fmt: skip


class PlaceError(TurnoutError):
    """A place expression that cannot be read."""

    def __init__(self, read: str, expected: str, near: str | None = None):
        self.read = read
        self.expected = expected
        self.nearest = near
        super().__init__(f"read “{read}”; {expected}")


def length(number: str, unit: str) -> float:
    """A length in metres; raises PlaceError for an unknown unit or an absurd size."""
    value_m = metres(float(number), known_unit(unit))
    if not SMALLEST_M <= value_m <= LARGEST_M:
        raise PlaceError(f"{number} {unit}", f"a length lies between {SMALLEST_M:g} m and {LARGEST_M:g} m")
    return value_m


def known_unit(unit: str) -> str:
    """The unit as written; raises PlaceError for an unknown one."""
    if unit not in UNITS_M:
        near = UNIT_WORDS.get(unit) or nearest(unit, UNITS_M)
        raise PlaceError(unit, "lengths are in yd, m, ft or paces", near)
    return unit


def place_called(name: str, known: Mapping[str, PlaceDef]) -> str:
    """The declared name for a place as written; raises PlaceError."""
    wanted = name.strip().casefold().removeprefix("the ")
    for own in known:
        if own.casefold() == wanted:
            return own
    above = ", ".join(known) or "none yet"
    raise PlaceError(name.strip(), f"no place above has this name (places: {above})", nearest(wanted, known))


def area_called(name: str, known: Mapping[str, PlaceDef], what: str) -> str:
    """The declared name of an area, for something that has sides or pieces; raises PlaceError for a line or a list."""
    own = place_called(name, known)
    if known[own].kind not in AREAS:
        areas = ", ".join(key for key, place in known.items() if place.kind in AREAS)
        raise PlaceError(name.strip(), f"{what} belongs to one area (areas: {areas or 'none yet'})")
    return own


def side_called(side: str) -> str:
    """A side of a place; raises PlaceError."""
    if side not in SIDES:
        raise PlaceError(side, "the sides of a place are north, south, east and west", nearest(side, SIDES))
    return side


def point(pair: tuple[str, str], unit: str, at: str) -> tuple[float, float]:
    """A point in metres; raises PlaceError for one far away."""
    x_m, y_m = (metres(float(text.replace("−", "-")), unit) for text in pair)
    if max(abs(x_m), abs(y_m)) > FARTHEST_M:
        raise PlaceError(at, f"a point lies within {FARTHEST_M:g} m of the middle of the field")
    return x_m, y_m
