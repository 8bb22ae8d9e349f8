"""A drawing in words: the text a screen reader speaks and a tagged page carries."""

from collections.abc import Sequence

from turnout.practice.model import Place
from turnout.practice.setup import Setup
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
    zones = [place for _, place in setup.places[1:] if place.kind != "list"]
    if not zones:
        return []
    return [f"Marked in it: {listed([f'{z.name}, {size_yards(z.across_m, z.up_m)}' for z in zones])}."]


def _people(setup: Setup, sides: Sequence[Side]) -> list[str]:
    names = {side.side: side.name for side in sides}
    homes: dict[tuple[str, bool], list[str]] = {}
    for group in setup.practice.groups:
        count = setup.count(group.key)
        if count:
            who = f"{number_word(count)} {names[group.side]}"
            homes.setdefault((group.home.place, group.home.on_edge), []).append(who)
    return [f"{'On the edge of' if edge else 'In'} {place}: {listed(who)}." for (place, edge), who in homes.items()]


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
