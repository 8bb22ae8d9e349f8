"""Off the ball without it: one presses, the rest close the most dangerous lane nobody closes, as a block."""

import math

from turnout.play.kernel.carrying import sheltered
from turnout.play.kernel.chance import MARK, uniform
from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel
from turnout.play.kernel.ground import allowed
from turnout.play.kernel.seeing import believe
from turnout.play.kernel.weights import *

SHORT_M, LONG_M = 1.2, 3.2
BLOCK_GAP_M = 4.7
MARK_S = 0.2
SHELTER_OFF_M = 3.0
HYSTERESIS_M = 0.8


@kernel
def pick_presser(P, I, B, G, R, Z, L, W):
    """The nearest opponent who may go to the ball presses; the present presser keeps the job unless clearly farther."""
    now = B[NOW]
    if B[T_PRESS] > now + 0.5 * W[K_DT]:
        return
    B[T_PRESS] += 0.2
    team = 1 - G[BALL_TEAM]
    best, found = 1e18, -1
    for i in range(P.shape[0]):
        if I[i, TEAM] != team or I[i, JOURNEY] == 1 or R[I[i, ROLE], R_EDGE] >= 0.0:
            continue
        ax, ay = allowed(P, I, R, Z, L, B, G[BALL_TEAM], i, B[BX], B[BY], 0.2)
        off = math.sqrt((ax - B[BX]) ** 2 + (ay - B[BY]) ** 2)
        gap = math.sqrt((P[i, X] - ax) ** 2 + (P[i, Y] - ay) ** 2) + 2.0 * off
        if i == G[PRESSER_0 + team]:
            gap -= HYSTERESIS_M
        if gap < best:
            best, found = gap, i
    G[PRESSER_0 + team] = found
    G[PRESSER_0 + 1 - team] = -1


@kernel
def mark(P, I, A, B, G, R, Z, L, T, W, aim, seen, spots, lanes, chance):
    """Whoever is due and on the side without the ball presses or takes his place in the block."""
    now, players = B[NOW], P.shape[0]
    team = 1 - G[BALL_TEAM]
    for i in range(players):
        if I[i, TEAM] != team or P[i, T_DECIDE] > now + 0.5 * W[K_DT] or I[i, JOURNEY] == 1:
            continue
        P[i, T_DECIDE] += MARK_S * (0.8 + 0.4 * uniform(chance, MARK * players + i))
        if I[i, CHASING] == 1:
            continue
        if R[I[i, ROLE], R_EDGE] >= 0.0:
            P[i, TX], P[i, TY] = allowed(P, I, R, Z, L, B, G[BALL_TEAM], i, P[i, X], P[i, Y], 0.5)
            P[i, PACE] = 1.5
            continue
        believe(seen, i, now, 0.1, spots)
        if i == G[PRESSER_0 + team]:
            press(P, I, A, B, G, R, Z, L, W, spots, i)
        else:
            block(P, I, A, B, G, R, Z, L, T, W, aim, seen, spots, lanes, i)


@kernel
def press(P, I, A, B, G, R, Z, L, W, spots, i):
    """Close the ball on a curve that shadows the nearest pass; stand off a man who may not be tackled."""
    holder = G[HOLDER]
    bx, by = B[BX], B[BY]
    off = W[K_PRESS_OFF]
    if holder >= 0:
        bx, by = bx + 0.25 * P[holder, VX], by + 0.25 * P[holder, VY]
        if G[FREE] == 1:
            off = W[K_SET_OFF] * 0.8
        elif sheltered(P, I, B, R, Z, L, holder, I[holder, TEAM]):
            off = SHELTER_OFF_M
        elif R[I[holder, ROLE], R_EDGE] >= 0.0:
            off = 1.6
    best, mx, my = 1e18, 0.0, 0.0
    for j in range(P.shape[0]):
        if I[j, TEAM] == G[BALL_TEAM] and j != holder:
            gap = (spots[j, 0] - bx) ** 2 + (spots[j, 1] - by) ** 2
            if gap < best:
                best, mx, my = gap, spots[j, 0] - bx, spots[j, 1] - by
    gap = math.sqrt((P[i, X] - bx) ** 2 + (P[i, Y] - by) ** 2)
    ux, uy = ((P[i, X] - bx) / gap, (P[i, Y] - by) / gap) if gap > 1e-6 else (1.0, 0.0)
    shadow = min(1.2, max(0.0, 0.3 * (gap - 1.5)))
    length = math.sqrt(best)
    if length > 1e-6 and best < 1e17:
        x, y = bx + ux * off + mx / length * shadow, by + uy * off + my / length * shadow
    else:
        x, y = bx + ux * off, by + uy * off
    P[i, TX], P[i, TY] = allowed(P, I, R, Z, L, B, G[BALL_TEAM], i, x, y, 0.3)
    P[i, PACE] = A[i, TOP]


@kernel
def closes(x, y, bx, by, qx, qy):
    """How well a spot (x, y) closes the lane from the ball to q, 0 to 1; and how far short of q along it it stands."""
    lx, ly = qx - bx, qy - by
    length = math.sqrt(lx * lx + ly * ly)
    if length < 1e-6:
        return 0.0, 0.0
    sx, sy = x - bx, y - by
    s = (sx * lx + sy * ly) / length
    if s < 0.3 or s > length + 0.5:
        return 0.0, 0.0
    w = (sy * lx - sx * ly) / length / (0.8 + 0.12 * s)
    c = 1.0 / (1.0 + w * w)
    return c * c, length - s


