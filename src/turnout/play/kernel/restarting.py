"""Stops and starts: the ball is fetched, everybody walks to the nearest free start spot, the first pass is free."""

import math

from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel
from turnout.play.kernel.ground import allowed, edge_point, edge_share, inside, into
from turnout.play.kernel.judging import note
from turnout.play.kernel.lanes import danger
from turnout.play.kernel.owning import hold, open_spell, set_ball_team
from turnout.play.kernel.sides import players_in
from turnout.play.kernel.weights import *

FETCH_MPS = 5.0
READY_M = 2.0
WAIT_MOST_S = 8.0
SLIDE = 0.45
JOG_MPS = 3.4  # nobody runs to a restart faster, free
DROP_OFF_SHARE = 0.45  # as the retreat line of the youngest formats, of the root of the area; common practice


@kernel
def stop(P, I, B, G, R, Z, L, T, W, aim, starts, Q, runs, LOG, team, row, x, y):
    """Play stops; a side starts near (x, y), or where the sentence in `row` says; everybody is sent to a start spot."""
    team = who_starts(I, R, team)
    G[PHASE] = DEAD
    G[HOLDER], G[TARGET], G[PASS_ON], G[FIRST_TIME] = -1, -1, 0, 0
    G[SPELL_TEAM] = -1
    for side in range(runs.shape[0]):
        runs[side] = 0
    G[WANT_STOP] = G[SHOT] = G[HELD] = 0
    B[BVX], B[BVY], B[BVZ] = 0.0, 0.0, 0.0
    B[STOP_X] = 1e9
    for i in range(P.shape[0]):
        P[i, T_RUN] = 0.0
    B[T_DEAD] = B[NOW]
    B[T_KICK_AT] = 1e18
    G[START_TEAM] = team
    Q[Q_STOPS] += 1
    set_ball_team(I, G, R, team)
    start_spot(P, I, B, G, R, Z, T, team, row, x, y)
    take_spots(P, I, B, G, R, Z, L, T, W, aim, starts)
    note(LOG, G, B, LOG_STOP, G[TAKER], -1, team, 0)


@kernel
def who_starts(I, R, team):
    """The side that starts; where nobody plays for it, in a practice of one side, the other side starts again."""
    for i in range(I.shape[0]):
        if R[I[i, ROLE], R_WAITS] == 0.0 and R[I[i, ROLE], R_NEUTRAL] == 0.0 and int(R[I[i, ROLE], R_SIDE]) == team:
            return team
    return 1 - team


@kernel
def begins_at(I, Z, starts, balls):
    """Where a run begins: the middle of the area; with several balls the first place of each ball's own players."""
    if balls == 1:
        return Z[0, Z_X], Z[0, Z_Y]
    role = I[0, ROLE]
    number = players_in(I, role)
    return starts[role, number, 0, 0], starts[role, number, 0, 1]


@kernel
def start_spot(P, I, B, G, R, Z, T, team, row, x, y):
    """Where the ball is put and who takes it: the nearest player the sentence allows."""
    roles, edge, place = 0, 0, -1
    if row >= 0:
        roles, edge, place = T[row, ROW_A_ROLES], T[row, ROW_EDGE], T[row, ROW_WHERE]
    x, y = into(Z, 0, x, y, 0.2)
    if place >= 0:
        x, y = into(Z, place, x, y, 0.5)
        if edge == 1:
            x, y = edge_point(Z, place, edge_share(Z, place, x, y), 0.2)
    taker = nearest_taker(P, I, R, team, roles, edge, x, y)
    if taker < 0:
        taker = nearest_taker(P, I, R, team, 0, edge, x, y)
    G[TAKER] = taker
    if taker >= 0 and R[I[taker, ROLE], R_EDGE] >= 0.0:
        x, y = edge_point(Z, int(R[I[taker, ROLE], R_EDGE]), P[taker, EDGE_AT], 0.3)
    B[SPOT_BX], B[SPOT_BY] = x, y


@kernel
def nearest_taker(P, I, R, team, roles, edge, x, y):
    """The player of a side nearest a spot, of these roles if any are named; on an edge only where the edge is named."""
    best, taker = 1e18, -1
    for i in range(P.shape[0]):
        if I[i, TEAM] != team or (roles != 0 and (roles >> I[i, ROLE]) & 1 == 0):
            continue
        if R[I[i, ROLE], R_NEUTRAL] > 0.0 and roles == 0:
            continue
        gap = (P[i, X] - x) ** 2 + (P[i, Y] - y) ** 2
        if (edge == 1) != (R[I[i, ROLE], R_EDGE] >= 0.0):
            gap += 1e6
        if gap < best:
            best, taker = gap, i
    return taker


@kernel
def take_spots(P, I, B, G, R, Z, L, T, W, aim, starts):
    """Everybody of a role takes the nearest start spot of it nobody has taken; opponents stand off the ball."""
    players = P.shape[0]
    for role in range(R.shape[0]):
        number = 0
        for i in range(players):
            if I[i, ROLE] == role:
                number += 1
        number = min(number, starts.shape[1] - 1)
        for i in range(players):
            if I[i, ROLE] == role:
                P[i, SPOT_X] = 1e9
        for spot in range(number):
            x, y = starts[role, number, spot, 0], starts[role, number, spot, 1]
            side = int(R[role, R_SIDE])
            if (aim[side, 0] != 0.0 or aim[side, 1] != 0.0) and R[role, R_KEEPS] < 0.0:
                x += SLIDE * (B[SPOT_BX] - Z[0, Z_X])
                y += SLIDE * (B[SPOT_BY] - Z[0, Z_Y])
            best, who = 1e18, -1
            for i in range(players):
                if I[i, ROLE] == role and P[i, SPOT_X] > 1e8:
                    gap = (P[i, X] - x) ** 2 + (P[i, Y] - y) ** 2
                    if gap < best:
                        best, who = gap, i
            if who >= 0:
                P[who, SPOT_X], P[who, SPOT_Y] = x, y
    B[DANGER] = danger(B[SPOT_BX], B[SPOT_BY], B, Z, T, G[START_TEAM])
    for i in range(players):
        send(P, I, B, G, R, Z, L, W, i)


