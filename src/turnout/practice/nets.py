"""What stands behind a goal line: the net, on the side away from the field."""

from turnout.practice.model import GOALS, Place

NET_DEPTH_M = {"goal": 1.5, "small goal": 0.8}  # own choice, between what light and heavy frames take

Point = tuple[float, float]
Corners = tuple[float, float, float, float]  # west, south, east, north


def ends(line: Place) -> tuple[Point, Point]:
    """The two ends of a goal or gate, metres: west or south first."""
    half_x, half_y = line.across_m / 2, line.up_m / 2
    return (line.x_m - half_x, line.y_m - half_y), (line.x_m + half_x, line.y_m + half_y)


def net_behind(line: Place, field: Place) -> Point:
    """From the goal line to the back of its net, metres east and north; (0, 0) for a gate."""
    depth = NET_DEPTH_M.get(line.kind, 0.0)
    if line.up_m == 0.0:
        return 0.0, depth if line.y_m >= field.y_m else -depth
    return (depth if line.x_m >= field.x_m else -depth), 0.0


def net_box(line: Place, field: Place) -> Corners:
    """West, south, east, north of a goal with its net, metres."""
    (x0, y0), (x1, y1) = ends(line)
    dx, dy = net_behind(line, field)
    return min(x0, x0 + dx), min(y0, y0 + dy), max(x1, x1 + dx), max(y1, y1 + dy)


def has_net(place: Place) -> bool:
    """Whether a place is a goal, large or small."""
    return place.kind in GOALS
