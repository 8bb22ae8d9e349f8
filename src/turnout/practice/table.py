"""The when/then table: every sentence of a practice as rows that can be played, counted and checked.

Order on one event: points, guards, changes left to right, restart, end of turn.
"""

from dataclasses import dataclass
from typing import Literal

from turnout.practice.model import Source

WhoKind = Literal[
    "a side", "side with the ball", "side without the ball", "other side", "side", "role", "its role", "everyone",
    "nobody", "passer", "receiver", "winner", "loser", "scorer", "last to touch", "nearest", "farthest", "next group",
]  # fmt: skip


@dataclass(frozen=True)
class Who:
    """Whom a row is about.

    side names a side (kind 'side', or 'role' limited to one side); role names a role ('inside'; a one-role side's
    role is its own side name); whose is 'its' or 'other' for nearest and farthest ('its nearest edge player').
    'its' and 'other side' bind to the side in the When, else to the side with the ball; the loser is who lost the
    ball in this event.
    """

    kind: WhoKind
    side: str | None = None
    role: str | None = None
    whose: Literal["its", "other"] | None = None


@dataclass(frozen=True)
class Where:
    """A place in a sentence: in it, on its edge, or outside it."""

    place: str
    how: Literal["in", "edge", "outside"] = "in"


@dataclass(frozen=True)
class Passes:
    """A kind of pass: between a group, to a group, or from one group to another."""

    kind: Literal["between", "to", "from to"]
    first: Who
    second: Who | None = None


ActKind = Literal[
    "passes in a row", "passes", "pass into", "pass to", "receive in", "run into", "win", "win and pass", "lose",
    "score", "touches", "enter", "start", "tackle", "pass through", "shoot",
]  # fmt: skip


@dataclass(frozen=True)
class Act:
    """Something a player or side does with or about the ball. count is K of 'completes K passes', N of 'N touches'."""

    kind: ActKind
    count: int | None = None
    between: Who | None = None
    to: Who | None = None
    where: Where | None = None


@dataclass(frozen=True)
class Event:
    """What a When or an until waits for: WHO ACT, or something without an actor."""

    kind: Literal["act", "ball out", "ball enters", "ball leaves", "seconds pass"]
    who: Who | None = None
    act: Act | None = None
    where: Where | None = None
    seconds: float | None = None


@dataclass(frozen=True)
class While:
    """A condition of the moment: a side has the ball, or the ball is in a place."""

    kind: Literal["has the ball", "ball in"]
    who: Who | None = None
    where: Where | None = None


Kind = Literal["points", "count", "limit", "member", "direction", "start", "restart", "change"]
Do = Literal[
    # points: value points to who when the event happens (within_s of `after` if given)
    "score",
    # count: only passes of this kind count in a run
    "only passes count",
    # limits on a role: touches (value), stay in / stay out (where), no tackle (who may not be tackled; where), along
    "touches", "stay in", "stay out", "no tackle", "move along", "stand still",
    # no repeat: a side or pair that scored at one of `where` scores next at another of them
    "no repeat",
    # member: who plays for target
    "plays for",
    # direction: who attacks where (and defends `also`)
    "attacks",
    # changes: exchange who with target (single players) · change over (groups who, target) · comes in · goes out ·
    # rotate: the next group changes places with target
    "exchange", "change over", "comes in", "goes out", "rotate",
    # start / restart: who starts, where; ball in: how (value: 'kick-in' | 'dribble-in' | 'pass') by who
    "starts", "ball in",
]  # fmt: skip


@dataclass(frozen=True)
class Row:
    """One row of the table. `order` is the sentence's number and the change's place in it."""

    kind: Kind
    do: Do
    who: Who
    source: Source
    order: tuple[int, int]
    when: Event | None = None  # None: always
    every_s: float | None = None  # clock rows
    after: Act | None = None
    within_s: float | None = None
    where: Where | None = None
    also: Where | None = None
    target: Who | None = None
    passes: Passes | None = None
    while_: While | None = None
    until: Event | None = None
    value: int | str | None = None
    breach: str = "the other side starts there"
