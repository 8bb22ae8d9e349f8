"""A shot and what became of it, in one sentence."""

from collections.abc import Sequence
from math import dist

from turnout.measure import YARD_M
from turnout.play.recording import PlayEvent
from turnout.show.cast import Caption, Cast

ENDS = ("score", "save", "block", "out", "control", "cut out", "tackle", "stop")
HELD_S = 0.05  # a ball that spills this soon after the hands were on it was not held


def shot(events: Sequence[PlayEvent], index: int, cast: Cast) -> Caption:
    """'A3 shoots from 9 yd; keeper B5 saves.' The distance is to the goal it goes in, where it does."""
    sent = events[index]
    who = cast.label(sent.player, sent.t_s)
    number = next((n for n in range(index + 1, len(events)) if events[n].kind in ENDS), None)
    if number is None:
        return Caption(sent.t_s, f"{who} shoots.", kind="shot")
    end = events[number]
    line = ((sent.x_m, sent.y_m), (end.x_m, end.y_m))
    return Caption(sent.t_s, f"{who} shoots{_what_came(events, number, sent, cast)}.", line, end.t_s, "shot")


def _what_came(events: Sequence[PlayEvent], number: int, sent: PlayEvent, cast: Cast) -> str:
    end = events[number]
    if end.kind == "score":
        return f" from {_yards(sent, end)} yd, and it is in"
    if end.kind in ("out", "stop"):
        return ", and it goes out"
    other = cast.named(end.player, end.t_s)
    if end.kind == "save":
        return f"; {other} saves{'' if _held(events, number) else ' and it comes loose'}"
    if end.kind == "block":
        return f"; {other} blocks it"
    return f"; {other} has it"


def _yards(sent: PlayEvent, end: PlayEvent) -> int:
    return max(1, round(dist((sent.x_m, sent.y_m), (end.x_m, end.y_m)) / YARD_M))


def _held(events: Sequence[PlayEvent], number: int) -> bool:
    """Whether the keeper holds the ball: it does not spill at once."""
    save = events[number]
    return not any(e.kind == "spill" and e.t_s - save.t_s < HELD_S for e in events[number + 1 : number + 3])
