"""A setup's sentences as a few small arrays: roles, places, limits, rows, what counts, starts. No names go further."""

from dataclasses import dataclass, replace
from functools import lru_cache

import numpy as np

from turnout.play.compile_rows import compile_limits, compile_passes, compile_rows
from turnout.play.kernel import columns as c
from turnout.play.naming import Names
from turnout.practice.meaning import table
from turnout.practice.model import Group
from turnout.practice.setup import Setup
from turnout.practice.starts import attack_axis, edge_order, starts
from turnout.practice.table import Row
from turnout.problems import TurnoutError

EDGE_STRIP_M = 1.0  # beside an edge player's line the ball is not out


@dataclass(frozen=True, eq=False)
class Scene:
    """What the kernel plays. Rows and columns are named in kernel/columns.py.

    roles (players,) role of each player · R (roles, R_COLUMNS) · Z (places, Z_COLUMNS) · L (limits, L_COLUMNS) ·
    T (rows, ROW_COLUMNS) · F (filters, 2) · aim (4, 2) unit vectors · goals (goals, 2) ·
    edges (slots, 3) ·
    starts (roles, most + 1, most, 2) m · slots (players,) edge slot or -1.
    """

    keys: tuple[str, ...]
    roles: np.ndarray
    R: np.ndarray
    Z: np.ndarray
    L: np.ndarray
    T: np.ndarray
    F: np.ndarray
    aim: np.ndarray
    goals: np.ndarray
    edges: np.ndarray
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
    names = Names.of(setup, rows)
    T, L = compile_rows(names, rows), compile_limits(names, rows)
    slots, edges = _edge_slots(names)
    starting = np.flatnonzero((T[:, c.ROW_DO] == c.D_STARTS) & (T[:, c.ROW_WHEN] == c.E_NONE))
    start_row = int(starting[0]) if len(starting) else -1
    first = T[(T[:, c.ROW_DO] == c.D_POINTS) & (T[:, c.ROW_FIRST] == 1)]
    sides = {int(side) for side in first[:, c.ROW_WHO_SIDE]}
    return Scene(
        keys=names.keys,
        roles=_role_of_players(setup),
        R=_roles(names, rows, L),
        Z=_places(setup),
        L=L,
        T=T,
        F=compile_passes(names, rows),
        aim=_aims(names, rows),
        goals=_goals(T),
        edges=edges,
        starts=_starts(setup, _moving(rows)),
        slots=slots,
        start_row=start_row,
        owner=max(0, int(T[start_row, c.ROW_A_SIDE])) if start_row >= 0 else 0,
        out_grow=EDGE_STRIP_M if any(_on_field_edge(group, setup) for group in setup.practice.groups) else 0.0,
        scoring_sides=(0, 1) if -1 in sides or not sides else tuple(sorted(sides)),
    )


def _role_of_players(setup: Setup) -> np.ndarray:
    return np.array([role for role, (_, number) in enumerate(setup.counts) for _ in range(number)], dtype=np.int64)


def _places(setup: Setup) -> np.ndarray:
    rows = [
        (float(place.kind == "circle"), place.x_m, place.y_m, place.across_m / 2, place.up_m / 2)
        for _, place in setup.places
    ]
    return np.array(rows, dtype=np.float64)


def _roles(names: Names, rows: tuple[Row, ...], L: np.ndarray) -> np.ndarray:
    R = np.zeros((len(names.keys), c.R_COLUMNS))
    for role, group in enumerate(names.setup.practice.groups):
        R[role, c.R_SIDE] = names.side_index(group.side)
        R[role, c.R_NEUTRAL] = float(group.side in names.neutral)
        R[role, c.R_EDGE] = names.place(group.home.place) if group.home.on_edge else -1
        R[role, c.R_LOW], R[role, c.R_HIGH] = group.low, group.high
        R[role, c.R_HOME], R[role, c.R_FENCE] = names.place(group.home.place), float(group.home.fence)
        R[role, c.R_IN], R[role, c.R_OUT] = _partner(names, group, True), _partner(names, group, False)
        _movement(names, rows, R, role)
        _limits(names, L, R, role)
    return R


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


def _goals(T: np.ndarray) -> np.ndarray:
    """Places where coming there scores, each with the side it scores for (-1: any)."""
    scores = (T[:, c.ROW_DO] == c.D_POINTS) & np.isin(T[:, c.ROW_WHEN], (c.E_RECEIVE, c.E_RUN_IN, c.E_PASS_INTO))
    found = {(int(row[c.ROW_PLACE]), int(row[c.ROW_WHO_SIDE])) for row in T[scores]}
    return np.array(sorted(found), dtype=np.int64).reshape(-1, 2)


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


def _edge_slots(names: Names) -> tuple[np.ndarray, np.ndarray]:
    """A stretch of its edge for every edge player: which slot each player has, and the slots."""
    setup = names.setup
    edges: list[tuple[float, float, float]] = []
    held: dict[str, list[int]] = {}
    groups = [group for group in setup.practice.groups if group.home.on_edge]
    for place in dict.fromkeys(group.home.place for group in groups):
        order = edge_order((group.key, setup.count(group.key)) for group in groups if group.home.place == place)
        for index, key in enumerate(order):
            held.setdefault(key, []).append(len(edges))
            edges.append((names.place(place), index / len(order), 0.5 / len(order)))
    slots = [
        held[group.key][number] if group.home.on_edge else -1
        for group in setup.practice.groups
        for number in range(setup.count(group.key))
    ]
    return np.array(slots, dtype=np.int64), np.array(edges, dtype=np.float64).reshape(-1, 3)


def _moving(rows: tuple[Row, ...]) -> bool:
    """Whether sentences change how many players a role has."""
    return any(row.do in ("comes in", "goes out") for row in rows)


def _starts(setup: Setup, moving: bool) -> np.ndarray:
    """Start spots of every role for every number it can have."""
    groups = setup.practice.groups
    most = max([1, *(max(group.high, setup.count(group.key)) for group in groups)])
    spots = np.zeros((len(groups), most + 1, most, 2))
    for role, group in enumerate(groups):
        now = setup.count(group.key)
        for number in range(group.low, group.high + 1) if moving else (now,):
            counts = tuple((key, number if key == group.key else count) for key, count in setup.counts)
            for index, spot in enumerate(starts(replace(setup, counts=counts))[group.key]):
                spots[role, number, index] = spot
    return spots
