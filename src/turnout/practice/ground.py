"""Ground at a definite size: place expressions become rectangles and circles around the practice's own centre."""

from collections.abc import Mapping
from dataclasses import replace

from turnout.practice.model import LINES, Group, Place, PlaceDef, Practice
from turnout.practice.setup import Setup

_STEP = {"north": (0.0, 1.0), "south": (0.0, -1.0), "east": (1.0, 0.0), "west": (-1.0, 0.0)}


def setup_of(
    practice: Practice, counts: Mapping[str, int] | None = None, size_m: tuple[float, float] | None = None
) -> Setup:
    """The practice at these players per group (default: as designed) and field size (across, up) in metres."""
    wanted = counts if counts is not None else designed_counts(practice)
    return Setup(
        practice=practice,
        counts=tuple((group.key, int(wanted[group.key])) for group in practice.groups),
        places=places_of(practice, size_m),
    )


def designed_counts(practice: Practice) -> dict[str, int]:
    """Players per group as written, ties followed and clamped to their range."""
    counts = {group.key: group.count for group in practice.groups}
    for group in practice.groups:
        counts[group.key] = tied_count(group, counts)
    return counts


def tied_count(group: Group, counts: Mapping[str, int]) -> int:
    """The count a tie asks for, clamped to the group's range; the group's own count when it has no tie."""
    if group.tie is None:
        return counts[group.key]
    return min(group.high, max(group.low, counts[group.tie.group] + group.tie.offset))


def places_of(practice: Practice, field_size_m: tuple[float, float] | None = None) -> tuple[tuple[str, Place], ...]:
    """Every place by name, in the order of `ground`; `field_size_m` (across, up) replaces the first place's size."""
    found: dict[str, Place] = {}
    grown = (1.0, 1.0)
    for number, definition in enumerate(practice.ground):
        if number == 0 and field_size_m is not None:
            grown = _grown(definition, field_size_m)
            definition = replace(definition, across_m=field_size_m[0], up_m=field_size_m[1])
        found[definition.name] = _place(definition, found, grown)
    return tuple(found.items())


def _grown(field: PlaceDef, size_m: tuple[float, float]) -> tuple[float, float]:
    """How many times its written size the field is, across and up."""
    written = (field.across_m, field.across_m if field.kind == "circle" else field.up_m)
    return size_m[0] / (written[0] or size_m[0]), size_m[1] / (written[1] or size_m[1])


def _place(definition: PlaceDef, found: Mapping[str, Place], grown: tuple[float, float]) -> Place:
    if definition.kind == "rectangle":
        return Place(definition.name, "rectangle", 0.0, 0.0, definition.across_m, definition.up_m)
    if definition.kind == "circle":
        return Place(definition.name, "circle", 0.0, 0.0, definition.across_m, definition.across_m)
    if definition.kind == "list":
        return _list(definition, found)
    if definition.kind in LINES:
        return _line(definition, found, grown)
    of = found[definition.of or ""]
    return _strip(definition, of) if definition.kind == "strip" else _part(definition, of)


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
