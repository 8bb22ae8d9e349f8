"""What can be said of another program's keep-ball without playing it: its ball, and what its player on the ball sees.

Its players and its steps of a tenth of a second are not ours, so its times are never asked of our simulator; these two
say how far apart the two games are.
"""

from collections.abc import Sequence
from math import acos, degrees, dist, hypot

Point = tuple[float, float]


def stepped_roll_m(*, speed_mps: float, keeps: float, step_s: float) -> float:
    """Metres a ball runs to rest when every step of `step_s` leaves it `keeps` of its speed: v t / (1 - k).

    Raises ValueError unless 0 <= keeps < 1. Source: evidence rcss-manual.
    """
    if not 0 <= keeps < 1:
        raise ValueError(f"a ball keeps from 0 to below 1 of its speed each step, not {keeps}")
    return speed_mps * step_s / (1 - keeps)


def holder_sees(
    *, keepers: Sequence[Point], takers: Sequence[Point], centre: Point = (0.0, 0.0)
) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """The state that a learner of keep-ball is given: (distances, metres; angles, degrees), the ball at keepers[0].

    Distances of everybody to the centre, of everybody else to the ball, of each other keeper to the nearest taker;
    angles at the ball between each other keeper and the taker nearest to that line. Source: evidence taylor2007.
    """
    ball, mates = keepers[0], keepers[1:]
    distances = [dist(each, centre) for each in (*keepers, *takers)]
    distances += [dist(ball, each) for each in (*mates, *takers)]
    distances += [min(dist(mate, taker) for taker in takers) for mate in mates]
    return tuple(distances), tuple(min(_angle(mate, ball, taker) for taker in takers) for mate in mates)


def _angle(one: Point, at: Point, other: Point) -> float:
    (a, b), (c, d) = ((point[0] - at[0], point[1] - at[1]) for point in (one, other))
    length = hypot(a, b) * hypot(c, d)
    return degrees(acos(max(-1.0, min(1.0, (a * c + b * d) / length)))) if length else 0.0
