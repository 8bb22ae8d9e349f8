"""Whose ball it is: spells, possessions, runs of passes, and how each ends.

A spell lasts while one side keeps the ball under control (passes of its own included); its run is its passes in a row
that count. A possession is the coach's: from the first completed pass until the other side completes one, the ball
goes out, or a score.
"""

from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel
from turnout.play.kernel.counting import back, flown_over, goes_through, moved_on, pass_adds
from turnout.play.kernel.ground import inside, used_before
from turnout.play.kernel.judging import happens, note


@kernel
def set_ball_team(I, G, R, team):
    """The ball is this side's; neutrals play for it."""
    if G[BALL_TEAM] == team:
        return
    G[BALL_TEAM] = team
    for j in range(I.shape[0]):
        if R[I[j, ROLE], R_NEUTRAL] == WITH_BALL:
            I[j, TEAM] = team
        elif R[I[j, ROLE], R_NEUTRAL] == WITHOUT_BALL:
            I[j, TEAM] = 1 - team


@kernel
def open_spell(G, team, free):
    """A side has the ball anew: from a start (free 1) or won in play (free 0)."""
    G[SPELL_TEAM] = team
    G[SPELL_PASSES] = 0
    G[SPELL_FREE] = free


@kernel
def close_spell(G, V, E, H, runs, cause):
    """The spell is over: count its run and its cause; a spell that was only interrupted is not counted."""
    team = G[SPELL_TEAM]
    if team < 0:
        return
    if cause != STOPPED:
        run = runs[team]
        V[team, V_SPELLS] += 1
        V[team, V_RUN_SUM] += run
        H[team, min(run, RUN_CAP)] += 1
        E[team, cause] += 1
        lost_first = G[SPELL_PASSES] == 0 and cause != SCORED
        V[team, V_FIRST] += 1
        if lost_first:
            V[team, V_FIRST_LOST] += 1
        if G[SPELL_FREE] == 1:
            V[team, V_FREE] += 1
            if lost_first:
                V[team, V_FREE_LOST] += 1
    runs[team] = 0
    G[SPELL_TEAM] = -1


@kernel
def close_possession(B, G, V, cut):
    """A possession is over; one that was only interrupted (cut 1) is not counted."""
    team = G[POSSESSION]
    if team < 0:
        return
    if cut == 0:
        V[team, V_POSSESSIONS] += 1
        V[team, V_POSSESSION_S] += B[NOW] - B[T_POSSESSION]
        V[team, V_POSS_PASSES] += G[POSSESSION_PASSES]
    G[POSSESSION] = -1


@kernel
def hold(P, I, B, G, A, R, Z, player, wait_s):
    """A player has the ball at his feet from now; he can act after `wait_s`."""
    now = B[NOW]
    G[HOLDER] = player
    G[LAST], G[LAST_TEAM] = player, I[player, TEAM]
    B[BVX], B[BVY] = 0.0, 0.0
    B[BZ], B[BVZ] = 0.0, 0.0
    G[SHOT] = G[KICK_HEAD] = 0
    keeps = R[I[player, ROLE], R_KEEPS] >= 0.0
    G[HELD] = 1 if keeps and inside(Z, int(R[I[player, ROLE], R_HOME]), P[player, X], P[player, Y], 0.5) else 0
    B[T_HELD] = now
    for j in range(P.shape[0]):
        P[j, IN_REACH] = 0.0
    B[T_READY] = now + wait_s
    B[T_CHOOSE] = now + wait_s
    B[T_TOUCH] = now
    B[T_KICK_AT] = 1e18
    B[CARRY_X], B[CARRY_Y] = P[player, X] + 0.3 * P[player, VX], P[player, Y] + 0.3 * P[player, VY]
    G[TARGET] = -1
    G[SPILLED_BY] = -1
    G[TACKLED] = 0
    G[IN_PLACES] = 0
    for place in range(Z.shape[0]):
        if inside(Z, place, B[BX], B[BY], 0.0):
            G[IN_PLACES] |= 1 << place


@kernel
def takes_over(P, I, B, G, R, Z, T, edges, S, V, E, H, Q, runs, LOG, player):
    """The other side has the ball under control: end the spell by its cause, count the regain, open a new spell."""
    team, old = I[player, TEAM], G[SPELL_TEAM]
    cause, loser = CUT_OUT, G[PASSER]
    if G[TACKLED] == 1:
        cause, loser = TACKLED_AWAY, G[WAS_LOSER]
        S[player, S_TACKLES] += 1
    elif G[SPILLED_BY] >= 0:
        cause, loser = MISCONTROLLED, G[SPILLED_BY]
    else:
        S[player, S_CUT_OUT] += 1
    if old >= 0:
        close_spell(G, V, E, H, runs, cause)
        V[team, V_REGAINS] += 1
    note(LOG, G, B, LOG_TACKLE if cause == TACKLED_AWAY else LOG_CUT_OUT, player, loser, team, cause)
    set_ball_team(I, G, R, team)
    I[player, TEAM] = team  # with the ball at his feet nobody changes sides
    open_spell(G, team, 0)
    G[WAS_WINNER], G[WAS_LOSER] = player, loser
    G[LINK_FROM] = G[LINK_TO] = -1
    B[T_WON_0 + team] = B[T_LOST_0 + 1 - team] = B[NOW]
    happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_WIN, player, team, -1, 0)
    for place in range(Z.shape[0]):
        if inside(Z, place, B[BX], B[BY], 0.0):
            happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_WIN, player, team, place, 0)
    if old >= 0:
        happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_LOSE, loser, old, -1, 0)