@kernel
def block(P, I, A, B, G, R, Z, L, T, W, aim, seen, spots, lanes, i):
    """Nine spots: stay, a short or a long step; each judged by the dangerous lanes it closes that nobody closes yet."""
    players, team = P.shape[0], I[i, TEAM]
    now = B[NOW]
    px, py = P[i, X], P[i, Y]
    dangers = read_lanes(P, I, B, G, R, W, aim, seen, spots, lanes, i)
    best, best_x, best_y = -1e9, px, py
    step = SHORT_M if int(now / 0.2 + i) % 2 == 0 else LONG_M
    for way in range(9):
        x, y = px, py
        if way > 0:
            angle = 0.7853981633974483 * way + 0.39 * (i % 2)
            x, y = px + step * math.cos(angle), py + step * math.sin(angle)
        x, y = allowed(P, I, R, Z, L, B, G[BALL_TEAM], i, x, y, 0.5)
        mx, my = x - px, y - py
        worth = 0.06 if way == 0 else 0.0
        worth -= W[K_MARK_MOVE] * math.sqrt(mx * mx + my * my)
        worth += 0.05 * (mx * P[i, VX] + my * P[i, VY])
        worth -= W[K_MARK_BALL] * math.sqrt((x - B[BX]) ** 2 + (y - B[BY]) ** 2)
        for j in range(players):
            if j != i and I[j, TEAM] == team and R[I[j, ROLE], R_EDGE] < 0.0:
                gap2 = (spots[j, 0] - x) ** 2 + (spots[j, 1] - y) ** 2
                if gap2 < BLOCK_GAP_M * BLOCK_GAP_M:
                    worth -= W[K_MARK_MATE] * (BLOCK_GAP_M - math.sqrt(gap2))
        for lane in range(dangers):
            c, short = closes(x, y, B[BX], B[BY], lanes[lane, 0], lanes[lane, 1])
            if c > 0.02:
                worth += lanes[lane, 2] * c * (1.0 - 0.7 * min(1.0, abs(short - lanes[lane, 3]) / 6.0))
        worth += guard(I, T, Z, B, W, i, x, y)
        if worth > best:
            best, best_x, best_y = worth, x, y
    P[i, TX], P[i, TY] = best_x, best_y
    gap = math.sqrt((best_x - px) ** 2 + (best_y - py) ** 2)
    P[i, PACE] = min(0.78 * A[i, TOP], 0.7 + 0.9 * gap)


@kernel
def read_lanes(P, I, B, G, R, W, aim, seen, spots, lanes, i):
    """The lanes from the ball as player i sees them: end, danger nobody closes yet, how far off its man to stand."""
    bx, by, now, found = B[BX], B[BY], B[NOW], 0
    for j in range(P.shape[0]):
        if I[j, TEAM] == I[i, TEAM] or j == G[HOLDER] or I[j, JOURNEY] == 1:
            continue
        away = math.sqrt((spots[j, 0] - bx) ** 2 + (spots[j, 1] - by) ** 2)
        weight = 1.6 * 8.0 / (away + 6.0)
        side = I[j, TEAM]
        if aim[side, 0] != 0.0 or aim[side, 1] != 0.0:
            forward = ((spots[j, 0] - bx) * aim[side, 0] + (spots[j, 1] - by) * aim[side, 1]) / B[SQ]
            weight *= max(0.2, 0.8 + 1.2 * forward)
        taken = 0.0
        for k in range(P.shape[0]):
            if k != i and I[k, TEAM] == I[i, TEAM] and R[I[k, ROLE], R_EDGE] < 0.0:
                other, _ = closes(spots[k, 0], spots[k, 1], bx, by, spots[j, 0], spots[j, 1])
                taken = max(taken, other)
        speed = math.sqrt(seen[i, j, 2] ** 2 + seen[i, j, 3] ** 2)
        lanes[found, 0], lanes[found, 1] = spots[j, 0], spots[j, 1]
        lanes[found, 2] = weight * (1.0 - 0.91 * taken)
        lanes[found, 3] = 0.9 + 0.6 * (speed + 1.5 * min(1.0, now - seen[i, j, 4]))
        found += 1
    return found


@kernel
def guard(I, T, Z, B, W, i, x, y):
    """Worth of standing between the ball and a place where the other side scores."""
    worth = 0.0
    for row in range(T.shape[0]):
        when = T[row, ROW_WHEN]
        if T[row, ROW_DO] != D_POINTS or (when != E_RECEIVE and when != E_RUN_IN):
            continue
        if T[row, ROW_WHO_SIDE] == I[i, TEAM] or T[row, ROW_PLACE] < 0:
            continue
        place = T[row, ROW_PLACE]
        gx = Z[place, Z_X] + min(Z[place, Z_HX], max(-Z[place, Z_HX], B[BX] - Z[place, Z_X]))
        gy = Z[place, Z_Y] + min(Z[place, Z_HY], max(-Z[place, Z_HY], B[BY] - Z[place, Z_Y]))
        c, _ = closes(x, y, B[BX], B[BY], gx, gy)
        away = math.sqrt((gx - B[BX]) ** 2 + (gy - B[BY]) ** 2)
        worth += W[K_MARK_GOAL] * 0.5 * c * (0.4 + 1.6 * max(0.0, 1.0 - away / (0.8 * B[SQ])))
    return worth
