"""Words that only fill a sentence: they go before it is read. None of them turns a meaning."""

from turnout.practice.saying.words import Token, words_alike

FILLERS = (
    "lads", "girls", "guys", "please", "remember", "okay", "ok", "right then", "now then", "of course", "obviously",
    "basically", "really", "mind", "you know", "full stop", "listen", "today", "tonight", "for now", "from now on",
    "come on", "folks", "everybody listen", "i want to see", "i want", "let us say", "we will say", "in this one",
    "in this game", "in this practice", "this time", "as usual", "no arguments", "no excuses", "simple as that",
    "nice and simple", "that be rule", "as normal", "like normal", "no argument", "no messing", "straight up",
    "so do not go chase it", "so keep count", "off you go", "here we go", "no moan", "and no moan", "so be quick",
    "so think", "so keep it moving", "so move it quick", "so look up", "so get your head up", "so concentrate",
    "simple", "no question", "all session", "all game", "or so", "well done", "for this", "so be ready", "whole time",
    "do not worry about it", "at all time", "at all", "lads please", "quick as you like", "strictly", "then lads",
    "now", "new rule", "rule be", "here be rule", "rule", "next up", "so stay alert", "so no wait around", "no wait around",
    "no waiting for me to say so", "with no break in play", "no break in play", "whatever happen", "as ever",
    "anywhere before that do not worry about it", "doesn't matter who", "no matter who", "it do not matter who",
    "i do not care how", "so do not stand there", "so switch on", "so react", "so react quickly", "so press hard",
    "so work hard", "okay everyone", "right everyone", "right", "well", "actually", "by the way", "and keep it moving",
)  # fmt: skip
# words that may stand at the beginning of a sentence and say nothing there
OPENERS = ("so", "and", "but", "ok", "then", "also", "oh", "just so you know", "remember that", "note that", "because")


def kept(tokens: list[Token]) -> list[Token]:
    """The tokens without what only fills, longest first."""
    left, at = [], 0
    while at < len(tokens):
        step = longest(tokens, at, FILLED)
        if not step:
            left.append(tokens[at])
        at += step or 1
    while left and (step := longest(left, 0, OPENING)):
        left = left[step:]
    return left


def longest(tokens: list[Token], at: int, table: dict[str, list[tuple[str, ...]]]) -> int:
    """How many words of a filler begin there."""
    for words in table.get(tokens[at].word, ()):
        if tuple(token.word for token in tokens[at : at + len(words)]) == words:
            return len(words)
    return 0


def by_first(said: tuple[str, ...]) -> dict[str, list[tuple[str, ...]]]:
    """Phrases by their first word, the longest first."""
    found: dict[str, list[tuple[str, ...]]] = {}
    for words in sorted({tuple(words_alike(text)) for text in said}, key=len, reverse=True):
        if words:
            found.setdefault(words[0], []).append(words)
    return found


FILLED, OPENING = by_first(FILLERS), by_first(OPENERS)
