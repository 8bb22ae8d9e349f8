"""Off the ball without it: one presses, the rest close the most dangerous lane nobody closes, as a block."""

import math

from turnout.play.kernel.chance import MARK, uniform
from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_inlined
from turnout.play.kernel.ground import allowed
from turnout.play.kernel.lanes import sheltered
from turnout.play.kernel.pacing import press_pace
from turnout.play.kernel.seeing import believe
from turnout.play.kernel.weights import *

SIXTH = 1.0471975511965976  # a sixth of a turn
SHORT_M, LONG_M = 1.2, 3.2
BLOCK_GAP_M = 4.7
MARK_S = 0.2
SHELTER_OFF_M = 3.0
EDGE_OFF_M = 1.2
MAN_MATTERS = 0.85
LAST_MOST_M = 6.0


@kernel
def mark(P, I, A, B, G, R, Z, L, goals, W, aim, plans, seen, spots, lanes, chance):
    """Whoever is due and on the side without the ball presses or takes his place in the block."""
    now, players = B[NOW], P.shape[0]
    team = 1 - G[BALL_TEAM]
    for i in range(players):
        if I[i, TEAM] != team or P[i, T_DECIDE] > now + 0.5 * W[K_DT] or I[i, JOURNEY] == 1:
            continue
        P[i, T_DECIDE] += MARK_S * (0.8 + 0.4 * uniform(chance, MARK * players + i))
        if I[i, CHASING] == 1 or R[I[i, ROLE], R_KEEPS] >= 0.0:
            continue
        if R[I[i, ROLE], R_EDGE] >= 0.0:
            P[i, TX], P[i, TY] = allowed(P, I, R, Z, L, B, G[BALL_TEAM], i, P[i, X], P[i, Y], 0.5)
            P[i, PACE] = 1.5
            continue
        believe(seen, i, now, 0.1, spots)
        second = i == G[SECOND_0 + team] and i != G[LAST_MAN]
        if i == G[PRESSER_0 + team] or (second and second_comes(P, I, B, G, R, W, team, i)):
            press(P, I, A, B, G, R, Z, L, W, aim, spots, i)
        elif i == G[LAST_MAN]:
            stay_last(P, I, A, B, G, R, Z, L, goals, W, i)
        else:
            block(P, I, A, B, G, R, Z, L, goals, W, aim, plans, seen, spots, lanes, i)


@kernel
def second_comes(P, I, B, G, R, W, team, i):
    """Two press just after a loss, with men over, a carrier who has kept it long, and a ball within their reach."""
    if (P[i, X] - B[BX]) ** 2 + (P[i, Y] - B[BY]) ** 2 < W[K_SWARM] * W[K_SWARM]:
        return True
    if B[NOW] - B[T_LOST_0 + team] < W[K_COUNTER_S] or men_over(P, I, R, team) > 0:
        return True
    return G[HOLDER] >= 0 and B[NOW] - B[T_HELD] > W[K_DOUBLE_S]


@kernel
def men_over(P, I, R, team):
    """How many more a side has in play than the other, edge players and keepers apart."""
    over = 0
    for j in range(P.shape[0]):
        if I[j, JOURNEY] == 0 and R[I[j, ROLE], R_EDGE] < 0.0 and R[I[j, ROLE], R_KEEPS] < 0.0:
            over += 1 if I[j, TEAM] == team else -1 if I[j, TEAM] == 1 - team else 0
    return over


@kernel
def stay_last(P, I, A, B, G, R, Z, L, goals, W, i):
    """The last man stands between the ball and the goal it is nearest to."""
    best, gx, gy = 1e18, 0.0, 0.0
    for goal in range(goals.shape[0]):
        if goals[goal, GOAL_HOW] == SHOOT_THERE and goals[goal, GOAL_SIDE] != I[i, TEAM]:
            place = goals[goal, GOAL_PLACE]
            gap = (B[BX] - Z[place, Z_X]) ** 2 + (B[BY] - Z[place, Z_Y]) ** 2
            if gap < best:
                best, gx, gy = gap, Z[place, Z_X], Z[place, Z_Y]
    away = max(0.1, math.sqrt(best))
    out = min(LAST_MOST_M, W[K_LAST_OUT] * away)
    x, y = gx + (B[BX] - gx) / away * out, gy + (B[BY] - gy) / away * out
    P[i, TX], P[i, TY] = allowed(P, I, R, Z, L, B, G[BALL_TEAM], i, x, y, 0.5)
    gap = math.sqrt((P[i, TX] - P[i, X]) ** 2 + (P[i, TY] - P[i, Y]) ** 2)
    P[i, PACE] = min(0.9 * A[i, TOP], 0.7 + 0.9 * gap)


