"""Sentences that cannot hold together, and names nobody uses: what a reader of the whole practice would stop at."""

from collections.abc import Callable, Iterator
from typing import Literal

from turnout.practice.ground import places_of
from turnout.practice.meaning import table
from turnout.practice.model import LINES, Practice, Source
from turnout.practice.table import Row, Where, Who
from turnout.practice.units import units_side

Finding = tuple[Source, str, Literal["error", "warning"]]
Check = Callable[[Practice, tuple[Row, ...]], Iterator[Finding]]


def contradictions(practice: Practice) -> list[Finding]:
    """Every contradiction (error) and doubt (warning), each at its sentence."""
    rows = table(practice)
    return [finding for check in CHECKS for finding in check(practice, rows)]


def said_twice(practice: Practice, rows: tuple[Row, ...]) -> Iterator[Finding]:
    """One sentence twice, or two values for one limit."""
    seen: dict[object, Row] = {}
    for row in (row for row in rows if row.kind in ("limit", "direction", "start", "member", "points")):
        where = None if row.do in ("attacks", "plays for", "starts") else row.where
        who = None if row.kind == "start" else row.who
        first = seen.setdefault((row.do, who, row.when, row.after, row.while_, row.until, where), row)
        if first is not row:
            yield row.source, f"line {first.source.line} says “{first.source.text}”; keep one of the two", "error"


def two_restarts(practice: Practice, rows: tuple[Row, ...]) -> Iterator[Finding]:
    """Two restarts on one event."""
    seen: dict[object, Row] = {}
    for row in (row for row in rows if row.kind == "restart"):
        first = seen.setdefault(row.when, row)
        if first is not row:
            said = f"line {first.source.line} restarts play too (“{first.source.text}”)"
            yield row.source, f"{said}; keep one of the two", "error"


def nothing_scores(practice: Practice, rows: tuple[Row, ...]) -> Iterator[Finding]:
    """No way to score at all."""
    if not any(row.do == "score" for row in rows) and practice.rules:
        source = practice.rules[-1].source
        cure = "nobody can score; add a sentence such as “A side scores 1 for completing 6 passes in a row.”"
        yield Source(source.file, source.line, None, "rules"), cure, "error"


def unknown_groups(practice: Practice, rows: tuple[Row, ...]) -> Iterator[Finding]:
    """A side that has no such role: 'blue edge players' where blue has none."""
    for row in rows:
        for who in whos(row):
            if who.kind == "role" and who.side and not players(practice, who):
                has = ", ".join(group.key for group in practice.groups if group.side == who.side)
                said = f"{who.side} has no {who.role} players under people (its groups: {has})"
                yield row.source, f"{said}; add the line or name another role", "error"


def whos(row: Row) -> list[Who]:
    """Everybody a row speaks of."""
    found = [row.who, row.target]
    found += [row.when.who, row.when.act.between, row.when.act.to] if row.when and row.when.act else []
    found += [row.passes.first, row.passes.second] if row.passes else []
    return [who for who in found if who is not None]


def players(practice: Practice, who: Who) -> list[str]:
    """The groups a selector can mean."""
    if who.kind == "role":
        return [g.key for g in practice.groups if g.role == who.role and who.side in (None, g.side)]
    if who.kind == "side":
        return [g.key for g in practice.groups if g.side == who.side]
    if who.kind in ("its role", "nearest", "farthest"):
        return [g.key for g in practice.groups if g.role == who.role]
    return [g.key for g in practice.groups]


def in_and_out(practice: Practice, rows: tuple[Row, ...]) -> Iterator[Finding]:
    """Players held in a place and out of it, or out of their own home."""
    always = [row for row in rows if row.while_ is None and row.until is None]
    outs = [row for row in always if row.do == "stay out" and row.where and row.where.how == "in"]
    for row in outs:
        held = set(players(practice, row.who))
        for other in (other for other in always if other.do == "stay in" and other.where == row.where):
            if held & set(players(practice, other.who)):
                said = f"line {other.source.line} keeps them in it (“{other.source.text}”)"
                yield row.source, f"{said}; take one of the two out", "error"
        for group in practice.groups:
            home = Where(group.home.place)
            if group.key in held and not group.home.on_edge and home == row.where:
                line = group.source.line if group.source else 0
                said = f"{group.key} belongs in {group.home.place} (line {line}) and could stand nowhere"
                yield row.source, f"{said}; change its home or this sentence", "error"


