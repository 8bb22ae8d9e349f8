"""Goals and gates in the sentences of a set-up practice: '2 small goals of 6 x 3 ft at the north end of the pitch'."""

from collections.abc import Mapping, Sequence

from turnout.measure import yards
from turnout.practice.lines import writes_height, written
from turnout.practice.model import LINES, Place, PlaceDef, Practice
from turnout.practice.printing import the
from turnout.practice.setup import Setup

WAYS = {True: ("west", "east"), False: ("south", "north")}  # along a side that runs west-east, south-north


def line_size(definition: PlaceDef) -> str:
    """'12 x 6 ft' for a goal, '2 yd' for a gate, in the unit it is written in."""
    high = f" x {written(definition.height_m, definition.unit)}" if writes_height(definition) else ""
    return f"{written(definition.width_m, definition.unit)}{high} {definition.unit}"


def line_sentence_words(definition: PlaceDef, place: Place) -> str:
    """What a goal or gate is and where it stands tonight: '12 x 6 ft at the north end of the pitch'."""
    wide = " wide" if definition.kind == "gate" else ""
    if definition.side is None:
        return f"{line_size(definition)}{wide}, {off_middle(place.x_m, place.y_m)}"
    off = along_side(definition)
    return f"{line_size(definition)}{wide} at {end_of(definition)}{f', {off} of the middle' if off else ''}"


def end_of(definition: PlaceDef) -> str:
    """'the north end of the pitch'."""
    end = "end" if definition.side in ("north", "south") and definition.kind != "gate" else "side"
    return f"the {definition.side} {end} of {the(definition.of or '')}"


def along_side(definition: PlaceDef) -> str:
    """'8 yd west', as written; '' in the middle of its side."""
    if not definition.offset_m:
        return ""
    way = WAYS[definition.side in ("north", "south")][definition.offset_m > 0]
    return f"{written(abs(definition.offset_m), definition.at_unit)} {definition.at_unit} {way}"


def off_middle(x_m: float, y_m: float) -> str:
    """'8 yd west and 6 yd north of the middle', in whole yards; 'in the middle'."""
    ways = [(x_m, *WAYS[True]), (y_m, *WAYS[False])]
    told = [f"{abs(yards(m)):.0f} yd {plus if m > 0 else minus}" for m, minus, plus in ways if abs(yards(m)) >= 0.5]
    return f"{' and '.join(told)} of the middle" if told else "in the middle"


def lines_in(practice: Practice, name: str) -> tuple[PlaceDef, ...]:
    """The goals or gates a list is made of, when it is made of nothing else and they are alike; else none."""
    known = {definition.name: definition for definition in practice.ground}
    found = tuple(known[member] for member in known[name].members)
    alike = {(d.kind, d.width_m, d.height_m) for d in found}
    return found if len(alike) == 1 and found[0].kind in LINES else ()


def listed_lines(practice: Practice) -> Mapping[str, tuple[PlaceDef, ...]]:
    """The lists of goals or gates that are alike, by name, and what each is made of."""
    lists = [definition.name for definition in practice.ground if definition.kind == "list"]
    return {name: found for name in lists if (found := lines_in(practice, name))}


def lines_words(members: Sequence[PlaceDef]) -> str:
    """'8 gates of 2 yd', '2 small goals of 6 x 3 ft at the north end of the pitch, 8 yd west and 8 yd east of the
    middle'."""
    first = members[0]
    told = f"{len(members)} {first.kind}s of {line_size(first)}"
    if first.side is None or len({(member.side, member.of) for member in members}) > 1:
        return told
    offs = [along_side(member) for member in members]
    return (
        f"{told} at {end_of(first)}, {' and '.join(offs)} of the middle" if all(offs) else f"{told} at {end_of(first)}"
    )


def told_by_list(setup: Setup) -> frozenset[str]:
    """Goals and gates that a list of them speaks for."""
    return frozenset(member.name for found in listed_lines(setup.practice).values() for member in found)
