"""A practice at one turnout and one size: the common coin of fit, play and show."""

from dataclasses import dataclass

from turnout.practice.model import Place, Practice


@dataclass(frozen=True)
class Setup:
    """A practice (steps applied), the players of every group, and its places in metres around its own centre."""

    practice: Practice
    counts: tuple[tuple[str, int], ...]  # group key -> players, in the order of `people`
    places: tuple[tuple[str, Place], ...]  # name -> place, in the order of `ground`

    def count(self, key: str) -> int:
        return dict(self.counts)[key]

    def place(self, name: str) -> Place:
        return dict(self.places)[name]

    @property
    def players(self) -> int:
        return sum(count for _, count in self.counts)

    @property
    def field(self) -> Place:
        """The first place under `ground`: the ball is out when it leaves it."""
        return self.places[0][1]
