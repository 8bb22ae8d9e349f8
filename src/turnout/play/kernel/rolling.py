"""The ball on the ground: it slides, then rolls; air drags it all the way."""

import math

from turnout.play.kernel.columns import BVX, BVY, BX, BY, ROLL_BELOW
from turnout.play.kernel.compiling import kernel
from turnout.play.kernel.weights import K_DRAG, K_ROLL, K_SLIDE

PATH_STEP_S = 0.1
PATH_STEPS = 32


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
def roll_ball(B, W, dt):
    """Move a loose ball by one step."""
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
def predict(B, W, path):
    """Fill `path` (steps, 2) with where the ball will be every PATH_STEP_S from now, as everybody judges it."""
    x, y, vx, vy = B[BX], B[BY], B[BVX], B[BVY]
    speed = math.sqrt(vx * vx + vy * vy)
    ux, uy = (vx / speed, vy / speed) if speed > 0.0 else (0.0, 0.0)
    for step in range(path.shape[0]):
        after = slower(speed, B[ROLL_BELOW], PATH_STEP_S, W[K_SLIDE], W[K_ROLL], W[K_DRAG])
        way = 0.5 * (speed + after) * PATH_STEP_S
        x += ux * way
        y += uy * way
        speed = after
        path[step, 0] = x
        path[step, 1] = y
