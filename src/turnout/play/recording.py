"""A recorded passage: the log of events and, for a window, the frames. Practice coordinates, metres and seconds."""

from dataclasses import dataclass

import numpy as np

EVENTS = (
    "start", "pass", "control", "cut out", "tackle", "out", "score", "change", "spill", "owner", "journey end", "stop",
    "shot", "save", "block", "points added", "header",
)  # fmt: skip


@dataclass(frozen=True)
class PlayEvent:
    """One thing that happened. `player` and `other` are player numbers or -1; `value` is points, run length or rule."""

    t_s: float
    kind: str
    player: int
    other: int
    side: int
    x_m: float
    y_m: float
    value: float


@dataclass(frozen=True)
class Recording:
    """A window of simulated play that can be drawn.

    t_s (frames,), players_m (frames, players, 2), ball_m (frames, 2), facing (frames, players, 2) unit vectors,
    role (frames, players) index into `roles`, holder (frames,) player or -1. `ball_m` and `holder` are those of the
    first ball; balls_m (frames, balls, 3: x, y, height) and holders (frames, balls) hold every ball.
    """

    seed: int
    roles: tuple[str, ...]  # group keys
    t_s: np.ndarray
    players_m: np.ndarray
    facing: np.ndarray
    ball_m: np.ndarray
    balls_m: np.ndarray
    holder: np.ndarray
    holders: np.ndarray
    role: np.ndarray
    events: tuple[PlayEvent, ...]
