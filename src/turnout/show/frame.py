"""Laying a drawing out for one size: the scale, the radius of a mark, and where every mark stands in pixels."""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from math import cos, dist, hypot, pi, sin, sqrt

from turnout.measure import YARD_M
from turnout.practice.starts import IN_LINE_M
from turnout.show.drawing import Area, Bar, Drawing, Mark, Point
from turnout.show.settle import GAP_PX, Box, apart, disc_box, overlaps, text_width
from turnout.show.symbols import KEEPER_PX

RADIUS_LEAST_PX, RADIUS_MOST_PX = 6.0, 15.0
CONES = ("corner cone", "line cone", "zone cone", "gate cone")
BEAD_PX = 3.0
NET_LEAST_PX = {"goal": 8.0, "small goal": 5.0}


@dataclass(frozen=True)
class Frame:
    """A drawing at one scale. left_px, top_px: where its west and north bounds lie on the sheet."""

    drawing: Drawing
    px_per_m: float
    left_px: float
    top_px: float
    radius_px: float

    @property
    def px_per_yd(self) -> float:
        return self.px_per_m * YARD_M

    def at(self, x_m: float, y_m: float) -> Point:
        """Metres to pixels: north is up the page."""
        west, _, _, north = self.drawing.bounds_m
        return self.left_px + (x_m - west) * self.px_per_m, self.top_px + (north - y_m) * self.px_per_m

    def box(self, area: Area) -> Box:
        """An area's left, top, right, bottom in pixels."""
        west, south, east, north = area.box
        return (*self.at(west, north), *self.at(east, south))

    @property
    def cone_px(self) -> float:
        return min(5.2, max(3.4, self.radius_px * 0.46))

    @property
    def waiting_px(self) -> float:
        """The radius of one who waits: a bead of a string, as large as the line has room for."""
        return min(self.radius_px * 0.6, max(BEAD_PX, IN_LINE_M * self.px_per_m / 2 - 1))

    @cached_property
    def spots(self) -> list[Point]:
        """Where each mark of the drawing stands, pixels, in the drawing's order; the ball beside its holder."""
        settled = self._settled()
        taken = [disc_box(spot, self._reach(mark)) for mark, spot in zip(self.drawing.marks, settled, strict=True)]
        nets = [self.bar_box(bar) for bar in self.drawing.bars if bar.kind != "gate"]
        for index, mark in enumerate(self.drawing.marks):
            if mark.kind == "ball" and mark.number is not None:
                settled[index] = self._beside(mark.number, settled, [*nets, *taken[:index]])
        return settled

    def taken(self) -> list[Box]:
        """The boxes marks stand in."""
        pairs = zip(self.drawing.marks, self.spots, strict=True)
        nets = [self.bar_box(bar) for bar in self.drawing.bars]
        return [*nets, *(disc_box(spot, self._reach(mark) + 1) for mark, spot in pairs)]

    def back_px(self, bar: Bar) -> Point:
        """From a goal's line to the back of its net, pixels, never too shallow to see."""
        long = hypot(*bar.back)
        if not long:
            return 0.0, 0.0
        deep = max(long * self.px_per_m, NET_LEAST_PX.get(bar.kind, 0.0))
        return bar.back[0] / long * deep, -bar.back[1] / long * deep

    def bar_box(self, bar: Bar) -> Box:
        """A goal or gate's left, top, right, bottom in pixels, the net included."""
        (ax, ay), (bx, by) = self.at(*bar.start), self.at(*bar.end)
        dx, dy = self.back_px(bar)
        return min(ax, ax + dx), min(ay, by, ay + dy), max(ax, bx, ax + dx), max(ay, by, ay + dy)

    def _settled(self) -> list[Point]:
        marks = self.drawing.marks
        spots = [self._clear_of_line(mark) for mark in marks]
        radii = [0.0 if _held(mark) else self._reach(mark) for mark in marks]
        fixed = [mark.kind != "player" or mark.waits or _stays(i, marks, spots, radii) for i, mark in enumerate(marks)]
        free = [i for i, mark in enumerate(marks) if not _held(mark)]
        cages = [self._cage(mark) for mark in marks]
        moved = apart(
            [spots[i] for i in free],
            [radii[i] for i in free],
            [fixed[i] for i in free],
            gap=GAP_PX,
            cages=[cages[i] for i in free],
        )
        for i, spot in zip(free, moved, strict=True):
            spots[i] = spot
        return spots

    def _reach(self, mark: Mark) -> float:
        if mark.waits:
            return self.waiting_px
        wide = self.radius_px + (KEEPER_PX if mark.keeper else 0.0)
        return {"player": wide, "ball": 4.6, "coach": 9.0}.get(mark.kind, self.cone_px)

    def _clear_of_line(self, mark: Mark) -> Point:
        """An edge player stands wholly outside the line, whatever the scale."""
        x, y = self.at(mark.x_m, mark.y_m)
        if mark.keeper:
            return self._off_its_line(mark, x, y)
        home = self._edge_of(mark) if mark.fixed and mark.kind == "player" else None
        if home is None:
            return x, y
        out = self.radius_px + 3
        if home.shape == "circle":
            (cx, cy), reach = self.at(home.x_m, home.y_m), home.across_m / 2 * self.px_per_m + out
            length = sqrt((x - cx) ** 2 + (y - cy) ** 2) or 1.0
            return cx + (x - cx) / length * reach, cy + (y - cy) / length * reach
        left, top, right, bottom = self.box(home)
        x = min(x, left - out) if x < left else max(x, right + out) if x > right else x
        y = min(y, top - out) if y < top else max(y, bottom + out) if y > bottom else y
        return x, y

    def _off_its_line(self, mark: Mark, x: float, y: float) -> Point:
        """A keeper stands wholly in front of the goal line, so that the net stays in sight."""
        cage = self._cage(mark)
        reach = self._reach(mark) + 2
        if cage is None:
            return x, y
        left, top, right, bottom = cage
        return min(max(x, left + reach), right - reach), min(max(y, top + reach), bottom - reach)

    def _edge_of(self, mark: Mark) -> Area | None:
        """The field a mark stands just outside of."""
        fields = [area for area in self.drawing.areas if area.kind == "field"]
        return next((area for area in fields if _just_outside(area, mark)), None)

    def _cage(self, mark: Mark) -> Box | None:
        """The smallest area a mark stands in: making room must not carry it out of there."""
        inside = [area for area in self.drawing.areas if area.kind != "space" and _in(area, mark)]
        small = min(inside, key=lambda area: area.across_m * area.up_m, default=None)
        return self.box(small) if small and small.shape == "rectangle" else None

    def _beside(self, number: int, settled: Sequence[Point], taken: Sequence[Box]) -> Point:
        """At the holder's feet on a free side, the middle of the field first, so that it stays on the sheet."""
        holder, reach = settled[number], self._reach(self.drawing.marks[number]) + 5.6
        field = next(area for area in self.drawing.areas if area.kind == "field")
        middle = self.at(field.x_m, field.y_m)
        around = [(holder[0] + reach * cos(a), holder[1] + reach * sin(a)) for a in (pi * n / 6 for n in range(12))]
        around.sort(key=lambda spot: round(dist(spot, middle), 1))
        clear = [spot for spot in around if not any(overlaps(disc_box(spot, 4.2), box) for box in taken)]
        return (clear or around)[0]


