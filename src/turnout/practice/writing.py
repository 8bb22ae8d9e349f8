"""Edits of a practice file in a coach's terms: sentences, places, people, steps. Numbers count from 1, as on a card.

Each function answers with a new draft; whether that still reads as a practice is asked when the file is written.
"""

import re
from collections.abc import Mapping
from typing import Literal

from turnout.practice.keys import DIRECTIONS, PRACTICE
from turnout.problems import BadInput, Problem
from turnout.reading import Items, Pairs, Text
from turnout.reading.edit import Draft, Way
from turnout.reading.spell import Plain

Part = Literal["ground", "people"]
DIGITS = r"(?<![\d.]){}(?!\.?\d)"


def sentence_ways(draft: Draft) -> list[Way]:
    """What leads to each sentence: the rules in order, then those of the steps."""
    root = draft.root
    steps = root.get("steps") if isinstance(root, Pairs) else None
    found: list[Way] = [("rules",)]
    for number, step in enumerate(steps.items if isinstance(steps, Items) else ()):
        names = [key.value for key, _ in step.entries] if isinstance(step, Pairs) else []
        found += [("steps", number, key) for key in names if key in ("add", "remove", "change")]
    return [(*way, at) for way in found for at in range(_length(draft, way))]


def replace_sentence(draft: Draft, number: int, sentence: str) -> Draft:
    """The draft with rule `number` said anew."""
    return draft.set(("rules", number - 1), sentence)


def add_sentence(draft: Draft, sentence: str, *, number: int | None = None) -> Draft:
    """The draft with a rule more, as rule `number` or as the last."""
    return draft.insert(("rules",), _length(draft, ("rules",)) if number is None else number - 1, sentence)


def take_sentence(draft: Draft, number: int) -> Draft:
    """The draft without rule `number`."""
    return draft.take_out(("rules", number - 1))


def change_line(draft: Draft, part: Part, name: str, line: str) -> Draft:
    """The draft with the ground or people line of `name` said anew."""
    return draft.set((part, name), line)


def add_line(draft: Draft, part: Part, name: str, line: str, *, after: str | None = None) -> Draft:
    """The draft with a place or group more, after the line of `after` or as the last."""
    return draft.add_key((part,), name, line, after=after)


def take_line(draft: Draft, part: Part, name: str) -> Draft:
    """The draft without the ground or people line of `name`."""
    return draft.take_out((part, name))


def change_number(draft: Draft, way: Way, was: float, now: float) -> Draft:
    """The draft with one number changed in the text at `way`; raises BadInput unless it stands there exactly once."""
    node = draft.at(way)
    said = node.value if isinstance(node, Text) else ""
    found = list(re.finditer(DIGITS.format(re.escape(f"{was:g}")), said))
    if len(found) != 1:
        told = "this number is not there" if not found else "this number stands there more than once"
        raise draft.refused(node, f"{told}; write the whole line anew", f"{was:g}")
    return draft.set(way, said[: found[0].start()] + f"{now:g}" + said[found[0].end() :])


def add_step(
    draft: Draft, direction: str, name: str, changes: Mapping[str, Plain], *, number: int | None = None
) -> Draft:
    """The draft with a step more, as step `number` or as the last. changes: what stands under `add`, `remove`,
    `change` (lists of sentences), `ground` and `people` (lines by name)."""
    if direction not in DIRECTIONS:
        told = f"a step is {', '.join(DIRECTIONS[:-1])} or {DIRECTIONS[-1]}"
        raise BadInput([Problem(draft.file, None, None, direction, told)])
    step = {direction: name, **changes}
    if not _length(draft, ("steps",)):
        return add_top(draft, "steps", [step])
    return draft.insert(("steps",), _length(draft, ("steps",)) if number is None else number - 1, step)


def take_step(draft: Draft, name: str) -> Draft:
    """The draft without the step called `name`; without the key `steps` when it was the only one."""
    called = [_step_name(draft, number) for number in range(_length(draft, ("steps",)))]
    if name not in called:
        raise BadInput([Problem(draft.file, None, None, name, f"the steps are {', '.join(called) or 'none'}")])
    return draft.take_out(("steps",) if len(called) == 1 else ("steps", called.index(name)))


def add_top(draft: Draft, key: str, value: Plain) -> Draft:
    """The draft with a top key more, where it usually stands."""
    keys = list(PRACTICE.keys)
    before = keys[: keys.index(key)] if key in keys else keys
    root = draft.root
    there = [name.value for name, _ in root.entries] if isinstance(root, Pairs) else []
    after = [name for name in there if name in before]
    return draft.add_key((), key, value, after=after[-1] if after else None)


def _step_name(draft: Draft, number: int) -> str:
    step = draft.at(("steps", number))
    entries = step.entries if isinstance(step, Pairs) else ()
    return next((value.value for key, value in entries if key.value in DIRECTIONS and isinstance(value, Text)), "")


def _length(draft: Draft, way: Way) -> int:
    """How many items the list at `way` has; 0 when there is none."""
    root = draft.root
    if len(way) == 1 and (not isinstance(root, Pairs) or root.get(str(way[0])) is None):
        return 0
    node = draft.at(way)
    return len(node.items) if isinstance(node, Items) else 0
