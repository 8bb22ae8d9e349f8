"""Feet and ball: who gets a touch on a loose ball inside the step, first touches, tackles."""

import math

from turnout.play.kernel.chance import DEFLECT, TACKLE, TOUCH, exponential, normal, uniform
from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_inlined
from turnout.play.kernel.ground import inside
from turnout.play.kernel.judging import note
from turnout.play.kernel.kicking import CHILD_KICK_MPS
from turnout.play.kernel.lanes import sheltered
from turnout.play.kernel.weights import *

LOW_M, FOOT_HIGH_M, HIGH_SHARE = 0.35, 1.2, 0.6  # a ball over the second height is let drop, free
BLOCKS_FROM_MPS = 3.0
UNREADY = 0.2  # before the kick is answered a leg still meets some balls, free
STANDING_HANDS_M = 0.6
NEAR_M = 2.0
SET_MOST = 3.0  # a tackler who has been at his man for so many times SET_S is no better after more, free
EASY_SHARE = 0.28  # a ball slower than this share of his own hardest kick is easy to take, free
PRESSED_TOUCH = 0.08
BOUNCING = 0.06  # harder to take than a ball along the ground, free


@kernel
def first_touch(P, I, A, B, G, R, Z, W, x0, y0, dt, chance):
    """Who meets the ball first inside this step, when (share of the step), and whether only with the body.

    The ball went from (x0, y0) to its present place in a straight line; every reach circle is crossed at exact times.
    A foot, or a keeper's hands, meets it when the draw of hazard is used up; a body in its way stops it at once.
    """
    bx, by = B[BX] - x0, B[BY] - y0
    way2 = bx * bx + by * by
    speed = math.sqrt(way2) / dt
    fast = W[K_FAST_BALL] * A[0, KICK_TOP] / CHILD_KICK_MPS  # all of an age
    soft = min(1.0, fast / max(speed, 0.1)) * (1.0 if B[BZ] < LOW_M else HIGH_SHARE)
    best, who, body = 2.0, -1, False
    now = B[NOW]
    for i in range(P.shape[0]):
        if P[i, T_NO_TOUCH] > now or I[i, JOURNEY] == 1 or I[i, TEAM] == OUT_OF_PLAY:
            continue
        if G[FREE] == 1 and I[i, TEAM] != G[BALL_TEAM]:
            continue
        px, py = P[i, X] - x0, P[i, Y] - y0
        reach = W[K_REACH]
        hands = R[I[i, ROLE], R_KEEPS] >= 0.0 and inside(Z, int(R[I[i, ROLE], R_HOME]), P[i, X], P[i, Y], 0.5)
        if hands:
            reach = hands_reach(P, A, B, W, i)
        elif B[BZ] > FOOT_HIGH_M:
            continue
        if px * px + py * py > (reach + 1.0) * (reach + 1.0) + 4.0 * way2:
            continue
        enter, leave = crossing(px, py, bx, by, way2, reach)
        if leave <= enter:
            continue
        if not hands and speed > BLOCKS_FROM_MPS and i != G[TARGET]:
            hit, _ = crossing(px, py, bx, by, way2, W[K_BODY])
            if hit < 1.0 and hit > 0.0 and hit < best:
                best, who, body = hit, i, True
        rate = (W[K_HAZARD_RECEIVER] if hands else hazard(I, G, W, i)) * soft
        if P[i, T_REACT] > now and i != G[TARGET]:
            rate *= UNREADY
        if P[i, REACH_LEFT] < 0.0:
            P[i, REACH_LEFT] = exponential(chance, TOUCH * P.shape[0] + i)
        spent = rate * (leave - enter) * dt
        if spent < P[i, REACH_LEFT]:
            P[i, REACH_LEFT] -= spent
            continue
        at = enter + P[i, REACH_LEFT] / (rate * dt)
        if at < best:
            best, who, body = at, i, False
    return who, best, body


