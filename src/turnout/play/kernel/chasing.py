"""The race to a loose ball: after his own reaction each player sees whether he can meet it, and where."""

import math

from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_inlined
from turnout.play.kernel.ground import EDGE_OUT_M, allowed, along_edge, edge_point, edge_share
from turnout.play.kernel.rolling import PATH_STEP_S, PATH_STEPS, predict
from turnout.play.kernel.weights import *

TOO_LATE_S = 0.5
TIGHT_S, RUN_THROUGH_M = 0.15, 0.7
PLAYABLE_M = 1.2
PAST_M, LATE_CUT_S = 1.0, 0.2
SPARE_PACE_MPS, HURRY = 0.8, 1.3  # nobody sprints to a ball he reaches in time anyway, free
START_LAG_S = 0.1  # the ease with which a change of speed begins, about W[EASE]


@kernel
def chase(P, I, A, B, G, R, Z, L, W, path):
    """Whoever has answered the kick and not yet decided goes for the ball, or leaves it."""
    now = B[NOW]
    if B[T_PLAN] <= now + 0.5 * W[K_DT]:
        B[T_PLAN] = now + 0.3
        for i in range(P.shape[0]):
            I[i, CHASING] = -1
    planned = False
    for i in range(P.shape[0]):
        if I[i, CHASING] != -1 or P[i, T_REACT] > now + 0.5 * W[K_DT] or I[i, JOURNEY] == 1:
            continue
        if not planned:
            predict(B, W, path)
            planned = True
        meet(P, I, A, B, G, R, Z, L, W, path, i)


@kernel
def meet(P, I, A, B, G, R, Z, L, W, path, i):
    """Find the first point of the ball's way a player can reach in time; go there if it is his ball to go for."""
    best_late, at, x, y, ax, ay = 1e9, -1, 0.0, 0.0, 0.0, 0.0
    cuts = G[TARGET] >= 0 and I[i, TEAM] != G[BALL_TEAM]
    before = 1e9
    for step in range(PATH_STEPS):
        px, py = path[step, 0], path[step, 1]
        if cuts:  # a pass is cut out before its receiver or not at all; past him, he is closed down instead
            off = (px - B[PRESS_X]) * (px - B[PRESS_X]) + (py - B[PRESS_Y]) * (py - B[PRESS_Y])
            if off > before and off > PAST_M * PAST_M:
                break
            before = off
        if path[step, 2] > PLAYABLE_M:
            continue
        late = arrival_s(P, A, W, i, px, py) - (step + 1) * PATH_STEP_S
        if late >= best_late or (late > TOO_LATE_S and step < PATH_STEPS - 1):
            continue
        edge = int(R[I[i, ROLE], R_EDGE])
        if edge >= 0:  # for a ball that comes along it, an edge player leaves his own stretch of the edge
            qx, qy = edge_point(Z, edge, edge_share(Z, edge, px, py), EDGE_OUT_M)
        else:
            qx, qy = allowed(P, I, R, Z, L, B, G[BALL_TEAM], i, px, py, 0.15)
        if (qx - px) * (qx - px) + (qy - py) * (qy - py) > 0.7 * W[K_REACH] * W[K_REACH]:
            continue
        best_late, at, x, y, ax, ay = late, step, px, py, qx, qy
        if late <= 0.0:
            break
    I[i, CHASING] = 0
    if at < 0 or (cuts and best_late > LATE_CUT_S):
        return
    if i != G[TARGET]:
        if I[i, TEAM] == G[BALL_TEAM] and G[TARGET] >= 0:
            return
        if nearer_mate(P, I, A, W, i, x, y):
            return
    I[i, CHASING] = 1
    edge = int(R[I[i, ROLE], R_EDGE])
    if edge >= 0:
        ax, ay = along_edge(Z, edge, P[i, X], P[i, Y], edge_share(Z, edge, ax, ay))
    elif best_late > -TIGHT_S:  # no time to stop there: run through the meeting point
        gap = math.sqrt((ax - P[i, X]) ** 2 + (ay - P[i, Y]) ** 2)
        beyond = RUN_THROUGH_M / max(gap, RUN_THROUGH_M)
        ax, ay = ax + (ax - P[i, X]) * beyond, ay + (ay - P[i, Y]) * beyond
        ax, ay = allowed(P, I, R, Z, L, B, G[BALL_TEAM], i, ax, ay, 0.1)
    P[i, TX], P[i, TY] = ax, ay
    gap = math.sqrt((ax - P[i, X]) ** 2 + (ay - P[i, Y]) ** 2)
    P[i, PACE] = min(A[i, TOP], SPARE_PACE_MPS + HURRY * gap / max(0.2, (at + 1) * PATH_STEP_S - START_LAG_S))


@kernel_inlined
def arrival_s(P, A, W, i, x, y):
    """Seconds a player needs to get his foot to a point, given the way he is already moving."""
    dx, dy = x - P[i, X] - 0.25 * P[i, VX], y - P[i, Y] - 0.25 * P[i, VY]
    gap = max(0.0, math.sqrt(dx * dx + dy * dy) - W[K_REACH] * 0.8)
    top, push = A[i, TOP], A[i, ACCEL]
    if gap < top * top / (2.0 * push):
        return math.sqrt(2.0 * gap / push) + START_LAG_S * min(1.0, gap)
    return gap / top + top / (2.0 * push) + START_LAG_S


@kernel
def nearer_mate(P, I, A, W, i, x, y):
    """Whether two team-mates, or one clearly, get there before this player."""
    mine = arrival_s(P, A, W, i, x, y)
    for j in range(P.shape[0]):
        if j != i and I[j, TEAM] == I[i, TEAM] and I[j, JOURNEY] == 0:
            if arrival_s(P, A, W, j, x, y) < mine - 0.12 or (I[j, CHASING] == 1 and j < i):
                return True
    return False
