"""The answers of a forecast."""

from dataclasses import dataclass
from typing import Literal


@dataclass(frozen=True)
class Band:
    """Percentiles of one block: what a coach will see in a single turn."""

    p5: float
    p25: float
    p50: float
    p75: float
    p95: float


@dataclass(frozen=True)
class Figure:
    """One forecast figure: mean with its 90 % interval, and the band of one block."""

    value: float
    low: float
    high: float
    unit: str
    per: Literal["player", "side", "practice"]
    one_block: Band


@dataclass(frozen=True)
class Forecast:
    """How a practice will play. `ends` counts how possession spells ended, by cause; they sum to all."""

    practice: str
    simulated_s: float
    seed: int
    blocks: int
    block_s: float
    figures: tuple[tuple[str, Figure], ...]
    by_role: tuple[tuple[str, tuple[tuple[str, float], ...]], ...]
    ends: tuple[tuple[str, int], ...]
    settled: bool  # the stop rule was met within the budget
    model: str  # stamp of the simulator's sources

    def figure(self, name: str) -> Figure:
        return dict(self.figures)[name]
