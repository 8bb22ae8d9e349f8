"""Yards, feet, paces and minutes at the door; metres and seconds inside."""

YARD_M = 0.9144
FOOT_M = 0.3048
PACE_M = 0.9  # a coach's big pace, own choice (evidence: pace.coach); calibrated once on a known distance

UNITS_M = {"yd": YARD_M, "m": 1.0, "ft": FOOT_M, "paces": PACE_M}


def yards(metres: float) -> float:
    """Metres as yards."""
    return metres / YARD_M


def metres(value: float, unit: str) -> float:
    """A length in `yd`, `m`, `ft` or `paces` as metres; raises KeyError on another unit."""
    return value * UNITS_M[unit]


def pace_length_m(*, known_m: float, paces: int) -> float:
    """A coach's own pace, metres, from a known distance walked once."""
    return known_m / paces


def step_length_m(*, speed_mps: float, stride_s: float) -> float:
    """One walking step, metres: half of a stride of `stride_s` seconds (evidence: step.child.*)."""
    return speed_mps * stride_s / 2
