"""A setup's sentences as a few small arrays: roles, places, limits, rows, what counts, starts. No names go further."""

from dataclasses import dataclass, replace
from functools import lru_cache

import numpy as np

from turnout.play.compile_rows import compile_limits, compile_passes, compile_rows
from turnout.play.kernel import columns as c
from turnout.play.knows import check_played
from turnout.play.naming import Names, plays_for
from turnout.practice.edges import stretches
from turnout.practice.meaning import table
from turnout.practice.model import Group, Place
from turnout.practice.setup import Setup
from turnout.practice.starts import attack_axis, starts
from turnout.practice.table import Row
from turnout.practice.units import balls_in_play, unit_sizes
from turnout.problems import TurnoutError

EDGE_STRIP_M = 1.0  # beside an edge player's line the ball is not out
KEEPER_AREA_M, KEEPER_AREA_SHARE = 3.0, 0.2  # beside the posts; of the length of the pitch
BEHIND_M = 3.0  # how deep the strip behind a place is; common practice, no source
KINDS = {"circle": c.CIRCLE, "goal": c.LINE, "small goal": c.LINE, "gate": c.LINE}
PLAYS_FOR = {"side without the ball": c.WITHOUT_BALL, "other side": c.WITHOUT_BALL, "side behind": c.SIDE_BEHIND}
HOW = {
    c.E_RECEIVE: c.COME_THERE, c.E_RUN_IN: c.COME_THERE, c.E_PASS_INTO: c.COME_THERE, c.E_GOAL: c.SHOOT_THERE,
    c.E_THROUGH: c.PLAY_THROUGH, c.E_RUN_THROUGH: c.COME_THERE, c.E_STOP_IN: c.COME_THERE,
}  # fmt: skip


@dataclass(frozen=True, eq=False)
class Scene:
    """What the kernel plays. Rows and columns are named in kernel/columns.py.

    roles (players,) role of each player · R (roles, R_COLUMNS) · Z (places, Z_COLUMNS) · L (limits, L_COLUMNS) ·
    T (rows, ROW_COLUMNS) · F (filters, 2) · aim (4, 2) unit vectors · plans (places, 4) ·
    goals (goals, 3) · edges (slots, 3) · units (balls, 2) players of each ball ·
    starts (balls, roles, most + 1, most, 2) m · slots (players,) edge slot or -1.
    """

    keys: tuple[str, ...]
    roles: np.ndarray
    R: np.ndarray
    Z: np.ndarray
    L: np.ndarray
    T: np.ndarray
    F: np.ndarray
    aim: np.ndarray
    plans: np.ndarray
    goals: np.ndarray
    edges: np.ndarray
    units: np.ndarray
    starts: np.ndarray
    slots: np.ndarray
    start_row: int
    owner: int
    out_grow: float
    scoring_sides: tuple[int, ...]  # sides the first scoring sentence is about

    @property
    def players(self) -> int:
        return len(self.roles)


@lru_cache(maxsize=256)
def scene_of(setup: Setup) -> Scene:
    """Compile a setup; raises TurnoutError on what cannot be played, naming the sentence."""
    rows = table(setup.practice)
    check_played(setup.practice, rows)
    names = Names.of(setup, rows)
    T, L = compile_rows(names, rows), compile_limits(names, rows)
    slots, edges = _edge_slots(names, rows)
    Z, units = _places(names), _units(setup)
    starting = np.flatnonzero((T[:, c.ROW_DO] == c.D_STARTS) & (T[:, c.ROW_WHEN] == c.E_NONE))
    start_row = int(starting[0]) if len(starting) else -1
    first = T[(T[:, c.ROW_DO] == c.D_POINTS) & (T[:, c.ROW_FIRST] == 1)]
    sides = {int(side) for side in first[:, c.ROW_WHO_SIDE]}
    return Scene(
        keys=names.keys,
        roles=_role_of_players(setup),
        R=_roles(names, rows, L),
        Z=Z,
        L=L,
        T=T,
        F=compile_passes(names, rows),
        aim=_aims(names, rows),
        plans=np.ones((len(Z), 4)),
        goals=_goals(T, Z),
        edges=edges,
        units=units,
        starts=_starts(setup, _moving(rows), units),
        slots=slots,
        start_row=start_row,
        owner=_owner(names, T, start_row),
        out_grow=EDGE_STRIP_M if any(_on_field_edge(group, setup) for group in setup.practice.groups) else 0.0,
        scoring_sides=(0, 1) if -1 in sides or not sides else tuple(sorted(sides)),
    )


