"""Carry the ball: where to run with it, and what running it into a place is worth."""

import math

from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel
from turnout.play.kernel.counting import row_worth, wanted
from turnout.play.kernel.gates import before_gate, behind_gate, next_gate
from turnout.play.kernel.ground import allowed, into
from turnout.play.kernel.judging import actor_fits
from turnout.play.kernel.lanes import lane_margin, room_m
from turnout.play.kernel.paying import MARK_SHARE
from turnout.play.kernel.weights import *

GATE_OFF_M = 2.5
STEP_M = 1.0  # in a keep-ball the ball is moved a step at a time, free
CARRY_M, CARRY_FAR_M = 2.2, 5.5  # with a direction: a short and a long way to run with it, free
DRIBBLE_SLOW = 1.28  # the ball rolls at 78 % of a pass's launch on average; a man who runs does not slow down
RUN_OUT_M, DEED_FAR_M = 1.2, 14.0  # how far past a gate or an area a run goes; no farther way is thought of, free
SURE_M, SURE_SLACK_M = 0.3, 0.5  # so far from an opponent a run is even chances, and how fast that turns, free


@kernel
def carry(P, I, A, B, G, R, Z, L, T, W, aim, plans, spots, i):
    """Pick where to run with the ball: away from pressure, forward, past a man. Returns what running is worth."""
    team = I[i, TEAM]
    gain, x, y = best_way(P, I, A, B, G, R, Z, L, W, aim, spots, i)
    for row in range(T.shape[0]):
        if T[row, ROW_WHEN] == E_RUN_IN and actor_fits(I, T, row, i, team) and wanted(B, G, T, row, team):
            to_x, to_y, worth = run_in(P, I, A, R, Z, W, spots, T[row, ROW_PLACE], team, i)
            value = row_worth(
                P, I, B, G, R, Z, T, row, team, to_x, to_y, False, G[LINK_FROM], B[LINK_X], B[LINK_Y])  # fmt: skip
            worth *= W[K_SCORE] * value * plans[T[row, ROW_PLACE], team]
            if worth > gain and worth > 0.05:
                gain, x, y = worth, to_x, to_y
    if G[DEEDS] == 1:
        for row in range(T.shape[0]):
            if not (E_RUN_THROUGH <= T[row, ROW_WHEN] <= E_MOVE) or not wanted(B, G, T, row, team):
                continue
            if actor_fits(I, T, row, i, team):
                to_x, to_y, worth = deed_way(P, I, A, B, G, R, Z, T, W, spots, row, team, i)
                if worth > gain and worth > 0.05:
                    gain, x, y = worth, to_x, to_y
    gate = next_gate(I, B, G, Z, L, T, i, team, P[i, X], P[i, Y])
    if gate >= 0 and x == P[i, X] and y == P[i, Y]:
        x, y = before_gate(Z, gate, P[i, X], P[i, Y], GATE_OFF_M)
        x, y = allowed(P, I, R, Z, L, B, team, i, x, y, 0.5)
    B[CARRY_X], B[CARRY_Y] = x, y
    return gain


@kernel
def deed_way(P, I, A, B, G, R, Z, T, W, spots, row, team, i):
    """Where to carry the ball to stop it, bring it or run it through, and what that is worth."""
    place, share = T[row, ROW_PLACE], 1.0
    if T[row, ROW_WHEN] == E_MOVE:
        if B[MARK_0 + 2 * T[row, ROW_MEMORY] + team] >= B[T_STARTED]:
            place = T[row, ROW_COUNT] - 1
        else:
            share = MARK_SHARE
    if T[row, ROW_WHEN] == E_RUN_THROUGH:
        x, y = beyond(Z, place, P[i, X], P[i, Y], (G[CAME_IN] >> (3 * place)) & 7)
    else:
        x, y = into(Z, place, P[i, X], P[i, Y], 1.0)
    gap = math.sqrt((x - P[i, X]) ** 2 + (y - P[i, Y]) ** 2)
    if gap > DEED_FAR_M:
        return x, y, 0.0
    margin = lane_margin(P, I, A, R, W, spots, team, P[i, X], P[i, Y], x, y, A[i, TOP] * W[K_DRIBBLE] / 0.78)
    chance = 1.0 / (1.0 + math.exp(-(margin - SURE_M) / SURE_SLACK_M)) * math.exp(-gap / DEED_FAR_M)
    value = row_worth(P, I, B, G, R, Z, T, row, team, x, y, False, G[LINK_FROM], B[LINK_X], B[LINK_Y])
    return x, y, share * chance * W[K_SCORE] * value


