"""Renaming a place, side or role of a practice file: wherever it is named, and nowhere else.

The wanted practice is the one there is with one name exchanged. The file is edited line by line, each in the coach's
own words where they say the new thing, and must then read as exactly that practice.
"""

import re
from collections.abc import Callable

from turnout.practice.exchange import Exchange, Kind, told
from turnout.practice.model import Practice
from turnout.practice.names import Names, collect, names_of, plural, singular, spellings
from turnout.practice.printing import print_rule
from turnout.practice.read import practice_of
from turnout.practice.rules import RuleError, parse_rules
from turnout.practice.writing import sentence_ways
from turnout.problems import BadInput, Problem
from turnout.reading import Items, Pairs, Report, Text, load_text, nearest
from turnout.reading.edit import Draft, Way

# what stands round a place in a ground or people line
BEFORE, BEHIND = r"(^|, ?|\(| of | in | from | as )((?:the )?)", r"(?=$| ?[,)]| from | with | without\b)"


def rename(draft: Draft, old: str, new: str, *, kind: Kind | None = None) -> Draft:
    """The draft with a place, side or role called `new`; `kind` only where one word names two of them.

    Raises BadInput when there is no such name, `new` is taken, or the file would not read as the same practice.
    """
    practice = read(draft)
    change = Exchange(kind or kind_named(draft, practice, old), old, new)
    if new in names_of(practice).all():
        raise refuse(draft, new, "this names something already; choose another name")
    after = draft
    for way in ways_of(draft):
        after = reworded(after, way, change, practice)
    after = rekeyed(after, change)
    if told(read(after), Exchange("place", "", "")) != told(practice, change):
        raise refuse(draft, f"{old} → {new}", "with this name some line would mean something else; choose another")
    return after


def kind_named(draft: Draft, practice: Practice, name: str) -> Kind:
    """What a name names; raises BadInput for none or several."""
    names = every_name(practice)
    lists: dict[Kind, tuple[str, ...]] = {"place": names.places, "side": names.sides, "role": names.roles}
    kinds = [kind for kind, known in lists.items() if name in known]
    if len(kinds) == 1:
        return kinds[0]
    known = [word for some in lists.values() for word in some]
    wanted = f"this is a {' and a '.join(kinds)}; say which is meant" if kinds else f"the names are {', '.join(known)}"
    raise refuse(draft, name, wanted, nearest(name, known))


def read(draft: Draft) -> Practice:
    """The practice of a draft; raises BadInput with everything wrong in it."""
    report = Report(draft.file)
    practice = practice_of(load_text(draft.text, draft.file), report)
    report.close()
    assert practice is not None
    return practice


def every_name(practice: Practice) -> Names:
    """The names of a practice and of its steps."""
    ground = [*practice.ground, *(place for step in practice.steps for place in step.ground)]
    groups = [*practice.groups, *(group for step in practice.steps for group in step.people)]
    return collect(ground, groups, practice.also_called)


def ways_of(draft: Draft) -> list[Way]:
    """What leads to every text that may hold a name: ground and people lines (of steps too), sentences, small keys."""
    root = draft.root
    steps = root.get("steps") if isinstance(root, Pairs) else None
    holders: list[Way] = [()] + [("steps", at) for at in range(len(steps.items) if isinstance(steps, Items) else 0)]
    lines: list[Way] = [
        (*holder, part, key.value)
        for holder in holders
        for part in ("ground", "people")
        if isinstance(node := at_or_none(draft, (*holder, part)), Pairs)
        for key, _ in node.entries
    ]
    squares = at_or_none(draft, ("arrange", "keep square"))
    small: list[Way] = [way for holder in holders if at_or_none(draft, way := (*holder, "balls in play"))]
    if isinstance(squares, Items):
        small += [("arrange", "keep square", at) for at in range(len(squares.items))]
    return [*lines, *small, *sentence_ways(draft)]


