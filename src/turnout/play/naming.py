"""From names to numbers: sides, roles and places as the kernel counts them."""

from dataclasses import dataclass

from turnout.practice.setup import Setup
from turnout.practice.table import Row, Where, Who
from turnout.problems import TurnoutError


@dataclass(frozen=True)
class Names:
    """The numbering of one setup: two playing sides first, then those that play for others."""

    setup: Setup
    keys: tuple[str, ...]  # group keys by role number
    sides: tuple[str, ...]  # playing sides
    neutral: tuple[str, ...]

    @staticmethod
    def of(setup: Setup, rows: tuple[Row, ...]) -> "Names":
        """Number a setup; raises TurnoutError when there are not one or two playing sides."""
        neutral = tuple(dict.fromkeys(
            group.side
            for group in setup.practice.groups
            for row in rows
            if row.do == "plays for" and _covers(row.who, group.side, group.role or group.side)
        ))  # fmt: skip
        waiting = {group.side for group in setup.practice.groups if group.waits}
        sides = tuple(side for side in setup.practice.sides if side not in neutral and side not in waiting)
        if len(sides) not in (1, 2):
            raise TurnoutError(
                f"{setup.practice.name}: one or two sides can be played, here are {len(sides)}: {', '.join(sides)}."
            )
        return Names(setup, tuple(group.key for group in setup.practice.groups), sides, neutral)

    def side_index(self, side: str) -> int:
        """0 or 1 for playing sides, from 2 for neutrals."""
        return self.sides.index(side) if side in self.sides else 2 + self.neutral.index(side)

    def place(self, name: str) -> int:
        """Row of a place; raises KeyError."""
        return {place: row for row, (place, _) in enumerate(self.setup.places)}[name]

    def places(self, name: str) -> tuple[int, ...]:
        """Rows of a place, or of every member of a list of places."""
        place = self.setup.place(name)
        return tuple(self.place(member) for member in place.members) if place.members else (self.place(name),)

    def spots(self, where: Where) -> tuple[int, ...]:
        """Rows of what a phrase names: of a place or every member of a list, in it, on its edge, outside or behind."""
        return self.places(where.place)

    def bits(self, who: Who) -> int:
        """A bit for every role a 'who' names; 0 when it names none in particular."""
        if who.kind in ("role", "its role", "nearest", "farthest", "side"):
            return sum(
                1 << number
                for number, group in enumerate(self.setup.practice.groups)
                if _covers(who, group.side, group.role or group.side)
            )
        return (1 << len(self.keys)) - 1 if who.kind == "everyone" else 0


def _covers(who: Who, side: str, role: str) -> bool:
    if who.kind == "everyone":
        return True
    return who.side in (None, side) and who.role in (None, role) and (who.side is not None or who.role is not None)
