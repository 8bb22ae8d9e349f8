"""One step of a loose ball: it moves, somebody meets it at an exact time inside the step, or it is in or out."""

from turnout.play.kernel.choosing import choose
from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_inlined
from turnout.play.kernel.counting import watch_flight
from turnout.play.kernel.ground import crossed, inside, touch_limit
from turnout.play.kernel.heading import head
from turnout.play.kernel.judging import happens, note
from turnout.play.kernel.lanes import pressure_at
from turnout.play.kernel.on_ball import strike, win_ball
from turnout.play.kernel.owning import close_possession, close_spell, completes, hold, score, touched
from turnout.play.kernel.rolling import move_ball
from turnout.play.kernel.seeing import believe
from turnout.play.kernel.shooting import best_shot
from turnout.play.kernel.touching import FOOT_HIGH_M, block, controls, first_touch, nearest_m, save, settle_s, spill
from turnout.play.kernel.weights import *

STILL_BALL_MPS = 0.3
FREE_ROLL_S = 2.5  # a free pass nobody has reached by then is anybody's
END_LINE_M, GOAL_KICK_M = 1.5, 2.5


@kernel
def loose(P, I, A, B, G, R, Z, L, T, F, goals, W, aim, plans, edges, seen, spots, runs, chance, S, U, V, E, H, Q, LOG,
          dt):  # fmt: skip
    """One step of a loose ball: it rolls, somebody touches it at an exact time inside the step, or it goes out."""
    now = B[NOW]
    x0, y0 = B[BX], B[BY]
    if G[FREE] == 1 and now - B[T_KICKED] > FREE_ROLL_S:
        G[FREE] = 0
    move_ball(B, W, dt)
    if G[OVERS] == 1:
        watch_flight(B, G, Z, x0, y0)
    who, at, body = first_touch(P, I, A, B, G, R, Z, W, x0, y0, dt, chance)
    line, when = line_crossed(B, Z, goals, x0, y0)
    if line >= 0 and when < at:
        if goals[line, GOAL_HOW] == PLAY_THROUGH:
            G[THROUGH] = goals[line, GOAL_PLACE]
        elif goal(P, I, B, G, R, Z, T, edges, S, V, E, H, Q, runs, LOG, goals, line):
            return
    if who < 0:
        out = not inside(Z, 0, B[BX], B[BY], B[OUT_GROW])
        if G[COMING_IN] == 1:
            out, G[COMING_IN] = out and stopped(B), 1 if out else 0
        if out or died_outside(I, B, Z):
            goes_out(P, I, B, G, R, Z, T, goals, edges, runs, V, E, H, Q, LOG)
        return
    B[BX], B[BY] = x0 + at * (B[BX] - x0), y0 + at * (B[BY] - y0)
    B[NOW] = now + at * dt
    if G[HEADS] == 1 and B[BZ] > FOOT_HIGH_M and R[I[who, ROLE], R_KEEPS] < 0.0:
        head(P, I, B, G, R, Z, T, goals, edges, S, V, E, H, Q, runs, LOG, chance, who)
    elif body:
        block(P, I, A, B, G, S, LOG, chance, who)
    elif not in_hands(P, I, A, B, G, R, Z, S, LOG, chance, who):
        touch(P, I, A, B, G, R, Z, L, T, F, W, aim, plans, edges, seen, spots, runs, chance, S, U, V, E, H, Q, LOG, who)
    B[NOW] = now


@kernel
def in_hands(P, I, A, B, G, R, Z, S, LOG, chance, who):
    """A keeper in his area uses his hands; True when the ball comes off them. Held, it is his as after a good touch."""
    role = I[who, ROLE]
    if R[role, R_KEEPS] < 0.0 or not inside(Z, int(R[role, R_HOME]), P[who, X], P[who, Y], 0.5):
        return False
    if G[LAST_TEAM] == I[who, TEAM] and G[SHOT] == 0:  # a team-mate's pass is played with the feet
        return False
    return not save(P, I, A, B, G, S, LOG, chance, who)


@kernel
def line_crossed(B, Z, goals, x0, y0):
    """The first goal or gate the ball went through in this step, and when (share of the step); -1 for none."""
    best, found = 2.0, -1
    for row in range(goals.shape[0]):
        place = goals[row, GOAL_PLACE]
        if goals[row, GOAL_HOW] == COME_THERE or (Z[place, Z_HIGH] > 0.0 and B[BZ] > Z[place, Z_HIGH]):
            continue
        share = crossed(Z, place, x0, y0, B[BX], B[BY])
        if 0.0 <= share < best:
            best, found = share, row
    return found, best


@kernel
def goal(P, I, B, G, R, Z, T, edges, S, V, E, H, Q, runs, LOG, goals, row):
    """The ball is in a goal: it counts for the side that attacks it. Returns whether it scored."""
    team, place = goals[row, GOAL_SIDE], goals[row, GOAL_PLACE]
    if team < 0:
        team = G[LAST_TEAM]
    scorer = G[LAST] if G[LAST_TEAM] == team else G[SHOOTER]
    if scorer < 0 or I[scorer, TEAM] != team:
        scorer = any_of(I, team)
    solo = G[SPELL_TEAM] == team and G[SPELL_PASSES] == 0 and G[SPELL_FREE] == 0
    if not happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_GOAL, scorer, team, place, 0):
        return False
    V[team, V_GOALS] += 1
    S[scorer, S_GOALS] += 1
    if G[SHOT] == 1:
        V[team, V_ON_TARGET] += 1
    if solo:
        V[team, V_SOLO_GOALS] += 1
    G[SHOT] = 0
    score(P, I, B, G, R, Z, T, edges, V, E, H, Q, runs, LOG, scorer, team)
    return True


