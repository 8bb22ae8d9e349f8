"""Places in the kernel: inside, clamp, edges."""

import math

from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_inlined

EDGE_OUT_M = 0.5
EDGE_STEP_M = 2.0
EDGE_WIDE_M = 1.0  # what is done on the edge is done within so much outside it


@kernel
def beside(Z, place, dx, dy, grow):
    """Whether a point so far from a place's middle is outside it, or on the line round it, as its kind says."""
    ring = Z[place, Z_KIND] >= ROUND
    hx, hy = Z[place, Z_HX] - grow, Z[place, Z_HY] - grow
    if Z[place, Z_KIND] == OUTSIDE + CIRCLE or Z[place, Z_KIND] == ROUND + CIRCLE:
        far = math.sqrt(dx * dx + dy * dy)
        return far > hx and (not ring or far <= hx + 2.0 * grow + EDGE_WIDE_M)
    out = abs(dx) > hx or abs(dy) > hy
    wide = 2.0 * grow + EDGE_WIDE_M
    return out and (not ring or (abs(dx) <= hx + wide and abs(dy) <= hy + wide))


@kernel_inlined
def inside(Z, place, x, y, grow):
    """Whether (x, y) lies in a place grown by `grow` metres."""
    dx = x - Z[place, Z_X]
    dy = y - Z[place, Z_Y]
    if Z[place, Z_KIND] >= OUTSIDE:
        return beside(Z, place, dx, dy, grow)
    if Z[place, Z_KIND] == 1:
        radius = Z[place, Z_HX] + grow
        return dx * dx + dy * dy <= radius * radius
    return abs(dx) <= Z[place, Z_HX] + grow and abs(dy) <= Z[place, Z_HY] + grow


@kernel_inlined
def into(Z, place, x, y, margin):
    """The point of a place nearest to (x, y), at least `margin` inside where there is room."""
    if Z[place, Z_KIND] >= OUTSIDE:
        return into_beside(Z, place, x, y, margin)
    cx, cy = Z[place, Z_X], Z[place, Z_Y]
    hx, hy = max(0.0, Z[place, Z_HX] - margin), max(0.0, Z[place, Z_HY] - margin)
    dx, dy = x - cx, y - cy
    if Z[place, Z_KIND] == 1:
        far = math.sqrt(dx * dx + dy * dy)
        if far > hx:
            dx, dy = dx * hx / far, dy * hx / far
        return cx + dx, cy + dy
    return cx + min(hx, max(-hx, dx)), cy + min(hy, max(-hy, dy))


@kernel
def into_beside(Z, place, x, y, margin):
    """The nearest point outside a place, or on the line round it."""
    dx, dy = x - Z[place, Z_X], y - Z[place, Z_Y]
    hx, hy = Z[place, Z_HX], Z[place, Z_HY]
    ring = Z[place, Z_KIND] >= ROUND
    off = 0.5 * EDGE_WIDE_M if ring else margin
    if Z[place, Z_KIND] == OUTSIDE + CIRCLE or Z[place, Z_KIND] == ROUND + CIRCLE:
        far = max(1e-6, math.sqrt(dx * dx + dy * dy))
        if far > hx + off and not ring:
            return x, y
        return Z[place, Z_X] + dx * (hx + off) / far, Z[place, Z_Y] + dy * (hx + off) / far
    if abs(dx) > hx or abs(dy) > hy:
        if not ring:
            return x, y
        return (Z[place, Z_X] + min(hx + off, max(-hx - off, dx)), Z[place, Z_Y] + min(hy + off, max(-hy - off, dy)))
    if hx - abs(dx) < hy - abs(dy):
        return Z[place, Z_X] + (hx + off if dx > 0.0 else -hx - off), y
    return x, Z[place, Z_Y] + (hy + off if dy > 0.0 else -hy - off)


