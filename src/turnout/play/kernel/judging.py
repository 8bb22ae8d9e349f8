"""The rules while the ball is in play: which passes count, what scores, what changes when something happens."""

import math

from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_inlined
from turnout.play.kernel.counting import behind, ruled_worth, set_mark
from turnout.play.kernel.ground import edge_share
from turnout.play.kernel.sides import GROUPS, change_coats, longest_of, players_in, role_at, team_of


@kernel
def note(LOG, G, B, kind, player, other, side, value):
    """Write one event into the log, if there is room for it."""
    row = G[LOG_N]
    if row < LOG.shape[0]:
        LOG[row, 0] = B[NOW]
        LOG[row, 1] = kind
        LOG[row, 2] = player
        LOG[row, 3] = other
        LOG[row, 4] = side
        LOG[row, 5] = B[BX]
        LOG[row, 6] = B[BY]
        LOG[row, 7] = value
        G[LOG_N] = row + 1


@kernel
def actor_fits(I, T, row, player, team):
    """Whether a row's 'who' covers this player of this team."""
    return role_fits(T, row, I[player, ROLE], team)


@kernel_inlined
def role_fits(T, row, role, team):
    """Whether a row's 'who' covers a role of this team."""
    side, roles = T[row, ROW_WHO_SIDE], T[row, ROW_WHO_ROLES]
    return (side < 0 or side == team) and (roles == 0 or (roles >> role) & 1 == 1)


@kernel
def happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, event, player, team, place, count):
    """Something happened: book points first, then changes left to right, then say whether play stops and for whom."""
    scored = False
    if team > 1:  # whoever has just gone off the field does nothing any more
        return scored
    acting = I[max(player, 0), ROLE]  # roles as they were: an exchange before may have taken them away
    received = I[max(G[WAS_RECEIVER], 0), ROLE]
    for row in range(T.shape[0]):
        if T[row, ROW_WHEN] != event or not role_fits(T, row, acting, team):
            continue
        if T[row, ROW_PLACE] != place or not in_time(B, T, row, team):
            continue
        if event == E_ROW or event == E_PASSES:
            before = G[RUN_BEFORE] if event == E_ROW else G[PASSES_BEFORE]
            if count // T[row, ROW_COUNT] == before // T[row, ROW_COUNT]:
                continue
        if event >= E_TOUCHES and T[row, ROW_COUNT] > 0 and event != E_PASSES and T[row, ROW_COUNT] != count:
            continue
        if event == E_PASS and T[row, ROW_TO_ROLES] != 0 and ((T[row, ROW_TO_ROLES] >> received) & 1 == 0):
            continue
        if T[row, ROW_DO] == D_POINTS:
            worth = worth_now(P, I, B, G, R, Z, T, row, event, team)
            if worth > 0:
                book(B, G, T, V, LOG, row, player, team, worth)
                scored = True
        elif T[row, ROW_DO] == D_MARK:
            set_mark(B, T, row, team)
        elif T[row, ROW_DO] == D_ADD:
            add_points(B, G, T, V, LOG, row, team)
        elif T[row, ROW_DO] == D_STARTS:
            G[WANT_STOP] = 1
            G[STOP_TEAM] = side_of(G, T, row, team)
            G[STOP_ROW] = row
        else:
            change(P, I, B, G, R, Z, T, edges, Q, LOG, row, team)
    if G[TURNCOATS] == 1:
        change_coats(I, B, G, R)
    return scored


@kernel
def in_time(B, T, row, team):
    """Whether a row's 'within S seconds of' holds, and its side is behind where it must be: since the side won the
    ball, since the start, or since it did what a mark stands for."""
    if T[row, ROW_BEHIND] == 1 and not behind(B, team):
        return False
    if T[row, ROW_AFTER] == 0:
        return True
    since = B[T_WON_0 + team] if T[row, ROW_AFTER] == 1 else B[T_STARTED]
    if T[row, ROW_AFTER] == 3:
        since = B[MARK_0 + 2 * T[row, ROW_MARK] + team]
    return (B[NOW] - since) * 1000.0 <= T[row, ROW_WITHIN_MS]


