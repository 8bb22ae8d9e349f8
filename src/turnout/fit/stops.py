"""Why a part cannot be done tonight: numbers, then grown-ups, then ground, then bibs; found by lifting the others."""

from math import inf

from turnout.club.tonight import Tonight
from turnout.fit.altered import endless_ground, plenty_of_bibs
from turnout.fit.arrangements import Arrangement, arrangements, most_copies
from turnout.fit.candidates import homes_of, part_goes
from turnout.fit.ground import Needs, needs_of
from turnout.fit.minutes import blocks_go, least_minutes
from turnout.fit.roles import role_table
from turnout.fit.sizes import Size, sizes_with
from turnout.fit.words import figure, joined, plural, size_words
from turnout.practice.model import Practice
from turnout.session.model import Part, Session

_MINUTES = 0.0  # only the price of waiting depends on it, not whether a part goes


def reasons_why_not(session: Session, tonight: Tonight) -> tuple[str, ...]:
    """Which limit stops which part that must be done, and whether the hour is too short or too long."""
    if not session.parts:
        return ("The session has no parts.",)
    must = tuple(part for part in session.parts if not part.may_be_left_out) or session.parts[:1]
    lines = [line for part in must for line in part_stops(part, tonight)]
    least = least_minutes(must)
    if tonight.minutes < least < inf:
        lines.append(f"The parts need {figure(least)} minutes with their change-overs; there are {_there(tonight)}.")
    elif not lines:
        lines.append(f"The parts, at their longest, do not fill {figure(tonight.minutes)} minutes.")
    return tuple(lines)


def part_stops(part: Part, tonight: Tonight) -> list[str]:
    """One sentence on what stops this part; none when it goes on its own."""
    practice, players, adults = part.practice, tonight.players, tonight.adults
    if not blocks_go(part):
        return [_blocks(practice)]
    endless, plenty = endless_ground(tonight).space, plenty_of_bibs(tonight).kit
    if not part_goes(practice, players, endless, None, plenty):
        return [_numbers(practice, players)]
    if not part_goes(practice, players, endless, adults, plenty):
        return [_adults(practice, tonight)]
    if not part_goes(practice, players, tonight.space, adults, plenty):
        return [_ground(practice, tonight)]
    return [] if part_goes(practice, players, tonight.space, adults, tonight.kit) else [_bibs(practice, tonight)]


def _blocks(practice: Practice) -> str:
    block, minutes = practice.arrange.block_minutes, practice.arrange.minutes
    return (
        f"{practice.name}: blocks of {figure(block[0])} to {figure(block[1])} minutes do not go into "
        f"{figure(minutes[0])} to {figure(minutes[1])} minutes."
    )


def _numbers(practice: Practice, players: int) -> str:
    table = role_table(practice.groups, practice.arrange.waiting_at_most)
    low, high = min(table), max(table)
    waiting = practice.arrange.waiting_at_most
    return (
        f"{practice.name}: {plural(players, 'player')} cannot be shared into areas of {low} to {high} "
        f"with at most {waiting} waiting at each."
    )


def _adults(practice: Practice, tonight: Tonight) -> str:
    copies = most_copies(practice, tonight.players, tonight.adults)
    adults = plural(tonight.adults or 0, "adult")
    return f"{practice.name}: {tonight.players} players need more than {plural(copies, 'area')}, too many for {adults}."


def _ground(practice: Practice, tonight: Tonight) -> str:
    """The ground the cheapest arrangement needs at its smallest, against the ground inside the run-off."""
    needs = needs_of(practice)
    asked = [
        (_area(needs, way, size), way.copies, size)
        for way in arrangements(practice, tonight.players, tonight.adults, _MINUTES)
        for size in sizes_with(practice, needs, homes_of(needs, way))
    ]
    _, copies, size = min(asked, key=lambda ask: (ask[0], ask[1]))
    box = needs.footprint_m((size.across_m, size.up_m))
    off = tonight.space.run_off_m
    return (
        f"{practice.name}: even at the smallest, {plural(copies, 'area')} of "
        f"{size_words(practice, size.across_m, size.up_m)} ({figure(box[0])} × {figure(box[1])} m with everything "
        f"outside) {'does' if copies == 1 else 'do'} not go on {figure(tonight.space.across_m - 2 * off)} × "
        f"{figure(tonight.space.up_m - 2 * off)} m inside the run-off."
    )


def _area(needs: Needs, way: Arrangement, size: Size) -> float:
    """Ground taken with the gaps, m2."""
    across_m, up_m = needs.footprint_m((size.across_m, size.up_m))
    return way.copies * (across_m + needs.gap_m) * (up_m + needs.gap_m)


def _bibs(practice: Practice, tonight: Tonight) -> str:
    bag = joined([f"{count} {colour}" for colour, count in tonight.kit.bibs])
    return f"{practice.name}: own shirts and the bibs in the bag ({bag}) do not dress {tonight.players} players."


def _there(tonight: Tonight) -> str:
    return figure(tonight.minutes)
