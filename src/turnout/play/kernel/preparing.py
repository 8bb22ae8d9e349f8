"""Fresh state for one run."""

import numpy as np

from turnout.play.kernel.chance import CLOCK, PURPOSES, seed_streams, uniform
from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel_making_arrays
from turnout.play.kernel.rolling import PATH_STEPS


@kernel_making_arrays
def prepare(seed, players, roles, R, Z, T, edges, starts, slots, start_row, owner, out_grow):
    """Arrays of a run that has not begun: roles and stretches dealt, clocks staggered."""
    P = np.zeros((players, P_COLUMNS))
    I = np.zeros((players, I_COLUMNS), dtype=np.int64)
    B = np.zeros(B_SIZE)
    G = np.full(G_SIZE, -1, dtype=np.int64)
    seen = np.zeros((players, players, 5))
    chance = np.zeros((PURPOSES * players, 2), dtype=np.int64)
    seed_streams(chance, seed)
    for i in range(players):
        role = roles[i]
        I[i, ROLE] = role
        I[i, TEAM] = owner if R[role, R_NEUTRAL] == 1.0 else int(R[role, R_SIDE])
        I[i, SLOT] = slots[i]
        if slots[i] >= 0:
            P[i, EDGE_AT], P[i, EDGE_SPAN] = edges[slots[i], SLOT_AT], edges[slots[i], SLOT_SPAN]
        P[i, T_SEE] = 0.2 * uniform(chance, CLOCK * players + i)
        P[i, T_DECIDE] = 0.3 * uniform(chance, CLOCK * players + i)
        P[i, REACH_LEFT] = -1.0
        P[i, TACKLE_LEFT] = -1.0
    for name in (FREE, TOUCHES, FIRST_TIME, PASS_ON, SPELL_PASSES, SPELL_FREE, WANT_STOP, LOG_N, TACKLED,
                 IN_PLACES, POSSESSION_PASSES):  # fmt: skip
        G[name] = 0
    G[OWNER], G[BALL_TEAM], G[LAST_TEAM], G[START_ROW] = owner, owner, owner, start_row
    B[T_KICK_AT] = 1e18
    B[SQ] = np.sqrt(4.0 * Z[0, Z_HX] * Z[0, Z_HY])
    B[OUT_GROW] = out_grow
    B[T_WON_0] = B[T_WON_0 + 1] = -1e9
    watched = 0
    for row in range(T.shape[0]):
        if T[row, ROW_WHEN] >= E_ENTER:
            watched = T.shape[0]
    was = np.zeros((watched, players), dtype=np.int64)
    fired = np.zeros(T.shape[0], dtype=np.int64)
    runs = np.zeros(4, dtype=np.int64)
    path = np.zeros((PATH_STEPS, 2))
    spots, lanes = np.zeros((players, 2)), np.zeros((players + R.shape[0] + Z.shape[0], 6))
    return P, I, B, G, seen, spots, lanes, path, runs, chance, fired, was
