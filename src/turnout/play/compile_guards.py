"""What scores count, as integer rows: marks of what has happened, weights and guards on scores, and conditions."""

from collections.abc import Iterator

from turnout.play.kernel import columns as c
from turnout.play.naming import Names
from turnout.practice.clash_parts import acts
from turnout.practice.table import Act, Event, How, Row, Where, While, Who

MADE = {
    "first touch": c.MADE_FIRST, "head": c.MADE_HEAD, "inside": c.MADE_INSIDE, "outside": c.MADE_OUTSIDE,
    "within": c.MADE_WITHIN, "pass by": c.MADE_PASS_BY, "pass from": c.MADE_PASS_FROM,
}  # fmt: skip
GUARDS = {"score counts": c.D_COUNTS, "score after": c.D_AFTER, "score how": c.D_HOW, "score when": c.D_WHEN}
OWN_CLOCK = ("win", "win and pass", "start")  # the ball keeps the time of these itself
OWN_MEMORY = ("move from to", "keep for")
A_SIDE = Who("a side")
ANY_SIDE = -2


def marks_of(rows: tuple[Row, ...]) -> dict[Event, int]:
    """Every event a sentence waits for without acting on it, numbered; `True` for those no score counts without."""
    found: dict[Event, int] = {}
    for row in rows:
        for event in _waited_for(row):
            found.setdefault(event, len(found))
    return found


def _waited_for(row: Row) -> Iterator[Event]:
    for act in acts(row):
        if act.kind in OWN_MEMORY:
            yield memory(act)
    if row.do == "score after" and row.event is not None:
        yield row.event
    if row.do == "score" and row.after is not None and row.after.kind not in OWN_CLOCK:
        yield Event("act", A_SIDE, row.after)
    if row.how is not None and row.how.after is not None:
        yield Event("act", A_SIDE, row.how.after)
    if row.until is not None and until_mark(row.until):
        yield row.until


def memory(act: Act) -> Event:
    """Where a deed that takes time keeps what it knows: since when, or that the ball has been where it comes from."""
    return Event("act", None, act)


def until_mark(event: Event) -> bool:
    """Whether an until is watched through a mark."""
    if event.kind == "act":
        return event.act is None or event.act.kind != "touches"
    return event.kind not in ("ball enters", "seconds pass")


def after_mark(act: Act) -> Event:
    """The event behind 'within S seconds of ACTing'."""
    return Event("act", A_SIDE, act)


def valued(rows: tuple[Row, ...]) -> set[Event]:
    """The events without which no score counts: players go for them."""
    return {row.event for row in rows if row.do == "score after" and row.event is not None}


def guard_row(names: Names, row: Row, marks: dict[Event, int]) -> list[int]:
    """A weight or a guard on scores."""
    cells = [0] * c.ROW_COLUMNS
    cells[c.ROW_WHEN], cells[c.ROW_PLACE], cells[c.ROW_MARK], cells[c.ROW_DO] = c.E_NONE, -1, -1, GUARDS[row.do]
    cells[c.ROW_SETS] = cells[c.ROW_MEMORY] = -1
    cells[c.ROW_WHO_SIDE] = names.side_index(row.who.side) if row.who.side in names.sides else -1
    cells[c.ROW_A_SIDE] = cells[c.ROW_B_SIDE] = cells[c.ROW_WHERE] = -1
    cells[c.ROW_SENTENCE] = row.order[0]
    cells[c.ROW_VALUE] = row.value if isinstance(row.value, int) else 0
    if row.event is not None:
        _wait(names, cells, row.event, marks, row.within_s)
    if row.how is not None:
        _made(names, cells, row.how, marks)
    if row.while_ is not None:
        condition(names, cells, row.while_)
    return cells


