"""Changes, restarts and turns that clash: two on one event, numbers that drift or cannot move, waiting for ever."""

from turnout.practice.clash_parts import Case, Findings, source_of
from turnout.practice.model import Group
from turnout.practice.table import Row, Who

MOVING = ("comes in", "goes out", "joins")


def two_restarts(case: Case) -> Findings:
    """Two restarts on one event."""
    seen: dict[object, Row] = {}
    for row in (row for row in case.rows if row.kind == "restart"):
        first = seen.setdefault((row.when, row.every_s), row)
        if first is not row:
            told = f"line {first.source.line} restarts play too (“{first.source.text}”)"
            yield row.source, f"{told}; keep one of the two", "error"


def in_without_out(case: Case) -> Findings:
    """Numbers that drift: somebody comes in and nobody ever goes out, or the reverse; everybody joins one role."""
    back_again = case.doing("goes back", "exchange", "change over", "rotate")
    for do, back, words in (("comes in", "goes out", "go out"), ("goes out", "comes in", "come in")):
        moving = case.doing(do)
        if moving and not case.doing(back) and not back_again:
            told = f"no sentence lets anybody {words} again, so this happens until a role is at the end of its range"
            yield moving[0].source, f"{told}; add one", "warning"
    joined = {row.target: row for row in case.doing("joins") if not fixed(groups_of(case, row.target))}
    if len(joined) == 1 and not back_again and not case.doing("comes in", "goes out"):
        (row,) = joined.values()
        told = "nobody ever leaves that role again, so this happens until it is at the end of its range"
        yield row.source, f"{told}; add a sentence that takes somebody out of it", "warning"


def nobody_can_move(case: Case) -> Findings:
    """A swap that always takes a role out of its range."""
    for row in case.doing(*MOVING):
        others = [other for other in case.rows if other.source == row.source and other is not row]
        if any(other.do in MOVING for other in others):
            continue
        for who in (row.who, row.target):
            groups = groups_of(case, who) if who and (who.role or who is row.target) else []
            if fixed(groups):
                cure = f"give it a range, such as “{ranged(groups[0])}”"
                yield row.source, f"{fixed_words(case, groups)}; {cure}", "error"


def fixed(groups: list[Group]) -> bool:
    """Whether the number of every one of these groups is fixed."""
    return bool(groups) and all(group.low == group.high for group in groups)


def fixed_words(case: Case, groups: list[Group]) -> str:
    """Why a role's number cannot change."""
    line = source_of(case.practice, groups[0]).line
    return f"{groups[0].key} is always {groups[0].count} (line {line}), so this is skipped every time"


def ranged(group: Group) -> str:
    """A range round a designed number."""
    return f"{group.count} ({max(0, group.count - 1)}-{group.count + 1})"


def bibs_by_the_clock(case: Case) -> Findings:
    """A change of sides by the clock where bibs are not to change."""
    if case.practice.arrange.bibs_may_change:
        return
    for row in case.doing("exchange", "rotate", "change over"):
        sides = {group.side for who in (row.who, row.target) for group in groups_of(case, who)}
        if row.every_s is not None and (len(sides) > 1 or row.do == "rotate"):
            told = "players change sides by the clock, and arrange says “bibs may change: no”"
            yield row.source, f"{told}; let bibs change or swap players of one side", "error"


def groups_of(case: Case, who: Who | None) -> list[Group]:
    """The groups of a selector that names a side or a role."""
    return [case.groups[key] for key in sorted(case.meant(who))] if who and (who.side or who.role) else []


def waiting_for_ever(case: Case) -> Findings:
    """People wait and no sentence ever brings them in; or one brings in those who wait, and nobody waits."""
    lines = [group for group in case.practice.groups if group.waits and group.high]
    called = [row for row in case.rows for who in (row.who, row.target) if who and who.kind in NEXT]
    ends = case.doing("turn lasts", "turn points", "turn ends")
    for group in (group for group in lines if group.feeds and not called and not ends):
        told = f"{group.key} stand in line, and no turn ever ends"
        cure = "add “A turn lasts 2 minutes.” or a sentence in which the next group comes in"
        yield source_of(case.practice, group), f"{told}; {cure}", "error"
    for row in called if not lines else ():
        if any(who and who.kind == "longest waiting" for who in (row.who, row.target)):
            told = "nobody waits in this practice"
            yield row.source, f"{told}; add a line such as “waiting: 2 (0-6) behind the south end of …”", "error"


NEXT = ("next group", "longest waiting")


def ends_of_nobody(case: Case) -> Findings:
    """Sides change ends, and there are not two that attack."""
    sides = {row.who.side for row in case.doing("attacks")}
    for row in case.doing("change ends") if len(sides) < 2 else ():
        told = "two sides change ends, and sentences say of fewer than two what they attack"
        yield row.source, f"{told}; add “Amber attack … and defend …” for each", "error"


def other_sides(case: Case) -> Findings:
    """“The other side” where there is only one."""
    from turnout.practice.units import units_side

    practice = case.practice
    playing = [side for side in practice.sides if not any(g.waits for g in practice.groups if g.side == side)]
    if len(playing) > 1 or units_side(practice) is None:
        return
    for row in case.rows:
        if any(who and who.kind in ("other side", "side without the ball") for who in (row.who, row.target)):
            yield row.source, f"there is no other side: {playing[0]} play each with their own ball", "error"


CHANGES = (
    two_restarts, in_without_out, nobody_can_move, bibs_by_the_clock, waiting_for_ever, ends_of_nobody, other_sides,
)  # fmt: skip
