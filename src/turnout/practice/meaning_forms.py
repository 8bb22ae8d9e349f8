"""What each form means: its slots to rows of the when/then table. One function per form, found by the form's name."""

from collections.abc import Callable
from typing import Any

from turnout.practice.meaning_changes import CHANGE_MEANINGS
from turnout.practice.meaning_parts import act, event, how, maybe, passes, where, while_, who
from turnout.practice.model import Phrase
from turnout.practice.table import Event, Who

Rows = list[dict[str, Any]]
OTHER, EVERYONE = Who("other side"), Who("everyone")
NOTHING, NO_PASS = "the score counts nothing", "the pass counts nothing"
KEPT = "they keep to it"


def score(rule: Phrase) -> Rows:
    scorer = who(rule["who"])
    when = Event("act", scorer, act(rule["act"]))
    after, within_s = maybe(act, rule.get("after")), maybe(float, rule.get("s"))
    return [{"kind": "points", "do": "score", "who": scorer, "when": when, "value": rule["n"], "after": after,
             "within_s": within_s}]  # fmt: skip


def score_counts(rule: Phrase) -> Rows:
    return [{"kind": "weight", "do": "score counts", "who": EVERYONE, "how": how(rule["how"]), "value": rule["n"]}]


def guard(do: str) -> Callable[[Phrase], Rows]:
    """A guard on every score: after an event, made in a way, or while something holds."""

    def rows(rule: Phrase) -> Rows:
        return [{
            "kind": "guard", "do": do, "who": EVERYONE, "event": maybe(event, rule.get("event")),
            "within_s": maybe(float, rule.get("s")), "how": maybe(how, rule.get("how")),
            "while_": maybe(while_, rule.get("while_")), "breach": NOTHING,
        }]  # fmt: skip

    return rows


def only_passes(rule: Phrase) -> Rows:
    return [{"kind": "count", "do": "only passes count", "who": EVERYONE, "passes": passes(rule["passes"]),
             "breach": NO_PASS}]  # fmt: skip


def passes_count(rule: Phrase) -> Rows:
    """So much, or nothing."""
    return [{"kind": "count", "do": "passes count", "who": EVERYONE, "passes": passes(rule["passes"]),
             "value": rule.get("n") or 0, "breach": NO_PASS}]  # fmt: skip


def limit(do: str, **more: Any) -> Callable[[Phrase], Rows]:
    """A limit on a role: where, while, until, value, act and clock come from the slots of those names."""

    def rows(rule: Phrase) -> Rows:
        return [{
            "kind": "limit", "do": do, "who": who(rule["who"]), "where": maybe(where, rule.get("where")),
            "while_": maybe(while_, rule.get("while_")), "until": maybe(event, rule.get("until")),
            "value": rule.get("n"), "act": maybe(act, rule.get("act")), "within_s": maybe(float, rule.get("s")),
            "after": maybe(act, rule.get("after")), **more,
        }]  # fmt: skip

    return rows


def number_in(do: str) -> Callable[[Phrase], Rows]:
    """How many players of a role, a side, both or anybody may be, or must stay, in a place."""

    def rows(rule: Phrase) -> Rows:
        side, role = rule.get("side"), rule.get("role")
        meant = Who("role", side, role) if role else Who("side", side) if side else EVERYONE  # type: ignore[arg-type]
        return [{"kind": "limit", "do": do, "who": meant, "where": where(rule["where"]), "value": rule["n"],
                 "each": rule.get("each") is not None, "breach": KEPT}]  # fmt: skip

    return rows


def no_tackle(rule: Phrase) -> Rows:
    sheltered = maybe(who, rule.get("whom")) or EVERYONE
    return [{"kind": "limit", "do": "no tackle", "who": sheltered, "where": maybe(where, rule.get("where")),
             "until": maybe(event, rule.get("until"))}]  # fmt: skip


def no_passes(rule: Phrase) -> Rows:
    return [{"kind": "limit", "do": "no passes", "who": EVERYONE, "passes": passes(rule["passes"])}]


