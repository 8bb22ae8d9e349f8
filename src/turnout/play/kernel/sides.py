"""Who belongs to whom at this moment: the side a role plays for, the roles of a place, who has waited longest."""

from turnout.play.kernel.columns import *
from turnout.play.kernel.compiling import kernel, kernel_inlined
from turnout.play.kernel.counting import behind

GROUPS = (W_ACTOR_SIDE, W_OTHER_SIDE, W_SIDE, W_ROLE, W_ITS_ROLE, W_OTHER_ROLE, W_SOME, W_BEHIND)


@kernel_inlined
def team_of(B, G, R, role):
    """The side a role plays for at this moment; those who wait play for nobody."""
    if R[role, R_WAITS] == 1.0:
        return OUT_OF_PLAY
    if R[role, R_NEUTRAL] >= WITHOUT_BALL:
        return side_taken(B, R, role, G[BALL_TEAM])
    return G[BALL_TEAM] if R[role, R_NEUTRAL] == WITH_BALL else int(R[role, R_SIDE])


@kernel
def side_taken(B, R, role, ball_team):
    """Whom a role plays for that is not simply with the ball: nobody while points are level."""
    if R[role, R_NEUTRAL] == WITHOUT_BALL:
        return 1 - ball_team
    for side in range(2):
        if behind(B, side):
            return side
    return OUT_OF_PLAY


@kernel
def change_coats(I, B, G, R):
    """Points have moved: whoever plays for the side that is behind does so, but not with the ball at his feet."""
    for j in range(I.shape[0]):
        if R[I[j, ROLE], R_NEUTRAL] == SIDE_BEHIND and j != G[HOLDER]:
            I[j, TEAM] = team_of(B, G, R, I[j, ROLE])


@kernel
def longest_of(P, I, B, R, kind, roles, team):
    """Who has been longest in the roles of a group, or longest off the field; -1 for nobody."""
    best, found = 1e18, -1
    if kind != W_WAITED and kind not in GROUPS:
        return found
    for j in range(P.shape[0]):
        side = int(R[I[j, ROLE], R_SIDE])
        fits = R[I[j, ROLE], R_WAITS] == 1.0
        if kind != W_WAITED:
            fits = roles == 0 or (roles >> I[j, ROLE]) & 1 == 1
            if kind == W_ITS_ROLE or kind == W_ACTOR_SIDE:
                fits = fits and side == team
            elif kind == W_OTHER_ROLE or kind == W_OTHER_SIDE:
                fits = fits and side == 1 - team
            elif kind == W_BEHIND:
                fits = fits and side < 2 and behind(B, side)
        if fits and P[j, SINCE_ROLE] < best:
            best, found = P[j, SINCE_ROLE], j
    return found


@kernel
def players_in(I, role):
    """How many players are in a role."""
    number = 0
    for j in range(I.shape[0]):
        if I[j, ROLE] == role:
            number += 1
    return number


@kernel
def role_at(R, role, place, edge):
    """The role of the same side that is at home in a place, on its edge where that is said; -1 when there is none."""
    found = -1
    for other in range(R.shape[0]):
        same = R[other, R_SIDE] == R[role, R_SIDE] or R[other, R_WAITS] == 1.0 or R[role, R_WAITS] == 1.0
        on_edge = int(R[other, R_EDGE]) == place
        there = on_edge or int(R[other, R_KEEPS]) == place or int(R[other, R_HOME]) == place
        if other != role and same and there and (found < 0 or on_edge == edge):
            found = other
    return found
