"""A drawing in words: the text a screen reader speaks and a tagged page carries."""

from collections.abc import Sequence

from turnout.practice.model import Group, Place
from turnout.practice.setup import Setup
from turnout.practice.units import counted
from turnout.show.drawing import Line, Mark
from turnout.show.ink import Side
from turnout.show.words import listed, number_word, size_yards, yards_text


def describe(
    setup: Setup,
    sides: Sequence[Side],
    marks: Sequence[Mark],
    lines: Sequence[Line],
    limits: Sequence[tuple[int, str]] = (),
) -> str:
    """The ground, who stands where, touches allowed, and each line with the sentence it belongs to."""
    noted = [f"{number_word(n).capitalize()} {'touch' if n == 1 else 'touches'}: {who}." for n, who in limits]
    return " ".join([_ground(setup.field), *_zones(setup), *_people(setup, sides), *noted, *_lines(lines, marks)])


def _ground(field: Place) -> str:
    if field.kind == "circle":
        return f"A circle {yards_text(field.across_m)} across."
    square = abs(field.across_m - field.up_m) < 0.05
    return f"A {'square' if square else 'rectangle'} of {size_yards(field.across_m, field.up_m)}."


def _zones(setup: Setup) -> list[str]:
    zones = [place for _, place in setup.places[1:] if place.kind != "list" and not place.is_line]
    return [*_marked(zones), *_goals_and_gates(setup)]


def _marked(zones: Sequence[Place]) -> list[str]:
    if not zones:
        return []
    return [f"Marked in it: {listed([f'{z.name}, {size_yards(z.across_m, z.up_m)}' for z in zones])}."]


def _goals_and_gates(setup: Setup) -> list[str]:
    """Each list of goals or gates once, and every goal or gate that no list speaks for."""
    from turnout.practice.line_sentences import line_sentence_words, lines_words, listed_lines, told_by_list

    lists = listed_lines(setup.practice)
    told = [f"{_capital(name)}: {lines_words(members)}." for name, members in lists.items()]
    alone = [d for d in setup.practice.ground if setup.place(d.name).is_line and d.name not in told_by_list(setup)]
    return told + [f"{_capital(d.name)}: {line_sentence_words(d, setup.place(d.name))}." for d in alone]


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


def _people(setup: Setup, sides: Sequence[Side]) -> list[str]:
    names = {side.side: side.name for side in sides}
    homes: dict[str, list[str]] = {}
    for group in setup.practice.groups:
        count = setup.count(group.key)
        if count:
            homes.setdefault(_home(group), []).append(_who(group, count, names[group.side]))
    return [f"{home}: {listed(who)}." for home, who in homes.items()]


def _home(group: Group) -> str:
    home = group.home
    if home.behind is not None:
        return f"Waiting {home.behind} of {home.place}"
    return f"{'On the edge of' if home.on_edge else 'In'} {home.place}"


def _who(group: Group, count: int, name: str) -> str:
    if group.of > 1:
        return counted(group, count)
    if group.keeper:
        return f"the keeper of the {name}"
    return f"{number_word(count)}" if group.waits else f"{number_word(count)} {name}"


def _lines(lines: Sequence[Line], marks: Sequence[Mark]) -> list[str]:
    words = {"ball": "plays the ball to", "run": "runs to", "dribble": "dribbles to", "shot": "shoots at"}
    told = []
    for line in lines:
        if not isinstance(line.start, int):
            continue
        end = marks[line.end].label if isinstance(line.end, int) else "a new place"
        sentence = f" (sentence {line.number})" if line.number else ""
        told.append(f"{marks[line.start].label} {words[line.kind]} {end}{sentence}.")
    return told
