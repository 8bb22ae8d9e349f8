"""From names to numbers: sides, roles and places as the kernel counts them."""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from turnout.practice.clash_parts import acts, events
from turnout.practice.model import Group
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
    beside: tuple[tuple[str, str], ...] = ()  # places told by their edge, outside or behind, after all others

    @staticmethod
    def of(setup: Setup, rows: tuple[Row, ...]) -> "Names":
        """Number a setup; raises TurnoutError when there are not one or two playing sides."""
        members = {side: [g for g in setup.practice.groups if g.side == side] for side in setup.practice.sides}
        neutral = tuple(side for side, own in members.items() if own and all(plays_for(rows, group) for group in own))
        waiting = {group.side for group in setup.practice.groups if group.waits}
        sides = tuple(side for side in setup.practice.sides if side not in neutral and side not in waiting)
        if len(sides) not in (1, 2):
            raise TurnoutError(
                f"{setup.practice.name}: one or two sides can be played, here are {len(sides)}: {', '.join(sides)}."
            )
        names = Names(setup, tuple(group.key for group in setup.practice.groups), sides, neutral)
        return replace(names, beside=tuple(dict.fromkeys(_beside(names, rows))))

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
        if where.how == "in":
            return self.places(where.place)
        first = len(self.setup.places) + sum(group.keeper for group in self.setup.practice.groups)
        return tuple(first + self.beside.index((name, where.how)) for name in self.members(where.place))

    def limited(self, where: Where) -> tuple[int, ...]:
        """Rows of where a limit holds; its edge and its outside are told by the limit itself."""
        return self.spots(where) if where.how == "behind" else self.places(where.place)

    def members(self, name: str) -> tuple[str, ...]:
        """The place itself, or every member of a list of places."""
        return self.setup.place(name).members or (name,)

    def bits(self, who: Who) -> int:
        """A bit for every role a 'who' names; 0 when it names none in particular."""
        if who.kind in ("role", "its role", "other role", "some", "nearest", "farthest", "side"):
            return sum(
                1 << number
                for number, group in enumerate(self.setup.practice.groups)
                if _covers(who, group.side, group.role or group.side)
            )
        return (1 << len(self.keys)) - 1 if who.kind == "everyone" else 0


def plays_for(rows: tuple[Row, ...], group: Group) -> Row | None:
    """The sentence that says whom a group plays for, if there is one."""
    covers = (row for row in rows if row.do == "plays for" and _covers(row.who, group.side, group.role or group.side))
    return next(covers, None)


def _beside(names: "Names", rows: tuple[Row, ...]) -> Iterator[tuple[str, str]]:
    """Every edge, outside and behind that something is done at or starts from."""
    for row in rows:
        told = [act.where for act in acts(row)] + [act.further for act in acts(row)]
        told += [event.where for event in events(row)]
        told += [part.where for part in (row.how, row.passes, row.while_) if part is not None]
        told += [row.where] if row.where is not None and row.where.how == "behind" else []
        for where in told:
            if where is not None and where.how != "in":
                yield from ((name, where.how) for name in names.members(where.place))


def _covers(who: Who, side: str, role: str) -> bool:
    if who.kind == "everyone":
        return True
    return who.side in (None, side) and who.role in (None, role) and (who.side is not None or who.role is not None)
