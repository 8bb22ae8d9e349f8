"""A practice's sentences as the when/then table, and what holds where no sentence says it."""

from turnout.practice.binding import bind
from turnout.practice.meaning_changes import CHANGE_MEANINGS
from turnout.practice.meaning_forms import MEANINGS, OTHER
from turnout.practice.model import GOALS, Practice, Rule, Source
from turnout.practice.relative import every_place, for_sides
from turnout.practice.table import Act, Event, Row, Where, Who
from turnout.practice.units import units_side

__all__ = ["CHANGE_MEANINGS", "MEANINGS", "default_rows", "goal_rows", "rule_rows", "table"]


def table(practice: Practice) -> tuple[Row, ...]:
    """Every sentence of a practice as rows, in order, then the defaults that no sentence of it states."""
    told = [row for number, rule in enumerate(practice.rules, 1) for row in rule_rows(rule, number)]
    rows = for_sides(practice, told)
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
    members = next(place.members for place in every_place(practice) if place.name == name)
    return (name,) if goals and left == goals == members else left


def goals_in(practice: Practice, name: str) -> tuple[str, ...]:
    """The goals and small goals a place is, or a list of places holds."""
    place = next(place for place in every_place(practice) if place.name == name)
    members = [goal for member in place.members for goal in goals_in(practice, member)]
    return (name,) if place.kind in GOALS else tuple(dict.fromkeys(members))
