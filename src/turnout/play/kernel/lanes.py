"""What stands between a ball and where it should go: opponents near a lane, near a player; shelter."""

import math

from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_inlined
from turnout.play.kernel.ground import inside
from turnout.play.kernel.weights import *

STAND_OFF_S = 0.30  # a cutter is credited with this reaction, free
FULL_M = 0.7  # somebody within it: full pressure, free
DOUBLED = 0.8  # how much of their pressure further opponents add, free
ROOM_MOST_M = 8.0
DANGER_SHARE = 0.6  # of the root of the area


@kernel_inlined
def pressure_at(near_m, W):
    """Pressure on a player, 0 to 1, by how near the nearest opponent is."""
    return min(1.0, max(0.0, (W[K_FREE] - near_m) / (W[K_FREE] - FULL_M)))


@kernel_inlined
def pressure_on(I, places, team, x, y, W):
    """Pressure on a player of a team at (x, y), 0 to 1.5: the nearest opponent, and most of what the others add.

    places (players, 2 or more): where everybody is, or is believed to be
    """
    most, rest = 0.0, 0.0
    for k in range(I.shape[0]):
        if I[k, TEAM] == 1 - team:
            ox, oy = places[k, 0] - x, places[k, 1] - y
            p = pressure_at(math.sqrt(ox * ox + oy * oy), W)
            rest += min(p, most)
            most = max(p, most)
    return most + DOUBLED * min(1.0, rest)


@kernel_inlined
def lane_margin(P, I, A, R, W, spots, team, x, y, ax, ay, speed):
    """Metres to spare between a pass and the opponent best placed to cut it, as its player believes."""
    dx, dy = ax - x, ay - y
    length = math.sqrt(dx * dx + dy * dy)
    if length < 0.5:
        return 3.0
    ux, uy = dx / length, dy / length
    best = 3.0
    for k in range(P.shape[0]):
        if I[k, TEAM] != 1 - team or I[k, JOURNEY] == 1:
            continue
        ox, oy = spots[k, 0] - x, spots[k, 1] - y
        s = ox * ux + oy * uy
        if s < 0.2 or s > length + 2.0:
            continue
        across = abs(oy * ux - ox * uy)
        if s > length:
            across = math.sqrt(across * across + (s - length) * (s - length))
            s = length
        if across > 6.0:
            continue
        lag = max(0.0, s / (0.78 * speed) - STAND_OFF_S)
        run = 0.0 if R[I[k, ROLE], R_EDGE] >= 0.0 else W[K_LANE_RUN] * A[k, TOP] * lag * lag / (lag + 0.45)
        best = min(best, across - W[K_REACH] - run)
    return best


@kernel_inlined
def room_m(P, I, spots, team, x, y):
    """Metres from a point to the nearest believed opponent of a team, at most 8."""
    best = ROOM_MOST_M * ROOM_MOST_M
    for k in range(P.shape[0]):
        if I[k, TEAM] == 1 - team:
            ox, oy = spots[k, 0] - x, spots[k, 1] - y
            best = min(best, ox * ox + oy * oy)
    return math.sqrt(best)


@kernel
def sheltered(P, I, B, R, Z, L, player, ball_team):
    """Whether a sentence forbids tackling this player now."""
    for row in range(L.shape[0]):
        if L[row, L_WHAT] == NO_TACKLE and L[row, L_LIFTED] == 0 and (L[row, L_ROLES] >> I[player, ROLE]) & 1:
            place = L[row, L_PLACE]
            if place < 0 or inside(Z, place, P[player, X], P[player, Y], 0.0):
                return True
    return False


@kernel
def danger(x, y, B, Z, T, team):
    """How near (x, y) is to a goal the other side may shoot at, 0 to 1: there a lost ball is dearer."""
    most = 0.0
    for row in range(T.shape[0]):
        if T[row, ROW_WHEN] == E_GOAL and T[row, ROW_DO] == D_POINTS and T[row, ROW_WHO_SIDE] == 1 - team:
            goal = T[row, ROW_PLACE]
            away = math.sqrt((Z[goal, Z_X] - x) ** 2 + (Z[goal, Z_Y] - y) ** 2)
            most = max(most, 1.0 - away / (DANGER_SHARE * B[SQ]))
    return most
