"""The shipped practices as designed, read once."""

from functools import cache

from turnout.practice.ground import setup_of
from turnout.practice.read import read_practice
from turnout.practice.setup import Setup
from turnout.practice.shelf import practice_files

KEYS = ("gull-square", "harbour-square", "breakwater", "lock-gates", "four-coves", "open-water")


@cache
def shipped(key: str) -> Setup:
    """A shipped practice at its designed numbers and size."""
    return setup_of(read_practice(practice_files()[key]))
