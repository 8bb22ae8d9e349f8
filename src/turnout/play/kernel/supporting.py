"""Off the ball with the ball: a spot with a clear lane, room, distance from mates; moving has its price."""

import math

from turnout.play.kernel.chance import SUPPORT, noise, uniform
from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_inlined
from turnout.play.kernel.counting import clears, gather_m
from turnout.play.kernel.gates import behind_gate, next_gate
from turnout.play.kernel.ground import allowed
from turnout.play.kernel.judging import actor_fits
from turnout.play.kernel.kicking import LOFT_LANDS
from turnout.play.kernel.pacing import FIRM_PASS_M, price_of_moving, support_pace
from turnout.play.kernel.seeing import believe
from turnout.play.kernel.shape import REAR_MAN
from turnout.play.kernel.weights import *

SIXTH = 1.0471975511965976  # a sixth of a turn
NEAR_RING_M, FAR_RING_M = 1.5, 3.4
LOOK_AHEAD_S = 0.24
LANE_CAP_M = 2.3
CLOSE_TO_BALL_M = 3.9
WIDE_SHARE = 0.72
BEHIND_GATE_M = 2.5
TIGHT_M, CHECK_M, CHECK_SHARE = 1.5, 2.2, 0.15  # check away: how tight, how far, how often, free
BUNCH = 0.6  # share of the wish to keep off the ball and mates in a child who runs hard at everything, free
ROOMY_M = 26.0  # on a larger pitch both rings grow with it, free
TOGETHER = 0.3  # worth of a metre nearer to where a guard on scores wants everybody, free
BEYOND = 0.8  # worth of standing beyond a place a pass over it scores, free
RUN_PACE = 1.4  # a run is faster than support, free
GIVE_AND_GO_M = 5.0  # how far a passer runs on for a one-two, free
THIRD_MAN_M, RUN_ON_M, RUN_S = 14.0, 7.0, 1.3  # third man: from how near, how far, how long, free


@kernel
def support(P, I, A, B, G, R, Z, L, T, W, aim, seen, spots, chance):
    """Whoever is due and on the side with the ball picks where to be next."""
    now, team, players = B[NOW], G[BALL_TEAM], P.shape[0]
    for i in range(players):
        if I[i, TEAM] != team or i == G[HOLDER] or P[i, T_DECIDE] > now + 0.5 * W[K_DT] or I[i, JOURNEY] == 1:
            continue
        P[i, T_DECIDE] += A[i, MOVE_S] * (0.8 + 0.4 * uniform(chance, SUPPORT * players + i))
        if I[i, CHASING] == 1 or i == G[TARGET] or P[i, T_RUN] > now or R[I[i, ROLE], R_KEEPS] >= 0.0:
            continue
        gate = next_gate(I, B, G, Z, L, T, i, team, B[BX], B[BY])
        if gate >= 0:
            show_behind(P, I, A, B, G, R, Z, L, gate, i)
            continue
        believe(seen, i, now, LOOK_AHEAD_S, spots)
        if check_away(P, I, A, B, G, R, Z, L, spots, chance, i):
            continue
        best_spot(P, I, A, B, G, R, Z, L, T, W, aim, spots, chance, i)


@kernel
def show_behind(P, I, A, B, G, R, Z, L, gate, i):
    """Where a pass through a gate scores, the next receiver shows himself behind it."""
    x, y = behind_gate(Z, gate, B[BX], B[BY], BEHIND_GATE_M)
    P[i, TX], P[i, TY] = allowed(P, I, R, Z, L, B, G[BALL_TEAM], i, x, y, 0.5)
    P[i, PACE] = A[i, MOVE_PACE] * A[i, TOP]


@kernel
def check_away(P, I, A, B, G, R, Z, L, spots, chance, i):
    """Tightly marked: two steps away to the marker's blind side, so that coming back finds room; True if so."""
    if uniform(chance, SUPPORT * P.shape[0] + i) > CHECK_SHARE or G[HOLDER] < 0 or R[I[i, ROLE], R_EDGE] >= 0.0:
        return False
    best, marker = TIGHT_M * TIGHT_M, -1
    for j in range(P.shape[0]):
        gap = (spots[j, 0] - P[i, X]) ** 2 + (spots[j, 1] - P[i, Y]) ** 2
        if I[j, TEAM] == 1 - I[i, TEAM] and gap < best:
            best, marker = gap, j
    if marker < 0:
        return False
    dx, dy = P[i, X] - B[BX], P[i, Y] - B[BY]
    away = max(0.1, math.sqrt(dx * dx + dy * dy))
    side = 1.0 if dx * (spots[marker, 1] - P[i, Y]) - dy * (spots[marker, 0] - P[i, X]) < 0.0 else -1.0
    x = P[i, X] + CHECK_M * (0.6 * dx - 0.8 * side * dy) / away
    y = P[i, Y] + CHECK_M * (0.6 * dy + 0.8 * side * dx) / away
    P[i, TX], P[i, TY] = allowed(P, I, R, Z, L, B, G[BALL_TEAM], i, x, y, 1.1)
    P[i, PACE] = min(0.6, A[i, MOVE_PACE]) * A[i, TOP]
    return True


