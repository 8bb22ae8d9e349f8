"""Off the ball with the ball: a spot with a clear lane, room, distance from mates; moving has its price."""

import math

from turnout.play.kernel.chance import SUPPORT, noise, uniform
from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_inlined
from turnout.play.kernel.ground import allowed
from turnout.play.kernel.seeing import believe
from turnout.play.kernel.weights import *

SIXTH = 1.0471975511965976  # a sixth of a turn
NEAR_RING_M, FAR_RING_M = 1.5, 3.4
LOOK_AHEAD_S = 0.24
SET_S, SET_PACE = 0.2, 0.45  # when the man on the ball looks up, slow down to be set for the pass, free
LANE_CAP_M = 2.3
CLOSE_TO_BALL_M = 3.9
FIRM_PASS_M = 14.0


@kernel
def support(P, I, A, B, G, R, Z, L, W, aim, seen, spots, chance):
    """Whoever is due and on the side with the ball picks where to be next."""
    now, team, players = B[NOW], G[BALL_TEAM], P.shape[0]
    last = -2
    for i in range(players):
        if I[i, TEAM] != team or i == G[HOLDER] or P[i, T_DECIDE] > now + 0.5 * W[K_DT] or I[i, JOURNEY] == 1:
            continue
        P[i, T_DECIDE] += A[i, MOVE_S] * (0.8 + 0.4 * uniform(chance, SUPPORT * players + i))
        if I[i, CHASING] == 1 or i == G[TARGET]:
            continue
        if last == -2:
            last = rear_man(P, I, G, aim, team)
        believe(seen, i, now, LOOK_AHEAD_S, spots)
        best_spot(P, I, A, B, G, R, Z, L, W, aim, spots, chance, i, i == last)


@kernel
def rear_man(P, I, G, aim, team):
    """In a directional game the player least far forward stays behind the ball; -1 without direction."""
    if aim[team, 0] == 0.0 and aim[team, 1] == 0.0:
        return -1
    best, found = 1e18, -1
    for i in range(P.shape[0]):
        if I[i, TEAM] == team and i != G[HOLDER]:
            forward = P[i, X] * aim[team, 0] + P[i, Y] * aim[team, 1]
            if forward < best:
                best, found = forward, i
    return found


@kernel
def best_spot(P, I, A, B, G, R, Z, L, W, aim, spots, chance, i, rear):
    """Compare staying with six spots on a near or a far ring (by chance), and set the run."""
    players = P.shape[0]
    ring = NEAR_RING_M if uniform(chance, SUPPORT * players + i) < 0.5 else FAR_RING_M
    turn = uniform(chance, SUPPORT * players + i) * SIXTH
    best, best_x, best_y = -1e9, P[i, X], P[i, Y]
    for way in range(7):
        x, y = P[i, X], P[i, Y]
        if way > 0:
            angle = turn + SIXTH * way
            x, y = x + ring * math.cos(angle), y + ring * math.sin(angle)
        x, y = allowed(P, I, R, Z, L, B, G[BALL_TEAM], i, x, y, 1.1)
        worth = spot_worth(P, I, B, G, W, aim, spots, i, x, y, rear)
        if way == 0:
            stood = B[NOW] - P[i, T_STOOD]
            worth += W[K_SUP_STAY] if stood < 2.5 else -W[K_SUP_STAY]
        if A[i, SPOT_NOISE] > 0.0:
            worth += A[i, SPOT_NOISE] * noise(chance, SUPPORT * players + i)
        if worth > best:
            best, best_x, best_y = worth, x, y
    gap = math.sqrt((best_x - P[i, X]) ** 2 + (best_y - P[i, Y]) ** 2)
    P[i, TX], P[i, TY] = best_x, best_y
    P[i, PACE] = A[i, MOVE_PACE] * A[i, TOP] * min(1.0, 0.3 + 0.25 * gap)
    if G[HOLDER] >= 0 and B[NOW] > B[T_READY] - SET_S:
        P[i, PACE] *= SET_PACE


@kernel_inlined
def spot_worth(P, I, B, G, W, aim, spots, i, x, y, rear):
    """Worth of a spot: lane, room, spread, distance to the ball, ground gained, price of the way there."""
    team = I[i, TEAM]
    bx, by = B[BX], B[BY]
    dx, dy = x - bx, y - by
    to_ball = math.sqrt(dx * dx + dy * dy)
    ux, uy = (dx / to_ball, dy / to_ball) if to_ball > 1e-6 else (0.0, 0.0)
    lane, opponent, mate = LANE_CAP_M, 25.0, 1e9
    for j in range(P.shape[0]):
        if j == i:
            continue
        ox, oy = spots[j, 0] - x, spots[j, 1] - y
        away2 = ox * ox + oy * oy
        if I[j, TEAM] == team:
            mate = min(mate, away2)
            continue
        opponent = min(opponent, away2)
        sx, sy = spots[j, 0] - bx, spots[j, 1] - by
        s = sx * ux + sy * uy
        if 0.3 < s < to_ball:
            lane = min(lane, abs(sy * ux - sx * uy) * (1.0 + 0.6 * max(0.0, 1.0 - s / 4.0)))
    worth = W[K_SUP_GAP] * lane + W[K_SUP_OPP] * min(math.sqrt(opponent), 4.0)
    worth -= W[K_SUP_MATE] * max(0.0, 0.27 * B[SQ] - math.sqrt(mate))
    worth -= W[K_SUP_BALL] * max(0.0, CLOSE_TO_BALL_M - to_ball)
    worth -= W[K_SUP_FAR] * max(0.0, to_ball - FIRM_PASS_M)
    forward = (dx * aim[team, 0] + dy * aim[team, 1]) / B[SQ]
    if rear:
        worth -= 2.0 * abs(forward + 0.2)
    else:
        worth += W[K_SUP_FORWARD] * min(forward, 0.35)
    mx, my = x - P[i, X], y - P[i, Y]
    worth -= W[K_SUP_MOVE] * math.sqrt(mx * mx + my * my)
    return worth + 0.02 * (mx * P[i, VX] + my * P[i, VY])
