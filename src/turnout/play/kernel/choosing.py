"""On the ball: lift the head and weigh every pass, a shot and a carry against keeping the ball; agree a spot."""

import math

from turnout.play.kernel.carrying import carry
from turnout.play.kernel.chance import CHOOSE, noise, uniform
from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_inlined
from turnout.play.kernel.ground import allowed, touch_limit
from turnout.play.kernel.judging import pass_counts, pass_points
from turnout.play.kernel.kicking import LOFT_RISE, arriving_mps, kick_strain, launch_mps, lofted_mps, turn_s
from turnout.play.kernel.lanes import danger, lane_margin, pressure_on, room_m, sheltered
from turnout.play.kernel.seeing import believe
from turnout.play.kernel.shooting import best_shot, chance_there
from turnout.play.kernel.weights import *

CONTROL_REACH_M = 1.25  # a receiver makes up about this much of a poor pass, free
LEAD_S, LEAD_PER_M, LEAD_MOST_S = 0.08, 1.0 / 22.0, 0.5  # how far ahead of a runner the ball is played, free
LOFT_FROM_M = 11.0  # nobody chips a shorter one, free
LOFT_SPREAD = 1.4  # a lofted ball lands so much less exactly, free
AIM_MARGIN_M = 1.3
GLANCE_S = 0.1
FREE_LOSS, FREE_GENTLE, FREE_LEAST_MPS = 2.0, 0.95, 6.0
RUN_LEAD_S = 0.9
KEPT_MOST_S = 8.0
ROOM_M, CLOSED_M = 4.0, 2.5


@kernel
def choose(P, I, A, B, G, R, Z, L, T, F, W, aim, plans, seen, spots, runs, chance):
    """The holder lifts his head: the best pass or shot against holding on; sets the kick or the carry."""
    i = G[HOLDER]
    now, team, players = B[NOW], I[i, TEAM], P.shape[0]
    believe(seen, i, now, 0.1, spots)
    shelter = sheltered(P, I, B, R, Z, L, i, team) or G[HELD] == 1
    pressure = 0.0 if shelter or G[FREE] == 1 else pressure_on(I, spots, team, P[i, X], P[i, Y], W)
    doubt = A[i, NOISE] * (1.0 + W[K_HASTE] * pressure)
    limit = touch_limit(I, R, Z, L, B, team, i)
    spare = 99 if limit == 0 else limit - G[TOUCHES]
    first_time = G[FIRST_TIME] == 1
    B[DANGER] = danger(B[BX], B[BY], B, Z, T, team)
    best, best_j, best_x, best_y, best_v, lift = -1e9, -1, 0.0, 0.0, 0.0, 0.0
    for j in range(players):
        if j == i or I[j, TEAM] != team or I[j, JOURNEY] == 1:
            continue
        worth, ax, ay, speed, up = pass_worth(
            P, I, A, B, G, R, Z, L, T, F, W, aim, plans, seen, spots, runs, i, j, pressure, first_time)  # fmt: skip
        worth += doubt * noise(chance, CHOOSE * players + i)
        if worth > best:
            best, best_j, best_x, best_y, best_v, lift = worth, j, ax, ay, speed, up
    shot, sx, sy = best_shot(P, I, A, B, G, R, Z, T, W, plans, spots, i, pressure, first_time)
    shoots = shot > -1e8 and shot + doubt * noise(chance, CHOOSE * players + i) > best
    if shoots:
        best, best_j, best_x, best_y, best_v, lift = shot, -1, sx, sy, 0.92 * A[i, KICK_TOP], 0.0
    held = now - B[T_HELD]
    pressure_hurts = W[K_HOLD_PRESS] * (1.0 + W[K_DANGER] * B[DANGER])
    tire = W[K_HOLD_TIRE] * (0.3 if shelter else 1.0)
    hold = W[K_HOLD] - pressure_hurts * pressure - tire * held
    if G[FREE] == 1:
        hold -= W[K_FREE_HOLD]
    B[CARRY_X], B[CARRY_Y] = P[i, X], P[i, Y]
    if spare >= 2 and G[FREE] == 0 and G[HELD] == 0:
        hold += carry(P, I, A, B, G, R, Z, L, T, W, aim, plans, spots, i)
    hold += doubt * noise(chance, CHOOSE * players + i)
    if (best_j < 0 and not shoots) or (hold >= best and not first_time and held < KEPT_MOST_S):
        keep_it(P, I, Z, B, spots, i, pressure)
        return
    if best_j >= 0 and now - seen[i, best_j, 4] > GLANCE_S:
        glance(P, seen, spots, now, i, best_j)
        best, best_x, best_y, best_v, lift = pass_worth(
            P, I, A, B, G, R, Z, L, T, F, W, aim, plans, seen, spots, runs, i, best_j, pressure,
            first_time)  # fmt: skip
    P[i, FX], P[i, FY] = best_x - P[i, X], best_y - P[i, Y]
    B[T_SHAPED] = now
    G[TARGET], G[SHOT] = best_j, 1 if shoots else 0
    B[AIM_X], B[AIM_Y], B[KICK_V], B[KICK_VZ] = best_x, best_y, best_v, lift
    delay = 0.0 if first_time else A[i, RELEASE_S] * (0.5 + uniform(chance, CHOOSE * players + i))
    B[T_KICK_AT] = now + delay + (0.0 if first_time else turn_s(P, i, best_x, best_y))
    if best_j >= 0:
        P[best_j, TX], P[best_j, TY] = best_x, best_y
        P[best_j, PACE] = A[best_j, TOP]


