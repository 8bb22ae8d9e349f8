"""A drawing in its neutral form: metres, no pixels. What stands where, which lines, what the key says."""

from dataclasses import dataclass
from typing import Literal

from turnout.show.ink import Side

Point = tuple[float, float]
AreaKind = Literal["field", "zone", "space"]
MarkKind = Literal[
    "player", "ball", "corner cone", "line cone", "zone cone", "gate cone", "ball heap", "bib heap", "coach", "old"
]
BarKind = Literal["goal", "small goal", "gate"]
LineKind = Literal["ball", "run", "dribble", "shot"]


@dataclass(frozen=True)
class Area:
    """A place on the ground: rectangle or circle about its centre."""

    kind: AreaKind
    shape: Literal["rectangle", "circle"]
    name: str
    x_m: float
    y_m: float
    across_m: float
    up_m: float

    @property
    def box(self) -> tuple[float, float, float, float]:
        """West, south, east, north in metres."""
        half_x, half_y = self.across_m / 2, self.up_m / 2
        return self.x_m - half_x, self.y_m - half_y, self.x_m + half_x, self.y_m + half_y


@dataclass(frozen=True)
class Bar:
    """A goal or gate: its line from one end to the other, and `back`, from the line to the back of its net."""

    kind: BarKind
    name: str
    start: Point
    end: Point
    back: Point = (0.0, 0.0)

    @property
    def box(self) -> tuple[float, float, float, float]:
        """West, south, east, north in metres, the net included."""
        xs = [self.start[0], self.end[0], self.start[0] + self.back[0]]
        ys = [self.start[1], self.end[1], self.start[1] + self.back[1]]
        return min(xs), min(ys), max(xs), max(ys)


@dataclass(frozen=True)
class Mark:
    """Something that stands at a point. `fixed` marks keep it; others may make room by a few pixels."""

    kind: MarkKind
    x_m: float
    y_m: float
    side: Side | None = None
    number: int | None = None
    fixed: bool = False
    group: str = ""
    keeper: bool = False
    waits: bool = False  # in a line off the field

    @property
    def label(self) -> str:
        return f"{self.side.letter if self.side else ''}{self.number or ''}"


@dataclass(frozen=True)
class Line:
    """A ball, run or dribble from one mark (index) or point to another; `number` is the sentence it belongs to."""

    kind: LineKind
    start: int | Point
    end: int | Point
    number: int | None = None
    faint: bool = False


@dataclass(frozen=True)
class Measure:
    """A dimension line along one side of the drawing, from one coordinate to the other."""

    side: Literal["south", "east", "west"]
    from_m: float
    to_m: float
    text: str
    short: str  # where the long text does not fit


@dataclass(frozen=True)
class Drawing:
    """Everything a picture shows; `bounds_m` is west, south, east, north of what must be visible."""

    title: str
    desc: str
    bounds_m: tuple[float, float, float, float]
    areas: tuple[Area, ...]
    marks: tuple[Mark, ...]
    lines: tuple[Line, ...] = ()
    measures: tuple[Measure, ...] = ()
    sides: tuple[Side, ...] = ()
    numbered: bool = False  # the key explains the numbers on the lines
    limits: tuple[tuple[int, str], ...] = ()  # touches allowed, to whom: noted in the key
    bars: tuple[Bar, ...] = ()
    links: tuple[tuple[int, int], ...] = ()  # marks (by index) that belong together: the players of a pair
    linked: str = ""  # what the key calls those: 'pair'

    @property
    def field(self) -> Area:
        return self.areas[0]
