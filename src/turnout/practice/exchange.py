"""A practice with one of its names exchanged, as data: what a renamed file must say."""

from dataclasses import dataclass, replace
from typing import Literal

from turnout.practice.forms import BY_ID
from turnout.practice.model import Group, Phrase, PlaceDef, Practice, Rule, Source, Step
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
        side, _, role = key.partition(" ")
        return f"{self.of('side', side)} {self.of('role', role)}".strip()

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
    home = replace(group.home, place=change.of("place", group.home.place))
    side, role = change.of("side", group.side), change.of("role", group.role)
    return replace(group, side=side, role=role, home=home, tie=tie, source=None)


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
