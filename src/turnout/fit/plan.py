"""The cheapest whole for a session: candidates, bibs and minutes together, parts left out when nothing else goes."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations

from turnout.club.tonight import Tonight
from turnout.fit import prices
from turnout.fit.bibs import Chain, chain, dress_all
from turnout.fit.candidates import Candidate, candidates, part_goes
from turnout.fit.minutes import Timing, can_share_out, share_out, shares
from turnout.session.model import Part, Session


@dataclass(frozen=True)
class Plan:
    """What was chosen: the numbers of the parts kept, their timings and dressed candidates, and the price."""

    kept: tuple[int, ...]
    timings: tuple[Timing, ...]
    chain: Chain
    price: float


def best_plan(session: Session, tonight: Tonight) -> Plan | None:
    """The cheapest plan that leaves out as few parts as can be; None when there is none."""
    for count in range(len(session.parts)):
        plans = [_plan(session, tonight, kept) for kept in _keeping(session, count)]
        found = [plan for plan in plans if plan is not None]
        if found:
            return min(found, key=lambda plan: (plan.price, plan.kept))
    return None


def plan_exists(session: Session, tonight: Tonight) -> bool:
    """Whether there is any plan; the same answer as best_plan without looking for the cheapest."""
    for count in range(len(session.parts)):
        for kept in _keeping(session, count):
            parts = tuple(session.parts[number] for number in kept)
            if can_share_out(parts, tonight.minutes) and all(_goes(part, tonight) for part in parts):
                return True
    return False


def _goes(part: Part, tonight: Tonight) -> bool:
    return part_goes(part.practice, tonight.players, tonight.space, tonight.adults, tonight.kit)


def _keeping(session: Session, leave_out: int) -> Iterator[tuple[int, ...]]:
    """The numbers of the parts that stay when this many of those that may go are left out."""
    may_go = [number for number, part in enumerate(session.parts) if part.may_be_left_out]
    for gone in combinations(may_go, leave_out):
        yield tuple(number for number in range(len(session.parts)) if number not in gone)


def _plan(session: Session, tonight: Tonight, kept: tuple[int, ...]) -> Plan | None:
    parts = tuple(session.parts[number] for number in kept)
    timings = share_out(parts, tonight.minutes)
    if timings is None:
        return None
    layers = []
    for number, found in zip(kept, ways(session, tonight, kept), strict=True):
        dressed = dress_all(session.parts[number].practice, found, tonight.kit)
        if not dressed:
            return None
        layers.append(dressed)
    walked = chain(layers, tonight.players)
    if walked is None:
        return None
    left_out = prices.LEFT_OUT * (len(session.parts) - len(kept))
    return Plan(kept, timings, walked, walked.price + sum(timing.price for timing in timings) + left_out)


def ways(session: Session, tonight: Tonight, kept: tuple[int, ...]) -> list[tuple[Candidate, ...]]:
    """The candidates of each part that is kept."""
    parts = tuple(session.parts[number] for number in kept)
    minutes = shares(parts, tonight.minutes)
    return [
        candidates(
            part.practice, tonight.players, tonight.space, tonight.adults, tonight.kit, float(max(1, round(share)))
        )
        for part, share in zip(parts, minutes, strict=True)
    ]
