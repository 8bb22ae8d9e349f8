"""What a pass would bring at once: points, or what no score counts without."""

from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_inlined
from turnout.play.kernel.counting import MOVED_M, back, goes_through, row_worth, wanted
from turnout.play.kernel.ground import inside, used_before
from turnout.play.kernel.judging import actor_fits

STOP_SHARE = 0.6  # how sure it is that a ball received where stopping it scores is stopped there, free
MARK_SHARE = 0.5  # of a point, what it is worth to do that without which no score counts, free
WASTED = 2.0  # points; a pair nobody takes the ball from waits with a pass that goes through no gate, free


@kernel
def pass_points(P, I, B, G, R, Z, L, T, plans, runs, team, i, j, x, y, adds, first, over):
    """Points a pass from i received by j at (x, y) would bring at once, leaning to the places the side attacks most.

    adds: what it adds to a run; first: it is played with the first touch; over: bits of places it clears in the air.
    """
    points = 0.0
    for row in range(T.shape[0]):
        what = T[row, ROW_DO]
        if (what != D_POINTS and what != D_MARK) or T[row, ROW_VALUE] <= 0 or not wanted(B, G, T, row, team):
            continue
        gain = pass_gain(P, I, B, G, R, Z, L, T, plans, runs, row, team, i, j, x, y, adds, first, over)
        points += gain if what == D_POINTS else MARK_SHARE * gain
    if points == 0.0 and G[NEXT_GATE] >= 0:
        return -WASTED
    return points


@kernel_inlined
def pass_gain(P, I, B, G, R, Z, L, T, plans, runs, row, team, i, j, x, y, adds, first, over):
    """What one row would bring for a pass."""
    when, place = T[row, ROW_WHEN], T[row, ROW_PLACE]
    if when == E_ROW or when == E_PASSES:
        have = runs[team] + adds if when == E_ROW else max(0, G[POSSESSION_PASSES]) + 1
        if not (have >= T[row, ROW_COUNT] and actor_fits(I, T, row, j, team) and (adds > 0 or when == E_PASSES)):
            return 0.0
        return 1.0 * row_worth(P, I, B, G, R, Z, T, row, team, x, y, True, i, B[BX], B[BY])
    if when == E_RECEIVE:
        if not (actor_fits(I, T, row, j, team) and inside(Z, place, x, y, -0.3)):
            return 0.0
        return row_worth(P, I, B, G, R, Z, T, row, team, x, y, True, i, B[BX], B[BY]) * plans[place, team]
    if not actor_fits(I, T, row, i, team):
        return 0.0
    if when == E_THROUGH:
        if not goes_through(Z, place, B[BX], B[BY], x, y) or used_before(G, Z, L, place):
            return 0.0
    elif when == E_PASS_INTO:
        if not inside(Z, place, x, y, -0.3):
            return 0.0
    elif when == E_PASS:
        if T[row, ROW_TO_ROLES] != 0 and (T[row, ROW_TO_ROLES] >> I[j, ROLE]) & 1 == 0:
            return 0.0
    elif when == E_OVER:
        if (over >> place) & 1 == 0:
            return 0.0
    elif when == E_BACK or when == E_ONE_TWO:
        if not back(G, i, j) or (when == E_ONE_TWO and (x - B[LINK_X]) ** 2 + (y - B[LINK_Y]) ** 2 < MOVED_M * MOVED_M):
            return 0.0
    elif when == E_STOP_IN:
        if not inside(Z, place, x, y, -0.3):
            return 0.0
        return STOP_SHARE * row_worth(P, I, B, G, R, Z, T, row, team, x, y, False, i, B[BX], B[BY])
    elif when == E_MOVE:
        there = T[row, ROW_COUNT] - 1
        under_way = B[MARK_0 + 2 * T[row, ROW_MEMORY] + team] >= B[T_STARTED]
        if not inside(Z, there if under_way else place, x, y, -0.3):
            return 0.0
        share = 1.0 if under_way else MARK_SHARE
        return share * row_worth(P, I, B, G, R, Z, T, row, team, x, y, False, i, B[BX], B[BY])
    else:
        return 0.0
    leaning = plans[place, team] if when == E_THROUGH else 1.0
    return row_worth(P, I, B, G, R, Z, T, row, team, B[BX], B[BY], first, i, B[BX], B[BY]) * leaning
