"""Text to tokens. Where a name is also a word of the language, both readings are kept and the parser decides."""

import re
from dataclasses import dataclass
from functools import cache

from turnout.practice.names import ARTICLES, WORD, Names, lookup
from turnout.practice.phrases import FOLDS
from turnout.practice.templates import Agree, Maybe, Part, Word, parts

NUMBER = re.compile(r"[1-9][0-9]{0,2}")


@dataclass(frozen=True)
class Piece:
    """One word or mark of the text and the character where it begins."""

    word: str
    at: int
    written: str


@dataclass(frozen=True)
class Reading:
    """One way to read the words from `start` to before `end`: a terminal and its value."""

    terminal: str
    value: str | int
    start: int
    end: int


def pieces(text: str) -> list[Piece]:
    """The words and marks of a sentence; a missing full stop is added."""
    found = [Piece(m[0].casefold().replace("’", "'"), m.start(), m[0]) for m in WORD.finditer(text)]
    if not found or found[-1].word != ".":
        found.append(Piece(".", len(text.rstrip()), "."))
    return found


def terminal(word: str) -> str:
    """The terminal of a fixed word: words that agree in number share one."""
    first = folds().get(word.casefold(), word.casefold())
    marks = {".": "_STOP", ",": "_COMMA"}
    return marks.get(first) or "_" + re.sub(r"\W", "_", first).upper()


@cache
def folds() -> dict[str, str]:
    """Word -> the word it is read as, from every agreeing pair in the declarations."""
    from turnout.practice.forms import ENTRIES

    pairs = [*FOLDS]
    for entry in ENTRIES:
        for _, template in (*entry.templates, *entry.also):
            pairs += [(agree.one, agree.many) for agree in agreements(parts(template))]
    groups: list[set[str]] = []
    for pair in pairs:
        touching = [group for group in groups if group & set(pair)]
        groups = [group for group in groups if group not in touching] + [set(pair).union(*touching)]
    return {word: min(group) for group in groups for word in group}


def agreements(template: tuple[Part, ...]) -> list[Agree]:
    """Every agreeing word of a template."""
    found: list[Agree] = []
    for piece in template:
        if isinstance(piece, Agree):
            found.append(piece)
        elif isinstance(piece, Maybe):
            found += [agree for option in piece.options for agree in agreements(option)]
    return found


@cache
def keywords() -> dict[str, str]:
    """Every fixed word of the language and its terminal."""
    from turnout.practice.forms import ENTRIES

    found: set[str] = {".", ","} | set(folds())
    for entry in ENTRIES:
        for _, template in (*entry.templates, *entry.also):
            found |= fixed_words(parts(template))
    return {word: terminal(word) for word in found}


def fixed_words(template: tuple[Part, ...]) -> set[str]:
    """The fixed words of a template, optional ones too."""
    found: set[str] = set()
    for piece in template:
        if isinstance(piece, Word):
            found.add(piece.text.casefold())
        elif isinstance(piece, Maybe):
            found |= {word for option in piece.options for word in fixed_words(option)}
    return found


def readings(words: list[Piece], start: int, names: Names) -> list[Reading]:
    """Every way to read the text at word `start`: a name (an article before it belongs to it), a number, a word."""
    word = words[start].word
    found = named(words, start, start, names)
    if word in ARTICLES and start + 1 < len(words):
        found += named(words, start, start + 1, names)
    if NUMBER.fullmatch(word):
        found.append(Reading("INT", int(word), start, start + 1))
    elif word in keywords():
        found.append(Reading(keywords()[word], word, start, start + 1))
    return found


def named(words: list[Piece], start: int, first: int, names: Names) -> list[Reading]:
    """The names that begin at word `first`."""
    found = []
    for spelling, kind, name in lookup(names).get(words[first].word, ()):
        end = first + len(spelling)
        if tuple(piece.word for piece in words[first:end]) == spelling:
            found.append(Reading(kind, name, start, end))
    return found
