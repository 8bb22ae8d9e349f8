"""One run: the clock, the phases in order, events inside the step at their exact times."""

import math

from turnout.play.kernel.carrying import choose, kick
from turnout.play.kernel.chance import CLOCK, uniform
from turnout.play.kernel.chasing import chase
from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_making_arrays
from turnout.play.kernel.ground import allowed, inside, touch_limit
from turnout.play.kernel.judging import happens, note
from turnout.play.kernel.marking import mark, pick_presser
from turnout.play.kernel.moving import move, part_bodies
from turnout.play.kernel.owning import (
    close_possession,
    close_spell,
    completes,
    hold,
    run_ins,
    set_ball_team,
    takes_over,
)
from turnout.play.kernel.preparing import prepare
from turnout.play.kernel.restarting import begin, dead, stop
from turnout.play.kernel.rolling import roll_ball
from turnout.play.kernel.seeing import look, see
from turnout.play.kernel.supporting import support
from turnout.play.kernel.touching import (
    controls,
    first_touch,
    fresh_draws,
    nearest_m,
    settle_s,
    spill,
    tackler,
)
from turnout.play.kernel.watching import clocks, journeys, lift, moments, somebody_decides, somebody_travels
from turnout.play.kernel.weights import *

CHOOSE_S = 0.1
CARRY_TOUCH_S = 0.7
FREE_MOST_S = 4.0
STILL_BALL_MPS = 0.3
FREE_ROLL_S = 2.0  # a free pass nobody has reached by then is anybody's
TO_FEET_MPS = 3.5
AT_FEET_M = 0.4


@kernel_making_arrays
def run(
    seed, steps, players, roles, A, R, Z, L, T, F, W, aim, goals, edges, starts, slots, start_row, owner, out_grow,
    S, U, V, E, H, Q, LOG, frame_every, frame_from, FR, FB, FROLE,
):  # fmt: skip
    """Play `steps` time steps of a scene from a seed; fill the sums, the log and the frames. Returns events logged."""
    dt = W[K_DT]
    L = L.copy()  # limits are lifted and bind again during a run; the scene is shared between runs
    P, I, B, G, seen, spots, lanes, path, runs, chance, fired, was = prepare(
        seed, players, roles, R, Z, T, edges, starts, slots, start_row, owner, out_grow)  # fmt: skip
    stop(P, I, B, G, R, Z, L, T, W, aim, starts, Q, runs, LOG, owner, start_row, Z[0, Z_X], Z[0, Z_Y])
    settle_at_once(P, B, G)
    begin(P, I, A, B, G, R, Z, L, V, Q, LOG, G[TAKER])
    for i in range(players):
        look(P, I, W, seen, i, 0.0, True)
    lifts = (L[:, L_UNTIL] != UNTIL_NONE).any()
    frame = 0
    for step in range(steps):
        B[NOW] = step * dt
        if frame_every > 0 and step >= frame_from and (step - frame_from) % frame_every == 0 and frame < FB.shape[0]:
            record(P, I, B, G, FR, FB, FROLE, frame)
            frame += 1
        see(P, I, A, B, G, W, seen, chance)
        clocks(P, I, B, G, R, Z, T, edges, Q, LOG, fired, dt)
        if G[PHASE] == DEAD:
            dead(P, I, A, B, G, R, Z, L, W, V, Q, LOG, dt)
        else:
            Q[Q_ROLLING] += dt
            if G[HOLDER] >= 0:
                on_ball(
                    P, I, A, B, G, R, Z, L, T, F, W, aim, edges, seen, spots, runs, chance, S, U, V, E, H, Q, LOG, dt
                )
            if G[HOLDER] < 0 and G[PHASE] == PLAY:
                chase(P, I, A, B, G, R, Z, L, W, path)
                loose(P, I, A, B, G, R, Z, L, T, F, W, aim, edges, seen, spots, runs, chance, S, U, V, E, H, Q, LOG, dt)
            pick_presser(P, I, B, G, R, Z, L, W)
            if somebody_decides(P, B, dt):
                support(P, I, A, B, G, R, Z, L, W, aim, seen, spots, chance)
                mark(P, I, A, B, G, R, Z, L, goals, W, aim, seen, spots, lanes, chance)
            if somebody_travels(I):
                journeys(P, I, A, B, G, R, Z, L, LOG)
            if lifts:
                lift(B, G, Z, L)
            if was.shape[0] > 0:
                moments(P, I, B, G, R, Z, T, edges, runs, V, E, H, Q, LOG, was, dt)
        if G[WANT_STOP] == 1:
            close_spell(G, V, E, H, runs, STOPPED)
            close_possession(B, G, V, 1)
            stop(P, I, B, G, R, Z, L, T, W, aim, starts, Q, runs, LOG, G[STOP_TEAM], G[STOP_ROW], B[BX], B[BY])
        move(P, I, A, B, W, dt, G[HOLDER], S, U)
        part_bodies(P, B, W)
        Q[Q_TIME] += dt
    S[:, S_TIME] = Q[Q_TIME]
    return G[LOG_N]


