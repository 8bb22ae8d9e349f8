"""Scores, guards and events that can never come about."""

from collections.abc import Iterable, Iterator

from turnout.practice.clash_parts import Case, Findings, always, said
from turnout.practice.model import LINES, Source
from turnout.practice.table import Act, How, Row, Who

THERE = ("receive in", "run into", "run through", "stop in", "score", "enter", "win", "touches")
MANY_TOUCHES = ("run into", "run through", "stop in")
PASS_ACTS = {"pass into": "into", "pass through": "through", "pass over": "over", "pass back": "back"}
INSIDE_ONLY = ("receive in", "run into", "stop in", "pass into")


def nothing_scores(case: Case) -> Findings:
    """No way to score at all."""
    if not case.doing("score", "add points") and case.practice.rules:
        source = case.practice.rules[-1].source
        cure = "nobody can score; add a sentence such as “A side scores 1 for completing 6 passes in a row.”"
        yield Source(source.file, source.line, None, "rules"), cure, "error"


def out_of_reach(case: Case) -> Findings:
    """A score, a duty or an event that another sentence makes impossible."""
    for row in case.rows:
        for who, act, until in wanted(row):
            yield from ((row.source, told, "error") for told in against(case, who, act, row) if not until)
            if until and (told := next(never(case, who, act), None)):
                yield row.source, f"{told}, so what this sentence waits for never happens; change one of them", "error"


def wanted(row: Row) -> Iterable[tuple[Who, Act, bool]]:
    """Every act a row needs somebody to do; True for one it only waits for."""
    if row.do == "score" and row.when and row.when.act:
        yield row.who, row.when.act, False
    elif row.when and row.when.act and row.when.who:
        yield row.when.who, row.when.act, True
    for event in (row.until, row.event):
        if event and event.act and event.who:
            yield event.who, event.act, True
    if row.do == "must" and row.act:
        yield row.who, row.act, False


def against(case: Case, who: Who, act: Act, row: Row) -> Iterable[str]:
    """Why an act that scores or is a duty can never be done, each reason as a sentence with its cure."""
    able = case.meant(who)
    if act.kind in MANY_TOUCHES and able and all(touches(case, key) == 1 for key in able):
        limit = next(other for other in case.doing("touches") if other.value == 1 and case.meant(other.who) & able)
        yield f"{act_words(act)} takes more than one touch, and {said(limit)}; allow a second touch"
    for told in never(case, who, act):
        yield f"nobody can do this: {told}; take one of the two out"


def never(case: Case, who: Who, act: Act) -> Iterator[str]:
    """The sentences that forbid an act to everybody who could do it."""
    able = case.meant(who)
    for limit in (limit for limit in case.rows if limit.kind in ("limit", "law")):
        theirs = case.meant(limit.who)
        kept = bool(able) and theirs >= able and always(limit) and forbids(case, limit, act)
        others = limit.do == "only may" and limit.act and same_act(limit.act, act) and not able & theirs
        if kept or others:
            yield said(limit)
    if act.kind == "touches" and act.count and able and all((touches(case, key) or 99) < act.count for key in able):
        limit = next(other for other in case.doing("touches") if case.meant(other.who) & able)
        yield said(limit)


def forbids(case: Case, limit: Row, act: Act) -> bool:
    """Whether a limit on everybody able rules the act out."""
    if limit.do == "stay out":
        return act.kind in THERE and act.where is not None and limit.where == act.where
    if limit.do == "may not" and limit.act:
        return same_act(limit.act, act)
    if limit.do == "no passes" and limit.passes:
        return forbidden_pass(limit, act)
    return (limit.do, act.kind) in (("no heading", "head"), ("on the ground", "pass over"))


def same_act(limit: Act, act: Act) -> bool:
    """Whether a prohibition of one act covers another: the same kind, anywhere or at the same place."""
    alike = (limit.where in (None, act.where)) and limit.to in (None, act.to) and limit.count in (None, act.count)
    return limit.kind == act.kind and alike


def forbidden_pass(limit: Row, act: Act) -> bool:
    """Whether the forbidden passes are the ones the act needs."""
    passes = limit.passes
    assert passes is not None
    if act.kind == "pass to":
        return passes.kind == "to" and passes.first == act.to
    if act.kind in ("passes", "passes in a row"):
        return passes.kind == "between" and act.between is not None and passes.first == act.between
    return PASS_ACTS.get(act.kind) == passes.kind and passes.where == act.where


def act_words(act: Act) -> str:
    """An act in a few words, for a message."""
    return "stopping the ball" if act.kind == "stop in" else "running the ball"


