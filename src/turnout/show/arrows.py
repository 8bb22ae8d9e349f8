"""The few lines a drawing may carry: the first ball a rule starts, and the change another rule brings. All computed.

The ball goes to the team-mate whose lane lies clearest of every opponent at the start; a run goes where the change
sentence sends the player it names. The number on a line is the number of its sentence.
"""

from collections.abc import Iterator, Sequence
from math import cos, dist, sin

from turnout.practice.model import Place
from turnout.practice.setup import Setup
from turnout.practice.table import Row, Who
from turnout.show.drawing import Line, Mark, Point
from turnout.show.ink import is_neutral

SHORT_M, LONG_M = 4.0, 22.0  # a first ball shorter or longer than this is not drawn
CLEAR_M = 1.5  # a run passes nobody nearer than this, where there is such a way
INSIDE = 0.4  # how much of the way to the middle a player coming in is drawn


def ball_and_change(setup: Setup, marks: Sequence[Mark], rows: Sequence[Row]) -> tuple[Line, ...]:
    """The start's first pass, and the runs of the first change that follows a pass or a ball won."""
    start, holder = _start(rows), first_on_the_ball(marks, rows)
    if start is None or holder is None:
        return ()
    receiver = clearest(holder, marks, start.target)
    ball = () if receiver is None else (Line("ball", holder, receiver, start.order[0]),)
    return (*ball, *_changes(setup, marks, rows, holder, receiver))


def first_on_the_ball(marks: Sequence[Mark], rows: Sequence[Row]) -> int | None:
    """Who starts with the ball; None where no sentence says so."""
    start = _start(rows)
    return _holder(start.who, marks) if start else None


def _start(rows: Sequence[Row]) -> Row | None:
    return next((row for row in rows if row.do in ("starts", "first pass") and row.when is None), None)


def clearest(holder: int, marks: Sequence[Mark], to: Who | None = None) -> int | None:
    """The team-mate (neutrals included; of `to` where a sentence names them) whose lane from `holder` stays farthest
    from every opponent; None: nobody."""
    sides = {_side(marks[holder]), to.side if to else None}
    playing = [i for i in _players(marks) if i != holder and not marks[i].waits]
    ours = [i for i in playing if any(_plays_with(marks[i], side) for side in sides if side)]
    theirs = [i for i in playing if i not in ours]
    ours = [i for i in ours if to is None or (to.side in (None, _side(marks[i])) and _in_role(marks[i], to.role))]
    reach = [i for i in ours if SHORT_M <= _apart(marks, holder, i) <= LONG_M]
    return max(reach, key=lambda i: (round(_clearance(marks, holder, i, theirs), 2), -i), default=None)


def _changes(
    setup: Setup, marks: Sequence[Mark], rows: Sequence[Row], holder: int, receiver: int | None
) -> Iterator[Line]:
    changes = [row for row in rows if row.kind == "change" and row.when is not None]
    first = changes[0].order[0] if changes else None
    for row in changes:
        if row.order[0] != first:
            return
        if receiver is not None and follows_the_pass(row, marks[receiver]):
            yield Line("run", holder, _short_of(marks, holder, receiver), row.order[0])
        elif row.do in ("comes in", "goes out"):
            yield from _in_or_out(setup, marks, row, holder)


def follows_the_pass(row: Row, receiver: Mark) -> bool:
    """Whether the passer goes where a pass to this receiver went: changes places with the receiver or joins them."""
    kinds = {who.kind for who in (row.who, row.target) if who}
    act = row.when.act if row.when else None
    meant = act is None or act.to is None or _in_role(receiver, act.to.role)
    return meant and (
        kinds == {"passer", "receiver"} if row.do == "exchange" else row.do == "joins" and "passer" in kinds
    )


def _in_or_out(setup: Setup, marks: Sequence[Mark], row: Row, holder: int) -> Iterator[Line]:
    """The one who comes in or goes out: of the side in the When, which has the ball unless it is about to win it."""
    winning = row.when is not None and row.when.act is not None and row.when.act.kind in ("win", "win and pass")
    winners = (row.who.whose == "its") == winning
    side = marks[holder].side
    near = [
        i
        for i in _players(marks)
        if _plays_with(marks[i], side.side) != winners  # type: ignore[union-attr]
        and not is_neutral(marks[i].side.side)  # type: ignore[union-attr]
        and _in_role(marks[i], row.who.role)
    ]
    pick = min if row.who.kind == "nearest" else max
    if near:
        mover = pick(near, key=lambda i: (_apart(marks, holder, i), i))
        yield Line("run", mover, _goal(setup, marks, mover, row), row.order[0])