@kernel
def completes(P, I, B, G, R, Z, L, T, F, edges, S, U, V, E, H, Q, runs, LOG, passer, player):
    """A pass has arrived: count it, pass ownership on, and see what it scores or changes."""
    team = I[player, TEAM]
    S[passer, S_COMPLETED] += 1
    S[passer, S_PRESSED_OK] += G[PRESSED]
    S[player, S_RECEIVED] += 1
    U[I[player, ROLE], U_RECEIVED] += 1
    G[SPELL_PASSES] += 1
    G[WAS_PASSER], G[WAS_RECEIVER] = passer, player
    over = flown_over(B, G, Z) if G[OVERS] == 1 else 0
    adds = 1
    if F.shape[0] > 0:
        adds = pass_adds(I, B, G, Z, F, passer, player, B[KICK_X], B[KICK_Y], B[BX], B[BY], over)
    returned = back(G, passer, player)
    one_two = returned and G[BACKS] == 1 and moved_on(P, B, player)
    G[LINK_FROM], G[LINK_TO], B[LINK_X], B[LINK_Y] = passer, player, B[KICK_X], B[KICK_Y]
    G[RUN_BEFORE] = runs[team]
    runs[team] += adds
    fresh_owner = G[OWNER] != team
    if G[POSSESSION] != team:
        close_possession(B, G, V, 0)
        G[POSSESSION] = team
        G[POSSESSION_PASSES] = 0
        B[T_POSSESSION] = B[NOW]
    G[POSSESSION_PASSES] += 1
    place = G[IN_PLACES]
    scored = happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_PASS, passer, team, -1, 0)
    if adds > 0:
        scored |= happens(
            P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_ROW, player, team, -1, runs[team])  # fmt: skip
    passes = G[POSSESSION_PASSES]
    G[PASSES_BEFORE] = passes - 1
    scored |= happens(
        P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_PASSES, player, team, -1, passes)  # fmt: skip
    if G[THROUGH] >= 0:
        if not used_before(G, Z, L, G[THROUGH]):
            scored |= happens(
                P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_THROUGH, passer, team, G[THROUGH], 0)  # fmt: skip
        G[LAST_GATE], G[THROUGH] = G[THROUGH], -1
    for number in range(Z.shape[0]):
        if G[OVERS] == 1 and (over >> number) & 1 == 1:
            scored |= happens(
                P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_OVER, passer, team, number, 0)  # fmt: skip
        if G[OVERS] == 1 and Z[number, Z_KIND] != LINE and went_through(B, Z, number):
            scored |= happens(
                P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_THROUGH, passer, team, number, 0)  # fmt: skip
    if returned:
        scored |= happens(
            P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_BACK, passer, team, -1, 0)  # fmt: skip
    if one_two:
        scored |= happens(
            P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_ONE_TWO, player, team, -1, 0)  # fmt: skip
    for number in range(Z.shape[0]):
        if (place >> number) & 1 == 1:
            scored |= happens(
                P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_PASS_INTO, passer, team, number, 0)  # fmt: skip
            scored |= happens(
                P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_RECEIVE, player, team, number, 0)  # fmt: skip
    if fresh_owner:
        G[OWNER] = team
        note(LOG, G, B, LOG_OWNER, player, -1, team, 0)
        G[WAS_WINNER] = player
        happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_WIN_PASS, player, team, -1, 0)
    if scored:
        score(P, I, B, G, R, Z, T, edges, V, E, H, Q, runs, LOG, player, team)


@kernel
def went_through(B, Z, place):
    """Whether the pass that has just arrived crossed an area from one side to another."""
    return goes_through(Z, place, B[KICK_X], B[KICK_Y], B[BX], B[BY])


@kernel
def score(P, I, B, G, R, Z, T, edges, V, E, H, Q, runs, LOG, player, team):
    """A score ends the spell and the possession; what follows it is up to the sentences."""
    close_spell(G, V, E, H, runs, SCORED)
    close_possession(B, G, V, 0)
    open_spell(G, team, 0)
    happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_SCORE, player, team, -1, 0)
    if concedes(I, 1 - team) >= 0:
        loser = concedes(I, 1 - team)
        happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_CONCEDE, loser, 1 - team, -1, 0)


@kernel
def concedes(I, team):
    """A player of the side that concedes; -1 where nobody plays for it."""
    for i in range(I.shape[0]):
        if I[i, TEAM] == team:
            return i
    return -1


@kernel
def run_ins(P, I, B, G, R, Z, T, edges, V, E, H, Q, runs, LOG):
    """The holder has run the ball into a place he was not in when he took it."""
    holder = G[HOLDER]
    for place in range(Z.shape[0]):
        if (G[IN_PLACES] >> place) & 1 == 0 and inside(Z, place, B[BX], B[BY], -0.05):
            G[IN_PLACES] |= 1 << place
            team = I[holder, TEAM]
            if happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, E_RUN_IN, holder, team, place, 0):
                score(P, I, B, G, R, Z, T, edges, V, E, H, Q, runs, LOG, holder, team)
                return


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