def _wait(names: Names, cells: list[int], event: Event, marks: dict[Event, int], within_s: float | None) -> None:
    cells[c.ROW_MARK], cells[c.ROW_WITHIN_MS] = marks[event], int((within_s or 0) * 1000)
    who = event.who
    if who is not None and who.kind in ("other side", "side without the ball", "other role"):
        cells[c.ROW_A] = c.W_OTHER_SIDE
    elif who is not None and who.side in names.sides:
        cells[c.ROW_A], cells[c.ROW_A_SIDE] = c.W_SIDE, names.side_index(str(who.side))


def _made(names: Names, cells: list[int], how: How, marks: dict[Event, int]) -> None:
    cells[c.ROW_HOW] = MADE[how.kind]
    if how.where is not None:
        cells[c.ROW_PLACES] = place_bits(names, how.where)
    if how.who is not None:
        cells[c.ROW_TO_ROLES] = names.bits(how.who) or everyone(names)
    if how.after is not None:
        cells[c.ROW_MARK], cells[c.ROW_WITHIN_MS] = marks[after_mark(how.after)], int((how.seconds or 0) * 1000)


def condition(names: Names, cells: list[int], while_: While) -> None:
    """A condition of the moment in the row's columns for it."""
    who = while_.who
    named = who is not None and who.side in names.sides
    cells[c.ROW_WHILE_SIDE] = names.side_index(str(who.side)) if who is not None and named else -1
    if while_.where is not None:
        cells[c.ROW_PLACES] = place_bits(names, while_.where)
    if while_.kind == "ball in":
        cells[c.ROW_WHILE] = c.WHILE_BALL_IN
    elif while_.kind == "behind":
        cells[c.ROW_WHILE] = c.WHILE_BEHIND
    elif while_.kind == "in place":
        cells[c.ROW_WHILE] = c.WHILE_THERE
        cells[c.ROW_TO_ROLES] = (names.bits(who) if who is not None else 0) or everyone(names)
    elif named:
        cells[c.ROW_WHILE] = c.WHILE_SIDE
    elif who is not None and who.kind == "side behind":
        cells[c.ROW_WHILE] = c.WHILE_BEHIND_HAS
    else:
        other = who is not None and who.kind in ("other side", "side without the ball")
        cells[c.ROW_WHILE] = c.WHILE_WITHOUT if other else c.WHILE_WITH


def limit_condition(names: Names, cells: list[int], row: Row, marks: dict[Event, int]) -> None:
    """What a limit's 'while' and 'until' need beyond the ball: who is behind, who is where, what has happened."""
    if row.until is not None and cells[c.L_UNTIL] == c.UNTIL_MARK:
        cells[c.L_UNTIL_PLACE] = marks[row.until]
    while_ = row.while_
    if while_ is None:
        return
    who = while_.who
    cells[c.L_WHOSE] = int(who is not None and who.kind in ("other side", "side without the ball", "other role"))
    if while_.kind == "behind":
        cells[c.L_WHILE] = c.WHILE_BEHIND
    elif while_.kind == "has the ball" and who is not None and who.kind == "side behind":
        cells[c.L_WHILE] = c.WHILE_BEHIND_HAS
    elif while_.kind == "in place" and while_.where is not None:
        cells[c.L_WHILE], cells[c.L_PLACES] = c.WHILE_THERE, place_bits(names, while_.where)
        cells[c.L_THOSE] = (names.bits(who) if who is not None else 0) or everyone(names)
        if who is not None and who.kind == "everyone":
            cells[c.L_WHILE_SIDE] = ANY_SIDE
    if cells[c.L_WHILE] >= c.WHILE_BEHIND and who is not None and who.side in names.sides:
        cells[c.L_WHILE_SIDE] = names.side_index(str(who.side))


def place_bits(names: Names, where: Where) -> int:
    """A bit for every place a phrase names."""
    return sum(1 << place for place in names.spots(where))


def everyone(names: Names) -> int:
    """A bit for every role."""
    return (1 << len(names.keys)) - 1
