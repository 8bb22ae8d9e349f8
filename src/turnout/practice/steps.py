"""Taking steps: a practice with named changes made to its ground, people and rules."""

from collections.abc import Iterable, Mapping
from dataclasses import replace

from turnout.practice.contradictions import contradictions
from turnout.practice.model import Group, Phrase, PlaceDef, Practice, Rule, Source, Step
from turnout.practice.sizing import sized
from turnout.problems import BadInput, Problem, TurnoutError
from turnout.reading import nearest


class StepFault(TurnoutError):
    """A step that cannot be taken: the sentence at fault and what would do."""

    def __init__(self, source: Source, expected: str):
        self.source = source
        self.expected = expected
        super().__init__(f"read “{source.text}”; {expected}")


def with_steps(practice: Practice, names: Iterable[str]) -> Practice:
    """The practice after the steps called `names`, in that order; raises BadInput for an unknown step, one taken
    twice, or steps that contradict each other."""
    for name in names:
        step = step_called(practice, name)
        try:
            practice = taken_with(practice, step)
        except StepFault as fault:
            raise BadInput([problem(fault, practice, step)]) from None
    against = [finding for finding in contradictions(practice) if finding[2] == "error"] if practice.taken else []
    if against:
        raise BadInput([problem(StepFault(*against[0][:2]), practice, None)])
    return practice


def step_called(practice: Practice, name: str) -> Step:
    """The step with that name, in any letter case; raises BadInput."""
    known = {step.name.casefold(): step for step in practice.steps}
    wanted = name.strip().casefold()
    if wanted in known and known[wanted].name not in practice.taken:
        return known[wanted]
    listed = ", ".join(step.name for step in practice.steps) or "none"
    expected = f"{practice.name} has the steps: {listed}"
    if wanted in known:
        expected = "this step is taken already; take it once"
    near = nearest(name, [step.name for step in practice.steps]) if wanted not in known else None
    raise BadInput([Problem(practice.key, None, None, name, expected, near)])


def problem(fault: StepFault, practice: Practice, step: Step | None) -> Problem:
    """A fault of a step, or of several together, as a problem of the practice file."""
    after = f"after {', '.join(practice.taken)}" if practice.taken else ""
    before = f"the step {step.name} {after}".strip() if step else after
    expected = f"{before}: {fault.expected}"
    return Problem(fault.source.file, fault.source.line, fault.source.column, fault.source.text, expected)


def taken_with(practice: Practice, step: Step) -> Practice:
    """The practice with one step taken; raises StepFault."""
    rules = list(practice.rules)
    for rule in step.remove:
        rules.remove(present(rule, rules))
    for rule in step.change:
        rules[rules.index(changed(rule, rules))] = rule
    for rule in step.add:
        if any(rule.phrase == other.phrase for other in rules):
            raise StepFault(rule.source, "this sentence is there already; the step adds nothing")
        rules.append(rule)
    groups = merged_groups(practice.groups, step.people)
    ground = sized(merged_ground(practice.ground, step.ground), groups)
    changed_practice = replace(practice, ground=ground, groups=groups, rules=tuple(rules))
    return replace(with_kit(changed_practice, step), taken=(*practice.taken, step.name))


def with_kit(practice: Practice, step: Step) -> Practice:
    """The practice with the balls of a step, where it says how many."""
    balls = practice.balls if step.balls is None else step.balls
    if step.balls_in_play is None:
        return replace(practice, balls=balls)
    return replace(practice, balls=balls, balls_in_play=step.balls_in_play, balls_at_once=step.balls_at_once)


def present(rule: Rule, rules: list[Rule]) -> Rule:
    """The rule with the same meaning; raises StepFault."""
    for other in rules:
        if other.phrase == rule.phrase:
            return other
    raise StepFault(rule.source, "no such sentence is there to remove; write it as it stands under rules")


def changed(rule: Rule, rules: list[Rule]) -> Rule:
    """The rule a changed sentence replaces: the only one of its form that differs in numbers, else the only one of
    its form about the same players, else the only one of its form. Raises StepFault."""
    same_form = [other for other in rules if other.phrase.form == rule.phrase.form]
    tests = (
        lambda other: without_numbers(other.phrase) == without_numbers(rule.phrase),
        lambda other: other.phrase.get("who") == rule.phrase.get("who"),
        lambda other: True,
    )
    for test in tests:
        found = [other for other in same_form if test(other)]
        if len(found) == 1 and found[0].phrase != rule.phrase:
            return found[0]
    if any(other.phrase == rule.phrase for other in same_form):
        raise StepFault(rule.source, "this sentence is there already; the step changes nothing")
    many = "several sentences could be meant" if same_form else "no sentence of this kind is there"
    raise StepFault(rule.source, f"{many}; use remove and add instead")


def without_numbers(phrase: Phrase) -> Phrase:
    """A tree with its numbers blanked."""
    blank = {name: without_numbers(value) if isinstance(value, Phrase) else value for name, value in phrase.slots}
    return Phrase(phrase.form, tuple((name, 0 if isinstance(value, int) else value) for name, value in blank.items()))


def merged_ground(before: tuple[PlaceDef, ...], fresh: tuple[PlaceDef, ...]) -> tuple[PlaceDef, ...]:
    """Places with those of the same name replaced and new ones at the end, but before whatever is made of them."""
    places = {place.name: place for place in before}
    places.update((place.name, place) for place in fresh)
    ordered: dict[str, PlaceDef] = {}
    for place in places.values():
        put_after_its_own(place, places, ordered, ())
    return tuple(ordered.values())


def put_after_its_own(
    place: PlaceDef, places: Mapping[str, PlaceDef], ordered: dict[str, PlaceDef], above: tuple[str, ...]
) -> None:
    """Put a place into `ordered` after the places it is made of; `above` are those that wait for it."""
    for name in (place.of, *place.members):
        if name and name in places and name not in ordered and name not in (*above, place.name):
            put_after_its_own(places[name], places, ordered, (*above, place.name))
    ordered.setdefault(place.name, place)


def merged_groups(before: tuple[Group, ...], fresh: tuple[Group, ...]) -> tuple[Group, ...]:
    """Groups with those of the same name replaced and new ones at the end; raises StepFault when ties run in a ring
    or a side ends up with a group without a role beside others."""
    groups = {group.key: group for group in before}
    groups.update((group.key, group) for group in fresh)
    for group in fresh:
        source = group.source or Source("", 0, None, group.key)
        if ring(group, groups):
            raise StepFault(source, "these counts follow each other in a ring; give one of them a number")
    return tuple(groups.values())


def ring(group: Group, groups: Mapping[str, Group]) -> bool:
    """Whether following the ties from `group` leads back to it."""
    seen, at = {group.key}, group
    while at.tie is not None and at.tie.group in groups:
        at = groups[at.tie.group]
        if at.key in seen:
            return True
        seen.add(at.key)
    return False
