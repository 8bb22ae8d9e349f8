"""What a score counts and which pass adds what to a run: weights and guards on scores, marks of what has happened."""

import math

from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_inlined
from turnout.play.kernel.ground import crossed, inside, out_of_bits_m

MOVED_M = 2.0  # a one-two: the passer has gone at least so far before he has the ball again; common practice, no source
NEVER = -1e8


@kernel_inlined
def row_worth(P, I, B, G, R, Z, T, row, team, x, y, first, giver, gx, gy):
    """What a scoring row would be worth to a side now; (x, y): where its last touch is made, first: it is the first,
    giver: who played the pass before it, from (gx, gy)."""
    if G[RULED] != 1:
        return T[row, ROW_VALUE]
    return ruled_worth(P, I, B, G, R, Z, T, row, team, x, y, first, giver, gx, gy)


@kernel
def ruled_worth(P, I, B, G, R, Z, T, row, team, x, y, first, giver, gx, gy):
    """The same where sentences say which scores count: 0 for one that does not."""
    worth = T[row, ROW_VALUE]
    if T[row, ROW_BEHIND] == 1 and not behind(B, team):
        return 0
    if T[row, ROW_DO] != D_POINTS:
        return worth
    for rule in range(T.shape[0]):
        what = T[rule, ROW_DO]
        if what < D_COUNTS or what > D_WHEN or (T[rule, ROW_WHO_SIDE] >= 0 and T[rule, ROW_WHO_SIDE] != team):
            continue
        if what == D_COUNTS:
            if made_so(I, B, G, Z, T, rule, team, x, y, first, giver, gx, gy):
                worth = T[rule, ROW_VALUE]
        elif what == D_HOW:
            if not made_so(I, B, G, Z, T, rule, team, x, y, first, giver, gx, gy):
                return 0
        elif what == D_AFTER:
            if not marked(B, T, rule, team):
                return 0
        elif not holds_now(P, I, B, G, R, Z, T, rule, team):
            return 0
    return worth


@kernel
def made_so(I, B, G, Z, T, rule, team, x, y, first, giver, gx, gy):
    """Whether a score is made in the way a sentence names."""
    how = T[rule, ROW_HOW]
    if how == MADE_FIRST:
        return first
    if how == MADE_HEAD:
        return G[KICK_HEAD] == 1
    if how == MADE_INSIDE or how == MADE_OUTSIDE:
        return in_bits(Z, T[rule, ROW_PLACES], x, y) == (how == MADE_INSIDE)
    if how == MADE_WITHIN:
        return marked(B, T, rule, team)
    if giver < 0 or I[giver, TEAM] != team:
        return False
    if how == MADE_PASS_BY:
        return (T[rule, ROW_TO_ROLES] >> I[giver, ROLE]) & 1 == 1
    return how == MADE_PASS_FROM and in_bits(Z, T[rule, ROW_PLACES], gx, gy)


@kernel
def marked(B, T, rule, team):
    """Whether what a sentence waits for has happened: since the last start, or no longer ago than it says."""
    side = T[rule, ROW_A_SIDE]
    if T[rule, ROW_A] == W_OTHER_SIDE:
        team = 1 - team
    elif side >= 0:
        team = side
    since = B[MARK_0 + 2 * T[rule, ROW_MARK] + team]
    if T[rule, ROW_WITHIN_MS] > 0 and (B[NOW] - since) * 1000.0 > T[rule, ROW_WITHIN_MS]:
        return False
    return since > NEVER and (T[rule, ROW_DO] != D_AFTER or since >= B[T_STARTED])


@kernel
def set_mark(B, T, row, team):
    """What a sentence waits for has happened, for the side that did it or for both."""
    at = MARK_0 + 2 * T[row, ROW_SETS]
    if T[row, ROW_BOTH] == 1:
        B[at] = B[at + 1] = B[NOW]
    else:
        B[at + team] = B[NOW]


@kernel
def holds_now(P, I, B, G, R, Z, T, rule, team):
    """Whether a guard's condition holds for the side that scores."""
    when, side = T[rule, ROW_WHILE], T[rule, ROW_WHILE_SIDE]
    if when == WHILE_BEHIND:
        return behind(B, side if side >= 0 else team)
    if when == WHILE_THERE:
        return all_there(P, I, R, Z, T[rule, ROW_TO_ROLES], side if side != -1 else team, T[rule, ROW_PLACES])
    if when == WHILE_BALL_IN:
        return in_bits(Z, T[rule, ROW_PLACES], B[BX], B[BY])
    if when == WHILE_SIDE:
        return side == G[BALL_TEAM]
    if when == WHILE_BEHIND_HAS:
        return behind(B, G[BALL_TEAM])
    return (team == G[BALL_TEAM]) == (when != WHILE_WITHOUT)


@kernel_inlined
def behind(B, team):
    """Whether a side has fewer points than the other."""
    return B[POINTS_0 + team] < B[POINTS_0 + 1 - team]


@kernel
def all_there(P, I, R, Z, roles, side, places):
    """Whether every player of these roles (of one side; -2: of any) is in one of these places, and there is one."""
    found = False
    for i in range(P.shape[0]):
        role = I[i, ROLE]
        if (roles >> role) & 1 == 0 or R[role, R_WAITS] == 1.0 or (side >= 0 and int(R[role, R_SIDE]) != side):
            continue
        if not in_bits(Z, places, P[i, X], P[i, Y]):
            return False
        found = True
    return found


@kernel
def in_bits(Z, places, x, y):
    """Whether (x, y) is in one of these places (a bit each)."""
    for place in range(Z.shape[0]):
        if (places >> place) & 1 == 1 and inside(Z, place, x, y, 0.0):
            return True
    return False


