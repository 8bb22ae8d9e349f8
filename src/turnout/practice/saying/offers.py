"""The forms a sentence may be meant to have where it is not read: the nearest first, slots filled as far as they go."""

from collections.abc import Iterator
from functools import cache

from turnout.practice.binding import misfit
from turnout.practice.forms import BY_ID
from turnout.practice.model import Phrase
from turnout.practice.names import Names
from turnout.practice.printing import Printer
from turnout.practice.rules import Offer
from turnout.practice.saying.building import Value
from turnout.practice.saying.chart import Chart, Lost, starts
from turnout.practice.saying.cues import CUES, PRIOR
from turnout.practice.saying.patterns import Node, compiled
from turnout.practice.saying.resolve import Open, filled
from turnout.practice.saying.sets import SETS
from turnout.practice.saying.words import words_alike
from turnout.practice.templates import Agree, Maybe, Number, Part, Slot, Word, parts

MOST = 3
LEAST = 1.0  # cues that say less than this say nothing
READ = 0.9  # for each word of a part that reads as a whole rule
NAMED_KINDS = ("side_name", "role_name", "coach_role")
BLANK = "…"
# words that turn a meaning, and the words of an offer in which one of them is kept
TURNING = {
    "not": "not nobody no out still", "no": "no not nobody out", "nobody": "nobody no not out", "never": "not "
     "nobody no out",
    "only": "only most", "just": "only most", "except": "only", "unless": "only until", "until": "until", "before":
     "after until",
    "after": "after when", "first": "first 1", "own": "its defending own", "other": "other attacking without", "both":
     "a everyone",
    "each": "each a every", "without": "without row", "least": "least", "most": "most", "more": "most", "twice": "2 "
     "twice",
    "double": "2", "outside": "outside edge", "same": "same", "back": "back", "once": "when after until 1", "out":
     "out outside leaves",
    "behind": "behind defending",
}  # fmt: skip


def offers(chart: Chart, names: Names, meant: tuple[tuple[Phrase, ...], ...]) -> tuple[Offer, ...]:
    """Up to three forms for the words of a chart, the readings of an ambiguous sentence first."""
    found: dict[str, str] = {}
    for rules in meant:
        text = " ".join(printer(names).text(rule) for rule in rules)
        found.setdefault(rules[0].form, text)
    try:
        for form in ranked(chart):
            found.setdefault(form, offer_text(form, chart, names))
    except Lost:
        pass
    return tuple(Offer(form, text) for form, text in list(found.items())[:MOST])


def ranked(chart: Chart) -> list[str]:
    """Forms by what speaks for them, best first; those of which too little speaks are left out."""
    weights = {form: PRIOR.get(form, 0.0) for form in CUES}
    for form, rows in cues():
        weights[form] += sum(weight for nodes, weight in rows if stands(chart, nodes))
    for form, length in whole_parts(chart).items():
        weights[form] = weights.get(form, 0.0) + READ * length
    best = sorted(weights, key=lambda form: -weights[form])
    return [form for form in best if form in BY_ID and weights[form] >= LEAST]


@cache
def cues() -> tuple[tuple[str, tuple[tuple[tuple[Node, ...], float], ...]], ...]:
    """The cues of every form, ready to be matched."""
    return tuple((form, tuple((compiled(said, SETS), weight) for said, weight in rows)) for form, rows in CUES.items())


def stands(chart: Chart, nodes: tuple[Node, ...]) -> bool:
    """Whether a cue stands anywhere in the sentence."""
    some, _ = starts(nodes)
    places = [at for at in range(len(chart.words)) if some & chart.begins[at]]
    return any(next(chart.match(nodes, at, {}), None) is not None for at in places)


def whole_parts(chart: Chart) -> dict[str, int]:
    """Forms that a part of the sentence has, with the length of the longest such part in words."""
    found: dict[str, int] = {}
    for at in range(len(chart.words)):
        for end, values in chart.read("rule", at).items():
            for value in values:
                first = value[0] if isinstance(value, tuple) else value
                if isinstance(first, Phrase):
                    found[first.form] = max(found.get(first.form, 0), end - at)
    return found


def offer_text(form: str, chart: Chart, names: Names) -> str:
    """A form in words: its slots filled with what was said where nothing that turns the meaning is dropped, else with
    blanks."""
    template = parts(BY_ID[form].templates[0][1])
    read = longest_reading(form, chart, names)
    tried = [*([read] if read else []), sentence(template, fillings(template, chart, names), names)]
    whole = [text for text in tried if keeps(chart, text)]
    return whole[0] if whole else sentence(template, {}, names)


