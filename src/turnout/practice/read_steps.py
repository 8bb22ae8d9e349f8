"""Steps of a file: named changes, each checked against the practice it changes."""

from collections.abc import Sequence
from dataclasses import replace
from typing import Literal, cast

from turnout.practice.keys import CHANGING, DIRECTIONS, STEP, STEP_KIT
from turnout.practice.model import BallsInPlay, Group, Practice, Step
from turnout.practice.names import Names, collect
from turnout.practice.read_model import read_ground, read_people_lines, read_rules, source_of
from turnout.practice.read_small import read_in_play, whole_of
from turnout.practice.steps import StepFault, taken_with
from turnout.reading import Items, Node, Pairs, Report, Text


def read_steps(node: Node | None, report: Report, practice: Practice, names: Names, *, check: bool) -> list[Step]:
    """The steps under `steps`. `check` compares them with the rules: not where a rule could not be read."""
    if node is None:
        return []
    if not isinstance(node, Items):
        report.add(node, "steps is a list; each step begins “- harder: its name” (or easier, different)")
        return []
    found: list[Step] = []
    for item in node.items:
        step = read_step(item, report, practice, names)
        if step and step.name in {other.name for other in found}:
            report.add(item, "two steps have this name; give each its own", read=step.name)
        elif step:
            if check:
                check_step(step, practice, report)
            found.append(step)
    return found


def read_step(item: Node, report: Report, practice: Practice, names: Names) -> Step | None:
    """One step: its direction and name, and what it changes."""
    pairs = report.pairs(item, "a step")
    if pairs is None:
        return None
    report.keys(pairs, STEP.keys, "a step")
    named = [key for key, _ in pairs.entries if key.value in DIRECTIONS]
    name = report.text(pairs.get(named[0].value), "a step's name") if len(named) == 1 else None
    if len(named) != 1:
        report.add(pairs, "a step begins “harder: its name”, “easier: …” or “different: …”, one of them")
    if not any(key.value in CHANGING for key, _ in pairs.entries):
        report.add(pairs, "a step changes something: add, remove, change, ground, people, kit or balls in play")
    return changes_of(pairs, name, named[0].value if named else "different", report, practice, names)


def changes_of(
    pairs: Pairs, name: Text | None, direction: str, report: Report, practice: Practice, names: Names
) -> Step | None:
    """The ground, people and sentences of a step. Its sentences may name what the step brings."""
    known = {place.name: place for place in practice.ground}
    ground = read_ground(pairs.get("ground"), report, known)
    known |= {place.name: place for place in ground}
    groups = {group.key: group for group in practice.groups}
    people = read_people_lines(pairs.get("people"), report, known, groups)
    fresh = collect(ground, people, ())
    names = replace(
        names,
        sides=tuple(dict.fromkeys((*names.sides, *fresh.sides))),
        roles=tuple(dict.fromkeys((*names.roles, *fresh.roles))),
        places=tuple(dict.fromkeys((*names.places, *fresh.places))),
        lists=tuple(dict.fromkeys((*names.lists, *fresh.lists))),
        units=tuple(dict.fromkeys((*names.units, *fresh.units))),
        ones=tuple(role for role in (*names.ones, *fresh.ones) if role not in more_than_one(people)),
        shared=tuple(dict.fromkeys((*names.shared, *fresh.shared))),
        groups=(*names.groups, *fresh.groups),
        ground=(*names.ground, *fresh.ground),
    )
    sentences = {key: tuple(read_rules(pairs.get(key), report, names, key)) for key in ("add", "remove", "change")}
    if name is None:
        return None
    way = cast(Literal["harder", "easier", "different"], direction)
    in_play, at_once = balls_of(pairs, report, [*practice.groups, *people])
    return Step(
        name.value, way, tuple(ground), tuple(people), **sentences, source=source_of(name, report),
        balls=kit_of(pairs, report), balls_in_play=in_play, balls_at_once=at_once,
    )  # fmt: skip


def more_than_one(people: Sequence[Group]) -> set[str]:
    """The roles that more than one player of a side can have after a step."""
    return {group.role for group in people if group.high > 1}


def kit_of(pairs: Pairs, report: Report) -> int | None:
    """The balls a practice needs from this step on; None where the step leaves them."""
    kit = report.pairs(pairs.get("kit"), "the kit of a step")
    if kit is None:
        return None
    report.keys(kit, STEP_KIT.keys, "the kit of a step")
    report.needed(kit, STEP_KIT.needed, "the kit of a step")
    return whole_of(kit, "balls", STEP_KIT, report)


def balls_of(pairs: Pairs, report: Report, groups: Sequence[Group]) -> tuple[BallsInPlay | None, int]:
    """The balls in play from this step on; None where the step leaves them."""
    node = pairs.get("balls in play")
    return (None, 1) if node is None else read_in_play(node, report, groups)


def check_step(step: Step, practice: Practice, report: Report) -> None:
    """Fault a step that adds what is there, removes or changes what is not."""
    try:
        taken_with(practice, step)
    except StepFault as fault:
        at = fault.source
        report.add(Text(at.text, at.line, at.column or 1, at.column is not None), fault.expected)