@kernel
def outnumbered(P, I, B, G, aim, i):
    """Whether a presser in a directional game is alone goal side with two or more attackers about."""
    team = I[i, TEAM]
    ux, uy = aim[1 - team, 0], aim[1 - team, 1]
    if ux == 0.0 and uy == 0.0:
        return False
    mates, attackers = 0, 0
    for j in range(P.shape[0]):
        gap2 = (P[j, X] - B[BX]) ** 2 + (P[j, Y] - B[BY]) ** 2
        ahead = (P[j, X] - B[BX]) * ux + (P[j, Y] - B[BY]) * uy
        if I[j, TEAM] == team and j != i and gap2 < 49.0 and ahead > -1.0:
            mates += 1
        elif I[j, TEAM] == 1 - team and gap2 < 81.0:
            attackers += 1
    return mates == 0 and attackers >= 2


@kernel
def press(P, I, A, B, G, R, Z, L, W, aim, spots, i):
    """Close the ball on a curve that shadows the nearest pass; stand off a man who may not be tackled."""
    holder = G[HOLDER]
    bx, by = B[BX], B[BY]
    off = W[K_PRESS_OFF]
    if holder < 0 and G[PASS_ON] == 1 and P[i, T_REACT] <= B[NOW]:
        bx, by = B[PRESS_X], B[PRESS_Y]  # close the receiver down while the ball travels
    if holder >= 0:
        bx, by = bx + 0.25 * P[holder, VX], by + 0.25 * P[holder, VY]
        if G[FREE] == 1:
            off = W[K_SET_OFF] * 0.8
        elif sheltered(P, I, B, R, Z, L, holder, I[holder, TEAM]):
            off = SHELTER_OFF_M
        elif R[I[holder, ROLE], R_EDGE] >= 0.0:
            off = EDGE_OFF_M
        elif outnumbered(P, I, B, G, aim, i):
            off = W[K_DELAY]
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
    P[i, PACE] = press_pace(A, W, i, gap)


@kernel_inlined
def closes(sx, sy, ux, uy, length):
    """How well a spot at (sx, sy) from the ball closes the lane (ux, uy), 0 to 1, and how far along it is."""
    s = sx * ux + sy * uy
    if s < 0.3 or s > length + 0.5:
        return 0.0, 0.0
    w = (sy * ux - sx * uy) / (0.8 + 0.12 * s)
    c = 1.0 / (1.0 + w * w)
    return c * c, s


@kernel
def block(P, I, A, B, G, R, Z, L, goals, W, aim, plans, seen, spots, lanes, i):
    """Seven spots: stay, a short or a long step; each judged by the lanes it closes that nobody closes yet."""
    players, team, bx, by = P.shape[0], I[i, TEAM], B[BX], B[BY]
    px, py = P[i, X], P[i, Y]
    dangers = read_lanes(P, I, B, G, R, W, aim, seen, spots, lanes, i)
    dangers = read_goals(I, goals, Z, B, W, plans, lanes, dangers, i)
    best, best_x, best_y = -1e9, px, py
    step = SHORT_M if int(B[NOW] / 0.2 + i) % 2 == 0 else LONG_M
    for way in range(7):
        x, y = px, py
        if way > 0:
            angle = SIXTH * way + 0.52 * (i % 2)
            x, y = px + step * math.cos(angle), py + step * math.sin(angle)
        x, y = allowed(P, I, R, Z, L, B, G[BALL_TEAM], i, x, y, 0.5)
        mx, my, sx, sy = x - px, y - py, x - bx, y - by
        worth = 0.06 if way == 0 else 0.0
        worth -= W[K_MARK_MOVE] * math.sqrt(mx * mx + my * my) + W[K_MARK_BALL] * math.sqrt(sx * sx + sy * sy)
        worth += 0.05 * (mx * P[i, VX] + my * P[i, VY])
        for j in range(players):
            if j != i and I[j, TEAM] == team:
                gap2 = (spots[j, 0] - x) ** 2 + (spots[j, 1] - y) ** 2
                if gap2 < BLOCK_GAP_M * BLOCK_GAP_M and R[I[j, ROLE], R_EDGE] < 0.0:
                    worth -= W[K_MARK_MATE] * (BLOCK_GAP_M - math.sqrt(gap2))
        for lane in range(dangers):
            c, along = closes(sx, sy, lanes[lane, 0], lanes[lane, 1], lanes[lane, 2])
            if c > 0.02:
                off = abs(lanes[lane, 2] - along - lanes[lane, 4]) / 6.0
                worth += lanes[lane, 3] * c * (1.0 - lanes[lane, 5] * min(1.0, off))
        if worth > best:
            best, best_x, best_y = worth, x, y
    P[i, TX], P[i, TY] = best_x, best_y
    gap = math.sqrt((best_x - px) ** 2 + (best_y - py) ** 2)
    P[i, PACE] = min(0.78 * A[i, TOP], 0.7 + 0.9 * gap)


