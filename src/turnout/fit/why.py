"""Why this and not another: fit again with one limit lifted and compare. True by construction, because it was done."""

from collections.abc import Callable
from math import ceil

from turnout.club.tonight import Tonight
from turnout.fit.altered import endless_ground, plenty_of_adults, plenty_of_bibs
from turnout.fit.gave_way import AREA_SEEN
from turnout.fit.ground import area_per_player_m2
from turnout.fit.minutes import least_minutes
from turnout.fit.model import Fitted, FittedPart
from turnout.fit.stops import part_stops
from turnout.fit.words import blocks_words, copies_words, figure, joined, plural

Refit = Callable[[Tonight], tuple[FittedPart, ...] | None]
Lift = Callable[[Tonight], Tonight]


def reasons_for(fitted: Fitted, refit: Refit) -> tuple[str, ...]:
    """What was chosen, what gave way, what was left out, what it asks of the adults, what each limit held back."""
    lines = []
    for part in fitted.parts:
        name = name_of(part)
        lines.append(f"{name}: {copies_words(part)}; {blocks_words(part)}.")
        lines += [f"{name}: {sentence[0].lower()}{sentence[1:]}" for sentence in part.gave_way]
    return (*lines, *_left_out(fitted), *_adults(fitted), *held_back(fitted, refit))


def name_of(part: FittedPart) -> str:
    """The practice's name."""
    return part.copies[0].setup.practice.name


def _left_out(fitted: Fitted) -> list[str]:
    """Why a part is missing: the limit that stops it, or the hour."""
    lines = []
    kept = {part.index for part in fitted.parts}
    for number, part in enumerate(fitted.session.parts):
        if number in kept:
            continue
        stops = part_stops(part, fitted.tonight)
        with_it = tuple(fitted.session.parts[other] for other in sorted(kept | {number}))
        least = least_minutes(with_it)
        if not stops and least > fitted.tonight.minutes:
            stops = [f"{part.practice.name}: with it the hour needs {figure(least)} minutes at least."]
        lines.append(f"{part.practice.name} is left out. {' '.join(stops)}".rstrip())
    return lines


def _adults(fitted: Fitted) -> list[str]:
    """When nobody said how many adults come: how many the areas laid at once ask for."""
    if fitted.tonight.adults is not None:
        return []
    asked = [
        (ceil(len(part.copies) / part.copies[0].setup.practice.arrange.copies_per_adult), part) for part in fitted.parts
    ]
    most, part = max(asked, key=lambda pair: (pair[0], -pair[1].index))
    return [
        f"How many adults come is not known. {name_of(part)} with {plural(len(part.copies), 'area')} at once "
        f"asks for {plural(most, 'adult')} to look after."
    ]


def held_back(fitted: Fitted, refit: Refit) -> list[str]:
    """What more ground, more adults or more bibs would change, each lifted alone, then ground and adults together."""
    lifts: list[tuple[str, Lift]] = [("ground", endless_ground), ("bibs", plenty_of_bibs)]
    if fitted.tonight.adults is not None:
        lifts.insert(1, ("adults", plenty_of_adults))
    lines, nothing = [], []
    for what, lift in lifts:
        changed = _changes(fitted, refit(lift(fitted.tonight)), f"More {what}", bibs=what == "bibs")
        lines += changed
        nothing += [] if changed else [f"more {what}"]
    if fitted.tonight.adults is not None and {"more ground", "more adults"} <= set(nothing):
        both = refit(plenty_of_adults(endless_ground(fitted.tonight)))
        lines += _changes(fitted, both, "More ground and more adults together", bibs=False)
    if nothing:
        lines.append(f"{_alone(nothing)} would change nothing you would see.")
    return lines


def _alone(things: list[str]) -> str:
    first = things[0].capitalize()
    return f"{first} alone" if len(things) == 1 else f"{joined([first, *things[1:]]).replace(' and ', ' or ')} alone"


def _changes(fitted: Fitted, other: tuple[FittedPart, ...] | None, head: str, *, bibs: bool) -> list[str]:
    """What a coach would see of the other fit: parts done otherwise, parts no longer left out, fewer bib changes."""
    now = {part.index: part for part in fitted.parts}
    lines = []
    for part in other or ():
        if part.index not in now:
            lines.append(f"{head} would bring {name_of(part)} back: {copies_words(part)}.")
        elif seen_differently(now[part.index], part):
            lines.append(f"{head} would give {name_of(part)} {copies_words(part)}.")
    saved = _bib_changes(fitted.parts) - _bib_changes(other or fitted.parts)
    if bibs and not lines and saved > 0:
        lines.append(f"{head} would save {plural(saved, 'change')} of bibs.")
    return lines


def _bib_changes(parts: tuple[FittedPart, ...]) -> int:
    return sum(part.bib_changes for part in parts)


def seen_differently(one: FittedPart, other: FittedPart) -> bool:
    """Whether a coach would see a difference: numbers, waiting, or a tenth of the room."""
    if _numbers(one) != _numbers(other):
        return True
    room, new = (area_per_player_m2(part.copies[0].setup) for part in (one, other))
    return abs(new / room - 1) > AREA_SEEN


def _numbers(part: FittedPart) -> list[tuple[tuple[tuple[str, int], ...], int]]:
    return sorted((copy.setup.counts, copy.waiting) for copy in part.copies)
