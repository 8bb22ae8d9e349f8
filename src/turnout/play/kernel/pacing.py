"""How fast to run without the ball: as fast as it takes to be there in time and in balance, and what running costs.

Who reads the play takes the time he has; a child runs hard at what is near, tires, and watches what is far.
"""

import math

from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel
from turnout.play.kernel.shape import REAR_MAN
from turnout.play.kernel.weights import *

FIRM_PASS_M = 14.0
SMALL_M, LARGE_M = 14.0, 32.0  # side of the area from which moving is cheaper: keep-ball, with a direction; free
CARELESS = 0.4  # share of the price of moving that a child who runs hard at everything weighs near the ball, free
WEARY, SPARE = 1.0, 0.4  # to an exhausted man moving is so much dearer, and he supports so much slower, free
STROLL_MPS = 1.4  # who is early walks, free
SET_OFF_S = 0.7  # to set off, and to be there set before the ball could come, free
SET_S, SET_PACE = 0.2, 0.75  # when the man on the ball looks up, slow down to be set for the pass, free
LOOK_S, PASS_MPS = 0.3, 12.0  # from a ball under control to a pass, and how fast it comes, free
LOOSE_S = 1.2  # until a ball nobody has is played on, free
NEXT_S = 0.4  # who is not likely to get the next pass has so much longer, free
PRESS_PER_S = 0.6  # nobody sprints the last metres to a man, free
CLOSE_MPS2, JOCKEY_MPS = 1.6, 2.5  # how a presser in balance slows down from afar, his pace at arm's length, free
SLOWEST_PASS_MPS = 4.0


@kernel
def price_of_moving(P, I, A, B, directed, i):
    """What moving costs, and standing is worth, beside a small area: less in a large one, more to a tired man.

    A child runs after a ball that is near and watches one that is far. With a direction the rear man holds and rests.
    """
    room = min(1.0, (LARGE_M if directed else SMALL_M) / B[SQ])
    price = room * room * room if directed else room * room
    if directed and I[i, WIDE] == REAR_MAN:
        price = 1.0
    far = (P[i, X] - B[BX]) ** 2 + (P[i, Y] - B[BY]) ** 2 > FIRM_PASS_M * FIRM_PASS_M
    child = 1.0 if far else CARELESS * price
    price = child + A[i, READS] * (price - child)
    return price * (1.0 + WEARY * (1.0 - P[i, FRESH]))


@kernel
def support_pace(P, I, A, B, G, W, aim, i):
    """As fast as it takes to be there when a pass could come; who does not read that hurries. m/s."""
    gap = math.sqrt((P[i, TX] - P[i, X]) ** 2 + (P[i, TY] - P[i, Y]) ** 2)
    most = A[i, MOVE_PACE] * min(A[i, TOP], W[K_BRISK])
    hurried = most * min(1.0, 0.3 + 0.25 * gap)
    needed = max(STROLL_MPS, gap / max(0.4, pass_s(P, I, A, B, G, aim, i) - SET_OFF_S))
    pace = min(most, hurried + A[i, READS] * (needed - hurried)) * (1.0 - SPARE * (1.0 - P[i, FRESH]))
    if G[HOLDER] >= 0 and B[NOW] > B[T_READY] - SET_S:
        pace = max(min(pace, STROLL_MPS), SET_PACE * pace)
    return pace


@kernel
def pass_s(P, I, A, B, G, aim, i):
    """Seconds until a pass could reach a player where he is going: when the ball is under control, then its way.

    One behind the ball in a directional game, and one beyond a firm pass, is at the earliest next but one.
    """
    team, target = I[i, TEAM], G[TARGET]
    if G[HOLDER] >= 0:
        time = max(0.0, B[T_READY] - B[NOW]) + LOOK_S
    elif target >= 0:
        speed = max(SLOWEST_PASS_MPS, math.sqrt(B[BVX] * B[BVX] + B[BVY] * B[BVY]))
        way = math.sqrt((B[AIM_X] - B[BX]) ** 2 + (B[AIM_Y] - B[BY]) ** 2)
        time = way / speed + A[target, CONTROL_S] + LOOK_S
    else:
        time = LOOSE_S
    dx, dy = P[i, TX] - B[BX], P[i, TY] - B[BY]
    away = math.sqrt(dx * dx + dy * dy)
    if away > FIRM_PASS_M or dx * aim[team, 0] + dy * aim[team, 1] < 0.0:
        time += NEXT_S
    return time + away / PASS_MPS


@kernel
def press_pace(A, W, i, gap):
    """How fast to close down, m/s: so that he can still stop in balance, v2 = 2 a gap; a child hurries."""
    hurried = min(W[K_PRESS_PACE] * A[i, TOP], W[K_PRESS_MPS] + PRESS_PER_S * gap)
    balanced = min(hurried, max(JOCKEY_MPS, math.sqrt(2.0 * CLOSE_MPS2 * gap)))
    return hurried + A[i, READS] * (balanced - hurried)
