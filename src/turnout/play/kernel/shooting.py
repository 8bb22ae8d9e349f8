"""Shots: whether one is worth trying, and where at."""

import math

from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_inlined
from turnout.play.kernel.counting import row_worth, wanted
from turnout.play.kernel.judging import actor_fits
from turnout.play.kernel.kicking import kick_strain
from turnout.play.kernel.weights import *

RANGE_S = 1.25  # nobody shoots from farther than his hardest kick goes in so many seconds, free
BLOCK_M = 0.5  # a body this near the line of a shot is in its way, free
THINK_OF_S = 0.9  # from farther nobody thinks of a team-mate's shot, free
SHOT_SPREAD = 1.2  # a shot is so much less exact than a pass, free
SHOT_SHARE = 0.92  # of the hardest kick
CORNER = 0.62  # where a corner of the goal is aimed at, as a share of half its width


@kernel
def best_shot(P, I, A, B, G, R, Z, T, W, plans, spots, i, pressure, first_time):
    """Worth of the best shot at a goal of this side and its aim; -1e9 when there is none to think of."""
    team, best, best_x, best_y = I[i, TEAM], -1e9, 0.0, 0.0
    if G[FREE] == 1 or R[I[i, ROLE], R_KEEPS] >= 0.0:
        return best, best_x, best_y
    for row in range(T.shape[0]):
        if T[row, ROW_WHEN] != E_GOAL or not actor_fits(I, T, row, i, team) or not wanted(B, G, T, row, team):
            continue
        goal = T[row, ROW_PLACE]
        value = row_worth(
            P, I, B, G, R, Z, T, row, team, B[BX], B[BY], first_time, G[LINK_FROM], B[LINK_X], B[LINK_Y])  # fmt: skip
        if value <= 0:
            continue
        dx, dy = Z[goal, Z_X] - B[BX], Z[goal, Z_Y] - B[BY]
        if dx * dx + dy * dy > (RANGE_S * A[i, KICK_TOP]) ** 2:
            continue
        spread = SHOT_SPREAD * A[i, AIM_SD] * kick_strain(P, A, B, G, W, i, pressure, first_time, dx, dy)
        for corner in range(-1, 2):
            x = Z[goal, Z_X] + CORNER * corner * Z[goal, Z_HX]
            y = Z[goal, Z_Y] + CORNER * corner * Z[goal, Z_HY]
            p = goal_chance(I, A, R, Z, W, spots, team, goal, B[BX], B[BY], x, y, spread, SHOT_SHARE * A[i, KICK_TOP])
            worth = p * W[K_SHOOT] * value * plans[goal, team] - (1.0 - p) * W[K_SHOOT_LOSS]
            if worth > best:
                best, best_x, best_y = worth, x, y
    return best, best_x, best_y


@kernel
def chance_there(P, I, A, B, G, R, Z, T, W, plans, spots, i, j, x, y):
    """The chance of a calm shot at the middle of the best goal that receiving at (x, y) opens, points counted."""
    team, best = I[j, TEAM], 0.0
    if R[I[j, ROLE], R_KEEPS] >= 0.0:
        return best
    for row in range(T.shape[0]):
        if T[row, ROW_WHEN] != E_GOAL or T[row, ROW_DO] != D_POINTS or not actor_fits(I, T, row, j, team):
            continue
        goal = T[row, ROW_PLACE]
        gx, gy = Z[goal, Z_X], Z[goal, Z_Y]
        if (gx - x) ** 2 + (gy - y) ** 2 > (THINK_OF_S * A[j, KICK_TOP]) ** 2:
            continue
        speed = SHOT_SHARE * A[j, KICK_TOP]
        p = goal_chance(I, A, R, Z, W, spots, team, goal, x, y, gx, gy, SHOT_SPREAD * A[i, AIM_SD], speed)
        value = row_worth(P, I, B, G, R, Z, T, row, team, x, y, True, i, B[BX], B[BY])
        best = max(best, p * value * plans[goal, team])
    return best


@kernel_inlined
def goal_chance(I, A, R, Z, W, spots, team, goal, fx, fy, x, y, spread, speed):
    """Chance of a shot from (fx, fy) at (x, y) as its taker judges it: between the posts, past bodies and keeper."""
    dx, dy = x - fx, y - fy
    away = max(0.5, math.sqrt(dx * dx + dy * dy))
    ux, uy = dx / away, dy / away
    seen_as = abs(uy) if Z[goal, Z_HY] == 0.0 else abs(ux)
    half = (Z[goal, Z_HX] + Z[goal, Z_HY]) * seen_as
    off = (abs(x - Z[goal, Z_X]) + abs(y - Z[goal, Z_Y])) * seen_as
    wide = 1.4142 * spread * away
    p = 0.5 * (math.erf((half - off) / wide) + math.erf((half + off) / wide))
    for k in range(spots.shape[0]):
        if k >= I.shape[0] or I[k, TEAM] != 1 - team:
            continue
        ox, oy = spots[k, 0] - fx, spots[k, 1] - fy
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
