"""From a setup to its drawing: players at their start spots, cones, measures, the first ball, the change it brings."""

from collections.abc import Iterable, Mapping, Sequence
from itertools import pairwise
from math import cos, dist, pi, sin

from turnout.measure import PACE_M
from turnout.practice.model import Group, Place
from turnout.practice.names import singular
from turnout.practice.nets import ends, net_behind
from turnout.practice.setup import Setup
from turnout.practice.table import Row, Who
from turnout.practice.units import ball_holders, units_in, units_side
from turnout.show.arrows import ball_and_change, first_on_the_ball
from turnout.show.drawing import Area, Bar, Drawing, Line, Mark, Measure, Point
from turnout.show.ink import Side, sides_of
from turnout.show.telling import describe
from turnout.show.words import paces_text, players, yards_text

Spots = Mapping[str, Sequence[Point]]
EDGE_M = 1.2  # room left round the outermost mark
SAME_SPOT_M = 0.3  # a cone this near to the end of a gate is its own


def setup_drawing(
    setup: Setup,
    *,
    bibs: Iterable[tuple[str, str]] = (),
    own: str | None = None,
    spots: Spots | None = None,
    rows: Sequence[Row] | None = None,
    cones: Sequence[tuple[str, float, float]] | None = None,
    lines: bool = True,
    pace_m: float = PACE_M,
) -> Drawing:
    """One practice as it stands when play starts.

    bibs: side -> colour, own: colour of own shirts. spots and rows default to the practice's own start spots and
    when/then table. cones: (kind, x_m, y_m) from a layout, in the practice's coordinates; default: at the corners.
    """
    sides = sides_of(setup.practice, bibs=bibs, own=own)
    spots = start_spots(setup) if spots is None else spots
    rows = _rows(setup) if rows is None else rows
    bars = bars_of(setup)
    laid = corner_cones(setup) if cones is None else given_cones(cones, bars)
    marks = (*player_marks(setup, sides, spots), *laid)
    arrows: tuple[Line, ...] = ball_and_change(setup, marks, rows) if lines else ()
    marks = (*marks, *_ball(marks, setup, rows))
    areas = tuple(_area(place, index) for index, (_, place) in enumerate(setup.places) if _drawn(place))
    return Drawing(
        title=f"{setup.practice.name}, {players(setup.players)}",
        desc=describe(setup, sides, marks, arrows, touch_limits(rows, sides)),
        bounds_m=_bounds(areas, marks, bars),
        areas=areas,
        marks=marks,
        lines=arrows,
        measures=measures(setup, pace_m=pace_m),
        sides=tuple(side for side in sides if any(mark.side == side for mark in marks)),
        numbered=any(line.number for line in arrows),
        limits=touch_limits(rows, sides),
        bars=bars,
        links=links_of(setup, marks),
        linked=singular(units_side(setup.practice) or ""),
    )


def bars_of(setup: Setup) -> tuple[Bar, ...]:
    """Every goal and gate, in the practice's coordinates."""
    lines = [place for _, place in setup.places if place.is_line]
    return tuple(
        Bar(line.kind, line.name, *ends(line), net_behind(line, setup.field))  # type: ignore[arg-type]
        for line in lines
    )


def links_of(setup: Setup, marks: Sequence[Mark]) -> tuple[tuple[int, int], ...]:
    """Players of one small side, each with the next: marks of players come first, in the order of their numbers."""
    known = sum(mark.kind == "player" for mark in marks)
    return tuple(pair for unit in units_in(setup) for pair in pairwise(unit) if max(pair) < known)


def touch_limits(rows: Sequence[Row], sides: Sequence[Side]) -> tuple[tuple[int, str], ...]:
    """Touches allowed and to whom, in the words of the key, from the when/then table."""
    names = {side.side: side.name for side in sides}
    found = []
    for row in rows:
        if row.do == "touches" and isinstance(row.value, int):
            where = f" in {row.where.place}" if row.where is not None else ""
            found.append((row.value, f"{_whose(row.who, names)}{where}"))
    return tuple(dict.fromkeys(found))


def _whose(who: Who, names: Mapping[str, str]) -> str:
    side = names.get(who.side or "", "")
    if who.kind == "role" and who.role not in names:
        return f"{side} {who.role} players".strip()
    return side or names.get(who.role or "", "everyone")


def player_marks(setup: Setup, sides: Sequence[Side], spots: Spots) -> tuple[Mark, ...]:
    """Players at their spots, numbered through their side in the order of `people`."""
    by_side = {side.side: side for side in sides}
    given: dict[str, int] = {}
    marks = []
    for group in setup.practice.groups:
        for x_m, y_m in spots.get(group.key, ()):
            given[group.side] = given.get(group.side, 0) + 1
            marks.append(_player(group, (x_m, y_m), by_side[group.side], given[group.side]))
    return tuple(marks)


def _player(group: Group, spot: Point, side: Side, number: int) -> Mark:
    return Mark("player", *spot, side, number, group.home.on_edge, group.key, group.keeper, group.waits)


