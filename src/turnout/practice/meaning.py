"""What each form means: trees to rows of the when/then table. One function per form, found by the form's name."""

from collections.abc import Callable
from typing import Any

from turnout.practice.binding import bind
from turnout.practice.model import GOALS, Phrase, Practice, Rule, Source
from turnout.practice.table import Act, Event, Passes, Row, Where, While, Who
from turnout.practice.units import units_side

Rows = list[dict[str, Any]]
OTHER = Who("other side")


def table(practice: Practice) -> tuple[Row, ...]:
    """Every sentence of a practice as rows, in order, then the defaults that no sentence of it states."""
    rows = [row for number, rule in enumerate(practice.rules, 1) for row in rule_rows(rule, number)]
    return (*rows, *goal_rows(practice, rows), *default_rows(practice, rows))


def rule_rows(rule: Rule, number: int = 1) -> list[Row]:
    """The rows of one rule; `number` is its place among the rules, from 1."""
    phrase = bind(rule.phrase)
    return [
        Row(source=rule.source, order=(number, place), **fields)
        for place, fields in enumerate(MEANINGS[phrase.form](phrase), 1)
    ]


def default_rows(practice: Practice, rows: list[Row]) -> list[Row]:
    """The fixed default: a ball that goes out comes back by a kick-in of the other side at the nearest point; where
    many small sides have balls of their own, whose ball it is brings it back in."""
    if any(row.kind == "restart" and row.when and row.when.kind == "ball out" for row in rows):
        return []
    giver, how = OTHER, "kick-in"
    if side := units_side(practice):
        giver, how = Who("side", side=side), "dribble-in"
    file = practice.rules[0].source.file if practice.rules else practice.key
    source = Source(file, 0, None, f"By default the ball comes back in with a {how}.")
    out = Event("ball out")
    return [Row("restart", "ball in", giver, source, (len(practice.rules) + 1, 1), when=out, value=how)]


def goal_rows(practice: Practice, rows: list[Row]) -> list[Row]:
    """A goal that a side attacks is worth 1 to it, where no sentence says what scoring there is worth."""
    found = []
    for row in (row for row in rows if row.do == "attacks" and row.where is not None):
        for number, place in enumerate(unsaid(practice, row, rows), 2):
            when = Event("act", row.who, Act("score", where=Where(place)))
            found.append(Row("points", "score", row.who, row.source, (row.order[0], number), when=when, value=1))
    return found


def unsaid(practice: Practice, attack: Row, rows: list[Row]) -> tuple[str, ...]:
    """The goals a side attacks for which no sentence says what they are worth to it; the whole list if it is all."""
    name = attack.where.place if attack.where else ""
    said = [
        row.when.act.where.place
        for row in rows
        if row.do == "score" and row.when and row.when.act and row.when.act.where
        and row.when.act.kind == "score" and row.who.side in (None, attack.who.side)
    ]  # fmt: skip
    spoken = {goal for place in said for goal in goals_in(practice, place)}
    goals = goals_in(practice, name)
    left = tuple(goal for goal in goals if goal not in spoken)
    members = next(place.members for place in practice.ground if place.name == name)
    return (name,) if goals and left == goals == members else left


def goals_in(practice: Practice, name: str) -> tuple[str, ...]:
    """The goals and small goals a place is, or a list of places holds."""
    place = next(place for place in practice.ground if place.name == name)
    members = [goal for member in place.members for goal in goals_in(practice, member)]
    return (name,) if place.kind in GOALS else tuple(dict.fromkeys(members))


def who(value: Any) -> Who:
    """A noun phrase as a selector."""
    name = value.form.removeprefix("who.")
    role, side = value.get("role"), value.get("side")
    if name in ("side", "role"):
        return Who(name, side=side, role=role)
    if name == "its role":
        return Who("its role", role=role, whose="its")
    whose, _, how = name.partition(" ")
    if how in ("nearest", "farthest"):
        return Who(how, role=role, whose=whose)  # type: ignore[arg-type]
    return Who(name)


def where(value: Any) -> Where:
    """A place phrase."""
    how = {"place.named": "in", "place.edge": "edge", "place.outside": "outside"}[value.form]
    return Where(value["place"], how)  # type: ignore[arg-type]


def act(value: Any) -> Act:
    """An act with its count, its company and its place."""
    count = value.get("k") if value.get("k") is not None else value.get("n")
    return Act(
        value.form.removeprefix("act."), count, maybe(who, value.get("among")), maybe(who, value.get("to")),
        maybe(where, value.get("where")),
    )  # type: ignore[arg-type]  # fmt: skip


def event(value: Any) -> Event:
    """What a When or an until waits for."""
    kind = value.form.removeprefix("event.")
    return Event(
        kind, maybe(who, value.get("who")), maybe(act, value.get("act")), maybe(where, value.get("where")),
        maybe(float, value.get("s")),
    )  # fmt: skip


def while_(value: Any) -> While:
    """A condition of the moment."""
    kind = {"while.has": "has the ball", "while.ball in": "ball in"}[value.form]
    return While(kind, maybe(who, value.get("who")), maybe(where, value.get("where")))  # type: ignore[arg-type]


