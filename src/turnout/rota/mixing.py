"""Groups of any one size that mix as well as can be: how many rounds without a repeated pair, and rounds to play.

What is reached is a list of rounds in hand; what bounds it is arithmetic. An optimum is claimed only where both meet.
"""

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from itertools import combinations, product
from math import comb
from random import Random

from turnout.rota.designs import rounds_of_pairs
from turnout.rota.developed import Round, developed

SWAPS = 30_000  # swaps tried when pairs must repeat; four times as many improved none of six cases of 12 to 24 players


@dataclass(frozen=True)
class Unrepeated:
    """The most rounds found in which no pair meets twice, and how many arithmetic allows."""

    rounds: tuple[Round, ...]
    bound: int

    @property
    def optimal(self) -> bool:
        return len(self.rounds) == self.bound


@dataclass(frozen=True)
class Mixed:
    """Rounds to play: how often the pair that meets most and the one that meets least do, and the proven bound."""

    rounds: tuple[Round, ...]
    most: int
    least: int
    excess: int  # sum over pairs of squared meetings, above the bound
    bound: int  # the smallest such sum that arithmetic allows

    @property
    def optimal(self) -> bool:
        return self.excess == 0


def counting_bound(groups: int, size: int) -> int:
    """Most rounds of `groups` groups of `size` that can do without a repeated pair, by counting a player's mates.

    floor((g p - 1) / (p - 1)) (evidence: design-notes); the bound is not always reached. Raises ValueError below two
    groups of two.
    """
    _check(groups, size)
    return (groups * size - 1) // (size - 1)


def rounds_bound(groups: int, size: int) -> int:
    """The better of two proven bounds: `counting_bound`, and one round only where groups are larger than their number.

    Then each group of a second round takes two from some group of the first: there are not enough groups to take from.
    """
    counted = counting_bound(groups, size)
    return 1 if size > groups else counted


@cache
def unrepeated_rounds(groups: int, size: int) -> Unrepeated:
    """The most rounds found without a repeated pair; the same answer every time. Raises ValueError as above."""
    bound = rounds_bound(groups, size)
    best: tuple[Round, ...] = (straight_round(groups, size),)
    for found in _constructions(groups, size, bound):
        if found is not None and len(found) > len(best):
            best = found
        if len(best) == bound:
            break
    return Unrepeated(best[:bound], bound)


def straight_round(groups: int, size: int) -> Round:
    """Players in order: the first `size` together, the next, and so on."""
    return tuple(tuple(range(group * size, (group + 1) * size)) for group in range(groups))


def mixed_rounds(groups: int, size: int, rounds: int) -> Mixed:
    """`rounds` rounds in which pairs meet as evenly as was found: without a repeat as long as that goes.

    Deterministic. `optimal` is proven: some pairs then meet once more than others, and no fewer pairs can.
    """
    free = unrepeated_rounds(groups, size)
    days = list(free.rounds[:rounds])
    if len(days) < rounds:
        extra = (free.rounds[day % len(free.rounds)] for day in range(len(days), rounds))
        days = _evened([*days, *extra])
    return _told(tuple(days), groups * size)


def meetings(rounds: tuple[Round, ...] | list[Round]) -> Counter[tuple[int, int]]:
    """How often each pair (lower number first) stands in one group."""
    return Counter(pair for day in rounds for group in day for pair in combinations(sorted(group), 2))


def _constructions(groups: int, size: int, bound: int) -> Iterator[tuple[Round, ...] | None]:
    """Ways to make rounds, the most promising first; each None where it does not apply or nothing was found."""
    if size == 2:
        yield tuple(tuple(day) for day in rounds_of_pairs(2 * groups))
    yield _planes(groups, size)
    for fixed in (1, 2, 3):
        length, rest = divmod(groups * size - fixed, size - 1)
        if rest == 0 and length <= bound:
            yield developed(length, size - 1, fixed, size)
    for upright in range(min(bound - groups, groups), -1, -1):
        yield developed(groups, size, 0, size, upright)
    yield _slanted(groups, size)


