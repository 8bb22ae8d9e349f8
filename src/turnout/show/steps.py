"""Too easy, too hard: a practice's steps as sentences with tonight's sizes and side names."""

from collections.abc import Mapping
from dataclasses import replace

from turnout.measure import YARD_M
from turnout.practice.lines import sides_words
from turnout.practice.model import LINES, Group, Place, PlaceDef, Rule, Step
from turnout.practice.setup import Setup
from turnout.practice.sizing import plays_inside, with_size
from turnout.practice.units import counted
from turnout.show.evening import StepView
from turnout.show.words import paces_text, size_yards, yards_text

MADE = ("list", "part", "same", "polygon")  # places told by what they are made of


def step_views(setup: Setup, words: Mapping[str, str]) -> dict[str, tuple[StepView, ...]]:
    """The steps not yet taken, by direction (harder, easier, different). words: side -> tonight's word."""
    open_steps = [step for step in setup.practice.steps if step.name not in setup.practice.taken]
    return {
        direction: tuple(
            StepView(step.name, step_sentence(setup, step, words), step.tags)
            for step in open_steps
            if step.direction == direction
        )
        for direction in ("harder", "easier", "different")
    }


def step_sentence(setup: Setup, step: Step, words: Mapping[str, str]) -> str:
    """What changes, in sentences: sizes in yards and paces, numbers, rules added, changed or left out."""
    known = {definition.name for definition in setup.practice.ground}
    fresh = [definition for definition in step.ground if definition.name not in known or definition.kind in MADE]
    sized = [definition for definition in step.ground if definition not in fresh]
    lines = [definition for definition in sized if definition.kind in LINES]
    told = [_ground(setup, definition) for definition in sized if definition not in lines]
    told += _lines(setup, lines)
    told += _fresh(setup, step, fresh)
    told += [_people(group, words) for group in step.people]
    told += _rules(setup, (*step.change, *step.add), words)
    told += [f"No longer: {text}" for text in _rules(setup, step.remove, words)]
    return " ".join(told) or f"{step.name}."


def _fresh(setup: Setup, step: Step, fresh: list[PlaceDef]) -> list[str]:
    """Places the step brings, and lists and pieces it makes anew, as they stand tonight."""
    if not fresh:
        return []
    from turnout.practice.ground import places_of
    from turnout.practice.sentences import ground_words
    from turnout.practice.steps import taken_with

    places = dict(places_of(taken_with(setup.practice, step), (setup.field.across_m, setup.field.up_m)))
    return [f"{_named(definition)}: {ground_words(definition, places[definition.name])}." for definition in fresh]


def _ground(setup: Setup, definition: PlaceDef) -> str:
    """The step's size at tonight's: the same share of the designed size, in whole yards."""
    place = setup.place(definition.name)
    if definition.kind == "strip":
        depth = definition.depth_m
        return f"{_named(definition)} is {yards_text(depth)} deep: {paces_text(depth)}."
    designed = next((old for old in setup.practice.ground if old.name == definition.name), None)
    across, up = _size(setup, place, definition, designed)
    name = _named(definition)
    if definition.kind == "circle":
        return f"{name} is {yards_text(across)} across: {paces_text(across)}."
    paces = paces_text(across) if abs(across - up) < 0.05 else f"{paces_text(across)} by {paces_text(up)}"
    return f"{name} is {size_yards(across, up)}: {paces}."


def _size(setup: Setup, place: Place, definition: PlaceDef, designed: PlaceDef | None) -> tuple[float, float]:
    """Across and up, metres: the step's share of the designed size, or so much for each of tonight's players."""
    if definition.area_m2:
        players = sum(setup.count(group.key) for group in setup.practice.groups if plays_inside(group))
        made = with_size(definition, max(1, players))
        return _whole(made.across_m), _whole(made.up_m)
    across, up = definition.across_m, definition.up_m
    if designed and designed.across_m:
        across = place.across_m * definition.across_m / designed.across_m
    if designed and designed.up_m:
        up = place.up_m * definition.up_m / designed.up_m
    return _whole(across), _whole(up)


def _lines(setup: Setup, lines: list[PlaceDef]) -> list[str]:
    """Goals and gates with their new size, those of a whole list together: 'Gates are 1.5 yd wide.'"""
    from turnout.practice.line_sentences import line_size, listed_lines

    left, told = {line.name: line for line in lines}, []
    for name, members in listed_lines(setup.practice).items():
        changed = [left[member.name] for member in members if member.name in left]
        if len(changed) == len(members) and len({line_size(line) for line in changed}) == 1:
            told.append(f"{_capital(name)} are {line_size(changed[0])}{_wide(changed[0])}.")
            left = {name: line for name, line in left.items() if line not in changed}
    return told + [f"{_named(line)} is {line_size(line)}{_wide(line)}." for line in left.values()]


def _wide(line: PlaceDef) -> str:
    return " wide" if line.kind == "gate" else ""


def _named(definition: PlaceDef) -> str:
    return _capital(definition.name)


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


def _whole(length_m: float) -> float:
    return round(length_m / YARD_M) * YARD_M


def _people(group: Group, words: Mapping[str, str]) -> str:
    from turnout.practice.printing import side_name, the, tonight_name

    if group.of > 1:
        return f"{counted(group, group.count)} in {the(group.home.place)}."
    inflection = "adjective" if group.role or group.count == 1 else "noun"
    who = side_name(tonight_name(group.side, words), inflection)
    if group.role:
        who = f"{who} {group.role} player" + ("" if group.count == 1 else "s")
    edge = f"on {sides_words(group.home.sides) if group.home.sides else 'the edge'} of"
    where = f"{edge if group.home.on_edge else 'in'} {the(group.home.place)}"
    return f"{group.count} {who} {where}."


def _rules(setup: Setup, rules: tuple[Rule, ...], words: Mapping[str, str]) -> list[str]:
    if not rules:
        return []
    from turnout.practice.sentences import rule_sentences

    return list(rule_sentences(replace(setup.practice, rules=rules), dict(words)))