@kernel
def worth_now(P, I, B, G, R, Z, T, row, event, team):
    """What a score counts as it is made: acts of a passer and shots from where he kicked, all others from here."""
    if G[RULED] != 1:
        return T[row, ROW_VALUE]
    kicked = event == E_GOAL or event == E_THROUGH or event == E_PASS or event == E_PASS_INTO
    kicked = kicked or event == E_OVER or event == E_BACK
    x, y = (B[KICK_X], B[KICK_Y]) if kicked else (B[BX], B[BY])
    first = G[KICK_FIRST] == 1 if kicked else G[TOUCHES] <= 1
    return ruled_worth(P, I, B, G, R, Z, T, row, team, x, y, first, G[LINK_FROM], B[LINK_X], B[LINK_Y])


@kernel
def book(B, G, T, V, LOG, row, player, team, worth):
    """Give a side its points, and count the possession a success if the first scoring sentence made them."""
    V[team, V_SCORES] += 1
    V[team, V_POINTS] += worth
    B[POINTS_0 + team] += worth
    B[T_SCORED] = B[NOW]
    if T[row, ROW_FIRST] == 1 and G[POSSESSION] == team:
        V[team, V_SUCCESS] += 1
    G[WAS_SCORER] = player
    note(LOG, G, B, LOG_SCORE, player, T[row, ROW_SENTENCE], team, worth)


@kernel
def add_points(B, G, T, V, LOG, row, team):
    """A change gives a side points; nobody scores."""
    side = team
    if T[row, ROW_A] == W_BEHIND:
        side = 0 if behind(B, 0) else 1
        if not behind(B, side):
            return
    else:
        side = side_of(G, T, row, team)
    V[side, V_POINTS] += T[row, ROW_VALUE]
    B[POINTS_0 + side] += T[row, ROW_VALUE]
    note(LOG, G, B, LOG_ADDED, -1, T[row, ROW_SENTENCE], side, T[row, ROW_VALUE])


@kernel
def side_of(G, T, row, team):
    """The side a row's first 'who' names, seen from the side the event belongs to."""
    kind = T[row, ROW_A]
    if kind == W_OTHER_SIDE:
        return 1 - team
    if kind == W_SIDE or (kind == W_ROLE and T[row, ROW_A_SIDE] >= 0):
        return T[row, ROW_A_SIDE]
    return team


@kernel
def change(P, I, B, G, R, Z, T, edges, Q, LOG, row, team):
    """Carry out one change of a row."""
    what = T[row, ROW_DO]
    if what == D_EXCHANGE:
        first = one(P, I, B, G, R, T[row, ROW_A], T[row, ROW_A_ROLES], T[row, ROW_A_WHOSE], team)
        second = one(P, I, B, G, R, T[row, ROW_B], T[row, ROW_B_ROLES], T[row, ROW_B_WHOSE], team)
        if first >= 0 and second >= 0 and first != second:
            swap(P, I, B, G, R, Z, T, LOG, first, second)
    elif what == D_IN or what == D_OUT:
        come_or_go(P, I, B, G, R, Z, T, edges, Q, LOG, row, team)
    elif what == D_CHANGE_OVER:
        change_over(P, I, B, G, R, Z, T, LOG, row, team)
    elif what == D_ROTATE:
        rotate(P, I, B, G, R, Z, T, LOG, row)


@kernel
def come_or_go(P, I, B, G, R, Z, T, edges, Q, LOG, row, team):
    """One player, so many or all of a group take the role inside, outside, or at home in the place named."""
    several = T[row, ROW_A] in GROUPS
    for _ in range(max(1, T[row, ROW_A_COUNT]) if T[row, ROW_A] == W_SOME else P.shape[0] if several else 1):
        who = one(P, I, B, G, R, T[row, ROW_A], T[row, ROW_A_ROLES], T[row, ROW_A_WHOSE], team)
        if who < 0:
            return
        role = int(R[I[who, ROLE], R_IN if T[row, ROW_DO] == D_IN else R_OUT])
        if T[row, ROW_WHERE] >= 0:
            role = role_at(R, I[who, ROLE], T[row, ROW_WHERE], T[row, ROW_EDGE] == 1)
        if several and (P[who, SINCE_ROLE] >= B[NOW] or role == I[who, ROLE]):
            return
        if not take_role(P, I, B, G, R, Z, T, edges, Q, LOG, who, role):
            return


