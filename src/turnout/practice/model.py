"""A practice as data: what the words of a file say, before anybody plays them. Lengths in metres, times in seconds."""

from dataclasses import dataclass, field
from math import pi
from typing import Literal

Direction = Literal["north", "south", "east", "west"]
LINES = ("goal", "small goal", "gate")  # places that are a line: balls pass over them, nobody is inside them
GOALS = ("goal", "small goal")
AREAS = ("rectangle", "circle", "polygon", "strip", "part", "same")  # places players can be in
Corner = Literal["north-east", "north-west", "south-east", "south-west"]

BallsInPlay = Literal["one", "several", "per unit", "per player"]


@dataclass(frozen=True)
class Source:
    """Where a sentence stands: file, line (from 1) and, for plain one-line text, column (from 1)."""

    file: str
    line: int
    column: int | None
    text: str


@dataclass(frozen=True)
class PlaceDef:
    """One line of `ground`, as written.

    rectangle: across_m (west-east), up_m (south-north); of `area_m2` for each player where that is above 0, `bound`
    saying at least or at most · circle: across_m is the diameter · polygon: `corners` ·
    strip: depth_m inside or beyond the `side` of `of` · part: piece `index` of `pieces` of `of`, cut `along` ·
    same: as large as `of` and depth_m to the `side` of it · list: `members` ·
    goal, small goal, gate: `width_m` and `height_m` (0: not written), on the `side` of `of` and
    `offset_m` east or north of its middle, or at the point (`x_m`, `y_m`), lying `along`.
    A rectangle or circle after the first place stands at `spot`: the centre or a `corner` of `of`, inside a `side`
    of it, or at the point. `word` is the word it is written with where there are several: channel, square.
    """

    name: str
    kind: Literal[
        "rectangle", "circle", "polygon", "strip", "part", "same", "list", "goal", "small goal", "gate",
    ]  # fmt: skip
    across_m: float = 0.0
    up_m: float = 0.0
    depth_m: float = 0.0
    inside: bool = True
    side: Direction | None = None
    of: str | None = None
    pieces: int = 0
    index: int = 0
    along: Literal["west to east", "south to north"] | None = None
    members: tuple[str, ...] = ()
    width_m: float = 0.0
    height_m: float = 0.0
    x_m: float = 0.0
    y_m: float = 0.0
    offset_m: float = 0.0
    unit: str = "yd"
    at_unit: str = "yd"  # of the point or the offset
    source: Source | None = None
    word: Literal["", "channel", "square"] = ""
    spot: Literal["", "centre", "corner", "side", "point"] = ""
    corner: Corner | None = None
    corners: tuple[tuple[float, float], ...] = ()
    ratio: tuple[float, float] = (0.0, 0.0)
    area_m2: float = 0.0
    bound: Literal["", "least", "most"] = ""


@dataclass(frozen=True)
class Place:
    """A place at a definite size, in the practice's own coordinates: centre (0, 0), x east, y north, metres.

    across_m and up_m are those of the box round it. A goal, small goal or gate is a line: across_m is its width and
    up_m is 0 when it lies west-east, the other way round when it lies south-north. A polygon has `corners`.
    """

    name: str
    kind: Literal["rectangle", "circle", "polygon", "list", "goal", "small goal", "gate"]
    x_m: float
    y_m: float
    across_m: float
    up_m: float
    members: tuple[str, ...] = ()
    height_m: float = 0.0
    corners: tuple[tuple[float, float], ...] = ()

    @property
    def is_line(self) -> bool:
        return self.kind in LINES

    @property
    def area_m2(self) -> float:
        """Area, m2; of a list that of the box round it."""
        if self.kind == "polygon":
            turns = zip(self.corners, (*self.corners[1:], self.corners[0]), strict=True)
            return abs(sum(x0 * y1 - x1 * y0 for (x0, y0), (x1, y1) in turns)) / 2
        return self.across_m * self.up_m * (pi / 4 if self.kind == "circle" else 1.0)


@dataclass(frozen=True)
class Tie:
    """A count that follows another group's: `amber inside - 1`."""

    group: str
    offset: int


@dataclass(frozen=True)
class Home:
    """Where a group belongs: inside a place or on its edge. `fence` False means a start only (`from PLACE`).

    `behind` is the side of the place behind which those who wait stand in a line, off the field. `sides` are the
    stretches of the edge they stand on (north …, long, short, or left and right of the way their side attacks; none:
    all round). `at` is the point where they stand, metres east and north of the middle of the first place.
    """

    place: str
    on_edge: bool = False
    fence: bool = True
    behind: Direction | None = None
    sides: tuple[str, ...] = ()
    at: tuple[float, float] | None = None
    at_unit: str = "yd"


