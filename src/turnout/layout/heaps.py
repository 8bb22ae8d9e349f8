"""Where balls, bibs and the coach are: on the space's own border, a run-off away from every area, near the areas."""

from math import dist

from turnout.club.tonight import Space
from turnout.fit.ground import footprint_in_space
from turnout.fit.model import FittedPart
from turnout.layout.model import Item
from turnout.shapes.boxes import Box, hull

_STEPS_M = 3.0  # the coach stands this far from a heap
_BESIDE_M = 1.5  # bibs lie this far along the border from the balls


def heaps_of(part: FittedPart, space: Space) -> list[Item]:
    """One ball heap for each copy, one bib heap and the coach's spot; the border lies a run-off from every area."""
    boxes = [footprint_in_space(copy) for copy in part.copies]
    items = [Item("ball heap", *_on_border(box, space), "", part.index) for box in boxes]
    items = list({(item.x_m, item.y_m): item for item in items}.values())
    first = items[0]
    along_up = first.x_m in (0.0, space.across_m)
    bibs = (first.x_m, _within(first.y_m + _BESIDE_M, space.up_m)) if along_up else (
        _within(first.x_m + _BESIDE_M, space.across_m), first.y_m
    )  # fmt: skip
    return [
        *items,
        Item("bib heap", *bibs, "", part.index),
        Item("coach", *_coach(hull(boxes), space, items), "", part.index),
    ]


def _on_border(box: Box, space: Space) -> tuple[float, float]:
    """The point of the border nearest to the middle of an area; west and south before east and north."""
    x, y = box.centre
    ways = [
        (box.x0, (0.0, y)),
        (box.y0, (x, 0.0)),
        (space.across_m - box.x1, (space.across_m, y)),
        (space.up_m - box.y1, (x, space.up_m)),
    ]
    point = min(ways, key=lambda way: round(way[0], 3))[1]
    return round(point[0], 3), round(point[1], 3)


def _coach(around: Box, space: Space, heaps: list[Item]) -> tuple[float, float]:
    """On the border beside the middle of all areas, everybody in view; a few steps from a heap that lies there."""
    x, y = around.centre
    east = space.across_m - around.x1 <= space.up_m - around.y1
    spot = (space.across_m, round(y, 3)) if east else (round(x, 3), space.up_m)
    if any(dist(spot, (heap.x_m, heap.y_m)) < _STEPS_M for heap in heaps):
        step = (0.0, _STEPS_M) if east else (_STEPS_M, 0.0)
        spot = (_within(spot[0] + step[0], space.across_m), _within(spot[1] + step[1], space.up_m))
    return spot


def _within(value: float, most: float) -> float:
    return round(min(value, most), 3)