def out_of_reach(practice: Practice, rows: tuple[Row, ...]) -> Iterator[Finding]:
    """A score that a limit makes impossible."""
    for row in rows:
        act = row.when.act if row.do == "score" and row.when else None
        if act is None:
            continue
        able = set(players(practice, row.who))
        for limit in rows:
            held = set(players(practice, limit.who)) if limit.kind == "limit" else set()
            if not able or not able <= held:
                continue
            said = f"line {limit.source.line} says “{limit.source.text}”"
            tight = limit.do == "touches" and limit.value == 1 and limit.where is None
            if tight and act.kind == "run into" and all(touches(practice, rows, key) == 1 for key in able):
                yield row.source, f"running the ball takes more than one touch, and {said}", "error"
            stays_out = limit.do == "stay out" and limit.until is None and limit.where == act.where
            if stays_out and act.kind in ("receive in", "run into", "score"):
                yield row.source, f"nobody who could score may be there: {said}", "error"


def touches(practice: Practice, rows: tuple[Row, ...], key: str) -> int | None:
    """The touch limit of a group everywhere: of several sentences the one about fewest groups holds."""
    limits = [row for row in rows if row.do == "touches" and row.where is None and key in players(practice, row.who)]
    narrow = min(limits, key=lambda row: len(players(practice, row.who)), default=None)
    return narrow.value if narrow and isinstance(narrow.value, int) else None


def too_few(practice: Practice, rows: tuple[Row, ...]) -> Iterator[Finding]:
    """Passes between players of whom there are fewer than two on a side."""
    for row in rows:
        act = row.when.act if row.when and row.when.act else None
        between = [
            act.between if act else None,
            row.passes.first if row.passes and row.passes.kind == "between" else None,
        ]
        for who in between:
            if who is None or who.kind in ("everyone", "a side"):
                continue
            groups = [group for group in practice.groups if group.key in players(practice, who)]
            if groups and max(sum(g.high for g in groups if g.side == side) for side in practice.sides) < 2:
                yield row.source, "a pass between them needs two of them on one side; allow more under people", "error"


def in_without_out(practice: Practice, rows: tuple[Row, ...]) -> Iterator[Finding]:
    """Numbers that drift: somebody comes in and nobody ever goes out, or the reverse."""
    for do, back, words in (("comes in", "goes out", "go out"), ("goes out", "comes in", "come in")):
        moving = [row for row in rows if row.do == do]
        if moving and not any(row.do == back for row in rows):
            said = f"no sentence lets anybody {words} again, so this happens until a role is at the end of its range"
            yield moving[0].source, said, "warning"


def edge_of_list(practice: Practice, rows: tuple[Row, ...]) -> Iterator[Finding]:
    """The edge of something that is several places."""
    lists = {place.name for place in practice.ground if place.kind == "list"}
    for row in rows:
        wheres = [row.where, row.also, row.when.where if row.when else None]
        if any(where and where.how == "edge" and where.place in lists for where in wheres):
            yield row.source, "a list of places has no edge; name one of them", "error"


def in_a_line(practice: Practice, rows: tuple[Row, ...]) -> Iterator[Finding]:
    """A sentence that puts somebody or the ball inside a goal or gate, which is a line, or on its edge."""
    for row in rows:
        act = row.when.act if row.when else None
        wheres = [(row.where, row.do), (row.also, row.do), (row.until.where if row.until else None, "until")]
        wheres += [(act.where, act.kind)] if act else [(row.when.where, "event")] if row.when else []
        for where, how in wheres:
            kinds = kinds_of(practice, where.place) & set(LINES) if where else set()
            fits = LINE_ACTS.get(how, frozenset())
            if where and kinds and (where.how == "edge" or not kinds <= fits):
                kind = sorted(kinds)[0]
                cure = "say “passing through it”" if kind == "gate" else "say “scoring in it”, “attack” or “defend”"
                yield row.source, f"the {kind} {where.place} is a line, nobody is inside or beside it; {cure}", "error"


def one_after_another(practice: Practice, rows: tuple[Row, ...]) -> Iterator[Finding]:
    """“The same … twice in a row” of places where nothing scores, or of one place alone."""
    acts = [row.when.act for row in rows if row.do == "score" and row.when and row.when.act]
    used = {name for act in acts if act.where for name in single_places(practice, act.where.place)}
    for row in rows:
        if row.do != "no repeat" or row.where is None:
            continue
        if not used & set(single_places(practice, row.where.place)):
            said = f"no sentence gives points for anything at {row.where.place}"
            yield row.source, f"{said}; add one, such as “A side scores 1 for passing through …”", "error"
        if len(single_places(practice, row.where.place)) < 2:
            said = f"{row.where.place} is one place, and the second use of it could never count"
            yield row.source, f"{said}; name a list of places", "error"


