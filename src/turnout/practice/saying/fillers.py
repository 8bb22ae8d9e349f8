"""Words that only fill a sentence: they go before it is read. None of them turns a meaning."""

import itertools

from turnout.practice.saying.words import Token, words_alike

FILLERS = (
    "please", "remember", "okay", "ok", "right then", "now then", "of course", "obviously",
    "basically", "really", "you know", "full stop", "listen", "today", "tonight", "for now", "from now on",
    "come on", "everybody listen", "i want to see", "i want", "let us say", "we will say", "in this one",
    "in this game", "in this practice", "this time", "as usual", "no arguments", "no arguing", "straight away",
     "right away", "at this age", "in here", "that be your lot", "as normal",
    "no excuses", "simple as that",
    "nice and simple", "that be rule", "as normal", "like normal", "no argument", "no messing", "straight up",
    "so do not go chase it", "so keep count", "off you go", "here we go", "no moan", "and no moan", "so be quick",
    "so think", "so keep it moving", "so move it quick", "so look up", "so get your head up", "so concentrate",
    "simple", "no question", "all session", "all game", "or so", "well done", "for this", "so be ready", "whole time",
    "do not worry about it", "at all time", "at all", "quick as you like", "strictly", 
    "under control", "throughout", "beforehand", "at his foot", "at their foot", "at your foot", "straight off",
     "or more", "in total",
    "as the usual rule", "new rule", "whichever come first", "ball live", "ball stay live", "it be live", "on the "
     "coach call", "rule be", "here be rule", "rule", "next up", "so stay alert", "so no wait around", "no wait "
     "around",
    "no waiting for me to say so", "with no break in play", "no break in play", "whatever happen", "as ever",
    "anywhere before that do not worry about it", "doesn't matter who", "no matter who", "it do not matter who",
    "i do not care how", "so do not stand there", "so switch on", "so react", "so react quickly", "so press hard",
    "so work hard", "actually", "by the way", "and keep it moving",
)  # fmt: skip
# words that may stand at the beginning of a sentence and say nothing there
OPENERS = (
    "right",
    "well",
    "now",
    "mind",
    "so",
    "and",
    "but",
    "ok",
    "then",
    "also",
    "oh",
    "just so you know",
    "remember that",
    "note that",
    "because",
)


# words of talk: a clause of nothing else, between two marks, says no rule
TALK = """
quick quickly sharp hard proper properly clean cleanly nice nicely easy fair fun simple simply head eye foot toe
sole heel body shape angle patient calm energy effort intensity breather drink water voice loud loudly hear listen
moan argue complain chase worry think scan look see know remember thing idea way reason today tonight match real
saturday life world brave clever smart alert ready awake concentrate concentration focus sprint hurry rush panic
sulk cheat hide wait watch imagine pretend picture love hate like happy sorry thanks thank cheer clap smile laugh
silly daft lazy slow slowly tired fresh warm cold wet dry sun rain wind clock tick simples honest honestly luck
lucky unlucky trust mistake brilliant great lovely super good better best bad worse encourage reward praise learn
lesson question ask answer tell explain understand clear show idea tempo rhythm pace speed busy lively movement
support communicate talk name confident confidence relax pressure composure decision decide choose pick careful
care matter important key main top big small bit lot plenty
"""
PLAIN = """
i you he she they we it that this those these them us me my your our their his her to of and so but because cos for
with as like on at up there here then about be do have will would make let want try more much very too what who how
why where which
"""
ENDERS = {word for text in ("either", "too", "though", "anyway", "instead") for word in words_alike(text)}
HARMLESS = set(words_alike(TALK))
FUNCTION = set(words_alike(PLAIN))
IDLE = set(words_alike("chase moan argue complain worry hide panic rush cheat sulk wait watch ask slow"))


def spoken(tokens: list[Token], marks: list[int], named: frozenset[int]) -> list[Token]:
    """The tokens without clauses that are talk from one mark to the next."""
    ends = [-1, *marks, tokens[-1].at + 1 if tokens else 0]
    clauses = [[token for token in tokens if low < token.at < high] for low, high in itertools.pairwise(ends)]
    return [token for clause in clauses if not talk(clause) and not explains(clause, named) for token in ended(clause)]


# an explanation begins so, and says no rule where none of these words stands in it
SO = {("so",), ("because",), ("cos",), ("that", "way"), ("which", "mean"), ("mean",), ("so", "that")}
RULES = """
not no never nobody only except unless until before after first own other both each every without least most more
than twice double same second swap change join become start restart begin score count point goal worth tackle touch
pass stay keep enter leave win lose loser winner turn out place minute time free allow must may next bib offside
head shoot when if while whenever once in
"""
RULED = set(words_alike(RULES))


def explains(clause: list[Token], named: frozenset[int]) -> bool:
    """Whether a clause gives the reason of a rule and no rule: no number, no name, no word that turns a meaning."""
    words = [token.word for token in clause]
    if not any(tuple(words[: len(begin)]) == begin for begin in SO):
        return False
    return not any(word.isdigit() or word in RULED for word in words) and not any(token.at in named for token in clause)


def ended(clause: list[Token]) -> list[Token]:
    """A clause without what only ends it."""
    while len(clause) > 1 and clause[-1].word in ENDERS:
        clause = clause[:-1]
    return clause


def talk(clause: list[Token]) -> bool:
    """Whether a clause has talk and nothing but talk; “not” only before what a player should not idle with."""
    words = [token.word for token in clause]
    if words == ["player"]:  # “lads,” spoken to
        return True
    after = [*words, ""][1:]
    known = all(
        word in HARMLESS or word in FUNCTION or (word == "not" and follows in IDLE)
        for word, follows in zip(words, after, strict=True)
    )
    return known and any(word in HARMLESS for word in words)


def kept(tokens: list[Token], marks: list[int], named: frozenset[int] = frozenset()) -> list[Token]:
    """The tokens without what only fills, longest first."""
    tokens = spoken(tokens, marks, named)
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
