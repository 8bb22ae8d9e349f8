"""Deeds with the ball that take time: run it through a place, stop it, move it from place to place, keep it."""

import math

from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel
from turnout.play.kernel.ground import crossed, inside
from turnout.play.kernel.judging import actor_fits, happens
from turnout.play.kernel.owning import score

REST_MPS, REST_S = 0.4, 0.4  # a ball under the foot of whoever stands this still, so long after he got it, is at rest


@kernel
def deeds(P, I, B, G, R, Z, T, edges, V, E, H, Q, runs, LOG):
    """Look at the ball of this step for every deed a sentence waits for; a score ends the looking."""
    holder = G[HOLDER]
    if holder >= 0 and B[WAS_HELD] != B[T_HELD]:
        G[CAME_IN] = G[RESTED] = 0
        B[WAS_BX], B[WAS_BY], B[WAS_HELD] = B[BX], B[BY], B[T_HELD]
    done = 0
    for row in range(T.shape[0]):
        when, place = T[row, ROW_WHEN], T[row, ROW_PLACE]
        if when < E_RUN_THROUGH or when > E_KEEP:
            continue
        if when == E_KEEP:
            who = keeper_of(I, B, G, T, row)
        elif holder < 0:
            continue
        elif when == E_MOVE:
            who = holder if brought(I, B, Z, T, row, holder) else -1
        elif when == E_STOP_IN:
            who = holder if (G[RESTED] >> place) & 1 == 0 and at_rest(P, B, Z, holder, place) else -1
            if who >= 0:
                G[RESTED] |= 1 << place
        else:
            who = holder if (done >> place) & 1 == 0 and ran_through(B, G, Z, place) else -1
            done |= 1 << place
        if who < 0:
            continue
        team = I[who, TEAM]
        if happens(P, I, B, G, R, Z, T, edges, E, V, H, Q, runs, LOG, when, who, team, place, T[row, ROW_COUNT]):
            score(P, I, B, G, R, Z, T, edges, V, E, H, Q, runs, LOG, who, team)
        if G[WANT_STOP] == 1:
            return
    B[WAS_BX], B[WAS_BY] = B[BX], B[BY]


@kernel
def keeper_of(I, B, G, T, row):
    """Who has it as a side has kept the ball as long as a row says, told once each such time; -1 before."""
    team = G[SPELL_TEAM]
    if team < 0 or G[POSSESSION] != team or kept_s(B, T, row, team) < T[row, ROW_COUNT]:
        return -1
    who = G[HOLDER] if G[HOLDER] >= 0 else G[LAST]
    if who < 0 or I[who, TEAM] != team:
        return -1
    B[MARK_0 + 2 * T[row, ROW_MEMORY] + team] = B[NOW]
    return who


@kernel
def kept_s(B, T, row, team):
    """Seconds a side has owned the ball without losing it, counted anew each time a row has told it."""
    since = max(B[T_POSSESSION], B[T_WON_0 + team])
    return B[NOW] - max(since, B[MARK_0 + 2 * T[row, ROW_MEMORY] + team])


@kernel
def keep_stake(I, B, G, T, i, team):
    """Points a lost ball would throw away: those for keeping it, by the share of the time that is behind."""
    most = 0.0
    for row in range(T.shape[0]):
        if T[row, ROW_WHEN] == E_KEEP and T[row, ROW_DO] == D_POINTS and actor_fits(I, T, row, i, team):
            share = kept_s(B, T, row, team) / T[row, ROW_COUNT] if G[POSSESSION] == team else 0.0
            most = max(most, T[row, ROW_VALUE] * (0.3 + min(1.0, share)))
    return most


@kernel
def brought(I, B, Z, T, row, holder):
    """Whether the side has the ball now where a row says it is moved to, after having it where it comes from."""
    team, at = I[holder, TEAM], MARK_0 + 2 * T[row, ROW_MEMORY]
    B[at + 1 - team] = -1e9
    if inside(Z, T[row, ROW_PLACE], B[BX], B[BY], 0.0):
        B[at + team] = B[NOW]
    elif B[at + team] >= B[T_STARTED] and inside(Z, T[row, ROW_COUNT] - 1, B[BX], B[BY], 0.0):
        B[at + team] = -1e9
        return True
    return False


@kernel
def at_rest(P, B, Z, holder, place):
    """Whether the holder stands in a place with the ball at rest under his foot."""
    speed2 = P[holder, VX] ** 2 + P[holder, VY] ** 2
    return B[NOW] - B[T_HELD] >= REST_S and speed2 < REST_MPS * REST_MPS and inside(Z, place, B[BX], B[BY], 0.0)


@kernel
def ran_through(B, G, Z, place):
    """Whether the ball has just been carried out of a place on another side than it was carried in at, or through a
    gate."""
    if Z[place, Z_KIND] == LINE:
        return crossed(Z, place, B[WAS_BX], B[WAS_BY], B[BX], B[BY]) >= 0.0
    was, now = inside(Z, place, B[WAS_BX], B[WAS_BY], 0.0), inside(Z, place, B[BX], B[BY], 0.0)
    if was == now:
        return False
    side = side_at(Z, place, B[WAS_BX], B[WAS_BY]) if now else side_at(Z, place, B[BX], B[BY])
    came = (G[CAME_IN] >> (3 * place)) & 7
    G[CAME_IN] &= ~(7 << (3 * place))
    if now:
        G[CAME_IN] |= side << (3 * place)
    return not now and came != 0 and came != side


@kernel
def side_at(Z, place, x, y):
    """The side of a place (1 east, 2 west, 3 north, 4 south) a point just outside it lies at."""
    dx, dy = (x - Z[place, Z_X]) / Z[place, Z_HX], (y - Z[place, Z_Y]) / Z[place, Z_HY]
    if math.fabs(dx) > math.fabs(dy):
        return 1 if dx > 0.0 else 2
    return 3 if dy > 0.0 else 4