@kernel
def out_of(Z, place, within, x, y, margin):
    """The point outside a place nearest to (x, y) that still lies in the place `within`; (x, y) when it is outside."""
    dx, dy = x - Z[place, Z_X], y - Z[place, Z_Y]
    hx, hy = Z[place, Z_HX] + margin, Z[place, Z_HY] + margin
    if Z[place, Z_KIND] == 1:
        far = math.sqrt(dx * dx + dy * dy)
        if far < hx:
            return Z[place, Z_X] + dx * hx / max(far, 1e-6), Z[place, Z_Y] + dy * hx / max(far, 1e-6)
        return x, y
    if abs(dx) >= hx or abs(dy) >= hy:
        return x, y
    best, best_x, best_y = 1e9, x, y
    for way in range(4):
        to_x, to_y = x, y
        if way < 2:
            to_x = Z[place, Z_X] + (hx if way == 0 else -hx)
        else:
            to_y = Z[place, Z_Y] + (hy if way == 2 else -hy)
        cost = abs(to_x - x) + abs(to_y - y)
        if not inside(Z, within, to_x, to_y, -0.05):
            cost += 1e6
        if cost < best:
            best, best_x, best_y = cost, to_x, to_y
    return best_x, best_y


@kernel
def edge_share(Z, place, x, y):
    """How far round a place (0 to 1, clockwise from the middle of its north side) the edge point nearest (x, y) is."""
    dx, dy = x - Z[place, Z_X], y - Z[place, Z_Y]
    hx, hy = Z[place, Z_HX], Z[place, Z_HY]
    if Z[place, Z_KIND] == 1:
        return (0.25 - math.atan2(dy, dx) / (2 * math.pi)) % 1.0
    around = 4 * (hx + hy)
    u, v = min(hx, max(-hx, dx)), min(hy, max(-hy, dy))
    if abs(dy) - hy > abs(dx) - hx:
        along = u if dy > 0 else hx + 2 * hy + hx - u
    else:
        along = hx + hy - v if dx > 0 else 3 * hx + 3 * hy + v
    return (along / around) % 1.0


@kernel
def edge_point(Z, place, share, out_m):
    """The point `out_m` outside a place's edge, a share of the way round it."""
    hx, hy = Z[place, Z_HX], Z[place, Z_HY]
    cx, cy = Z[place, Z_X], Z[place, Z_Y]
    if Z[place, Z_KIND] == 1:
        angle = 2 * math.pi * (0.25 - share)
        return cx + (hx + out_m) * math.cos(angle), cy + (hx + out_m) * math.sin(angle)
    along = (share % 1.0) * 4 * (hx + hy)
    if along < hx:
        return cx + along, cy + hy + out_m
    along -= hx
    if along < 2 * hy:
        return cx + hx + out_m, cy + hy - along
    along -= 2 * hy
    if along < 2 * hx:
        return cx + hx - along, cy - hy - out_m
    along -= 2 * hx
    if along < 2 * hy:
        return cx - hx - out_m, cy - hy + along
    return cx - hx + (along - 2 * hy), cy + hy + out_m


@kernel
def along_edge(Z, place, x, y, share):
    """The next point on the way along an edge from (x, y) to a share of it: round the corners, not across them."""
    here = edge_share(Z, place, x, y)
    hx, hy = Z[place, Z_HX], Z[place, Z_HY]
    around = 2 * math.pi * hx if Z[place, Z_KIND] == 1 else 4 * (hx + hy)
    most = EDGE_STEP_M / around
    way = (share - here + 0.5) % 1.0 - 0.5
    return edge_point(Z, place, here + min(most, max(-most, way)), EDGE_OUT_M)


@kernel_inlined
def limit_holds(L, R, B, Z, row, role, ball_team):
    """Whether a limit binds a role at this moment."""
    if L[row, L_LIFTED] == 1 or (L[row, L_ROLES] >> role) & 1 == 0:
        return False
    when = L[row, L_WHILE]
    if when == ALWAYS:
        return True
    side = int(R[role, R_SIDE])
    if when == WHILE_WITH:
        return side == ball_team
    if when == WHILE_WITHOUT:
        return side != ball_team
    if when == WHILE_SIDE:
        return L[row, L_WHILE_SIDE] == ball_team
    if when == WHILE_BALL_IN:
        return inside(Z, L[row, L_WHILE_PLACE], B[BX], B[BY], 0.0)
    if when >= WHILE_BEHIND:
        return (L[row, L_NOW] >> min(side, 1)) & 1 == 1
    return False


