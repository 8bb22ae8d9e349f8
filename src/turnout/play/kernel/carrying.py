"""On the ball: weigh passes against keeping it, agree a spot with the receiver, kick, carry."""

import math

from turnout.play.kernel.chance import CHOOSE, KICK, noise, normal, uniform
from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_inlined
from turnout.play.kernel.ground import allowed, inside, touch_limit
from turnout.play.kernel.judging import actor_fits, pass_counts, pass_points
from turnout.play.kernel.seeing import believe
from turnout.play.kernel.weights import *

CONTROL_REACH_M = 1.25  # a receiver makes up about this much of a poor pass, free
LEAD_S, LEAD_PER_M, LEAD_MOST_S = 0.08, 1.0 / 22.0, 0.5  # how far ahead of a runner the ball is played, free
STILL_BALL_STRAIN = 0.7  # carlsson2018: a still ball is kicked more accurately; how much is free
FIRST_TIME_STRAIN, FIRST_TIME_TURN, FIRST_TIME_PACE = 1.4, 0.45, 0.03  # free
STAND_OFF_S = 0.30  # a cutter is credited with this reaction, free


@kernel
def launch_mps(distance_m, W, cap_mps):
    """Speed of a pass of this length: firm enough to arrive, firmer when longer, within the player's cap."""
    arrive = math.sqrt(9.0 + 2.3 * W[K_ROLL] * distance_m) / 0.62
    return min(cap_mps, max(arrive, 6.3 + 0.33 * distance_m))


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
        if I[k, TEAM] == team or I[k, JOURNEY] == 1:
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
    """Metres from a point to the nearest believed opponent of a team, at most 5."""
    best = 25.0
    for k in range(P.shape[0]):
        if I[k, TEAM] != team:
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
def choose(P, I, A, B, G, R, Z, L, T, F, W, aim, seen, spots, runs, chance):
    """The holder lifts his head: the best pass against holding on; sets the kick or where he carries the ball."""
    i = G[HOLDER]
    now, team, players = B[NOW], I[i, TEAM], P.shape[0]
    believe(seen, i, now, 0.1, spots)
    shelter = sheltered(P, I, B, R, Z, L, i, team)
    near = room_m(P, I, spots, team, P[i, X], P[i, Y])
    pressure = 0.0 if shelter or G[FREE] == 1 else min(1.0, max(0.0, (2.6 - near) / 2.0))
    limit = touch_limit(I, R, Z, L, B, team, i)
    spare = 99 if limit == 0 else limit - G[TOUCHES]
    first_time = G[FIRST_TIME] == 1
    best, best_j, best_x, best_y, best_v = -1e9, -1, 0.0, 0.0, 0.0
    for j in range(players):
        if j == i or I[j, TEAM] != team or I[j, JOURNEY] == 1:
            continue
        worth, ax, ay, speed = pass_worth(
            P, I, A, B, G, R, Z, L, T, F, W, aim, seen, spots, runs, i, j, pressure, first_time)  # fmt: skip
        worth += A[i, NOISE] * noise(chance, CHOOSE * players + i)
        if worth > best:
            best, best_j, best_x, best_y, best_v = worth, j, ax, ay, speed
    held = now - B[T_HELD]
    tire = W[K_HOLD_TIRE] * (0.3 if shelter else 1.0)
    hold = W[K_HOLD] - W[K_HOLD_PRESS] * pressure - tire * held
    if G[FREE] == 1:
        hold -= W[K_FREE_HOLD]
    drive = 0.0
    if spare >= 2 and G[FREE] == 0:
        drive = carry(P, I, A, B, G, R, Z, L, T, W, aim, spots, i)
    else:
        B[CARRY_X], B[CARRY_Y] = P[i, X], P[i, Y]
    hold += drive + A[i, NOISE] * noise(chance, CHOOSE * players + i)
    if best_j < 0 or (hold >= best and not first_time and held < 8.0):
        P[i, FX], P[i, FY] = B[CARRY_X] - P[i, X], B[CARRY_Y] - P[i, Y]
        if abs(P[i, FX]) + abs(P[i, FY]) < 0.2:
            P[i, FX], P[i, FY] = Z[0, Z_X] - P[i, X], Z[0, Z_Y] - P[i, Y]
        return
    P[i, FX], P[i, FY] = best_x - P[i, X], best_y - P[i, Y]
    G[TARGET] = best_j
    B[AIM_X], B[AIM_Y], B[KICK_V] = best_x, best_y, best_v
    delay = 0.0 if first_time else A[i, RELEASE_S] * (0.5 + uniform(chance, CHOOSE * players + i))
    B[T_KICK_AT] = now + delay + (0.0 if first_time else turn_s(P, i, best_x, best_y))
    P[best_j, TX], P[best_j, TY] = best_x, best_y
    P[best_j, PACE] = A[best_j, TOP]


