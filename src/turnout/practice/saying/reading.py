"""A sentence in everyday words, read only where exactly one meaning of all its words is left."""

from turnout.practice.binding import misfit
from turnout.practice.canonical import canonical
from turnout.practice.grammar import Unread, read
from turnout.practice.lexer import pieces
from turnout.practice.model import Phrase
from turnout.practice.names import Names
from turnout.practice.printing import print_rule
from turnout.practice.rules import Offer
from turnout.practice.saying.chart import Chart, Lost, phrases
from turnout.practice.saying.coach_names import named_readings, words_of_names
from turnout.practice.saying.fillers import kept
from turnout.practice.saying.offers import offers
from turnout.practice.saying.resolve import Open, resolved
from turnout.practice.saying.words import alike

MOST_WORDS = 60  # of a sentence in everyday words


def understood(text: str, names: Names) -> tuple[tuple[Phrase, ...], tuple[Offer, ...]]:
    """The rules a sentence says, if exactly one meaning of all its words is left; else the nearest forms."""
    chart = chart_of(text, names)
    found = meanings(chart, names)
    if len(found) == 1:
        return found[0], ()
    return (), offers(chart_of(text, names), names, found)


def meanings(chart: Chart, names: Names) -> tuple[tuple[Phrase, ...], ...]:
    """Every meaning that all the words of a sentence have together, as rules in the language."""
    try:
        values = chart.whole("rules")
    except Lost:
        return ()
    found = {rules: None for value in values if (rules := in_language(phrases(value), names))}
    turning = [phrases(value) for value in values if Phrase("ROTATE") in phrases(value)]
    whole = [rules for said in turning if (rules := in_language(said, names))]
    found = dict.fromkeys(whole) if whole else found
    fewest = min((len(rules) for rules in found), default=0)
    return tuple(rules for rules in found if len(rules) == fewest)


def chart_of(text: str, names: Names) -> Chart:
    """The sentence ready to be read, what only fills it left out."""
    words = pieces(text)[: MOST_WORDS + 1]
    marks = [number for number, piece in enumerate(words) if not piece.word[0].isalnum()]
    tokens = kept(alike([piece.word for piece in words]), marks, words_of_names(words, names))
    return Chart(tokens, named_readings(words, tokens, names))


def in_language(rules: tuple[Phrase, ...], names: Names) -> tuple[Phrase, ...]:
    """Rules as the language reads them when they are printed; none where one cannot be said."""
    try:
        whole = [canonical(made) for rule in rules for made in resolved(rule, names)]
    except Open:
        return ()
    said = []
    for made in whole:
        try:
            again = canonical(read(print_rule(made, names), names))
        except (Unread, ValueError, KeyError):
            return ()
        if misfit(again) is not None or misfit(made) is not None:
            return ()
        said.append(again)
    return tuple(dict.fromkeys(said))
