"""Where many balls are in play, the telling follows one; and which gate a pass goes through."""

from collections.abc import Sequence

from turnout.play.recording import PlayEvent
from turnout.practice.nets import ends
from turnout.show.cast import Cast
from turnout.show.drawing import Point


def followed(events: Sequence[PlayEvent], cast: Cast) -> int:
    """The ball the telling follows, by number: the one with most scores, then most passes; 0 where there is one."""

    def told(ball: int) -> tuple[int, int, int]:
        own = of_ball(ball, events, cast)
        return sum(event.kind == "score" for event in own), sum(event.kind == "pass" for event in own), -ball

    return max(range(max(1, len(cast.teams))), key=told)


def of_ball(ball: int, events: Sequence[PlayEvent], cast: Cast) -> list[PlayEvent]:
    """What happened to one ball: to its players; everything where there is one ball."""
    if len(cast.teams) < 2:
        return list(events)
    return [event for event in events if event.player in cast.teams[ball]]


def gate_between(cast: Cast, sent: PlayEvent, end: PlayEvent) -> str | None:
    """The gate whose line a pass crosses, if any."""
    a, b = (sent.x_m, sent.y_m), (end.x_m, end.y_m)
    gates = [place for _, place in cast.setup.places if place.kind == "gate"]
    return next((gate.name for gate in gates if _cross(a, b, *ends(gate))), None)


def _cross(a: Point, b: Point, c: Point, d: Point) -> bool:
    """Whether the stretch from a to b crosses that from c to d."""
    return _left(a, b, c) != _left(a, b, d) and _left(c, d, a) != _left(c, d, b)


def _left(a: Point, b: Point, c: Point) -> bool:
    return (b[0] - a[0]) * (c[1] - a[1]) > (b[1] - a[1]) * (c[0] - a[0])
