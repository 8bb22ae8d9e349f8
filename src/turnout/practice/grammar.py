"""The canonical grammar, built from the declarations for an LALR parser, and trees read with it."""

from dataclasses import dataclass
from functools import cache
from typing import Any

from turnout.practice.forms import ENTRIES
from turnout.practice.lexer import Piece, Reading, keywords, pieces, readings, terminal
from turnout.practice.model import Phrase
from turnout.practice.names import Names
from turnout.practice.templates import Entry, Slot, expand, parts

NAME_TERMINALS = {"side": "SIDE", "role": "ROLE", "place_name": "PLACE", "int": "INT"}
MOST_WORDS = 200  # a longer text is not one sentence
MOST_READINGS = 32  # live forks; more cannot arise from names a person would give


@dataclass(frozen=True)
class Production:
    """One line of the grammar: whose phrase it is and which slots its values fill, in order."""

    entry: Entry
    left: str
    right: tuple[str, ...]
    slots: tuple[str, ...]


class Unread(Exception):
    """A sentence the grammar cannot read: the word where it stopped and the terminals that could have stood there."""

    def __init__(self, word: int, expected: set[str], trees: int = 0):
        self.word = word
        self.expected = expected
        self.trees = trees
        super().__init__(f"cannot read word {word}")


def symbol(kind: str, inflection: str) -> str:
    """The nonterminal of a type in an inflection; noun phrases have one, whatever the inflection."""
    return kind if kind == "who" or inflection == "bare" else f"{kind}_{inflection}"


@cache
def productions() -> tuple[Production, ...]:
    """Every production, each symbol sequence once; raises ValueError when two phrases read alike."""
    found: dict[tuple[str, tuple[str, ...]], Production] = {}
    for entry in ENTRIES:
        for inflection, template in (*entry.templates, *entry.also):
            for shape in expand(parts(template)):
                made = production(entry, symbol(entry.type, inflection), shape)
                before = found.setdefault((made.left, made.right), made)
                if before.entry.id != entry.id:
                    raise ValueError(f"{entry.id} and {before.entry.id} read alike: {' '.join(made.right)}")
    return tuple(found.values())


def production(entry: Entry, left: str, shape: tuple[Any, ...]) -> Production:
    """One shape of a template as a line of the grammar."""
    right, filled = [], []
    for place, piece in enumerate(shape):
        if isinstance(piece, Slot):
            right.append(NAME_TERMINALS.get(piece.type) or symbol(piece.type, piece.inflection))
            filled.append(piece.name)
        elif (
            place == 0
            and getattr(piece, "text", "") == "the"
            and isinstance(shape[1], Slot)
            and (shape[1].type in NAME_TERMINALS)
        ):
            continue  # the lexer reads an article and a name as one
        else:
            right.append(terminal(getattr(piece, "text", None) or piece.one))
    return Production(entry, left, tuple(right), tuple(filled))


def grammar_text() -> str:
    """The grammar in lark's notation: one numbered alias for each production."""
    rules: dict[str, list[str]] = {}
    for number, made in enumerate(productions()):
        rules.setdefault(made.left, []).append(f"{' '.join(made.right)} -> p{number}")
    declared = sorted({*keywords().values(), *NAME_TERMINALS.values()})
    lines = [f"{left}: " + "\n  | ".join(options) for left, options in rules.items()]
    return "start: rule\n" + "\n".join(lines) + f"\n%declare {' '.join(declared)}\n"


def build(*, strict: bool = False) -> Any:
    """A lark parser for the language. `strict` refuses every conflict, which proves that no sentence reads two ways
    (names apart)."""
    from lark import Lark
    from lark.lexer import Lexer

    class Handed(Lexer):
        """Tokens are handed to the parser one by one, so there is nothing to lex."""

        def __init__(self, conf: Any):
            pass

        def lex(self, lexer_state: Any, parser_state: Any) -> Any:
            return iter(())

    return Lark(grammar_text(), parser="lalr", lexer=Handed, strict=strict)


@cache
def parser() -> Any:
    """The parser, built once in a process."""
    return build()


def read(text: str, names: Names) -> Phrase:
    """The tree of a sentence; raises Unread."""
    words = pieces(text)
    if len(words) > MOST_WORDS:
        raise Unread(MOST_WORDS, set())
    return swift(words, names) or careful(words, names)


def swift(words: list[Piece], names: Names) -> Phrase | None:
    """The one tree of a sentence, None where there is none or more; states are copied only where a word reads two
    ways, which takes half the time."""
    alive = [(parser().parse_interactive(""), 0)]
    done: list[Any] = []
    while alive:
        state, at = alive.pop()
        if at == len(words):
            done.append(state)
            continue
        fits = [reading for reading in readings(words, at, names) if reading.terminal in state.choices()]
        states = [state if number == 0 else state.copy(deepcopy_values=False) for number in range(len(fits))][::-1]
        for one, reading in zip(states, fits, strict=True):
            if len(alive) < MOST_READINGS and fed(one, reading):
                alive.append((one, reading.end))
    trees = {phrase(tree) for state in done if (tree := finished(state)) is not None}
    return trees.pop() if len(trees) == 1 else None


def fed(state: Any, reading: Reading) -> bool:
    """Whether the parser takes one more token; it does so in place."""
    from lark import Token, UnexpectedToken

    try:
        state.feed_token(Token(reading.terminal, reading.value))
    except UnexpectedToken:
        return False
    return True


def careful(words: list[Piece], names: Names) -> Phrase:
    """The tree of a sentence, or where it stops and what could have stood there; raises Unread."""
    alive = [(parser().parse_interactive(""), 0)]
    furthest, stuck = 0, [alive[0][0]]
    done: list[Any] = []
    while alive:
        state, at = alive.pop()
        if at == len(words):
            done.append(state)
            continue
        moved = [step for reading in readings(words, at, names) if (step := advance(state, reading))]
        if not moved and at >= furthest:
            stuck = [*stuck, state] if at == furthest else [state]
            furthest = at
        alive += moved[: MOST_READINGS - len(alive)]
    return only_tree(done, furthest, stuck)


def advance(state: Any, reading: Reading) -> tuple[Any, int] | None:
    """The parser after one more token, or None when the token cannot stand there; the state is kept."""
    if reading.terminal not in state.choices():
        return None
    ahead = state.copy(deepcopy_values=False)
    return (ahead, reading.end) if fed(ahead, reading) else None


def only_tree(done: list[Any], furthest: int, stuck: list[Any]) -> Phrase:
    """The one tree that came through the text."""
    trees = {phrase(tree) for state in done if (tree := finished(state)) is not None}
    if len(trees) == 1:
        return trees.pop()
    expected = {name for state in stuck for name in state.accepts()}
    raise Unread(furthest, expected, len(trees))


def finished(state: Any) -> Any:
    """The tree of a parser that has seen a whole sentence, else None."""
    from lark import UnexpectedToken

    try:
        return state.feed_eof().children[0]
    except UnexpectedToken:
        return None


def phrase(tree: Any) -> Phrase:
    """A parser's tree as a phrase: its declaration and its filled slots, in the order of the template."""
    made = productions()[int(tree.data[1:])]
    values = [phrase(child) if hasattr(child, "data") else child.value for child in tree.children]
    return Phrase(made.entry.id, tuple(zip(made.slots, values, strict=True)))
