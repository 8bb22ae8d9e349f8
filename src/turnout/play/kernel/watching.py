"""What is watched from step to step: the clock, journeys to a new role, moments sentences wait for, lifted limits."""

from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_inlined
from turnout.play.kernel.counting import all_there, behind
from turnout.play.kernel.ground import allowed, inside
from turnout.play.kernel.judging import actor_fits, add_points, change, happens, note, side_of

CLOCK_S = 0.1
JOURNEY_PACE = 0.8
HOME_M = 0.5
CALL_S = 60.0  # how often the coach calls, where a sentence waits for it, free
LINE_S, LINE_MPS = 0.5, 1.4


@kernel
def clocks(P, I, B, G, R, Z, T, edges, V, Q, LOG, fired, dt):
    """Sentences on the clock: every so many minutes, whether the ball rolls or not."""
    if B[T_CLOCK] > B[NOW] + 0.5 * dt:
        return
    B[T_CLOCK] += CLOCK_S
    for row in range(T.shape[0]):
        if T[row, ROW_WHEN] == E_CLOCK:
            due = int((B[NOW] + 0.5 * dt) * 1000.0 / T[row, ROW_EVERY_MS])
            if due > fired[row]:
                fired[row] = due
                if T[row, ROW_DO] == D_STARTS:
                    G[WANT_STOP], G[STOP_TEAM], G[STOP_ROW] = 1, side_of(G, T, row, G[BALL_TEAM]), row
                elif T[row, ROW_DO] == D_ADD:
                    add_points(B, G, T, V, LOG, row, G[BALL_TEAM])
                else:
                    change(P, I, B, G, R, Z, T, edges, Q, LOG, row, G[BALL_TEAM])


@kernel
def journeys(P, I, A, B, G, R, Z, L, LOG):
    """Players on their way to a new role are out of play until they are where it belongs."""
    for i in range(P.shape[0]):
        if I[i, JOURNEY] == 0:
            continue
        x, y = allowed(P, I, R, Z, L, B, G[BALL_TEAM], i, P[i, X], P[i, Y], 0.6)
        P[i, TX], P[i, TY] = x, y
        P[i, PACE] = JOURNEY_PACE * A[i, TOP]
        if (P[i, X] - x) ** 2 + (P[i, Y] - y) ** 2 < HOME_M * HOME_M:
            I[i, JOURNEY] = 0
            P[i, T_DECIDE] = B[NOW]
            note(LOG, G, B, LOG_HOME, i, -1, I[i, TEAM], I[i, ROLE])


@kernel
def stand_in_line(P, I, B, R, starts):
    """Those who wait stand in their line, longest there in front; when the front has gone in, all move up."""
    for i in range(P.shape[0]):
        role = I[i, ROLE]
        if R[role, R_WAITS] == 0.0 or P[i, T_DECIDE] > B[NOW]:
            continue
        P[i, T_DECIDE] = B[NOW] + LINE_S
        rank, number = 0, 0
        for j in range(P.shape[0]):
            if I[j, ROLE] != role:
                continue
            number += 1
            before = P[j, SINCE_ROLE] < P[i, SINCE_ROLE] or (P[j, SINCE_ROLE] == P[i, SINCE_ROLE] and j < i)
            rank += 1 if before else 0
        P[i, SPOT_X], P[i, SPOT_Y] = starts[role, number, rank, 0], starts[role, number, rank, 1]
        P[i, TX], P[i, TY], P[i, PACE] = P[i, SPOT_X], P[i, SPOT_Y], LINE_MPS


