"""The ball: on the ground it slides, then rolls; in the air it falls and bounces; air drags it all the way."""

import math

from turnout.play.kernel.columns import BVX, BVY, BVZ, BX, BY, BZ, ROLL_BELOW
from turnout.play.kernel.compiling import kernel
from turnout.play.kernel.weights import K_BOUNCE, K_DRAG, K_ROLL, K_SLIDE

PATH_STEP_S = 0.1
PATH_STEPS = 32
GRAVITY_MPS2 = 9.81
LOWEST_BOUNCE_MPS = 0.6  # a lower hop is rolling


@kernel
def slower(speed, roll_below, dt, slide, roll, drag):
    """Speed of a ball after `dt`, never below 0: m/s. Sliding friction down to `roll_below`, rolling after."""
    resist = slide if speed > roll_below else roll
    mean = max(0.0, speed - 0.5 * dt * (resist + drag * speed * speed))
    after = speed - dt * (resist + drag * mean * mean)
    if speed > roll_below > after:
        sliding = (speed - roll_below) / (slide + drag * speed * speed)
        after = roll_below - (dt - sliding) * (roll + drag * roll_below * roll_below)
    return max(0.0, after)


@kernel
def move_ball(B, W, dt):
    """Move a loose ball by one step: on the ground, or in the air with a bounce at its exact time."""
    if B[BZ] > 0.0 or B[BVZ] > 0.0:
        left = fly(B, W, dt)
        if left <= 0.0:
            return
        roll_ball(B, W, left)
    else:
        roll_ball(B, W, dt)


@kernel
def roll_ball(B, W, dt):
    """Move a ball on the ground by so many seconds."""
    vx, vy = B[BVX], B[BVY]
    speed = math.sqrt(vx * vx + vy * vy)
    if speed <= 0.0:
        return
    after = slower(speed, B[ROLL_BELOW], dt, W[K_SLIDE], W[K_ROLL], W[K_DRAG])
    way = 0.5 * (speed + after) * dt / speed
    B[BX] += vx * way
    B[BY] += vy * way
    B[BVX] = vx * after / speed
    B[BVY] = vy * after / speed


@kernel
def fly(B, W, dt):
    """Move a ball in the air under gravity and drag; returns the seconds left once it stays on the ground."""
    left = dt
    for _ in range(3):
        speed = math.sqrt(B[BVX] * B[BVX] + B[BVY] * B[BVY] + B[BVZ] * B[BVZ])
        slow = math.exp(-W[K_DRAG] * speed * left)
        fall = B[BVZ] * slow - GRAVITY_MPS2 * left
        height = B[BZ] + 0.5 * (B[BVZ] + fall) * left
        step = left
        if height < 0.0:
            root = math.sqrt(max(0.0, B[BVZ] * B[BVZ] + 2.0 * GRAVITY_MPS2 * B[BZ]))
            step = min(left, (B[BVZ] + root) / GRAVITY_MPS2)
            slow = math.exp(-W[K_DRAG] * speed * step)
            fall = B[BVZ] * slow - GRAVITY_MPS2 * step
        half = 0.5 * (1.0 + slow) * step
        B[BX] += B[BVX] * half
        B[BY] += B[BVY] * half
        B[BVX], B[BVY] = B[BVX] * slow, B[BVY] * slow
        left -= step
        if height >= 0.0:
            B[BZ], B[BVZ] = height, fall
            return 0.0
        bounce(B, W, -fall)
        if B[BVZ] == 0.0:
            return left
    return 0.0


@kernel
def bounce(B, W, down_mps):
    """Off the ground: up with the surface's restitution, along it slower by friction, at most until it rolls."""
    speed = math.sqrt(B[BVX] * B[BVX] + B[BVY] * B[BVY])
    up = W[K_BOUNCE] * down_mps
    if speed > 1e-9:
        slid = speed - W[K_SLIDE] / GRAVITY_MPS2 * (1.0 + W[K_BOUNCE]) * down_mps
        kept = max(min(speed, B[ROLL_BELOW]), slid) / speed
        B[BVX], B[BVY] = B[BVX] * kept, B[BVY] * kept
    B[BZ], B[BVZ] = 0.0, up if up > LOWEST_BOUNCE_MPS else 0.0


@kernel
def predict(B, W, path):
    """Fill `path` (steps, 3: x, y, height) with the ball every PATH_STEP_S from now, as everybody judges it."""
    x, y, vx, vy, z, vz = B[BX], B[BY], B[BVX], B[BVY], B[BZ], B[BVZ]
    speed = math.sqrt(vx * vx + vy * vy)
    ux, uy = (vx / speed, vy / speed) if speed > 0.0 else (0.0, 0.0)
    for step in range(path.shape[0]):
        if z > 0.0 or vz > 0.0:
            after = speed * math.exp(-W[K_DRAG] * speed * PATH_STEP_S)
            z += vz * PATH_STEP_S - 0.5 * GRAVITY_MPS2 * PATH_STEP_S * PATH_STEP_S
            vz -= GRAVITY_MPS2 * PATH_STEP_S
            if z < 0.0:
                vz = -W[K_BOUNCE] * vz if vz < -LOWEST_BOUNCE_MPS / W[K_BOUNCE] else 0.0
                z, after = 0.0, 0.75 * after
        else:
            after = slower(speed, B[ROLL_BELOW], PATH_STEP_S, W[K_SLIDE], W[K_ROLL], W[K_DRAG])
        way = 0.5 * (speed + after) * PATH_STEP_S
        x += ux * way
        y += uy * way
        speed = after
        path[step, 0], path[step, 1], path[step, 2] = x, y, z
