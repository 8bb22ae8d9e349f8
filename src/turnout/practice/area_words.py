"""Rectangles, squares, circles, polygons and places like another: one line of `ground` to a place."""

import re
from collections.abc import Mapping
from typing import Any

from turnout.measure import metres
from turnout.practice.model import PlaceDef, Source
from turnout.practice.place_parts import (
    COORDINATE,
    NUMBER,
    UNIT,
    PlaceError,
    area_called,
    known_unit,
    length,
    point,
    side_called,
)
from turnout.reading import nearest

AREA_SHAPES = {
    "rectangle": "“rectangle 16 x 16 yd” or “rectangle 3:2 with 90 m2 per player”",
    "square": "“square 8 yd at the centre of pitch”",
    "circle": "“circle 18 yd across”",
    "polygon": "“polygon (0,0) (20,0) (20,12) (8,18) yd”",
    "same": "“same as box 1, 10 yd east of it”",
}
CORNERS = ("north-east", "north-west", "south-east", "south-west")
POINT = rf"\({COORDINATE}, ?{COORDINATE}\)"
AT = r"(?:,? ((?:at|in|inside) .+))?"
RECTANGLE = re.compile(rf"rectangle {NUMBER} ?x ?{NUMBER} ?{UNIT}{AT}")
SQUARE = re.compile(rf"square {NUMBER} ?{UNIT}{AT}")
RATIO = re.compile(r"(?:rectangle (\d{1,2}):(\d{1,2})|square) with (?:at (least|most) )?(\d{1,3}) ?m2 per player")
CIRCLE = re.compile(rf"circle {NUMBER} ?{UNIT} across{AT}")
POLYGON = re.compile(rf"polygon ((?:\([^)]*\),? ?){{3,24}}){UNIT}")
SAME = re.compile(rf"same as ([^,]+), {NUMBER} ?{UNIT} (\w+) of it")
CENTRE = re.compile(r"at the (?:centre|middle|center) of (.+)")
CORNER = re.compile(r"in the ([\w-]+) corner of (.+)")
INSIDE = re.compile(r"inside the (\w+) (?:end|side) of (.+)")
AT_POINT = re.compile(rf"at {POINT}(?: ?{UNIT})?")
LEAST_AREA_M2, MOST_AREA_M2 = 4, 400
LEAST_POLYGON_M2 = 4.0


def read_area(name: str, said: str, known: Mapping[str, PlaceDef], source: Source | None) -> PlaceDef | None:
    """The area an expression declares, None when it is of another kind; raises PlaceError."""
    if found := RATIO.fullmatch(said):
        return of_ratio(name, found, source)
    if found := RECTANGLE.fullmatch(said):
        across, up, unit, at = found.groups()
        size: dict[str, Any] = {"across_m": length(across, unit), "up_m": length(up, unit), "unit": unit}
        return PlaceDef(name, "rectangle", **size, **spot(at, known), source=source)
    if found := SQUARE.fullmatch(said):
        across, unit, at = found.groups()
        size = {"across_m": length(across, unit), "up_m": length(across, unit), "unit": unit, "word": "square"}
        return PlaceDef(name, "rectangle", **size, **spot(at, known), source=source)
    if found := CIRCLE.fullmatch(said):
        size = {"across_m": length(found[1], found[2]), "unit": found[2]}
        return PlaceDef(name, "circle", **size, **spot(found[3], known), source=source)
    if found := POLYGON.fullmatch(said):
        return polygon(name, found, source)
    if found := SAME.fullmatch(said):
        return same(name, found, known, source)
    return None


