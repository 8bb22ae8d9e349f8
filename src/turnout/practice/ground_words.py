"""Place expressions: one line of `ground` as written, to places."""

import re
from collections.abc import Mapping

from turnout.measure import UNITS_M, metres
from turnout.practice.model import PlaceDef, Source
from turnout.problems import TurnoutError
from turnout.reading import nearest

NUMBER = r"(\d{1,4}(?:\.\d{1,3})?)"
UNIT = r"([a-z]+)"
SMALLEST_M, LARGEST_M = 0.5, 150.0  # anything outside is a slip of the pen; own choice
UNIT_WORDS = {
    "yards": "yd", "yard": "yd", "yds": "yd", "metres": "m", "metre": "m", "meters": "m", "feet": "ft", "foot": "ft",
    "pace": "paces", "steps": "paces",
}  # fmt: skip
PIECES = {"halves": 2, "thirds": 3}
SHAPES = {
    "rectangle": "“rectangle 16 x 16 yd”",
    "circle": "“circle 18 yd across”",
    "strip": "“strip 5 yd inside the north end of pitch”",
    "thirds": "“thirds of pitch from west to east (left, middle, right)”",
    "halves": "“halves of pitch from south to north (near half, far half)”",
}
RECTANGLE = re.compile(rf"rectangle {NUMBER} ?x ?{NUMBER} ?{UNIT}")
CIRCLE = re.compile(rf"circle {NUMBER} ?{UNIT} across")
STRIP = re.compile(rf"strip {NUMBER} ?{UNIT} (inside|beyond) the (north|south|east|west) (?:end|side) of (.+)")
PARTS = re.compile(r"(halves|thirds) of (.+?) from (west to east|south to north) ?\((.+)\)")


class PlaceError(TurnoutError):
    """A place expression that cannot be read."""

    def __init__(self, read: str, expected: str, near: str | None = None):
        self.read = read
        self.expected = expected
        self.nearest = near
        super().__init__(f"read “{read}”; {expected}")


def read_place(name: str, text: str, known: Mapping[str, PlaceDef], source: Source | None = None) -> list[PlaceDef]:
    """The places one line of ground declares (halves and thirds declare their pieces too); `known` are those above
    it by name. Raises PlaceError."""
    said = " ".join(text.split())
    if found := RECTANGLE.fullmatch(said):
        across, up, unit = found.groups()
        return [PlaceDef(name, "rectangle", length(across, unit), length(up, unit), unit=unit, source=source)]
    if found := CIRCLE.fullmatch(said):
        return [PlaceDef(name, "circle", across_m=length(*found.groups()), unit=found[2], source=source)]
    if found := STRIP.fullmatch(said):
        return [strip(name, found, known, source)]
    if found := PARTS.fullmatch(said):
        return pieces(name, found, known, source)
    return [members(name, said, known, source)]


def length(number: str, unit: str) -> float:
    """A length in metres; raises PlaceError for an unknown unit or an absurd size."""
    if unit not in UNITS_M:
        near = UNIT_WORDS.get(unit) or nearest(unit, UNITS_M)
        raise PlaceError(unit, "lengths are in yd, m, ft or paces", near)
    value_m = metres(float(number), unit)
    if not SMALLEST_M <= value_m <= LARGEST_M:
        raise PlaceError(f"{number} {unit}", f"a length lies between {SMALLEST_M:g} m and {LARGEST_M:g} m")
    return value_m


def place_called(name: str, known: Mapping[str, PlaceDef]) -> str:
    """The declared name for a place as written; raises PlaceError."""
    wanted = name.strip().casefold().removeprefix("the ")
    for own in known:
        if own.casefold() == wanted:
            return own
    above = ", ".join(known) or "none yet"
    raise PlaceError(name.strip(), f"no place above has this name (places: {above})", nearest(wanted, known))


def shape_like(word: str) -> tuple[str, str | None]:
    """What a place that begins with `word` should read like, and the nearest shape if the word is none."""
    if word in SHAPES:
        return f"a place of this kind reads like {SHAPES[word]}, with numbers above zero", None
    return f"a place reads like {', '.join(SHAPES.values())} or a list of places", nearest(word, SHAPES)


def strip(name: str, found: re.Match[str], known: Mapping[str, PlaceDef], source: Source | None) -> PlaceDef:
    """A strip inside or beyond one side of a place."""
    depth, unit, how, side, of = found.groups()
    return PlaceDef(
        name, "strip", depth_m=length(depth, unit), inside=how == "inside", side=side,  # type: ignore[arg-type]
        of=place_called(of, known), unit=unit, source=source,
    )  # fmt: skip


def pieces(name: str, found: re.Match[str], known: Mapping[str, PlaceDef], source: Source | None) -> list[PlaceDef]:
    """Halves or thirds with their own names, and the whole line's name for the list of them."""
    count, of = PIECES[found[1]], place_called(found[2], known)
    names = [part.strip() for part in found[4].split(",")]
    if len(names) != count or not all(names):
        raise PlaceError(found[4], f"{found[1]} have {count} names in brackets, first to last")
    if taken := [part for part in names if part in known or part == name or names.count(part) > 1]:
        raise PlaceError(taken[0], "each place needs a name of its own")
    parts = [
        PlaceDef(part, "part", of=of, pieces=count, index=index, along=found[3], source=source)  # type: ignore[arg-type]
        for index, part in enumerate(names)
    ]
    return [*parts, PlaceDef(name, "list", members=tuple(names), source=source)]


def members(name: str, said: str, known: Mapping[str, PlaceDef], source: Source | None) -> PlaceDef:
    """A list of places; a text that is none of the shapes ends here too and is explained."""
    parts = [part.strip() for part in said.split(",")]
    if len(parts) < 2 or re.search(r"\d", said):
        word = re.split(r"\W", said, maxsplit=1)[0]
        raise PlaceError(said, *shape_like(word))
    return PlaceDef(name, "list", members=tuple(place_called(part, known) for part in parts), source=source)