@kernel
def gather_m(I, B, R, Z, T, i, x, y):
    """Metres from (x, y) to where a guard on scores wants this player to be."""
    most = 0.0
    for rule in range(T.shape[0]):
        if T[rule, ROW_DO] != D_WHEN or T[rule, ROW_WHILE] != WHILE_THERE:
            continue
        if T[rule, ROW_WHO_SIDE] >= 0 and T[rule, ROW_WHO_SIDE] != I[i, TEAM]:
            continue
        side = T[rule, ROW_WHILE_SIDE]
        if (T[rule, ROW_TO_ROLES] >> I[i, ROLE]) & 1 == 1 and (side < 0 or side == int(R[I[i, ROLE], R_SIDE])):
            most = max(most, out_of_bits_m(Z, T[rule, ROW_PLACES], x, y))
    return most


@kernel
def wanted(B, G, T, row, team):
    """Whether doing what a row waits for brings something: points, or a mark without which no score counts."""
    what = T[row, ROW_DO]
    if what == D_POINTS:
        return T[row, ROW_VALUE] > 0
    return what == D_MARK and T[row, ROW_VALUE] > 0 and B[MARK_0 + 2 * T[row, ROW_SETS] + team] < B[T_STARTED]


@kernel
def pass_adds(I, B, G, Z, F, i, j, x0, y0, x, y, over):
    """What a pass from i at (x0, y0) to j at (x, y) adds to a run; over: bits of places it clears in the air."""
    only, one_of_them, adds = False, False, 1
    for row in range(F.shape[0]):
        fits = (F[row, F_FROM] >> I[i, ROLE]) & 1 == 1 and (F[row, F_TO] >> I[j, ROLE]) & 1 == 1
        if fits and F[row, F_KIND] != ANY_PASS:
            fits = pass_is(G, Z, F[row, F_KIND], F[row, F_PLACE], i, j, x0, y0, x, y, over)
        if F[row, F_ADDS] < 0:
            only = True
            one_of_them = one_of_them or fits
        elif fits:
            adds = F[row, F_ADDS]
    return 0 if only and not one_of_them else adds


@kernel
def pass_is(G, Z, kind, place, i, j, x0, y0, x, y, over):
    """Whether a pass goes into, through or over a place, or straight back to whoever passed it."""
    if kind == PASS_INTO:
        return inside(Z, place, x, y, 0.0)
    if kind == PASS_THROUGH:
        return goes_through(Z, place, x0, y0, x, y)
    if kind == PASS_OVER:
        return (over >> place) & 1 == 1
    return back(G, i, j)


@kernel_inlined
def back(G, i, j):
    """Whether a pass from i to j goes straight back to whoever passed it."""
    return G[LINK_TO] == i and G[LINK_FROM] == j


@kernel
def goes_through(Z, place, x0, y0, x1, y1):
    """Whether a straight way crosses a gate between its cones, or an area from one side to another."""
    if Z[place, Z_KIND] == LINE:
        return crossed(Z, place, x0, y0, x1, y1) >= 0.0
    if inside(Z, place, x0, y0, 0.0) or inside(Z, place, x1, y1, 0.0):
        return False
    dx, dy = x1 - x0, y1 - y0
    if Z[place, Z_KIND] == CIRCLE:
        way2 = max(1e-9, dx * dx + dy * dy)
        share = min(1.0, max(0.0, ((Z[place, Z_X] - x0) * dx + (Z[place, Z_Y] - y0) * dy) / way2))
        return inside(Z, place, x0 + share * dx, y0 + share * dy, 0.0)
    low, high = 0.0, 1.0
    for axis in range(2):
        at = x0 - Z[place, Z_X] if axis == 0 else y0 - Z[place, Z_Y]
        way, half = (dx, Z[place, Z_HX]) if axis == 0 else (dy, Z[place, Z_HY])
        if abs(way) < 1e-9:
            if abs(at) > half:
                return False
            continue
        a, b = (-half - at) / way, (half - at) / way
        low, high = max(low, min(a, b)), min(high, max(a, b))
    return low < high


@kernel
def clears(Z, places, x0, y0, x1, y1):
    """Bits of those of these places that a way goes over from one side to another."""
    found = 0
    for place in range(Z.shape[0]):
        if (places >> place) & 1 == 1 and goes_through(Z, place, x0, y0, x1, y1):
            found |= 1 << place
    return found


@kernel
def watch_flight(B, G, Z, x0, y0):
    """Which places the ball is over in the air in this step, and in which it is on the ground."""
    for place in range(Z.shape[0]):
        if Z[place, Z_KIND] == LINE:
            over = crossed(Z, place, x0, y0, B[BX], B[BY]) >= 0.0
        else:
            over = inside(Z, place, B[BX], B[BY], 0.0)
        if over and B[BZ] > 0.0:
            G[FLOWN] |= 1 << place
        elif over:
            G[LANDED] |= 1 << place


@kernel
def flown_over(B, G, Z):
    """Bits of the places the pass that has just arrived went over in the air, untouched there, and beyond."""
    found = G[FLOWN] & ~G[LANDED]
    for place in range(Z.shape[0]):
        if (found >> place) & 1 == 1 and not goes_through(Z, place, B[KICK_X], B[KICK_Y], B[BX], B[BY]):
            found &= ~(1 << place)
    return found


@kernel
def moved_on(P, B, player):
    """Whether the passer has gone somewhere since he played the ball."""
    return math.sqrt((P[player, X] - B[LINK_X]) ** 2 + (P[player, Y] - B[LINK_Y]) ** 2) >= MOVED_M
