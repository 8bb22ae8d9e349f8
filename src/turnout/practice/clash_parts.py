"""What the checks on a whole practice look things up with: who a sentence means, where, and how to say what it says."""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property
from typing import Literal

from turnout.practice.model import Group, Phrase, Place, PlaceDef, Practice, Source
from turnout.practice.placing import placed
from turnout.practice.relative import every_place
from turnout.practice.table import Act, Event, Row, Where, Who

Finding = tuple[Source, str, Literal["error", "warning"]]
Findings = Iterator[Finding]


@dataclass(frozen=True)
class Case:
    """A practice and its table, looked at as a whole."""

    practice: Practice
    rows: tuple[Row, ...]

    @cached_property
    def ground(self) -> dict[str, PlaceDef]:
        """Every place by name, those told from a side too."""
        return {place.name: place for place in every_place(self.practice)}

    @cached_property
    def places(self) -> dict[str, Place]:
        """Every place at its written size."""
        return dict(placed(tuple(self.ground.values())))

    @cached_property
    def groups(self) -> dict[str, Group]:
        """Groups by key."""
        return {group.key: group for group in self.practice.groups}

    def doing(self, *names: str) -> list[Row]:
        """The rows that do one of these."""
        return [row for row in self.rows if row.do in names]

    def meant(self, who: Who | None) -> set[str]:
        """The groups a selector can mean."""
        if who is None:
            return set()
        roles = who.kind in ("role", "its role", "other role", "nearest", "farthest", "some")
        return {
            group.key
            for group in self.practice.groups
            if (not roles or who.role == group.role or (not group.role and who.role == group.side))
            and (who.side is None or who.side == group.side)
        }

    def singles(self, name: str) -> list[str]:
        """The place itself, or every place of a list."""
        return [one for member in self.ground[name].members for one in self.singles(member)] or [name]

    def kinds(self, name: str) -> set[str]:
        """The kinds of a place, or of the places of a list."""
        return {self.ground[one].kind for one in self.singles(name)}

    def apart(self, one: str, two: str) -> bool:
        """Whether no point is in both places."""
        return all(boxes_apart(self.places[a], self.places[b]) for a in self.singles(one) for b in self.singles(two))

    def within(self, one: str, two: str) -> bool:
        """Whether a place lies wholly inside another (of a list: inside one of them)."""
        return one == two or any(box_within(self.places[one], self.places[name]) for name in self.singles(two))


EPS_M = 0.01


def boxes_apart(a: Place, b: Place) -> bool:
    """Whether the boxes round two places have no area in common."""
    wide, high = (a.across_m + b.across_m) / 2 - EPS_M, (a.up_m + b.up_m) / 2 - EPS_M
    return abs(a.x_m - b.x_m) >= wide or abs(a.y_m - b.y_m) >= high


def box_within(a: Place, b: Place) -> bool:
    """Whether the box round one place lies inside a rectangle."""
    wide, high = (b.across_m - a.across_m) / 2 + EPS_M, (b.up_m - a.up_m) / 2 + EPS_M
    return b.kind == "rectangle" and abs(a.x_m - b.x_m) <= wide and abs(a.y_m - b.y_m) <= high


def said(row: Row) -> str:
    """Where a sentence stands and what it says: the other half of a contradiction."""
    return f"line {row.source.line} says “{row.source.text}”"


def source_of(practice: Practice, item: PlaceDef | Group) -> Source:
    """Where a line of ground or people stands."""
    name = item.key if isinstance(item, Group) else item.name
    return item.source or Source(practice.key, 0, None, name)


def always(row: Row) -> bool:
    """Whether a row holds all the time."""
    return row.while_ is None and row.until is None and row.when is None and row.every_s is None


def events(row: Row) -> list[Event]:
    """What a row waits for."""
    return [event for event in (row.when, row.until, row.event) if event is not None]


def acts(row: Row) -> list[Act]:
    """Every act a row speaks of."""
    found = [row.act, row.after, row.how.after if row.how else None, *(event.act for event in events(row))]
    return [act for act in found if act is not None]


def whos(row: Row) -> list[Who]:
    """Everybody a row speaks of."""
    found = [row.who, row.target, *(event.who for event in events(row))]
    found += [who for act in acts(row) for who in (act.between, act.to)]
    found += [row.passes.first, row.passes.second] if row.passes else []
    found += [part.who for part in (row.while_, row.how) if part]
    return [who for who in found if who is not None]


def wheres(row: Row) -> list[Where]:
    """Every place a row speaks of."""
    found = [row.where, row.also, *(where for act in acts(row) for where in (act.where, act.further))]
    found += [part.where for part in (*events(row), row.while_, row.how, row.passes) if part]
    return [where for where in found if where is not None]


def places_named(phrase: Phrase) -> set[str]:
    """Every place a tree names."""
    found: set[str] = set()
    for slot, value in phrase.slots:
        if isinstance(value, Phrase):
            found |= places_named(value)
        elif slot == "place":
            found.add(str(value))
    return found
