"""Everyday words read against the phrasings: every way to read a stretch of them, each as what it means."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache

from turnout.practice.model import Phrase
from turnout.practice.saying.building import Value, built
from turnout.practice.saying.patterns import Choice, Fixed, Made, Node, compiled, meant
from turnout.practice.saying.sets import SETS
from turnout.practice.saying.tables import TABLES
from turnout.practice.saying.words import Token

MOST_STEPS = 200_000  # of matching in one sentence; a longer search is given up
# of these types an earlier row goes before a later one that reads as far
FIRST = ("aim", "bare", "where", "scoring", "act", "change", "then")
ALSO = {"'s": ("be", "have")}


class Lost(Exception):
    """The search became too long."""


@dataclass(frozen=True)
class Phrasing:
    """One everyday way to say something: its type, what is read and what it means."""

    type: str
    nodes: tuple[Node, ...]
    meaning: tuple[Made, ...]
    written: str


@cache
def phrasings() -> Mapping[str, tuple[Phrasing, ...]]:
    """Every declared phrasing by its type."""
    return {
        kind: tuple(Phrasing(kind, compiled(said, SETS), meant(told), said) for said, told in rows)
        for kind, rows in TABLES.items()
    }


Found = dict[int, tuple[Value, ...]]
Starts = tuple[frozenset[str], bool]  # words and kinds it may begin with (“{kind}”), and whether it may be nothing


def starts(nodes: tuple[Node, ...]) -> Starts:
    """What a sequence may begin with."""
    found: set[str] = set()
    for node in nodes:
        some, nothing = starts_of(node)
        found |= some
        if not nothing:
            return frozenset(found), False
    return frozenset(found), True


def starts_of(node: Node) -> Starts:
    """What one node may begin with."""
    if isinstance(node, Fixed):
        return frozenset({node.word}), False
    every = [starts(option) for option in node.options] if isinstance(node, Choice) else [starts_of_type(node.type)]
    return frozenset().union(*(some for some, _ in every)), any(nothing for _, nothing in every)


@cache
def starts_of_type(kind: str) -> Starts:
    """What a type may begin with; a name of the practice or a number goes by “{its kind}”."""
    every = [starts(phrasing.nodes) for phrasing in phrasings().get(kind, ())]
    return frozenset({f"{{{kind}}}"}).union(*(some for some, _ in every)), any(nothing for _, nothing in every)


@cache
def beginning(kind: str) -> tuple[tuple[frozenset[str] | None, Phrasing], ...]:
    """The phrasings of a type with what each may begin with; None for one that may be nothing."""
    found = []
    for phrasing in phrasings().get(kind, ()):
        some, nothing = starts(phrasing.nodes)
        found.append((None if nothing else some, phrasing))
    return tuple(found)


class Chart:
    """The readings of one sentence. `named` are the readings of names: (type, token where it begins) -> ends."""

    def __init__(self, tokens: list[Token], named: Mapping[tuple[str, int], tuple[tuple[int, Value], ...]]):
        self.words = [token.word for token in tokens]
        self.named = named
        self.known: dict[tuple[str, int], Found] = {}
        self.steps = 0
        self.begins = [self.beginning(at) for at in range(len(self.words) + 1)]

    def beginning(self, at: int) -> frozenset[str]:
        """What a reading may begin with at a word: the word itself, and kinds of names that stand there."""
        if at == len(self.words):
            return frozenset()
        word = self.words[at]
        kinds = {f"{{{kind}}}" for kind, place in self.named if place == at}
        return frozenset({word, *ALSO.get(word, ()), *kinds, *(("{int}",) if word.isdigit() else ())})

    def read(self, kind: str, at: int) -> Found:
        """Where readings of a type that begin at a word end, and what they mean."""
        key = (kind, at)
        if key not in self.known:
            self.known[key] = {}  # a type that begins with itself reads nothing there
            self.known[key] = self.tried(kind, at)
        return self.known[key]

    def tried(self, kind: str, at: int) -> Found:
        """Every reading of a type at a word, alike ones once."""
        found: dict[int, dict[Value, None]] = {}
        for end, value in self.named.get((kind, at), ()):
            found.setdefault(end, {})[value] = None
        if kind == "int" and at < len(self.words) and self.words[at].isdigit() and 0 < int(self.words[at]) < 1000:
            found.setdefault(at + 1, {})[int(self.words[at])] = None
        begins = self.begins[at]
        for some, phrasing in beginning(kind):
            if some is not None and not some & begins:
                continue
            settled = set(found) if kind in FIRST else set()
            for end, gaps in self.match(phrasing.nodes, at, {}):
                for value in built(phrasing.meaning, gaps) if end not in settled else ():
                    found.setdefault(end, {})[value] = None
        return {end: tuple(values) for end, values in found.items()}

    def match(self, nodes: tuple[Node, ...], at: int, gaps: dict[str, Value]) -> Iterator[tuple[int, dict[str, Value]]]:
        """Every way the nodes fit the words from a place on: where they end and what their slots hold."""
        if not nodes:
            yield at, gaps
            return
        self.steps += 1
        if self.steps > MOST_STEPS:
            raise Lost
        first, rest = nodes[0], nodes[1:]
        if isinstance(first, Fixed):
            if at < len(self.words) and self.fits(first.word, at):
                yield from self.match(rest, at + 1, gaps)
        elif isinstance(first, Choice):
            for option in first.options:
                for end, filled in self.match(option, at, gaps):
                    yield from self.match(rest, end, filled)
        else:
            for end, values in self.read(first.type, at).items():
                for value in values:
                    yield from self.match(rest, end, {**gaps, first.name: value})

    def fits(self, word: str, at: int) -> bool:
        """Whether a word of a phrasing stands there."""
        said = self.words[at]
        return said == word or word in ALSO.get(said, ())

    def whole(self, kind: str) -> tuple[Value, ...]:
        """What all the words mean as one of a type."""
        return self.read(kind, 0).get(len(self.words), ())


def phrases(value: Value) -> tuple[Phrase, ...]:
    """The trees of a value that holds rules."""
    if isinstance(value, Phrase):
        return (value,)
    return (
        tuple(inner for part in value if isinstance(part, Phrase | tuple) for inner in phrases(part))
        if isinstance(value, tuple)
        else ()
    )
