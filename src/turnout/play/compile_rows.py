"""The when/then table as integer rows for the kernel."""

import numpy as np

from turnout.play.compile_guards import (
    GUARDS,
    OWN_MEMORY,
    after_mark,
    guard_row,
    limit_condition,
    marks_of,
    memory,
    valued,
)
from turnout.play.kernel import columns as c
from turnout.play.naming import Names
from turnout.practice.model import Source
from turnout.practice.table import Act, Event, Passes, Row, While, Who

ACTS = {
    "passes in a row": c.E_ROW, "passes": c.E_PASSES, "pass to": c.E_PASS, "pass into": c.E_PASS_INTO,
    "receive in": c.E_RECEIVE, "run into": c.E_RUN_IN, "win": c.E_WIN, "win and pass": c.E_WIN_PASS,
    "lose": c.E_LOSE, "score": c.E_SCORE, "touches": c.E_TOUCHES, "start": c.E_START, "tackle": c.E_TACKLE,
    "enter": c.E_ENTER, "pass through": c.E_THROUGH, "shoot": c.E_SHOOT,
    "pass over": c.E_OVER, "pass back": c.E_BACK, "one-two": c.E_ONE_TWO, "run through": c.E_RUN_THROUGH,
    "stop in": c.E_STOP_IN, "move from to": c.E_MOVE, "keep for": c.E_KEEP, "concede": c.E_CONCEDE, "head": c.E_HEAD,
    "leave": c.E_LEAVE,
}  # fmt: skip
EVENTS = {
    "ball out": c.E_OUT, "ball enters": c.E_BALL_ENTERS, "ball leaves": c.E_BALL_LEAVES, "seconds pass": c.E_SECONDS,
    "seconds without": c.E_WITHOUT, "turn starts": c.E_TURN_STARTS, "turn ends": c.E_TURN_ENDS, "coach calls": c.E_CALL,
}  # fmt: skip
DO = {
    "score": c.D_POINTS, "exchange": c.D_EXCHANGE, "change over": c.D_CHANGE_OVER, "comes in": c.D_IN,
    "goes out": c.D_OUT, "rotate": c.D_ROTATE, "starts": c.D_STARTS, "add points": c.D_ADD,
}  # fmt: skip
WHO = {
    "a side": c.W_ACTOR_SIDE, "side with the ball": c.W_ACTOR_SIDE, "other side": c.W_OTHER_SIDE,
    "side without the ball": c.W_OTHER_SIDE, "side": c.W_SIDE, "role": c.W_ROLE, "its role": c.W_ITS_ROLE,
    "everyone": c.W_EVERYONE, "passer": c.W_PASSER, "receiver": c.W_RECEIVER, "winner": c.W_WINNER,
    "loser": c.W_LOSER, "scorer": c.W_SCORER, "last to touch": c.W_LAST, "nearest": c.W_NEAREST,
    "farthest": c.W_FARTHEST, "next group": c.W_NEXT_GROUP, "nobody": c.W_NONE,
    "side behind": c.W_BEHIND, "a player": c.W_ACTOR_SIDE, "player there": c.W_THERE, "other role": c.W_OTHER_ROLE,
    "some": c.W_SOME, "longest waiting": c.W_WAITED,
}  # fmt: skip
LIMITS = {
    "stay in": c.STAY_IN,
    "stay out": c.STAY_OUT,
    "no tackle": c.NO_TACKLE,
    "touches": c.TOUCH_LIMIT,
    "no repeat": c.NO_REPEAT,
}
AFTER = {"win": 1, "win and pass": 1, "start": 2}
MARKED = 3  # within so many seconds of anything else
POINTS, MARK, CHANGE, START, GUARD = 0, 1, 2, 3, 4  # the order of rows on one event
GOES_ON = ("pass through", "pass over", "run through", "move from to")
NOBODY_SAID = Source("", 0, None, "")
PASS_KINDS = {
    "into": c.PASS_INTO, "through": c.PASS_THROUGH, "over": c.PASS_OVER, "back": c.PASS_BACK,
}  # fmt: skip


