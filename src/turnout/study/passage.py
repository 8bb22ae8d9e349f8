"""Find a clear passage in simulated play: a score or a change of the ball with passes before and after it."""

from turnout.play.recording import PlayEvent
from turnout.play.simulate import events_of, simulate
from turnout.practice.setup import Setup

SEARCH_S = 240.0
BEFORE_S, AFTER_S = 12.0, 7.0
ANCHORS = {
    "score": 2.0,
    "save": 1.2,
    "owner": 1.0,
    "block": 0.5,
    "tackle": 0.4,
    "cut out": 0.4,
}  # what a passage may turn on, and its worth


def find(setup: Setup, *, age: int, level: str, seed: int, surface: str = "3G") -> tuple[float, float]:
    """The window (start_s, end_s) of the clearest passage in the first minutes played from this seed.

    Clear means: passes before what happens and after it, players home soon, no stop in the run-up. The first minutes
    themselves when nothing is found.
    """
    sums = simulate(setup, age=age, level=level, surface=surface, seed=seed, seconds=SEARCH_S, log=True)
    events = events_of(sums.log)
    anchors = [event for event in events if event.kind in ANCHORS and event.t_s + AFTER_S < SEARCH_S]
    if not anchors:
        return 0.0, BEFORE_S + AFTER_S
    best = max(anchors, key=lambda event: (clarity(event, events), -event.t_s))
    return max(0.0, _start(best, events)), best.t_s + AFTER_S


def clarity(anchor: PlayEvent, events: tuple[PlayEvent, ...]) -> float:
    """How well a passage round an event shows it: 0 and up; every part of the sum is a count within the window."""
    before = [e for e in events if anchor.t_s - BEFORE_S <= e.t_s < anchor.t_s]
    after = [e for e in events if anchor.t_s <= e.t_s <= anchor.t_s + AFTER_S and e is not anchor]
    run_up = [e for e in before if e.t_s > max([0.0, *(s.t_s for s in before if s.kind == "stop")])]
    passes = min(5, sum(e.kind == "pass" for e in run_up))
    follows = min(2, sum(e.kind == "pass" for e in after))
    changes = min(2, sum(e.kind == "change" for e in after))
    mess = sum(e.kind in ("spill", "stop") for e in run_up) + 0.5 * sum(e.kind == "spill" for e in after)
    return ANCHORS[anchor.kind] + passes + 0.5 * follows + 0.7 * changes - mess


def _start(anchor: PlayEvent, events: tuple[PlayEvent, ...]) -> float:
    """Begin at the start or the regain that led to it, if it lies in the run-up, a second early."""
    begins = [
        e.t_s for e in events
        if e.kind in ("start", "cut out", "tackle") and anchor.t_s - BEFORE_S <= e.t_s < anchor.t_s - 2.0
    ]  # fmt: skip
    return (min(begins) if begins else anchor.t_s - BEFORE_S) - 1.0
