"""The head: how much heading an age may train, and when play may go on after a knock. Dates only; nothing is stored."""

from dataclasses import dataclass
from datetime import date, timedelta
from typing import Literal

from turnout.care.model import Origin
from turnout.care.national import CONCUSSION, national
from turnout.evidence import number


@dataclass(frozen=True)
class HeadingCap:
    """Most headers a player may train in one session, and one such session a week or a month (None: not said)."""

    headers: int
    one_session_a: Literal["week", "month"] | None
    origin: Origin


def heading_cap(*, age: int, country: str = "England") -> HeadingCap | None:
    """The cap for the age group U`age`; None where the country's table, or the one used elsewhere, does not say."""
    row = national("heading", country=country, age=age)
    return None if row is None else HeadingCap(int(number(row.value)), row.one_session_a, row.origin)


def heading_again_on(cap: HeadingCap, last: date | None) -> date | None:
    """The first day heading may be trained again after a session on `last`; None: any day, or (headers 0) never.

    A week is seven days, a month thirty-one, so that no month ever holds two.
    """
    if last is None or cap.one_session_a is None or cap.headers == 0:
        return None
    return last + timedelta(days=7 if cap.one_session_a == "week" else 31)


@dataclass(frozen=True)
class Return:
    """Earliest dates after a suspected concussion; the days free of signs asked for beside them come on top."""

    head_risk_training: date
    match: date
    origin: Origin


def return_after_knock(on: date) -> Return:
    """Earliest dates after a suspected concussion on `on`, day 0 (evidence: uk-concussion); shown, never saved."""
    training, match = (
        timedelta(days=number(f"concussion.return.{step}.UK")) for step in ("headrisk-training", "match")
    )
    return Return(on + training, on + match, CONCUSSION)
