"""Simulated figures against a published row: inside its band or outside, the claimed sign clear, flat or reversed."""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np

from turnout.evidence import Check
from turnout.study.figures import student90

Verdict = Literal["inside", "outside", "clear", "flat", "reversed", "waiting"]
LEAST_SEEDS = 6
_NUMBER = r"-?\d+(?:\.\d+)?"
_ORDERS = ("rising", "strictly rising", "rises", "hand-coded > random > hold")


@dataclass(frozen=True)
class Figure:
    """One simulated figure: what it is, its mean over seeds and the 90 % interval of that mean."""

    what: str
    value: float
    low: float
    high: float


@dataclass(frozen=True)
class Band:
    """Where a figure must lie, ends included unless `open_low`/`open_high`."""

    low: float = float("-inf")
    high: float = float("inf")
    open_low: bool = False
    open_high: bool = False

    def holds(self, value: float) -> bool:
        above = value > self.low if self.open_low else value >= self.low
        below = value < self.high if self.open_high else value <= self.high
        return bool(above and below)

    def says(self) -> str:
        """The band in signs."""
        if np.isinf(self.high):
            return f"{'>' if self.open_low else '>='} {self.low:g}"
        if np.isinf(self.low):
            return f"{'<' if self.open_high else '<='} {self.high:g}"
        if self.low == self.high:
            return f"{self.low:g}"
        return f"{self.low:g} to {self.high:g}"


@dataclass(frozen=True)
class Answer:
    """What simulated play says to one outside row.

    value, low, high: the row's first figure with its 90 % interval over seeds; of several figures the least favourable.
    """

    id: str
    value: float
    low: float
    high: float
    verdict: Verdict
    figures: tuple[Figure, ...]
    said: str  # what was played, or what the row waits for
    missed: tuple[str, ...] = ()  # what misses, and by how much

    @property
    def good(self) -> bool:
        return self.verdict in ("inside", "clear")

    def why(self) -> str:
        """The verdict with its figures, what misses, and what was played, in words."""
        if self.verdict == "waiting":
            return f"waiting: {self.said}"
        parts = [f"{one.what} {one.value:.3g} ({one.low:.3g} to {one.high:.3g})" for one in self.figures]
        misses = f" Misses: {'; '.join(self.missed)}." if self.missed else ""
        return f"{self.verdict}: {'; '.join(parts)}.{misses} {self.said}"


def mean_of(what: str, values: Sequence[float]) -> Figure:
    """A figure's mean over seeds with its 90 % interval (Student's t); values that are not a number are left out."""
    known = np.array([value for value in values if np.isfinite(value)])
    if len(known) < 2:
        value = float(known.mean()) if len(known) else float("nan")
        return Figure(what, value, float("-inf"), float("inf"))
    half = student90(len(known) - 1) * float(known.std(ddof=1)) / len(known) ** 0.5
    value = float(known.mean())
    return Figure(what, value, value - half, value + half)


def bands_of(check: Check) -> tuple[Band, ...]:
    """The band, or one band per figure, a row states; raises ValueError on a row that states none.

    Orders are judged on the steps from one to the next: each above 0.
    """
    said, room = check.expected.strip(), check.tolerance
    if said in _ORDERS:
        return (Band(low=0.0, open_low=True),)
    if said == "never":
        return (Band(0.0, 0.0),)
    if bound := re.fullmatch(rf"(?:ratio )?(<=|>=|<|>) ?({_NUMBER})", said):
        return (_bound(bound[1], float(bound[2])),)
    if bound := re.fullmatch(rf"positive and <({_NUMBER}) points", said):
        return (Band(0.0, float(bound[1]), open_low=True, open_high=True),)
    if bound := re.fullmatch(r"(\d+)-(\d+)", said):
        return (Band(float(bound[1]), float(bound[2])),)
    if re.search(r"[a-z] \d+-\d+", room):
        return tuple(Band(float(low), float(high)) for low, high in re.findall(r"(\d+)-(\d+)", room))
    if not re.fullmatch(_NUMBER, said):
        raise ValueError(f"{check.id}: no band is read out of “{said}” and “{room}”.")
    middle = float(said)
    half = abs(middle) * float(room.rstrip("%")) / 100 if room.endswith("%") else float(room)
    return (Band(middle - half, middle + half),)


def judge(check: Check, figures: Sequence[Figure]) -> Verdict:
    """The verdict on the figures of a row: a direction's figures are positive where its claim holds."""
    if check.kind == "direction":
        return _sign(figures)
    pairs = zip(_wanted(check, figures), figures, strict=True)
    return "inside" if all(band.holds(one.value) for band, one in pairs) else "outside"


def misses(check: Check, figures: Sequence[Figure]) -> tuple[str, ...]:
    """Every figure that misses, and by how much, in words; nothing where the row is met."""
    if check.kind == "direction":
        said = [_short_of_sign(one) for one in figures]
    else:
        said = [_short_of(band, one) for band, one in zip(_wanted(check, figures), figures, strict=True)]
    return tuple(filter(None, said))


def _wanted(check: Check, figures: Sequence[Figure]) -> tuple[Band, ...]:
    bands = bands_of(check)
    wanted = bands * len(figures) if len(bands) == 1 else bands
    if len(wanted) != len(figures):
        raise ValueError(f"{check.id} states {len(bands)} bands and got {len(figures)} figures.")
    return wanted


def _short_of(band: Band, one: Figure) -> str:
    if band.holds(one.value):
        return ""
    if np.isnan(one.value):
        return f"{one.what} was never seen in play"
    below = one.value <= band.low
    gap = band.low - one.value if below else one.value - band.high
    return f"{one.what} is {one.value:.3g}, {gap:.2g} {'below' if below else 'above'} {band.says()}"


def _short_of_sign(one: Figure) -> str:
    if one.low > 0:
        return ""
    if one.high < 0:
        return f"{one.what} goes the other way, {one.value:.3g}"
    return f"{one.what}, {one.value:.3g}, is not clear of zero"


def answer(check: Check, figures: Sequence[Figure], said: str) -> Answer:
    """An answer of these figures; the least favourable one speaks for the row."""
    signs = check.kind == "direction" or check.expected in _ORDERS
    first = min(figures, key=lambda one: one.low) if signs else figures[0]
    return Answer(
        check.id,
        first.value,
        first.low,
        first.high,
        judge(check, figures),
        tuple(figures),
        said,
        misses(check, figures),
    )


def waiting(check: Check, reason: str) -> Answer:
    """An open answer: the simulator does not yet give what the row needs."""
    nothing = float("nan")
    return Answer(check.id, nothing, nothing, nothing, "waiting", (), reason)


def _sign(figures: Sequence[Figure]) -> Verdict:
    if any(one.high < 0 for one in figures):
        return "reversed"
    return "clear" if all(one.low > 0 for one in figures) else "flat"


def _bound(sign: str, at: float) -> Band:
    if sign.startswith("<"):
        return Band(high=at, open_high=sign == "<")
    return Band(low=at, open_low=sign == ">")