def compile_rows(names: Names, rows: tuple[Row, ...]) -> np.ndarray:
    """The rows the kernel watches, (rows, ROW_COLUMNS): points, then changes, then restarts, in sentence order."""
    found: list[tuple[tuple[int, ...], list[int]]] = []
    first = min((row.order[0] for row in rows if row.do == "score"), default=0)
    marks = marks_of(rows)
    for row in rows:
        if row.do == "ball in" and row.value == "pass":
            row = _as_start(row)
        if row.do in GUARDS:
            found.append(((GUARD, *row.order), guard_row(names, row, marks)))
        if row.do in DO:
            order = POINTS if row.do == "score" else START if row.do == "starts" else CHANGE
            for place in _row_places(names, row):
                cells = _row(names, row, place, first)
                _within(cells, row, marks)
                for kept in _remembered(names, cells, row, marks):
                    found.append(((order, *row.order), kept))
    found += _mark_rows(names, rows, marks)
    found += _score_restart(names, rows)
    found.sort(key=lambda item: item[0])
    return np.array([cells for _, cells in found], dtype=np.int64).reshape(-1, c.ROW_COLUMNS)


def _as_start(row: Row) -> Row:
    from dataclasses import replace

    return replace(row, do="starts")


def _row_places(names: Names, row: Row) -> tuple[int, ...]:
    where = row.when.act.where if row.when and row.when.act else (row.when.where if row.when else None)
    return names.spots(where) if where is not None else (-1,)


def _row(names: Names, row: Row, place: int, first: int) -> list[int]:
    cells = [0] * c.ROW_COLUMNS
    cells[c.ROW_MARK] = cells[c.ROW_SETS] = cells[c.ROW_MEMORY] = -1
    cells[c.ROW_WHEN], cells[c.ROW_COUNT] = _event(row)
    actor = row.when.who if row.when is not None and row.when.who is not None else row.who
    if row.when is not None and row.when.kind not in ("act", "ball out"):  # nobody does it
        actor = Who("a side")
    cells[c.ROW_WHO_SIDE], cells[c.ROW_WHO_ROLES] = _actor(names, actor) if row.when is not None else (-1, 0)
    cells[c.ROW_BEHIND] = int(row.when is not None and actor.kind == "side behind")
    cells[c.ROW_PLACE], cells[c.ROW_DO] = place, DO[row.do]
    act = row.when.act if row.when else None
    cells[c.ROW_TO_ROLES] = names.bits(act.to) if act is not None and act.to is not None else 0
    _put(names, cells, c.ROW_A, row.who)
    _put(names, cells, c.ROW_B, row.target)
    cells[c.ROW_WHERE] = names.limited(row.where)[0] if row.where is not None else -1
    cells[c.ROW_A_COUNT] = row.who.count or 0
    cells[c.ROW_EDGE] = int(row.where is not None and row.where.how == "edge")
    cells[c.ROW_VALUE] = row.value if isinstance(row.value, int) else 0
    cells[c.ROW_SENTENCE], cells[c.ROW_FIRST] = row.order[0], int(row.do == "score" and row.order[0] == first)
    cells[c.ROW_EVERY_MS] = int((row.every_s or 0) * 1000)
    return cells


def _event(row: Row) -> tuple[int, int]:
    if row.every_s is not None:
        return c.E_CLOCK, 0
    if row.when is None:
        return c.E_NONE, 0
    if row.when.kind == "act" and row.when.act is not None:
        if row.when.act.kind == "score" and row.when.act.where is not None:
            return c.E_GOAL, 0
        return ACTS[row.when.act.kind], row.when.act.count or 0
    return EVENTS[row.when.kind], int(row.when.seconds or 0)


def _actor(names: Names, who: Who) -> tuple[int, int]:
    """The side (-1: any) and the roles (0: any) whose doing sets a row off; neutrals act for the side with the ball."""
    side = names.side_index(who.side) if who.side in names.sides else -1
    return side, names.bits(who) if who.kind in ("role", "side", "its role") else 0


