"""The when/then table: every sentence of a practice as rows that can be played, counted and checked.

Order on one event: points, guards, changes left to right, restart, end of turn.
"""

from dataclasses import dataclass
from typing import Literal

from turnout.practice.model import Source

WhoKind = Literal[
    # sides, by name or by the moment
    "a side", "side with the ball", "side without the ball", "other side", "side behind", "their side", "side",
    # players of a role: of any or one side, of the side in the When, of the other side; so many of them
    "role", "its role", "other role", "some",
    "everyone", "nobody", "a player",
    # one player
    "passer", "receiver", "winner", "loser", "scorer", "last to touch", "nearest", "farthest", "player there",
    "longest waiting",
    "next group",
]  # fmt: skip


@dataclass(frozen=True)
class Who:
    """Whom a row is about.

    side names a side (kind 'side', or 'role' limited to one side); role names a role ('inside'; a one-role side's
    role is its own side name); whose is 'its' or 'other' for nearest and farthest ('its nearest edge player');
    count is how many of a role (kind 'some').
    'its' and 'other side' bind to the side in the When, else to the side with the ball; the loser is who lost the
    ball in this event; the player there holds the ball in the row's place.
    """

    kind: WhoKind
    side: str | None = None
    role: str | None = None
    whose: Literal["its", "other"] | None = None
    count: int | None = None


Relative = Literal[
    "attacking end", "defending end", "attacking half", "defending half", "attacking third", "middle third",
    "defending third",
]  # fmt: skip


@dataclass(frozen=True)
class Where:
    """A place in a sentence: in it, on its edge, outside it or behind it.

    relative is a place told from a side ('the attacking half'); `table` puts the place of each side in its stead, so
    that in a practice's table every Where has a place.
    """

    place: str
    how: Literal["in", "edge", "outside", "behind"] = "in"
    relative: Relative | None = None


@dataclass(frozen=True)
class Passes:
    """A kind of pass: between a group, to a group, from one group to another; into, through or over a place; back
    to the passer."""

    kind: Literal["between", "to", "from to", "into", "through", "over", "back"]
    first: Who | None = None
    second: Who | None = None
    where: Where | None = None


ActKind = Literal[
    "passes in a row", "passes", "pass into", "pass through", "pass over", "pass back", "pass to", "one-two",
    "receive in", "run into", "run through", "stop in", "move from to", "keep for", "win", "win and pass", "lose",
    "score", "concede", "shoot", "head", "touches", "enter", "leave", "start", "tackle",
]  # fmt: skip


@dataclass(frozen=True)
class Act:
    """Something a player or side does with or about the ball.

    count is K of 'completes K passes', N of 'N touches'; seconds is how long the ball is kept; further is where the
    ball is moved to (`where` is where from).
    """

    kind: ActKind
    count: int | None = None
    between: Who | None = None
    to: Who | None = None
    where: Where | None = None
    further: Where | None = None
    seconds: float | None = None


EventKind = Literal[
    "act", "ball out", "ball enters", "ball leaves", "seconds pass", "seconds without", "turn starts", "turn ends",
    "coach calls",
]  # fmt: skip


@dataclass(frozen=True)
class Event:
    """What a When, an until or a guard waits for: WHO ACT, or something without an actor."""

    kind: EventKind
    who: Who | None = None
    act: Act | None = None
    where: Where | None = None
    seconds: float | None = None


@dataclass(frozen=True)
class While:
    """A condition of the moment: a side has the ball or is behind, the ball or all of some players are in a place."""

    kind: Literal["has the ball", "ball in", "behind", "in place"]
    who: Who | None = None
    where: Where | None = None


@dataclass(frozen=True)
class How:
    """How a score came about: with the first touch or the head, from inside or outside a place, within so many
    seconds of an act by the same side, from a pass by a group or from a place."""

    kind: Literal["first touch", "head", "inside", "outside", "within", "pass by", "pass from"]
    where: Where | None = None
    who: Who | None = None
    after: Act | None = None
    seconds: float | None = None


