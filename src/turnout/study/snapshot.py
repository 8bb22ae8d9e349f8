"""A snapshot of a forecast: bands that later play is held to, so that a change of play is seen. It is no evidence.

One file beside a practice, `expected.yaml`. The practice is played as designed, by settled players of its middle age
group; each band is the mean and six of its standard errors to either side, a tenth of the mean at the least (both own
choice): wide enough for another sample of the same play, too narrow for play that is another.
"""

import re
from dataclasses import dataclass
from pathlib import Path

from turnout.practice.model import Practice
from turnout.practice.setup import Setup
from turnout.study.figures import Z90
from turnout.study.forecast import forecast
from turnout.study.model import Figure, Forecast

FILE = "expected.yaml"
LEVEL, SEED = "settled", 7
BLOCK_S, BLOCKS = 90.0, 48
ERRORS, SHARE = 6.0, 0.1  # to either side of the mean: standard errors, and of the mean at the least
LEAST = 0.02  # of any figure, in its own unit
FIGURES = (
    "passes_in_a_row", "success", "pass_success", "passes_per_min", "regains_per_side_min", "touches_per_player_min",
    "distance_m_per_player_min", "rolling_share", "scores_per_side_min",
)  # fmt: skip
TEXT = """\
# A snapshot against change, no evidence: how simulated players played this practice as designed when this was written.
# Written by tools/shelf-snapshots; a test plays it again and holds every figure to its band.
expected: {name}
players: {players}
age: U{age}
level: {level}
seed: {seed}
blocks: {blocks} of {block_s:g} s
bands:
{bands}
"""
BAND = re.compile(r"^  ([a-z_]+): (-?[\d.]+) to (-?[\d.]+)", re.MULTILINE)


@dataclass(frozen=True)
class Moved:
    """A figure that has left its band: the band and what it is now."""

    figure: str
    low: float
    high: float
    now: float

    def __str__(self) -> str:
        return f"{self.figure} is {self.now:.3g}, and was {self.low:.3g} to {self.high:.3g}"


def file_of(practice_file: Path) -> Path:
    """Where the snapshot of a practice stands."""
    return practice_file.with_name(FILE)


def played(setup: Setup) -> Forecast:
    """The forecast a snapshot is made of."""
    return forecast(
        setup, age=middle_age(setup.practice), level=LEVEL, seed=SEED, seconds=BLOCK_S * BLOCKS, block_s=BLOCK_S
    )


def middle_age(practice: Practice) -> int:
    """The middle of the age groups a practice is for."""
    return sum(practice.ages) // 2


def band(figure: Figure) -> tuple[float, float]:
    """From and to, in the figure's unit."""
    error = (figure.high - figure.low) / 2 / Z90
    reach = max(ERRORS * error, SHARE * abs(figure.value), LEAST)
    return max(0.0, figure.value - reach), figure.value + reach


def snapshot(setup: Setup) -> str:
    """The snapshot of a practice as the text of its file."""
    made = played(setup)
    lines = []
    for name in FIGURES:
        low, high = band(made.figure(name))
        lines.append(f"  {name}: {low:.4f} to {high:.4f}  # {made.figure(name).value:.4f} {made.figure(name).unit}")
    return TEXT.format(
        name=setup.practice.name, players=setup.players, age=middle_age(setup.practice), level=LEVEL, seed=SEED,
        blocks=made.blocks, block_s=BLOCK_S, bands="\n".join(lines),
    )  # fmt: skip


def bands_in(text: str) -> dict[str, tuple[float, float]]:
    """The bands of a snapshot, by figure."""
    return {name: (float(low), float(high)) for name, low, high in BAND.findall(text)}


def moved(text: str, setup: Setup) -> list[Moved]:
    """The figures of a setup, played now, that lie outside the bands of a snapshot."""
    made, kept = played(setup), bands_in(text)
    now = {name: made.figure(name).value for name in kept}
    return [Moved(name, low, high, now[name]) for name, (low, high) in kept.items() if not low <= now[name] <= high]