def no_repeat(rule: Phrase) -> Rows:
    return [{"kind": "limit", "do": "no repeat", "who": EVERYONE, "where": where(rule["where"])}]


def plays_for(rule: Phrase) -> Rows:
    return [{"kind": "member", "do": "plays for", "who": who(rule["who"]), "target": who(rule["side"])}]


def may_come_in(rule: Phrase) -> Rows:
    return [{"kind": "permit", "do": "may come in", "who": who(rule["who"]), "where": where(rule["where"]),
             "while_": maybe(while_, rule.get("while_")), "until": maybe(event, rule.get("until"))}]  # fmt: skip


def attacks(rule: Phrase) -> Rows:
    return [{"kind": "direction", "do": "attacks", "who": who(rule["who"]), "where": where(rule["where"]),
             "also": maybe(where, rule.get("also"))}]  # fmt: skip


def changes(value: Any) -> Rows:
    """The changes of a sentence from left to right."""
    return [CHANGE_MEANINGS[change.form](change) for _, change in value.slots]


def when(rule: Phrase) -> Rows:
    happens = event(rule["event"])
    return [{**fields, "when": happens} for fields in changes(rule["then"])]


def every(seconds: float) -> Callable[[Phrase], Rows]:
    """Changes on the clock; `seconds` is the length of one unit."""
    return lambda rule: [{**fields, "every_s": rule["t"] * seconds} for fields in changes(rule["then"])]  # type: ignore[operator]


def play_starts(rule: Phrase) -> Rows:
    return [{"kind": "start", "do": "starts", "who": who(rule["who"]), "where": maybe(where, rule.get("where"))}]


def first_pass(rule: Phrase) -> Rows:
    return [{"kind": "start", "do": "first pass", "who": who(rule["who"]), "target": maybe(who, rule.get("to"))}]


def turn(do: str, slot: str, each: int = 1) -> Callable[[Phrase], Rows]:
    """The end of a turn: `each` is the seconds of one unit of time, or 1 for points."""
    return lambda rule: [{"kind": "turn", "do": do, "who": EVERYONE, "value": rule[slot] * each}]  # type: ignore[operator]


def ball_back(rule: Phrase) -> Rows:
    way: Any = rule["how"]
    giver = maybe(who, way.get("who")) or OTHER
    return [{"kind": "restart", "do": "ball in", "who": giver, "when": Event("ball out"),
             "value": way.form.removeprefix("restart.")}]  # fmt: skip


def law(do: str) -> Callable[[Phrase], Rows]:
    """A law switched on."""
    return lambda rule: [{"kind": "law", "do": do, "who": EVERYONE, "where": maybe(where, rule.get("where"))}]


MEANINGS: dict[str, Callable[[Phrase], Rows]] = {
    "score": score,
    "score counts": score_counts,
    "score after": guard("score after"),
    "score how": guard("score how"),
    "score when": guard("score when"),
    "only passes": only_passes,
    "passes count": passes_count,
    "passes do not": passes_count,
    "touches": limit("touches"),
    "stay in": limit("stay in", breach=KEPT),
    "stay out": limit("stay out", breach=KEPT),
    "at most": number_in("at most"),
    "at least": number_in("at least"),
    "no tackle": no_tackle,
    "must": limit("must"),
    "move along": limit("move along", breach=KEPT),
    "stand still": limit("stand still", breach=KEPT),
    "may not": limit("may not"),
    "no passes": no_passes,
    "only may": limit("only may"),
    "plays for": plays_for,
    "may come in": may_come_in,
    "attacks": attacks,
    "when": when,
    "every minutes": every(60.0),
    "every seconds": every(1.0),
    "play starts": play_starts,
    "first pass": first_pass,
    "turn minutes": turn("turn lasts", "t", 60),
    "turn seconds": turn("turn lasts", "t"),
    "turn points": turn("turn points", "n"),
    "ball back": ball_back,
    "free pass": law("free pass"),
    "everyone set": law("everyone set"),
    "no repeat": no_repeat,
    "offside": law("offside"),
    "no heading": law("no heading"),
    "on the ground": law("on the ground"),
}
