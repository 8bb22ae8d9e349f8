"""Writing sentences the printed way: what reads but is worded otherwise is replaced, everything else stays.

A sentence that says two rules is written as two.
"""

from dataclasses import dataclass

from turnout.practice.model import Practice, Rule
from turnout.practice.renaming import read
from turnout.practice.writing import sentence_ways
from turnout.problems import BadInput, Problem
from turnout.reading import Text
from turnout.reading.edit import Draft, Way


@dataclass(frozen=True)
class Reworded:
    """One sentence as it was written and as it is printed."""

    file: str
    line: int
    was: str
    now: str


def tidied(draft: Draft) -> tuple[Draft, list[Reworded]]:
    """The draft with every sentence the printed way, and which ones changed; raises BadInput when the file has a fault
    or a sentence would come to mean something else."""
    practice = read(draft)
    printed = printed_of(practice)
    after = draft
    changes: list[Reworded] = []
    for way in reversed(sentence_ways(draft)):  # from the last, so that what is put in moves nothing before it
        node = draft.at(way)
        said = printed.get((node.line, node.value), ()) if isinstance(node, Text) else ()
        if isinstance(node, Text) and said and said != (node.value,):
            changes.insert(0, Reworded(draft.file, node.line, node.value, " ".join(said)))
            after = written(after, way, said)
    if changes and meanings(read(after)) != meanings(practice):
        told = "printed, a sentence would mean something else; nothing is changed"
        raise BadInput([Problem(draft.file, changes[0].line, None, changes[0].was, told)])
    return after, changes


def printed_of(practice: Practice) -> dict[tuple[int, str], tuple[str, ...]]:
    """What each sentence of the file says, as it is printed, by its line and its words."""
    found: dict[tuple[int, str], tuple[str, ...]] = {}
    for rule in every_rule(practice):
        key = (rule.source.line, rule.source.text)
        found[key] = tuple(dict.fromkeys((*found.get(key, ()), rule.text)))
    return found


def written(draft: Draft, way: Way, said: tuple[str, ...]) -> Draft:
    """The draft with a sentence in place of the one at `way`, and those that follow it after it."""
    after = draft.set(way, said[0])
    for number, text in enumerate(said[1:], start=1):
        after = after.insert(way[:-1], int(way[-1]) + number, text)
    return after


def every_rule(practice: Practice) -> list[Rule]:
    """The rules of a practice and of its steps."""
    of_steps = [rule for step in practice.steps for rule in (*step.add, *step.remove, *step.change)]
    return [*practice.rules, *of_steps]


def meanings(practice: Practice) -> list[object]:
    """The trees of every sentence, in order."""
    return [rule.phrase for rule in every_rule(practice)]
