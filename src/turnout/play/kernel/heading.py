"""Heading, where a sentence speaks of it: a ball too high for the feet is headed; elsewhere it is let drop."""

import math

from turnout.play.kernel.chance import DEFLECT, normal
from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel
from turnout.play.kernel.judging import happens, note
from turnout.play.kernel.owning import score
from turnout.play.kernel.touching import fresh_draws

HEAD_MPS, HEAD_SD, DOWN_MPS = 7.0, 0.22, 1.5  # speed and spread (rad) of a header, free
HEAD_AT_GOAL_M = 9.0  # from farther nobody heads at a goal, free
HEAD_SHARE = 0.25  # how sure it is that a ball played high is headed as it pays, free
NO_TOUCH_S = 0.4


@kernel
def head(P, I, B, G, R, Z, T, goals, edges, S, V, E, H, Q, runs, LOG, chance, who):
    """Head the ball at a goal of his side that is near, else down to the nearest team-mate."""
    team = I[who, TEAM]
    x, y, at_goal = head_aim(P, I, B, Z, goals, who)
    if team == G[BALL_TEAM] and G[PASS_ON] == 1 and G[PASSER] != who:
        G[LINK_FROM], G[LINK_TO], B[LINK_X], B[LINK_Y] = G[PASSER], who, B[KICK_X], B[KICK_Y]
    angle = math.atan2(y - B[BY], x - B[BX]) + HEAD_SD * normal(chance, DEFLECT * P.shape[0] + who)
    B[BVX], B[BVY], B[BVZ] = HEAD_MPS * math.cos(angle), HEAD_MPS * math.sin(angle), -DOWN_MPS
    B[ROLL_BELOW] = 0.7 * HEAD_MPS
    B[KICK_X], B[KICK_Y], B[T_KICKED] = B[BX], B[BY], B[NOW]
    G[KICK_FIRST], G[KICK_HEAD], G[SHOT] = 1, 1, 1 if at_goal else 0
    G[FLOWN] = G[LANDED] = 0
    G[LAST], G[LAST_TEAM], G[TARGET] = who, team, -1
    B[T_PLAN] = B[NOW]
    fresh_draws(P)
    P[who, T_NO_TOUCH] = B[NOW] + NO_TOUCH_S
    for j in range(P.shape[0]):
        I[j, CHASING] = -1
        P[j, T_REACT] = max(P[j, T_REACT], B[NOW] + 0.2)
    note(LOG, G, B, LOG_HEADER, who, -1, team, 1.0 if at_goal else 0.0)
    if at_goal:
        G[SHOOTER] = who
        S[who, S_SHOTS] += 1
        V[team, V_SHOTS] += 1
        note(LOG, G, B, LOG_SHOT, who, -1, team, HEAD_MPS)
        happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_SHOOT, who, team, -1, 0)
    if happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_HEAD, who, team, -1, 0):
        score(P, I, B, G, R, Z, T, edges, V, E, H, Q, runs, LOG, who, team)


@kernel
def head_aim(P, I, B, Z, goals, who):
    """Where a header is meant to go, and whether that is a goal."""
    for row in range(goals.shape[0]):
        side = goals[row, GOAL_SIDE]
        if goals[row, GOAL_HOW] != SHOOT_THERE or (side >= 0 and side != I[who, TEAM]):
            continue
        x, y = Z[goals[row, GOAL_PLACE], Z_X], Z[goals[row, GOAL_PLACE], Z_Y]
        if (x - B[BX]) ** 2 + (y - B[BY]) ** 2 < HEAD_AT_GOAL_M * HEAD_AT_GOAL_M:
            return x, y, True
    best, to_x, to_y = 1e18, Z[0, Z_X], Z[0, Z_Y]
    for j in range(P.shape[0]):
        gap = (P[j, X] - B[BX]) ** 2 + (P[j, Y] - B[BY]) ** 2
        if j != who and I[j, TEAM] == I[who, TEAM] and I[j, JOURNEY] == 0 and 4.0 < gap < best:
            best, to_x, to_y = gap, P[j, X], P[j, Y]
    return to_x, to_y, False


@kernel
def head_stake(I, Z, T, i, team, x, y):
    """Points a ball that comes high to (x, y) may bring by a header there."""
    most, near = 0.0, 0.0
    for row in range(T.shape[0]):
        side = T[row, ROW_WHO_SIDE]
        if T[row, ROW_DO] != D_POINTS or (side >= 0 and side != team):
            continue
        if T[row, ROW_WHEN] == E_HEAD:
            most = max(most, 1.0 * T[row, ROW_VALUE])
        elif T[row, ROW_WHEN] == E_GOAL:
            gx, gy = Z[T[row, ROW_PLACE], Z_X], Z[T[row, ROW_PLACE], Z_Y]
            if (gx - x) ** 2 + (gy - y) ** 2 < HEAD_AT_GOAL_M * HEAD_AT_GOAL_M:
                near = max(near, 1.0 * T[row, ROW_VALUE])
    for row in range(T.shape[0]):
        side = T[row, ROW_WHO_SIDE]
        if near > 0.0 and T[row, ROW_HOW] == MADE_HEAD and (side < 0 or side == team):
            most = max(most, T[row, ROW_VALUE] if T[row, ROW_DO] == D_COUNTS else near)
    return HEAD_SHARE * most
