"""Even positions along edges and round circles. Points are (x, y) in metres."""

from math import ceil, cos, pi, sin

from turnout.shapes.boxes import NEAR_M, Box

Point = tuple[float, float]


def along(start: Point, end: Point, *, at_most: float) -> list[Point]:
    """Points strictly between start and end, evenly spaced, no further apart than `at_most`."""
    length = ((end[0] - start[0]) ** 2 + (end[1] - start[1]) ** 2) ** 0.5
    pieces = max(1, ceil(length / at_most - NEAR_M))
    steps = [piece / pieces for piece in range(1, pieces)]
    return [(start[0] + t * (end[0] - start[0]), start[1] + t * (end[1] - start[1])) for t in steps]


def sides(box: Box) -> list[tuple[Point, Point]]:
    """The four sides of a box as (start, end), anticlockwise from the south side."""
    corners = box.corners
    return [(corners[number], corners[(number + 1) % 4]) for number in range(4)]


def round_circle(x: float, y: float, *, across: float, chord_at_most: float, fewest: int = 8) -> list[Point]:
    """Points on a circle of diameter `across` with equal chords no longer than `chord_at_most`, from the east point."""
    count = max(fewest, ceil(pi * across / chord_at_most))
    angles = [2 * pi * number / count for number in range(count)]
    return [(x + across / 2 * cos(angle), y + across / 2 * sin(angle)) for angle in angles]


def apart(points: list[Point], *, by: float) -> list[Point]:
    """The points in order, without those nearer than `by` to one kept before."""
    kept: list[Point] = []
    for x, y in points:
        if all((x - kx) ** 2 + (y - ky) ** 2 >= by * by for kx, ky in kept):
            kept.append((x, y))
    return kept