def _put(names: Names, cells: list[int], column: int, who: Who | None) -> None:
    """Kind, side, roles and whose of a 'who', from `column` on."""
    if who is None:
        cells[column + 1] = -1
        return
    playing = who.side is not None and who.side in names.sides
    cells[column] = WHO[who.kind]
    cells[column + 1] = names.side_index(who.side) if playing and who.side is not None else -1
    cells[column + 2] = names.bits(who) if who.kind != "everyone" else 0
    cells[column + 3] = int(who.whose == "other")


def _within(cells: list[int], row: Row, marks: dict[Event, int]) -> None:
    if row.within_s is None or row.after is None:
        return
    if row.after.kind not in AFTER:
        cells[c.ROW_MARK] = marks[after_mark(row.after)]
    cells[c.ROW_AFTER], cells[c.ROW_WITHIN_MS] = AFTER.get(row.after.kind, MARKED), int(row.within_s * 1000)


def _remembered(names: Names, cells: list[int], row: Row, marks: dict[Event, int]) -> list[list[int]]:
    """A row of a deed that takes time knows its memory; moving the ball to a list of places makes a row of each."""
    act = row.when.act if row.when is not None else None
    if act is None or act.kind not in OWN_MEMORY:
        return [cells]
    cells[c.ROW_MEMORY] = marks[memory(act)]
    if act.further is None:
        cells[c.ROW_COUNT] = int(act.seconds or 0)
        return [cells]
    found = []
    for place in names.spots(act.further):
        found.append(cells.copy())
        found[-1][c.ROW_COUNT] = place + 1
    return found


def _mark_rows(names: Names, rows: tuple[Row, ...], marks: dict[Event, int]) -> list[tuple[tuple[int, ...], list[int]]]:
    """Rows that only remember that something has happened; worth something where no score counts without it."""
    found: list[tuple[tuple[int, ...], list[int]]] = []
    sought = valued(rows)
    for event, mark in marks.items():
        if event.kind == "act" and event.who is None:  # the memory of a deed: nothing waits for it
            continue
        row = Row("points", "score", event.who or Who("nobody"), NOBODY_SAID, (0, mark), when=event)
        for place in _row_places(names, row):
            cells = _row(names, row, place, -1)
            for kept in _remembered(names, cells, row, marks):
                kept[c.ROW_DO], kept[c.ROW_VALUE], kept[c.ROW_SETS] = c.D_MARK, int(event in sought), mark
                kept[c.ROW_BOTH] = int(event.kind != "act")
                found.append(((MARK, 0, mark), kept))
    return found


def _score_restart(names: Names, rows: tuple[Row, ...]) -> list[tuple[tuple[int, ...], list[int]]]:
    """Fixed meaning: after a score in a place the other side starts there, unless a When on a score says who starts.

    After a pass or a run through a place, a pass over one and a ball moved from place to place play goes on.
    """
    in_place = any(row.do == "score" and _row_places(names, row) != (-1,) and not _through(row) for row in rows)
    said = any(row.do == "starts" and row.when and row.when.act and row.when.act.kind == "score" for row in rows)
    if not in_place or said:
        return []
    cells = [0] * c.ROW_COLUMNS
    cells[c.ROW_WHEN], cells[c.ROW_WHO_SIDE], cells[c.ROW_PLACE], cells[c.ROW_DO] = c.E_SCORE, -1, -1, c.D_STARTS
    cells[c.ROW_A], cells[c.ROW_A_SIDE], cells[c.ROW_B_SIDE], cells[c.ROW_WHERE] = c.W_OTHER_SIDE, -1, -1, -1
    cells[c.ROW_MARK] = cells[c.ROW_SETS] = cells[c.ROW_MEMORY] = -1
    return [((START, 999, 0), cells)]


def _through(row: Row) -> bool:
    return row.when is not None and row.when.act is not None and row.when.act.kind in GOES_ON