@kernel_inlined
def crossing(px, py, bx, by, way2, reach):
    """Shares of the ball's step (bx, by) inside a circle round (px, py): from, to; to <= from means never."""
    if way2 < 1e-12:
        return (0.0, 1.0) if px * px + py * py <= reach * reach else (2.0, 0.0)
    middle = (px * bx + py * by) / way2
    off2 = px * px + py * py - middle * middle * way2
    if off2 >= reach * reach:
        return 2.0, 0.0
    half = math.sqrt((reach * reach - off2) / way2)
    if middle - half > 1.0:
        return 2.0, 0.0
    return max(0.0, middle - half), min(1.0, middle + half)


@kernel_inlined
def hands_reach(P, A, B, W, i):
    """How far a keeper's hands are out by now: standing, then diving once he has answered the kick."""
    if B[BZ] > 0.75 * A[i, REACH_M] + 0.9:
        return 0.0
    dive = W[K_DIVE] * max(0.0, B[NOW] - P[i, T_REACT])
    return STANDING_HANDS_M + min(A[i, REACH_M], dive)


@kernel
def hazard(I, G, W, i):
    """Touches per second while the ball is in reach: the man it is meant for, a team-mate, an opponent."""
    if i == G[TARGET]:
        return W[K_HAZARD_RECEIVER]
    return W[K_HAZARD_MATE] if I[i, TEAM] == G[BALL_TEAM] else W[K_HAZARD_CUT]


@kernel
def fresh_draws(P):
    """After a kick or a deflection everybody's chance of a touch is drawn anew when the ball comes."""
    for i in range(P.shape[0]):
        P[i, REACH_LEFT] = -1.0


@kernel
def controls(P, I, A, B, G, W, near_m, chance, i):
    """Whether a first touch keeps the ball: harder fast, pressed, back to it or stretching."""
    speed = math.sqrt(B[BVX] * B[BVX] + B[BVY] * B[BVY])
    hard = max(0.0, speed - EASY_SHARE * A[i, KICK_TOP]) * 0.016
    pressed = PRESSED_TOUCH * max(0.0, 1.0 - near_m / 2.5)
    away = 0.0
    if speed > 0.5:
        facing = -(P[i, HX] * B[BVX] + P[i, HY] * B[BVY]) / speed
        away = 0.06 * (1.0 - facing)
    stretch = 0.0 if i == G[TARGET] else 0.10
    bounces = BOUNCING if B[BZ] > LOW_M or B[BVZ] != 0.0 else 0.0
    clean = A[i, CLEAN] - hard - pressed - away - stretch - bounces
    return uniform(chance, TOUCH * P.shape[0] + i) < clean


@kernel
def spill(P, I, B, G, LOG, chance, i, keep):
    """The ball comes off a player: slower, and not where it was going."""
    speed = math.sqrt(B[BVX] * B[BVX] + B[BVY] * B[BVY])
    angle = math.atan2(B[BVY], B[BVX]) + 0.9 * normal(chance, DEFLECT * P.shape[0] + i)
    pace = min(4.5, keep * speed + 0.6 + 0.8 * uniform(chance, DEFLECT * P.shape[0] + i))
    B[BVX], B[BVY] = pace * math.cos(angle), pace * math.sin(angle)
    B[BZ], B[BVZ] = 0.0, 0.0
    B[ROLL_BELOW] = 1e9
    G[SHOT] = 0
    P[i, T_NO_TOUCH] = B[NOW] + 0.3
    G[LAST], G[LAST_TEAM] = i, I[i, TEAM]
    G[TARGET] = -1
    fresh_draws(P)
    note(LOG, G, B, LOG_SPILL, i, -1, I[i, TEAM], pace)
    B[T_PLAN] = B[NOW]
    for j in range(P.shape[0]):
        I[j, CHASING] = -1
        P[j, T_REACT] = min(P[j, T_REACT], B[NOW] + 0.25) if P[j, T_REACT] > B[NOW] else B[NOW] + 0.2


@kernel
def block(P, I, A, B, G, S, LOG, chance, i):
    """The ball comes off a body: back or aside, slower, whether or not its owner had seen it come."""
    speed = math.sqrt(B[BVX] * B[BVX] + B[BVY] * B[BVY])
    S[i, S_BLOCKS] += 1
    note(LOG, G, B, LOG_BLOCK, i, G[LAST], I[i, TEAM], speed)
    nx, ny = B[BX] - P[i, X], B[BY] - P[i, Y]
    size = max(1e-6, math.sqrt(nx * nx + ny * ny))
    into = min(0.0, (B[BVX] * nx + B[BVY] * ny) / size)
    B[BVX], B[BVY] = B[BVX] - 1.5 * into * nx / size, B[BVY] - 1.5 * into * ny / size
    spill(P, I, B, G, LOG, chance, i, 0.3)