@kernel
def any_of(I, team):
    """A player of a side, for a ball an opponent put into his own goal."""
    for i in range(I.shape[0]):
        if I[i, TEAM] == team:
            return i
    return 0


@kernel_inlined
def stopped(B):
    """Whether a loose ball hardly moves any more."""
    return B[BVX] * B[BVX] + B[BVY] * B[BVY] <= STILL_BALL_MPS * STILL_BALL_MPS


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
def touch(P, I, A, B, G, R, Z, L, T, F, W, aim, plans, edges, seen, spots, runs, chance, S, U, V, E, H, Q, LOG, who):
    """A foot on the ball: control it, play it first time when no touch is left to control it, or spill it."""
    near = 9.0 if G[FREE] == 1 else nearest_m(P, I, who)
    again = who == G[LAST] and G[PASS_ON] == 0
    touches = G[TOUCHES] if again else 0
    limit = touch_limit(I, R, Z, L, B, G[BALL_TEAM], who)
    first_time = limit > 0 and limit - touches <= 1
    ours = I[who, TEAM] == G[BALL_TEAM]
    if G[FIRST_PAYS] == 1 and ours and G[PASS_ON] == 1 and G[FREE] == 0 and not first_time:
        first_time = shoots_first(P, I, A, B, G, R, Z, T, W, plans, seen, spots, near, who)
    if not first_time and not controls(P, I, A, B, G, W, near, chance, who):
        G[TOUCHES] = touches + 1
        S[who, S_TOUCHES] += 1
        U[I[who, ROLE], U_TOUCHES] += 1
        spill(P, I, B, G, LOG, chance, who, 0.35)
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
            completes(P, I, B, G, R, Z, L, T, F, edges, S, U, V, E, H, Q, runs, LOG, passer, who)
    else:
        win_ball(P, I, A, B, G, R, Z, T, edges, runs, S, U, V, E, H, Q, LOG, who)
        if first_time:
            G[TOUCHES] = touches
    if T.shape[0] > 0 and G[HOLDER] == who:
        touched(P, I, B, G, R, Z, T, edges, runs, V, E, H, Q, LOG, who)
    if first_time and G[HOLDER] == who and G[WANT_STOP] == 0:
        G[FIRST_TIME] = 1
        choose(P, I, A, B, G, R, Z, L, T, F, W, aim, plans, seen, spots, runs, chance)
        if B[T_KICK_AT] < 1e17:
            strike(P, I, A, B, G, R, Z, L, T, edges, W, aim, runs, S, U, V, E, H, Q, seen, chance, LOG)
        G[FIRST_TIME] = 0


@kernel
def shoots_first(P, I, A, B, G, R, Z, T, W, plans, seen, spots, near, who):
    """Whether a ball that comes to him is worth shooting with the first touch, where sentences pay for it."""
    believe(seen, who, B[NOW], 0.1, spots)
    B[IN_VX], B[IN_VY] = B[BVX], B[BVY]
    shot, _, _ = best_shot(P, I, A, B, G, R, Z, T, W, plans, spots, who, pressure_at(near, W), True)
    return shot > 0.0


@kernel
def goes_out(P, I, B, G, R, Z, T, goals, edges, runs, V, E, H, Q, LOG):
    """The ball is out: the side that did not touch it last starts, with a kick-in unless a sentence says otherwise."""
    team = G[LAST_TEAM]
    cause = OUT if team == G[SPELL_TEAM] else DEFLECTED_OUT
    note(LOG, G, B, LOG_OUT, G[LAST], -1, team, cause)
    close_spell(G, V, E, H, runs, cause)
    close_possession(B, G, V, 0)
    G[SHOT] = 0
    back_in_at(B, Z, goals, 1 - team)
    G[WANT_STOP], G[STOP_TEAM], G[STOP_ROW] = 1, 1 - team, -1
    happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_OUT, G[LAST], team, -1, 0)


@kernel
def back_in_at(B, Z, goals, team):
    """A ball out beside a goal comes back in from the corner or from in front of it, not from where it went out."""
    for row in range(goals.shape[0]):
        place = goals[row, GOAL_PLACE]
        if goals[row, GOAL_HOW] != SHOOT_THERE:
            continue
        along = Z[place, Z_HY] == 0.0
        off = B[BY] - Z[place, Z_Y] if along else B[BX] - Z[place, Z_X]
        line = Z[place, Z_Y] - Z[0, Z_Y] if along else Z[place, Z_X] - Z[0, Z_X]
        end = Z[0, Z_HY] if along else Z[0, Z_HX]
        if abs(off) > END_LINE_M or abs(abs(line) - end) > END_LINE_M:
            continue
        inward = -1.0 if line > 0.0 else 1.0
        across = B[BX] - Z[0, Z_X] if along else B[BY] - Z[0, Z_Y]
        if goals[row, GOAL_SIDE] == team:
            across, inward = (1.0 if across > 0.0 else -1.0) * (Z[0, Z_HX] if along else Z[0, Z_HY]), 0.0
        deep = line + GOAL_KICK_M * inward
        B[STOP_X] = Z[0, Z_X] + (across if along else deep)
        B[STOP_Y] = Z[0, Z_Y] + (deep if along else across)
        return
