"""Scoring as a game of two plans: what points are worth when the other side guards against them. Exact.

Rows are what the attack may do, columns what the guard may do, entries what the attack gains; neither sees the other's
choice first. Works on fractions as well as on floats: whole numbers and fractions in, exact fractions out.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import combinations

MOST_PLANS = 6  # every square part of the table is tried: 6 x 6 has 923, far more than a scoring rule needs


@dataclass(frozen=True)
class Play:
    """A pair of best mixtures: how often the attack does each thing, the guard each thing, and what it is worth."""

    attack: tuple[Fraction, ...]
    guard: tuple[Fraction, ...]
    value: Fraction
    saddle: bool  # one plan each is best: nothing need be mixed


def best_play(gains: Sequence[Sequence[Fraction | float]]) -> Play:
    """The minimax mixtures of a table of gains (attack plans, guard plans); the first found where there are several.

    Every equilibrium of such a game has one on a square part of the table (Shapley and Snow 1950), so all are tried,
    smallest first, in exact fractions. Raises ValueError on an empty or ragged table or one beyond 6 plans a side.
    """
    table = [[Fraction(entry) for entry in row] for row in gains]
    if not table or not table[0] or len({len(row) for row in table}) > 1:
        raise ValueError("a table of gains needs at least one plan a side and rows of one length")
    if max(len(table), len(table[0])) > MOST_PLANS:
        raise ValueError(f"at most {MOST_PLANS} plans a side, not {len(table)} and {len(table[0])}")
    return next(play for play in _candidates(table) if _holds(table, play))


def _candidates(table: list[list[Fraction]]) -> Iterator[Play]:
    rows, columns = range(len(table)), range(len(table[0]))
    for size in range(1, min(len(rows), len(columns)) + 1):
        for mine in combinations(rows, size):
            for theirs in combinations(columns, size):
                play = _on(table, mine, theirs)
                if play is not None:
                    yield play


def _on(table: list[list[Fraction]], mine: tuple[int, ...], theirs: tuple[int, ...]) -> Play | None:
    """Mixtures over these plans alone that make the other side's plans worth the same; None: there are none."""
    part = [[table[row][column] for column in theirs] for row in mine]
    attack, guard = _equalising([list(column) for column in zip(*part, strict=True)]), _equalising(part)
    if attack is None or guard is None or attack[-1] != guard[-1]:
        return None
    spread = _spread(attack[:-1], mine, len(table)), _spread(guard[:-1], theirs, len(table[0]))
    return Play(*spread, value=attack[-1], saddle=len(mine) == 1)


def _equalising(lines: list[list[Fraction]]) -> list[Fraction] | None:
    """Weights of sum 1 that give every line the same total, and that total; None where they are not unique."""
    size = len(lines)
    system = [[*line, Fraction(-1), Fraction(0)] for line in lines]
    system.append([*[Fraction(1)] * size, Fraction(0), Fraction(1)])
    return _solved(system)


def _solved(system: list[list[Fraction]]) -> list[Fraction] | None:
    """Gauss and Jordan in exact fractions; None for a singular system."""
    for place in range(len(system)):
        pivot = next((row for row in range(place, len(system)) if system[row][place]), None)
        if pivot is None:
            return None
        system[place], system[pivot] = system[pivot], system[place]
        system[place] = [entry / system[place][place] for entry in system[place]]
        for row in range(len(system)):
            if row != place and system[row][place]:
                factor = system[row][place]
                system[row] = [a - factor * b for a, b in zip(system[row], system[place], strict=True)]
    return [row[-1] for row in system]


def _spread(weights: list[Fraction], plans: tuple[int, ...], count: int) -> tuple[Fraction, ...]:
    placed = dict(zip(plans, weights, strict=True))
    return tuple(placed.get(plan, Fraction(0)) for plan in range(count))


def _holds(table: list[list[Fraction]], play: Play) -> bool:
    """Whether neither side gains by any single plan instead."""
    if min(*play.attack, *play.guard) < 0:
        return False
    by_attack = [sum(a * b for a, b in zip(row, play.guard, strict=True)) for row in table]
    by_guard = [sum(a * b for a, b in zip(column, play.attack, strict=True)) for column in zip(*table, strict=True)]
    return max(by_attack) <= play.value <= min(by_guard)


@dataclass(frozen=True)
class Zones:
    """Points by zone with one guard: how often each is attacked and guarded, the value of a go, and zones in use."""

    attack: tuple[Fraction, ...]
    guard: tuple[Fraction, ...]
    value: Fraction
    used: tuple[int, ...]


def guarded_zones(points: Sequence[Fraction | float], *, stops: Fraction | float = 1) -> Zones:
    """Best play where the attack picks a zone worth `points[i]` and one guard, unseen, picks a zone to stand in.

    stops: share of goes at the guarded zone that the guard stops, above 0 up to 1. With the k dearest zones in use:
    V = (k - stops) / sum(1 / v), attacked in proportion to 1 / v, guarded q = (1 - V / v) / stops. Every zone in use is
    then worth the same, v (1 - stops q). Raises ValueError on points or a share out of range.
    """
    worth = [Fraction(each) for each in points]
    share = Fraction(stops)
    if not worth or min(worth) <= 0 or not 0 < share <= 1:
        raise ValueError("zones are worth more than 0, and a guard stops a share above 0 up to 1")
    used, value = _zones_in_use(worth, share)
    inverse = sum(1 / worth[zone] for zone in used)
    attack = tuple(1 / worth[zone] / inverse if zone in used else Fraction(0) for zone in range(len(worth)))
    guard = tuple((1 - value / worth[zone]) / share if zone in used else Fraction(0) for zone in range(len(worth)))
    return Zones(attack, guard, value, tuple(sorted(used)))


def _zones_in_use(worth: list[Fraction], share: Fraction) -> tuple[list[int], Fraction]:
    """The dearest zones, as many as raise the value of a go: a zone below that value is never worth going for."""
    dearest = sorted(range(len(worth)), key=lambda zone: (-worth[zone], zone))
    used, value = dearest[:1], worth[dearest[0]] * (1 - share)
    for count in range(2, len(worth) + 1):
        zones = dearest[:count]
        if worth[zones[-1]] <= value:
            break
        used, value = zones, (count - share) / sum(1 / worth[zone] for zone in zones)
    return used, value
