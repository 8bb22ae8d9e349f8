"""Legs: everybody moves towards the spot he has chosen, round bodies ahead, with capped push, braking and turning."""

import math

from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_inlined
from turnout.play.kernel.weights import *

FAST_MPS = 16 / 3.6
HARD_MPS2 = 6.0
STILL_MPS = 0.5
WALK_MPS = 2.0
RUN_WITH_M = 1.2  # the ball is carried on a way as long as this without slowing down at its end, free
APART_S, BODY_M, MOST_APART_M = 0.1, 0.55, 0.045  # two bodies side by side, free
SLOW_DOWN_M = 12.0  # nobody needs more than this to stop
EARLY = 0.3  # so much more gently an adult stops who need not be there first, free
AHEAD_S, AHEAD_M, ROOM_M = 0.9, 4.5, 2.0  # how far ahead a runner looks; the room he would keep to a body, free
SOON_THERE_M = 3.0  # this near to his spot he puts up with whoever stands beside it, free
TURNS = ((0.906, 0.423), (0.643, 0.766), (0.174, 0.985))  # 25, 50 and 80 degrees
TURN_COST, OTHER_SIDE_COST = 0.25, 0.1  # seconds of a clear way a turn, a change of side must be worth, free
BEHIND_S, LEAST_PACE = 0.5, 0.15  # slower behind what is nearer than this, down to that share of the pace, free


@kernel
def move(P, I, A, B, W, dt, holder, S, U):
    """One step of running for all, and the sums of distance, fast running and standing."""
    ease, brake, turn = 1.0 / W[K_EASE], W[K_BRAKE], W[K_TURN]
    for i in range(P.shape[0]):
        vx, vy = P[i, VX], P[i, VY]
        dx, dy = P[i, TX] - P[i, X], P[i, TY] - P[i, Y]
        gap = math.sqrt(dx * dx + dy * dy)
        speed2 = vx * vx + vy * vy
        if gap < 0.03 and speed2 < 1e-4:
            P[i, VX] = 0.0
            P[i, VY] = 0.0
            U[I[i, ROLE], U_TIME] += dt
            S[i, S_WALK_S] += dt
            if i != holder:
                S[i, S_STILL] += dt
                S[i, S_OFF_BALL] += dt
            continue
        aside = P[i, ASIDE]
        if aside != 0.0:
            on = math.sqrt(1.0 - aside * aside)
            dx, dy = on * dx - aside * dy, aside * dx + on * dy
        top = A[i, TOP] * (1.0 - W[K_TIRED] * (1.0 - P[i, FRESH]))
        pace = min(P[i, PACE], top) * (1.0 - P[i, SLOWED])
        back = (dx * P[i, HX] + dy * P[i, HY]) / gap if gap > 1e-9 else 1.0
        if back < 0.0:
            pace *= 1.0 + 0.35 * back
        if gap < SLOW_DOWN_M and not (i == holder and gap > RUN_WITH_M):
            gently = 1.0 if i == holder or I[i, CHASING] == 1 else 1.0 - EARLY * A[i, READS]
            pace = min(pace, math.sqrt(1.4 * brake * gently * gap), 3.3 * gap)
        wx, wy = (dx / gap * pace, dy / gap * pace) if gap > 1e-9 else (0.0, 0.0)
        ax, ay = (wx - vx) * ease, (wy - vy) * ease
        speed = math.sqrt(speed2)
        push = min(A[i, ACCEL], A[i, ALPHA] * max(0.0, top - speed) + 0.2)
        if speed > 0.3:
            ux, uy = vx / speed, vy / speed
            along = min(push, max(-brake, ax * ux + ay * uy))
            across = min(turn, max(-turn, ay * ux - ax * uy))
            ax, ay = along * ux - across * uy, along * uy + across * ux
        size = math.sqrt(ax * ax + ay * ay)
        most = brake if speed > 0.3 else min(push, A[i, ACCEL])
        if size > most:
            ax, ay = ax * most / size, ay * most / size
            size = most
        nvx, nvy = vx + ax * dt, vy + ay * dt
        P[i, X] += 0.5 * (vx + nvx) * dt
        P[i, Y] += 0.5 * (vy + nvy) * dt
        P[i, VX], P[i, VY] = nvx, nvy
        way = speed * dt
        S[i, S_DISTANCE] += way
        U[I[i, ROLE], U_TIME] += dt
        U[I[i, ROLE], U_DISTANCE] += way
        if speed > FAST_MPS:
            S[i, S_FAST] += way
        if size > HARD_MPS2:
            S[i, S_HARD] += dt
        gained = (math.sqrt(nvx * nvx + nvy * nvy) - speed) / dt
        S[i, S_PUSH], S[i, S_BRAKE] = max(S[i, S_PUSH], gained), max(S[i, S_BRAKE], -gained)
        if i == holder:
            S[i, S_PEAK_BALL] = max(S[i, S_PEAK_BALL], speed)
        else:
            S[i, S_OFF_BALL] += dt
            if speed < STILL_MPS:
                S[i, S_STILL] += dt
        if speed < WALK_MPS:
            S[i, S_WALK_S] += dt
        if speed > 0.6:
            P[i, T_STOOD] = B[NOW]


