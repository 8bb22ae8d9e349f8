"""The notation of everyday phrasings and what it expands to.

`word` · `(this|that thing|)` one of them, an empty one may be nothing · `[may be left out]` · `<name>` a set of
words declared once · `{type}` or `{name:type}` a slot. Words are compared without their endings and articles.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

from turnout.practice.saying.words import words_alike

PIECE = re.compile(
    r"\{(?:(?P<name>\w+):)?(?P<type>\w+)\}|<(?P<set>\w+)>|(?P<mark>[()\[\]|])|(?P<word>[^\s()\[\]|{}<>]+)"
)


@dataclass(frozen=True)
class Fixed:
    """One word."""

    word: str


@dataclass(frozen=True)
class Gap:
    """A slot: what is read there and the name it goes by."""

    name: str
    type: str


@dataclass(frozen=True)
class Choice:
    """One of several sequences; an empty sequence may be nothing."""

    options: tuple[tuple["Node", ...], ...]


Node = Fixed | Gap | Choice


class Notation(ValueError):
    """A pattern that is written wrongly."""


def compiled(pattern: str, sets: Mapping[str, str]) -> tuple[Node, ...]:
    """A pattern as nodes; raises Notation."""
    pieces = list(PIECE.finditer(pattern))
    nodes, at = options(pieces, 0, sets, "")
    if at != len(pieces):
        raise Notation(f"a bracket too many: {pattern}")
    return nodes[0] if len(nodes) == 1 else (Choice(nodes),)


def options(
    pieces: list[re.Match[str]], at: int, sets: Mapping[str, str], closing: str
) -> tuple[tuple[tuple[Node, ...], ...], int]:
    """The sequences up to the closing bracket and the place after it."""
    found: list[list[Node]] = [[]]
    while at < len(pieces):
        piece, mark = pieces[at], pieces[at]["mark"]
        at += 1
        if mark == "|":
            found.append([])
        elif mark and mark in ")]":
            if mark != closing:
                raise Notation(f"this bracket closes nothing: {piece.string}")
            return tuple(tuple(some) for some in found), at
        elif mark:
            inner, at = options(pieces, at, sets, ")" if mark == "(" else "]")
            found[-1].append(Choice(inner if mark == "(" else (*inner, ())))
        else:
            found[-1] += single(piece, sets)
    if closing:
        raise Notation(f"a bracket stays open: {pieces[0].string}")
    return tuple(tuple(some) for some in found), at


def single(piece: re.Match[str], sets: Mapping[str, str]) -> list[Node]:
    """A slot, a set of words or a word."""
    if piece["type"]:
        return [Gap(piece["name"] or piece["type"], piece["type"])]
    if piece["set"]:
        if piece["set"] not in sets:
            raise Notation(f"no set of words is called {piece['set']}")
        return list(compiled(sets[piece["set"]], sets))
    return list(fixed(piece["word"]))


@cache
def fixed(word: str) -> tuple[Node, ...]:
    """A written word as the words it is compared as."""
    return (Fixed("'s"),) if word == "'s" else tuple(Fixed(one) for one in words_alike(word))


@dataclass(frozen=True)
class Made:
    """What a phrasing means: a form or phrase with its slots, a slot's value (with what stands for a missing one), or
    a number. Several are several rules."""

    form: str = ""
    slots: tuple[tuple[str, "Made"], ...] = ()
    gap: str = ""
    number: int | None = None
    missing: "Made | None" = None


MEANT = re.compile(
    r"\s*(?:\{(?P<gap>\w+)(?:\|(?P<missing>[^}]*))?\}|(?P<number>\d+)|(?P<form>[A-Za-z][\w '.-]*[\w]))\s*"
)


@cache
def meant(text: str) -> tuple[Made, ...]:
    """The right side of a phrasing; ` + ` stands between several rules. Raises Notation."""
    found = []
    for part in text.split(" + "):
        made, at = expression(part, 0)
        if part[at:].strip():
            raise Notation(f"more than was expected: {part}")
        found.append(made)
    return tuple(found)


def expression(text: str, at: int) -> tuple[Made, int]:
    """One value beginning at a place, and the place after it."""
    piece = MEANT.match(text, at)
    if piece is None:
        raise Notation(f"nothing is said: {text[at:]}")
    if piece["gap"]:
        missing = expression(piece["missing"], 0)[0] if piece["missing"] else None
        return Made(gap=piece["gap"], missing=missing), piece.end()
    if piece["number"]:
        return Made(number=int(piece["number"])), piece.end()
    if piece.end() < len(text) and text[piece.end()] == "(":
        slots, at = arguments(text, piece.end() + 1)
        return Made(piece["form"], slots), at
    return Made(piece["form"]), piece.end()


def arguments(text: str, at: int) -> tuple[tuple[tuple[str, Made], ...], int]:
    """The slots in brackets; a bare slot takes what was read under its own name."""
    found: list[tuple[str, Made]] = []
    while text[at] != ")":
        named = re.compile(r"\s*(\w+)\s*(=)?").match(text, at)
        if named is None:
            raise Notation(f"a slot was expected: {text[at:]}")
        name, at = named[1], named.end()
        value = Made(gap=name)
        if named[2]:
            value, at = expression(text, at)
        found.append((name, value))
        at = re.compile(r"\s*,?\s*").match(text, at).end()  # type: ignore[union-attr]
    return tuple(found), at + 1
