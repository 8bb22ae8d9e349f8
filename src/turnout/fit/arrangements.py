"""Arrangements of one part: how many copies, how many players in each, who waits. Cheapest first."""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from itertools import product
from math import ceil

from turnout.fit import prices
from turnout.fit.roles import Mix, designed_mix, in_line, role_table
from turnout.practice.model import Practice

MOST_COPIES = 12
MOST_APART = 3  # players between the largest copy and the smallest
MIXES_KEPT = (8, 4, 1)  # mixes looked at per number of players, when the copies are of one, two or more sizes


@dataclass(frozen=True)
class Arrangement:
    """One way to share the players out: a mix per copy (largest first), waiting per copy, its price so far."""

    mixes: tuple[Mix, ...]
    waiting: tuple[int, ...]
    price: float
    stretched: int = 0  # copies more than the adults can look after

    @property
    def copies(self) -> int:
        return len(self.mixes)


@lru_cache(maxsize=1024)
def arrangements(practice: Practice, players: int, adults: int | None, minutes: float) -> tuple[Arrangement, ...]:
    """Every way worth looking at, in order of price; `minutes` is the part's share, for the price of waiting."""
    found: list[Arrangement] = []
    for copies in range(1, most_copies(practice, players, adults) + 1):
        for waiting in range(copies * practice.arrange.waiting_at_most + 1):
            for numbers in _shares(players - waiting, copies):
                found += _dressed(practice, numbers, waiting, adults, minutes)
    return tuple(sorted(found, key=lambda way: (way.price, way.copies, [mix.counts for mix in way.mixes], way.waiting)))


def most_copies(practice: Practice, players: int, adults: int | None) -> int:
    """Copies the players and the adults allow: one more than the adults look after, at a price; unknown: no limit."""
    table = role_table(practice.groups, practice.arrange.waiting_at_most)
    by_players = min(MOST_COPIES, players // max(1, min(table)))
    return by_players if adults is None else min(by_players, adults * practice.arrange.copies_per_adult + 1)


def _shares(players: int, copies: int) -> Iterator[tuple[int, ...]]:
    """Players shared over copies, largest first, no further apart than MOST_APART."""
    mean = players // copies
    for low in range(max(1, mean - MOST_APART + 1), mean + 1):
        yield from _from_low(players - copies * low, copies, low)


def _from_low(over: int, copies: int, low: int) -> Iterator[tuple[int, ...]]:
    """Shares whose smallest copy has exactly `low` players, `over` more to give away."""
    for three in range(min(copies - 1, over // 3) + 1):
        for two in range(min(copies - 1 - three, (over - 3 * three) // 2) + 1):
            one = over - 3 * three - 2 * two
            none = copies - three - two - one
            if none >= 1:
                yield (low + 3,) * three + (low + 2,) * two + (low + 1,) * one + (low,) * none


def _dressed(
    practice: Practice, numbers: tuple[int, ...], waiting: int, adults: int | None, minutes: float
) -> list[Arrangement]:
    """The arrangements of these numbers: one per choice of mix for each different number."""
    table = role_table(practice.groups, practice.arrange.waiting_at_most)
    different = sorted(set(numbers), reverse=True)
    if any(number not in table for number in different):
        return []
    share = _waiting_per_copy(waiting, len(numbers))
    price = _sharing_price(practice, numbers, waiting, minutes)
    over = _stretched(practice, len(numbers), adults)
    found = []
    kept = MIXES_KEPT[min(len(different), len(MIXES_KEPT)) - 1]
    for choice in product(*(table[number][:kept] for number in different)):
        mix_of = dict(zip(different, choice, strict=True))
        mixes = tuple(mix_of[number] for number in numbers)
        lines = [in_line(practice.groups, mix.counts) for mix in mixes]
        if any(line + more > practice.arrange.waiting_at_most for line, more in zip(lines, share, strict=True)):
            continue
        total = price + sum(mix.price for mix in mixes) + prices.ADULTS_STRETCHED * over
        total += prices.WAITING * sum(lines) * minutes
        found.append(Arrangement(mixes, share, total, over))
    return found


def _sharing_price(practice: Practice, numbers: tuple[int, ...], waiting: int, minutes: float) -> float:
    designed = sum(designed_mix(practice.groups))
    apart = numbers[0] - numbers[-1]
    differ = prices.COPIES_DIFFER * min(apart, 1) + prices.COPIES_DIFFER_MORE * max(0, apart - 1)
    off = prices.OFF_DESIGN * sum(abs(number - designed) for number in numbers)
    return prices.WAITING * waiting * minutes + differ + off


def _stretched(practice: Practice, copies: int, adults: int | None) -> int:
    return 0 if adults is None else max(0, copies - adults * practice.arrange.copies_per_adult)


def _waiting_per_copy(waiting: int, copies: int) -> tuple[int, ...]:
    """Waiting players shared evenly; the last copies (the smaller ones) get the odd ones."""
    return tuple(ceil((waiting - number) / copies) for number in range(copies - 1, -1, -1))
