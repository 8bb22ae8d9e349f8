"""One rule sentence: read into a tree, or answered with where it fails and what could stand there."""

from turnout.practice.binding import misfit
from turnout.practice.forms import FORMS
from turnout.practice.grammar import Unread, read
from turnout.practice.lexer import Piece, keywords, pieces
from turnout.practice.model import Phrase
from turnout.practice.names import Names, spellings
from turnout.practice.printing import Printer, print_rule
from turnout.problems import TurnoutError
from turnout.reading import nearest

__all__ = ["RuleError", "parse_rule", "print_rule"]

SHOWN_EXPECTED = 6  # words listed as possible before “…”
NUMBER_WORDS = {
    "one": "1", "two": "2", "three": "3", "four": "4", "five": "5", "six": "6", "seven": "7", "eight": "8", "nine": "9",
    "ten": "10", "eleven": "11", "twelve": "12",
}  # fmt: skip


class RuleError(TurnoutError):
    """A sentence that cannot be read: `offset` is the character where it fails, `read` the word there."""

    def __init__(self, offset: int, read: str, expected: str, nearest: str | None = None):
        self.offset = offset
        self.read = read
        self.expected = expected
        self.nearest = nearest
        super().__init__(f"read “{read}”; {expected}")


def parse_rule(text: str, names: Names) -> Phrase:
    """The tree of a rule sentence; raises RuleError located at the word where it fails."""
    if not text.strip():
        raise RuleError(0, text, "a rule is a sentence")
    try:
        found = read(text, names)
    except Unread as error:
        raise explain(error, pieces(text), names) from None
    fault = misfit(found)
    if fault is not None:
        said = said_as(fault.phrase)
        offset = text.casefold().find(said.casefold())
        raise RuleError(max(0, offset), said, fault.expected)
    return found


def said_as(phrase: Phrase) -> str:
    """A phrase in words, for a message."""
    words = Printer().phrase(phrase, "bare", "many")
    return " ".join(words)


def explain(error: Unread, words: list[Piece], names: Names) -> RuleError:
    """What stopped the reading, what could stand there and the nearest spelling or the nearest form."""
    if error.trees > 1:
        return RuleError(0, words[0].written, "this sentence reads two ways with these names; rename a role or place")
    if error.word >= len(words):
        return RuleError(0, words[0].written, f"one sentence has at most {len(words) - 1} words")
    stopped = words[error.word]
    possible = candidates(error.expected, names)
    at_end = stopped.word == "." and error.word == len(words) - 1
    read_word = "the end of the sentence" if at_end else stopped.written
    near = None if at_end else spelling(stopped.written, possible, names)
    wanted = f"here stands {listed(error.expected, names)}" if error.expected else "this is more than one sentence"
    if near is None:
        wanted += f"; a sentence like it: “{likely_form(words)}”"
    return RuleError(stopped.at, read_word, wanted, near)


def candidates(terminals: set[str], names: Names) -> list[str]:
    """Every word or name that one of the terminals stands for."""
    found = [word for word, terminal in keywords().items() if terminal in terminals]
    for terminal, some in (("SIDE", names.sides), ("ROLE", names.roles), ("PLACE", names.places)):
        if terminal in terminals:
            also = [word for word, name in names.also if name in some]
            found += [spelling for name in (*some, *also) for spelling in sorted(spellings(name))]
    return found


def spelling(word: str, possible: list[str], names: Names) -> str | None:
    """The nearest word that could stand here, else a number word as digits."""
    if word.casefold() in NUMBER_WORDS:
        return NUMBER_WORDS[word.casefold()]
    near = nearest(word, possible) or nearest(word, [*names.all(), *keywords()])
    return near.capitalize() if near and word[:1].isupper() else near


def listed(terminals: set[str], names: Names) -> str:
    """What could stand here, as a short list."""
    said: list[str] = ["a number"] if "INT" in terminals else []
    for terminal, what, some in (
        ("ROLE", "a role", names.roles), ("SIDE", "a side", names.sides), ("PLACE", "a place", names.places),
    ):  # fmt: skip
        if terminal in terminals:
            said.append(f"{what} ({', '.join(some)})" if some else what)
    words = sorted({min(group, key=len) for group in by_terminal(terminals)})
    said += [f"“{word}”" for word in words]
    more = " …" if len(said) > SHOWN_EXPECTED else ""
    return " or ".join(said[:SHOWN_EXPECTED]) + more


def by_terminal(terminals: set[str]) -> list[list[str]]:
    """The words of each fixed terminal."""
    return [
        [word for word, own in keywords().items() if own == terminal]
        for terminal in sorted(terminals)
        if terminal in keywords().values()
    ]


def likely_form(words: list[Piece]) -> str:
    """The example of the form that shares most words with what was written; rare words weigh more."""
    written = {keywords().get(piece.word, piece.word) for piece in words}
    shapes = [({keywords().get(p.word, "") for p in pieces(form.example)}, form) for form in FORMS]
    counts = {word: sum(word in shape for shape, _ in shapes) for shape, _ in shapes for word in shape}

    def likeness(shape: set[str]) -> float:
        shared = sum(1 / counts[word] for word in shape & written)
        return shared / (1 + sum(1 / counts[word] for word in shape))

    return max(shapes, key=lambda pair: likeness(pair[0]))[1].example
