"""The whole ground for a part: every copy where it lies, the cones a layout puts down, and the ground's own size."""

from collections.abc import Iterator
from dataclasses import replace

from turnout.club.tonight import Space
from turnout.fit.model import Copy, FittedPart
from turnout.layout.model import PartLayout
from turnout.measure import PACE_M
from turnout.practice.names import singular
from turnout.practice.units import units_side
from turnout.show.drawing import Area, Bar, Drawing, Mark, Measure, Point
from turnout.show.ink import Side, sides_of
from turnout.show.plan import Spots, bars_of, corner_cones, given_cones, links_of, player_marks, start_spots
from turnout.show.words import number_word, paces_text, players, size_yards, yards_text

CONES = ("corner cone", "line cone", "zone cone")


def space_drawing(
    part: FittedPart,
    space: Space,
    laid: PartLayout | None = None,
    *,
    own: str | None = None,
    spots: tuple[Spots, ...] | None = None,
    pace_m: float = PACE_M,
) -> Drawing:
    """All copies of a part in the space. spots: start spots of each copy, in its own coordinates."""
    sides: list[Side] = []
    marks: list[Mark] = []
    bars: list[Bar] = []
    links: list[tuple[int, int]] = []
    areas = [Area("space", "rectangle", "", space.across_m / 2, space.up_m / 2, space.across_m, space.up_m)]
    for number, copy in enumerate(part.copies):
        worn = sides_of(copy.setup.practice, bibs=copy.bibs or part.bibs, own=own)
        sides += [side for side in worn if side not in sides]
        given = spots[number] if spots else start_spots(copy.setup)
        stood = [on_ground(mark, copy) for mark in player_marks(copy.setup, worn, given)]
        links += [(len(marks) + a, len(marks) + b) for a, b in links_of(copy.setup, stood)]
        marks += stood
        bars += [_bar(bar, copy) for bar in bars_of(copy.setup)]
        areas += _areas(copy, number, len(part.copies))
        if laid is None:
            marks += [on_ground(mark, copy) for mark in corner_cones(copy.setup)]
    if laid is not None:
        cones = [(item.kind, item.x_m, item.y_m) for item in laid.items]
        marks += given_cones(cones, bars)
    return Drawing(
        title=f"{part.copies[0].setup.practice.name} on the ground",
        desc=_describe(part, space),
        bounds_m=(0.0, 0.0, space.across_m, space.up_m),
        areas=tuple(areas),
        marks=tuple(marks),
        measures=_measures(space, pace_m),
        sides=tuple(side for side in sides if any(mark.side == side for mark in marks)),
        bars=tuple(bars),
        links=tuple(links),
        linked=singular(units_side(part.copies[0].setup.practice) or ""),
    )


def _bar(bar: Bar, copy: Copy) -> Bar:
    """A goal or gate of a copy where it lies on the ground."""
    back = (-bar.back[1], bar.back[0]) if copy.turned else bar.back
    return replace(bar, start=to_ground(bar.start, copy), end=to_ground(bar.end, copy), back=back)


def on_ground(mark: Mark, copy: Copy) -> Mark:
    """A mark of a copy moved from the practice's coordinates to the ground's."""
    x_m, y_m = to_ground((mark.x_m, mark.y_m), copy)
    return replace(mark, x_m=x_m, y_m=y_m)


def to_ground(point: Point, copy: Copy) -> Point:
    """Practice coordinates to ground coordinates, metres; a turned copy has its east to the north."""
    x_m, y_m = (-point[1], point[0]) if copy.turned else point
    return copy.x_m + x_m, copy.y_m + y_m


def from_ground(point: Point, copy: Copy) -> Point:
    """Ground coordinates to the practice's own, metres."""
    x_m, y_m = point[0] - copy.x_m, point[1] - copy.y_m
    return (y_m, -x_m) if copy.turned else (x_m, y_m)


def cones_of(part: FittedPart, laid: PartLayout | None) -> list[tuple[str, float, float]] | None:
    """The cones a layout puts round the first copy, in its own coordinates; None without a layout."""
    if laid is None:
        return None
    copy = part.copies[0]
    reach = _reach(copy)
    points = [(item.kind, *from_ground((item.x_m, item.y_m), copy)) for item in laid.items if item.kind in CONES]
    return [(kind, x, y) for kind, x, y in points if abs(x) <= reach[0] and abs(y) <= reach[1]]


def _reach(copy: Copy) -> tuple[float, float]:
    """How far from its centre a copy's own places go, metres, with half a metre to spare."""
    places = [place for _, place in copy.setup.places]
    across = max(abs(place.x_m) + place.across_m / 2 for place in places)
    return across + 0.5, max(abs(place.y_m) + place.up_m / 2 for place in places) + 0.5


def _areas(copy: Copy, number: int, copies: int) -> Iterator[Area]:
    for index, (_, place) in enumerate(copy.setup.places):
        if place.kind == "list" or place.is_line:
            continue
        x_m, y_m = to_ground((place.x_m, place.y_m), copy)
        across, up = (place.up_m, place.across_m) if copy.turned else (place.across_m, place.up_m)
        shape = "circle" if place.kind == "circle" else "rectangle"
        name = str(number + 1) if index == 0 and copies > 1 else ""
        yield Area("zone" if index else "field", shape, name, x_m, y_m, across, up)  # type: ignore[arg-type]


def _measures(space: Space, pace_m: float) -> tuple[Measure, ...]:
    return (
        Measure("south", 0.0, space.across_m, _both(space.across_m, pace_m), yards_text(space.across_m)),
        Measure("east", 0.0, space.up_m, _both(space.up_m, pace_m), yards_text(space.up_m)),
    )


def _both(length_m: float, pace_m: float) -> str:
    return f"{yards_text(length_m)} · {paces_text(length_m, pace_m=pace_m)}"


def _describe(part: FittedPart, space: Space) -> str:
    setup = part.copies[0].setup
    count = len(part.copies)
    field = size_yards(setup.field.across_m, setup.field.up_m)
    many = "One practice" if count == 1 else f"{number_word(count).capitalize()} of the same practice side by side"
    each = ", ".join(players(copy.setup.players) for copy in part.copies)
    return f"The ground, {size_yards(space.across_m, space.up_m)}. {many} of {field}: {each}."