def single_places(practice: Practice, name: str) -> list[str]:
    """The place itself, or every place of a list."""
    place = next(place for place in practice.ground if place.name == name)
    return [one for member in place.members for one in single_places(practice, member)] or [name]


def kinds_of(practice: Practice, name: str) -> set[str]:
    """The kinds of a place, or of the places of a list."""
    kinds = {place.name: place.kind for place in practice.ground}
    return {kinds[one] for one in single_places(practice, name)}


def lines_that_fit(practice: Practice, rows: tuple[Row, ...]) -> Iterator[Finding]:
    """A goal or gate longer than the side it stands on, and a field that is a line."""
    places = dict(places_of(practice)) if practice.ground[0].kind not in LINES else {}
    for definition in practice.ground if places else practice.ground[:1]:
        source = definition.source or Source(practice.key, 0, None, definition.name)
        if not places:
            yield source, "the first place is the one the ball goes out of: a rectangle or a circle", "error"
        elif definition.kind in LINES and definition.side is not None:
            of = places[definition.of or ""]
            side_m = of.across_m if definition.side in ("north", "south") else of.up_m
            if abs(definition.offset_m) + definition.width_m / 2 > side_m / 2 + 0.01:
                said = f"it reaches beyond the {definition.side} side of {of.name}, which is {side_m:.1f} m long"
                yield source, f"{said}; make it smaller or move it to the middle", "error"


def homes_on_lines(practice: Practice, rows: tuple[Row, ...]) -> Iterator[Finding]:
    """A step that turns a home into a line, or a keeper's goal into something else."""
    kinds = {place.name: place.kind for place in practice.ground}
    for group in practice.groups:
        kind = kinds[group.home.place]
        if (kind == "goal") != group.keeper or kind in ("small goal", "gate"):
            source = group.source or Source(practice.key, 0, None, group.key)
            yield source, f"{group.home.place} is a {kind} now; give {group.key} a home that fits", "error"


def other_sides(practice: Practice, rows: tuple[Row, ...]) -> Iterator[Finding]:
    """“The other side” where small sides with a ball each have none."""
    playing = [side for side in practice.sides if not any(g.waits for g in practice.groups if g.side == side)]
    if len(playing) > 1 or units_side(practice) is None:
        return
    for row in rows:
        if any(who and who.kind in ("other side", "side without the ball") for who in (row.who, row.target)):
            yield row.source, f"there is no other side: {playing[0]} play each with their own ball", "error"


def long_lines(practice: Practice, rows: tuple[Row, ...]) -> Iterator[Finding]:
    """More who stand in line as designed than the practice lets wait."""
    lines = [group for group in practice.groups if group.waits]
    most, standing = practice.arrange.waiting_at_most, sum(group.count for group in lines)
    if lines and lines[0].source and standing > most:
        said = f"{standing} stand in line, and “waiting at most” under arrange is {most}"
        yield lines[0].source, f"{said}; let fewer stand or more wait", "error"


def unused_places(practice: Practice, rows: tuple[Row, ...]) -> Iterator[Finding]:
    """Places that no person, sentence, step or other place uses."""
    used = {practice.ground[0].name} | {group.home.place for group in practice.groups}
    used |= {name for place in practice.ground for name in (place.of, *place.members) if name}
    for rule in (*practice.rules, *(rule for step in practice.steps for rule in (*step.add, *step.change))):
        used |= {place.name for place in practice.ground if names_place(rule.phrase, place.name)}
    for place in practice.ground:
        parts = {other.name for other in practice.ground if other.source == place.source}
        if place.source and not used & parts:
            yield (
                place.source,
                f"nothing uses the place {place.name}; take the line out or name it in a rule",
                "warning",
            )


def names_place(phrase: object, name: str) -> bool:
    """Whether a tree names a place."""
    return any(
        (slot == "place" and value == name) or (not isinstance(value, str | int) and names_place(value, name))
        for slot, value in getattr(phrase, "slots", ())
    )


# where a goal or gate may stand in a row: what is done -> the kinds of line it is done to
LINE_ACTS: dict[str, frozenset[str]] = {
    "attacks": frozenset({"goal", "small goal"}),
    "score": frozenset({"goal", "small goal"}),
    "pass through": frozenset({"gate"}),
    "no repeat": frozenset(LINES),
}
CHECKS: tuple[Check, ...] = (
    said_twice, two_restarts, nothing_scores, unknown_groups, in_and_out, out_of_reach, too_few, in_without_out,
    edge_of_list, in_a_line, one_after_another, lines_that_fit, homes_on_lines, other_sides, long_lines, unused_places,
)  # fmt: skip
