"""Place expressions: one line of `ground` as written, to places."""

import re
from collections.abc import Mapping

from turnout.practice.area_words import AREA_SHAPES, read_area
from turnout.practice.line_words import LINE_SHAPES, begins_line, read_line
from turnout.practice.model import PlaceDef, Source
from turnout.practice.place_parts import NUMBER, UNIT, PlaceError, area_called, length, place_called
from turnout.reading import nearest

__all__ = ["SHAPES", "PlaceError", "place_called", "read_place"]

PIECES = {"halves": 2, "thirds": 3, "quarters": 4}
SHAPES = {
    **AREA_SHAPES,
    "strip": "“strip 5 yd inside the north end of pitch”",
    "channel": "“channel 6 yd along the west side of pitch”",
    "thirds": "“thirds of pitch from west to east (left, middle, right)”",
    "halves": "“halves of pitch from south to north (near half, far half)”",
    **LINE_SHAPES,
}
STRIP = re.compile(rf"strip {NUMBER} ?{UNIT} (inside|beyond) the (north|south|east|west) (?:end|side) of (.+)")
CHANNEL = re.compile(rf"channel {NUMBER} ?{UNIT} along the (north|south|east|west) (?:end|side) of (.+)")
PARTS = re.compile(r"(halves|thirds|quarters) of (.+?) from (west to east|south to north) ?\((.+)\)")


def read_place(name: str, text: str, known: Mapping[str, PlaceDef], source: Source | None = None) -> list[PlaceDef]:
    """The places one line of ground declares (halves, thirds and quarters declare their pieces too); `known` are those
    above it by name. Raises PlaceError."""
    said = " ".join(text.split())
    if area := read_area(name, said, known, source):
        return [area]
    if found := STRIP.fullmatch(said):
        return [strip(name, found, known, source)]
    if found := CHANNEL.fullmatch(said):
        return [channel(name, found, known, source)]
    if found := PARTS.fullmatch(said):
        return pieces(name, found, known, source)
    if begins_line(said):
        return [read_line(name, said, known, source)]
    return [members(name, said, known, source)]


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
        of=area_called(of, known, "a strip"), unit=unit, source=source,
    )  # fmt: skip


def channel(name: str, found: re.Match[str], known: Mapping[str, PlaceDef], source: Source | None) -> PlaceDef:
    """A strip inside one side of a place, in the word for one that runs along the play."""
    depth, unit, side, of = found.groups()
    return PlaceDef(
        name, "strip", depth_m=length(depth, unit), side=side,  # type: ignore[arg-type]
        of=area_called(of, known, "a channel"), unit=unit, source=source, word="channel",
    )  # fmt: skip


def pieces(name: str, found: re.Match[str], known: Mapping[str, PlaceDef], source: Source | None) -> list[PlaceDef]:
    """Halves, thirds or quarters with their own names, and the whole line's name for the list of them."""
    count, of = PIECES[found[1]], area_called(found[2], known, f"each of {found[1]}")
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
    word = re.split(r"\W", said, maxsplit=1)[0]
    if word in SHAPES and not {part.casefold() for part in parts} <= {place.casefold() for place in known}:
        raise PlaceError(said, *shape_like(word))
    names = {place.casefold() for place in known}
    named = all(part.casefold().removeprefix("the ") in names for part in parts)
    if len(parts) < 2 or (re.search(r"\d", said) and not named):
        word = re.split(r"\W", said, maxsplit=1)[0]
        raise PlaceError(said, *shape_like(word))
    return PlaceDef(name, "list", members=tuple(place_called(part, known) for part in parts), source=source)
