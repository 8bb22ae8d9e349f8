"""Limits that cannot hold together: said twice, in and out of one place, too many or too few, must and may not."""

from turnout.practice.clash_parts import Case, Findings, always, said, source_of, whos
from turnout.practice.table import Row

ONCE = ("points", "count", "weight", "guard", "limit", "permit", "member", "direction", "start", "turn", "law")


def said_twice(case: Case) -> Findings:
    """One sentence twice, or two values for one limit: of two about the same players none is the narrower."""
    seen: dict[object, Row] = {}
    for row in (row for row in case.rows if row.kind in ONCE and row.do not in ("add points", "may enter")):
        where = None if row.do in ("attacks", "plays for") or row.kind == "start" else row.where
        who, do = (None, "start") if row.kind == "start" else (row.who, row.do)
        about = (row.when, row.after, row.while_, row.until, row.act, row.event, row.how, row.passes, row.each)
        first = seen.setdefault((do, who, where, row.every_s, about), row)
        if first.source != row.source:
            yield row.source, f"{said(first)}; keep one of the two", "error"


def unknown_groups(case: Case) -> Findings:
    """A side that has no such role, and a role that nobody can play."""
    for row in case.rows:
        for who in whos(row):
            keys = case.meant(who)
            if who.role and who.side and not keys:
                has = ", ".join(key for key, group in case.groups.items() if group.side == who.side)
                told = f"{who.side} has no {who.role} players under people (its groups: {has})"
                yield row.source, f"{told}; add the line or name another role", "error"
            elif (who.role or who.side) and keys and not any(case.groups[key].high for key in keys):
                group = case.groups[min(keys)]
                line = source_of(case.practice, group)
                told = f"nobody is ever {group.key}: line {line.line} says “{line.text}”"
                yield row.source, f"{told}; allow one there or take this sentence out", "error"


def in_and_out(case: Case) -> Findings:
    """Players held in a place and out of it, in two places apart, or away from their own home."""
    held = [row for row in case.rows if always(row) and row.where and row.where.how == "in"]
    ins, outs = ([row for row in held if row.do == do] for do in ("stay in", "stay out"))
    for row in outs:
        for other in (other for other in ins if case.within(other.where.place, row.where.place)):  # type: ignore[union-attr]
            if case.meant(row.who) & case.meant(other.who):
                yield row.source, f"{said(other)}, which keeps them in it; take one of the two out", "error"
    for number, row in enumerate(ins):
        for other in ins[:number]:
            both = case.meant(row.who) & case.meant(other.who)
            if both and case.apart(row.where.place, other.where.place):  # type: ignore[union-attr]
                told = f"{said(other)}, and {row.where.place} has no ground in common with it"  # type: ignore[union-attr]
                yield row.source, f"{told}; keep one of the two", "error"
    for row in (*ins, *outs):
        yield from away_from_home(case, row)


def away_from_home(case: Case, row: Row) -> Findings:
    """A limit that leaves a group no ground of its own home."""
    assert row.where is not None
    for key in sorted(case.meant(row.who)):
        group = case.groups[key]
        home = group.home.place
        if group.home.on_edge or group.waits or group.keeper or group.home.at or not group.home.fence:
            continue
        closed = case.within(home, row.where.place) if row.do == "stay out" else case.apart(home, row.where.place)
        if closed:
            line = source_of(case.practice, group).line
            told = f"{key} belongs in {home} (line {line}) and could stand nowhere"
            yield row.source, f"{told}; change its home or this sentence", "error"


def too_many(case: Case) -> Findings:
    """More players at home in a place than are allowed there, or fewer than must stay."""
    for row in case.doing("at most", "at least"):
        assert row.where is not None and isinstance(row.value, int)
        for side in case.practice.sides if row.each else (None,):
            groups = [case.groups[key] for key in sorted(case.meant(row.who))]
            groups = [group for group in groups if side in (None, group.side) and not group.waits]
            if row.do == "at least" and (most := sum(group.high for group in groups)) < row.value:
                told = f"of {listed_keys(groups)} there are never more than {most}"
                yield row.source, f"{told}; ask for fewer or allow more under people", "error"
            inside = [g for g in groups if g.home.fence and not g.home.on_edge and lives_in(case, g.home.place, row)]
            if row.do == "at most" and (now := sum(group.count for group in inside)) > row.value:
                told = f"{now} are at home there ({listed_keys(inside)}, {lines_of(case, inside)})"
                yield row.source, f"{told}; let more in or give them another home", "error"


def lives_in(case: Case, home: str, row: Row) -> bool:
    """Whether a home lies wholly inside the place a row counts in."""
    return row.where is not None and row.where.how == "in" and case.within(home, row.where.place)


def listed_keys(groups: list) -> str:  # type: ignore[type-arg]
    """The keys of groups, for a message."""
    return ", ".join(group.key for group in groups)


def lines_of(case: Case, groups: list) -> str:  # type: ignore[type-arg]
    """The lines of groups, for a message."""
    return ", ".join(f"line {source_of(case.practice, group).line}" for group in groups)


def most_under_least(case: Case) -> Findings:
    """At least more than at most of the same players in one place."""
    for row in case.doing("at least"):
        for other in case.doing("at most"):
            same = (row.where, row.each) == (other.where, other.each) and case.meant(row.who) <= case.meant(other.who)
            if same and isinstance(row.value, int) and isinstance(other.value, int) and row.value > other.value:
                yield row.source, f"{said(other)}; at least {row.value} and at most {other.value} cannot be", "error"


def only_and_may_not(case: Case) -> Findings:
    """What only some may do, and those may not."""
    for row in case.doing("may not"):
        for other in case.doing("only may"):
            if row.act == other.act and case.meant(other.who) <= case.meant(row.who):
                yield row.source, f"{said(other)}; take one of the two out", "error"


def still_and_moving(case: Case) -> Findings:
    """Players who stand still and are let go somewhere."""
    for row in case.doing("may come in", "move along"):
        for other in (other for other in case.doing("stand still") if case.meant(row.who) <= case.meant(other.who)):
            yield row.source, f"{said(other)}; take one of the two out", "error"


LIMITS = (said_twice, unknown_groups, in_and_out, too_many, most_under_least, only_and_may_not, still_and_moving)