@kernel
def glance(P, seen, spots, now, i, j):
    """A player looks at the team-mate he means to play to before he kicks."""
    seen[i, j, 0], seen[i, j, 1], seen[i, j, 2], seen[i, j, 3] = P[j, X], P[j, Y], P[j, VX], P[j, VY]
    seen[i, j, 4] = now
    spots[j, 0], spots[j, 1] = P[j, X], P[j, Y]


@kernel
def keep_it(P, I, Z, B, spots, i, pressure):
    """Face where the ball is carried; pressed with nowhere to carry it, put the body between ball and opponent."""
    fx, fy = B[CARRY_X] - P[i, X], B[CARRY_Y] - P[i, Y]
    if abs(fx) + abs(fy) < 0.2:
        fx, fy = Z[0, Z_X] - P[i, X], Z[0, Z_Y] - P[i, Y]
        if pressure > 0.5:
            best = 1e18
            for j in range(P.shape[0]):
                gap = (spots[j, 0] - P[i, X]) ** 2 + (spots[j, 1] - P[i, Y]) ** 2
                if I[j, TEAM] == 1 - I[i, TEAM] and gap < best:
                    best, fx, fy = gap, P[i, X] - spots[j, 0], P[i, Y] - spots[j, 1]
    P[i, FX], P[i, FY] = fx, fy


@kernel_inlined
def opposed(I, team):
    """Whether anybody plays against a side; where nobody does a pass is struck no harder than it takes to arrive."""
    for j in range(I.shape[0]):
        if I[j, TEAM] == 1 - team:
            return True
    return False


@kernel_inlined
def pass_worth(P, I, A, B, G, R, Z, L, T, F, W, aim, plans, seen, spots, runs, i, j, pressure, first_time):
    """Worth of a pass from i to j: chance to arrive times what it opens; its aim, speed and lift (0: on the ground)."""
    now, team = B[NOW], I[i, TEAM]
    x, y = B[BX], B[BY]
    dx, dy = spots[j, 0] - x, spots[j, 1] - y
    gap = math.sqrt(dx * dx + dy * dy)
    lead = min(LEAD_S + gap * LEAD_PER_M, LEAD_MOST_S)
    vx, vy = seen[i, j, 2], seen[i, j, 3]
    if now - seen[i, j, 4] > 0.7:
        lead *= 0.3
    elif P[j, T_RUN] > now:  # a man on a run is played to where he is going
        lead = RUN_LEAD_S
    ax, ay = allowed(P, I, R, Z, L, B, team, j, spots[j, 0] + vx * lead, spots[j, 1] + vy * lead, AIM_MARGIN_M)
    dx, dy = ax - x, ay - y
    gap = math.sqrt(dx * dx + dy * dy)
    speed = launch_mps(gap, W, A[i, KICK_TOP]) if opposed(I, team) else arriving_mps(gap, W)
    lift = 0.0
    if gap < 2.0:
        return -2.0, ax, ay, speed, lift
    margin = lane_margin(P, I, A, R, W, spots, team, x, y, ax, ay, speed)
    clear = 1.0 / (1.0 + math.exp(-margin / W[K_LANE_SLACK]))
    spread = A[i, AIM_SD] * kick_strain(P, A, B, G, W, i, pressure, first_time, dx, dy) * gap / CONTROL_REACH_M
    chance_ok = clear / (1.0 + spread * spread * spread)
    room = room_m(P, I, spots, team, ax, ay)
    if gap > LOFT_FROM_M and clear < 0.6 and W[K_LOFT] > 0.0 and not first_time:
        wide = spread * LOFT_SPREAD
        over = W[K_LOFT] / (1.0 + math.exp(-(room - 2.2) / 0.7)) / (1.0 + wide * wide * wide)
        if over > chance_ok:
            chance_ok, speed = over, lofted_mps(gap, W)
            lift = speed * LOFT_RISE
            if speed > 0.9 * A[i, KICK_TOP]:
                return -2.0, ax, ay, speed, lift
    chance_ok *= 1.0 - W[K_CLOSED] * max(0.0, 1.0 - room / CLOSED_M)
    gain = W[K_OPEN] * min(room, ROOM_M) + W[K_SWITCH] * max(0.0, room - ROOM_M)
    gain += W[K_SCORE] * pass_points(I, B, G, Z, L, T, F, plans, runs, team, i, j, ax, ay)
    if pass_counts(I, F, i, j):
        gain += W[K_COUNTS]
    if aim[team, 0] != 0.0 or aim[team, 1] != 0.0:
        gain += W[K_PROGRESS] * (dx * aim[team, 0] + dy * aim[team, 1]) / B[SQ] * 1.4
        if W[K_ASSIST] > 0.0:
            gain += W[K_ASSIST] * chance_there(I, A, R, Z, T, W, plans, spots, i, j, ax, ay)
    if j == G[PASSER]:
        gain -= W[K_BACK]
    wait = turn_s(P, i, ax, ay)
    loss = W[K_LOSS] * (1.0 + W[K_DANGER] * B[DANGER])
    if G[FREE] == 1:  # nobody hurries a free pass: safe first
        loss *= FREE_LOSS
        speed = max(FREE_LEAST_MPS, FREE_GENTLE * speed)
    worth = chance_ok * (1.0 + gain) - (1.0 - chance_ok) * loss - wait * (0.25 + pressure)
    return worth, ax, ay, speed, lift
