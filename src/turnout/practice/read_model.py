"""Ground, people and rules of a file, line by line; a line that fails is reported and the next one read."""

import re
from collections.abc import Mapping
from dataclasses import replace

from turnout.practice.ground_words import PlaceError, read_place
from turnout.practice.model import Group, Home, PlaceDef, Rule, Source
from turnout.practice.names import COLOURS, Names, spellings
from turnout.practice.people_words import MOST, PeopleError, read_people
from turnout.practice.printing import print_rule
from turnout.practice.rules import RuleError, parse_rules
from turnout.reading import Items, Node, Report, Text, nearest
from turnout.reading.nodes import shown

NAME = re.compile(r"[^\W_]+(?:[ '’-][^\W_]+)*")
LONGEST_NAME = 40
MOST_LINES = 200  # of ground, people or rules; a practice has about ten
TAKEN = frozenset({"the", "a", "an", "it", "its", "everyone", "ball", "side", "player", "players", "other side"})


def source_of(text: Text, report: Report) -> Source:
    """Where a text stands."""
    return Source(report.file, text.line, text.column if text.plain else None, text.value)


def good_name(key: Text, what: str, report: Report) -> bool:
    """Whether `key` can name a place or group; faults it if not."""
    if len(key.value) > LONGEST_NAME or not NAME.fullmatch(key.value):
        report.add(key, f"the name of {what} is a few words of letters and numbers")
        return False
    if key.value.casefold() in TAKEN:
        report.add(key, f"this word means something else in sentences; give {what} another name")
        return False
    return True


def read_ground(node: Node | None, report: Report, known: Mapping[str, PlaceDef]) -> list[PlaceDef]:
    """The places under `ground`, in order; `known` are places declared before (for a step)."""
    pairs = report.pairs(node, "ground")
    found: dict[str, PlaceDef] = {}
    for key, value in (pairs.entries if pairs else ())[:MOST_LINES]:
        text = report.text(value, f"the place {key.value}")
        if text is None or not good_name(key, "a place", report):
            continue
        above = {name: place for name, place in {**known, **found}.items() if name != key.value}
        try:
            made = read_place(key.value, text.value, above, source_of(text, report))
        except PlaceError as error:
            at = max(0, text.value.find(error.read))
            report.add(text, error.expected, read=error.read, near=error.nearest, offset=at)
            made = [PlaceDef(key.value, "rectangle", 1.0, 1.0)]  # stands in, so that one fault is told once
        found.update((place.name, place) for place in made)
    return list(found.values())


def read_people_lines(
    node: Node | None, report: Report, places: Mapping[str, PlaceDef], known: Mapping[str, Group]
) -> list[Group]:
    """The groups under `people`, in order; `known` are groups declared before (for a step)."""
    pairs = report.pairs(node, "people")
    found: dict[str, Group] = {}
    for key, value in (pairs.entries if pairs else ())[:MOST_LINES]:
        text = report.text(value, f"the line of {key.value}")
        if text is None or not good_name(key, "a group", report):
            continue
        above = {name: group for name, group in {**known, **found}.items() if name != key.value}
        try:
            group = read_people(key.value, text.value, places, above, source_of(text, report))
        except PeopleError as error:
            at = max(0, text.value.find(error.read))
            report.add(text, error.expected, read=error.read, near=error.nearest, offset=at)
            side, _, role = " ".join(key.value.split()).partition(" ")
            group = Group(side, role, 1, 0, MOST, Home(""))  # stands in, so that one fault is told once
        if group.home.place and places[group.home.place].kind == "list":
            report.add(text, "a home is one place, not a list of places", read=group.home.place)
        found[group.key] = group
    check_roles([*known.values(), *found.values()], list(found.values()), report, pairs)
    every = [group for group in {**known, **found}.values() if not group.waits]
    return [fed(group, every, report) for group in found.values()]


def fed(group: Group, every: list[Group], report: Report) -> Group:
    """A line that waits for a role with the groups it fills up; a role nobody plays is faulted."""
    if not group.feeds:
        return group
    wanted = group.feeds[0]
    names = {name for other in every for name in (other.key, other.role, other.side) if name}
    meant = next((name for name in sorted(names) if wanted.casefold() in {w.casefold() for w in spellings(name)}), None)
    if meant is None and group.source:
        place = Text(group.key, group.source.line, 1)
        listed = ", ".join(sorted(names))
        expected = f"“waiting for” goes on with a role or side under people: {listed}"
        report.add(place, expected, near=nearest(wanted, names))
    return replace(group, feeds=tuple(other.key for other in every if meant in (other.key, other.role, other.side)))


def check_roles(every: list[Group], fresh: list[Group], report: Report, pairs: Node | None) -> None:
    """Fault a side with several groups of which one has no role."""
    for group in fresh:
        others = [other for other in every if other.side == group.side and other.key != group.key]
        if not group.role and others and group.source:
            place = Text(group.key, group.source.line, 1)
            report.add(place, f"{group.side} has several groups, so this one needs a role too: “{group.side} …”")


def read_rules(node: Node | None, report: Report, names: Names, what: str) -> list[Rule]:
    """The rules of a list of sentences; a sentence may say more than one."""
    if node is None:
        return []
    if not isinstance(node, Items):
        report.add(node, f"{what} is a list: each sentence on its own line after “- ”")
        return []
    return [rule for item in node.items[:MOST_LINES] for rule in read_rule(item, node, report, names)]


def read_rule(item: Node, inside: Items, report: Report, names: Names) -> list[Rule]:
    """What one sentence says; a colon that made a key of it, or a comma that cut it, is explained."""
    if not isinstance(item, Text):
        quoted = f'- "{shown(item)}"'
        report.add(item, f"a rule is one line of text; a colon inside it needs quotes: {quoted}")
        return []
    try:
        phrases = parse_rules(item.value, names)
    except RuleError as error:
        hint = "; inside [ ] a comma ends a sentence: write each on its own line after “- ”" if inside.flow else ""
        report.add(item, error.expected + hint, read=error.read, near=error.nearest, offset=error.offset)
        return []
    return [Rule(phrase, print_rule(phrase, names), source_of(item, report)) for phrase in phrases]


def stand_in(side: str) -> bool:
    """Whether a side's name is a bib colour that tonight's colour replaces."""
    return side in COLOURS
