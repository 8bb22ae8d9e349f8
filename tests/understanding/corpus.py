"""The sentences coaches may say and what each means: read from sentences.csv, with the practice each stands in."""

import csv
from collections.abc import Iterable
from dataclasses import dataclass, fields, is_dataclass, replace
from functools import cache
from pathlib import Path
from typing import Any

from understanding.split import split_of

from turnout.practice.meaning import rule_rows
from turnout.practice.model import Phrase, Practice, Rule, Source
from turnout.practice.names import Names, names_of
from turnout.practice.read import read_practice
from turnout.practice.relative import for_sides
from turnout.practice.rules import parse_rule
from turnout.practice.table import Row, Where

HERE = Path(__file__).parent
NOWHERE = Source("", 0, None, "")
Meaning = frozenset[Row]


@dataclass(frozen=True)
class Sentence:
    """One sentence, where it stands and what it means (`canonical`: see the README beside this file)."""

    id: str
    source: str
    kind: str
    context: str
    sentence: str
    canonical: str
    note: str
    split: str

    @property
    def sayable(self) -> bool:
        """Whether the language can say all of it."""
        return self.canonical != "none" and not self.canonical.startswith("part: ")

    @property
    def readings(self) -> tuple[tuple[str, ...], ...]:
        """Every right reading, each one or more canonical sentences; of a part, what can be said of it."""
        if self.canonical == "none":
            return ()
        said = self.canonical.removeprefix("part: ").removeprefix("ambiguous: ")
        written = [text for choice in said.split(" || ") for text in expanded(choice)]
        return tuple(dict.fromkeys(tuple(each_sentence(text)) for text in written))


def sentences() -> list[Sentence]:
    """Every sentence of the file; raises ValueError where a split is not the one its text tells."""
    with (HERE / "sentences.csv").open(encoding="utf-8", newline="") as file:
        found = [Sentence(**row) for row in csv.DictReader(file)]
    if wrong := [said.id for said in found if said.split != split_of(said.sentence)]:
        raise ValueError(f"these sentences stand in the wrong half: {', '.join(wrong)}")
    return found


def expanded(text: str) -> list[str]:
    """Every text that “{this|that}” stands for; braces may stand in braces."""
    start = text.find("{")
    if start < 0:
        return [text]
    choices, end = choices_at(text, start)
    return [made for choice in choices for made in expanded(text[:start] + choice + text[end:])]


def choices_at(text: str, start: int) -> tuple[list[str], int]:
    """The choices of the brace that opens at `start`, and the place after its end; raises ValueError."""
    choices: list[str] = []
    depth, begun = 0, start + 1
    for at in range(start, len(text)):
        depth += {"{": 1, "}": -1}.get(text[at], 0)
        if depth == 0:
            return [*choices, text[begun:at]], at + 1
        if text[at] == "|" and depth == 1:
            choices.append(text[begun:at])
            begun = at + 1
    raise ValueError(f"a brace is not closed: {text}")


def each_sentence(text: str) -> list[str]:
    """A text cut after its full stops."""
    return [part.strip() + "." for part in text.split(".") if part.strip()]


@cache
def context(name: str) -> Practice:
    """The practice a sentence stands in."""
    return read_practice(HERE / "contexts" / f"{name}.yaml")


@cache
def names(name: str) -> Names:
    """The names of that practice."""
    return names_of(context(name))


def meaning(name: str, phrases: Iterable[Phrase]) -> Meaning:
    """What trees mean in a practice: their rows as they hold for each side, without where they were written."""
    rules = [Rule(phrase, "", NOWHERE) for phrase in phrases]
    rows = for_sides(context(name), [row for rule in rules for row in rule_rows(rule)])
    return frozenset(replace(settled(row), order=(0, row.order[1])) for row in rows)


def settled(part: Any) -> Any:
    """A row or a part of it with its places by name only, however they were told."""
    if not is_dataclass(part) or isinstance(part, type):
        return part
    if isinstance(part, Where) and part.place:
        return replace(part, relative=None)
    return replace(part, **{field.name: settled(getattr(part, field.name)) for field in fields(part)})


def right_meanings(said: Sentence) -> set[Meaning]:
    """What a sentence may be read as."""
    known = names(said.context)
    return {meaning(said.context, [parse_rule(text, known) for text in reading]) for reading in said.readings}


def right_forms(said: Sentence) -> set[str]:
    """The forms of the canonical sentences, by name."""
    known = names(said.context)
    return {parse_rule(text, known).form for reading in said.readings for text in reading}