@kernel
def settle_at_once(P, B, G):
    """The run begins with everybody standing where play starts and the ball with the taker."""
    for i in range(P.shape[0]):
        P[i, X], P[i, Y] = P[i, SPOT_X], P[i, SPOT_Y]
        dx, dy = B[SPOT_BX] - P[i, X], B[SPOT_BY] - P[i, Y]
        far = math.sqrt(dx * dx + dy * dy)
        P[i, HX], P[i, HY] = (dx / far, dy / far) if far > 0.01 else (0.0, 1.0)
    B[BX], B[BY] = B[SPOT_BX], B[SPOT_BY]


@kernel
def record(P, I, B, G, FR, FB, FROLE, frame):
    """Keep one frame: places, facing, roles, ball, holder."""
    for i in range(P.shape[0]):
        FR[frame, i, 0], FR[frame, i, 1] = P[i, X], P[i, Y]
        FR[frame, i, 2], FR[frame, i, 3] = P[i, HX], P[i, HY]
        FROLE[frame, i] = I[i, ROLE]
    FB[frame, 0], FB[frame, 1], FB[frame, 2], FB[frame, 3] = B[NOW], B[BX], B[BY], G[HOLDER]


@kernel
def on_ball(P, I, A, B, G, R, Z, L, T, F, W, aim, edges, seen, spots, runs, chance, S, U, V, E, H, Q, LOG, dt):
    """One step with the ball at somebody's feet: kick, choose, carry, be tackled, run it in."""
    now, holder = B[NOW], G[HOLDER]
    soon = now + 0.5 * dt
    if G[FREE] == 1 and now - B[T_STARTED] > FREE_MOST_S:
        G[FREE] = 0
    if B[T_KICK_AT] <= soon:
        strike(P, I, A, B, G, R, Z, T, edges, W, runs, S, U, V, E, H, Q, seen, chance, LOG)
        return
    if B[T_KICK_AT] > 1e17 and B[T_READY] <= soon and B[T_CHOOSE] <= soon:
        choose(P, I, A, B, G, R, Z, L, T, F, W, aim, seen, spots, runs, chance)
        B[T_CHOOSE] = max(B[T_CHOOSE] + CHOOSE_S, now)
        if B[T_KICK_AT] <= soon:
            strike(P, I, A, B, G, R, Z, T, edges, W, runs, S, U, V, E, H, Q, seen, chance, LOG)
            return
    before = G[TOUCHES]
    dribble(P, I, A, B, G, R, Z, L, W, S, U, holder, dt)
    if G[TOUCHES] > before:
        touched(P, I, B, G, R, Z, T, edges, runs, V, E, H, Q, LOG, holder)
        if G[HOLDER] != holder:
            return
    thief = tackler(P, I, A, B, G, R, Z, L, W, dt, chance)
    if thief >= 0:
        tackled(P, I, A, B, G, R, Z, T, W, edges, runs, chance, S, U, V, E, H, Q, LOG, holder, thief)
        return
    run_ins(P, I, B, G, R, Z, T, edges, V, E, H, Q, runs, LOG)


@kernel
def strike(P, I, A, B, G, R, Z, T, edges, W, runs, S, U, V, E, H, Q, seen, chance, LOG):
    """Kick the ball and log the pass."""
    passer, target = G[HOLDER], G[TARGET]
    if G[FREE] == 1:
        happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_START, passer, I[passer, TEAM], -1, 0)
    kick(P, I, A, B, G, W, S, U, seen, chance)
    fresh_draws(P)
    B[T_PLAN] = B[NOW] + 0.3
    note(LOG, G, B, LOG_PASS, passer, target, I[passer, TEAM], math.sqrt(B[BVX] * B[BVX] + B[BVY] * B[BVY]))