@dataclass(frozen=True)
class Group:
    """Players sharing a side and a role. `key` is what sentences and counts call it: 'amber inside' or 'neutral'.

    Counts are players. `of` above 1 makes many small sides of that many (pairs: 2). `keeper`: home is a goal.
    `without` is the home while the other side has the ball, where it differs. `feeds` are the groups that a line of
    those who wait fills up (none: whoever is swapped with the next group).
    """

    side: str
    role: str  # "" when the side has one role
    count: int
    low: int
    high: int
    home: Home
    tie: Tie | None = None
    source: Source | None = None
    of: int = 1
    keeper: bool = False
    without: Home | None = None
    feeds: tuple[str, ...] = ()

    @property
    def key(self) -> str:
        return f"{self.side} {self.role}".strip()

    @property
    def waits(self) -> bool:
        """Whether they stand in a line off the field until it is their turn."""
        return self.home.behind is not None


@dataclass(frozen=True)
class Phrase:
    """A parsed piece of language: the declared form or phrase, and its slots in order of the template."""

    form: str
    slots: tuple[tuple[str, "Phrase | str | int"], ...] = ()

    def __getitem__(self, name: str) -> "Phrase | str | int":
        return dict(self.slots)[name]

    def get(self, name: str) -> "Phrase | str | int | None":
        return dict(self.slots).get(name)


@dataclass(frozen=True)
class Rule:
    """One rule sentence: its tree, its canonical text and where it was written."""

    phrase: Phrase
    text: str
    source: Source


@dataclass(frozen=True)
class Step:
    """A progression: named changes to ground, people, rules and kit. `tags` (space, task, equipment, people) are
    computed. balls and balls_in_play are None where the step leaves them."""

    name: str
    direction: Literal["harder", "easier", "different"]
    ground: tuple[PlaceDef, ...] = ()
    people: tuple[Group, ...] = ()
    add: tuple[Rule, ...] = ()
    remove: tuple[Rule, ...] = ()
    change: tuple[Rule, ...] = ()
    source: Source | None = None
    balls: int | None = None
    balls_in_play: BallsInPlay | None = None
    balls_at_once: int = 1

    @property
    def tags(self) -> tuple[str, ...]:
        rules, kit = self.add or self.remove or self.change, self.balls or self.balls_in_play
        pairs = (("space", self.ground), ("task", rules), ("equipment", kit), ("people", self.people))
        return tuple(tag for tag, present in pairs if present)


@dataclass(frozen=True)
class Question:
    """What the coach asks and looks for, for one capability."""

    capability: str
    ask: str
    look_for: str


@dataclass(frozen=True)
class Arrange:
    """What a fit may do with the practice; every field has a default."""

    copies_per_adult: int = 1
    waiting_at_most: int = 2
    block_minutes: tuple[float, float] = (2.0, 5.0)
    minutes: tuple[float, float] = (8.0, 20.0)
    gap_m: float = 3.0
    band: float = 0.25  # area per player may leave the designed one by this share
    keep_square: tuple[str, ...] = ()
    fixed: bool = False
    bibs_may_change: bool = True  # by the clock, in the middle of play


@dataclass(frozen=True)
class Practice:
    """Everything one practice file says."""

    key: str  # file stem or folder name
    name: str
    about: str
    ages: tuple[int, int]
    develops: tuple[tuple[str, int], ...]
    ground: tuple[PlaceDef, ...]
    groups: tuple[Group, ...]
    rules: tuple[Rule, ...]
    steps: tuple[Step, ...] = ()
    questions: tuple[Question, ...] = ()
    also_called: tuple[tuple[str, tuple[str, ...]], ...] = ()
    balls: int = 6
    balls_in_play: BallsInPlay = "one"
    balls_at_once: int = 1  # with "several": balls for everybody together
    arrange: Arrange = field(default_factory=Arrange)
    taken: tuple[str, ...] = ()  # names of the steps already applied

    @property
    def sides(self) -> tuple[str, ...]:
        """Side names in order of appearance."""
        return tuple(dict.fromkeys(group.side for group in self.groups))

    def group(self, key: str) -> Group:
        """The group called `key`; raises KeyError."""
        return {group.key: group for group in self.groups}[key]
