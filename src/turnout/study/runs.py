"""Runs of passes in closed form, for passes that succeed independently: the ruler beside the simulated runs."""


def expected_run(*, pass_success: float) -> float:
    """Mean passes in a row before one fails, p / (1 - p), when each succeeds with chance `pass_success` (0 <= p < 1).

    Raises ValueError outside that range: a side that never loses the ball has no mean run.
    """
    _check(pass_success)
    return pass_success / (1 - pass_success)


def run_chance(*, pass_success: float, passes: int) -> float:
    """Chance of at least `passes` in a row, p to the power of them, 0 to 1; ValueError as above."""
    _check(pass_success)
    return pass_success**passes


def success_for_run(*, run: float) -> float:
    """The pass success at which the mean run is `run` passes: the inverse, r / (1 + r)."""
    return run / (1 + run)


def _check(pass_success: float) -> None:
    if not 0 <= pass_success < 1:
        raise ValueError(f"a chance of a pass to succeed is from 0 to below 1, not {pass_success}")
