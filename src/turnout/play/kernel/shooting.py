"""Shots: whether one is worth trying, and where at."""

import math

from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_inlined
from turnout.play.kernel.judging import actor_fits
from turnout.play.kernel.kicking import kick_strain
from turnout.play.kernel.weights import *

RANGE_S = 1.25  # nobody shoots from farther than his hardest kick goes in so many seconds, free
BLOCK_M = 0.5  # a body this near the line of a shot is in its way, free
SHOT_SHARE = 0.92  # of the hardest kick
CORNER = 0.62  # where a corner of the goal is aimed at, as a share of half its width


@kernel
def best_shot(P, I, A, B, G, R, Z, T, W, plans, spots, i, pressure, first_time):
    """Worth of the best shot at a goal of this side and its aim; -1e9 when there is none to think of."""
    team, best, best_x, best_y = I[i, TEAM], -1e9, 0.0, 0.0
    if G[FREE] == 1 or R[I[i, ROLE], R_KEEPS] >= 0.0:
        return best, best_x, best_y
    for row in range(T.shape[0]):
        if T[row, ROW_WHEN] != E_GOAL or T[row, ROW_DO] != D_POINTS or not actor_fits(I, T, row, i, team):
            continue
        goal = T[row, ROW_PLACE]
        away = math.sqrt((Z[goal, Z_X] - B[BX]) ** 2 + (Z[goal, Z_Y] - B[BY]) ** 2)
        if away > RANGE_S * A[i, KICK_TOP]:
            continue
        for corner in range(-1, 2):
            x = Z[goal, Z_X] + CORNER * corner * Z[goal, Z_HX]
            y = Z[goal, Z_Y] + CORNER * corner * Z[goal, Z_HY]
            p = shot_chance(P, I, A, B, G, R, Z, W, spots, i, goal, x, y, pressure, first_time)
            worth = p * W[K_SHOOT] * T[row, ROW_VALUE] * plans[goal, team] - (1.0 - p) * W[K_SHOOT_LOSS]
            if worth > best:
                best, best_x, best_y = worth, x, y
    return best, best_x, best_y


@kernel_inlined
def shot_chance(P, I, A, B, G, R, Z, W, spots, i, goal, x, y, pressure, first_time):
    """Chance of a shot at (x, y) as its taker judges it: between the posts, past bodies, past the keeper."""
    dx, dy = x - B[BX], y - B[BY]
    away = max(0.5, math.sqrt(dx * dx + dy * dy))
    ux, uy = dx / away, dy / away
    open_m = Z[goal, Z_HX] * abs(uy) + Z[goal, Z_HY] * abs(ux)
    off = math.sqrt((x - Z[goal, Z_X]) ** 2 + (y - Z[goal, Z_Y]) ** 2) * (abs(uy) if Z[goal, Z_HY] == 0.0 else abs(ux))
    spread = 1.2 * A[i, AIM_SD] * kick_strain(P, A, B, G, W, i, pressure, first_time, dx, dy) * away * 1.4142
    p = 0.5 * (math.erf((open_m - off) / spread) + math.erf((open_m + off) / spread))
    speed = SHOT_SHARE * A[i, KICK_TOP]
    for k in range(P.shape[0]):
        if I[k, TEAM] != 1 - I[i, TEAM]:
            continue
        ox, oy = spots[k, 0] - B[BX], spots[k, 1] - B[BY]
        s = ox * ux + oy * uy
        if s < 0.3 or s > away + 0.5:
            continue
        across = abs(oy * ux - ox * uy)
        if R[I[k, ROLE], R_KEEPS] >= 0.0:
            hands = 0.6 + min(A[k, REACH_M], W[K_DIVE] * max(0.0, s / (0.9 * speed) - 0.75 * A[k, REACT_S]))
            p *= 1.0 / (1.0 + math.exp(-(across - hands) / 0.25))
        elif across < 2.0:
            p *= 1.0 / (1.0 + math.exp(-(across - BLOCK_M) / 0.15))
    return p
