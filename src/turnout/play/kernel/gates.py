"""Lines on the ground that count when a pass goes through them: which one is next, where to stand for it."""

from turnout.play.kernel.chance import MASK, mix
from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel
from turnout.play.kernel.ground import used_before
from turnout.play.kernel.judging import actor_fits

LEAST_FANCY = 0.3  # how much a gate a pair fancies is preferred to a nearer one, free
CROWDED = 1e6  # of gates that others make for the nearest


@kernel
def next_gate(I, B, G, Z, L, T, i, team, x, y):
    """A gate a pass of this side may score through now, or -1; with several balls the one these players have taken."""
    if G[NEXT_GATE] >= 0:
        return G[NEXT_GATE]
    return pick_gate(I, G, Z, L, T, i, team, x, y, 0)


@kernel
def pick_gate(I, G, Z, L, T, i, team, x, y, taken):
    """A near gate, but not every ball the same one; one that others make for (a bit each in `taken`) only as a last."""
    best, found = 1e18, -1
    for row in range(T.shape[0]):
        if T[row, ROW_WHEN] != E_THROUGH or T[row, ROW_DO] != D_POINTS or not actor_fits(I, T, row, i, team):
            continue
        place = T[row, ROW_PLACE]
        if Z[place, Z_KIND] != LINE:
            continue
        if used_before(G, Z, L, place):
            continue
        gap = (Z[place, Z_X] - x) ** 2 + (Z[place, Z_Y] - y) ** 2
        fancy = mix(G[UNIT] * 7919 + (G[LAST_GATE] + 1) * 104729 + place * 31) / MASK
        gap *= LEAST_FANCY + fancy * fancy
        if (taken >> place) & 1 == 1:
            gap += CROWDED
        if gap < best:
            best, found = gap, place
    return found


@kernel
def share_gates(I, B, G, Z, L, T, units):
    """With several balls: whoever has played through his gate, or has none, takes one nobody else makes for."""
    if units.shape[0] == 1:
        return
    for ball in range(units.shape[0]):
        if G[ball, NEXT_GATE] >= 0 and G[ball, NEXT_GATE] != G[ball, LAST_GATE]:
            continue
        taken, first = 0, units[ball, 0]
        for other in range(units.shape[0]):
            if other != ball and G[other, NEXT_GATE] >= 0:
                taken |= 1 << G[other, NEXT_GATE]
        x, y = B[ball, BX], B[ball, BY]
        G[ball, NEXT_GATE] = pick_gate(I, G[ball], Z, L, T, first, G[ball, BALL_TEAM], x, y, taken)


@kernel
def before_gate(Z, place, x, y, off_m):
    """The point `off_m` from a gate's middle on the side where (x, y) is."""
    if Z[place, Z_HY] == 0.0:
        return Z[place, Z_X], Z[place, Z_Y] + (off_m if y > Z[place, Z_Y] else -off_m)
    return Z[place, Z_X] + (off_m if x > Z[place, Z_X] else -off_m), Z[place, Z_Y]


@kernel
def behind_gate(Z, place, x, y, off_m):
    """The point `off_m` beyond a gate's middle, seen from (x, y)."""
    return before_gate(Z, place, 2.0 * Z[place, Z_X] - x, 2.0 * Z[place, Z_Y] - y, off_m)
