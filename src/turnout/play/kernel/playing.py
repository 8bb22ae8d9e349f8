"""One run: the clock, the phases in order, every ball with its own players on the same grass."""

import math

from turnout.play.kernel.chance import MASK, PURPOSES, START, mix, noise, uniform
from turnout.play.kernel.chasing import chase
from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_making_arrays
from turnout.play.kernel.deeds import deeds
from turnout.play.kernel.gates import share_gates
from turnout.play.kernel.ground import allowed
from turnout.play.kernel.keeping import keep
from turnout.play.kernel.loose_ball import loose
from turnout.play.kernel.marking import mark
from turnout.play.kernel.moving import APART_S, look_ahead, move, part_bodies
from turnout.play.kernel.on_ball import on_ball
from turnout.play.kernel.owning import close_possession, close_spell
from turnout.play.kernel.preparing import prepare_balls, prepare_players
from turnout.play.kernel.restarting import begin, begins_at, dead, stop
from turnout.play.kernel.seeing import look, see
from turnout.play.kernel.shape import take_shape
from turnout.play.kernel.supporting import support
from turnout.play.kernel.watching import (
    clocks,
    journeys,
    lift,
    moments,
    somebody_decides,
    somebody_travels,
    stand_by,
    stand_in_line,
)
from turnout.play.kernel.weights import *

STEP_OFF_M, DRIFT_MPS, STALE_MOST_S = 0.5, 0.3, 0.6  # how a start differs from the drawn one, free


@kernel_making_arrays
def run(
    seed, steps, units, roles, A, R, Z, L, T, F, W, aim, plans, goals, edges, starts, slots, start_row, owner, out_grow,
    S, U, V, E, H, Q, LOG, logged, frame_every, frame_from, FR, FB, FROLE,
):  # fmt: skip
    """Play `steps` time steps of a scene from a seed; fill the sums, the logs (one per ball) and the frames."""
    dt, balls = W[K_DT], units.shape[0]
    if owner < 0:  # either side may begin
        owner = mix(seed & MASK) & 1
    P, I, chance = prepare_players(seed, units, roles, R, edges, slots, owner)
    B, G, limits, seen, runs, fired, was, path, spots, lanes = prepare_balls(
        units, R, Z, T, L, F, start_row, owner, out_grow)  # fmt: skip
    for ball in range(balls):
        a, b = units[ball, 0], units[ball, 1]
        kick_off(balls, P[a:b], I[a:b], A[a:b], B[ball], G[ball], R, Z, limits[ball], T, W, aim, starts[ball],
                 seen[ball], runs[ball], chance[a * PURPOSES : b * PURPOSES], V, Q, LOG[ball], owner,
                 start_row)  # fmt: skip
    lifts = (L[:, L_UNTIL] != UNTIL_NONE).any() or (L[:, L_WHILE] >= WHILE_BEHIND).any()
    keepers, lines = (R[:, R_KEEPS] >= 0.0).any(), (R[:, R_WAITS] == 1.0).any()
    apart = max(1, int(APART_S / dt + 0.5))
    share, frame, step = 1.0 / balls, 0, 0
    while step < steps:
        number = min(apart - step % apart, steps - step)
        if frame_every > 0 and frame < FB.shape[0]:
            if step >= frame_from and (step - frame_from) % frame_every == 0:
                record(P, I, B, G, units, FR, FB, FROLE, frame, step * dt)
                frame += 1
            number = min(number, frame_from - step if step < frame_from
                         else frame_every - (step - frame_from) % frame_every)  # fmt: skip
        for ball in range(balls):
            a, b = units[ball, 0], units[ball, 1]
            play_on(
                step, number, dt, share, lifts, keepers, lines, P[a:b], I[a:b], A[a:b], B[ball], G[ball], R, Z,
                limits[ball], T, F, W, aim, plans, goals, edges, starts[ball], seen[ball], spots, lanes, path,
                runs[ball],
                chance[a * PURPOSES : b * PURPOSES], fired[ball], was[ball], S[a:b], U, V, E, H, Q, LOG[ball],
            )  # fmt: skip
        step += number
        if step % apart == 0:
            part_bodies(P)
            for ball in range(balls):
                look_ahead(P, I, units[ball, 0], units[ball, 1], G[ball, BALL_TEAM])
            share_gates(I, B, G, Z, L, T, units)
    Q[Q_TIME] = steps * dt
    for i in range(P.shape[0]):
        S[i, S_TIME], S[i, S_PEAK] = Q[Q_TIME], P[i, PEAK]
    for ball in range(balls):
        logged[ball] = G[ball, LOG_N]


@kernel
def kick_off(balls, P, I, A, B, G, R, Z, L, T, W, aim, starts, seen, runs, chance, V, Q, LOG, owner, start_row):
    """Everybody stands where play starts, has looked round, and play begins."""
    x, y = begins_at(I, Z, starts, balls)
    stop(P, I, B, G, R, Z, L, T, W, aim, starts, Q, runs, LOG, owner, start_row, x, y)
    settle_at_once(P, B)
    stir(P, I, B, G, R, Z, L, chance)
    begin(P, I, A, B, G, R, Z, L, V, Q, LOG, G[TAKER])
    for i in range(P.shape[0]):
        look(P, I, seen, i, 0.0, True, W[K_CONE])
        for j in range(P.shape[0]):
            seen[i, j, 4] = -STALE_MOST_S * uniform(chance, START * P.shape[0] + i)


