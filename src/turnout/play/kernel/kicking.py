"""Strike the ball: how hard, how exactly, with which lift; who may answer it from when."""

import math

from turnout.play.kernel.chance import KICK, normal
from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_inlined
from turnout.play.kernel.lanes import pressure_on
from turnout.play.kernel.rolling import GRAVITY_MPS2
from turnout.play.kernel.weights import *

STILL_BALL_STRAIN = 0.6  # carlsson2018: a still ball is kicked more accurately; how much is free
FIRST_TIME_STRAIN, FIRST_TIME_TURN, FIRST_TIME_PACE = 1.9, 0.5, 0.05  # free
GENTLE, HARD = 0.86, 0.5  # hunter2018: direction spreads more the harder the kick; how much is free
FULL_CALM_S = 0.34  # thinking time of a settled player: who needs longer suffers more from pressure, free
WEAK_SIDE = 0.45  # sine of the angle from which a ball across the body is played with the other foot, free
LOFT_RISE = 0.62  # lift over speed along the ground: about 32 degrees, free
LOFT_LANDS = 0.78  # share of the way to the first bounce, free
SHOT_LIFT, SHOT_LIFT_SPREAD = 0.10, 0.09  # lift over speed of a shot, free
NO_TOUCH_S = 0.35
CHILD_KICK_MPS = 14.0  # hardest kick of an under-12
LEAST_REACT_S = 0.03


@kernel
def arriving_mps(distance_m, W):
    """Speed of a pass of this length that arrives; the passer allows for tonight's surface only in part."""
    roll = 1.0 + W[K_BELIEF] * (W[K_ROLL] - 1.0)
    return math.sqrt(9.0 + 2.3 * roll * distance_m) / 0.62


@kernel
def launch_mps(distance_m, W, top_mps):
    """Speed of a pass of this length: firm enough to arrive, firmer when longer and from a harder kicker."""
    firm = (6.3 + 0.33 * distance_m) * (top_mps / CHILD_KICK_MPS) ** W[K_FIRM]
    return min(0.85 * top_mps, max(arriving_mps(distance_m, W), firm))


@kernel
def lofted_mps(distance_m, W):
    """Speed along the ground of a lofted pass that first lands at LOFT_LANDS of the distance.

    Range without air u^2 2 rise / g; drag takes about drag x range x 1.1 of it.
    """
    lands = LOFT_LANDS * distance_m
    return math.sqrt(GRAVITY_MPS2 * lands * (1.0 + 1.1 * W[K_DRAG] * lands) / (2.0 * LOFT_RISE))


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
def kick_strain(P, A, B, G, W, i, pressure, first_time, dx, dy):
    """How much wider a kick's error is: pressed, on the move, with the other foot, first time.

    First time a ball is set back where it came from most easily, turned square with more error, helped on with most.
    """
    speed = math.sqrt(P[i, VX] * P[i, VX] + P[i, VY] * P[i, VY])
    strain = 1.0 + W[K_PRESSURE] * pressure * A[i, THINK_S] / FULL_CALM_S
    strain *= 1.0 + 0.06 * speed
    goes = math.sqrt(dx * dx + dy * dy)
    if G[FREE] == 1:
        return strain * STILL_BALL_STRAIN
    if goes > 0.1 and A[i, FOOT] * (P[i, HX] * dy - P[i, HY] * dx) < -WEAK_SIDE * goes:
        strain *= A[i, WEAK]
    if not first_time:
        return strain
    came = math.sqrt(B[IN_VX] * B[IN_VX] + B[IN_VY] * B[IN_VY])
    along = (dx * B[IN_VX] + dy * B[IN_VY]) / (came * goes) if came > 0.1 and goes > 0.1 else 0.0
    return strain * (FIRST_TIME_STRAIN + FIRST_TIME_TURN * (1.0 + along) + FIRST_TIME_PACE * came)