@kernel_inlined
def turn_s(P, i, x, y):
    """Seconds lost turning before a pass to (x, y): none within 60 degrees, then as a body turns."""
    dx, dy = x - P[i, X], y - P[i, Y]
    length = math.sqrt(dx * dx + dy * dy)
    if length < 1e-6:
        return 0.0
    ahead = (dx * P[i, HX] + dy * P[i, HY]) / length
    return 0.0 if ahead > 0.5 else 0.28 * (0.5 - ahead)


@kernel
def pass_worth(P, I, A, B, G, R, Z, L, T, F, W, aim, seen, spots, runs, i, j, pressure, first_time):
    """Worth of a pass from i to j: chance to arrive times what it opens; and its aim and speed."""
    now, team = B[NOW], I[i, TEAM]
    x, y = B[BX], B[BY]
    dx, dy = spots[j, 0] - x, spots[j, 1] - y
    gap = math.sqrt(dx * dx + dy * dy)
    lead = min(LEAD_S + gap * LEAD_PER_M, LEAD_MOST_S)
    vx, vy = seen[i, j, 2], seen[i, j, 3]
    if now - seen[i, j, 4] > 0.7:
        lead *= 0.3
    ax, ay = allowed(P, I, R, Z, L, B, team, j, spots[j, 0] + vx * lead, spots[j, 1] + vy * lead, 1.0)
    dx, dy = ax - x, ay - y
    gap = math.sqrt(dx * dx + dy * dy)
    speed = launch_mps(gap, W, A[i, KICK_TOP] * 0.85)
    if gap < 2.0:
        return -2.0, ax, ay, speed
    margin = lane_margin(P, I, A, R, W, spots, team, x, y, ax, ay, speed)
    clear = 1.0 / (1.0 + math.exp(-margin / W[K_LANE_SLACK]))
    spread = A[i, AIM_SD] * kick_strain(P, B, G, i, pressure, first_time, dx, dy) * gap / CONTROL_REACH_M
    chance_ok = clear / (1.0 + spread * spread * spread)
    room = room_m(P, I, spots, team, ax, ay)
    gain = W[K_OPEN] * min(room, 4.0)
    points = pass_points(I, Z, T, F, runs, team, i, j, ax, ay)
    gain += W[K_SCORE] * points
    if pass_counts(I, F, i, j):
        gain += W[K_COUNTS]
    if aim[team, 0] != 0.0 or aim[team, 1] != 0.0:
        gain += W[K_PROGRESS] * (dx * aim[team, 0] + dy * aim[team, 1]) / B[SQ] * 1.4
    if j == G[PASSER]:
        gain -= W[K_BACK]
    wait = turn_s(P, i, ax, ay)
    return chance_ok * (1.0 + gain) - (1.0 - chance_ok) * W[K_LOSS] - wait * (0.25 + pressure), ax, ay, speed


@kernel
def kick_strain(P, B, G, i, pressure, first_time, dx, dy):
    """How much wider a kick's error is: pressed, on the move, first time.

    First time a ball is set back where it came from most easily, turned square with more error, helped on with most.
    """
    speed = math.sqrt(P[i, VX] * P[i, VX] + P[i, VY] * P[i, VY])
    strain = (1.0 + 0.5 * pressure) * (1.0 + 0.06 * speed)
    if G[FREE] == 1:
        strain *= STILL_BALL_STRAIN
    if not first_time:
        return strain
    came = math.sqrt(B[IN_VX] * B[IN_VX] + B[IN_VY] * B[IN_VY])
    goes = math.sqrt(dx * dx + dy * dy)
    along = (dx * B[IN_VX] + dy * B[IN_VY]) / (came * goes) if came > 0.1 and goes > 0.1 else 0.0
    return strain * (FIRST_TIME_STRAIN + FIRST_TIME_TURN * (1.0 + along) + FIRST_TIME_PACE * came)


@kernel
def carry(P, I, A, B, G, R, Z, L, T, W, aim, spots, i):
    """Pick where to run with the ball, away from pressure and forward. Returns what a run in is worth."""
    team = I[i, TEAM]
    best, best_x, best_y = 0.12 + 0.10 * min(room_m(P, I, spots, team, P[i, X], P[i, Y]), 4.0), P[i, X], P[i, Y]
    for way in range(8):
        angle = 0.7853981633974483 * way
        x, y = P[i, X] + 2.2 * math.cos(angle), P[i, Y] + 2.2 * math.sin(angle)
        x, y = allowed(P, I, R, Z, L, B, team, i, x, y, 1.0)
        worth = 0.10 * min(room_m(P, I, spots, team, x, y), 4.0)
        worth += 0.14 * ((x - P[i, X]) * aim[team, 0] + (y - P[i, Y]) * aim[team, 1])
        if worth > best:
            best, best_x, best_y = worth, x, y
    gain = 0.0
    for row in range(T.shape[0]):
        if T[row, ROW_WHEN] == E_RUN_IN and T[row, ROW_DO] == D_POINTS and actor_fits(I, T, row, i, team):
            x, y, worth = run_in(P, I, A, R, Z, W, spots, T[row, ROW_PLACE], team, i)
            worth *= W[K_SCORE] * T[row, ROW_VALUE]
            if worth > gain and worth > 0.05:
                gain, best_x, best_y = worth, x, y
    B[CARRY_X], B[CARRY_Y] = best_x, best_y
    return gain