def touches(case: Case, key: str) -> int | None:
    """The touch limit of a group everywhere: of several sentences the one about fewest groups holds."""
    limits = [row for row in case.doing("touches") if row.where is None and key in case.meant(row.who)]
    narrow = min(limits, key=lambda row: len(case.meant(row.who)), default=None)
    return narrow.value if narrow and isinstance(narrow.value, int) else None


def scorers(case: Case) -> set[str]:
    """The groups that some sentence gives points to."""
    return {key for row in case.doing("score") for key in case.meant(row.who)}


def ways_shut(case: Case) -> Findings:
    """A guard or a worth for scores of a kind that cannot be."""
    for row in case.doing("score how", "score counts"):
        if row.how and (told := shut(case, row.how)):
            yield row.source, f"no score can be made so: {told}; take one of the two out", "error"
    inside = [row for row in case.doing("score how") if row.how and row.how.kind == "inside"]
    for number, row in enumerate(inside):
        for other in inside[:number]:
            if row.who == other.who and case.apart(place_in(row), place_in(other)):
                yield row.source, f"{said(other)}, and no score is made in both; keep one of the two", "error"


def place_in(row: Row) -> str:
    """The place a score has to be made in."""
    assert row.how is not None and row.how.where is not None
    return row.how.where.place


def shut(case: Case, how: How) -> str | None:
    """The sentence that rules a way to score out, if any."""
    if how.kind == "head" and (laws := case.doing("no heading")):
        return said(laws[0])
    if how.after is not None:
        return next(iter(never(case, Who("everyone"), how.after)), None)
    if how.kind == "inside" and how.where:
        able = scorers(case)
        outs = [row for row in case.doing("stay out") if always(row) and row.where == how.where]
        return next((said(row) for row in outs if able and case.meant(row.who) >= able), None)
    return None


def after_the_turn(case: Case) -> Findings:
    """Something that is waited for longer than a turn lasts."""
    turn = next(iter(case.doing("turn lasts")), None)
    for row in case.rows if turn else ():
        waits = [event.seconds for event in (row.when, row.until, row.event) if event and event.kind == "seconds pass"]
        if turn and waits and isinstance(turn.value, int) and max(w or 0 for w in waits) >= turn.value:
            yield row.source, f"{said(turn)}, so this never comes; wait for less", "error"


def too_few(case: Case) -> Findings:
    """Passes between players of whom there are fewer than two on a side."""
    for row in case.rows:
        acts = [event.act for event in (row.when, row.event) if event and event.act]
        between = [act.between for act in acts]
        between += [row.passes.first] if row.passes and row.passes.kind == "between" and row.value != 0 else []
        for who in between:
            if who is None or who.kind in ("everyone", "a side") or row.do == "no passes":
                continue
            groups = [case.groups[key] for key in case.meant(who)]
            sides = {group.side for group in groups}
            if groups and max(sum(g.high for g in groups if g.side == side) for side in sides) < 2:
                yield row.source, "a pass between them needs two of them on one side; allow more under people", "error"


def one_after_another(case: Case) -> Findings:
    """“The same … twice in a row” of places where nothing scores, or of one place alone."""
    acts = [row.when.act for row in case.doing("score") if row.when and row.when.act]
    used = {name for act in acts if act.where for name in case.singles(act.where.place)}
    for row in case.doing("no repeat"):
        assert row.where is not None
        if not used & set(case.singles(row.where.place)):
            told = f"no sentence gives points for anything at {row.where.place}"
            yield row.source, f"{told}; add one, such as “A side scores 1 for passing through …”", "error"
        if len(case.singles(row.where.place)) < 2:
            told = f"{row.where.place} is one place, and the second use of it could never count"
            yield row.source, f"{told}; name a list of places", "error"


def out_of_play(case: Case) -> Findings:
    """A score in a place where the ball is out already."""
    field = case.practice.ground[0]
    for row in case.doing("score"):
        act = row.when.act if row.when else None
        if act is None or act.where is None or act.where.how != "in" or act.kind not in INSIDE_ONLY:
            continue
        names = [name for name in case.singles(act.where.place) if case.ground[name].kind not in LINES]
        if names and all(case.apart(name, field.name) for name in names):
            told = f"the ball is out when it leaves {field.name}, so nobody can score in {act.where.place}"
            yield row.source, f"{told}; lay the place inside {field.name} or make {field.name} the larger one", "error"


SCORES = (
    nothing_scores, out_of_reach, ways_shut, after_the_turn, too_few, one_after_another, out_of_play,
)  # fmt: skip
