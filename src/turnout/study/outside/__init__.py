"""Simulated play held against figures that others have published.

`answers(ids, W=weights, seeds=range(8))` plays what the rows ask for and says inside, outside, clear, flat, reversed.
"""

from turnout.study.outside.asking import SEEDS, answers, output_checks
from turnout.study.outside.verdict import Answer, Figure

__all__ = ["SEEDS", "Answer", "Figure", "answers", "output_checks"]
