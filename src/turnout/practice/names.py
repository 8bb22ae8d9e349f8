"""The names a practice gives its sides, roles and places. They are data of the lexer, never part of the grammar."""

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from functools import cache

from turnout.practice.model import Group, PlaceDef, Practice

# Words for bibs and shirts: a side called one of these is a stand-in, printed in tonight's colour, without a plural.
COLOURS = frozenset({
    "amber", "blue", "red", "yellow", "green", "white", "black", "orange", "pink", "purple", "grey", "navy", "sky",
    "lime", "maroon", "violet",
})  # fmt: skip
ARTICLES = frozenset({"the", "a", "an"})
WORD = re.compile(r"[^\W_]+(?:[-'’][^\W_]+)*|[^\w\s]|_")


@dataclass(frozen=True)
class Names:
    """Sides, roles and places of a practice, and other words for them: (other word, name).

    `lists` are the places that are several places, `units` the sides that are many small sides: one of them is
    “a gate”, “a pair”. `ones` are the roles that at most one player of a side has (“the server”), `shared` those of
    them that several sides have (“keepers”, “the amber keeper”). `groups` and `ground` tell whom and what a coach's own
    words mean; names are the same without them.
    """

    sides: tuple[str, ...] = ()
    roles: tuple[str, ...] = ()
    places: tuple[str, ...] = ()
    also: tuple[tuple[str, str], ...] = ()
    lists: tuple[str, ...] = ()
    units: tuple[str, ...] = ()
    ones: tuple[str, ...] = ()
    shared: tuple[str, ...] = ()
    groups: tuple[Group, ...] = field(default=(), compare=False, repr=False)
    ground: tuple[PlaceDef, ...] = field(default=(), compare=False, repr=False)

    def all(self) -> tuple[str, ...]:
        """Every name and other word."""
        return (*self.sides, *self.roles, *self.places, *(word for word, _ in self.also))


def names_of(practice: Practice) -> Names:
    """The names of a practice."""
    return collect(practice.ground, practice.groups, practice.also_called)


def collect(
    ground: Iterable[PlaceDef], groups: Iterable[Group], also_called: Iterable[tuple[str, tuple[str, ...]]]
) -> Names:
    """Names from ground, people and `also called`."""
    ground, groups = tuple(ground), tuple(groups)
    roles = tuple(dict.fromkeys(group.role for group in groups if group.role and not group.feeds))
    ones = tuple(role for role in roles if all(group.high <= 1 for group in groups if group.role == role))
    return Names(
        tuple(dict.fromkeys(group.side for group in groups)),
        roles,
        tuple(dict.fromkeys(place.name for place in ground)),
        tuple((word, name) for name, words in also_called for word in words),
        tuple(place.name for place in ground if place.kind == "list"),
        tuple(group.side for group in groups if group.of > 1),
        ones,
        tuple(role for role in ones if sum(group.role == role for group in groups) > 1),
        groups,
        ground,
    )


def words_of(text: str) -> list[str]:
    """Text as words and marks, in one letter case and one kind of apostrophe."""
    return [word.casefold().replace("’", "'") for word in WORD.findall(text)]


def plural(name: str) -> str:
    """The plural of a name's last word: end -> ends, box -> boxes, party -> parties."""
    if re.search(r"(s|x|z|ch|sh)$", name):
        return name if name.endswith("s") else name + "es"
    if re.search(r"[^aeiou]y$", name):
        return name[:-1] + "ies"
    return name + "s"


def singular(name: str) -> str:
    """The singular of a name whose last word is a plural: gates -> gate, boxes -> box; another name as it is."""
    for ending, one in (("ies", "y"), ("xes", "x"), ("zes", "z"), ("ches", "ch"), ("shes", "sh"), ("s", "")):
        if name.endswith(ending) and plural(found := name.removesuffix(ending) + one) == name and found != name:
            return found
    return name


def spellings(name: str) -> set[str]:
    """A name as it may be written: itself, its plural, and without a plural s."""
    found = {name, plural(name), singular(name)}
    if name.endswith("s") and not name.endswith("ss"):
        found.add(name[:-1])
    return found


@cache
def lookup(names: Names) -> Mapping[str, tuple[tuple[tuple[str, ...], str, str], ...]]:
    """First word -> (all its words, SIDE | ROLE | PLACE, name), longest first."""
    kinds = [(name, "SIDE") for name in names.sides]
    kinds += [(name, "ROLE") for name in names.roles] + [(name, "PLACE") for name in names.places]
    written = [(name, kind, name) for name, kind in kinds]
    written += [(word, kind, name) for word, target in names.also for name, kind in kinds if name == target]
    found: dict[str, set[tuple[tuple[str, ...], str, str]]] = {}
    for text, kind, name in written:
        for spelling in spellings(text):
            words = tuple(words_of(spelling))
            if words:
                found.setdefault(words[0], set()).add((words, kind, name))
    return {first: tuple(sorted(some, key=lambda entry: (-len(entry[0]), entry))) for first, some in found.items()}
