"""Reading a practice file: everything that is wrong with it, or the practice."""

from dataclasses import replace
from pathlib import Path

from turnout.practice.contradictions import Finding, contradictions
from turnout.practice.keys import PRACTICE
from turnout.practice.model import Practice
from turnout.practice.names import Names, collect
from turnout.practice.read_model import read_ground, read_people_lines, read_rules
from turnout.practice.read_small import (
    read_ages,
    read_also,
    read_arrange,
    read_balls,
    read_coach,
    read_develops,
    read_in_play,
)
from turnout.practice.read_steps import read_steps
from turnout.practice.sizing import sized
from turnout.practice.steps import taken_with
from turnout.problems import Problem
from turnout.reading import Document, Items, Pairs, Report, load

KEYS = tuple(PRACTICE.keys)


def read_practice(path: str | Path) -> Practice:
    """The practice in the file at `path`; raises BadInput with every problem of the file."""
    document = load(path)
    report = Report(document.file, document.problems)
    practice = practice_of(document, report)
    report.close()
    assert practice is not None  # a practice that could not be built has left an error behind
    return practice


def key_of(file: str) -> str:
    """A practice's key: its file's stem, or its folder's name for a file called practice.yaml."""
    path = Path(file)
    return path.parent.name if path.stem == "practice" and path.parent.name else path.stem


def practice_of(document: Document, report: Report) -> Practice | None:
    """The practice of a document, its faults added to `report`; None when it has no ground or no people."""
    root = report.pairs(document.root, "a practice")
    if root is None:
        return None
    report.keys(root, KEYS, "a practice")
    report.needed(root, PRACTICE.needed, "a practice")
    practice = sentences_of(root, report)
    if practice is not None and not report.errors:
        report.problems += [as_problem(finding) for finding in findings(practice)]
    return practice


def findings(practice: Practice) -> list[Finding]:
    """The contradictions of the practice, then those that a step brings when it is taken alone."""
    own = contradictions(practice)
    brought = []
    for step in practice.steps:
        fresh = [finding for finding in contradictions(taken_with(practice, step)) if finding not in own]
        brought += [(source, f"the step {step.name}: {said}", severity) for source, said, severity in fresh]
    return own + [finding for finding in brought if finding[2] == "error"]


def as_problem(finding: Finding) -> Problem:
    """A contradiction as a problem at its sentence."""
    source, expected, severity = finding
    return Problem(source.file, source.line, source.column, source.text, expected, None, severity)


def sentences_of(root: Pairs, report: Report) -> Practice | None:
    """Everything under the keys of a practice."""
    ground = read_ground(root.get("ground"), report, {})
    groups = read_people_lines(root.get("people"), report, {place.name: place for place in ground}, {})
    ground = list(sized(ground, groups))
    also = read_also(root.get("also called"), report, collect(ground, groups, ()))
    names = with_keys(collect(ground, groups, also), root)
    rules = read_rules(root.get("rules"), report, names, "rules")
    name, about = report.text(root.get("practice"), "the name"), report.text(root.get("about"), "about")
    arrange, kit = read_arrange(root.get("arrange"), report, ground), read_balls(root.get("kit"), report)
    in_play, at_once = read_in_play(root.get("balls in play"), report, groups)
    practice = Practice(
        key=key_of(report.file), name=name.value if name else "", about=about.value if about else "",
        ages=read_ages(root.get("ages"), report), develops=read_develops(root.get("develops"), report),
        ground=tuple(ground), groups=tuple(groups), rules=tuple(rules),
        questions=tuple(read_coach(root.get("coach"), report)), also_called=also, balls=kit, arrange=arrange,
        balls_in_play=in_play, balls_at_once=at_once,
    )  # fmt: skip
    written = root.get("rules")
    said = {(rule.source.line, rule.source.column, rule.source.text) for rule in rules}
    every_rule = isinstance(written, Items) and len(said) == len(written.items)
    steps = read_steps(root.get("steps"), report, practice, names, check=every_rule)
    practice = replace(practice, steps=tuple(steps))
    return practice if ground and groups else None


def with_keys(names: Names, root: Pairs) -> Names:
    """The names with those of lines that could not be read, so that one fault is told once."""
    people, ground = root.get("people"), root.get("ground")
    keys = [key.value.split(" ", 1) for key, _ in people.entries] if isinstance(people, Pairs) else []
    keys = [key for key in keys if len(key) == 1 or not key[1].startswith("for ")]
    places = [key.value for key, _ in ground.entries] if isinstance(ground, Pairs) else []
    return replace(
        names,
        sides=tuple(dict.fromkeys((*names.sides, *(key[0] for key in keys if key[0])))),
        roles=tuple(dict.fromkeys((*names.roles, *(key[1].strip() for key in keys if len(key) == 2)))),
        places=tuple(dict.fromkeys((*names.places, *places))),
    )