def _owner(names: Names, T: np.ndarray, start_row: int) -> int:
    """The side that has the ball first; -1 when either may."""
    if len(names.sides) == 1:
        return 0
    return int(T[start_row, c.ROW_A_SIDE]) if start_row >= 0 else -1


def _role_of_players(setup: Setup) -> np.ndarray:
    return np.array([role for role, (_, number) in enumerate(setup.counts) for _ in range(number)], dtype=np.int64)


def _places(names: Names) -> np.ndarray:
    """Every place of the ground, then the area of every keeper."""
    rows: list[tuple[float, ...]] = [
        (float(KINDS.get(place.kind, c.RECTANGLE)), place.x_m, place.y_m, place.across_m / 2, place.up_m / 2,
         place.height_m)
        for _, place in names.setup.places
    ]  # fmt: skip
    rows += [_keeper_area(names.setup, group) for group in names.setup.practice.groups if group.keeper]
    rows += [_beside(names, name, how) for name, how in names.beside]
    return np.array(rows, dtype=np.float64).reshape(-1, c.Z_COLUMNS)


def _beside(names: Names, name: str, how: str) -> tuple[float, ...]:
    """Anywhere outside a place, the line round it, or off the field behind it."""
    place = names.setup.place(name)
    if how == "behind":
        return _behind(names.setup, place)
    kind = KINDS.get(place.kind, c.RECTANGLE) + (c.OUTSIDE if how == "outside" else c.ROUND)
    return (float(kind), place.x_m, place.y_m, place.across_m / 2, place.up_m / 2, place.height_m)


def _behind(setup: Setup, place: Place) -> tuple[float, ...]:
    """A strip off the field on the far side of a place, as wide as it."""
    field = setup.field
    dx, dy = (place.x_m - field.x_m) / field.across_m, (place.y_m - field.y_m) / field.up_m
    half = BEHIND_M / 2
    if abs(dx) > abs(dy):
        edge = max(abs(place.x_m - field.x_m) + place.across_m / 2, field.across_m / 2) + half
        return (c.RECTANGLE, field.x_m + float(np.sign(dx)) * edge, place.y_m, half, place.up_m / 2, 0.0)
    edge = max(abs(place.y_m - field.y_m) + place.up_m / 2, field.up_m / 2) + half
    return (c.RECTANGLE, place.x_m, field.y_m + (float(np.sign(dy)) or 1.0) * edge, place.across_m / 2, half, 0.0)


def _keeper_area(setup: Setup, group: Group) -> tuple[float, ...]:
    """Where a keeper may use the hands: in front of his goal, a share of the pitch deep; common practice, no source."""
    goal, field = setup.place(group.home.place), setup.field
    lies = goal.up_m == 0.0
    wide = (goal.across_m if lies else goal.up_m) / 2 + KEEPER_AREA_M
    deep = KEEPER_AREA_SHARE * (field.up_m if lies else field.across_m) / 2
    x, y = goal.x_m, goal.y_m
    inward_x, inward_y = np.sign(field.x_m - x) * (not lies), np.sign(field.y_m - y) * lies
    half = (wide, deep) if lies else (deep, wide)
    return (c.RECTANGLE, x + inward_x * deep, y + inward_y * deep, *half, 0.0)


