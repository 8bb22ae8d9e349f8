"""Fresh state for one run: everybody's, and that of every ball with its own players."""

import numpy as np

from turnout.play.kernel.chance import CLOCK, PURPOSES, seed_streams, uniform
from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_making_arrays
from turnout.play.kernel.rolling import PATH_STEPS
from turnout.play.kernel.watching import CALL_S


@kernel_making_arrays
def prepare_players(seed, units, roles, R, edges, slots, owner):
    """Players with roles and stretches dealt and clocks staggered, and their random streams, ball by ball."""
    players = roles.shape[0]
    P = np.zeros((players, P_COLUMNS))
    I = np.zeros((players, I_COLUMNS), dtype=np.int64)
    chance = np.zeros((PURPOSES * players, 2), dtype=np.int64)
    seed_streams(chance, seed)
    for i in range(players):
        role = roles[i]
        I[i, ROLE] = role
        I[i, TEAM] = owner if R[role, R_NEUTRAL] == WITH_BALL else int(R[role, R_SIDE])
        if R[role, R_NEUTRAL] >= WITHOUT_BALL:
            I[i, TEAM] = 1 - owner if R[role, R_NEUTRAL] == WITHOUT_BALL else OUT_OF_PLAY
        if R[role, R_WAITS] == 1.0:
            I[i, TEAM] = OUT_OF_PLAY
        I[i, SLOT] = slots[i]
        if slots[i] >= 0:
            P[i, EDGE_AT], P[i, EDGE_SPAN] = edges[slots[i], SLOT_AT], edges[slots[i], SLOT_SPAN]
        P[i, REACH_LEFT] = P[i, TACKLE_LEFT] = -1.0
        P[i, FRESH] = 1.0
    for unit in range(units.shape[0]):
        first, number = units[unit, 0], units[unit, 1] - units[unit, 0]
        for i in range(number):
            stream = first * PURPOSES + CLOCK * number + i
            P[first + i, T_SEE] = 0.2 * uniform(chance, stream)
            P[first + i, T_DECIDE] = 0.3 * uniform(chance, stream)
    return P, I, chance


@kernel_making_arrays
def prepare_balls(units, R, Z, T, L, F, start_row, owner, out_grow):
    """Per ball: moment, beliefs, runs, sentences that have fired, limits lifted so far; and shared scratch room."""
    balls, most = units.shape[0], 0
    for unit in range(balls):
        most = max(most, units[unit, 1] - units[unit, 0])
    B = np.zeros((balls, MARK_0 + 2 * marks_in(T)))
    G = np.full((balls, G_SIZE), -1, dtype=np.int64)
    for unit in range(balls):
        fresh_ball(B[unit], G[unit], Z, start_row, owner, out_grow)
        G[unit, UNIT] = unit
        what_matters(B[unit], G[unit], R, Z, T, F)
    watched = 0
    for row in range(T.shape[0]):
        if E_ENTER <= T[row, ROW_WHEN] <= E_SECONDS or E_LEAVE <= T[row, ROW_WHEN] <= E_CALL:
            watched = T.shape[0]
    limits = np.zeros((balls, L.shape[0], L.shape[1]), dtype=np.int64)
    for unit in range(balls):
        limits[unit] = L
    return (
        B, G, limits, np.zeros((balls, most, most, 5)), np.zeros((balls, 4), dtype=np.int64),
        np.zeros((balls, T.shape[0]), dtype=np.int64), np.zeros((balls, watched, most), dtype=np.int64),
        np.zeros((PATH_STEPS, 3)), np.zeros((most, 2)), np.zeros((most + R.shape[0] + Z.shape[0], 6)),
    )  # fmt: skip


@kernel
def fresh_ball(B, G, Z, start_row, owner, out_grow):
    """The state of one ball before anything has happened."""
    for name in (FREE, TOUCHES, FIRST_TIME, PASS_ON, SPELL_PASSES, SPELL_FREE, WANT_STOP, LOG_N, TACKLED, IN_PLACES,
                 POSSESSION_PASSES, SHOT, HELD):  # fmt: skip
        G[name] = 0
    G[OWNER], G[BALL_TEAM], G[LAST_TEAM], G[START_ROW] = owner, owner, owner, start_row
    B[T_KICK_AT] = 1e18
    B[STOP_X] = 1e9
    B[SQ] = (4.0 * Z[0, Z_HX] * Z[0, Z_HY]) ** 0.5
    B[OUT_GROW] = out_grow
    for side in range(2):
        B[T_WON_0 + side] = B[T_LOST_0 + side] = -1e9


@kernel
def marks_in(T):
    """How many marks the rows set."""
    marks = 0
    for row in range(T.shape[0]):
        marks = max(marks, T[row, ROW_MARK] + 1, T[row, ROW_SETS] + 1, T[row, ROW_MEMORY] + 1)
    return marks


@kernel
def what_matters(B, G, R, Z, T, F):
    """Flags for what only some practices need, so that all others are played without looking for it."""
    B[T_CALLED] = CALL_S
    for at in range(MARK_0, B.shape[0]):
        B[at] = -1e9
    G[RULED] = G[OVERS] = G[BACKS] = G[OVER_PLACES] = G[FLOWN] = G[LANDED] = G[FIRST_PAYS] = 0
    G[DEEDS] = G[KEEPS] = G[CAME_IN] = G[RESTED] = G[TURNCOATS] = G[COMING_IN] = G[HEADS] = G[KICK_HEAD] = 0
    for role in range(R.shape[0]):
        if R[role, R_NEUTRAL] >= WITHOUT_BALL:
            G[TURNCOATS] = 1
    for row in range(T.shape[0]):
        if T[row, ROW_BEHIND] == 1 or D_COUNTS <= T[row, ROW_DO] <= D_WHEN:
            G[RULED] = 1
        if (T[row, ROW_DO] == D_COUNTS or T[row, ROW_DO] == D_HOW) and T[row, ROW_HOW] == MADE_FIRST:
            G[FIRST_PAYS] = 1
        if T[row, ROW_WHEN] == E_OVER:
            G[OVERS] = 1
            G[OVER_PLACES] |= 1 << T[row, ROW_PLACE]
        if T[row, ROW_WHEN] == E_THROUGH and Z[T[row, ROW_PLACE], Z_KIND] != LINE:
            G[OVERS] = 1
        if T[row, ROW_WHEN] == E_HEAD or (D_COUNTS <= T[row, ROW_DO] <= D_HOW and T[row, ROW_HOW] == MADE_HEAD):
            G[HEADS] = 1
        if E_RUN_THROUGH <= T[row, ROW_WHEN] <= E_KEEP:
            G[DEEDS] = 1
        if T[row, ROW_WHEN] == E_KEEP and T[row, ROW_VALUE] > 0:
            G[KEEPS] = 1
        if T[row, ROW_WHEN] == E_ONE_TWO:
            G[BACKS] = 1
    for row in range(F.shape[0]):
        if F[row, F_KIND] == PASS_OVER:
            G[OVERS] = 1
            G[OVER_PLACES] |= 1 << F[row, F_PLACE]