@kernel
def send(P, I, B, G, R, Z, L, W, i):
    """Send one player to his start spot: on his edge, off the ball for opponents, at the ball for the taker."""
    x, y = P[i, SPOT_X], P[i, SPOT_Y]
    edge = int(R[I[i, ROLE], R_EDGE])
    if i == G[TAKER]:
        x, y = B[SPOT_BX], B[SPOT_BY]
        if edge >= 0:
            x, y = edge_point(Z, edge, P[i, EDGE_AT], 0.5)
    elif edge >= 0 or x > 1e8:
        x, y = allowed(P, I, R, Z, L, B, G[BALL_TEAM], i, P[i, X], P[i, Y], 0.5)
        if edge >= 0:
            x, y = edge_point(Z, edge, P[i, EDGE_AT], 0.5)
    else:
        if I[i, TEAM] == 1 - G[START_TEAM]:
            off = min(W[K_SET_OFF], 0.33 * B[SQ])
            if B[DANGER] > 0.5:  # a start right before the own goal: the others drop off towards the middle
                off = DROP_OFF_SHARE * B[SQ]
            dx, dy = x - B[SPOT_BX], y - B[SPOT_BY]
            gap = math.sqrt(dx * dx + dy * dy)
            if gap < off:
                ux, uy = (dx / gap, dy / gap) if gap > 0.1 else (-B[SPOT_BX], -B[SPOT_BY])
                size = math.sqrt(ux * ux + uy * uy)
                if size > 1e-6:
                    x, y = B[SPOT_BX] + ux / size * off, B[SPOT_BY] + uy / size * off
        x, y = allowed(P, I, R, Z, L, B, G[BALL_TEAM], i, x, y, 0.8)
    P[i, SPOT_X], P[i, SPOT_Y] = x, y
    P[i, TX], P[i, TY] = x, y
    gap = math.sqrt((P[i, X] - x) ** 2 + (P[i, Y] - y) ** 2)
    P[i, PACE] = min(JOG_MPS, W[K_WALK] * (1.1 if i == G[TAKER] else 1.0) + 0.12 * max(0.0, gap - 4.0))
    I[i, CHASING] = 0


@kernel
def dead(P, I, A, B, G, R, Z, L, W, V, Q, LOG, dt):
    """One step of a stop: the ball is brought; when the taker is there and all are near their spots, play starts."""
    now = B[NOW]
    dx, dy = B[SPOT_BX] - B[BX], B[SPOT_BY] - B[BY]
    gap = math.sqrt(dx * dx + dy * dy)
    if gap > 0.02:
        way = min(1.0, FETCH_MPS * dt / gap)
        B[BX] += dx * way
        B[BY] += dy * way
    B[BZ] = max(0.0, B[BZ] - FETCH_MPS * dt)
    taker = G[TAKER]
    if taker < 0 or gap > 0.5 or B[BZ] > 0.0:
        return
    late = now - B[T_DEAD] > WAIT_MOST_S
    if math.sqrt((P[taker, X] - B[BX]) ** 2 + (P[taker, Y] - B[BY]) ** 2) > 0.75:
        return
    for i in range(P.shape[0]):
        away = (P[i, X] - P[i, SPOT_X]) ** 2 + (P[i, Y] - P[i, SPOT_Y]) ** 2
        if away > READY_M * READY_M and not late:
            return
    begin(P, I, A, B, G, R, Z, L, V, Q, LOG, taker)


@kernel
def begin(P, I, A, B, G, R, Z, L, V, Q, LOG, taker):
    """Play starts: the taker has the ball, the first pass is free, limits that were lifted hold again."""
    now = B[NOW]
    G[PHASE] = PLAY
    G[FREE] = 1
    G[TOUCHES] = 0
    G[PASSER] = -1
    G[LINK_FROM] = G[LINK_TO] = -1
    B[T_STARTED] = B[T_SCORED] = now
    for row in range(L.shape[0]):
        L[row, L_LIFTED] = 0
    for i in range(P.shape[0]):
        I[i, JOURNEY] = 0
        P[i, T_DECIDE] = max(P[i, T_DECIDE], now)
        P[i, T_NO_TOUCH] = now
        P[i, REACH_LEFT] = -1.0
        P[i, TACKLE_LEFT] = -1.0
        P[i, T_REACT] = now
    G[COMING_IN] = 0 if inside(Z, 0, B[BX], B[BY], B[OUT_GROW]) else 1
    B[T_PRESS] = now
    hold(P, I, B, G, A, R, Z, taker, 0.5)
    open_spell(G, I[taker, TEAM], 1)
    Q[Q_STARTS] += 1
    note(LOG, G, B, LOG_START, taker, -1, I[taker, TEAM], 0)
