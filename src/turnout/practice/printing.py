"""Trees to sentences: the declared template in the wanted inflection, words agreeing in number."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from turnout.practice.forms import BY_ID
from turnout.practice.model import Phrase
from turnout.practice.names import COLOURS, Names, plural, singular
from turnout.practice.templates import Agree, Maybe, Number, Part, Slot, Word, parts

# noun phrases of a role and the words before the role when one player has it
SINGULAR = {"who.role": "the", "who.its role": "its", "who.other role": "the other side's"}


@dataclass(frozen=True)
class Printer:
    """How names print: `sides` maps stand-in side names to tonight's ({'amber': 'blue'}); of `lists` and `units` one
    is meant where somebody does something: 'a gate', 'a pair'. A role of `ones` is one player: 'the server', 'keepers'
    where it is one of `shared` and no side is named."""

    sides: Mapping[str, str] = field(default_factory=dict)
    lists: tuple[str, ...] = ()
    units: tuple[str, ...] = ()
    ones: tuple[str, ...] = ()
    shared: tuple[str, ...] = ()

    def text(self, phrase: Phrase) -> str:
        """A whole sentence with its capital and full stop."""
        words = " ".join(self.phrase(phrase, "bare", "many"))
        words = words.replace(" ,", ",").replace(" .", ".")
        return words[:1].upper() + words[1:]

    def phrase(self, phrase: Phrase, inflection: str, number: Number) -> list[str]:
        """The words of a phrase in an inflection; raises ValueError when it cannot stand there."""
        template = BY_ID[phrase.form].template(inflection)
        if template is None:
            raise ValueError(f"{phrase.form} has no inflection {inflection}")
        return self.parts(parts(template), phrase, number)

    def parts(self, template: tuple[Part, ...], phrase: Phrase, number: Number) -> list[str]:
        """The words of a template filled from a phrase."""
        words: list[str] = []
        for piece in template:
            if isinstance(piece, Word):
                words.append(piece.text)
            elif isinstance(piece, Agree):
                chosen = number if piece.ref == "@" else self.number(phrase[piece.ref], template)
                words.append(piece.one if chosen == "one" else piece.many)
            elif isinstance(piece, Slot):
                words += self.slot(piece, phrase, template)
            else:
                words += self.maybe(piece, phrase, number)
        return words

    def maybe(self, piece: Maybe, phrase: Phrase, number: Number) -> list[str]:
        """The option of an optional piece whose slots are filled, if any."""
        for option in piece.options:
            if all(phrase.get(slot.name) is not None for slot in option if isinstance(slot, Slot)):
                return self.parts(option, phrase, number)
        return []

    def slot(self, slot: Slot, phrase: Phrase, template: tuple[Part, ...]) -> list[str]:
        """The words of one filled slot."""
        value = phrase[slot.name]
        if isinstance(value, Phrase):
            if slot.type == "who" and self.acts_alone(value, template):
                return [one(singular(str(value["side"])))]
            if slot.type == "who" and (role := value.get("role")) in self.ones and value.form in SINGULAR:
                return self.single(value, str(role))
            number = self.number(phrase[slot.number_of], template) if slot.number_of else "many"
            return self.phrase(value, slot.inflection, number)
        if isinstance(value, int):
            return [str(value)]
        return [self.name(value, slot)]

    def acts_alone(self, value: Phrase | str | int, template: tuple[Part, ...]) -> bool:
        """Whether this is one of many small sides that does something: 'a pair scores 1 for …'."""
        does = any(isinstance(piece, Slot) and piece.type == "act" for piece in template)
        return does and isinstance(value, Phrase) and value.form == "who.side" and value["side"] in self.units

    def single(self, value: Phrase, role: str) -> list[str]:
        """A role that one player has: 'the server', 'the amber keeper', 'its keeper'; 'keepers' of several sides."""
        if value.form != "who.role":
            return [SINGULAR[value.form], noun(role)]
        side = value.get("side")
        if side is None and role in self.shared:
            return [plural(noun(role))]
        return ["the", *([tonight_name(str(side), self.sides)] if side else []), noun(role)]

    def alone(self, value: Phrase | str | int) -> bool:
        """Whether a noun phrase is one player because its role is."""
        if not isinstance(value, Phrase) or value.form not in SINGULAR or value.get("role") not in self.ones:
            return False
        return value.form != "who.role" or value.get("side") is not None or value.get("role") not in self.shared

    def number(self, value: Phrase | str | int, template: tuple[Part, ...]) -> Number:
        """The number a word agrees with."""
        return "one" if self.acts_alone(value, template) or self.alone(value) else number_of(value)

    def name(self, name: str, slot: Slot) -> str:
        """A side, role or place as the slot wants it."""
        if slot.type == "side":
            return side_name(tonight_name(name, self.sides), slot.inflection)
        if slot.type == "role":
            return name
        if slot.inflection == "one" or (slot.inflection == "any" and name in self.lists):
            return singular(name) if slot.inflection == "one" else one(singular(name))
        return the(name)


def noun(role: str) -> str:
    """A role as one player: 'server' and 'keeper' as they are, else 'wide player'."""
    return role if role.endswith(("er", "or")) else f"{role} player"


def tonight_name(name: str, sides: Mapping[str, str]) -> str:
    """Tonight's name of a side: another colour for a stand-in, 'own shirt' for 'own'; a job name stays."""
    if name not in COLOURS or name not in sides:
        return name
    return "own shirt" if sides[name] == "own" else sides[name]


def side_name(name: str, inflection: str) -> str:
    """A side: colours as they are ('blue'), other names in the plural ('neutrals', 'own shirts')."""
    if name in COLOURS or inflection == "adjective":
        return name
    return plural(name) if inflection == "noun" else f"the {plural(name)}"


def the(name: str) -> str:
    """A place with its article; a name that ends in a letter or number ('box 2', 'goal A') takes none."""
    last = name.split()[-1]
    return name if len(last) == 1 or last.isdigit() else f"the {name}"


def one(name: str) -> str:
    """A name after 'a' or 'an'."""
    return f"{'an' if name[0].casefold() in 'aeiou' else 'a'} {name}"


def number_of(value: Phrase | str | int) -> Number:
    """Whether a noun phrase or a count takes the singular."""
    if isinstance(value, int):
        return "one" if value == 1 else "many"
    if isinstance(value, Phrase) and isinstance(count := value.get("n"), int):
        return number_of(count)
    return "many" if isinstance(value, Phrase) and BY_ID[value.form].many else "one"


def print_rule(phrase: Phrase, names: Names | None = None, sides: Mapping[str, str] | None = None) -> str:
    """The canonical sentence of a tree. `sides` maps stand-in side names to tonight's names, such as
    {'amber': 'blue'}; a name that says a job ('neutral') stays. `names` tells which names are lists of places and many
    small sides."""
    known = names or Names()
    return Printer(sides or {}, known.lists, known.units, known.ones, known.shared).text(phrase)
