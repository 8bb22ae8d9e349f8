"""One step with the ball at somebody's feet: lift the head, kick, carry, be tackled."""

import math

from turnout.play.kernel.chance import CLOCK, uniform
from turnout.play.kernel.choosing import choose
from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel
from turnout.play.kernel.ground import allowed, touch_limit
from turnout.play.kernel.judging import happens, note
from turnout.play.kernel.kicking import kick
from turnout.play.kernel.owning import hold, run_ins, set_ball_team, takes_over, touched
from turnout.play.kernel.sides import team_of
from turnout.play.kernel.supporting import give_and_go, third_man
from turnout.play.kernel.touching import fresh_draws, nearest_m, settle_s, spill, tackler
from turnout.play.kernel.weights import *

CHOOSE_S = 0.1
CARRY_TOUCH_S = 0.7
FREE_MOST_S = 4.0
TO_FEET_MPS = 3.5
AT_FEET_M = 0.4


@kernel
def on_ball(P, I, A, B, G, R, Z, L, T, F, W, aim, plans, edges, seen, spots, runs, chance, S, U, V, E, H, Q, LOG, dt):
    """One step with the ball at somebody's feet: kick, choose, carry, be tackled, run it in."""
    now, holder = B[NOW], G[HOLDER]
    soon = now + 0.5 * dt
    if G[FREE] == 1 and now - B[T_STARTED] > FREE_MOST_S:
        G[FREE] = 0
    if B[T_KICK_AT] <= soon:
        strike(P, I, A, B, G, R, Z, L, T, edges, W, aim, runs, S, U, V, E, H, Q, seen, chance, LOG)
        return
    if B[T_KICK_AT] > 1e17 and B[T_READY] <= soon and B[T_CHOOSE] <= soon:
        choose(P, I, A, B, G, R, Z, L, T, F, W, aim, plans, seen, spots, runs, chance)
        B[T_CHOOSE] = max(B[T_CHOOSE] + CHOOSE_S, now)
        if B[T_KICK_AT] <= soon:
            strike(P, I, A, B, G, R, Z, L, T, edges, W, aim, runs, S, U, V, E, H, Q, seen, chance, LOG)
            return
    before = G[TOUCHES]
    dribble(P, I, A, B, G, R, Z, L, W, S, U, holder, dt)
    if G[TOUCHES] > before:
        touched(P, I, B, G, R, Z, T, edges, runs, V, E, H, Q, LOG, holder)
        if G[HOLDER] != holder:
            return
    thief, pressed = tackler(P, I, A, B, G, R, Z, L, W, dt, chance)
    S[holder, S_HELD_S] += dt
    if pressed:
        S[holder, S_HELD_PRESSED_S] += dt
    if thief >= 0:
        S[holder, S_LOST_HELD] += 1
        tackled(P, I, A, B, G, R, Z, T, W, edges, runs, chance, S, U, V, E, H, Q, LOG, holder, thief)
        return
    run_ins(P, I, B, G, R, Z, T, edges, V, E, H, Q, runs, LOG)


@kernel
def strike(P, I, A, B, G, R, Z, L, T, edges, W, aim, runs, S, U, V, E, H, Q, seen, chance, LOG):
    """Kick the ball and log the pass or the shot."""
    passer, target = G[HOLDER], G[TARGET]
    if G[FREE] == 1:
        happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_START, passer, I[passer, TEAM], -1, 0)
    B[KICK_X], B[KICK_Y] = B[BX], B[BY]
    G[FLOWN] = G[LANDED] = G[KICK_HEAD] = 0
    kick(P, I, A, B, G, W, S, U, seen, chance)
    G[KICK_FIRST] = 1 if G[TOUCHES] == 1 else 0
    fresh_draws(P)
    B[T_PLAN] = B[NOW] + 0.3
    speed = math.sqrt(B[BVX] * B[BVX] + B[BVY] * B[BVY])
    if G[SHOT] == 1:
        V[I[passer, TEAM], V_SHOTS] += 1
        note(LOG, G, B, LOG_SHOT, passer, -1, I[passer, TEAM], speed)
        happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_SHOOT, passer, I[passer, TEAM], -1, 0)
        return
    note(LOG, G, B, LOG_PASS, passer, target, I[passer, TEAM], speed)
    if 0 < G[LOG_N] <= LOG.shape[0]:
        LOG[G[LOG_N] - 1, LOG_AIM_X], LOG[G[LOG_N] - 1, LOG_AIM_Y] = B[AIM_X], B[AIM_Y]
    if G[BACKS] == 1:
        give_and_go(P, I, A, B, G, R, Z, L, aim, passer)
    third_man(P, I, A, B, G, R, Z, L, W, aim, chance)
    if G[TURNCOATS] == 1:
        I[passer, TEAM] = team_of(B, G, R, I[passer, ROLE])


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
