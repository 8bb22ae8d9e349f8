"""The answer of a layout. Ground coordinates in metres: x east, y north of the space's south-west corner."""

from dataclasses import dataclass
from typing import Literal


@dataclass(frozen=True)
class Item:
    """One thing on the ground."""

    kind: Literal["corner cone", "line cone", "zone cone", "ball heap", "bib heap", "coach"]
    x_m: float
    y_m: float
    colour: str
    part: int


@dataclass(frozen=True)
class PartLayout:
    """What stands during a part, and the change-over into it."""

    part: int
    items: tuple[Item, ...]
    lay: int
    lift: int
    stay: int
    sentence: str  # 'Lay 12 white cones; 4 stay.'


@dataclass(frozen=True)
class Layout:
    """The whole evening's layout and the kit it needs."""

    parts: tuple[PartLayout, ...]
    kit: tuple[tuple[str, int], ...]  # 'white cones' -> most laid at once
    short: tuple[str, ...] = ()  # what the bag lacks, in words