def passes(value: Any) -> Passes:
    """A kind of pass."""
    return Passes(value.form.removeprefix("passes."), who(value["who"]), maybe(who, value.get("to")))  # type: ignore[arg-type]


def maybe(read: Callable[[Any], Any], value: Any) -> Any:
    """`read` of a slot that is filled, else None."""
    return None if value is None else read(value)


def score(rule: Phrase) -> Rows:
    scorer = who(rule["who"])
    when = Event("act", scorer, act(rule["act"]))
    after, within_s = maybe(act, rule.get("after")), maybe(float, rule.get("s"))
    return [{"kind": "points", "do": "score", "who": scorer, "when": when, "value": rule["n"], "after": after,
             "within_s": within_s}]  # fmt: skip


def only_passes(rule: Phrase) -> Rows:
    return [{"kind": "count", "do": "only passes count", "who": Who("everyone"), "passes": passes(rule["passes"])}]


def limit(do: str) -> Callable[[Phrase], Rows]:
    """A limit on a role: where, while, until and value come from the slots of those names."""

    def rows(rule: Phrase) -> Rows:
        return [{
            "kind": "limit", "do": do, "who": who(rule["who"]), "where": maybe(where, rule.get("where")),
            "while_": maybe(while_, rule.get("while_")), "until": maybe(event, rule.get("until")),
            "value": rule.get("n"),
        }]  # fmt: skip

    return rows


def no_tackle(rule: Phrase) -> Rows:
    sheltered = maybe(who, rule.get("whom")) or Who("everyone")
    return [{"kind": "limit", "do": "no tackle", "who": sheltered, "where": maybe(where, rule.get("where")),
             "until": maybe(event, rule.get("until"))}]  # fmt: skip


def no_repeat(rule: Phrase) -> Rows:
    return [{"kind": "limit", "do": "no repeat", "who": Who("everyone"), "where": where(rule["where"])}]


def plays_for(rule: Phrase) -> Rows:
    return [{"kind": "member", "do": "plays for", "who": who(rule["who"]), "target": who(rule["side"])}]


def attacks(rule: Phrase) -> Rows:
    return [{"kind": "direction", "do": "attacks", "who": who(rule["who"]), "where": where(rule["where"]),
             "also": maybe(where, rule.get("also"))}]  # fmt: skip


def changes(value: Any) -> Rows:
    """The changes of a sentence from left to right."""
    return [CHANGE_MEANINGS[change.form](change) for _, change in value.slots]


def exchange(change: Phrase) -> dict[str, Any]:
    first, second = who(change["who"]), who(change["with"])
    if second.kind == "next group":
        first, second = second, first
    do = "rotate" if first.kind == "next group" else "exchange"
    return {"kind": "change", "do": do, "who": first, "target": second}


def change_over(change: Phrase) -> dict[str, Any]:
    return {"kind": "change", "do": "change over", "who": who(change["who"]), "target": who(change["with"])}


def moves(do: str) -> Callable[[Phrase], dict[str, Any]]:
    """Somebody comes in or goes out."""
    return lambda change: {
        "kind": "change",
        "do": do,
        "who": who(change["who"]),
        "where": maybe(where, change.get("to")),
    }


def restarts(change: Phrase) -> dict[str, Any]:
    return {"kind": "restart", "do": "starts", "who": who(change["who"]), "where": maybe(where, change.get("from"))}


def when(rule: Phrase) -> Rows:
    happens = event(rule["event"])
    return [{**fields, "when": happens} for fields in changes(rule["then"])]


def every(seconds: float) -> Callable[[Phrase], Rows]:
    """Changes on the clock; `seconds` is the length of one unit."""
    return lambda rule: [{**fields, "every_s": rule["t"] * seconds} for fields in changes(rule["then"])]  # type: ignore[operator]


def play_starts(rule: Phrase) -> Rows:
    return [{"kind": "start", "do": "starts", "who": who(rule["who"]), "where": maybe(where, rule.get("where"))}]


def ball_back(rule: Phrase) -> Rows:
    how: Any = rule["how"]
    giver = maybe(who, how.get("who")) or OTHER
    return [{"kind": "restart", "do": "ball in", "who": giver, "when": Event("ball out"),
             "value": how.form.removeprefix("restart.")}]  # fmt: skip


CHANGE_MEANINGS: dict[str, Callable[[Phrase], dict[str, Any]]] = {
    "change.exchange": exchange,
    "change.over": change_over,
    "change.comes in": moves("comes in"),
    "change.goes out": moves("goes out"),
    "change.starts": restarts,
}
MEANINGS: dict[str, Callable[[Phrase], Rows]] = {
    "score": score,
    "only passes": only_passes,
    "touches": limit("touches"),
    "stay in": limit("stay in"),
    "stay out": limit("stay out"),
    "no tackle": no_tackle,
    "move along": limit("move along"),
    "stand still": limit("stand still"),
    "plays for": plays_for,
    "attacks": attacks,
    "when": when,
    "every minutes": every(60.0),
    "every seconds": every(1.0),
    "play starts": play_starts,
    "ball back": ball_back,
    "no repeat": no_repeat,
}