def of_ratio(name: str, found: re.Match[str], source: Source | None) -> PlaceDef:
    """`rectangle 3:2 with 90 m2 per player`: its size follows when the players are known."""
    across, up, bound, area = found.groups()
    ratio = (float(across or 1), float(up or 1))
    if not all(ratio) or not 0.2 <= ratio[0] / ratio[1] <= 5:
        raise PlaceError(f"{across}:{up}", "a shape lies between 1:5 and 5:1")
    if not LEAST_AREA_M2 <= int(area) <= MOST_AREA_M2:
        raise PlaceError(f"{area} m2", f"the area for each player lies between {LEAST_AREA_M2} and {MOST_AREA_M2} m2")
    word: Any = "" if across else "square"
    held: Any = bound or ""
    return PlaceDef(name, "rectangle", ratio=ratio, area_m2=float(area), bound=held, word=word, source=source)


def spot(at: str | None, known: Mapping[str, PlaceDef]) -> dict[str, Any]:
    """Where a rectangle or circle stands: in the middle without a word; raises PlaceError."""
    if at is None:
        return {}
    if found := CENTRE.fullmatch(at):
        return {"spot": "centre", "of": area_called(found[1], known, "the centre")}
    if found := CORNER.fullmatch(at):
        if found[1] not in CORNERS:
            expected = "the corners of a place are north-east, north-west, south-east and south-west"
            raise PlaceError(found[1], expected, nearest(found[1], CORNERS))
        return {"spot": "corner", "corner": found[1], "of": area_called(found[2], known, "a corner")}
    if found := INSIDE.fullmatch(at):
        return {"spot": "side", "side": side_called(found[1]), "of": area_called(found[2], known, "a side")}
    if found := AT_POINT.fullmatch(at):
        unit = known_unit(found[3] or "yd")
        x_m, y_m = point((found[1], found[2]), unit, at)
        return {"spot": "point", "x_m": x_m, "y_m": y_m, "at_unit": unit}
    expected = "a place stands “at the centre of pitch”, “in the north-east corner of pitch”, “inside the north end of"
    raise PlaceError(at, f"{expected} pitch” or “at (4, -2)”")


def polygon(name: str, found: re.Match[str], source: Source | None) -> PlaceDef:
    """Corners in order round the place; raises PlaceError for corners that cannot be read or that cross."""
    unit = known_unit(found[2])
    written = re.findall(r"\([^)]*\)", found[1])
    corners = []
    for text in written:
        pair = re.fullmatch(POINT, text)
        if pair is None:
            raise PlaceError(text, "a corner reads like (20,12): so far east, so far north")
        corners.append(point((pair[1], pair[2]), unit, text))
    if crosses(corners):
        raise PlaceError(found[1].strip(), "the sides of a polygon do not cross; name its corners in order round it")
    across, up = (max(c[way] for c in corners) - min(c[way] for c in corners) for way in (0, 1))
    return PlaceDef(name, "polygon", across, up, corners=tuple(corners), unit=unit, source=source)


def crosses(corners: list[tuple[float, float]]) -> bool:
    """Whether two sides of a polygon cross, or it is as good as flat."""
    sides = list(zip(corners, (*corners[1:], corners[0]), strict=True))
    area = abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in sides)) / 2
    far = [(i, j) for i in range(len(sides)) for j in range(i + 2, len(sides)) if (i, j) != (0, len(sides) - 1)]
    return area < LEAST_POLYGON_M2 or any(meet(*sides[i], *sides[j]) for i, j in far)


def meet(a: tuple[float, float], b: tuple[float, float], c: tuple[float, float], d: tuple[float, float]) -> bool:
    """Whether the stretch a-b crosses the stretch c-d."""

    def turn(p: tuple[float, float], q: tuple[float, float], r: tuple[float, float]) -> float:
        return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])

    return turn(a, b, c) * turn(a, b, d) <= 0 and turn(c, d, a) * turn(c, d, b) <= 0


def same(name: str, found: re.Match[str], known: Mapping[str, PlaceDef], source: Source | None) -> PlaceDef:
    """A place as large as another, beside it."""
    other, gap, unit, side = found.groups()
    way: Any = side_called(side)
    return PlaceDef(
        name, "same", depth_m=metres(float(gap), known_unit(unit)) if float(gap) == 0 else length(gap, unit),
        side=way, of=area_called(other, known, "“same as”"), unit=unit, source=source,
    )  # fmt: skip
