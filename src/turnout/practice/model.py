"""A practice as data: what the words of a file say, before anybody plays them. Lengths in metres, times in seconds."""

from dataclasses import dataclass, field
from typing import Literal

Direction = Literal["north", "south", "east", "west"]
LINES = ("goal", "small goal", "gate")  # places that are a line: balls pass over them, nobody is inside them
GOALS = ("goal", "small goal")


BallsInPlay = Literal["one", "per unit", "per player"]


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

    rectangle: across_m (west-east), up_m (south-north) · circle: across_m is the diameter ·
    strip: depth_m inside or beyond the `side` of `of` · part: piece `index` of `pieces` of `of`, cut `along` ·
    list: `members` · goal, small goal, gate: `width_m` and `height_m` (0: not written), on the `side` of `of` and
    `offset_m` east or north of its middle, or at the point (`x_m`, `y_m`), lying `along`.
    """

    name: str
    kind: Literal["rectangle", "circle", "strip", "part", "list", "goal", "small goal", "gate"]
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


@dataclass(frozen=True)
class Place:
    """A place at a definite size, in the practice's own coordinates: centre (0, 0), x east, y north, metres.

    A goal, small goal or gate is a line: across_m is its width and up_m is 0 when it lies west-east, the other way
    round when it lies south-north.
    """

    name: str
    kind: Literal["rectangle", "circle", "list", "goal", "small goal", "gate"]
    x_m: float
    y_m: float
    across_m: float
    up_m: float
    members: tuple[str, ...] = ()
    height_m: float = 0.0

    @property
    def is_line(self) -> bool:
        return self.kind in LINES


@dataclass(frozen=True)
class Tie:
    """A count that follows another group's: `amber inside - 1`."""

    group: str
    offset: int


@dataclass(frozen=True)
class Home:
    """Where a group belongs: inside a place or on its edge. `fence` False means a start only (`from PLACE`).

    `behind` is the side of the place behind which those who wait stand in a line, off the field.
    """

    place: str
    on_edge: bool = False
    fence: bool = True
    behind: Direction | None = None


@dataclass(frozen=True)
class Group:
    """Players sharing a side and a role. `key` is what sentences and counts call it: 'amber inside' or 'neutral'.

    Counts are players. `of` above 1 makes many small sides of that many (pairs: 2). `keeper`: home is a goal.
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
    """A progression: named changes to ground, people and rules. `tags` (space, task, people) are computed."""

    name: str
    direction: Literal["harder", "easier", "different"]
    ground: tuple[PlaceDef, ...] = ()
    people: tuple[Group, ...] = ()
    add: tuple[Rule, ...] = ()
    remove: tuple[Rule, ...] = ()
    change: tuple[Rule, ...] = ()
    source: Source | None = None

    @property
    def tags(self) -> tuple[str, ...]:
        rules = self.add or self.remove or self.change
        pairs = (("space", self.ground), ("task", rules), ("people", self.people))
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
    arrange: Arrange = field(default_factory=Arrange)
    taken: tuple[str, ...] = ()  # names of the steps already applied

    @property
    def sides(self) -> tuple[str, ...]:
        """Side names in order of appearance."""
        return tuple(dict.fromkeys(group.side for group in self.groups))

    def group(self, key: str) -> Group:
        """The group called `key`; raises KeyError."""
        return {group.key: group for group in self.groups}[key]
