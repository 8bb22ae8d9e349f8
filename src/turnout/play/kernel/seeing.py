"""What everybody believes about where the others are: last seen, carried forward with growing doubt."""

import math

from turnout.play.kernel.chance import SEE, uniform
from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_inlined
from turnout.play.kernel.weights import *

NEAR_M = 1.6  # felt and heard without looking
RUNS_MPS = 3.2  # faster than this a body faces its run
HALF_OPEN = 0.5  # how far a supporting body turns from the ball to what is ahead, share, free


@kernel
def see(P, I, A, B, G, Z, W, aim, seen, chance, S):
    """Whoever is due turns the body, looks, and refreshes what falls into the cone; now and then a look all round."""
    now = B[NOW]
    due = now + 0.5 * W[K_DT]
    players = P.shape[0]
    for i in range(players):
        if P[i, T_SEE] > due:
            continue
        P[i, T_SEE] += W[K_SEE_S]
        turn_body(P, I, B, G, Z, W, aim, i)
        tire(P, A, W, i)
        pressed = nearest_opponent_m(P, I, seen, i, now) < 2.0
        rate = A[i, SCAN] * (0.6 if pressed else 1.0)
        around = uniform(chance, SEE * players + i) < 1.0 - math.exp(-rate * W[K_SEE_S])
        S[i, S_LOOKS] += 1 if around else 0
        if pressed:
            S[i, S_NEAR_S] += W[K_SEE_S]
            S[i, S_LOOKS_PRESSED] += 1 if around else 0
        cone = W[K_EYES] if i == G[TARGET] and G[PASS_ON] == 1 else W[K_CONE]
        look(P, I, seen, i, now, around, cone)


@kernel
def look(P, I, seen, i, now, around, cone):
    """Refresh a player's picture; STALE becomes the mean age (0 to 1 s) of the opponents near the ball side.

    cone: cosine of the half angle he takes in; whoever waits for a pass has his eyes on the ball
    """
    stale, near = 0.0, 0
    for j in range(P.shape[0]):
        if j == i:
            continue
        dx, dy = P[j, X] - P[i, X], P[j, Y] - P[i, Y]
        far2 = dx * dx + dy * dy
        ahead = dx * P[i, HX] + dy * P[i, HY]
        if around or far2 < NEAR_M * NEAR_M or (ahead > 0.0 and ahead * ahead > cone * cone * far2):
            seen[i, j, 0] = P[j, X]
            seen[i, j, 1] = P[j, Y]
            seen[i, j, 2] = P[j, VX]
            seen[i, j, 3] = P[j, VY]
            seen[i, j, 4] = now
        if far2 < 36.0 and I[j, TEAM] == 1 - I[i, TEAM]:
            stale += min(1.0, now - seen[i, j, 4])
            near += 1
    P[i, STALE] = stale / near if near > 0 else 0.0


@kernel
def tire(P, A, W, i):
    """Running faster than he can keep up empties a player's reserve; it fills again with time."""
    speed = math.sqrt(P[i, VX] * P[i, VX] + P[i, VY] * P[i, VY])
    P[i, PEAK] = max(P[i, PEAK], speed)
    used = W[K_TIRE] * max(0.0, speed - A[i, CRUISE]) * W[K_SEE_S]
    P[i, FRESH] = max(0.0, P[i, FRESH] - used + (1.0 - P[i, FRESH]) / W[K_RECOVER_S] * W[K_SEE_S])


@kernel
def turn_body(P, I, B, G, Z, W, aim, i):
    """Turn towards the run when running, else towards the ball as fast as a body turns; in support side-on to it."""
    vx, vy = P[i, VX], P[i, VY]
    speed = math.sqrt(vx * vx + vy * vy)
    if i == G[HOLDER]:
        fx, fy = P[i, FX], P[i, FY]
    elif speed > RUNS_MPS:
        fx, fy = vx, vy
    else:
        fx, fy = B[BX] - P[i, X], B[BY] - P[i, Y]
        if I[i, TEAM] == G[BALL_TEAM]:
            open_x, open_y = aim[I[i, TEAM], 0], aim[I[i, TEAM], 1]
            if open_x == 0.0 and open_y == 0.0:
                open_x, open_y = Z[0, Z_X] - P[i, X], Z[0, Z_Y] - P[i, Y]
            far = math.sqrt(fx * fx + fy * fy)
            wide = max(1e-6, math.sqrt(open_x * open_x + open_y * open_y))
            fx, fy = fx + HALF_OPEN * far * open_x / wide, fy + HALF_OPEN * far * open_y / wide
    length = math.sqrt(fx * fx + fy * fy)
    if length < 1e-6:
        return
    fx, fy = fx / length, fy / length
    most = W[K_TURN_RATE] / (1.0 + 0.25 * speed) * W[K_SEE_S]
    cross = P[i, HX] * fy - P[i, HY] * fx
    dot = P[i, HX] * fx + P[i, HY] * fy
    c, s = math.cos(most), math.sin(most)
    if dot >= c:
        P[i, HX], P[i, HY] = fx, fy
        return
    if cross < 0.0:
        s = -s
    P[i, HX], P[i, HY] = P[i, HX] * c - P[i, HY] * s, P[i, HX] * s + P[i, HY] * c


@kernel_inlined
def believe(seen, i, now, lead, spots):
    """Fill `spots` (players, 2) with where player i thinks everybody is `lead` seconds from now."""
    for j in range(seen.shape[1]):
        age = now - seen[i, j, 4] + lead
        carry = age / (1.0 + age)
        spots[j, 0] = seen[i, j, 0] + seen[i, j, 2] * carry
        spots[j, 1] = seen[i, j, 1] + seen[i, j, 3] * carry


@kernel_inlined
def nearest_opponent_m(P, I, seen, i, now):
    """Metres from a player to the nearest opponent as last seen."""
    best = 1e9
    for j in range(P.shape[0]):
        if I[j, TEAM] != 1 - I[i, TEAM]:
            continue
        dx, dy = seen[i, j, 0] - P[i, X], seen[i, j, 1] - P[i, Y]
        best = min(best, dx * dx + dy * dy)
    return math.sqrt(best)
