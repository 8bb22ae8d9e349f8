"""A practice of the shelf with its table and its places, and questions about what it says."""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache, cached_property

from turnout.practice.clash_parts import Case
from turnout.practice.ground import setup_of
from turnout.practice.meaning import table
from turnout.practice.model import Group, Practice
from turnout.practice.read import read_practice
from turnout.practice.setup import Setup
from turnout.practice.shelf import practice_files
from turnout.practice.table import Act, Row

ALL = tuple(sorted(practice_files()))


@dataclass(frozen=True)
class Shown:
    """One practice of the shelf."""

    practice: Practice
    rows: tuple[Row, ...]

    @cached_property
    def setup(self) -> Setup:
        return setup_of(self.practice)

    @cached_property
    def case(self) -> Case:
        return Case(self.practice, self.rows)

    def doing(self, do: str, **columns: object) -> list[Row]:
        """Rows that do something, with these columns."""
        return [row for row in self.rows if row.do == do and all(getattr(row, c) == v for c, v in columns.items())]

    def on(self, act: str, do: str) -> list[Row]:
        """Rows that do something when somebody does an act."""
        return [row for row in self.doing(do) if row.when and row.when.act and row.when.act.kind == act]

    def scored(self) -> Iterator[tuple[Row, Act]]:
        """Every act that scores, with its row."""
        for row in self.doing("score"):
            if row.when and row.when.act:
                yield row, row.when.act

    def scoring(self, kind: str) -> list[Act]:
        """The acts of a kind that score."""
        return [act for _, act in self.scored() if act.kind == kind]

    def meant(self, row: Row) -> list[Group]:
        """The groups a row is about."""
        return [group for group in self.practice.groups if group.key in self.case.meant(row.who)]

    def helpers(self, do: str = "side with the ball") -> list[Group]:
        """The groups that play for whoever has the ball (or for whom `do` says)."""
        return [g for row in self.doing("plays for") if row.target and row.target.kind == do for g in self.meant(row)]

    def limited(self, groups: list[Group]) -> bool:
        """Whether every one of these groups has a touch limit."""
        held = {group.key for row in self.doing("touches") for group in self.meant(row)}
        return bool(groups) and {group.key for group in groups} <= held

    def rotated(self, groups: list[Group]) -> bool:
        """Whether these groups change by the clock, every few minutes."""
        rows = [row for row in self.doing("rotate") if row.every_s and 60 <= row.every_s <= 300]
        return bool(groups) and any({g.key for g in groups} <= self.case.meant(row.target) for row in rows)

    def kinds(self, name: str) -> set[str]:
        """The kinds of a place, or of the places of a list."""
        return set(self.case.kinds(name))

    def singles(self, name: str) -> list[str]:
        """The place itself, or every place of a list."""
        return self.case.singles(name)


@cache
def shown(key: str) -> Shown:
    """A practice of the shelf by its key."""
    practice = read_practice(practice_files()[key])
    return Shown(practice, table(practice))