def longest_reading(form: str, chart: Chart, names: Names) -> str | None:
    """The longest part of the sentence that reads as this form, printed."""
    from turnout.practice.saying.reading import in_language

    found: list[tuple[int, str]] = []
    for at in range(len(chart.words)):
        for end, values in chart.read("rule", at).items():
            for value in values:
                if isinstance(value, Phrase) and value.form == form and (rules := in_language((value,), names)):
                    found.append((end - at, printer(names).text(rules[0])))
    return max(found)[1] if found else None


def keeps(chart: Chart, text: str) -> bool:
    """Whether an offer keeps every word that turns the meaning, every number and every side and role."""
    said = set(words_alike(text))
    if any(not set(words_alike(name)) & said for name in people(chart)):
        return False
    for word in chart.words:
        if word.isdigit() and word not in said:
            return False
        if word in TURNING and not said & {word, *TURNING[word].split()}:
            return False
    return True


def people(chart: Chart) -> list[str]:
    """The sides and roles that a sentence names, by name."""
    values = [value for (kind, _), found in chart.named.items() if kind in NAMED_KINDS for _, value in found]
    return [value for value in values if isinstance(value, str)]


def fillings(template: tuple[Part, ...], chart: Chart, names: Names) -> dict[str, Phrase | int | str]:
    """What was said for the slots of a form, each part of the sentence once, from the left."""
    found: dict[str, Phrase | int | str] = {}
    used: set[int] = set()
    for slot in (piece for piece in template if isinstance(piece, Slot)):
        for at, end, value in spans(slot, chart, names):
            if not used & set(range(at, end)):
                found[slot.name] = value
                used |= set(range(at, end))
                break
    return found


SPANS = {"who": "group", "act": "act", "place": "place", "event": "event", "how": "how", "passes": "which", "while":
 "state",
         "changes": "then"}  # fmt: skip
UNITS = {"s": "span", "t": "mins", "n": "points", "k": "int"}


def spans(slot: Slot, chart: Chart, names: Names) -> Iterator[tuple[int, int, Phrase | int | str]]:
    """The parts of the sentence that may fill a slot, longest first."""
    kind = UNITS.get(slot.name, "int") if slot.type == "int" else SPANS.get(slot.type, "")
    every = [
        (end - at, at, end, value)
        for at in range(len(chart.words))
        for end, values in chart.read(kind, at).items()
        for value in values
        if end > at
    ]
    for _, at, end, value in sorted(every, key=lambda one: (-one[0], one[1])):
        if (ready := fit(value, slot, names)) is not None:
            yield at, end, ready


def fit(value: Value, slot: Slot, names: Names) -> Phrase | int | str | None:
    """A value with nothing left open, as a slot takes it; None where it does not fit."""
    if not isinstance(value, Phrase):
        return value if isinstance(value, int) and slot.type == "int" else None
    try:
        done = filled(value, names)
        Printer().phrase(done, slot.inflection, "many")
    except (Open, ValueError, KeyError):
        return None
    return done if misfit(done) is None else None


def printer(names: Names) -> Printer:
    """The words of sentences in a practice."""
    return Printer({}, names.lists, names.units, names.ones, names.shared)


def sentence(template: tuple[Part, ...], values: dict[str, Phrase | int | str], names: Names) -> str:
    """A template in words with “…” where a slot holds nothing."""
    words = " ".join(pieces(template, values, printer(names))).replace(" ,", ",").replace(" .", ".")
    return words[:1].upper() + words[1:]


def pieces(template: tuple[Part, ...], values: dict[str, Phrase | int | str], words: Printer) -> Iterator[str]:
    """The words of a template, its optional pieces only where they are filled."""
    for piece in template:
        if isinstance(piece, Word):
            yield piece.text
        elif isinstance(piece, Agree):
            yield piece.one if number(values.get(piece.ref), template, words) == "one" else piece.many
        elif isinstance(piece, Slot):
            value = values.get(piece.name)
            yield BLANK if value is None else slot_words(piece, value, values, template, words)
        elif isinstance(piece, Maybe):
            for option in piece.options:
                if any(isinstance(slot, Slot) and slot.name in values for slot in option):
                    yield from pieces(option, values, words)
                    break


def slot_words(
    slot: Slot,
    value: Phrase | int | str,
    values: dict[str, Phrase | int | str],
    template: tuple[Part, ...],
    words: Printer,
) -> str:
    """One filled slot in words."""
    if not isinstance(value, Phrase):
        return str(value)
    agree = number(values.get(slot.number_of or ""), template, words)
    return " ".join(words.phrase(value, slot.inflection, agree))


def number(value: Phrase | int | str | None, template: tuple[Part, ...], words: Printer) -> Number:
    """The number a word agrees with; several where nothing was said."""
    return "many" if value is None else words.number(value, template)