@kernel
def beyond(Z, place, x, y, came):
    """Where to run for a place to lie between: through a gate from in front of it, across an area to its far side."""
    cx, cy, hx, hy = Z[place, Z_X], Z[place, Z_Y], Z[place, Z_HX], Z[place, Z_HY]
    if Z[place, Z_KIND] == LINE:
        off = abs(x - cx) - hx if hy == 0.0 else abs(y - cy) - hy
        return before_gate(Z, place, x, y, RUN_OUT_M) if off > 0.0 else behind_gate(Z, place, x, y, RUN_OUT_M)
    dx, dy = cx - x, cy - y
    if came != 0:
        dx, dy = (-1.0 if came == 1 else 1.0 if came == 2 else 0.0), (-1.0 if came == 3 else 1.0 if came == 4 else 0.0)
    if abs(dx) * hy > abs(dy) * hx:
        return cx + (hx + RUN_OUT_M) * (1.0 if dx > 0.0 else -1.0), y if came != 0 else cy
    return x if came != 0 else cx, cy + (hy + RUN_OUT_M) * (1.0 if dy > 0.0 else -1.0)


@kernel
def best_way(P, I, A, B, G, R, Z, L, W, aim, spots, i):
    """The best of eight ways to run, short and with a direction long; and how much better than staying it is."""
    team, px, py = I[i, TEAM], P[i, X], P[i, Y]
    ux, uy = aim[team, 0], aim[team, 1]
    directed = ux != 0.0 or uy != 0.0
    stay = 0.12 + 0.10 * min(room_m(P, I, spots, team, px, py), 4.0)
    best, best_x, best_y = stay, px, py
    pace = DRIBBLE_SLOW * W[K_DRIBBLE] * A[i, TOP]
    for way in range(16 if directed else 8):
        angle = 0.7853981633974483 * way
        far = STEP_M if not directed else (CARRY_M if way < 8 else CARRY_FAR_M)
        x, y = allowed(P, I, R, Z, L, B, team, i, px + far * math.cos(angle), py + far * math.sin(angle), 1.0)
        worth = 0.10 * min(room_m(P, I, spots, team, x, y), 4.0)
        if directed:
            margin = lane_margin(P, I, A, R, W, spots, team, px, py, x, y, pace)
            safe = 1.0 / (1.0 + math.exp(-(margin - SURE_M) / SURE_SLACK_M))
            ahead = W[K_RUN_ON] * ((x - px) * ux + (y - py) * uy) / B[SQ]
            worth = safe * (worth + ahead) - (1.0 - safe) * W[K_LOSS] * (1.0 + W[K_DANGER] * B[DANGER])
        if worth > best:
            best, best_x, best_y = worth, x, y
    return (best - stay if directed else 0.0), best_x, best_y


@kernel
def run_in(P, I, A, R, Z, W, spots, place, team, i):
    """Nearest point of a scoring place and the chance to carry the ball there."""
    px, py = P[i, X], P[i, Y]
    if Z[place, Z_KIND] >= OUTSIDE:
        x, y = into(Z, place, px, py, 0.3)
        gap = math.sqrt((x - px) * (x - px) + (y - py) * (y - py))
        margin = lane_margin(P, I, A, R, W, spots, team, px, py, x, y, A[i, TOP] * W[K_DRIBBLE] / 0.78)
        return x, y, 1.0 / (1.0 + math.exp(-(margin - 0.3) / 0.5)) * math.exp(-gap / 9.0)
    x = Z[place, Z_X] + min(Z[place, Z_HX] * 0.85, max(-Z[place, Z_HX] * 0.85, px - Z[place, Z_X]))
    y = Z[place, Z_Y] + min(Z[place, Z_HY] * 0.5, max(-Z[place, Z_HY] * 0.5, py - Z[place, Z_Y]))
    gap = math.sqrt((x - px) * (x - px) + (y - py) * (y - py))
    if gap > 12.0:
        return x, y, 0.0
    margin = lane_margin(P, I, A, R, W, spots, team, px, py, x, y, A[i, TOP] * W[K_DRIBBLE] / 0.78)
    return x, y, 1.0 / (1.0 + math.exp(-(margin - 0.3) / 0.5)) * math.exp(-gap / 9.0)