@kernel
def dribble(P, I, A, B, G, R, Z, L, W, S, U, holder, dt):
    """Run where the ball is carried; the ball comes to the feet and stays just ahead of the body."""
    limit = touch_limit(I, R, Z, L, B, G[BALL_TEAM], holder)
    free_feet = limit == 0 or limit - G[TOUCHES] >= 2
    x, y = allowed(P, I, R, Z, L, B, G[BALL_TEAM], holder, B[CARRY_X], B[CARRY_Y], 0.3)
    P[holder, TX], P[holder, TY] = x, y
    P[holder, PACE] = W[K_DRIBBLE] * A[holder, TOP] if free_feet and G[FREE] == 0 else 1.2
    speed = math.sqrt(P[holder, VX] ** 2 + P[holder, VY] ** 2)
    if free_feet and speed > 1.0 and B[NOW] - B[T_TOUCH] > CARRY_TOUCH_S:
        B[T_TOUCH] = B[NOW]
        G[TOUCHES] += 1
        S[holder, S_TOUCHES] += 1
        U[I[holder, ROLE], U_TOUCHES] += 1
    dx = P[holder, X] + AT_FEET_M * P[holder, HX] - B[BX]
    dy = P[holder, Y] + AT_FEET_M * P[holder, HY] - B[BY]
    gap = math.sqrt(dx * dx + dy * dy)
    most = (speed + TO_FEET_MPS) * dt
    if gap > most:
        dx, dy = dx * most / gap, dy * most / gap
    B[BX] += dx
    B[BY] += dy


@kernel
def tackled(P, I, A, B, G, R, Z, T, W, edges, runs, chance, S, U, V, E, H, Q, LOG, holder, thief):
    """A tackle: the tackler comes away with the ball, or it runs loose."""
    G[TACKLED] = 1
    G[WAS_LOSER] = holder
    P[holder, T_NO_TOUCH] = B[NOW] + 0.5
    for i in range(P.shape[0]):
        P[i, TACKLE_LEFT] = -1.0
    if uniform(chance, CLOCK * P.shape[0] + thief) < W[K_TACKLE_CLEAN]:
        G[HOLDER] = -1
        win_ball(P, I, A, B, G, R, Z, T, edges, runs, S, U, V, E, H, Q, LOG, thief)
        happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_TACKLE, thief, I[thief, TEAM], -1, 0)
        return
    B[BVX], B[BVY] = 0.5 * P[holder, VX], 0.5 * P[holder, VY]
    G[HOLDER] = -1
    B[T_KICK_AT] = 1e18
    spill(P, I, B, G, LOG, chance, thief, 0.5)
    P[thief, T_NO_TOUCH] = B[NOW] + 0.15


@kernel
def win_ball(P, I, A, B, G, R, Z, T, edges, runs, S, U, V, E, H, Q, LOG, player):
    """A player of the other side has it under control."""
    G[TOUCHES] = 1
    S[player, S_TOUCHES] += 1
    U[I[player, ROLE], U_TOUCHES] += 1
    G[FREE] = 0
    G[PASS_ON] = 0
    takes_over(P, I, B, G, R, Z, T, edges, S, V, E, H, Q, runs, LOG, player)
    if G[HOLDER] < 0:
        hold(P, I, B, G, A, R, Z, player, settle_s(P, I, A, player, nearest_m(P, I, player)))
        set_ball_team(I, G, R, I[player, TEAM])


@kernel
def loose(P, I, A, B, G, R, Z, L, T, F, W, aim, edges, seen, spots, runs, chance, S, U, V, E, H, Q, LOG, dt):
    """One step of a loose ball: it rolls, somebody touches it at an exact time inside the step, or it goes out."""
    now = B[NOW]
    x0, y0 = B[BX], B[BY]
    if G[FREE] == 1 and now - B[T_KICKED] > FREE_ROLL_S:
        G[FREE] = 0
    roll_ball(B, W, dt)
    who, at = first_touch(P, I, B, G, R, W, x0, y0, dt, chance)
    if who < 0:
        if not inside(Z, 0, B[BX], B[BY], B[OUT_GROW]) or died_outside(I, B, Z):
            goes_out(P, I, B, G, R, Z, T, edges, runs, V, E, H, Q, LOG)
        return
    B[BX], B[BY] = x0 + at * (B[BX] - x0), y0 + at * (B[BY] - y0)
    B[NOW] = now + at * dt
    touch(P, I, A, B, G, R, Z, L, T, F, W, aim, edges, seen, spots, runs, chance, S, U, V, E, H, Q, LOG, who)
    B[NOW] = now


