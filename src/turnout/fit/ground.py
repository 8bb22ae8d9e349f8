"""How much ground a practice takes: who is at home in its field, its footprint, and where a copy lies in the space."""

from dataclasses import dataclass
from functools import lru_cache

from turnout.fit.model import Copy
from turnout.fit.roles import designed_mix
from turnout.practice.ground import places_of
from turnout.practice.model import LINES, Group, Place, Practice
from turnout.practice.nets import has_net, net_box
from turnout.practice.setup import Setup
from turnout.practice.starts import waiting_line
from turnout.shapes.boxes import Box, box_around, grown, hull, inside, turned, turned_point
from turnout.shapes.spacing import round_circle

EDGE_STRIP_M = 1.0  # players on an edge stand up to this far outside it
STANDING_M = 1.0  # room of one who stands in a line, own choice

Polygon = tuple[tuple[float, float], ...]


def place_box(place: Place) -> Box:
    """The box round a place, in the practice's own metres."""
    return box_around(x=place.x_m, y=place.y_m, across=place.across_m, up=place.up_m)


def at_home(practice: Practice) -> tuple[int, ...]:
    """Which groups (by number in `people`) are at home in the first place; all of them when none is."""
    places = dict(places_of(practice))
    field = place_box(places[practice.ground[0].name])
    within = [
        number
        for number, group in enumerate(practice.groups)
        if not group.home.on_edge and not group.waits and inside(place_box(places[group.home.place]), field)
    ]
    return tuple(within) or tuple(range(len(practice.groups)))


def footprint(practice: Practice, size_m: tuple[float, float] | None = None) -> Box:
    """The box a copy needs, in the practice's own metres: every place, nets, lines of those who wait, and a strip
    where players stand on an edge."""
    places = dict(places_of(practice, size_m))
    field = places[practice.ground[0].name]
    edges = {group.home.place for group in practice.groups if group.home.on_edge}
    boxes = [place_box(place) for place in places.values()]
    goals = [place for place in places.values() if has_net(place)]
    boxes += [Box(*net_box(goal, field)) for goal in goals]
    boxes += [grown(place_box(places[name]), EDGE_STRIP_M) for name in sorted(edges)]
    boxes += [
        _line_box(group, places[group.home.place], goals) for group in practice.groups if group.waits and group.high
    ]
    return hull(boxes)


def _line_box(group: Group, place: Place, goals: list[Place]) -> Box:
    """The ground of a line of those who wait, as long as it may get."""
    spots = waiting_line(place, group.home.behind or "south", group.high, goals)
    return hull([box_around(x=x, y=y, across=STANDING_M, up=STANDING_M) for x, y in spots])


@dataclass(frozen=True)
class Needs:
    """What a practice asks of the ground at any size, worked out once.

    home: groups at home in the field, by number in `people`; designed_home: their players as written;
    margins_m: west, south, east, north of the field; gap_m between areas; inner_m: strips inside, (across, up);
    least_m: what the goals and gates on its sides take, (across, up).
    """

    home: tuple[int, ...]
    designed_home: int
    margins_m: tuple[float, float, float, float]
    gap_m: float
    inner_m: tuple[float, float]
    least_m: tuple[float, float] = (0.0, 0.0)

    def players_home(self, counts: tuple[int, ...]) -> int:
        """Players at home in the field, at least 1."""
        return max(1, sum(counts[number] for number in self.home))

    def footprint_m(self, size_m: tuple[float, float]) -> tuple[float, float]:
        """Across and up of a copy with everything outside the field, metres."""
        west, south, east, north = self.margins_m
        return size_m[0] + west + east, size_m[1] + south + north

    def room_left_m(self, size_m: tuple[float, float]) -> float:
        """The shorter side of the field less the strips inside it, metres."""
        return min(size_m[0] - self.inner_m[0], size_m[1] - self.inner_m[1])


@lru_cache(maxsize=512)
def needs_of(practice: Practice) -> Needs:
    """The ground a practice asks for. Strips keep their metres and parts follow, so the margins hold at any size."""
    field = place_box(places_of(practice)[0][1])
    box = footprint(practice)
    margins = (field.x0 - box.x0, field.y0 - box.y0, box.x1 - field.x1, box.y1 - field.y1)
    home = at_home(practice)
    players = sum(designed_mix(practice.groups)[number] for number in home)
    return Needs(home, max(1, players), margins, practice.arrange.gap_m, _strips_inside_m(practice), _least_m(practice))


def _strips_inside_m(practice: Practice) -> tuple[float, float]:
    depth = {"north": 0.0, "south": 0.0, "east": 0.0, "west": 0.0}
    for definition in practice.ground:
        if definition.kind == "strip" and definition.inside and definition.of == practice.ground[0].name:
            side = definition.side or "north"
            depth[side] = max(depth[side], definition.depth_m)
    return depth["east"] + depth["west"], depth["north"] + depth["south"]


def _least_m(practice: Practice) -> tuple[float, float]:
    """The shortest sides on which the goals and gates of the field still stand, metres."""
    on_field = [d for d in practice.ground if d.kind in LINES and d.side and d.of == practice.ground[0].name]
    reach = [(d.side in ("north", "south"), abs(d.offset_m) * 2 + d.width_m) for d in on_field]
    return max((m for across, m in reach if across), default=0.0), max(
        (m for across, m in reach if not across), default=0.0
    )


def footprint_in_space(copy: Copy) -> Box:
    """The ground a copy takes, edge players' strip included, in the space's metres."""
    field = copy.setup.field
    box = footprint(copy.setup.practice, (field.across_m, field.up_m))
    lying = turned(box) if copy.turned else box
    return Box(lying.x0 + copy.x_m, lying.y0 + copy.y_m, lying.x1 + copy.x_m, lying.y1 + copy.y_m)


def in_space(copy: Copy, x_m: float, y_m: float) -> tuple[float, float]:
    """A point of the practice's own coordinates where it lies in the space."""
    x, y = turned_point(x_m, y_m) if copy.turned else (x_m, y_m)
    return x + copy.x_m, y + copy.y_m


def place_polygon(copy: Copy, name: str) -> Polygon:
    """A place of a copy as a polygon in the space, metres, anticlockwise; a circle as 32 points."""
    place = copy.setup.place(name)
    if place.corners:
        points = list(place.corners)
    elif place.kind == "circle":
        points = round_circle(place.x_m, place.y_m, across=place.across_m, chord_at_most=1e9, fewest=32)
    else:
        points = list(place_box(place).corners)
    return tuple(in_space(copy, x, y) for x, y in points)


def area_per_player_m2(setup: Setup) -> float:
    """Area of the first place per player at home in it, m2."""
    players = sum(setup.counts[number][1] for number in at_home(setup.practice))
    return setup.field.area_m2 / max(1, players)
