"""Ground and people that do not fit: lines taken for areas, places off the field, homes, ties, names nobody uses."""

from turnout.practice.clash_parts import Case, Findings, events, places_named, source_of, wheres
from turnout.practice.model import LINES
from turnout.practice.relative import directions
from turnout.practice.table import Where

# where a goal or gate may stand in a row: what is done -> the kinds of line it is done to
LINE_ACTS: dict[str, frozenset[str]] = {
    "attacks": frozenset({"goal", "small goal"}),
    "now attacks": frozenset({"goal", "small goal"}),
    "score": frozenset({"goal", "small goal"}),
    "pass through": frozenset({"gate"}),
    "run through": frozenset({"gate"}),
    "through": frozenset({"gate"}),
    "no repeat": frozenset(LINES),
}
ANYWHERE = ("behind",)  # a goal has a place behind it


def edge_of_list(case: Case) -> Findings:
    """The edge of something that is several places."""
    for row in case.rows:
        if any(where.how == "edge" and case.ground[where.place].kind == "list" for where in wheres(row)):
            yield row.source, "a list of places has no edge; name one of them", "error"


def in_a_line(case: Case) -> Findings:
    """A sentence that puts somebody or the ball inside a goal or gate, which is a line, or on its edge."""
    for row in case.rows:
        told: list[tuple[Where | None, str]] = [(row.where, row.do), (row.also, row.do)]
        told += [(act.where, act.kind) for act in [row.act, *(event.act for event in events(row))] if act]
        told += [(event.where, "event") for event in events(row)]
        told += [(row.passes.where, row.passes.kind)] if row.passes else []
        for where, how in told:
            kinds = case.kinds(where.place) & set(LINES) if where else set()
            fits = LINE_ACTS.get(how, frozenset())
            if where and kinds and where.how not in ANYWHERE and (where.how == "edge" or not kinds <= fits):
                kind = sorted(kinds)[0]
                cure = "say “passing through it”" if kind == "gate" else "say “scoring in it”, “attack” or “defend”"
                yield row.source, f"the {kind} {where.place} is a line, nobody is inside or beside it; {cure}", "error"


def no_direction(case: Case) -> Findings:
    """A half, end or third of a side that attacks nothing."""
    known = directions(case.practice)
    for row in case.rows:
        for where in (where for where in wheres(row) if where.relative):
            side = row.when.who.side if row.when and row.when.who else row.who.side
            if not where.place or (side and side not in known and side in fighting(case)):
                told = f"no sentence says what {side or 'a side'} attacks, so there is no {where.relative}"
                yield row.source, f"{told}; add “{(side or 'amber').capitalize()} attack …”", "error"
            elif where.relative == "defending end" and any(also is None for _, also in known.values()):
                told = "no sentence says what a side defends"
                yield row.source, f"{told}; write “… attack … and defend …”", "error"


def fighting(case: Case) -> set[str]:
    """Sides that play for themselves."""
    neutral = {group.side for row in case.doing("plays for") for group in case.practice.groups
               if group.key in case.meant(row.who)}  # fmt: skip
    return set(case.practice.sides) - neutral


def lines_that_fit(case: Case) -> Findings:
    """A goal or gate longer than the side it stands on, and a field that is a line."""
    ground = case.practice.ground
    if ground[0].kind in LINES or ground[0].kind == "list":
        source = source_of(case.practice, ground[0])
        yield source, "the first place is the one the ball goes out of: a rectangle or a circle", "error"
        return
    for definition in ground:
        if definition.kind in LINES and definition.side is not None:
            of = case.places[definition.of or ""]
            side_m = of.across_m if definition.side in ("north", "south") else of.up_m
            if abs(definition.offset_m) + definition.width_m / 2 > side_m / 2 + 0.01:
                told = f"it reaches beyond the {definition.side} side of {of.name}, which is {side_m:.1f} m long"
                cure = "make it smaller or move it to the middle"
                yield source_of(case.practice, definition), f"{told}; {cure}", "error"


def off_the_field(case: Case) -> Findings:
    """An area that lies outside the first place, where the ball is out."""
    field = case.practice.ground[0]
    homes = {group.home.place for group in case.practice.groups if group.home.on_edge or group.waits}
    for place in case.practice.ground[1:]:
        apart = place.kind in ("rectangle", "circle", "polygon", "same") and case.apart(place.name, field.name)
        if apart and field.kind not in LINES and place.name not in homes:
            told = f"it lies outside {field.name}, the first place, and the ball is out there"
            yield source_of(case.practice, place), f"{told}; move it in or make the first place large enough", "error"


def homes_on_lines(case: Case) -> Findings:
    """A step that turns a home into a line, or a keeper's goal into something else."""
    for group in case.practice.groups:
        kind = case.ground[group.home.place].kind
        if (kind == "goal") != group.keeper or kind in ("small goal", "gate"):
            told = f"{group.home.place} is a {kind} now; give {group.key} a home that fits"
            yield source_of(case.practice, group), told, "error"


def ties_that_cannot(case: Case) -> Findings:
    """A number that follows another's and lies outside its own range whatever the other is."""
    for group in case.practice.groups:
        other = case.groups.get(group.tie.group) if group.tie else None
        if group.tie is None or other is None:
            continue
        low, high = other.low + group.tie.offset, other.high + group.tie.offset
        if high < group.low or low > group.high:
            told = f"{other.key} is {other.low} to {other.high}, so this would be {low} to {high}, outside its range"
            yield source_of(case.practice, group), f"{told}; widen the range or change the tie", "error"


def long_lines(case: Case) -> Findings:
    """More who stand in line as designed than the practice lets wait."""
    lines = [group for group in case.practice.groups if group.waits]
    most, standing = case.practice.arrange.waiting_at_most, sum(group.count for group in lines)
    if lines and lines[0].source and standing > most:
        told = f"{standing} stand in line, and “waiting at most” under arrange is {most}"
        yield lines[0].source, f"{told}; let fewer stand or more wait", "error"


def unused_places(case: Case) -> Findings:
    """Places that no person, sentence, step or other place uses."""
    practice = case.practice
    used = {practice.ground[0].name}
    used |= {home.place for group in practice.groups for home in (group.home, group.without) if home}
    used |= {name for place in practice.ground for name in (place.of, *place.members) if name}
    used |= {home.place for step in practice.steps for home in (group.home for group in step.people)}
    for rule in (*practice.rules, *(rule for step in practice.steps for rule in (*step.add, *step.change))):
        used |= places_named(rule.phrase)
    for place in practice.ground:
        parts = {other.name for other in practice.ground if other.source == place.source}
        if place.source and not used & parts:
            told = f"nothing uses the place {place.name}; take the line out or name it in a rule"
            yield place.source, told, "warning"


GROUND = (
    edge_of_list, in_a_line, no_direction, lines_that_fit, off_the_field, homes_on_lines, ties_that_cannot, long_lines,
    unused_places,
)  # fmt: skip
