"""What a spread of kicking directions means in metres at the target, and the reverse. Pure functions.

Directions are taken as normal about the aim, so a share within +-w at a distance d is a share within +-atan(w / d).
"""

from math import atan, degrees, radians, tan
from statistics import NormalDist

_NORMAL = NormalDist()


def spread_deg(*, distance_m: float, within_m: float = 1.0, share: float = 0.95) -> float:
    """The spread (SD) of directions, degrees, at which `share` of kicks passes within `within_m` of the target.

    share: between 0 and 1, both out; raises ValueError (statistics.StatisticsError) otherwise.
    """
    return degrees(atan(within_m / distance_m)) / _NORMAL.inv_cdf((1 + share) / 2)


def within_m(*, distance_m: float, spread_deg: float, share: float = 0.95) -> float:
    """How far to either side of the target, metres, `share` of kicks pass at `distance_m`; for spreads of a kick."""
    return distance_m * tan(radians(spread_deg) * _NORMAL.inv_cdf((1 + share) / 2))


def share_within(*, distance_m: float, within_m: float, spread_deg: float) -> float:
    """Share of kicks that pass within `within_m` of a target `distance_m` away, 0 to 1."""
    return 2 * _NORMAL.cdf(atan(within_m / distance_m) / radians(spread_deg)) - 1
