"""A passage made by hand: six players on a square, ten frames a second."""

import numpy as np
from show_toys import square_setup

from turnout.play.recording import PlayEvent, Recording

SECONDS, RATE = 8.0, 10


def setup():
    """2 amber inside, 1 blue inside, 2 edge players each: seven players."""
    return square_setup(2, 2, 16)


def recording(events=None, roles=None, height_m=0.0):
    """Everybody drifts east; player 3 (amber edge 1) and player 1 change roles at four seconds.

    The ball is at player 0's feet, `height_m` above the ground from four to five seconds.
    """
    t = np.arange(0, SECONDS + 1e-9, 1 / RATE)
    base = np.array([(-4.0, -4.0), (4.0, 4.0), (0.0, 0.0), (-3.0, 7.8), (3.0, 7.8), (7.8, 2.0), (7.8, -2.0)])
    players = base[None, :, :] + np.stack([t * 0.2, np.zeros_like(t)], axis=1)[:, None, :]
    role = np.tile(np.array([0, 0, 1, 2, 2, 3, 3]), (len(t), 1))
    role[t >= 4.0, 3] = 0
    role[t >= 4.0, 1] = 2
    facing = np.zeros_like(players)
    facing[..., 1] = 1.0
    high = np.where((t >= 4.0) & (t <= 5.0), height_m, 0.0)
    holder = np.zeros(len(t), dtype=int)
    balls = np.concatenate([players[:, :1, :], high[:, None, None]], axis=2)
    return Recording(
        seed=7,
        roles=("amber inside", "blue inside", "amber edge", "blue edge"),
        t_s=t + 20.0,
        players_m=players,
        facing=facing,
        ball_m=balls[:, 0, :2],
        balls_m=balls,
        holder=holder,
        holders=holder[:, None],
        role=role if roles is None else roles,
        events=EVENTS if events is None else tuple(events),
    )


def event(t_s, kind, player, other=-1, side=0, x_m=0.0, y_m=0.0, value=0.0):
    return PlayEvent(20.0 + t_s, kind, player, other, side, x_m, y_m, value)


EVENTS = (
    event(1.0, "pass", 0, 3, x_m=-4.0, y_m=-4.0, value=8.0),
    event(2.0, "control", 3, 0, x_m=-3.0, y_m=7.8, value=1.0),
    event(2.2, "pass", 3, 1, x_m=-3.0, y_m=7.8, value=8.0),
    event(3.0, "control", 1, 3, x_m=4.0, y_m=4.0, value=2.0),
    event(3.6, "pass", 1, 0, x_m=4.0, y_m=4.0, value=8.0),
    event(4.0, "control", 0, 1, x_m=-3.0, y_m=-4.0, value=3.0),
    event(4.0, "owner", 0, side=0),
    event(4.0, "change", 3, side=0, value=0.0),
    event(4.0, "change", 1, side=0, value=2.0),
    event(5.0, "pass", 0, 3, x_m=-3.0, y_m=-4.0),
    event(5.5, "cut out", 2, 0, side=1, x_m=0.0, y_m=0.0, value=0.0),
    event(6.0, "score", 2, 3, side=1, value=1.0),
    event(6.5, "tackle", 0, 2, side=0, value=1.0),
    event(6.8, "tackle", 2, 0, side=1, value=1.0),
    event(7.0, "pass", 2, 5, side=1, x_m=1.0, y_m=0.0),
    event(7.5, "out", 2, side=1, x_m=9.0, y_m=1.0),
)