@kernel
def save(P, I, A, B, G, S, LOG, chance, i):
    """A keeper's hands on the ball: he holds it, or a hard one is turned aside. Returns whether he holds it."""
    speed = math.sqrt(B[BVX] * B[BVX] + B[BVY] * B[BVY])
    if G[SHOT] == 1:
        S[i, S_SAVES] += 1
    note(LOG, G, B, LOG_SAVE, i, G[LAST], I[i, TEAM], speed)
    stretched = math.sqrt((B[BX] - P[i, X]) ** 2 + (B[BY] - P[i, Y]) ** 2)
    if uniform(chance, TOUCH * P.shape[0] + i) < A[i, CLEAN] - 0.03 * max(0.0, speed - 6.0) - 0.2 * stretched:
        return True
    spill(P, I, B, G, LOG, chance, i, 0.45)
    return False


@kernel
def nearest_m(P, I, i):
    """True metres from a player to the nearest opponent."""
    best = 1e9
    for j in range(P.shape[0]):
        if I[j, TEAM] == 1 - I[i, TEAM]:
            best = min(best, (P[j, X] - P[i, X]) ** 2 + (P[j, Y] - P[i, Y]) ** 2)
    return math.sqrt(best)


@kernel
def settle_s(P, I, A, i, near_m):
    """Seconds from touch to lifting the head: control, then thinking, longer with an old picture of what is near."""
    pressed = max(0.0, 1.0 - near_m / 2.5)
    return A[i, CONTROL_S] * (1.0 + 0.15 * pressed) + A[i, THINK_S] * (0.4 + 1.2 * P[i, STALE])


@kernel
def tackler(P, I, A, B, G, R, Z, L, W, dt, chance):
    """The opponent who gets to the holder's ball in this step, or -1; and whether anybody is near it."""
    holder, now = G[HOLDER], B[NOW]
    found, pressed = -1, False
    speed = math.sqrt(P[holder, VX] * P[holder, VX] + P[holder, VY] * P[holder, VY])
    loose = (W[K_FIRST_PRESS] if B[T_READY] > now else 0.0) + W[K_RUN_AT] * speed
    if G[FREE] == 1 or G[HELD] == 1 or sheltered(P, I, B, R, Z, L, holder, I[holder, TEAM]):
        return found, pressed
    for i in range(P.shape[0]):
        if I[i, TEAM] != 1 - I[holder, TEAM] or I[i, JOURNEY] == 1 or R[I[i, ROLE], R_EDGE] >= 0.0:
            continue
        dx, dy = B[BX] - P[i, X], B[BY] - P[i, Y]
        reach = W[K_TACKLE_REACH]
        if dx * dx + dy * dy < NEAR_M * NEAR_M:
            pressed = True
        if dx * dx + dy * dy > reach * reach or P[i, T_NO_TOUCH] > now:
            P[i, IN_REACH] = max(0.0, P[i, IN_REACH] - dt)
            continue
        P[i, IN_REACH] += dt
        rate = W[K_TACKLE_RATE] * A[i, TACKLES] * (loose + min(SET_MOST, P[i, IN_REACH] / W[K_SET_S]))
        if dx * (P[holder, X] - P[i, X]) + dy * (P[holder, Y] - P[i, Y]) > 0.0:
            between = (P[holder, X] - P[i, X]) ** 2 + (P[holder, Y] - P[i, Y]) ** 2 < dx * dx + dy * dy
            if between:
                rate *= W[K_SHIELD]
        if P[i, TACKLE_LEFT] < 0.0:
            P[i, TACKLE_LEFT] = exponential(chance, TACKLE * P.shape[0] + i)
        P[i, TACKLE_LEFT] -= rate * dt
        if P[i, TACKLE_LEFT] <= 0.0:
            P[i, TACKLE_LEFT] = -1.0
            found = i
            break
    return found, pressed
