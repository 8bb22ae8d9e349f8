"""One rule sentence: read into a tree, or answered with where it fails and what could stand there."""

import math
from dataclasses import dataclass

from turnout.practice.binding import misfit
from turnout.practice.canonical import canonical
from turnout.practice.forms import FORMS
from turnout.practice.grammar import MOST_WORDS, Unread, read
from turnout.practice.lexer import Piece, keywords, pieces
from turnout.practice.model import Phrase
from turnout.practice.names import Names, spellings, words_of
from turnout.practice.printing import Printer, print_rule
from turnout.problems import TurnoutError
from turnout.reading import nearest

__all__ = ["Offer", "RuleError", "parse_rule", "parse_rules", "print_rule"]

SHOWN_EXPECTED = 6  # words listed as possible before “…”
LEAST_LIKENESS = 0.3  # of an example shown; lower shares only words such as “the”
MOST_TRIED = 6  # near spellings tried in the sentence
NUMBER_WORDS = {
    "one": "1", "two": "2", "three": "3", "four": "4", "five": "5", "six": "6", "seven": "7", "eight": "8", "nine": "9",
    "ten": "10", "eleven": "11", "twelve": "12",
}  # fmt: skip


@dataclass(frozen=True)
class Offer:
    """A form that a sentence may be meant to have, its slots filled as far as they go (“…”: nothing was said)."""

    form: str
    text: str


class RuleError(TurnoutError):
    """A sentence that cannot be read: `offset` is the character where it fails, `read` the word there; `offers` are
    the nearest forms, best first."""

    def __init__(
        self, offset: int, read: str, expected: str, nearest: str | None = None, offers: tuple[Offer, ...] = ()
    ):
        self.offset = offset
        self.read = read
        self.expected = expected
        self.nearest = nearest
        self.offers = offers
        super().__init__(f"read “{read}”; {expected}")

    def with_offers(self, offers: tuple[Offer, ...]) -> "RuleError":
        """The same, with the nearest forms told, unless a slip of the pen is the nearer fault."""
        slip = self.nearest is not None and not self.nearest.isdigit()  # a number word is read anyway
        if slip or not offers:
            return RuleError(self.offset, self.read, self.expected, self.nearest, offers)
        told = self.expected.partition("; a sentence like it: ")[0]
        listed = " or ".join(f"“{offer.text}”" for offer in offers)
        return RuleError(self.offset, self.read, f"{told}; did you mean {listed}", None, offers)


def parse_rules(text: str, names: Names) -> tuple[Phrase, ...]:
    """The rules a sentence says: as the language has it, or else in everyday words where exactly one meaning is left.
    Raises RuleError located at the word where the language stops, with the nearest forms."""
    try:
        return (parse_rule(text, names),)
    except RuleError as error:
        from turnout.practice.saying.reading import understood

        found, offers = understood(text, names)
        if found:
            return found
        raise error.with_offers(offers) from None


def parse_rule(text: str, names: Names) -> Phrase:
    """The tree of a sentence in the words of the language; raises RuleError located at the word where it fails."""
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
    return canonical(found)


def said_as(phrase: Phrase) -> str:
    """A phrase in words, for a message."""
    words = Printer().phrase(phrase, "bare", "many")
    return " ".join(words)


def explain(error: Unread, words: list[Piece], names: Names) -> RuleError:
    """What stopped the reading, what could stand there and the nearest spelling or the nearest form."""
    if error.trees > 1:
        return RuleError(0, words[0].written, "this sentence reads two ways with these names; rename a role or place")
    if len(words) > MOST_WORDS:
        return RuleError(0, words[0].written, f"one sentence has at most {MOST_WORDS} words")
    stopped = words[error.word]
    if error.expected <= {"$END"}:
        return RuleError(stopped.at, stopped.written, "this is a second sentence; give it a line of its own")
    at_end = stopped.word == "." and error.word == len(words) - 1
    near = spelling(error.word, words, names)
    wanted = f"here stands {listed(error.expected, names)}"
    if near is None and (example := likely_form(words)):
        wanted += f"; a sentence like it: “{example}”"
    return RuleError(stopped.at, "the end of the sentence" if at_end else stopped.written, wanted, near)


def spelling(at: int, words: list[Piece], names: Names) -> str | None:
    """The nearest word with which the sentence reads on; a number word as digits. A capital stays one."""
    wrong = words[at].written
    if not wrong[0].isalpha():
        return None
    tried = [NUMBER_WORDS[wrong.casefold()]] if wrong.casefold() in NUMBER_WORDS else near_words(wrong, names)
    for word in tried[:MOST_TRIED]:
        text = " ".join([*(w.word for w in words[:at]), word, *(w.word for w in words[at + 1 :])])
        if reads_to(text, names) > at:
            return word.capitalize() if wrong[0].isupper() else word
    return None


def near_words(wrong: str, names: Names) -> list[str]:
    """Every word of the language or of a name that is near in spelling, nearest first."""
    known = {*keywords(), *(word for name in names.all() for form in spellings(name) for word in words_of(form))}
    known = {word for word in known if word[0].isalpha()} - {wrong.casefold()}
    found = []
    while near := nearest(wrong, sorted(known)):
        found.append(near)
        known.remove(near)
    return found


def reads_to(text: str, names: Names) -> int:
    """The word at which the reading of a text stops; past the last word when it reads whole."""
    try:
        read(text, names)
    except Unread as error:
        return error.word
    return len(pieces(text))


def listed(terminals: set[str], names: Names) -> str:
    """What could stand here, as a short list."""
    said: list[str] = ["a number from 1 to 999"] if "INT" in terminals else []
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


def begins(example: str) -> str:
    """The first fixed word of an example; "" where it begins with a name."""
    return keywords().get(pieces(example)[0].word, "")


def likely_form(words: list[Piece]) -> str | None:
    """The example of the form that shares most words with what was written, rare words weighing more; None when too
    little is shared."""
    written = {keywords().get(piece.word, piece.word) for piece in words[:-1]}
    shapes = {form.example: {keywords().get(piece.word, "") for piece in pieces(form.example)[:-1]} for form in FORMS}
    rarity = {word: 1 / sum(word in shape for shape in shapes.values()) for shape in shapes.values() for word in shape}

    def likeness(example: str) -> float:
        shared = sum(rarity[word] for word in shapes[example] & written)
        shared += begins(example) == keywords().get(words[0].word)
        return shared / math.sqrt(sum(rarity[word] for word in shapes[example]))

    best = max(shapes, key=likeness)
    return best if likeness(best) >= LEAST_LIKENESS else None