Kind = Literal[
    "points", "count", "weight", "guard", "limit", "permit", "member", "direction", "start", "restart", "change",
    "turn", "law",
]  # fmt: skip
Do = Literal[
    "score", "add points", "only passes count", "passes count", "score counts", "score after", "score how",
    "score when", "touches", "stay in", "stay out", "at most", "at least", "no tackle", "must", "move along",
    "stand still",
    "may not", "only may", "no passes", "no repeat", "may come in", "may enter", "plays for", "attacks", "now attacks",
    "change ends", "exchange", "change over", "comes in", "goes out", "goes back", "joins", "rotate", "starts",
    "first pass", "ball in", "new ball", "keeps the ball", "turn lasts", "turn points", "turn ends", "free pass",
    "everyone set", "offside", "no heading", "on the ground",
]  # fmt: skip
# what each `do` means, and which columns it reads
MEANS: dict[Do, str] = {
    "score": "points: `value` points to `who` when the event happens (within_s of `after` if given)",
    "add points": "points: a change that adds `value` points to `who`",
    "only passes count": "count: only `passes` count in a run",
    "passes count": "count: such `passes` add `value` to a run; 0: they neither add to it nor end it",
    "score counts": "weight: a score made `how` is worth `value` in place of what its sentence says",
    "score after": "guard: a score of `who` counts only if `event` has happened since the last start (within_s before)",
    "score how": "guard: a score of `who` counts only when it is made `how`",
    "score when": "guard: a score of `who` counts only while `while_` holds; everyone: all of the scoring side",
    "touches": "limit: `who` have at most `value` touches in one hold of the ball (in `where`)",
    "stay in": "limit: `who` do not leave `where`",
    "stay out": "limit: `who` do not enter `where`",
    "at most": "limit: no further one of `who` goes into `where` while `value` are there (`each`: of each side)",
    "at least": "limit: none of `who` goes out of `where` while only `value` are there (`each`: of each side)",
    "no tackle": "limit: nobody takes the ball from one of `who` who holds it in `where`",
    "must": "limit: `who` lose the ball unless they do `act` within_s of `after` (None: of each start)",
    "move along": "limit: `who` keep to `where`",
    "stand still": "limit: `who` keep their spot until a change moves them",
    "may not": "limit: when one of `who` does `act` it counts nothing and the ball is the other side's there",
    "only may": "limit: when anybody but `who` does `act` it counts nothing and the ball is the other side's there",
    "no passes": "limit: such `passes` give the ball to the other side where they were played",
    "no repeat": "limit: a side or pair that scored at one of `where` scores next at another of them",
    "may come in": "permit: for `who` their home is no fence towards `where` as long as it holds; then they go home",
    "may enter": "permit: from the event to the next start `who` may be in `where`, whatever kept them out",
    "plays for": "member: `who` play for `target`",
    "attacks": "direction: `who` attacks `where` (and defends `also`)",
    "now attacks": "direction: from the event on `who` attacks `where`",
    "change ends": "direction: from the event on each side attacks what the other attacked",
    "exchange": "change: `who` and `target` (single players) exchange roles",
    "change over": "change: the groups `who` and `target` exchange roles, as many as the smaller has",
    "comes in": "change: `who` takes the role inside (at `where`)",
    "goes out": "change: `who` takes the role outside (at `where`)",
    "goes back": "change: `who` returns to the role it started the turn in",
    "joins": "change: `who` takes the role of `target`",
    "rotate": "change: the next group changes places with `target`",
    "starts": "start (no `when`) or restart: `who` starts, from `where`",
    "first pass": "start: one of `who` passes the ball in, to one of `target` if given",
    "ball in": "restart: `who` brings the ball in by `value`: 'kick-in', 'dribble-in', 'throw-in' or 'pass'",
    "new ball": "restart: one of `who` passes in a new ball at once, from `where`",
    "keeps the ball": "restart: play goes on where the ball is, with `who` in possession",
    "turn lasts": "turn: a turn ends `value` seconds after it began",
    "turn points": "turn: a turn ends when a side has `value` points in it",
    "turn ends": "turn: the turn ends at the event",
    "free pass": "law: nobody tackles or cuts out before the first pass of a start is received",
    "everyone set": "law: every restart waits until all are where they belong",
    "offside": "law: offside applies (beyond `where`)",
    "no heading": "law: whoever heads the ball gives it to the other side there",
    "on the ground": "law: a pass that leaves the ground gives the ball to the other side where it was played",
}


@dataclass(frozen=True)
class Row:
    """One row of the table. `order` is the sentence's number and the change's place in it.

    breach is what it costs when a limit or guard is not met.
    """

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
    act: Act | None = None
    event: Event | None = None  # guards: what must have happened
    how: How | None = None
    each: bool = False
    breach: str = "the other side starts there"