@kernel
def kick(P, I, A, B, G, W, S, U, seen, chance):
    """Strike the ball at the agreed spot, with the errors of aim and weight; set who may answer it from when."""
    i, players, now = G[HOLDER], P.shape[0], B[NOW]
    dx, dy = B[AIM_X] - B[BX], B[AIM_Y] - B[BY]
    gap = math.sqrt(dx * dx + dy * dy)
    pressure = 0.0 if G[FREE] == 1 or G[HELD] == 1 else pressure_on(I, P, I[i, TEAM], P[i, X], P[i, Y], W)
    strain = kick_strain(P, A, B, G, W, i, pressure, G[FIRST_TIME] == 1, dx, dy)
    hard = B[KICK_V] / A[i, KICK_TOP]
    angle = A[i, AIM_SD] * strain * (GENTLE + HARD * hard * hard) * normal(chance, KICK * players + i)
    speed = B[KICK_V]
    if G[SHOT] == 0:
        speed *= max(0.3, 1.0 + A[i, WEIGHT_SD] * strain * normal(chance, KICK * players + i))
    speed = min(speed, A[i, KICK_TOP])
    c, s = math.cos(angle), math.sin(angle)
    ux, uy = (dx / gap, dy / gap) if gap > 1e-6 else (P[i, HX], P[i, HY])
    B[BVX], B[BVY] = (ux * c - uy * s) * speed, (ux * s + uy * c) * speed
    B[BZ], B[BVZ] = 0.0, 0.0
    if B[KICK_VZ] > 0.0:
        B[BVZ] = B[KICK_VZ] * speed / B[KICK_V]
        S[i, S_LOFTED] += 1
    elif G[SHOT] == 1:
        B[BVZ] = speed * max(0.0, SHOT_LIFT + SHOT_LIFT_SPREAD * strain * normal(chance, KICK * players + i))
    B[ROLL_BELOW] = (W[K_ROLL_SHARE] - W[K_ROLL_SHARE_DRAG] * speed) * speed
    B[T_KICKED] = now
    P[i, T_NO_TOUCH] = now + NO_TOUCH_S
    B[PRESS_X], B[PRESS_Y] = B[AIM_X], B[AIM_Y]
    count_kick(I, G, S, U, i, pressure)
    G[PASSER], G[THROUGH] = i, -1
    G[LAST], G[LAST_TEAM] = i, I[i, TEAM]
    G[HOLDER], G[HELD] = -1, 0
    G[PASS_ON] = 0 if G[SHOT] == 1 else 1
    G[FIRST_TIME] = 0
    G[SPILLED_BY] = -1
    B[T_KICK_AT] = 1e18
    answer_from(P, I, A, B, G, W, seen, i)


@kernel
def count_kick(I, G, S, U, i, pressure):
    """Add the kick to the sums of the player and his role."""
    S[i, S_TOUCHES] += 1
    U[I[i, ROLE], U_TOUCHES] += 1
    G[TOUCHES] += 1
    U[I[i, ROLE], U_MOST] = max(U[I[i, ROLE], U_MOST], G[TOUCHES])
    if G[SHOT] == 1:
        S[i, S_SHOTS] += 1
        G[SHOOTER] = i
        return
    S[i, S_PASSES] += 1
    U[I[i, ROLE], U_PASSES] += 1
    G[PRESSED] = 1 if pressure > 0.5 else 0
    if pressure > 0.5:
        S[i, S_PRESSED] += 1


@kernel
def answer_from(P, I, A, B, G, W, seen, i):
    """When each player answers the kick.

    An opponent has seen the passer shape to pass, so he is early for a receiver who stands where he was last seen,
    and late for one who does not.
    """
    now, target = B[NOW], G[TARGET]
    for j in range(P.shape[0]):
        I[j, CHASING] = -1
        if j == i:
            P[j, T_REACT] = now + 0.3
        elif j == target:
            P[j, T_REACT] = now
        elif target < 0 or I[j, TEAM] == I[i, TEAM]:
            P[j, T_REACT] = now + A[j, REACT_S]
        else:
            dx, dy = seen[j, target, 0] - P[target, X], seen[j, target, 1] - P[target, Y]
            lost = min(1.0, math.sqrt(dx * dx + dy * dy) / 1.5)
            wait = A[j, REACT_S] * ((1.0 - W[K_READ]) + 2.0 * W[K_READ] * lost) + A[i, DISGUISE_S]
            wait -= W[K_SHAPE] * (1.0 - lost) * (now - B[T_SHAPED])
            P[j, T_REACT] = now + max(LEAST_REACT_S, wait)
            P[j, T_DECIDE] = min(P[j, T_DECIDE], P[j, T_REACT])
