"""The way a side attacks."""

import math
from collections.abc import Iterable

from turnout.practice.setup import Setup
from turnout.practice.table import Row


def attack_axis(setup: Setup, side: str, rows: Iterable[Row]) -> tuple[float, float] | None:
    """Unit vector towards the place a side attacks, or None when it attacks none."""
    field = setup.field
    for row in rows:
        if row.do == "attacks" and row.who.side == side and row.where is not None:
            place = setup.place(row.where.place)
            dx, dy = place.x_m - field.x_m, place.y_m - field.y_m
            length = math.hypot(dx, dy)
            return (dx / length, dy / length) if length > 0 else None
    return None
