"""Where the cones of one part stand: corners, long lines, zone lines and circles.

Corners only on sides up to 12 m, else a cone at least every 8 m; circles by even chords; zone lines in a second colour
(lengths own choice after a trial: a cone every 5 to 8 m on short sides doubled the cones for nothing).
"""

from dataclasses import dataclass

from turnout.fit.ground import in_space, place_box
from turnout.fit.model import Copy
from turnout.practice.model import Place
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
    """All cones of one copy: field corners first, then zone lines, then cones between corners."""
    field = copy.setup.field
    zones = [place for _, place in copy.setup.places[1:] if place.kind != "list"]
    corner, line = _outline(field)
    zone = [point for place in zones for point in _zone_points(place, field)]
    kept: list[tuple[str, Point]] = []
    for kind, points in (("corner cone", corner), ("zone cone", zone), ("line cone", line)):
        clear = apart([point for _, point in kept] + points, by=CLEAR_M)[len(kept) :]
        kept += [(kind, point) for point in clear]
    return [Cone(kind, *_rounded(in_space(copy, *point))) for kind, point in kept]


def _zone_points(zone: Place, field: Place) -> list[Point]:
    """Corners of a zone and the cones along its lines, but none along a line the field has already."""
    corners, between = _outline(zone)
    return corners + [point for point in between if not _on_outline(point, field)]


def _on_outline(point: Point, field: Place) -> bool:
    if field.kind == "circle":
        return False
    box = place_box(field)
    on_x = min(abs(point[0] - box.x0), abs(point[0] - box.x1)) < NEAR_M and box.y0 <= point[1] <= box.y1
    on_y = min(abs(point[1] - box.y0), abs(point[1] - box.y1)) < NEAR_M and box.x0 <= point[0] <= box.x1
    return on_x or on_y


def _outline(place: Place) -> tuple[list[Point], list[Point]]:
    """Corners and the cones between them; a circle has only corners."""
    if place.kind == "circle":
        return round_circle(place.x_m, place.y_m, across=place.across_m, chord_at_most=CHORD_M), []
    box = place_box(place)
    between = [
        point
        for start, end in sides(box)
        if abs(start[0] - end[0]) + abs(start[1] - end[1]) > CORNERS_ONLY_M
        for point in along(start, end, at_most=CONE_EVERY_M)
    ]
    return list(box.corners), between


def _rounded(point: Point) -> Point:
    return round(point[0], 3), round(point[1], 3)