@kernel
def died_outside(I, B, Z):
    """A ball that lies still beside the line, beyond everybody's reach, is out."""
    if B[BVX] * B[BVX] + B[BVY] * B[BVY] > STILL_BALL_MPS * STILL_BALL_MPS or inside(Z, 0, B[BX], B[BY], 0.0):
        return False
    for i in range(I.shape[0]):
        if I[i, CHASING] != 0 and I[i, JOURNEY] == 0:
            return False
    return True


@kernel
def touch(P, I, A, B, G, R, Z, L, T, F, W, aim, edges, seen, spots, runs, chance, S, U, V, E, H, Q, LOG, who):
    """A foot on the ball: control it, play it first time when no touch is left to control it, or spill it."""
    near = 9.0 if G[FREE] == 1 else nearest_m(P, I, who)
    again = who == G[LAST] and G[PASS_ON] == 0
    touches = G[TOUCHES] if again else 0
    limit = touch_limit(I, R, Z, L, B, G[BALL_TEAM], who)
    first_time = limit > 0 and limit - touches <= 1
    ours = I[who, TEAM] == G[BALL_TEAM]
    if not first_time and not controls(P, I, A, B, G, W, near, chance, who):
        G[TOUCHES] = touches + 1
        S[who, S_TOUCHES] += 1
        U[I[who, ROLE], U_TOUCHES] += 1
        spill(P, I, B, G, LOG, chance, who, 0.35)
        G[FREE] = 0
        if ours:
            G[SPILLED_BY] = who
        return
    B[IN_VX], B[IN_VY] = B[BVX], B[BVY]
    passer = G[PASSER]
    arrived = ours and G[PASS_ON] == 1 and passer != who
    G[TOUCHES] = touches
    if ours:
        hold(P, I, B, G, A, R, Z, who, settle_s(P, I, A, who, near))
        G[FREE] = 0
        G[PASS_ON] = 0
        note(LOG, G, B, LOG_CONTROL, who, passer if arrived else -1, I[who, TEAM], runs[I[who, TEAM]])
        if not first_time:
            G[TOUCHES] += 1
            S[who, S_TOUCHES] += 1
            U[I[who, ROLE], U_TOUCHES] += 1
        if arrived:
            completes(P, I, B, G, R, Z, T, F, edges, S, U, V, E, H, Q, runs, LOG, passer, who)
    else:
        win_ball(P, I, A, B, G, R, Z, T, edges, runs, S, U, V, E, H, Q, LOG, who)
        if first_time:
            G[TOUCHES] = touches
    if T.shape[0] > 0 and G[HOLDER] == who:
        touched(P, I, B, G, R, Z, T, edges, runs, V, E, H, Q, LOG, who)
    if first_time and G[HOLDER] == who and G[WANT_STOP] == 0:
        G[FIRST_TIME] = 1
        choose(P, I, A, B, G, R, Z, L, T, F, W, aim, seen, spots, runs, chance)
        if G[TARGET] >= 0:
            strike(P, I, A, B, G, R, Z, T, edges, W, runs, S, U, V, E, H, Q, seen, chance, LOG)
        G[FIRST_TIME] = 0


@kernel
def touched(P, I, B, G, R, Z, T, edges, runs, V, E, H, Q, LOG, who):
    """Sentences about the number of touches in one hold of the ball."""
    for row in range(T.shape[0]):
        if T[row, ROW_WHEN] == E_TOUCHES and T[row, ROW_COUNT] == G[TOUCHES]:
            place = T[row, ROW_PLACE]
            if place < 0 or inside(Z, place, B[BX], B[BY], 0.0):
                happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_TOUCHES, who, I[who, TEAM], place,
                        G[TOUCHES])  # fmt: skip
                return


@kernel
def goes_out(P, I, B, G, R, Z, T, edges, runs, V, E, H, Q, LOG):
    """The ball is out: the side that did not touch it last starts, with a kick-in unless a sentence says otherwise."""
    team = G[LAST_TEAM]
    cause = OUT if team == G[SPELL_TEAM] else DEFLECTED_OUT
    note(LOG, G, B, LOG_OUT, G[LAST], -1, team, cause)
    close_spell(G, V, E, H, runs, cause)
    close_possession(B, G, V, 0)
    G[WANT_STOP], G[STOP_TEAM], G[STOP_ROW] = 1, 1 - team, -1
    happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_OUT, G[LAST], team, -1, 0)
