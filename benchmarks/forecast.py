"""How long a coach waits for a forecast, warm: seconds of the clock for an hour of simulated play."""

import time
from typing import Any

from benchmarks.kernel import best, shipped, yardstick
from turnout.study.forecast import forecast

PRACTICES = ("gull-square", "harbour-square", "breakwater")


def run() -> dict[str, Any]:
    """An hour of play per practice, the first answer of ten minutes, and the rate."""
    figures: dict[str, Any] = {}
    for key in PRACTICES:
        setup = shipped(key)
        name = key.replace("-", "_")
        hour = best(lambda s=setup: forecast(s, age=12, level="settled", seconds=3600), time.perf_counter)  # type: ignore[misc]
        first = best(lambda s=setup: forecast(s, age=12, level="settled", seconds=600), time.perf_counter)  # type: ignore[misc]
        figures[f"{name}_hour_s"] = round(hour, 3)
        figures[f"{name}_first_answer_s"] = round(first, 3)
        figures[f"{name}_sim_min_per_s"] = round(60 / hour)
    return {"figures": figures, "yardstick": {"numpy_movement_step_sim_s_per_cpu_s_10_players": yardstick()}}