@kernel
def read_lanes(P, I, B, G, R, W, aim, seen, spots, lanes, i):
    """The lanes from the ball as player i sees them: direction, length, danger nobody closes yet, how far off its man.

    lanes (players + goals, 6): ux, uy, length m, worth of closing it, distance to keep from its end m, how much that
    distance matters.
    """
    bx, by, now, found = B[BX], B[BY], B[NOW], 0
    for j in range(P.shape[0]):
        if I[j, TEAM] != 1 - I[i, TEAM] or j == G[HOLDER] or I[j, JOURNEY] == 1:
            continue
        dx, dy = spots[j, 0] - bx, spots[j, 1] - by
        away = max(0.01, math.sqrt(dx * dx + dy * dy))
        weight = 1.6 * 8.0 / (away + 6.0)
        side = I[j, TEAM]
        if aim[side, 0] != 0.0 or aim[side, 1] != 0.0:
            weight *= max(0.2, 0.8 + 1.2 * (dx * aim[side, 0] + dy * aim[side, 1]) / B[SQ])
        taken = 0.0
        for k in range(P.shape[0]):
            if k != i and I[k, TEAM] == I[i, TEAM] and R[I[k, ROLE], R_EDGE] < 0.0:
                other, _ = closes(spots[k, 0] - bx, spots[k, 1] - by, dx / away, dy / away, away)
                taken = max(taken, other)
        speed = math.sqrt(seen[i, j, 2] ** 2 + seen[i, j, 3] ** 2)
        lanes[found, 0], lanes[found, 1], lanes[found, 2] = dx / away, dy / away, away
        lanes[found, 3] = weight * (1.0 - 0.91 * taken)
        lanes[found, 4] = W[K_TIGHT] + W[K_CUSHION] * (speed + min(1.0, now - seen[i, j, 4]))
        lanes[found, 5] = MAN_MATTERS
        found += 1
    return found


@kernel
def read_goals(I, goals, Z, B, W, plans, lanes, found, i):
    """The lanes from the ball to places where the other side scores: nearer ones are worth more to guard."""
    for goal in range(goals.shape[0]):
        if goals[goal, GOAL_SIDE] == I[i, TEAM]:
            continue
        place = goals[goal, GOAL_PLACE]
        dx = Z[place, Z_X] + min(Z[place, Z_HX], max(-Z[place, Z_HX], B[BX] - Z[place, Z_X])) - B[BX]
        dy = Z[place, Z_Y] + min(Z[place, Z_HY], max(-Z[place, Z_HY], B[BY] - Z[place, Z_Y])) - B[BY]
        away = max(0.01, math.sqrt(dx * dx + dy * dy))
        lanes[found, 0], lanes[found, 1], lanes[found, 2] = dx / away, dy / away, away
        near = max(0.0, 1.0 - away / (0.8 * B[SQ]))
        lanes[found, 3] = W[K_MARK_GOAL] * plans[place, GUARD_0 + I[i, TEAM]] * (0.4 + 1.6 * near)
        lanes[found, 4], lanes[found, 5] = 0.0, 0.0
        found += 1
    return found
