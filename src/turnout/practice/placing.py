"""Ground at a definite size: place expressions become rectangles, circles and lines around the practice's centre."""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from turnout.practice.model import LINES, Place, PlaceDef

_STEP = {"north": (0.0, 1.0), "south": (0.0, -1.0), "east": (1.0, 0.0), "west": (-1.0, 0.0)}


def placed(
    ground: Sequence[PlaceDef], field_size_m: tuple[float, float] | None = None
) -> tuple[tuple[str, Place], ...]:
    """Every place by name, in the order of `ground`; `field_size_m` (across, up) replaces the first place's size."""
    found: dict[str, Place] = {}
    grown = (1.0, 1.0)
    for number, definition in enumerate(ground):
        if number == 0 and field_size_m is not None:
            grown = _grown(definition, field_size_m)
            definition = replace(definition, across_m=field_size_m[0], up_m=field_size_m[1])
        found[definition.name] = _place(definition, found, grown, first=number == 0)
    return tuple(found.items())


def _grown(field: PlaceDef, size_m: tuple[float, float]) -> tuple[float, float]:
    """How many times its written size the field is, across and up."""
    written = (field.across_m, field.across_m if field.kind == "circle" else field.up_m)
    return size_m[0] / (written[0] or size_m[0]), size_m[1] / (written[1] or size_m[1])


def _place(definition: PlaceDef, found: Mapping[str, Place], grown: tuple[float, float], *, first: bool) -> Place:
    if definition.kind in ("rectangle", "circle"):
        up_m = definition.across_m if definition.kind == "circle" else definition.up_m
        x_m, y_m = _spot(definition, found, grown, (definition.across_m, up_m))
        return Place(definition.name, definition.kind, x_m, y_m, definition.across_m, up_m)  # type: ignore[arg-type]
    if definition.kind == "polygon":
        return _polygon(definition, grown, first=first)
    if definition.kind == "list":
        return _list(definition, found)
    if definition.kind in LINES:
        return _line(definition, found, grown)
    of = found[definition.of or ""]
    return {"strip": _strip, "part": _part, "same": _same}[definition.kind](definition, of)


def _spot(
    definition: PlaceDef, found: Mapping[str, Place], grown: tuple[float, float], size: tuple[float, float]
) -> tuple[float, float]:
    """The middle of a rectangle or circle: the centre, a corner or a side of another place, or a point."""
    if definition.spot in ("", "point"):
        return definition.x_m * grown[0], definition.y_m * grown[1]
    of = found[definition.of or ""]
    ways = [_STEP[way] for way in (definition.corner or definition.side or "").split("-") if way]
    dx, dy = sum(way[0] for way in ways), sum(way[1] for way in ways)
    return of.x_m + dx * (of.across_m - size[0]) / 2, of.y_m + dy * (of.up_m - size[1]) / 2


def _polygon(definition: PlaceDef, grown: tuple[float, float], *, first: bool) -> Place:
    """A polygon; the first place is moved so that the middle of the box round it is (0, 0)."""
    corners = [(x * grown[0], y * grown[1]) for x, y in definition.corners]
    west, east = min(x for x, _ in corners), max(x for x, _ in corners)
    south, north = min(y for _, y in corners), max(y for _, y in corners)
    x_m, y_m = ((west + east) / 2, (south + north) / 2)
    if first:
        corners, x_m, y_m = [(x - x_m, y - y_m) for x, y in corners], 0.0, 0.0
    return Place(
        definition.name, "polygon", x_m, y_m, east - west, north - south, corners=tuple(corners)
    )  # fmt: skip


def _same(definition: PlaceDef, of: Place) -> Place:
    """A place as large as another, so far beside it."""
    dx, dy = _STEP[definition.side or "east"]
    east, north = dx * (of.across_m + definition.depth_m), dy * (of.up_m + definition.depth_m)
    corners = tuple((x + east, y + north) for x, y in of.corners)
    return replace(of, name=definition.name, x_m=of.x_m + east, y_m=of.y_m + north, corners=corners)


def _strip(definition: PlaceDef, of: Place) -> Place:
    dx, dy = _STEP[definition.side or "north"]
    inward = -1.0 if definition.inside else 1.0
    reach = (abs(dx) * of.across_m + abs(dy) * of.up_m) / 2 + inward * definition.depth_m / 2
    across_m = definition.depth_m if dx else of.across_m
    up_m = definition.depth_m if dy else of.up_m
    return Place(definition.name, "rectangle", of.x_m + dx * reach, of.y_m + dy * reach, across_m, up_m)


def _line(definition: PlaceDef, found: Mapping[str, Place], grown: tuple[float, float]) -> Place:
    """A goal or gate: on its side at its distance from the middle, or at its point, which moves with the field."""
    x_m, y_m = definition.x_m * grown[0], definition.y_m * grown[1]
    across = definition.along != "south to north"
    if definition.side is not None:
        of, (dx, dy) = found[definition.of or ""], _STEP[definition.side]
        across = dy != 0
        x_m = of.x_m + dx * of.across_m / 2 + (definition.offset_m if across else 0.0)
        y_m = of.y_m + dy * of.up_m / 2 + (0.0 if across else definition.offset_m)
    size = (definition.width_m, 0.0) if across else (0.0, definition.width_m)
    return Place(definition.name, definition.kind, x_m, y_m, *size, height_m=definition.height_m)  # type: ignore[arg-type]


def _part(definition: PlaceDef, of: Place) -> Place:
    offset = (definition.index + 0.5) / definition.pieces - 0.5
    if definition.along == "west to east":
        size = of.across_m / definition.pieces
        return Place(definition.name, "rectangle", of.x_m + offset * of.across_m, of.y_m, size, of.up_m)
    size = of.up_m / definition.pieces
    return Place(definition.name, "rectangle", of.x_m, of.y_m + offset * of.up_m, of.across_m, size)


def _list(definition: PlaceDef, found: Mapping[str, Place]) -> Place:
    members = [found[name] for name in definition.members]
    west = min(place.x_m - place.across_m / 2 for place in members)
    east = max(place.x_m + place.across_m / 2 for place in members)
    south = min(place.y_m - place.up_m / 2 for place in members)
    north = max(place.y_m + place.up_m / 2 for place in members)
    centre = ((west + east) / 2, (south + north) / 2)
    return Place(definition.name, "list", *centre, east - west, north - south, definition.members)
