"""A full pitch held against the Laws of the Game."""

from turnout.evidence import value

LONGER = "touchline longer than goal line"


def pitch_faults(*, touchline_m: float, goal_line_m: float) -> tuple[str, ...]:
    """What a full adult pitch breaks of Law 1.3, in the law's order; () for a lawful one (evidence: ifab-law1).

    Youth pitches follow their association's table (`match_format`), not this.
    """
    faults = [
        f"{name} {low:g} to {high:g} m"
        for name, metres, (low, high) in (
            ("touchline", touchline_m, _bounds("pitch.touchline")),
            ("goal line", goal_line_m, _bounds("pitch.goalline")),
        )
        if not low <= metres <= high
    ]
    return (*faults, *([LONGER] if touchline_m <= goal_line_m else []))


def _bounds(key: str) -> tuple[float, float]:
    found = value(key)
    assert found.low is not None and found.high is not None  # both lines have both bounds in the law
    return found.low, found.high
