"""The notation in which every form and phrase of the language is declared once, and what a template expands to.

`{name:type.inflection/needs}` a slot · `{name:int}` a number · `<who: scores | score>` a word agreeing with the slot
`who` (one | many), `<@: …>` with the number handed down · `[ … ]` may be left out · `[ … || … ]` one of them or none.
A slot hands its number down with `@`: `{act:act.finite@who}`.
"""

import re
from dataclasses import dataclass
from functools import cache
from itertools import product
from typing import Literal

PIECE = re.compile(
    r"\{(?P<name>\w+):(?P<type>\w+)(?:\.(?P<infl>\w+))?(?:/(?P<needs>\w+))?(?:@(?P<number>\w+))?\}"
    r"|<(?P<ref>[@\w]+): ?(?P<one>[^|>]+?) ?\| ?(?P<many>[^>]+?)>"
    r"|(?P<open>\[)|(?P<close>\])|(?P<alt>\|\|)|(?P<mark>[,.])|(?P<word>[^\s\[\]{}<>|,.]+)"
)


@dataclass(frozen=True)
class Word:
    """A fixed word or mark of a template."""

    text: str


@dataclass(frozen=True)
class Agree:
    """A word in two shapes, chosen by the number of slot `ref` ('@': the number handed down)."""

    ref: str
    one: str
    many: str


@dataclass(frozen=True)
class Slot:
    """A place to fill: with which type, in which inflection, of which class, and whose number it is handed."""

    name: str
    type: str
    inflection: str
    needs: str | None = None
    number_of: str | None = None


@dataclass(frozen=True)
class Maybe:
    """Alternatives of which one or none is present; which one shows by its slots."""

    options: tuple[tuple["Part", ...], ...]


Part = Word | Agree | Slot | Maybe


@dataclass(frozen=True)
class Entry:
    """One declared form or phrase.

    templates maps an inflection to its template; `also` holds templates that are read but never printed;
    `many` says that a noun phrase takes the plural verb; number is the form's number in the reference.
    """

    id: str
    type: str
    templates: tuple[tuple[str, str], ...]
    meaning: str = ""
    example: str = ""
    also: tuple[tuple[str, str], ...] = ()
    many: bool = False
    number: int = 0

    def template(self, inflection: str) -> str | None:
        """The template for an inflection, or None when the phrase cannot stand there."""
        return dict(self.templates).get(inflection)


@cache
def parts(template: str) -> tuple[Part, ...]:
    """A template as parts; raises ValueError on a notation it does not know."""
    levels: list[list[list[Part]]] = [[[]]]
    at = 0
    for piece in PIECE.finditer(template):
        if template[at : piece.start()].strip():
            raise ValueError(f"cannot read {template[at : piece.start()]!r} in {template!r}")
        at = piece.end()
        if piece["open"]:
            levels.append([[]])
        elif piece["close"]:
            options = levels.pop()
            levels[-1][-1].append(Maybe(tuple(tuple(option) for option in options)))
        elif piece["alt"]:
            levels[-1].append([])
        else:
            levels[-1][-1].append(part(piece))
    return tuple(levels[0][0])


def part(piece: re.Match[str]) -> Part:
    """One slot, agreeing word, mark or word."""
    if piece["name"]:
        return Slot(piece["name"], piece["type"], piece["infl"] or "bare", piece["needs"], piece["number"])
    if piece["ref"]:
        return Agree(piece["ref"], piece["one"], piece["many"])
    return Word(piece["mark"] or piece["word"])


def expand(template: tuple[Part, ...]) -> list[tuple[Word | Agree | Slot, ...]]:
    """Every shape of a template, its optional pieces present or absent."""
    choices: list[list[tuple[Word | Agree | Slot, ...]]] = []
    for piece in template:
        if isinstance(piece, Maybe):
            choices.append([()] + [shape for option in piece.options for shape in expand(option)])
        else:
            choices.append([(piece,)])
    return [tuple(x for choice in picked for x in choice) for picked in product(*choices)]


def slots(template: tuple[Part, ...]) -> list[Slot]:
    """Every slot of a template, optional ones too, in order."""
    found: list[Slot] = []
    for piece in template:
        if isinstance(piece, Slot):
            found.append(piece)
        elif isinstance(piece, Maybe):
            found += [slot for option in piece.options for slot in slots(option)]
    return found


Number = Literal["one", "many"]
