"""Play a setup: sums and log of one run, or the frames of a window of it. Same seed, same run."""

from dataclasses import dataclass

import numpy as np

from turnout.play.abilities import squad_abilities
from turnout.play.kernel import columns as c
from turnout.play.kernel.weights import TABLE, weights
from turnout.play.physics import GRAVITY_MPS2
from turnout.play.recording import EVENTS, PlayEvent, Recording
from turnout.play.scene import Scene, scene_of
from turnout.play.surfaces import surface as surface_named
from turnout.practice.setup import Setup

LOG_ROWS_PER_S = 12


@dataclass(frozen=True, eq=False)
class Sums:
    """What happened in one run, added up. Columns are named in kernel/columns.py.

    S (players, S_COLUMNS) · U (roles, U_COLUMNS) · V (sides, V_COLUMNS) · E (sides, CAUSES) ends ·
    H (sides, RUN_CAP + 1) spells by run length · Q (Q_SIZE,) · log (events, LOG_COLUMNS).
    """

    S: np.ndarray
    U: np.ndarray
    V: np.ndarray
    E: np.ndarray
    H: np.ndarray
    Q: np.ndarray
    log: np.ndarray


def simulate(
    setup: Setup, *, age: int, level: str, seed: int, seconds: float, surface: str = "3G", sex: str = "boys",
    log: bool = False, W: np.ndarray | None = None, A: np.ndarray | None = None,
) -> Sums:  # fmt: skip
    """Play a setup for so many seconds and add up what happened.

    surface: what the ball rolls on, one of surfaces.SURFACES · sex: 'boys', 'girls' or 'mixed'
    W: weights (default: those of the table) · A: abilities (players, A_COLUMNS; default: drawn round the level).
    Raises TurnoutError on a sentence that cannot be played.
    """
    scene = scene_of(setup)
    rows = int(seconds * LOG_ROWS_PER_S) + 200 if log else 0
    return _run(scene, _abilities(scene, age, level, sex, seed, A), _weights(W, surface), seed, seconds, rows, None)


def record(
    setup: Setup, *, age: int, level: str, seed: int, window: tuple[float, float], surface: str = "3G",
    sex: str = "boys", rate_hz: float = 10.0, W: np.ndarray | None = None, A: np.ndarray | None = None,
) -> Recording:  # fmt: skip
    """Play a setup again from its seed and keep the frames between two moments (start_s, end_s) of it."""
    scene = scene_of(setup)
    W = _weights(W, surface)
    dt = W[list(TABLE).index("DT")]
    every = max(1, round(1.0 / rate_hz / dt))
    first = round(window[0] / dt)
    number = (round(window[1] / dt) - first) // every + 1
    balls = len(scene.units)
    frames = (
        np.zeros((number, scene.players, 4)), np.zeros((number, balls, 5)),
        np.zeros((number, scene.players), dtype=np.int64), every, first,
    )  # fmt: skip
    rows = int(window[1] * LOG_ROWS_PER_S) + 200
    sums = _run(scene, _abilities(scene, age, level, sex, seed, A), W, seed, window[1] + dt, rows, frames)
    places, ball, role = frames[:3]
    return Recording(
        seed=seed, roles=scene.keys, t_s=ball[:, 0, 0], players_m=places[:, :, :2], facing=places[:, :, 2:],
        ball_m=ball[:, 0, 1:3], balls_m=ball[:, :, [1, 2, 4]], holder=ball[:, 0, 3].astype(int),
        holders=ball[:, :, 3].astype(int), role=role,
        events=tuple(event for event in events_of(sums.log) if window[0] - 1e-9 <= event.t_s <= window[1]),
    )  # fmt: skip


def events_of(log: np.ndarray) -> tuple[PlayEvent, ...]:
    """The log as events."""
    return tuple(
        PlayEvent(float(t), EVENTS[int(kind)], int(player), int(other), int(side), float(x), float(y), float(value))
        for t, kind, player, other, side, x, y, value in log[:, : c.LOG_AIM_X]
    )


def _weights(W: np.ndarray | None, name: str) -> np.ndarray:
    if W is not None:
        return W
    ground = surface_named(name)
    return weights(ROLL=ground.roll_mps2, SLIDE=ground.friction * GRAVITY_MPS2, BOUNCE=ground.restitution)


def _abilities(scene: Scene, age: int, level: str, sex: str, seed: int, A: np.ndarray | None) -> np.ndarray:
    return squad_abilities(scene.players, age, level, seed, sex=sex) if A is None else A


def _run(
    scene: Scene, A: np.ndarray, W: np.ndarray, seed: int, seconds: float, log_rows: int, frames: tuple | None
) -> Sums:
    from turnout.play.kernel.playing import run

    balls = len(scene.units)
    S = np.zeros((scene.players, c.S_COLUMNS))
    U = np.zeros((len(scene.keys), c.U_COLUMNS))
    V = np.zeros((2, c.V_COLUMNS))
    E = np.zeros((2, c.CAUSES), dtype=np.int64)
    H = np.zeros((2, c.RUN_CAP + 1), dtype=np.int64)
    Q = np.zeros(c.Q_SIZE)
    log, logged = np.zeros((balls, log_rows, c.LOG_COLUMNS)), np.zeros(balls, dtype=np.int64)
    places, ball, role, every, first = frames or (
        np.zeros((0, 0, 4)), np.zeros((0, 0, 5)), np.zeros((0, 0), dtype=np.int64), 0, 0)  # fmt: skip
    steps = round(seconds / W[list(TABLE).index("DT")])
    run(
        int(seed), steps, scene.units, scene.roles, A, scene.R, scene.Z, scene.L, scene.T, scene.F, W, scene.aim,
        scene.plans, scene.goals, scene.edges, scene.starts, scene.slots, scene.start_row, scene.owner, scene.out_grow,
        S, U, V, E, H, Q, log, logged, every, first, places, ball, role,
    )  # fmt: skip
    return Sums(S, U, V, E, H, Q, _one_log(log, logged, scene.units))


def _one_log(log: np.ndarray, logged: np.ndarray, units: np.ndarray) -> np.ndarray:
    """The logs of all balls as one, in the order of time, players by their number in the scene."""
    parts = []
    for rows, number, (first, _) in zip(log, logged, units, strict=True):
        part = rows[:number].copy()
        players = part[:, c.LOG_PLAYER] >= 0
        others = (part[:, c.LOG_OTHER] >= 0) & (part[:, c.LOG_KIND] != c.LOG_SCORE)
        part[players, c.LOG_PLAYER] += first
        part[others, c.LOG_OTHER] += first
        parts.append(part)
    whole = np.concatenate(parts)
    return whole[np.argsort(whole[:, c.LOG_T], kind="stable")] if len(parts) > 1 else whole