@kernel
def one(P, I, B, G, R, kind, roles, whose, team):
    """The single player a 'who' names at this moment, or -1."""
    if kind == W_PASSER:
        return G[WAS_PASSER]
    if kind == W_RECEIVER:
        return G[WAS_RECEIVER]
    if kind == W_WINNER:
        return G[WAS_WINNER]
    if kind == W_LOSER:
        return G[WAS_LOSER]
    if kind == W_SCORER:
        return G[WAS_SCORER]
    if kind == W_LAST:
        return G[LAST]
    if kind == W_THERE:
        return G[HOLDER]
    if kind != W_NEAREST and kind != W_FARTHEST:
        return longest_of(P, I, B, R, kind, roles, team)
    side = team if whose == 0 else 1 - team
    best, found = 1e18, -1
    for j in range(P.shape[0]):
        if (roles >> I[j, ROLE]) & 1 == 0 or int(R[I[j, ROLE], R_SIDE]) != side:
            continue
        away = (P[j, X] - B[BX]) ** 2 + (P[j, Y] - B[BY]) ** 2
        if kind == W_FARTHEST:
            away = -away
        if away < best:
            best, found = away, j
    return found


@kernel
def set_role(P, I, B, G, R, Z, T, LOG, player, role, slot, at, span):
    """Put a player into a role; he is out of play until he is where it belongs."""
    I[player, ROLE] = role
    I[player, SLOT] = slot
    P[player, EDGE_AT], P[player, EDGE_SPAN] = at, span
    P[player, SINCE_ROLE] = B[NOW]
    P[player, T_DECIDE] = B[NOW]
    I[player, TEAM] = team_of(B, G, R, role)
    I[player, JOURNEY] = 0 if player == G[HOLDER] else 1
    note(LOG, G, B, LOG_CHANGE, player, -1, I[player, TEAM], role)
    if player == G[HOLDER] and I[player, TEAM] == OUT_OF_PLAY:  # he goes off with the ball at his feet: his side starts
        stop_for_all(G, T)


@kernel
def swap(P, I, B, G, R, Z, T, LOG, first, second):
    """Two players change roles, places and sides."""
    role, slot, at, span = I[first, ROLE], I[first, SLOT], P[first, EDGE_AT], P[first, EDGE_SPAN]
    other, other_slot = I[second, ROLE], I[second, SLOT]
    other_at, other_span = P[second, EDGE_AT], P[second, EDGE_SPAN]
    set_role(P, I, B, G, R, Z, T, LOG, first, other, other_slot, other_at, other_span)
    set_role(P, I, B, G, R, Z, T, LOG, second, role, slot, at, span)
    if G[HOLDER] >= 0 and I[G[HOLDER], TEAM] != OUT_OF_PLAY:
        G[BALL_TEAM] = I[G[HOLDER], TEAM]


@kernel
def take_role(P, I, B, G, R, Z, T, edges, Q, LOG, player, role):
    """One player takes a role; a change that would take a role out of its range is skipped, alone (False)."""
    old = I[player, ROLE]
    if role < 0 or players_in(I, role) + 1 > R[role, R_HIGH] or players_in(I, old) - 1 < R[old, R_LOW]:
        Q[Q_SKIPPED] += 1
        return False
    slot, at, span = -1, 0.0, 0.0
    edge = int(R[role, R_EDGE])
    if edge >= 0:
        slot, at, span = free_slot(P, I, Z, edges, edge, player)
    set_role(P, I, B, G, R, Z, T, LOG, player, role, slot, at, span)
    return True


@kernel
def free_slot(P, I, Z, edges, edge, player):
    """The free stretch of an edge nearest to a player; a stretch of his own making when none is free."""
    here = edge_share(Z, edge, P[player, X], P[player, Y])
    best, found = 2.0, -1
    for slot in range(edges.shape[0]):
        if int(edges[slot, SLOT_PLACE]) != edge:
            continue
        taken = False
        for j in range(I.shape[0]):
            if I[j, SLOT] == slot and j != player:
                taken = True
        away = abs((edges[slot, SLOT_AT] - here + 0.5) % 1.0 - 0.5)
        if not taken and away < best:
            best, found = away, slot
    if found >= 0:
        return found, edges[found, SLOT_AT], edges[found, SLOT_SPAN]
    return -1, here, 0.06


