"""Writing sentences the printed way: what reads but is worded otherwise is replaced, everything else stays."""

from dataclasses import dataclass

from turnout.practice.model import Practice, Rule
from turnout.practice.renaming import read
from turnout.practice.writing import sentence_ways
from turnout.problems import BadInput, Problem
from turnout.reading import Text
from turnout.reading.edit import Draft


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
    printed = {(rule.source.line, rule.source.text): rule.text for rule in every_rule(practice)}
    after, changes = draft, []
    for way in sentence_ways(draft):
        node = draft.at(way)
        if isinstance(node, Text) and (now := printed.get((node.line, node.value), node.value)) != node.value:
            changes.append(Reworded(draft.file, node.line, node.value, now))
            after = after.set(way, now)
    if changes and meanings(read(after)) != meanings(practice):
        told = "printed, a sentence would mean something else; nothing is changed"
        raise BadInput([Problem(draft.file, changes[0].line, None, changes[0].was, told)])
    return after, changes


def every_rule(practice: Practice) -> list[Rule]:
    """The rules of a practice and of its steps."""
    of_steps = [rule for step in practice.steps for rule in (*step.add, *step.remove, *step.change)]
    return [*practice.rules, *of_steps]


def meanings(practice: Practice) -> list[object]:
    """The trees of every sentence, in order."""
    return [rule.phrase for rule in every_rule(practice)]
