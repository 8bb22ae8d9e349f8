"""Rounds made from one base round by shifting everybody on: the classical way to groups in which no pair meets twice.

Players stand on rings of equal length, and perhaps some who stay put. Shifting every ring by one place gives the next
round. No pair meets twice when no difference between two places comes twice in the base round.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from itertools import combinations, islice

Round = tuple[tuple[int, ...], ...]  # groups of players numbered from 0
Place = tuple[int, int]  # ring, place on it; a player who stays put stands on a ring of one
EFFORT = 300_000  # groups tried before a search is given up: a second, and always the same ones

SLANTS = 12  # sets of upright rounds tried


class _GaveUpError(Exception):
    """The search has used its effort."""


@dataclass(frozen=True)
class Rings:
    """Who is shifted: `rings` rings of `length` places, and `fixed` players who stay put; groups of `size`."""

    length: int
    rings: int
    fixed: int
    size: int

    def places(self) -> list[Place]:
        """Everybody; those who stay put first, because they have the least choice of company."""
        still = [(self.rings + each, 0) for each in range(self.fixed)]
        return still + [(ring, at) for at in range(self.length) for ring in range(self.rings)]

    def difference(self, one: Place, other: Place) -> tuple[int, int, int] | None:
        """What stays the same about two players when all are shifted; None for two who may not meet at all."""
        (a, x), (b, y) = sorted((one, other))
        if b >= self.rings:
            return None if a >= self.rings else (a, b, 0)
        turn = (y - x) % self.length
        if a == b:
            turn = min(turn, self.length - turn)
            return None if 2 * turn == self.length else (a, b, turn)  # half-way round: the shifts would meet twice
        return a, b, turn

    def number(self, place: Place) -> int:
        return place[0] * self.length + place[1] if place[0] < self.rings else self.rings * (self.length - 1) + place[0]

    def shifted(self, group: tuple[Place, ...], by: int) -> tuple[int, ...]:
        moved = ((ring, (at + by) % self.length if ring < self.rings else at) for ring, at in group)
        return tuple(sorted(map(self.number, moved)))


@cache
def developed(length: int, rings: int, fixed: int, size: int, upright: int = 0) -> tuple[Round, ...] | None:
    """length + upright rounds without a repeated pair, or None where none was found within the effort.

    length, rings, fixed, size: as in `Rings`. upright: rounds on top whose groups have one player of every ring (as
    many rings as a group has players) and which are shifts of themselves.
    """
    who = Rings(length, rings, fixed, size)
    for slopes in islice(_slopes(length, rings, upright), SLANTS):
        days = [_upright(who, slope) for slope in slopes]
        taken = {who.difference(*pair) for day in days for pair in combinations(day[0], 2)}
        base = _base_round(who, {each for each in taken if each})
        if base is not None:
            shifts = [tuple(who.shifted(group, by) for group in base) for by in range(length)]
            return tuple(shifts + [tuple(who.shifted(group, 0) for group in day) for day in days])
    return None


def _slopes(length: int, rings: int, upright: int) -> Iterator[tuple[int, ...]]:
    """Slants of the upright rounds, the first straight, which loses nothing; no two alike from any ring to another."""
    for slopes in combinations(range(length), upright):
        apart = [one - other for one, other in combinations(slopes, 2)]
        if slopes[:1] in ((), (0,)) and all(ring * each % length for each in apart for ring in range(1, rings)):
            yield slopes


def _upright(who: Rings, slope: int) -> list[tuple[Place, ...]]:
    return [tuple((ring, (at + slope * ring) % who.length) for ring in range(who.rings)) for at in range(who.length)]


def _base_round(who: Rings, taken: set[tuple[int, int, int]]) -> list[tuple[Place, ...]] | None:
    try:
        return _filled(who, who.places(), set(taken), [EFFORT])
    except _GaveUpError:
        return None


def _filled(
    who: Rings, left: list[Place], taken: set[tuple[int, int, int]], effort: list[int]
) -> list[tuple[Place, ...]] | None:
    """Groups of everybody left with differences not taken yet; None: there are none."""
    if not left:
        return []
    for group, added in _groups(who, (left[0],), left[1:], taken, effort):
        rest = _filled(who, [place for place in left if place not in group], taken | added, effort)
        if rest is not None:
            return [group, *rest]
    return None


Differences = set[tuple[int, int, int]]


def _groups(
    who: Rings, group: tuple[Place, ...], others: list[Place], taken: Differences, effort: list[int]
) -> Iterator[tuple[tuple[Place, ...], Differences]]:
    """Every way to complete a group from `others`, with the differences that it takes."""
    if len(group) == who.size:
        yield group, set()
        return
    for at, other in enumerate(others):
        effort[0] -= 1
        if effort[0] < 0:
            raise _GaveUpError
        found = [who.difference(member, other) for member in group]
        new = {each for each in found if each is not None}
        if None in found or len(new) < len(found) or new & taken:
            continue
        for whole, added in _groups(who, (*group, other), others[at + 1 :], taken | new, effort):
            yield whole, added | new
