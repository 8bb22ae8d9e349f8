"""Keepers: on the line from ball to goal, farther out with the danger far, out to narrow the angle when it is near."""

import math

from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel
from turnout.play.kernel.ground import allowed
from turnout.play.kernel.weights import *

KEEP_S = 0.15
OUT_SHARE, OUT_LEAST_M, OUT_MOST_M = 0.13, 0.6, 3.5  # how far off the line, free
RUSH_FROM_M, RUSH_SHARE = 7.0, 0.45  # a ball this near and at a foot: out towards it, free
WITH_BALL_SHARE, WITH_BALL_MOST_M = 0.3, 7.0  # own side has it: up behind them, free
PACE_SHARE = 0.7


@kernel
def keep(P, I, A, B, G, R, Z, L, W):
    """Whoever keeps a goal and is due takes his place."""
    now = B[NOW]
    for i in range(P.shape[0]):
        goal = int(R[I[i, ROLE], R_KEEPS])
        if goal < 0 or P[i, T_DECIDE] > now + 0.5 * W[K_DT] or i == G[HOLDER] or I[i, JOURNEY] == 1:
            continue
        P[i, T_DECIDE] += KEEP_S
        if I[i, CHASING] == 1 or i == G[TARGET]:
            continue
        dx, dy = B[BX] - Z[goal, Z_X], B[BY] - Z[goal, Z_Y]
        away = max(0.1, math.sqrt(dx * dx + dy * dy))
        out = min(OUT_MOST_M, max(OUT_LEAST_M, OUT_SHARE * away))
        if I[i, TEAM] == G[BALL_TEAM]:
            out = min(WITH_BALL_MOST_M, WITH_BALL_SHARE * away)
        elif away < RUSH_FROM_M and G[HOLDER] >= 0:
            out = max(out, RUSH_SHARE * away)
        x, y = Z[goal, Z_X] + dx / away * out, Z[goal, Z_Y] + dy / away * out
        P[i, TX], P[i, TY] = allowed(P, I, R, Z, L, B, G[BALL_TEAM], i, x, y, 0.2)
        P[i, PACE] = PACE_SHARE * A[i, TOP]
