"""Who gets a ball that several are going for, in closed form beside the simulated touches. Pure functions, SI units.

Everybody arrives about `lateness_s` after the ball, early or late by a logistic spread, and once there brings it under
control at a steady rate: dP_i/dt = (1 - sum P) f_i(t) r_i, f = 1 / (1 + exp(-pi (t - T_i) / (sqrt(3) s))).
"""

from collections.abc import Sequence
from math import exp, inf, log1p, pi, sqrt

from turnout.evidence import number

STEP_S = 0.002  # halving it moves the worked races by less than 1e-6
NOBODY_LEFT = 1e-10  # chance that nobody has it yet at which the race is over


def control_rate_per_s(*, setting: str = "A", defends: bool = False, keeper: bool = False) -> float:
    """Rate at which a player on the spot brings the ball under control, 1/s, of a published parameter set.

    setting: "A" or "B" (evidence: race.*). Set B lets who defends control it faster; set A says so of a keeper, and
    the factor is used in both. Raises Unknown on another set.
    """
    rate_per_s = number(f"race.{setting}.lambda")
    if defends and setting == "B":
        rate_per_s *= number("race.B.kappa")
    return rate_per_s * (number("race.A.keeper-factor") if keeper else 1.0)


def race_shares(
    *, lateness_s: Sequence[float], rates_per_s: Sequence[float], spread_s: float | None = None
) -> tuple[float, ...]:
    """Chance of each player to be the one who controls the ball; together 1.

    lateness_s (players,): when each is expected, seconds after the ball gets there; negative: waiting for it.
    rates_per_s (players,): control rates, see `control_rate_per_s`. spread_s: of the arrival times, set A's when None.
    Raises ValueError when nobody can ever control it. Source: evidence race-code, spearman2018; integrated finer.
    """
    spread_s = number("race.A.sigma") if spread_s is None else spread_s
    if not any(rate > 0 for rate in rates_per_s):
        raise ValueError("nobody in the race can control the ball: every rate is 0")
    players = list(zip(lateness_s, rates_per_s, strict=True))
    shares = [0.0] * len(players)
    left, time_s = 1.0, 0.0
    while left > NOBODY_LEFT:
        after = _still_free(players, spread_s, time_s + STEP_S)
        pulls = [rate * _there(time_s + STEP_S / 2 - late_s, spread_s) for late_s, rate in players]
        shares = [share + (left - after) * pull / sum(pulls) for share, pull in zip(shares, pulls, strict=True)]
        left, time_s = after, time_s + STEP_S
    return tuple(share / (1 - left) for share in shares)


def mean_control_s(*, lateness_s: float = -inf, rate_per_s: float, spread_s: float | None = None) -> float:
    """Mean time from the ball's arrival to control by one player alone, seconds: 1 / rate for one who stands there."""
    spread_s = number("race.A.sigma") if spread_s is None else spread_s
    player = [(max(lateness_s, -100 * spread_s), rate_per_s)]
    total_s, left, time_s = 0.0, 1.0, 0.0
    while left > NOBODY_LEFT:
        after = _still_free(player, spread_s, time_s + STEP_S)
        total_s += STEP_S * (left + after) / 2
        left, time_s = after, time_s + STEP_S
    return total_s


def _there(after_s: float, spread_s: float) -> float:
    """Chance that a player expected `after_s` ago has arrived."""
    return 1 / (1 + exp(min(700.0, -_steepness(spread_s) * after_s)))


def _still_free(players: list[tuple[float, float]], spread_s: float, time_s: float) -> float:
    """Chance that nobody has the ball `time_s` after its arrival: exp(-sum of r_i times the integral of f_i)."""
    seconds = (
        rate * (_been_there_s(time_s - late, spread_s) - _been_there_s(-late, spread_s)) for late, rate in players
    )
    return exp(-sum(seconds))


def _been_there_s(after_s: float, spread_s: float) -> float:
    """The integral of `_there` up to `after_s`: softplus, written so that it never overflows."""
    steep = _steepness(spread_s)
    return max(0.0, after_s) + log1p(exp(-abs(steep * after_s))) / steep


def _steepness(spread_s: float) -> float:
    return pi / (sqrt(3) * spread_s)