def _goal(setup: Setup, marks: Sequence[Mark], mover: int, row: Row) -> Point:
    """Where the run ends: the straightest of a few ways that ends clear of everybody else."""
    mark = marks[mover]
    place = setup.place(row.where.place) if row.where else setup.field
    ways = _out_of(place, mark) if row.do == "goes out" else _into(place, mark)
    others = [marks[i] for i in _players(marks) if i != mover]
    clear = (way for way in ways if all(_off_line((mark.x_m, mark.y_m), way, other) > CLEAR_M for other in others))
    return next(clear, ways[0])


def _into(place: Place, mark: Mark) -> list[Point]:
    dx, dy = (place.x_m - mark.x_m) * INSIDE, (place.y_m - mark.y_m) * INSIDE
    return [
        (mark.x_m + dx * cos(turn) - dy * sin(turn), mark.y_m + dx * sin(turn) + dy * cos(turn))
        for turn in (0.0, 0.4, -0.4, 0.8, -0.8)
    ]


def _out_of(place: Place, mark: Mark) -> list[Point]:
    """Just outside the nearest side, straight or slanting, then the next nearest side."""
    half_x, half_y = place.across_m / 2 + 0.5, place.up_m / 2 + 0.5
    ways = []
    for slant in (0.0, 2.0, -2.0, 3.5, -3.5):
        ways += [(place.x_m + sign * half_x, mark.y_m + slant) for sign in (-1, 1)]
        ways += [(mark.x_m + slant, place.y_m + sign * half_y) for sign in (-1, 1)]
    return sorted(ways, key=lambda way: round(dist(way, (mark.x_m, mark.y_m)), 2))


def _short_of(marks: Sequence[Mark], start: int, end: int) -> Point:
    """Beside the receiver: the passer follows the ball and would otherwise be drawn on top of the pass."""
    a, b = marks[start], marks[end]
    length = _apart(marks, start, end)
    across = (-(b.y_m - a.y_m) / length, (b.x_m - a.x_m) / length)
    return b.x_m + across[0] * 1.6, b.y_m + across[1] * 1.6


def _holder(who: Who, marks: Sequence[Mark]) -> int | None:
    """Of those the sentence names, the one deepest in the drawing."""
    named = [i for i in _players(marks) if who.side in (None, _side(marks[i])) and _in_role(marks[i], who.role)]
    named = [i for i in named if not marks[i].waits]
    named = [i for i in named if not is_neutral(_side(marks[i]))] or named
    return min(named, key=lambda i: (marks[i].y_m, abs(marks[i].x_m), i), default=None)


def _in_role(mark: Mark, role: str | None) -> bool:
    return not role or role == mark.group or mark.group.endswith(" " + role)


def _players(marks: Sequence[Mark]) -> list[int]:
    return [index for index, mark in enumerate(marks) if mark.kind == "player"]


def _side(mark: Mark) -> str:
    return mark.side.side if mark.side else ""


def _plays_with(mark: Mark, side: str) -> bool:
    return _side(mark) == side or is_neutral(_side(mark))


def _apart(marks: Sequence[Mark], first: int, second: int) -> float:
    return dist((marks[first].x_m, marks[first].y_m), (marks[second].x_m, marks[second].y_m))


def _clearance(marks: Sequence[Mark], start: int, end: int, others: Sequence[int]) -> float:
    a, b = marks[start], marks[end]
    return min((_off_line((a.x_m, a.y_m), (b.x_m, b.y_m), marks[i]) for i in others), default=99.0)


def _off_line(a: Point, b: Point, mark: Mark) -> float:
    ux, uy = b[0] - a[0], b[1] - a[1]
    share = ((mark.x_m - a[0]) * ux + (mark.y_m - a[1]) * uy) / (ux * ux + uy * uy)
    share = min(1.0, max(0.0, share))
    return dist((mark.x_m, mark.y_m), (a[0] + share * ux, a[1] + share * uy))