@kernel
def play_on(
    first, number, dt, share, lifts, keepers, lines, P, I, A, B, G, R, Z, L, T, F, W, aim, plans, goals, edges, starts,
    seen, spots, lanes, path, runs, chance, fired, was, S, U, V, E, H, Q, LOG,
):  # fmt: skip
    """So many steps of one ball and its players."""
    for step in range(first, first + number):
        B[NOW] = step * dt
        see(P, I, A, B, G, Z, W, aim, seen, chance, S)
        clocks(P, I, B, G, R, Z, T, edges, V, Q, LOG, fired, dt)
        if G[PHASE] == DEAD:
            dead(P, I, A, B, G, R, Z, L, W, V, Q, LOG, dt)
            if was.shape[0] > 0:
                stand_by(P, I, Z, T, was)
        else:
            Q[Q_ROLLING] += dt * share
            if G[HOLDER] >= 0:
                on_ball(P, I, A, B, G, R, Z, L, T, F, W, aim, plans, edges, seen, spots, runs, chance,
                        S, U, V, E, H, Q, LOG, dt)  # fmt: skip
            if G[HOLDER] < 0 and G[PHASE] == PLAY:
                chase(P, I, A, B, G, R, Z, L, W, path)
                loose(P, I, A, B, G, R, Z, L, T, F, goals, W, aim, plans, edges, seen, spots, runs, chance,
                      S, U, V, E, H, Q, LOG, dt)  # fmt: skip
            if G[DEEDS] == 1 and G[WANT_STOP] == 0:
                deeds(P, I, B, G, R, Z, T, edges, V, E, H, Q, runs, LOG)
            take_shape(P, I, B, G, R, Z, L, W, aim, goals)
            if somebody_decides(P, B, dt):
                support(P, I, A, B, G, R, Z, L, T, W, aim, seen, spots, chance)
                mark(P, I, A, B, G, R, Z, L, goals, W, aim, plans, seen, spots, lanes, chance)
                if keepers:
                    keep(P, I, A, B, G, R, Z, L, W)
            if somebody_travels(I):
                journeys(P, I, A, B, G, R, Z, L, LOG)
            if lines:
                stand_in_line(P, I, B, R, starts)
            if lifts:
                lift(P, I, B, G, R, Z, L)
            if was.shape[0] > 0:
                moments(P, I, B, G, R, Z, T, edges, runs, V, E, H, Q, LOG, was, dt)
        if G[WANT_STOP] == 1:
            close_possession(B, G, V, 1 if G[SPELL_TEAM] == G[POSSESSION] else 0)
            close_spell(G, V, E, H, runs, STOPPED)
            x, y = (B[STOP_X], B[STOP_Y]) if B[STOP_X] < 1e8 else (B[BX], B[BY])
            stop(P, I, B, G, R, Z, L, T, W, aim, starts, Q, runs, LOG, G[STOP_TEAM], G[STOP_ROW], x, y)
        move(P, I, A, B, W, dt, G[HOLDER], S, U)


@kernel
def settle_at_once(P, B):
    """The run begins with everybody standing where play starts and the ball with the taker."""
    for i in range(P.shape[0]):
        P[i, X], P[i, Y] = P[i, SPOT_X], P[i, SPOT_Y]
        dx, dy = B[SPOT_BX] - P[i, X], B[SPOT_BY] - P[i, Y]
        far = math.sqrt(dx * dx + dy * dy)
        P[i, HX], P[i, HY] = (dx / far, dy / far) if far > 0.01 else (0.0, 1.0)
    B[BX], B[BY] = B[SPOT_BX], B[SPOT_BY]


@kernel
def stir(P, I, B, G, R, Z, L, chance):
    """No two starts are alike: everybody but the taker is a step off his spot and not quite still."""
    for i in range(P.shape[0]):
        role = I[i, ROLE]
        if i == G[TAKER] or R[role, R_EDGE] >= 0.0 or R[role, R_FIXED] == 1.0 or R[role, R_KEEPS] >= 0.0:
            continue
        stream = START * P.shape[0] + i
        x, y = P[i, X] + STEP_OFF_M * noise(chance, stream), P[i, Y] + STEP_OFF_M * noise(chance, stream)
        P[i, X], P[i, Y] = allowed(P, I, R, Z, L, B, G[BALL_TEAM], i, x, y, 0.5)
        P[i, VX], P[i, VY] = DRIFT_MPS * noise(chance, stream), DRIFT_MPS * noise(chance, stream)


@kernel
def record(P, I, B, G, units, FR, FB, FROLE, frame, now):
    """Keep one frame: places, facing, roles, and for every ball time, place, holder, height."""
    for i in range(P.shape[0]):
        FR[frame, i, 0], FR[frame, i, 1] = P[i, X], P[i, Y]
        FR[frame, i, 2], FR[frame, i, 3] = P[i, HX], P[i, HY]
        FROLE[frame, i] = I[i, ROLE]
    for ball in range(units.shape[0]):
        holder = G[ball, HOLDER]
        FB[frame, ball, 0], FB[frame, ball, 1], FB[frame, ball, 2] = now, B[ball, BX], B[ball, BY]
        FB[frame, ball, 3] = holder + units[ball, 0] if holder >= 0 else -1
        FB[frame, ball, 4] = B[ball, BZ]
