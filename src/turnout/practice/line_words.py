"""Goals and gates: places that are a line, on a side of another place or at a point."""

import re
from collections.abc import Mapping
from typing import Any

from turnout.practice.model import LINES, PlaceDef, Source
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

SMALL_GOAL_HEIGHT_M = 1.0  # where none is written, own choice
LINE_SHAPES = {
    "goal": "“goal 16 x 7 ft at the north end of pitch”",
    "small goal": "“small goal 4 ft at the north end of pitch, 6 yd west of the middle”",
    "gate": "“gate 3 yd at the middle of the north side of pitch” or “gate 3 yd at (4, -2)”",
}
KIND = re.compile(rf"(goal|small goal|gate) {NUMBER}(?: ?x ?{NUMBER})? ?{UNIT} at (.+)")
SIDE = re.compile(
    rf"the (?:middle of the )?(\w+) (?:end|side) of (.+?)(?:, {NUMBER} ?{UNIT} (\w+) of (?:the|its) middle)?"
)
POINT = re.compile(rf"\({COORDINATE}, ?{COORDINATE}\)(?: ?(?!from){UNIT})?(?:,? from (west to east|south to north))?")


def begins_line(said: str) -> bool:
    """Whether a place expression begins as a goal or gate does, and is not a list of places called so."""
    return said.startswith(tuple(f"{kind} " for kind in LINES)) and (" at " in said or "," not in said)


def read_line(name: str, said: str, known: Mapping[str, PlaceDef], source: Source | None) -> PlaceDef:
    """The goal or gate an expression declares; raises PlaceError."""
    kind: Any = next(kind for kind in LINES if said.startswith(kind))
    found = KIND.fullmatch(said)
    if found is None:
        raise PlaceError(said, f"a {kind} reads like {LINE_SHAPES[kind]}")
    _, width, height, unit, at = found.groups()
    check_height(kind, height, said)
    height_m = length(height, unit) if height else SMALL_GOAL_HEIGHT_M if kind == "small goal" else 0.0
    where = on_side(at, known) or at_point(at)
    if where is None:
        raise PlaceError(at, f"a {kind} stands on a side of a place or at a point, like {LINE_SHAPES[kind]}")
    return PlaceDef(
        name, kind, width_m=length(width, unit), height_m=height_m, unit=unit, source=source, **where
    )  # fmt: skip


def check_height(kind: str, height: str | None, said: str) -> None:
    """Raise PlaceError for a goal without a height and a gate with one."""
    if kind == "goal" and height is None:
        raise PlaceError(
            said, f"a goal has a width and a height, like {LINE_SHAPES['goal']}; a low one is a small goal"
        )
    if kind == "gate" and height is not None:
        raise PlaceError(said, f"a gate is two cones without a height, like {LINE_SHAPES['gate']}")


def on_side(at: str, known: Mapping[str, PlaceDef]) -> dict[str, Any] | None:
    """`the north end of pitch, 6 yd west of the middle`; None when the text is not of this kind."""
    found = SIDE.fullmatch(at)
    if found is None:
        return None
    side, of, number, unit, way = found.groups()
    where = {"side": side_called(side), "of": area_called(of, known, "a goal or gate")}
    if number is None:
        return where
    if known[where["of"]].kind == "circle":
        raise PlaceError(at, "on a circle a goal or gate stands in the middle of a side or at a point")
    return {**where, "offset_m": offset(side, number, unit, way), "at_unit": unit}


def offset(side: str, number: str, unit: str, way: str) -> float:
    """How far along its side something stands, metres, east or north of the middle above zero."""
    minus, plus = ("west", "east") if side in ("north", "south") else ("south", "north")
    if way not in (minus, plus):
        expected = f"on the {side} side it is so far {minus} or {plus} of the middle"
        raise PlaceError(way, expected, nearest(way, (minus, plus)))
    return length(number, unit) * (1 if way == plus else -1)


def at_point(at: str) -> dict[str, Any] | None:
    """`(4, -2)`, in yards unless a unit follows; None when the text is not of this kind."""
    found = POINT.fullmatch(at)
    if found is None:
        return None
    unit = known_unit(found[3] or "yd")
    x_m, y_m = point((found[1], found[2]), unit, at)
    return {"x_m": x_m, "y_m": y_m, "along": found[4] or "west to east", "at_unit": unit}
