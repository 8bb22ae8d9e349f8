"""Where the cones of one part stand: corners, long lines, zone lines and circles.

Corners only on sides up to 12 m, else a cone at least every 8 m; circles by even chords; zone lines in a second colour
(lengths own choice after a trial: a cone every 5 to 8 m on short sides doubled the cones for nothing).
"""

from dataclasses import dataclass
from itertools import pairwise
from math import dist

from turnout.fit.ground import in_space, place_box
from turnout.fit.model import Copy
from turnout.practice.model import GOALS, Place
from turnout.practice.nets import ends, has_net
from turnout.shapes.boxes import NEAR_M
from turnout.shapes.spacing import Point, along, apart, round_circle, sides

CORNERS_ONLY_M = 12.0
CONE_EVERY_M = 8.0
CHORD_M = 4.0
CLEAR_M = 1.0  # no two cones nearer than this


@dataclass(frozen=True)
class Cone:
    """A cone of a copy, in the space's metres; kind as in the layout's items."""

    kind: str
    x_m: float
    y_m: float


def cones_of(copy: Copy) -> list[Cone]:
    """All cones of one copy: field corners first, then zone lines, then cones between those on the field's sides."""
    field = copy.setup.field
    zones = [place for _, place in copy.setup.places[1:] if place.kind not in ("list", *GOALS)]
    corners, _ = _outline(field)
    zone = apart(corners + [point for place in zones for point in _zone_points(place, field)], by=CLEAR_M)
    posts = [end for _, place in copy.setup.places if has_net(place) for end in ends(place)]
    stops = zone + posts
    line = apart(stops + _between(field, stops), by=CLEAR_M)[len(stops) :]
    kinds = [("corner cone", corners), ("zone cone", zone[len(corners) :]), ("line cone", line)]
    return [Cone(kind, *_rounded(in_space(copy, *point))) for kind, points in kinds for point in points]


def _zone_points(zone: Place, field: Place) -> list[Point]:
    """Corners of a zone and the cones along its lines, but none along a line the field has already."""
    corners, between = _outline(zone)
    on_field = [] if field.kind == "circle" else _sides(field)
    return corners + [point for point in between if not any(_on(point, side) for side in on_field)]


def _between(field: Place, standing: list[Point]) -> list[Point]:
    """Cones on the field's long sides, even between what stands on the side already: cones, and the posts of goals."""
    found = []
    for start, end in [] if field.kind == "circle" else _sides(field):
        if dist(start, end) > CORNERS_ONLY_M:
            stops = sorted((point for point in standing if _on(point, (start, end))), key=lambda at: dist(start, at))
            found += [point for pair in pairwise(stops) for point in along(*pair, at_most=CONE_EVERY_M)]
    return found


def _on(point: Point, side: tuple[Point, Point]) -> bool:
    """Whether a point lies on a side."""
    start, end = side
    return dist(start, point) + dist(point, end) - dist(start, end) < NEAR_M


def _outline(place: Place) -> tuple[list[Point], list[Point]]:
    """Corners and the cones between them; a circle has only corners."""
    if place.kind == "circle":
        return round_circle(place.x_m, place.y_m, across=place.across_m, chord_at_most=CHORD_M), []
    between = [
        point
        for start, end in _sides(place)
        if dist(start, end) > CORNERS_ONLY_M
        for point in along(start, end, at_most=CONE_EVERY_M)
    ]
    return list(place.corners or place_box(place).corners), between


def _sides(place: Place) -> list[tuple[Point, Point]]:
    """The sides of a place one after the other, those of a polygon its own."""
    if place.corners:
        return list(pairwise((*place.corners, place.corners[0])))
    return list(sides(place_box(place)))


def _rounded(point: Point) -> Point:
    return round(point[0], 3), round(point[1], 3)