@kernel
def run_in(P, I, A, R, Z, W, spots, place, team, i):
    """Nearest point of a scoring place and the chance to carry the ball there."""
    px, py = P[i, X], P[i, Y]
    x = Z[place, Z_X] + min(Z[place, Z_HX] * 0.85, max(-Z[place, Z_HX] * 0.85, px - Z[place, Z_X]))
    y = Z[place, Z_Y] + min(Z[place, Z_HY] * 0.5, max(-Z[place, Z_HY] * 0.5, py - Z[place, Z_Y]))
    gap = math.sqrt((x - px) * (x - px) + (y - py) * (y - py))
    if gap > 12.0:
        return x, y, 0.0
    margin = lane_margin(P, I, A, R, W, spots, team, px, py, x, y, A[i, TOP] * W[K_DRIBBLE] / 0.78)
    return x, y, 1.0 / (1.0 + math.exp(-(margin - 0.3) / 0.5)) * math.exp(-gap / 9.0)


@kernel
def kick(P, I, A, B, G, W, S, U, seen, chance):
    """Strike the ball at the agreed spot, with the errors of aim and weight; set who may answer it from when."""
    i, players, now = G[HOLDER], P.shape[0], B[NOW]
    dx, dy = B[AIM_X] - B[BX], B[AIM_Y] - B[BY]
    gap = math.sqrt(dx * dx + dy * dy)
    near = 25.0
    for k in range(players):
        if I[k, TEAM] != I[i, TEAM]:
            near = min(near, (P[k, X] - P[i, X]) ** 2 + (P[k, Y] - P[i, Y]) ** 2)
    pressure = 0.0 if G[FREE] == 1 else min(1.0, max(0.0, (2.6 - math.sqrt(near)) / 2.0))
    strain = kick_strain(P, B, G, i, pressure, G[FIRST_TIME] == 1, dx, dy)
    angle = A[i, AIM_SD] * strain * normal(chance, KICK * players + i)
    speed = B[KICK_V] * max(0.3, 1.0 + A[i, WEIGHT_SD] * strain * normal(chance, KICK * players + i))
    speed = min(speed, A[i, KICK_TOP])
    c, s = math.cos(angle), math.sin(angle)
    ux, uy = (dx / gap, dy / gap) if gap > 1e-6 else (P[i, HX], P[i, HY])
    B[BVX], B[BVY] = (ux * c - uy * s) * speed, (ux * s + uy * c) * speed
    B[ROLL_BELOW] = (W[K_ROLL_SHARE] - W[K_ROLL_SHARE_DRAG] * speed) * speed
    B[T_KICKED] = now
    P[i, T_NO_TOUCH] = now + 0.35
    S[i, S_PASSES] += 1
    S[i, S_TOUCHES] += 1
    U[I[i, ROLE], U_PASSES] += 1
    U[I[i, ROLE], U_TOUCHES] += 1
    if pressure > 0.5:
        S[i, S_PRESSED] += 1
    G[TOUCHES] += 1
    U[I[i, ROLE], U_MOST] = max(U[I[i, ROLE], U_MOST], G[TOUCHES])
    G[PASSER] = i
    G[LAST], G[LAST_TEAM] = i, I[i, TEAM]
    G[HOLDER] = -1
    G[PASS_ON] = 1
    G[FIRST_TIME] = 0
    G[SPILLED_BY] = -1
    B[T_KICK_AT] = 1e18
    answer_from(P, I, A, B, G, W, seen, i)


@kernel
def answer_from(P, I, A, B, G, W, seen, i):
    """When each player answers the kick: late if the receiver is not where he was last seen."""
    now, target = B[NOW], G[TARGET]
    for j in range(P.shape[0]):
        I[j, CHASING] = -1
        if j == i:
            P[j, T_REACT] = now + 0.3
        elif j == target:
            P[j, T_REACT] = now
        elif I[j, TEAM] == I[i, TEAM]:
            P[j, T_REACT] = now + A[j, REACT_S]
        else:
            dx, dy = seen[j, target, 0] - P[target, X], seen[j, target, 1] - P[target, Y]
            lost = min(1.0, math.sqrt(dx * dx + dy * dy) / 1.5)
            wait = A[j, REACT_S] * ((1.0 - W[K_READ]) + 2.0 * W[K_READ] * lost)
            P[j, T_REACT] = now + wait + A[i, DISGUISE_S]
