"""The fit of a session to tonight: one deterministic answer with its reasons, or why not and the smallest change."""

from dataclasses import replace

from turnout.club.tonight import Tonight
from turnout.fit.altered import with_players
from turnout.fit.bibs import Dressed
from turnout.fit.change import smallest_changes
from turnout.fit.gave_way import gave_way
from turnout.fit.ground import footprint
from turnout.fit.minutes import Timing, shares
from turnout.fit.model import Copy, Fitted, FittedPart
from turnout.fit.plan import Plan, best_plan
from turnout.fit.stops import reasons_why_not
from turnout.fit.why import reasons_for
from turnout.practice.ground import setup_of
from turnout.practice.model import Practice
from turnout.session.model import Session
from turnout.shapes.boxes import turned
from turnout.shapes.packing import Spot


def fit_session(session: Session, tonight: Tonight) -> Fitted:
    """Who plays where, how long and on which grass, for these players, this ground, kit and time.

    Same inputs, same answer. `fits` is False when no arrangement keeps every limit; then `reasons` says which limit
    and `smallest_change` what would do, tried out before it is said.
    """
    plan = best_plan(session, tonight)
    if plan is None:
        sentence, changes = smallest_changes(session, tonight)
        why = reasons_why_not(session, tonight)
        return Fitted(False, session, tonight, reasons=why, smallest_change=sentence, changes=changes)
    parts = fitted_parts(session, tonight, plan)
    left_out = tuple(part.practice.name for number, part in enumerate(session.parts) if number not in plan.kept)
    fitted = Fitted(True, session, tonight, parts, left_out, price=plan.price)
    return replace(fitted, reasons=reasons_for(fitted, lambda other: _parts_or_none(session, other)))


def fit_range(session: Session, tonight: Tonight, turnouts: range | tuple[int, ...]) -> dict[int, Fitted]:
    """The fit for each number of players, everything else as tonight."""
    return {players: fit_session(session, with_players(tonight, players)) for players in turnouts}


def _parts_or_none(session: Session, tonight: Tonight) -> tuple[FittedPart, ...] | None:
    plan = best_plan(session, tonight)
    return None if plan is None else fitted_parts(session, tonight, plan)


def fitted_parts(session: Session, tonight: Tonight, plan: Plan) -> tuple[FittedPart, ...]:
    """The plan written out: copies in the space, start times, bibs, and what gave way."""
    parts = tuple(session.parts[number] for number in plan.kept)
    written = shares(parts, tonight.minutes)
    found, start = [], 0.0
    for place, part in enumerate(parts):
        timing, dressed = plan.timings[place], plan.chain.dressed[place]
        copies = copies_of(part.practice, dressed)
        found.append(
            FittedPart(
                index=plan.kept[place],
                start_min=start,
                minutes=timing.minutes,
                blocks=timing.blocks,
                rest_min=timing.rest_min,
                changeover_min=timing.changeover_min,
                copies=copies,
                bibs=_bibs(copies),
                price=_price(dressed, timing),
                gave_way=gave_way(part, copies, dressed, timing, written[place], tonight.kit.own),
                bib_changes=plan.chain.changes[place],
            )
        )
        start += timing.minutes + timing.changeover_min
    return tuple(found)


def _bibs(copies: tuple[Copy, ...]) -> tuple[tuple[str, str], ...]:
    """Side -> colour as in the first copy that has the side."""
    colours: dict[str, str] = {}
    for copy in copies:
        for side, colour in copy.bibs:
            colours.setdefault(side, colour)
    return tuple(colours.items())


def _price(dressed: Dressed, timing: Timing) -> float:
    return round(dressed.price + timing.price, 6)


def copies_of(practice: Practice, dressed: Dressed) -> tuple[Copy, ...]:
    """Every copy with its setup at the chosen size, lying in its spot."""
    way, size = dressed.candidate.way, dressed.candidate.size
    keys = [group.key for group in practice.groups]
    found = []
    for mix, waiting, spot, bibs in zip(way.mixes, way.waiting, dressed.candidate.spots, dressed.copies, strict=True):
        setup = setup_of(practice, dict(zip(keys, mix.counts, strict=True)), (size.across_m, size.up_m))
        x_m, y_m = _centre(practice, (size.across_m, size.up_m), spot)
        found.append(Copy(setup, x_m, y_m, spot.turned, waiting, bibs))
    return tuple(found)


def _centre(practice: Practice, size_m: tuple[float, float], spot: Spot) -> tuple[float, float]:
    """Where the practice's own (0, 0) lies when its footprint fills the spot."""
    box = footprint(practice, size_m)
    lying = turned(box) if spot.turned else box
    return spot.box.x0 - lying.x0, spot.box.y0 - lying.y0
