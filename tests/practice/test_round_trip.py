"""Round trips over trees generated from the declarations: print, read, and be the same."""

from collections.abc import Callable
from functools import cache

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from turnout.practice.binding import misfit
from turnout.practice.forms import ENTRIES
from turnout.practice.grammar import read
from turnout.practice.meaning import rule_rows
from turnout.practice.model import Phrase, Rule, Source
from turnout.practice.names import Names
from turnout.practice.printing import print_rule
from turnout.practice.rules import parse_rule
from turnout.practice.templates import Entry, Maybe, Part, Slot, parts

# names that are words of the language, that share words, and that end in a number or letter
NAMES = Names(
    ("amber", "neutral", "own team"), ("inside", "edge", "wide", "target player"),
    ("square", "north end", "edge zone", "box 2", "goal A"), (("helper", "edge"), ("the deep", "square")),
)  # fmt: skip
ATOMS = {"side": NAMES.sides, "role": NAMES.roles, "place_name": NAMES.places}
MANY = settings(
    max_examples=600, deadline=None, suppress_health_check=[HealthCheck.too_slow, HealthCheck.filter_too_much]
)


@cache
def entries(kind: str, inflection: str) -> tuple[Entry, ...]:
    return tuple(entry for entry in ENTRIES if entry.type == kind and entry.template(inflection))


def fill(draw: Callable, template: tuple[Part, ...]) -> list[tuple[str, Phrase | str | int]]:
    slots: list[tuple[str, Phrase | str | int]] = []
    for piece in template:
        if isinstance(piece, Slot):
            slots.append((piece.name, value(draw, piece)))
        elif isinstance(piece, Maybe) and draw(st.booleans()):
            slots += fill(draw, draw(st.sampled_from(piece.options)))
    return slots


def value(draw: Callable, slot: Slot) -> Phrase | str | int:
    if slot.type == "int":
        return draw(st.integers(1, 120))
    if slot.type in ATOMS:
        return draw(st.sampled_from(ATOMS[slot.type]))
    return tree(draw, slot.type, slot.inflection)


def tree(draw: Callable, kind: str, inflection: str) -> Phrase:
    entry = draw(st.sampled_from(entries(kind, inflection)))
    template = entry.template(inflection)
    assert template is not None
    return Phrase(entry.id, tuple(fill(draw, parts(template))))


@st.composite
def sentences(draw: Callable) -> Phrase:
    return tree(draw, "rule", "bare")


@MANY
@given(sentences())
def test_what_is_printed_reads_back(phrase: Phrase) -> None:
    text = print_rule(phrase)
    assert read(text, NAMES) == phrase
    assert print_rule(read(text.lower(), NAMES)) == text


@MANY
@given(sentences().filter(lambda phrase: misfit(phrase) is None))
def test_every_well_formed_sentence_has_rows(phrase: Phrase) -> None:
    text = print_rule(phrase)
    rows = rule_rows(Rule(parse_rule(text, NAMES), text, Source("toy", 1, 1, text)))
    assert rows and [row.order for row in rows] == [(1, number) for number in range(1, len(rows) + 1)]
    assert all(row.source.text == text for row in rows)
