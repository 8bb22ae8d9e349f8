"""From sums of blocks to forecast figures. Each figure is a ratio of two sums: exact over all, and per block."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np

from turnout.play.kernel import columns as c
from turnout.play.simulate import Sums
from turnout.study.model import Band, Figure

Z90 = 1.6448536269514722
CAUSES = ("cut_out", "tackled", "out", "deflected_out", "miscontrolled", "limit_broken", "scored")


@dataclass(frozen=True)
class Recipe:
    """How a figure is made of a block's sums: numerator over denominator, unit, per whom."""

    top: Callable[[Sums, "Scale"], float]
    under: Callable[[Sums, "Scale"], float]
    unit: str
    per: Literal["player", "side", "practice"]


@dataclass(frozen=True)
class Scale:
    """What figures are divided by: players, waiting players, sides, the sides success is about."""

    players: int
    waiting: int
    sides: int
    scoring: tuple[int, ...]


def minutes(sums: Sums, _: Scale) -> float:
    return float(sums.Q[c.Q_TIME]) / 60


def player_minutes(sums: Sums, _: Scale) -> float:
    return float(sums.S[:, c.S_TIME].sum()) / 60


def side_minutes(sums: Sums, scale: Scale) -> float:
    return scale.sides * float(sums.Q[c.Q_TIME]) / 60


def played(column: int) -> Callable[[Sums, Scale], float]:
    """A column added over players."""
    return lambda sums, _: float(sums.S[:, column].sum())


def by_sides(column: int) -> Callable[[Sums, Scale], float]:
    """A column added over sides."""
    return lambda sums, _: float(sums.V[:, column].sum())


def scoring(column: int) -> Callable[[Sums, Scale], float]:
    """A column added over the sides of the first scoring sentence."""
    return lambda sums, scale: float(sums.V[list(scale.scoring), column].sum())


def actions(sums: Sums, _: Scale) -> float:
    """Passes, tackles that won the ball, balls cut out."""
    columns = [c.S_PASSES, c.S_TACKLES, c.S_CUT_OUT]
    return float(sums.S[:, columns].sum())


def whole_time(sums: Sums, _: Scale) -> float:
    return float(sums.Q[c.Q_TIME])


RECIPES: dict[str, Recipe] = {
    "passes_in_a_row": Recipe(scoring(c.V_RUN_SUM), scoring(c.V_SPELLS), "passes", "side"),
    "success": Recipe(scoring(c.V_SUCCESS), scoring(c.V_POSSESSIONS), "share", "side"),
    "passes_per_min": Recipe(played(c.S_PASSES), minutes, "per min", "practice"),
    "pass_success": Recipe(played(c.S_COMPLETED), played(c.S_PASSES), "share", "practice"),
    "possession_s": Recipe(scoring(c.V_POSSESSION_S), scoring(c.V_POSSESSIONS), "s", "side"),
    "regains_per_side_min": Recipe(by_sides(c.V_REGAINS), side_minutes, "per min", "side"),
    "losses_per_min": Recipe(lambda s, _: float(s.E[:, :6].sum()), minutes, "per min", "practice"),
    "touches_per_player_min": Recipe(played(c.S_TOUCHES), player_minutes, "per min", "player"),
    "receptions_per_player_min": Recipe(played(c.S_RECEIVED), player_minutes, "per min", "player"),
    "actions_per_player_min": Recipe(actions, player_minutes, "per min", "player"),
    "distance_m_per_player_min": Recipe(played(c.S_DISTANCE), player_minutes, "m per min", "player"),
    "fast_share": Recipe(played(c.S_FAST), played(c.S_DISTANCE), "share", "player"),
    "still_share": Recipe(played(c.S_STILL), played(c.S_OFF_BALL), "share", "player"),
    "rolling_share": Recipe(lambda s, _: float(s.Q[c.Q_ROLLING]), whole_time, "share", "practice"),
    "waiting_share": Recipe(
        lambda s, scale: float(s.Q[c.Q_TIME]) * scale.waiting,
        lambda s, scale: float(s.Q[c.Q_TIME]) * (scale.players + scale.waiting),
        "share",
        "player",
    ),
    "scores_per_side_min": Recipe(by_sides(c.V_SCORES), side_minutes, "per min", "side"),
    "points_per_side_min": Recipe(by_sides(c.V_POINTS), side_minutes, "per min", "side"),
    "first_pass_lost": Recipe(by_sides(c.V_FIRST_LOST), by_sides(c.V_FIRST), "share", "practice"),
    "free_first_pass_lost": Recipe(by_sides(c.V_FREE_LOST), by_sides(c.V_FREE), "share", "practice"),
}


def figures(blocks: Sequence[Sums], scale: Scale) -> dict[str, Figure]:
    """Every figure with its 90 % interval over blocks and the band of one block."""
    return {name: _figure(recipe, blocks, scale) for name, recipe in RECIPES.items()}


def _figure(recipe: Recipe, blocks: Sequence[Sums], scale: Scale) -> Figure:
    top = np.array([recipe.top(block, scale) for block in blocks])
    under = np.array([recipe.under(block, scale) for block in blocks])
    value, half = ratio(top, under)
    each = top[under > 0] / under[under > 0]
    band = np.percentile(each, (5, 25, 50, 75, 95)) if len(each) else np.zeros(5)
    return Figure(value, value - half, value + half, recipe.unit, recipe.per, Band(*(float(p) for p in band)))


def ratio(top: np.ndarray, under: np.ndarray) -> tuple[float, float]:
    """A ratio of sums over independent blocks and the half width of its 90 % interval (linearised, Student's t).

    top, under: (blocks,). Both 0 when nothing was counted. Source: ratio estimator, Cochran, Sampling Techniques,
    chapter 6 (memory).
    """
    total = float(under.sum())
    if total <= 0:
        return 0.0, 0.0
    value = float(top.sum()) / total
    number = len(top)
    if number < 2:
        return value, float("inf")
    rest = top - value * under
    error = float(np.sqrt((rest**2).sum() / (number - 1) * number)) / total
    return value, student90(number - 1) * error


def student90(freedom: int) -> float:
    """Factor of a two-sided 90 % interval for so many degrees of freedom (Cornish-Fisher; within 0.3 % from 3 on)."""
    g = 1.0 / freedom
    return Z90 * (1 + 0.926386 * g + 0.863422 * g**2 + 0.597622 * g**3)


def ends(blocks: Sequence[Sums]) -> tuple[tuple[str, int], ...]:
    """How spells ended, by cause, both sides together."""
    total = sum(block.E for block in blocks)
    return tuple((cause, int(np.sum(total[:, number]))) for number, cause in enumerate(CAUSES))  # type: ignore[index]


def by_role(blocks: Sequence[Sums], keys: Sequence[str]) -> tuple[tuple[str, tuple[tuple[str, float], ...]], ...]:
    """Touches, passes, receptions and metres per player and minute in each role."""
    total = np.sum([block.U for block in blocks], axis=0)
    columns = (
        ("touches_per_min", c.U_TOUCHES), ("passes_per_min", c.U_PASSES), ("receptions_per_min", c.U_RECEIVED),
        ("distance_m_per_min", c.U_DISTANCE),
    )  # fmt: skip
    return tuple(
        (
            key,
            tuple(
                (name, float(total[role, column] / max(total[role, c.U_TIME], 1e-9) * 60)) for name, column in columns
            ),
        )
        for role, key in enumerate(keys)
    )
