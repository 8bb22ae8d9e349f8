"""Boxes with sides along x and y, and how far apart they lie. Lengths in metres."""

from dataclasses import dataclass

NEAR_M = 1e-6  # lengths closer than this count as equal: far below a cone, far above rounding


@dataclass(frozen=True)
class Box:
    """A rectangle from its south-west corner (x0, y0) to its north-east corner (x1, y1)."""

    x0: float
    y0: float
    x1: float
    y1: float

    @property
    def across(self) -> float:
        return self.x1 - self.x0

    @property
    def up(self) -> float:
        return self.y1 - self.y0

    @property
    def centre(self) -> tuple[float, float]:
        return (self.x0 + self.x1) / 2, (self.y0 + self.y1) / 2

    @property
    def corners(self) -> tuple[tuple[float, float], ...]:
        """The four corners, anticlockwise from the south-west one."""
        return (self.x0, self.y0), (self.x1, self.y0), (self.x1, self.y1), (self.x0, self.y1)


def box_around(*, x: float, y: float, across: float, up: float) -> Box:
    """The box of this size centred on (x, y)."""
    return Box(x - across / 2, y - up / 2, x + across / 2, y + up / 2)


def grown(box: Box, by: float) -> Box:
    """The box with every side moved out by `by` (in, when negative)."""
    return Box(box.x0 - by, box.y0 - by, box.x1 + by, box.y1 + by)


def hull(boxes: list[Box]) -> Box:
    """The smallest box round all of them; raises ValueError on an empty list."""
    return Box(
        min(box.x0 for box in boxes),
        min(box.y0 for box in boxes),
        max(box.x1 for box in boxes),
        max(box.y1 for box in boxes),
    )


def inside(inner: Box, outer: Box) -> bool:
    """Whether `inner` lies in `outer`; touching its border is inside."""
    return (
        inner.x0 >= outer.x0 - NEAR_M
        and inner.y0 >= outer.y0 - NEAR_M
        and inner.x1 <= outer.x1 + NEAR_M
        and inner.y1 <= outer.y1 + NEAR_M
    )


def distance(first: Box, second: Box) -> float:
    """Shortest distance between two boxes; 0 when they touch or overlap."""
    dx = max(first.x0 - second.x1, second.x0 - first.x1, 0.0)
    dy = max(first.y0 - second.y1, second.y0 - first.y1, 0.0)
    return (dx * dx + dy * dy) ** 0.5


def turned_point(x: float, y: float) -> tuple[float, float]:
    """The point after a quarter turn anticlockwise round (0, 0): what pointed east points north."""
    return -y, x


def turned(box: Box) -> Box:
    """The box after a quarter turn anticlockwise round (0, 0)."""
    return Box(-box.y1, box.x0, -box.y0, box.x1)
