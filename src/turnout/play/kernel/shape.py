"""Who does what in a side's shape: rear man, width, last man, first and second presser, keepers."""

import math

from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel
from turnout.play.kernel.ground import allowed
from turnout.play.kernel.weights import *

HYSTERESIS_M = 0.8
PRESS_S = 0.2
SECOND_M = 6.0  # a second presser comes from no farther, free
REAR_MAN = 2


@kernel
def take_shape(P, I, B, G, R, Z, L, W, aim, goals):
    """Five times a second: pressers and last man without the ball, rear man and width of the side with it."""
    if B[T_PRESS] > B[NOW] + 0.5 * W[K_DT]:
        return
    B[T_PRESS] += PRESS_S
    pick_pressers(P, I, B, G, R, Z, L)
    G[LAST_MAN] = last_man(P, I, B, G, R, Z, goals)
    team = G[BALL_TEAM]
    if aim[team, 0] != 0.0 or aim[team, 1] != 0.0:
        take_width(P, I, G, R, aim, team)


@kernel
def pick_pressers(P, I, B, G, R, Z, L):
    """The two nearest opponents who may go to the ball; the present presser keeps the job unless clearly farther."""
    team = 1 - G[BALL_TEAM]
    bx, by = B[BX], B[BY]
    if G[HOLDER] < 0 and G[PASS_ON] == 1:
        bx, by = B[PRESS_X], B[PRESS_Y]
    best, found, next_best, second = 1e18, -1, 1e18, -1
    for i in range(P.shape[0]):
        role = I[i, ROLE]
        if I[i, TEAM] != team or I[i, JOURNEY] == 1 or R[role, R_EDGE] >= 0.0 or R[role, R_KEEPS] >= 0.0:
            continue
        ax, ay = allowed(P, I, R, Z, L, B, G[BALL_TEAM], i, bx, by, 0.2)
        off = math.sqrt((ax - bx) ** 2 + (ay - by) ** 2)
        gap = math.sqrt((P[i, X] - ax) ** 2 + (P[i, Y] - ay) ** 2) + 2.0 * off
        if i == G[PRESSER_0 + team]:
            gap -= HYSTERESIS_M
        if gap < best:
            best, found, next_best, second = gap, i, best, found
        elif gap < next_best:
            next_best, second = gap, i
    G[PRESSER_0 + team] = found
    G[SECOND_0 + team] = second if next_best < SECOND_M else -1
    G[PRESSER_0 + 1 - team] = G[SECOND_0 + 1 - team] = -1


@kernel
def last_man(P, I, B, G, R, Z, goals):
    """The defender who is not pressing and stands nearest a goal of his side, where there are goals to shoot at; -1."""
    team = 1 - G[BALL_TEAM]
    best, found = 1e18, -1
    for goal in range(goals.shape[0]):
        if goals[goal, GOAL_HOW] != SHOOT_THERE or goals[goal, GOAL_SIDE] == team:
            continue
        place = goals[goal, GOAL_PLACE]
        for i in range(P.shape[0]):
            if I[i, TEAM] != team or i == G[PRESSER_0 + team] or R[I[i, ROLE], R_KEEPS] >= 0.0:
                continue
            gap = (P[i, X] - Z[place, Z_X]) ** 2 + (P[i, Y] - Z[place, Z_Y]) ** 2
            if gap < best:
                best, found = gap, i
    return found


@kernel
def take_width(P, I, G, R, aim, team):
    """The man farthest back is the rear man; of the others the outermost on each side hold the width."""
    rear, left, right, most, least, back = -1, -1, -1, -1e18, 1e18, 1e18
    for i in range(P.shape[0]):
        I[i, WIDE] = 0
        if not outfield(P, I, G, R, team, i):
            continue
        forward = P[i, X] * aim[team, 0] + P[i, Y] * aim[team, 1]
        if forward < back:
            back, rear = forward, i
    for i in range(P.shape[0]):
        if i == rear or not outfield(P, I, G, R, team, i):
            continue
        across = -P[i, X] * aim[team, 1] + P[i, Y] * aim[team, 0]
        if across > most:
            most, left = across, i
        if across < least:
            least, right = across, i
    if rear >= 0:
        I[rear, WIDE] = REAR_MAN
    if left >= 0 and right >= 0 and left != right:
        I[left, WIDE], I[right, WIDE] = 1, -1


@kernel
def outfield(P, I, G, R, team, i):
    """Whether a player counts in his side's shape: of the side, without the ball, no keeper, not on an edge."""
    role = I[i, ROLE]
    return I[i, TEAM] == team and i != G[HOLDER] and R[role, R_KEEPS] < 0.0 and R[role, R_EDGE] < 0.0