def frame_for(drawing: Drawing, *, px_per_yd: float, margins: tuple[float, float]) -> Frame:
    """A frame at a scale; margins: pixels left and above for measures and names, beyond the room marks need."""
    radius = radius_px(drawing, px_per_yd)
    left, top, _, _ = pads_px(drawing, radius)
    return Frame(drawing, px_per_yd / YARD_M, margins[0] + left, margins[1] + top, radius)


def radius_px(drawing: Drawing, px_per_yd: float) -> float:
    """The radius of a mark at a scale: about a yard, less where many share little ground, never under 6 px."""
    players = [mark for mark in drawing.marks if mark.kind == "player"]
    room = sum(area.across_m * area.up_m for area in drawing.areas if area.kind == "field") * (px_per_yd / YARD_M) ** 2
    crowd = sqrt(0.42 * room / max(1, len(players))) / 2
    return min(RADIUS_MOST_PX, max(RADIUS_LEAST_PX, min(px_per_yd * 1.05, crowd)))


def pads_px(drawing: Drawing, radius: float) -> Box:
    """Room left, above, right and below the outermost lines, pixels: for edge players, else for a corner cone."""
    outside = [mark for mark in drawing.marks if mark.kind == "player" and mark.fixed]
    boxes = [area.box for area in drawing.areas if area.kind == "field"]
    outside = [mark for mark in outside if not any(_in(area, mark) for area in drawing.areas if area.kind == "zone")]
    room = 2 * radius + 6
    west, south, east, north = (side(box[n] for box in boxes) for n, side in enumerate((min, min, max, max)))
    beyond = (
        any(mark.x_m < west for mark in outside),
        any(mark.y_m > north for mark in outside),
        any(mark.x_m > east for mark in outside),
        any(mark.y_m < south for mark in outside),
    )
    if outside and any(area.shape == "circle" for area in drawing.areas if area.kind == "field"):
        beyond = (True, True, True, True)  # round a circle they stand out on every side
    return tuple(room if out else 8.0 for out in beyond)  # type: ignore[return-value]


def text_box(x: float, y: float, words: str, size: float, anchor: str) -> Box:
    """The box a line of text fills, its baseline at y."""
    width = text_width(words, size)
    left = {"start": x, "middle": x - width / 2, "end": x - width}[anchor]
    return left, y - size * 0.8, left + width, y + size * 0.25


def _held(mark: Mark) -> bool:
    return mark.kind == "ball" and mark.number is not None


def _stays(index: int, marks: Sequence[Mark], spots: Sequence[Point], radii: Sequence[float]) -> bool:
    """A fixed mark keeps its spot unless it would cover another fixed one."""
    if not marks[index].fixed:
        return False
    mine = disc_box(spots[index], radii[index])
    others = (i for i, mark in enumerate(marks) if mark.fixed and i != index and mark.kind == "player")
    return not any(overlaps(mine, disc_box(spots[i], radii[i])) for i in others)


def _in(area: Area, mark: Mark) -> bool:
    west, south, east, north = area.box
    return west <= mark.x_m <= east and south <= mark.y_m <= north


def _just_outside(area: Area, mark: Mark, reach_m: float = 1.5) -> bool:
    west, south, east, north = area.box
    near = west - reach_m <= mark.x_m <= east + reach_m and south - reach_m <= mark.y_m <= north + reach_m
    return near and (area.shape == "circle" or not _in(area, mark))
