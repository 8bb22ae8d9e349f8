"""Scanning in the coin it is paid in: how much quicker a side would have to think to gain as much as by looking more.

Three variants under the same seeds: the first side looks round as beginners do, as strong players do, and as
beginners do while it thinks quicker; what looking gains is read off what quicker thinking gains (a straight line).
"""

from dataclasses import dataclass
from typing import Literal

from turnout.play.abilities import abilities
from turnout.play.kernel import columns as c
from turnout.study.pays import ROW, RUNS, Outcome, Variant, counts, jackknife, left_out

QUICKER = 0.7  # thinking time of the third variant, share of the plain one
LOOKS = tuple(abilities(12, level)[c.SCAN] / abilities(12)[c.SCAN] for level in ("new", "strong"))
RARELY, OFTEN = (Variant(first_scaled=((c.SCAN, factor),)) for factor in LOOKS)
SOONER = Variant(first_scaled=((c.SCAN, LOOKS[0]), (c.THINK_S, QUICKER)))


@dataclass(frozen=True)
class Bought:
    """Seconds of thinking at every reception that looking up buys, with the 90 % interval."""

    game: str
    rarely: float
    often: float
    sooner: float
    bought_s: float
    low: float
    high: float

    @property
    def verdict(self) -> Literal["clear", "flat", "reversed"]:
        """Whether looking buys any thinking time, the interval clear of zero."""
        return "clear" if self.low > 0 else "reversed" if self.high < 0 else "flat"

    def why(self) -> str:
        """The answer in words."""
        return (
            f"{self.game}: {self.rarely:.2f} passes in a row looking rarely, {self.often:.2f} often, "
            f"{self.sooner:.2f} rarely but thinking quicker: worth {self.bought_s:.2f} s "
            f"({self.low:.2f} to {self.high:.2f})"
        )


def bought(game: str, *, outcome: Outcome = ROW, runs: int = RUNS, threads: int = 2) -> Bought:
    """What the first side's looks round are worth in thinking time."""
    found = [counts(game, each, outcome, runs=runs, threads=threads) for each in (RARELY, OFTEN, SOONER)]
    rarely, often, sooner = (float(outcome.figure(each.sum(0))) for each in found)
    saved_s = abilities(12)[c.THINK_S] * (1 - QUICKER)
    without = [outcome.figure(left_out(each)) for each in found]
    half = jackknife(saved_s * (without[1] - without[0]) / (without[2] - without[0]))
    worth = saved_s * (often - rarely) / (sooner - rarely)
    return Bought(game, rarely, often, sooner, worth, worth - half, worth + half)