def _units(setup: Setup) -> np.ndarray:
    """First and one past the last player of every ball: one ball for all, or one for every pair (three, player)."""
    if balls_in_play(setup) == 1:
        return np.array([(0, setup.players)], dtype=np.int64)
    sizes = [
        size
        for group in setup.practice.groups
        for size in unit_sizes(setup.count(group.key), group.of if setup.practice.balls_in_play == "per unit" else 1)
    ]
    ends = np.cumsum(sizes)
    return np.stack([ends - sizes, ends], axis=1).astype(np.int64)


def _roles(names: Names, rows: tuple[Row, ...], L: np.ndarray) -> np.ndarray:
    R, keepers = np.zeros((len(names.keys), c.R_COLUMNS)), 0
    for role, group in enumerate(names.setup.practice.groups):
        R[role, c.R_SIDE] = names.side_index(group.side) if not group.waits else 3
        _member(names, rows, R, role, group)
        R[role, c.R_WAITS] = R[role, c.R_FIXED] = float(group.waits)
        R[role, c.R_EDGE] = names.place(group.home.place) if group.home.on_edge else -1
        R[role, c.R_LOW], R[role, c.R_HIGH] = group.low, group.high
        R[role, c.R_HOME], R[role, c.R_FENCE] = names.place(group.home.place), float(group.home.fence)
        R[role, c.R_KEEPS] = names.place(group.home.place) if group.keeper else -1
        if group.keeper:
            R[role, c.R_HOME] = len(names.setup.places) + keepers
            keepers += 1
        R[role, c.R_IN], R[role, c.R_OUT] = _partner(names, group, True), _partner(names, group, False)
        _movement(names, rows, R, role)
        _limits(names, L, R, role)
    return R


def _member(names: Names, rows: tuple[Row, ...], R: np.ndarray, role: int, group: Group) -> None:
    """Whom a role plays for where a sentence says so: a side named, or the one with, without the ball or behind."""
    row = plays_for(rows, group)
    target = row.target if row is not None else None
    if target is None:
        return
    if target.side in names.sides:
        R[role, c.R_SIDE] = names.side_index(str(target.side))
    else:
        R[role, c.R_NEUTRAL] = PLAYS_FOR.get(target.kind, c.WITH_BALL)


def _movement(names: Names, rows: tuple[Row, ...], R: np.ndarray, role: int) -> None:
    for row in rows:
        if row.do not in ("move along", "stand still") or not (names.bits(row.who) >> role) & 1:
            continue
        if row.do == "stand still":
            R[role, c.R_FIXED if R[role, c.R_EDGE] < 0 else c.R_STRETCH] = 1 if R[role, c.R_EDGE] < 0 else 2
        elif row.where is not None and row.where.how == "edge":
            R[role, c.R_EDGE], R[role, c.R_STRETCH] = names.place(row.where.place), 1
        elif row.where is not None:
            R[role, c.R_HOME] = names.place(row.where.place)


def _limits(names: Names, L: np.ndarray, R: np.ndarray, role: int) -> None:
    """The rows that say where a role may be, so that the kernel need not search for them at every spot it tries."""
    rows = [row for row, cells in enumerate(L) if cells[c.L_WHAT] <= c.STAY_OUT and (cells[c.L_ROLES] >> role) & 1]
    if len(rows) > c.R_LIMIT_MOST:
        name, most = names.setup.practice.name, c.R_LIMIT_MOST
        raise TurnoutError(f"{name}: at most {most} places may be closed or fixed for {names.keys[role]} players.")
    R[role, c.R_LIMITS] = len(rows)
    R[role, c.R_LIMIT_0 : c.R_LIMIT_0 + len(rows)] = rows


def _goals(T: np.ndarray, Z: np.ndarray) -> np.ndarray:
    """Places where a side scores: each with the side (-1: any) and how (by coming there, a shot, a pass through)."""
    found = {
        (int(row[c.ROW_PLACE]), int(row[c.ROW_WHO_SIDE]), HOW[int(row[c.ROW_WHEN])])
        for row in T[T[:, c.ROW_DO] == c.D_POINTS]
        if int(row[c.ROW_WHEN]) in HOW and row[c.ROW_PLACE] >= 0 and _can_guard(Z, row)
    }
    return np.array(sorted(found), dtype=np.int64).reshape(-1, 3)