@kernel
def third_man(P, I, A, B, G, R, Z, L, W, aim, chance):
    """On a pass in a directional game somebody ahead of it who is not its receiver may run on beyond it."""
    team, passer, target = G[BALL_TEAM], G[PASSER], G[TARGET]
    ux, uy = aim[team, 0], aim[team, 1]
    if (ux == 0.0 and uy == 0.0) or target < 0 or uniform(chance, SUPPORT * P.shape[0] + passer) > W[K_RUN]:
        return
    best, runner = -1e9, -1
    for j in range(P.shape[0]):
        if j == target or I[j, TEAM] != team or I[j, WIDE] == REAR_MAN or R[I[j, ROLE], R_KEEPS] >= 0.0:
            continue
        ahead = (P[j, X] - B[AIM_X]) * ux + (P[j, Y] - B[AIM_Y]) * uy
        away = math.sqrt((P[j, X] - B[AIM_X]) ** 2 + (P[j, Y] - B[AIM_Y]) ** 2)
        if ahead > -4.0 and away < THIRD_MAN_M and ahead > best and R[I[j, ROLE], R_EDGE] < 0.0 and I[j, JOURNEY] == 0:
            best, runner = ahead, j
    if runner < 0:
        return
    x, y = P[runner, X] + RUN_ON_M * ux, P[runner, Y] + RUN_ON_M * uy
    P[runner, TX], P[runner, TY] = allowed(P, I, R, Z, L, B, team, runner, x, y, 1.1)
    P[runner, PACE] = min(0.95, RUN_PACE * A[runner, MOVE_PACE]) * A[runner, TOP]
    P[runner, T_RUN] = B[NOW] + RUN_S


@kernel_inlined
def landing(B, x, y):
    """Where a lofted ball played to (x, y) comes down first."""
    return B[BX] + LOFT_LANDS * (x - B[BX]), B[BY] + LOFT_LANDS * (y - B[BY])


@kernel
def give_and_go(P, I, A, B, G, R, Z, L, aim, passer):
    """Where a one-two pays the passer runs on: forward where his side has a direction, else aside."""
    dx, dy = B[AIM_X] - P[passer, X], B[AIM_Y] - P[passer, Y]
    away = max(0.1, math.sqrt(dx * dx + dy * dy))
    ux, uy = aim[I[passer, TEAM], 0], aim[I[passer, TEAM], 1]
    if ux == 0.0 and uy == 0.0:
        ux, uy = Z[0, Z_X] - P[passer, X], Z[0, Z_Y] - P[passer, Y]
        far = max(0.1, math.sqrt(ux * ux + uy * uy))
        side = 1.0 if -dy * ux + dx * uy > 0.0 else -1.0
        ux, uy = (ux / far - side * dy / away) * 0.7, (uy / far + side * dx / away) * 0.7
    x, y = P[passer, X] + GIVE_AND_GO_M * ux, P[passer, Y] + GIVE_AND_GO_M * uy
    P[passer, TX], P[passer, TY] = allowed(P, I, R, Z, L, B, G[BALL_TEAM], passer, x, y, 1.1)
    P[passer, PACE] = min(0.95, RUN_PACE * A[passer, MOVE_PACE]) * A[passer, TOP]
    P[passer, T_RUN] = B[NOW] + RUN_S


