"""The phrases of a sentence as parts of a row: who, where, acts, events, conditions, kinds of pass, ways to score."""

from collections.abc import Callable
from typing import Any, get_args

from turnout.practice.table import Act, Event, How, Passes, Relative, Where, While, Who

RELATIVES = frozenset(get_args(Relative))
PLACED = {"named": "in", "edge": "edge", "outside": "outside", "behind": "behind"}


def who(value: Any) -> Who:
    """A noun phrase as a selector."""
    name = value.form.removeprefix("who.")
    role, side = value.get("role"), value.get("side")
    if name in ("side", "role"):
        return Who(name, side=side, role=role)
    if name == "some":
        return Who("some", side=side, role=role, count=value["n"])
    if name in ("its role", "other role"):
        return Who(name, role=role, whose=name.split()[0])  # type: ignore[arg-type]
    whose, _, how = name.partition(" ")
    if how in ("nearest", "farthest"):
        return Who(how, role=role, whose=whose)  # type: ignore[arg-type]
    return Who(name)


def where(value: Any) -> Where:
    """A place phrase."""
    name = value.form.removeprefix("place.")
    if name in RELATIVES:
        return Where("", relative=name)
    return Where(value["place"], PLACED[name])  # type: ignore[arg-type]


def act(value: Any) -> Act:
    """An act with its count, its company, its places and its seconds."""
    count = value.get("k") if value.get("k") is not None else value.get("n")
    return Act(
        value.form.removeprefix("act."), count, maybe(who, value.get("among")), maybe(who, value.get("to")),
        maybe(where, value.get("where")), maybe(where, value.get("further")), maybe(float, value.get("s")),
    )  # type: ignore[arg-type]  # fmt: skip


def event(value: Any) -> Event:
    """What a When, an until or a guard waits for."""
    kind = value.form.removeprefix("event.")
    return Event(
        kind, maybe(who, value.get("who")), maybe(act, value.get("act")), maybe(where, value.get("where")),
        maybe(float, value.get("s")),
    )  # fmt: skip


def while_(value: Any) -> While:
    """A condition of the moment."""
    kind = {"has": "has the ball"}.get(value.form.removeprefix("while."), value.form.removeprefix("while."))
    return While(kind, maybe(who, value.get("who")), maybe(where, value.get("where")))


def passes(value: Any) -> Passes:
    """A kind of pass."""
    kind = value.form.removeprefix("passes.")
    return Passes(kind, maybe(who, value.get("who")), maybe(who, value.get("to")), maybe(where, value.get("where")))


def how(value: Any) -> How:
    """A way to score."""
    kind = value.form.removeprefix("how.")
    return How(
        kind, maybe(where, value.get("where")), maybe(who, value.get("who")), maybe(act, value.get("after")),
        maybe(float, value.get("s")),
    )  # fmt: skip


def maybe(read: Callable[[Any], Any], value: Any) -> Any:
    """`read` of a slot that is filled, else None."""
    return None if value is None else read(value)