def _can_guard(Z: np.ndarray, row: np.ndarray) -> bool:
    """Whether there is a spot to guard: not for anywhere outside a place, nor a pass across an area."""
    kind = Z[row[c.ROW_PLACE], c.Z_KIND]
    return bool(kind < c.OUTSIDE and (row[c.ROW_WHEN] != c.E_THROUGH or kind == c.LINE))


def _partner(names: Names, group: Group, inward: bool) -> int:
    """The role of the same side a player takes on coming in from the edge of a place, or going out to it; -1: none."""
    for role, other in enumerate(names.setup.practice.groups):
        same = other.side == group.side and other.home.place == group.home.place and other.key != group.key
        if same and other.home.on_edge != inward and group.home.on_edge == inward:
            return role
    return -1


def _on_field_edge(group: Group, setup: Setup) -> bool:
    return group.home.on_edge and group.home.place == setup.field.name


def _aims(names: Names, rows: tuple[Row, ...]) -> np.ndarray:
    aim = np.zeros((4, 2))
    for side in names.sides:
        axis = attack_axis(names.setup, side, rows)
        if axis is not None:
            aim[names.side_index(side)] = axis
    return aim


def _edge_slots(names: Names, rows: tuple[Row, ...]) -> tuple[np.ndarray, np.ndarray]:
    """A stretch of its edge for every edge player: which slot each player has, and the slots, round each place."""
    setup = names.setup
    held = stretches(setup, rows)
    places = list(dict.fromkeys(one.place for own in held.values() for one in own))
    every = sorted({(places.index(one.place), one.share, one.half) for own in held.values() for one in own})
    number = {slot: index for index, slot in enumerate(every)}
    slots = [
        number[places.index(one.place), one.share, one.half] if (one := own[player]) else -1
        for group in setup.practice.groups
        for own in [held.get(group.key, (None,) * setup.count(group.key))]
        for player in range(setup.count(group.key))
    ]
    edges = [(names.place(places[place]), share, half) for place, share, half in every]
    return np.array(slots, dtype=np.int64), np.array(edges, dtype=np.float64).reshape(-1, 3)


def _moving(rows: tuple[Row, ...]) -> bool:
    """Whether sentences change how many players a role has."""
    return any(row.do in ("comes in", "goes out") for row in rows)


def _starts(setup: Setup, moving: bool, units: np.ndarray) -> np.ndarray:
    """Start spots of every role for every number it can have; with a ball for each unit, those of its own players."""
    groups = setup.practice.groups
    most = max([1, *(max(group.high, setup.count(group.key)) for group in groups)])
    spots = np.zeros((len(units), len(groups), most + 1, most, 2))
    for role, group in enumerate(groups):
        now = setup.count(group.key)
        for number in range(group.low, group.high + 1) if moving else (now,):
            counts = tuple((key, number if key == group.key else count) for key, count in setup.counts)
            for index, spot in enumerate(starts(replace(setup, counts=counts))[group.key]):
                spots[0, role, number, index] = spot
    if len(units) > 1:
        _deal_starts(spots, setup, units)
    return spots


def _deal_starts(spots: np.ndarray, setup: Setup, units: np.ndarray) -> None:
    every = [spots[0, role, setup.count(group.key)].copy() for role, group in enumerate(setup.practice.groups)]
    first = 0
    for role, group in enumerate(setup.practice.groups):
        for unit, (a, b) in enumerate(units):
            own = range(max(a, first), min(b, first + setup.count(group.key)))
            spots[unit, role] = 0.0
            for index, player in enumerate(own):
                spots[unit, role, len(own), index] = every[role][player - first]
        first += setup.count(group.key)