def _planes(groups: int, size: int) -> tuple[Round, ...] | None:
    """All lines of a space over the whole numbers modulo a prime `size`, parallel ones together: every pair once."""
    dimensions = next((power for power in range(2, 5) if size**power == groups * size), 0)
    if not dimensions or any(size % each == 0 for each in range(2, size)):
        return None
    points = list(product(range(size), repeat=dimensions))
    return tuple(_parallel(points, way, size) for way in points if next((each for each in way if each), 0) == 1)


def _parallel(points: list[tuple[int, ...]], way: tuple[int, ...], size: int) -> Round:
    number = {point: at for at, point in enumerate(points)}
    lines = {
        tuple(
            sorted(
                number[tuple((x + step * w) % size for x, w in zip(point, way, strict=True))] for step in range(size)
            )
        )
        for point in points
    }
    return tuple(sorted(lines))


def _slanted(groups: int, size: int) -> tuple[Round, ...] | None:
    """One of every ring, each round at another slant; for a number of groups that is a prime, 4 or 8."""
    if size > groups or (groups not in _POWERS and any(groups % each == 0 for each in range(2, groups))):
        return None
    return tuple(
        tuple(tuple(ring * groups + _moved(groups, at, slant, ring) for ring in range(size)) for at in range(groups))
        for slant in range(groups)
    )


_POWERS = {4: 0b111, 8: 0b1011}  # fields of 4 and 8: numbers are polynomials over 0 and 1, remainders by these


def _moved(order: int, at: int, slant: int, ring: int) -> int:
    """at + slant * ring in the field of `order` elements, so that two slants meet in one ring at most."""
    if order not in _POWERS:
        return (at + slant * ring) % order
    product, bits = 0, order.bit_length() - 1
    for bit in reversed(range(bits)):
        product <<= 1
        product ^= _POWERS[order] if product >= order else 0
        product ^= slant if ring >> bit & 1 else 0
    return at ^ product


def _evened(days: list[Round]) -> list[Round]:
    """Swap two players of one round while pairs meet more evenly for it; chance from a fixed start, so repeatable."""
    rounds = [[list(group) for group in day] for day in days]
    met, chance = meetings(days), Random(0)
    for _ in range(SWAPS if len(rounds[0]) > 1 else 0):
        day = chance.choice(rounds)
        here, there = chance.sample(range(len(day)), 2)
        one, other = chance.randrange(len(day[here])), chance.randrange(len(day[there]))
        _swap_if_better(met, day[here], one, day[there], other)
    return [tuple(tuple(sorted(group)) for group in day) for day in rounds]


def _swap_if_better(met: Counter[tuple[int, int]], here: list[int], one: int, there: list[int], other: int) -> None:
    """Swap two players of two groups where the squared meetings of pairs do not grow; an equal swap is a side step."""
    a, b = here[one], there[other]
    lost = [_pair(a, mate) for mate in here if mate != a] + [_pair(b, mate) for mate in there if mate != b]
    won = [_pair(b, mate) for mate in here if mate != a] + [_pair(a, mate) for mate in there if mate != b]
    if sum(met[pair] for pair in won) + len(won) > sum(met[pair] for pair in lost):
        return
    met.subtract(lost)
    met.update(won)
    here[one], there[other] = b, a


def _pair(one: int, other: int) -> tuple[int, int]:
    return (one, other) if one < other else (other, one)


def _told(days: tuple[Round, ...], players: int) -> Mixed:
    met = meetings(days)
    counts = [met[pair] for pair in combinations(range(players), 2)]
    low, over = divmod(sum(counts), comb(players, 2))
    bound = low * low * (len(counts) - over) + (low + 1) ** 2 * over
    return Mixed(days, max(counts), min(counts), sum(count * count for count in counts) - bound, bound)


def _check(groups: int, size: int) -> None:
    if groups < 2 or size < 2:
        raise ValueError(f"mixing needs at least two groups of two players, not {groups} of {size}")
