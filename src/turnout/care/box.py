"""The care box: the cautions that need neither weather nor squad data."""

from collections.abc import Iterator
from datetime import date
from math import ceil

from turnout.care.model import Caution, Level, National
from turnout.care.national import (
    COMMON_PRACTICE,
    CONCUSSION,
    FIRST_AID,
    GOALS,
    RUN_OFF,
    THUNDER,
    UK,
    is_stale,
    national,
)
from turnout.evidence import number

RUN_OFF_STOP_M = 1.5  # own choice: with less clear ground than this nobody plays towards it
ADULTS_AT_LEAST = 2
SCHOOL_ENDS = 18


def youngest_age(age: int) -> int:
    """The youngest a player of an Under-`age` squad may be when the season starts, years: the group's lower bound.

    Under 12 means not yet 12 on 31 August, so 11; and a player may play up one year, so 10.
    """
    return age - 2


def adults_needed(*, players: int, age: int, country: str = "England") -> int:
    """Adults for `players` of the age group U`age`: max(2, ceil(players / ratio)), the ratio by the youngest."""
    return max(ADULTS_AT_LEAST, ceil(players / _ratio(age, country)[0]))


def care_box(
    *,
    players: int,
    age: int,
    adults: int | None,
    first_aider: bool | None,
    uses_goals: bool,
    run_off_m: float,
    outdoors: bool,
    country: str,
    on: date | None = None,
) -> tuple[Caution, ...]:
    """The cautions whose trigger holds, the gravest first.

    age: of the age group (12 for U12). adults or first_aider None: nobody said, which is itself a caution.
    run_off_m: least clear ground round a playing line, metres. on: the evening, to tell when a value is too old.
    """
    rows = (
        *_goals(uses_goals),
        *_adults(players, age, adults, country, on),
        *_alone(adults),
        *_heading(age, country, on),
        *_head_knock(country),
        *_thunder(outdoors),
        *_first_aider(first_aider),
        *_run_off(run_off_m, outdoors),
        *_look_over(),
    )
    return tuple(sorted(rows, key=lambda caution: ("stop", "caution", "default").index(caution.level)))


def _goals(uses_goals: bool) -> Iterator[Caution]:
    if uses_goals:
        why = "A goal that tips can kill: adults carry it, anchor it and pull at it first."
        yield Caution("goals", "Anchor or weight every goal before anybody plays.", why, str(GOALS), "stop")


def _adults(players: int, age: int, adults: int | None, country: str, on: date | None) -> Iterator[Caution]:
    need = adults_needed(players=players, age=age, country=country)
    ratio, row = _ratio(age, country)
    youngest = min(SCHOOL_ENDS, youngest_age(age))
    why = f"One adult to {ratio} where the youngest may be {youngest}, and never fewer than two."
    do_now, level = _adults_order(adults, need, players)
    yield Caution("adults", do_now, _dated(why, row, on), _printed(row, country), level)


def _adults_order(adults: int | None, need: int, players: int) -> tuple[str, Level]:
    if adults is None:
        return f"Say how many adults are here; {players} players need {need}.", "caution"
    if adults < ADULTS_AT_LEAST:
        return f"Do not start: {players} players need {need} adults.", "stop"
    if adults < need:
        return f"Find {need - adults} more: {players} players need {need} adults.", "caution"
    return f"Keep {need} adults on the ground for {players} players.", "default"


def _alone(adults: int | None) -> Iterator[Caution]:
    level: Level = "stop" if adults is not None and adults < ADULTS_AT_LEAST else "default"
    why = "At least two adults of 18 or over, the whole time."
    yield Caution("alone", "Never one adult alone with a child.", why, "NSPCC, undated", level)


def _heading(age: int, country: str, on: date | None) -> Iterator[Caution]:
    row = national("heading", country=country, age=age)
    if row is not None and number(row.value) == 0:
        why = _dated("At U11 and under nobody heads in training: throw, volley or keep it low.", row, on)
        do_now = "No heading: play the ball along the ground."
        yield Caution("heading", do_now, why, _printed(row, country), "stop")


def _head_knock(country: str) -> Iterator[Caution]:
    at_home = country in UK
    do_now = "Head knock: off, and not back today."
    call = (
        "111 within 24 hours; 999 on any red flag." if at_home else "A doctor within 24 hours; ambulance on a red flag."
    )
    source = str(CONCUSSION) + ("" if at_home else "; ask your association")
    yield Caution("head knock", do_now, call, source, "stop")


def _thunder(outdoors: bool) -> Iterator[Caution]:
    if outdoors:
        minutes = number("lightning.resume")
        why = "Into a building or a hard-topped car; each new thunder starts the wait again."
        do_now = f"Thunder: clear the pitch, {minutes:.0f} minutes from the last."
        yield Caution("thunder", do_now, why, str(THUNDER), "stop")


def _first_aider(first_aider: bool | None) -> Iterator[Caution]:
    if not first_aider:
        do_now = "Name tonight’s first-aider." if first_aider is None else "Find a first-aider before you start."
        yield Caution("first aider", do_now, "One adult who can help and is free to.", str(FIRST_AID), "caution")


def _run_off(run_off_m: float, outdoors: bool) -> Iterator[Caution]:
    least_m = number("runoff.fixed")
    hard = "fence, post and kerb" if outdoors else "wall, bench and post"
    why = f"Players run on past the line; tonight the nearest is {run_off_m:.2g} m away."
    level: Level = "default"
    do_now = f"Keep {least_m:.0f} m clear of every {hard}."
    if run_off_m < least_m:
        do_now = f"Move the lines: {least_m:.0f} m clear of every {hard}."
        level = "stop" if run_off_m < RUN_OFF_STOP_M else "caution"
    yield Caution("run-off", do_now, why, str(RUN_OFF), level)


def _look_over() -> Iterator[Caution]:
    do_now = "Look over boots, shin pads and jewellery."
    yield Caution("boots", do_now, "Laces tied, pads in, rings and chains off.", COMMON_PRACTICE, "default")


def _ratio(age: int, country: str) -> tuple[int, National]:
    row = national("supervision", country=country, age=max(0, youngest_age(age)))
    assert row is not None  # the table covers every age and, by its last rows, every country
    return int(number(row.value)), row


def _printed(row: National, country: str) -> str:
    own = row.country == country
    return str(row.origin) + ("" if own else "; ask your association")


def _dated(why: str, row: National, on: date | None) -> str:
    return f"{why} Looked up over a year ago: ask your association." if on and is_stale(row, on) else why
