"""Carry the ball: where to run with it, and what running it into a place is worth."""

import math

from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel
from turnout.play.kernel.gates import before_gate, next_gate
from turnout.play.kernel.ground import allowed
from turnout.play.kernel.judging import actor_fits
from turnout.play.kernel.lanes import lane_margin, room_m
from turnout.play.kernel.weights import *

GATE_OFF_M = 2.5
STEP_M = 1.0  # in a keep-ball the ball is moved a step at a time, free
CARRY_M, CARRY_FAR_M, OPEN_M = 2.2, 7.0, 4.5  # with a direction: nobody within the last, a run into the open, free


@kernel
def carry(P, I, A, B, G, R, Z, L, T, W, aim, plans, spots, i):
    """Pick where to run with the ball, away from pressure and forward. Returns what a run in is worth."""
    team = I[i, TEAM]
    room = room_m(P, I, spots, team, P[i, X], P[i, Y])
    directed = aim[team, 0] != 0.0 or aim[team, 1] != 0.0
    far = STEP_M
    if directed:
        far = CARRY_FAR_M if room > OPEN_M else CARRY_M
    best, best_x, best_y = 0.12 + 0.10 * min(room, 4.0), P[i, X], P[i, Y]
    for way in range(8):
        angle = 0.7853981633974483 * way
        x, y = P[i, X] + far * math.cos(angle), P[i, Y] + far * math.sin(angle)
        x, y = allowed(P, I, R, Z, L, B, team, i, x, y, 1.0)
        worth = 0.10 * min(room_m(P, I, spots, team, x, y), 4.0)
        worth += 0.14 * ((x - P[i, X]) * aim[team, 0] + (y - P[i, Y]) * aim[team, 1])
        if worth > best:
            best, best_x, best_y = worth, x, y
    gain = 0.0
    for row in range(T.shape[0]):
        if T[row, ROW_WHEN] == E_RUN_IN and T[row, ROW_DO] == D_POINTS and actor_fits(I, T, row, i, team):
            x, y, worth = run_in(P, I, A, R, Z, W, spots, T[row, ROW_PLACE], team, i)
            worth *= W[K_SCORE] * T[row, ROW_VALUE] * plans[T[row, ROW_PLACE], team]
            if worth > gain and worth > 0.05:
                gain, best_x, best_y = worth, x, y
    gate = next_gate(I, B, G, Z, L, T, i, team, P[i, X], P[i, Y])
    if gate >= 0 and best_x == P[i, X] and best_y == P[i, Y]:
        best_x, best_y = before_gate(Z, gate, P[i, X], P[i, Y], GATE_OFF_M)
        best_x, best_y = allowed(P, I, R, Z, L, B, team, i, best_x, best_y, 0.5)
    B[CARRY_X], B[CARRY_Y] = best_x, best_y
    return gain


@kernel
def run_in(P, I, A, R, Z, W, spots, place, team, i):
    """Nearest point of a scoring place and the chance to carry the ball there."""
    px, py = P[i, X], P[i, Y]
    x = Z[place, Z_X] + min(Z[place, Z_HX] * 0.85, max(-Z[place, Z_HX] * 0.85, px - Z[place, Z_X]))
    y = Z[place, Z_Y] + min(Z[place, Z_HY] * 0.5, max(-Z[place, Z_HY] * 0.5, py - Z[place, Z_Y]))
    gap = math.sqrt((x - px) * (x - px) + (y - py) * (y - py))
    if gap > 12.0:
        return x, y, 0.0
    margin = lane_margin(P, I, A, R, W, spots, team, px, py, x, y, A[i, TOP] * W[K_DRIBBLE] / 0.78)
    return x, y, 1.0 / (1.0 + math.exp(-(margin - 0.3) / 0.5)) * math.exp(-gap / 9.0)