@kernel
def best_spot(P, I, A, B, G, R, Z, L, T, W, aim, spots, chance, i):
    """Compare staying with six spots on a near or a far ring (by chance), and set the run."""
    players = P.shape[0]
    ring = NEAR_RING_M if uniform(chance, SUPPORT * players + i) < 0.5 else FAR_RING_M
    ring *= max(1.0, B[SQ] / ROOMY_M)
    turn = uniform(chance, SUPPORT * players + i) * SIXTH
    best, best_x, best_y = -1e9, P[i, X], P[i, Y]
    directed = aim[I[i, TEAM], 0] != 0.0 or aim[I[i, TEAM], 1] != 0.0
    forward = directed and I[i, WIDE] != REAR_MAN
    small = price_of_moving(P, I, A, B, directed, i)
    spread = BUNCH + (1.0 - BUNCH) * A[i, READS]
    for way in range(7):
        x, y = P[i, X], P[i, Y]
        if way > 0:
            angle = turn + SIXTH * way
            x, y = x + ring * math.cos(angle), y + ring * math.sin(angle)
        x, y = allowed(P, I, R, Z, L, B, G[BALL_TEAM], i, x, y, min(W[K_INSIDE_MOST], W[K_INSIDE] * B[SQ]))
        worth = spot_worth(P, I, B, Z, W, aim, spots, i, x, y, small, spread)
        if forward:
            worth += W[K_CHANCE] * goal_in_view(I, Z, T, i, x, y)
        if G[RULED] == 1:
            worth -= TOGETHER * gather_m(I, B, R, Z, T, i, x, y)
        if G[OVERS] == 1 and clears(Z, G[OVER_PLACES], B[BX], B[BY], *landing(B, x, y)) != 0:
            worth += BEYOND
        if way == 0:
            stood = B[NOW] - P[i, T_STOOD]
            worth += W[K_SUP_STAY] * small if stood < 2.5 else -W[K_SUP_STAY]
        if A[i, SPOT_NOISE] > 0.0:
            worth += A[i, SPOT_NOISE] * noise(chance, SUPPORT * players + i)
        if worth > best:
            best, best_x, best_y = worth, x, y
    P[i, TX], P[i, TY] = best_x, best_y
    P[i, PACE] = support_pace(P, I, A, B, G, W, aim, i)


@kernel
def goal_in_view(I, Z, T, i, x, y):
    """How wide the best goal of his side looks from (x, y): its width across over the distance, at most 1."""
    best = 0.0
    for row in range(T.shape[0]):
        if T[row, ROW_WHEN] == E_GOAL and T[row, ROW_DO] == D_POINTS and actor_fits(I, T, row, i, I[i, TEAM]):
            goal = T[row, ROW_PLACE]
            dx, dy = Z[goal, Z_X] - x, Z[goal, Z_Y] - y
            away2 = max(1.0, dx * dx + dy * dy)
            best = max(best, 2.0 * (Z[goal, Z_HX] * abs(dy) + Z[goal, Z_HY] * abs(dx)) / away2)
    return min(1.0, best)


@kernel_inlined
def spot_worth(P, I, B, Z, W, aim, spots, i, x, y, small, spread):
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
        if I[j, TEAM] == OUT_OF_PLAY:
            continue
        opponent = min(opponent, away2)
        sx, sy = spots[j, 0] - bx, spots[j, 1] - by
        s = sx * ux + sy * uy
        if 0.3 < s < to_ball:
            lane = min(lane, abs(sy * ux - sx * uy) * (1.0 + 0.6 * max(0.0, 1.0 - s / 4.0)))
    worth = W[K_SUP_GAP] * lane + W[K_SUP_OPP] * min(math.sqrt(opponent), 4.0)
    worth -= spread * W[K_SUP_MATE] * max(0.0, 0.27 * B[SQ] - math.sqrt(mate))
    worth -= spread * W[K_SUP_BALL] * max(0.0, CLOSE_TO_BALL_M - to_ball)
    worth -= W[K_SUP_FAR] * max(0.0, to_ball - FIRM_PASS_M)
    forward = (dx * aim[team, 0] + dy * aim[team, 1]) / B[SQ]
    if I[i, WIDE] == REAR_MAN:
        worth -= W[K_REAR] * abs(forward + 0.2)
    else:
        worth += W[K_SUP_FORWARD] * min(forward, 0.35)
        if I[i, WIDE] != 0:
            left = (x - Z[0, Z_X]) * -aim[team, 1] + (y - Z[0, Z_Y]) * aim[team, 0]
            half = Z[0, Z_HX] * abs(aim[team, 1]) + Z[0, Z_HY] * abs(aim[team, 0])
            worth -= W[K_WIDE] * max(0.0, WIDE_SHARE * half - I[i, WIDE] * left)
    mx, my = x - P[i, X], y - P[i, Y]
    worth -= W[K_SUP_MOVE] * small * math.sqrt(mx * mx + my * my)
    return worth + 0.02 * (mx * P[i, VX] + my * P[i, VY])
