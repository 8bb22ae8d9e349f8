"""Small practices for tests of what single sentences do in play, and what is read off their logs."""

from pathlib import Path

import numpy as np

from turnout.play.kernel import columns as c
from turnout.play.simulate import Sums, simulate
from turnout.practice.ground import setup_of
from turnout.practice.read import read_practice
from turnout.practice.setup import Setup

SQUARE = """practice: Toy square
ground:
  square: rectangle 18 x 18 yd
  middle: square 6 yd at the centre of square
  north end: strip 5 yd inside the north end of square
  south end: strip 5 yd inside the south end of square
people:
  amber: 5 (2-6) in square
  blue: 3 (1-4) in square
rules:
"""
PITCH = """practice: Toy pitch
ground:
  pitch: rectangle 30 x 40 yd
  north goal: goal 12 x 6 ft at the north end of pitch
  south goal: goal 12 x 6 ft at the south end of pitch
  north zone: strip 10 yd inside the north end of pitch
  south zone: strip 10 yd inside the south end of pitch
  centre zone: rectangle 30 x 8 yd at the centre of pitch
people:
  amber: 5 (2-6) in pitch
  blue: 4 (1-6) in pitch
rules:
  - Amber attack the north goal and defend the south goal.
  - Blue attack the south goal and defend the north goal.
"""


def toy(folder: Path, rules: list[str], base: str = SQUARE) -> Setup:
    """One of the toys with these sentences."""
    file = folder / f"toy{len(list(folder.iterdir()))}.yaml"
    file.write_text(base + "".join(f"  - {rule}\n" for rule in rules), encoding="utf-8")
    return setup_of(read_practice(file))


def played(setup: Setup, seed: int = 1, seconds: float = 900) -> Sums:
    """One run with its log."""
    return simulate(setup, age=12, level="settled", seed=seed, seconds=seconds, log=True)


def of_kind(sums: Sums, *kinds: int) -> np.ndarray:
    """The events of these kinds, in order."""
    return sums.log[np.isin(sums.log[:, c.LOG_KIND], kinds)]


def scored_by(sums: Sums, sentence: int) -> int:
    """How often a sentence made points."""
    scores = of_kind(sums, c.LOG_SCORE)
    return int((scores[:, c.LOG_OTHER] == sentence).sum())


def clear_of_zero(with_it: list[float], without: list[float]) -> tuple[float, float]:
    """95 % interval of the mean paired difference, with less without."""
    gap = np.array(with_it, dtype=float) - np.array(without, dtype=float)
    spread = 2.4 * gap.std(ddof=1) / np.sqrt(len(gap))  # t of 7 and more degrees of freedom
    return float(gap.mean() - spread), float(gap.mean() + spread)