def corner_cones(setup: Setup) -> tuple[Mark, ...]:
    """A cone at every corner of the field and, filled, at every other corner of a zone; round a circle, eight."""
    field = setup.field
    outer = _ring(field) if field.kind == "circle" else _corners(field)
    zone = [corner for _, place in setup.places[1:] if place.kind == "rectangle" for corner in _corners(place)]
    inner = [point for point in dict.fromkeys(zone) if point not in outer]
    gates = [point for bar in bars_of(setup) if bar.kind == "gate" for point in (bar.start, bar.end)]
    return tuple(
        Mark(kind, x, y, fixed=True)  # type: ignore[arg-type]
        for kind, points in (("corner cone", outer), ("zone cone", inner), ("gate cone", gates))
        for x, y in points
    )


def given_cones(cones: Iterable[tuple[str, float, float]], bars: Sequence[Bar] = ()) -> tuple[Mark, ...]:
    """Cones where a layout puts them; those at the ends of a gate are its own."""
    ends = [point for bar in bars if bar.kind == "gate" for point in (bar.start, bar.end)]
    return tuple(
        Mark("gate cone" if kind.endswith("cone") and _near((x_m, y_m), ends) else kind, x_m, y_m, fixed=True)  # type: ignore[arg-type]
        for kind, x_m, y_m in cones
    )


def _near(point: Point, others: Iterable[Point]) -> bool:
    return any(dist(point, other) < SAME_SPOT_M for other in others)


def measures(setup: Setup, *, pace_m: float = PACE_M) -> tuple[Measure, ...]:
    """The field's two sides and, west of it, the depth of each strip or zone that divides it from south to north."""
    field = setup.field
    west, south, east, north = _area(field, 0).box
    across = _measure("south", west, east, pace_m)
    if field.kind == "circle":
        return (across,)
    return across, _measure("east", south, north, pace_m), *_depths(setup, pace_m)


def _depths(setup: Setup, pace_m: float) -> list[Measure]:
    field = setup.field
    spans = {}
    for _, place in setup.places[1:]:
        _, south, _, north = _area(place, 1).box
        if place.kind == "rectangle" and abs(place.across_m - field.across_m) < 0.05 and place.up_m < field.up_m - 0.05:
            spans[round(south, 3), round(north, 3)] = _measure("west", south, north, pace_m)
    ordered = sorted(spans.items())
    clear = all(first[0][1] <= second[0][0] + 0.01 for first, second in pairwise(ordered))
    return [measure for _, measure in ordered] if clear else []


def _measure(side: str, low: float, high: float, pace_m: float) -> Measure:
    length = high - low
    text = f"{yards_text(length)} · {paces_text(length, pace_m=pace_m)}"
    return Measure(side, low, high, text, yards_text(length))  # type: ignore[arg-type]


def _ball(marks: Sequence[Mark], setup: Setup, rows: Sequence[Row]) -> tuple[Mark, ...]:
    """The ball at the feet of who starts; without a start sentence it lies in the middle. Where many are in play, one
    at the feet of the first of each small side."""
    if held := ball_holders(setup):
        return tuple(Mark("ball", marks[unit[0]].x_m, marks[unit[0]].y_m, number=unit[0]) for unit in held)
    holder = first_on_the_ball(marks, rows)
    if holder is not None:
        return (Mark("ball", marks[holder].x_m, marks[holder].y_m, number=holder),)
    return (Mark("ball", setup.field.x_m, setup.field.y_m, fixed=True),)


def _drawn(place: Place) -> bool:
    return place.kind in ("rectangle", "circle")


def _area(place: Place, index: int) -> Area:
    shape = "circle" if place.kind == "circle" else "rectangle"
    kind = "zone" if index else "field"
    return Area(kind, shape, place.name, place.x_m, place.y_m, place.across_m, place.up_m)  # type: ignore[arg-type]


def _bounds(
    areas: Sequence[Area], marks: Sequence[Mark], bars: Sequence[Bar] = ()
) -> tuple[float, float, float, float]:
    boxes = [area.box for area in areas] + [bar.box for bar in bars]
    xs = [mark.x_m for mark in marks if mark.kind == "player" and not mark.fixed]
    ys = [mark.y_m for mark in marks if mark.kind == "player" and not mark.fixed]
    west = min([box[0] for box in boxes] + [x - EDGE_M for x in xs])
    south = min([box[1] for box in boxes] + [y - EDGE_M for y in ys])
    east = max([box[2] for box in boxes] + [x + EDGE_M for x in xs])
    north = max([box[3] for box in boxes] + [y + EDGE_M for y in ys])
    return west, south, east, north


def _corners(place: Place) -> list[Point]:
    half_x, half_y = place.across_m / 2, place.up_m / 2
    signs = ((-1, -1), (-1, 1), (1, 1), (1, -1))
    return [(round(place.x_m + i * half_x, 3), round(place.y_m + j * half_y, 3)) for i, j in signs]


def _ring(place: Place, cones: int = 8) -> list[Point]:
    radius = place.across_m / 2
    angles = [2 * pi * index / cones for index in range(cones)]
    return [(round(place.x_m + radius * cos(a), 3), round(place.y_m + radius * sin(a), 3)) for a in angles]


def start_spots(setup: Setup) -> Spots:
    """Everybody's start spot, by group key, in the practice's coordinates."""
    from turnout.practice.starts import starts

    return starts(setup)


def _rows(setup: Setup) -> Sequence[Row]:
    from turnout.practice.meaning import table

    return table(setup.practice)