@kernel
def look_ahead(P, I, first, end, ball_team):
    """Every APART_S whoever runs, of the players of one ball, looks where he runs: round a body ahead of him.

    With nothing else to tell he passes it on his right.
    """
    for i in range(first, end):
        dx, dy = P[i, TX] - P[i, X], P[i, TY] - P[i, Y]
        gap = math.sqrt(dx * dx + dy * dy)
        side = P[i, ASIDE]
        P[i, ASIDE] = P[i, SLOWED] = 0.0
        if gap > 0.1 and P[i, PACE] > 0.1:
            ux, uy = dx / gap, dy / gap
            clear = clear_s(P, I, first, end, ball_team, i, ux, uy, gap)
            if clear < AHEAD_S:
                steer(P, I, first, end, ball_team, i, ux, uy, gap, clear, side)


@kernel_inlined
def gives_way(I, ball_team, i, j):
    """Whether a player gives way to another of his game: not to an opponent, and defenders close in side by side."""
    return I[j, TEAM] != 1 - I[i, TEAM] and I[i, TEAM] != 1 - ball_team


@kernel
def steer(P, I, first, end, ball_team, i, ux, uy, gap, clear, side):
    """Turn the run to where the way is clear longest for the least turn, and slow down behind what is still ahead."""
    best, free = clear, clear
    for turn in range(3):
        for hand in (-1.0, 1.0):
            c, s = TURNS[turn][0], hand * TURNS[turn][1]
            seconds = clear_s(P, I, first, end, ball_team, i, c * ux - s * uy, s * ux + c * uy, gap)
            worth = seconds - TURN_COST * (1.0 - c) - (OTHER_SIDE_COST if s * side < 0.0 else 0.0)
            if worth > best + 1e-9:
                best, free = worth, seconds
                P[i, ASIDE] = s
    P[i, SLOWED] = min(1.0 - LEAST_PACE, max(0.0, 1.0 - free / BEHIND_S))


@kernel_inlined
def clear_s(P, I, first, end, ball_team, i, ux, uy, gap):
    """Seconds of clear way along (ux, uy), AHEAD_S at most, before bodies that stand or run on as now."""
    pace = max(P[i, PACE], 0.5)
    soonest = AHEAD_S
    for j in range(P.shape[0]):
        if j != i and (j < first or j >= end or gives_way(I, ball_team, i, j)):
            soonest = min(soonest, until_s(P, i, j, ux * pace, uy * pace, gap, gap / pace))
    return soonest


@kernel_inlined
def until_s(P, i, j, wx, wy, gap, there_s):
    """Seconds until a run at velocity (wx, wy) comes too near to a body; one passed counts less the farther off.

    A body beyond the spot is not in the way, and whoever stands beside the spot must be put up with.
    """
    px, py = P[j, X] - P[i, X], P[j, Y] - P[i, Y]
    away2 = px * px + py * py
    if away2 > AHEAD_M * AHEAD_M:
        return AHEAD_S
    rx, ry = wx - P[j, VX], wy - P[j, VY]
    nearing = px * rx + py * ry
    if nearing <= 0.0:
        return AHEAD_S
    fast2, room = rx * rx + ry * ry, ROOM_M
    least2 = max(0.0, away2 - nearing * nearing / fast2)
    if least2 < room * room and gap < SOON_THERE_M:
        room = min(room, math.sqrt((P[j, X] - P[i, TX]) ** 2 + (P[j, Y] - P[i, TY]) ** 2))
    if least2 >= room * room:
        return AHEAD_S
    at = max(0.0, (nearing - math.sqrt(fast2 * (room * room - least2))) / fast2)
    if at >= AHEAD_S or at >= there_s:
        return AHEAD_S
    return at + (AHEAD_S - at) * math.sqrt(least2) / room


@kernel
def part_bodies(P):
    """Bodies do not pass through one another: every APART_S those that overlap are moved apart, half each."""
    for i in range(P.shape[0]):
        P[i, PUSH_X] = P[i, PUSH_Y] = 0.0
    for i in range(P.shape[0]):
        for j in range(i + 1, P.shape[0]):
            dx, dy = P[j, X] - P[i, X], P[j, Y] - P[i, Y]
            gap2 = dx * dx + dy * dy
            if gap2 >= BODY_M * BODY_M:
                continue
            gap = math.sqrt(gap2)
            ux, uy = (dx / gap, dy / gap) if gap > 1e-6 else (1.0, 0.0)
            half = 0.5 * (BODY_M - gap)
            P[i, PUSH_X], P[i, PUSH_Y] = P[i, PUSH_X] - ux * half, P[i, PUSH_Y] - uy * half
            P[j, PUSH_X], P[j, PUSH_Y] = P[j, PUSH_X] + ux * half, P[j, PUSH_Y] + uy * half
            closing = (P[j, VX] - P[i, VX]) * ux + (P[j, VY] - P[i, VY]) * uy
            if closing < 0.0:  # the push that brought them together is spent
                P[i, VX], P[i, VY] = P[i, VX] + 0.5 * closing * ux, P[i, VY] + 0.5 * closing * uy
                P[j, VX], P[j, VY] = P[j, VX] - 0.5 * closing * ux, P[j, VY] - 0.5 * closing * uy
    for i in range(P.shape[0]):
        size = math.sqrt(P[i, PUSH_X] * P[i, PUSH_X] + P[i, PUSH_Y] * P[i, PUSH_Y])
        share = min(1.0, MOST_APART_M / max(size, 1e-9))
        P[i, X] += share * P[i, PUSH_X]
        P[i, Y] += share * P[i, PUSH_Y]
