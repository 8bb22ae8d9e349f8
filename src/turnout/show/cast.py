"""Who is who in a recording, and one sentence of its telling."""

from collections.abc import Sequence
from dataclasses import dataclass

from turnout.play.recording import Recording
from turnout.practice.model import Group
from turnout.practice.setup import Setup
from turnout.practice.units import ball_holders
from turnout.show.drawing import Point
from turnout.show.ink import Side, is_neutral


@dataclass(frozen=True)
class Caption:
    """One sentence of the telling: from when it holds, and the line of the ball it speaks of (metres), if any."""

    t_s: float
    text: str
    line: tuple[Point, Point] | None = None
    line_to_s: float = 0.0
    kind: str = ""


@dataclass(frozen=True)
class Cast:
    """Who is who in a recording: each player's letter and number at any moment."""

    recording: Recording
    setup: Setup
    sides: tuple[Side, ...]

    @property
    def groups(self) -> tuple[Group, ...]:
        return tuple(self.setup.practice.group(key) for key in self.recording.roles)

    def side_of(self, role: int) -> Side:
        """The side a role belongs to."""
        group = self.groups[role]
        return next(side for side in self.sides if side.side == group.side)

    def role(self, player: int, t_s: float, *, after: bool = False) -> int:
        """A player's role in the frame at a moment: the last one before it, or the first after it."""
        times = self.recording.t_s
        frame = int((times < t_s + 1e-6).sum()) - 1 + (1 if after else 0)
        return int(self.recording.role[min(len(times) - 1, max(0, frame)), player])

    def label(self, player: int, t_s: float) -> str:
        """'A3' as the drawing shows it at that moment."""
        return f"{self.side_of(self.role(player, t_s)).letter}{self.numbers[player]}"

    @property
    def numbers(self) -> tuple[int, ...]:
        """Each player's number: as on the card, or through everybody when players change sides."""
        first = [key for key, count in self.setup.counts for _ in range(count)]
        sides = [self.setup.practice.group(key).side for key in first]
        if self.changes_sides(sides):
            return tuple(range(1, len(sides) + 1))
        return tuple(sides[: i + 1].count(side) for i, side in enumerate(sides))

    def changes_sides(self, sides: Sequence[str]) -> bool:
        """Whether anybody is ever seen on another side than the one they began on."""
        names = [group.side for group in self.groups]
        return any(
            names[role] != side for i, side in enumerate(sides) for role in set(self.recording.role[:, i].tolist())
        )

    def named(self, player: int, t_s: float) -> str:
        """'A3', or 'keeper A5' for who is in goal."""
        keeper = self.groups[self.role(player, t_s)].keeper
        return f"{'keeper ' if keeper else ''}{self.label(player, t_s)}"

    @property
    def teams(self) -> tuple[tuple[int, ...], ...]:
        """The players of each ball where many are in play; empty with one ball for everybody."""
        return ball_holders(self.setup)

    def playing_side(self, number: int) -> str:
        """The name of a side as the log numbers them: sides first, neutrals after."""
        playing = [side for side in self.sides if not is_neutral(side.side)]
        return (*playing, *(side for side in self.sides if is_neutral(side.side)))[number].name