def at_or_none(draft: Draft, way: Way) -> Pairs | Items | Text | None:
    """The node at a way, or None where there is none."""
    try:
        return draft.at(way)
    except BadInput:
        return None


def reworded(draft: Draft, way: Way, change: Exchange, practice: Practice) -> Draft:
    """The draft with the name exchanged in one line."""
    node = draft.at(way)
    said = node.value if isinstance(node, Text) else ""
    if "ground" in way or "keep square" in way:
        return draft.set(way, placed(said, change))
    if "people" in way:
        return draft.set(way, followed(placed(said, change), change, practice))
    if way[-1] == "balls in play":
        return draft.set(way, exchanged(said, change, practice)) if change.kind == "side" else draft
    return draft.set(way, sentence(said, change, practice))


def placed(said: str, change: Exchange) -> str:
    """A ground or people line with a place exchanged where a place can stand."""
    if change.kind != "place":
        return said
    pattern = f"{BEFORE}{re.escape(change.old)}{BEHIND}"
    return re.sub(pattern, lambda found: found[1] + found[2] + change.new, said, flags=re.IGNORECASE)


def followed(said: str, change: Exchange, practice: Practice) -> str:
    """A people line with the group exchanged that it follows."""
    ties = {group.tie.group for group in practice.groups if group.tie}
    ties |= {group.tie.group for step in practice.steps for group in step.people if group.tie}
    for key in sorted(ties, key=len, reverse=True):
        if said.casefold().startswith(key.casefold()):
            return change.key(key) + said[len(key) :]
    return said


def sentence(said: str, change: Exchange, practice: Practice) -> str:
    """A sentence in the coach's words with the name exchanged; the printed one where those would mean another thing."""
    names = every_name(practice)
    found = parse_rules(said, names)
    wanted = tuple(change.phrase(rule) for rule in found)
    if wanted == found:
        return said
    fresh = every_name(told(practice, change))
    own, printed = exchanged(said, change, practice), " ".join(print_rule(rule, fresh) for rule in wanted)
    try:
        return own if parse_rules(own, fresh) == wanted else printed
    except RuleError:
        return printed


def exchanged(said: str, change: Exchange, practice: Practice) -> str:
    """A text with a name exchanged wherever it stands as a word, in its number and with its capital; longer names that
    hold it stay."""
    swaps = {singular(change.old): singular(change.new), plural(change.old): plural(change.new), change.old: change.new}
    known = {spelling.casefold() for name in every_name(practice).all() for spelling in spellings(name)}
    known |= {spelling.casefold() for spelling in swaps}
    pattern = rf"\b(?:{'|'.join(map(re.escape, sorted(known, key=len, reverse=True)))})\b"
    lower = {spelling.casefold(): fresh for spelling, fresh in swaps.items()}

    def swap(found: re.Match[str]) -> str:
        fresh = lower.get(found[0].casefold(), found[0])
        return fresh[:1].upper() + fresh[1:] if found[0][:1].isupper() and found.start() == 0 else fresh

    return re.sub(pattern, swap, said, flags=re.IGNORECASE)


def rekeyed(draft: Draft, change: Exchange) -> Draft:
    """The draft with the keys that are the name, or hold it as side or role, renamed."""
    for way in ways_of(draft):
        if "ground" in way or "people" in way:
            fresh: Callable[[str], str] = change.key if "people" in way else lambda name: change.of("place", name)
            if fresh(str(way[-1])) != way[-1]:
                draft = draft.rename(way, fresh(str(way[-1])))
    also = at_or_none(draft, ("also called",))
    if isinstance(also, Pairs) and also.get(change.old) is not None:
        draft = draft.rename(("also called", change.old), change.new)
    return draft


def refuse(draft: Draft, read: str, expected: str, near: str | None = None) -> BadInput:
    """Why a name is not changed."""
    return BadInput([Problem(draft.file, None, None, read, f"{expected}. The file stays as it was", near)])
