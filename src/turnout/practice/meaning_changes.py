"""What each change means: one row of the when/then table, found by the change's name."""

from collections.abc import Callable
from typing import Any

from turnout.practice.meaning_parts import maybe, where, who
from turnout.practice.model import Phrase
from turnout.practice.table import Who

Fields = dict[str, Any]


def exchange(change: Phrase) -> Fields:
    first, second = who(change["who"]), who(change["with"])
    if second.kind == "next group":
        first, second = second, first
    do = "rotate" if first.kind == "next group" else "exchange"
    return {"kind": "change", "do": do, "who": first, "target": second}


def change_over(change: Phrase) -> Fields:
    return {"kind": "change", "do": "change over", "who": who(change["who"]), "target": who(change["with"])}


def moves(do: str) -> Callable[[Phrase], Fields]:
    """Somebody comes in, goes out, goes back or joins a group."""
    return lambda change: {
        "kind": "change",
        "do": do,
        "who": who(change["who"]),
        "where": maybe(where, change.get("to")),
    }


def joins(change: Phrase) -> Fields:
    return {"kind": "change", "do": "joins", "who": who(change["who"]), "target": who(change["to"])}


def may_enter(change: Phrase) -> Fields:
    return {"kind": "permit", "do": "may enter", "who": who(change["who"]), "where": where(change["where"])}


def restarts(do: str) -> Callable[[Phrase], Fields]:
    """Somebody starts, plays in a new ball or keeps the ball."""
    return lambda change: {
        "kind": "restart",
        "do": do,
        "who": who(change["who"]),
        "where": maybe(where, change.get("from")),
    }


def now_attacks(change: Phrase) -> Fields:
    return {"kind": "direction", "do": "now attacks", "who": who(change["who"]), "where": where(change["where"])}


def change_ends(change: Phrase) -> Fields:
    return {"kind": "direction", "do": "change ends", "who": Who("everyone")}


def points(change: Phrase) -> Fields:
    return {"kind": "points", "do": "add points", "who": who(change["who"]), "value": change["n"]}


def turn_ends(change: Phrase) -> Fields:
    return {"kind": "turn", "do": "turn ends", "who": Who("everyone")}


CHANGE_MEANINGS: dict[str, Callable[[Phrase], Fields]] = {
    "change.exchange": exchange,
    "change.over": change_over,
    "change.comes in": moves("comes in"),
    "change.goes out": moves("goes out"),
    "change.goes back": moves("goes back"),
    "change.joins": joins,
    "change.may enter": may_enter,
    "change.starts": restarts("starts"),
    "change.new ball": restarts("new ball"),
    "change.keeps": restarts("keeps the ball"),
    "change.attacks": now_attacks,
    "change.ends": change_ends,
    "change.points": points,
    "change.turn ends": turn_ends,
}