@kernel
def change_over(P, I, B, G, R, Z, T, LOG, row, team):
    """Two groups change over, as many as the smaller has, whoever has served longest first."""
    side = team
    first, second = T[row, ROW_A_ROLES], T[row, ROW_B_ROLES]
    if T[row, ROW_A_SIDE] >= 0:
        side = T[row, ROW_A_SIDE]
    elif T[row, ROW_A] == W_OTHER_SIDE or T[row, ROW_A] == W_OTHER_ROLE:
        side = 1 - team
    other = side
    if T[row, ROW_B] == W_OTHER_ROLE:
        other = 1 - team
    elif T[row, ROW_B_SIDE] >= 0:
        other = T[row, ROW_B_SIDE]
    done = 0
    while T[row, ROW_A_COUNT] == 0 or done < T[row, ROW_A_COUNT]:
        a = longest_in(P, I, R, first, side, done)
        b = longest_in(P, I, R, second, other, done)
        if a < 0 or b < 0:
            break
        swap(P, I, B, G, R, Z, T, LOG, a, b)
        I[a, CHASING] = 9
        I[b, CHASING] = 9
        done += 1
    for j in range(I.shape[0]):
        if I[j, CHASING] == 9:
            I[j, CHASING] = 0
    stop_for_all(G, T)


@kernel
def longest_in(P, I, R, roles, side, done):
    """The player of a group who has been in his role longest and has not changed yet (CHASING 9 marks the changed)."""
    best, found = 1e18, -1
    for j in range(I.shape[0]):
        if (roles >> I[j, ROLE]) & 1 == 1 and int(R[I[j, ROLE], R_SIDE]) == side and I[j, CHASING] != 9:
            if P[j, SINCE_ROLE] < best:
                best, found = P[j, SINCE_ROLE], j
    return found


@kernel
def rotate(P, I, B, G, R, Z, T, LOG, row):
    """The next group changes places with a role's players: those who wait, longest first, where there is a line; else
    whoever has been in it least often, then longest out.
    """
    roles, side = T[row, ROW_B_ROLES], T[row, ROW_B_SIDE]
    leaving = 0
    for j in range(I.shape[0]):
        if (roles >> I[j, ROLE]) & 1 == 1 and (side < 0 or int(R[I[j, ROLE], R_SIDE]) == side):
            I[j, CHASING] = 8
            leaving += 1
    waiting = False
    for j in range(I.shape[0]):
        waiting = waiting or R[I[j, ROLE], R_WAITS] == 1.0
    for _ in range(leaving):
        best, comes, goes = 1e18, -1, -1
        for j in range(I.shape[0]):
            if waiting and R[I[j, ROLE], R_WAITS] == 0.0:
                continue
            if I[j, CHASING] < 8 and I[j, SERVED] * 1e6 + P[j, SINCE_ROLE] < best:
                best, comes = I[j, SERVED] * 1e6 + P[j, SINCE_ROLE], j
            if I[j, CHASING] == 8 and goes < 0:
                goes = j
        if comes < 0 or goes < 0:
            break
        swap(P, I, B, G, R, Z, T, LOG, comes, goes)
        I[comes, SERVED] += 1
        I[comes, CHASING] = 9
        I[goes, CHASING] = 9
    for j in range(I.shape[0]):
        if I[j, CHASING] >= 8:
            I[j, CHASING] = 0
    stop_for_all(G, T)


@kernel
def stop_for_all(G, T):
    """A whole group has changed: play stops and starts as every start does, unless a When says who starts."""
    if G[WANT_STOP] == 0:
        G[WANT_STOP] = 1
        row = G[START_ROW]
        G[STOP_TEAM] = side_of(G, T, row, G[BALL_TEAM]) if row >= 0 else G[BALL_TEAM]
        G[STOP_ROW] = row


@kernel
def distance(ax, ay, bx, by):
    """Metres between two points."""
    return math.sqrt((ax - bx) * (ax - bx) + (ay - by) * (ay - by))