@kernel
def moments(P, I, B, G, R, Z, T, edges, runs, V, E, H, Q, LOG, was, dt):
    """Events that are seen from step to step: the ball or a player comes into a place, so many seconds have passed."""
    calls = False
    for row in range(T.shape[0]):
        when, place, true = T[row, ROW_WHEN], T[row, ROW_PLACE], False
        if when == E_BALL_ENTERS:
            true = inside(Z, place, B[BX], B[BY], 0.0)
        elif when == E_BALL_LEAVES:
            held = inside(Z, place, B[BX], B[BY], 0.0)
            if not held and was[row, 0] == 1:
                happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, when, G[LAST], G[BALL_TEAM], place, 0)
            was[row, 0] = 1 if held else 0
            continue
        elif when == E_SECONDS:
            true = B[NOW] - B[T_STARTED] + 0.5 * dt >= T[row, ROW_COUNT]
        elif when == E_WITHOUT:
            true = B[NOW] - B[T_SCORED] + 0.5 * dt >= T[row, ROW_COUNT]
        elif when == E_CALL:
            true = B[NOW] + 0.5 * dt >= B[T_CALLED]
            calls = calls or true
        elif when == E_ENTER or when == E_LEAVE:
            for i in range(P.shape[0]):
                now_in = inside(Z, place, P[i, X], P[i, Y], 0.0) and actor_fits(I, T, row, i, I[i, TEAM])
                if (now_in and was[row, i] == 0) if when == E_ENTER else (not now_in and was[row, i] == 1):
                    happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, when, i, I[i, TEAM], place, 0)
                was[row, i] = 1 if now_in else 0
            continue
        else:
            continue
        if true and was[row, 0] == 0:
            count = T[row, ROW_COUNT]
            happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, when, G[LAST], G[BALL_TEAM], place, count)
        was[row, 0] = 1 if true else 0
    if calls:
        B[T_CALLED] += CALL_S


@kernel
def stand_by(P, I, Z, T, was):
    """While play is stopped nobody enters or leaves a place: who is where is only kept in mind."""
    for row in range(T.shape[0]):
        if T[row, ROW_WHEN] == E_ENTER or T[row, ROW_WHEN] == E_LEAVE:
            for i in range(P.shape[0]):
                there = inside(Z, T[row, ROW_PLACE], P[i, X], P[i, Y], 0.0) and actor_fits(I, T, row, i, I[i, TEAM])
                was[row, i] = 1 if there else 0


@kernel
def lift(P, I, B, G, R, Z, L):
    """Limits with an 'until' are lifted when it happens, and hold again for the next start or the next holder."""
    for row in range(L.shape[0]):
        until = L[row, L_UNTIL]
        if L[row, L_WHILE] >= WHILE_BEHIND:
            L[row, L_NOW] = binds_now(P, I, B, G, R, Z, L, row, 0) + 2 * binds_now(P, I, B, G, R, Z, L, row, 1)
        if until == UNTIL_MARK:
            at = MARK_0 + 2 * L[row, L_UNTIL_PLACE]
            L[row, L_LIFTED] = 1 if max(B[at], B[at + 1]) >= B[T_STARTED] else 0
            continue
        entered = until == UNTIL_BALL_ENTERS and inside(Z, L[row, L_UNTIL_PLACE], B[BX], B[BY], 0.0)
        if entered or (until == UNTIL_SECONDS and B[NOW] - B[T_STARTED] >= L[row, L_UNTIL_VALUE]):
            L[row, L_LIFTED] = 1
        elif until == UNTIL_TOUCHES:
            L[row, L_LIFTED] = 1 if G[HOLDER] >= 0 and G[TOUCHES] >= L[row, L_UNTIL_VALUE] else 0


@kernel
def binds_now(P, I, B, G, R, Z, L, row, side):
    """Whether a limit's condition holds, 0 or 1, told from one of two sides."""
    if L[row, L_WHOSE] == 1:
        side = 1 - side
    named = L[row, L_WHILE_SIDE]
    if L[row, L_WHILE] == WHILE_THERE:
        whose = side if named == -1 else named
        return 1 if all_there(P, I, R, Z, L[row, L_THOSE], whose, L[row, L_PLACES]) else 0
    if L[row, L_WHILE] == WHILE_BEHIND_HAS:
        return 1 if behind(B, G[BALL_TEAM]) else 0
    return 1 if behind(B, named if named >= 0 else side) else 0


@kernel_inlined
def somebody_decides(P, B, dt):
    """Whether any player's off-ball decision is due."""
    due = B[NOW] + 0.5 * dt
    for i in range(P.shape[0]):
        if P[i, T_DECIDE] <= due:
            return True
    return False


@kernel_inlined
def somebody_travels(I):
    """Whether any player is on his way to a new role."""
    for i in range(I.shape[0]):
        if I[i, JOURNEY] == 1:
            return True
    return False