@kernel_inlined
def allowed(P, I, R, Z, L, B, ball_team, player, x, y, margin):
    """The spot nearest (x, y) where a player's role may be: fence, edge stretch, stay-in and stay-out sentences."""
    role = I[player, ROLE]
    edge = int(R[role, R_EDGE])
    if edge >= 0:
        share = edge_share(Z, edge, x, y)
        middle, span = P[player, EDGE_AT], P[player, EDGE_SPAN]
        if R[role, R_STRETCH] == 1.0:
            span = 0.5
        elif R[role, R_STRETCH] == 2.0:
            span = 0.0
        away = (share - middle + 0.5) % 1.0 - 0.5
        return along_edge(Z, edge, P[player, X], P[player, Y], middle + min(span, max(-span, away)))
    if R[role, R_FIXED] == 1.0:
        return P[player, SPOT_X], P[player, SPOT_Y]
    if R[role, R_FENCE] == 1.0:
        x, y = into(Z, int(R[role, R_HOME]), x, y, margin)
    for number in range(int(R[role, R_LIMITS])):
        row = int(R[role, R_LIMIT_0 + number])
        if limit_holds(L, R, B, Z, row, role, ball_team):
            if L[row, L_WHAT] == STAY_IN:
                x, y = into(Z, L[row, L_PLACE], x, y, margin)
            else:
                x, y = out_of(Z, L[row, L_PLACE], int(R[role, R_HOME]), x, y, margin * 0.5)
    return x, y


@kernel
def touch_limit(I, R, Z, L, B, ball_team, player):
    """How many touches a sentence leaves this player here, 0 for no limit; a sentence about a place goes first."""
    general, local = 0, 0
    for row in range(L.shape[0]):
        if L[row, L_WHAT] == TOUCH_LIMIT and limit_holds(L, R, B, Z, row, I[player, ROLE], ball_team):
            place = L[row, L_PLACE]
            if place < 0:
                general = L[row, L_VALUE]
            elif inside(Z, place, B[BX], B[BY], 0.0):
                local = L[row, L_VALUE]
    return local if local > 0 else general


@kernel
def crossed(Z, place, x0, y0, x1, y1):
    """Share of the way from (x0, y0) to (x1, y1) at which a line place is crossed, between its ends; -1.0 if not."""
    if Z[place, Z_HY] == 0.0:
        a, b, c, u0, u1, half = y0 - Z[place, Z_Y], y1 - Z[place, Z_Y], Z[place, Z_X], x0, x1, Z[place, Z_HX]
    else:
        a, b, c, u0, u1, half = x0 - Z[place, Z_X], x1 - Z[place, Z_X], Z[place, Z_Y], y0, y1, Z[place, Z_HY]
    if (a > 0.0) == (b > 0.0) or a == b:
        return -1.0
    share = a / (a - b)
    return share if abs(u0 + share * (u1 - u0) - c) <= half else -1.0


@kernel
def used_before(G, Z, L, place):
    """Whether a sentence forbids this gate because it was used last."""
    if G[LAST_GATE] != place:
        return False
    for row in range(L.shape[0]):
        if L[row, L_WHAT] == NO_REPEAT and (L[row, L_PLACE] < 0 or L[row, L_PLACE] == place):
            return True
    return False


@kernel
def out_of_bits_m(Z, places, x, y):
    """Metres from (x, y) to the nearest of these places (a bit each); 0 inside one."""
    best = 1e9
    for place in range(Z.shape[0]):
        if (places >> place) & 1 == 1:
            to_x, to_y = into(Z, place, x, y, 0.0)
            best = min(best, math.sqrt((to_x - x) ** 2 + (to_y - y) ** 2))
    return best