def compile_limits(names: Names, rows: tuple[Row, ...]) -> np.ndarray:
    """Limits on roles, (limits, L_COLUMNS)."""
    marks = marks_of(rows)
    found = [
        _limit(names, row, place, marks)
        for row in rows
        if row.do in LIMITS
        for place in (names.limited(row.where) if row.where is not None else (-1,))
    ]
    return np.array(found, dtype=np.int64).reshape(-1, c.L_COLUMNS)


def _limit(names: Names, row: Row, place: int, marks: dict[Event, int]) -> list[int]:
    cells = [0] * c.L_COLUMNS
    what = LIMITS[row.do]
    if row.where is not None and row.where.how == "outside" and what in (c.STAY_IN, c.STAY_OUT):
        what = c.STAY_OUT if what == c.STAY_IN else c.STAY_IN
    everyone = (1 << len(names.keys)) - 1
    cells[c.L_ROLES], cells[c.L_WHAT], cells[c.L_PLACE] = names.bits(row.who) or everyone, what, place
    cells[c.L_WHILE], cells[c.L_WHILE_SIDE], cells[c.L_WHILE_PLACE] = _while(names, row.while_)
    cells[c.L_UNTIL], cells[c.L_UNTIL_PLACE], cells[c.L_UNTIL_VALUE] = _until(names, row)
    cells[c.L_VALUE] = row.value if isinstance(row.value, int) else 0
    limit_condition(names, cells, row, marks)
    return cells


def _while(names: Names, while_: While | None) -> tuple[int, int, int]:
    if while_ is None:
        return c.ALWAYS, -1, -1
    if while_.kind == "ball in" and while_.where is not None:
        return c.WHILE_BALL_IN, -1, names.place(while_.where.place)
    who = while_.who
    if who is not None and who.side in names.sides:
        return c.WHILE_SIDE, names.side_index(str(who.side)), -1
    other = who is not None and who.kind in ("other side", "side without the ball")
    return (c.WHILE_WITHOUT if other else c.WHILE_WITH), -1, -1


def _until(names: Names, row: Row) -> tuple[int, int, int]:
    event: Event | None = row.until
    if event is None:
        return c.UNTIL_NONE, -1, 0
    if event.kind == "ball enters" and event.where is not None:
        return c.UNTIL_BALL_ENTERS, names.place(event.where.place), 0
    if event.kind == "seconds pass":
        return c.UNTIL_SECONDS, -1, int(event.seconds or 0)
    act: Act | None = event.act
    if act is not None and act.kind == "touches":
        return c.UNTIL_TOUCHES, -1, act.count or 0
    return c.UNTIL_MARK, -1, 0


def compile_passes(names: Names, rows: tuple[Row, ...]) -> np.ndarray:
    """Which passes count in a run and what they add to it, (filters, F_COLUMNS); no rows: each adds 1."""
    found = []
    for row in rows:
        act = row.when.act if row.when is not None else None
        if row.do == "score" and act is not None and act.between is not None:
            found.append((names.bits(act.between), names.bits(act.between), c.ANY_PASS, -1, -1))
        if row.do in ("only passes count", "passes count") and row.passes is not None:
            adds = int(row.value or 0) if row.do == "passes count" else -1
            found += [(*kind, adds) for kind in _passes(names, row.passes)]
    return np.array(found, dtype=np.int64).reshape(-1, c.F_COLUMNS)


def _passes(names: Names, passes: Passes) -> list[tuple[int, int, int, int]]:
    """A kind of pass: roles it is from and to, its kind and place; a list of places makes one of each."""
    everyone = (1 << len(names.keys)) - 1
    first = names.bits(passes.first) if passes.first is not None else everyone
    first = first or everyone
    second = names.bits(passes.second) or everyone if passes.second is not None else first
    if passes.kind == "to":
        return [(everyone, first, c.ANY_PASS, -1)]
    places = names.spots(passes.where) if passes.where is not None else (-1,)
    return [(first, second, PASS_KINDS.get(passes.kind, c.ANY_PASS), place) for place in places]
