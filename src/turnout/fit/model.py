"""The answer of a fit: who, where and how long, and what gave way. Lengths in metres, ground coordinates."""

from dataclasses import dataclass

from turnout.club.tonight import Tonight
from turnout.practice.setup import Setup
from turnout.session.model import Session


@dataclass(frozen=True)
class Copy:
    """One of the same practice side by side: its setup, and where its centre lies in the space."""

    setup: Setup
    x_m: float
    y_m: float
    turned: bool = False  # True: the practice's east points north in the space
    waiting: int = 0
    bibs: tuple[tuple[str, str], ...] = ()  # side -> colour in this copy; the copies differ only when stock is short


@dataclass(frozen=True)
class FittedPart:
    """One part of the hour, fitted. Blocks and rests in minutes add up to `minutes`."""

    index: int
    start_min: float
    minutes: float  # playing blocks and the rests between them
    blocks: tuple[float, ...]
    rest_min: float  # between two blocks
    changeover_min: float  # after this part, before the next; 0 for the last
    copies: tuple[Copy, ...]
    bibs: tuple[tuple[str, str], ...]  # side -> colour ('own' for own shirts), as in the first copy
    price: float
    gave_way: tuple[str, ...] = ()
    bib_changes: int = 0  # fewest players who put on, take off or change a bib before this part


@dataclass(frozen=True)
class Fitted:
    """A fitted session, or the reason why not and the smallest change that would do."""

    fits: bool
    session: Session
    tonight: Tonight
    parts: tuple[FittedPart, ...] = ()
    left_out: tuple[str, ...] = ()
    reasons: tuple[str, ...] = ()
    smallest_change: str | None = None
    changes: tuple[
        tuple[str, float], ...
    ] = ()  # the same as data: ('players', 1), ('yards up', 3), ('minutes', 9), ...
    price: float = 0.0  # of the whole: parts, minutes, bibs and what was left out

    def why(self) -> tuple[str, ...]:
        """What was chosen and what gave way, in sentences a coach reads."""
        return self.reasons
