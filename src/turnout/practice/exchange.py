"""A practice with one of its names exchanged, as data: what a renamed file must say."""

from dataclasses import dataclass, replace
from typing import Literal

from turnout.practice.forms import BY_ID
from turnout.practice.model import Group, Home, Phrase, PlaceDef, Practice, Rule, Source, Step
from turnout.practice.names import plural, singular
from turnout.practice.people_words import named
from turnout.practice.templates import parts, slots

Kind = Literal["place", "side", "role"]
SLOT_KINDS: dict[str, Kind] = {"place_name": "place", "side": "side", "role": "role"}
NOWHERE = Source("", 0, None, "")


@dataclass(frozen=True)
class Exchange:
    """One name of a kind for another."""

    kind: Kind
    old: str
    new: str

    def of(self, kind: Kind, name: str) -> str:
        """A name of a kind, exchanged when it is the one meant."""
        return self.new if kind == self.kind and name == self.old else name

    def key(self, key: str) -> str:
        """A group's key with its side or role exchanged."""
        side, role, feeds = named(key)
        role = f"for {self.fed(feeds[0])}" if feeds else self.of("role", role)
        return f"{self.of('side', side)} {role}".strip()

    def fed(self, fed: str) -> str:
        """Whom a line waits for, exchanged: a role, a side or both, in the number they are written in."""
        if self.kind == "place":
            return fed
        fresh = {singular(self.old): singular(self.new), plural(self.old): plural(self.new), self.old: self.new}
        side, _, role = fed.partition(" ")
        if fed in fresh or not role:
            return fresh.get(fed, fed)
        return f"{self.of('side', side)} {fresh.get(role, role) if self.kind == 'role' else role}"

    def phrase(self, phrase: Phrase) -> Phrase:
        """A tree with the name exchanged."""
        return Phrase(phrase.form, tuple((slot, self.value(phrase.form, slot, value)) for slot, value in phrase.slots))

    def value(self, form: str, slot: str, value: Phrase | str | int) -> Phrase | str | int:
        """The value of one slot with the name exchanged."""
        if isinstance(value, Phrase):
            return self.phrase(value)
        return self.of(slot_kinds(form)[slot], value) if isinstance(value, str) else value


def slot_kinds(form: str) -> dict[str, Kind]:
    """Which slots of a form hold a name, and of which kind."""
    templates = [*BY_ID[form].templates, *BY_ID[form].also]
    found = [slot for _, template in templates for slot in slots(parts(template))]
    return {slot.name: SLOT_KINDS[slot.type] for slot in found if slot.type in SLOT_KINDS}


def told(practice: Practice, change: Exchange) -> Practice:
    """A practice with the name exchanged, without where its lines stand and how they are worded."""
    return replace(
        practice,
        ground=tuple(place_told(place, change) for place in practice.ground),
        groups=tuple(group_told(group, change) for group in practice.groups),
        rules=tuple(rule_told(rule, change) for rule in practice.rules),
        steps=tuple(step_told(step, change) for step in practice.steps),
        also_called=tuple((change.new if name == change.old else name, words) for name, words in practice.also_called),
        arrange=replace(
            practice.arrange, keep_square=tuple(change.of("place", name) for name in practice.arrange.keep_square)
        ),
    )


def place_told(place: PlaceDef, change: Exchange) -> PlaceDef:
    """A place with the name exchanged."""
    members = tuple(change.of("place", name) for name in place.members)
    of = None if place.of is None else change.of("place", place.of)
    return replace(place, name=change.of("place", place.name), of=of, members=members, source=None)


def group_told(group: Group, change: Exchange) -> Group:
    """A group with the name exchanged."""
    tie = replace(group.tie, group=change.key(group.tie.group)) if group.tie else None
    home, without = home_told(group.home, change), home_told(group.without, change) if group.without else None
    side, role, _ = named(change.key(group.key))
    feeds = tuple(change.key(key) for key in group.feeds)
    return replace(group, side=side, role=role, home=home, without=without, tie=tie, feeds=feeds, source=None)


def home_told(home: Home, change: Exchange) -> Home:
    """A home with the name exchanged."""
    return replace(home, place=change.of("place", home.place))


def rule_told(rule: Rule, change: Exchange) -> Rule:
    """A rule with the name exchanged."""
    return Rule(change.phrase(rule.phrase), "", NOWHERE)


def step_told(step: Step, change: Exchange) -> Step:
    """A step with the name exchanged."""
    ground = tuple(place_told(place, change) for place in step.ground)
    people = tuple(group_told(group, change) for group in step.people)
    add, remove, changed = (
        tuple(rule_told(rule, change) for rule in rules) for rules in (step.add, step.remove, step.change)
    )
    return replace(step, ground=ground, people=people, source=None, add=add, remove=remove, change=changed)
