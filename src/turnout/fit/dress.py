"""Which sides wear which colours in each copy: every way the kit allows."""

from functools import lru_cache
from itertools import permutations

from turnout.club.tonight import Kit
from turnout.fit import prices
from turnout.fit.arrangements import Arrangement
from turnout.fit.colours import verdict
from turnout.practice.model import Practice

OWN = "own"

Dress = tuple[tuple[str, str], ...]  # side -> colour, for the sides that have players
Worn = tuple[tuple[str, int], ...]  # colour -> players
Sides = tuple[tuple[tuple[str, int], ...], ...]  # per copy: side -> players
Dressing = tuple[tuple[Dress, ...], Worn, float]  # per copy its dress, what is worn in all, the price


def can_dress(practice: Practice, way: Arrangement, kit: Kit) -> bool:
    """Whether the kit dresses all sides of an arrangement in some way."""
    return _dressable(sides_of(practice, way), kit)


@lru_cache(maxsize=8192)
def _dressable(sides: Sides, kit: Kit) -> bool:
    return bool(_alike(sides, kit)) or bool(_mixed(sides, kit))


def sides_of(practice: Practice, way: Arrangement) -> Sides:
    """Players per side in each copy, sides without players left out."""
    return tuple(_side_counts(practice, mix.counts) for mix in way.mixes)


def _side_counts(practice: Practice, counts: tuple[int, ...]) -> tuple[tuple[str, int], ...]:
    """Players per side, sides without players left out."""
    total = dict.fromkeys(practice.sides, 0)
    for group, count in zip(practice.groups, counts, strict=True):
        total[group.side] += 0 if group.waits else count  # who waits changes when it is their turn
    return tuple((side, count) for side, count in total.items() if count)


@lru_cache(maxsize=2048)
def dressings(sides: Sides, kit: Kit) -> tuple[Dressing, ...]:
    """Ways to dress all copies from the kit: alike if that can be, else copy by copy."""
    found = [
        (tuple(tuple((side, dict(dress)[side]) for side, _ in copy) for copy in sides), worn, price)
        for dress, worn, price in _alike(sides, kit)
    ]
    return tuple(found or _mixed(sides, kit))


def _alike(sides: Sides, kit: Kit) -> list[tuple[Dress, Worn, float]]:
    """One dress for all copies: every one the kit has enough bibs for."""
    totals: dict[str, int] = {}
    for side, count in (pair for copy in sides for pair in copy):
        totals[side] = totals.get(side, 0) + count
    dressed = [
        (dress, _added((), tuple(totals.items()), dress), price) for dress, price in _patterns(tuple(totals), kit)
    ]
    return [found for found in dressed if _in_stock(found[1], kit)]


@lru_cache(maxsize=1024)
def _patterns(sides: tuple[str, ...], kit: Kit) -> tuple[tuple[Dress, float], ...]:
    """Every allowed choice of a colour per side, with what hard pairs cost."""
    colours = [OWN, *(colour for colour, count in kit.bibs if count > 0)]
    found = []
    for choice in permutations(colours, len(sides)):
        verdicts = [verdict(one, other, kit.own) for number, one in enumerate(choice) for other in choice[:number]]
        if "never" not in verdicts:
            price = prices.HARD_TO_TELL * verdicts.count("hard") + prices.OTHER_NAME * _misnamed(sides, choice, colours)
            found.append((tuple(zip(sides, choice, strict=True)), price))
    return tuple(found)


def _misnamed(sides: tuple[str, ...], choice: tuple[str, ...], colours: list[str]) -> int:
    """Sides called after a colour in the bag that wear another."""
    return sum(side in colours and colour != side for side, colour in zip(sides, choice, strict=True))


def _mixed(sides: Sides, kit: Kit) -> list[Dressing]:
    """Copies dressed one after the other from what is left; of ways that wear the same so far, the cheapest."""
    best: dict[Worn, tuple[float, tuple[Dress, ...]]] = {(): (prices.BIBS_DIFFER, ())}
    for counts in sides:
        step: dict[Worn, tuple[float, tuple[Dress, ...]]] = {}
        for dress, extra in _patterns(tuple(side for side, _ in counts), kit):
            for worn, (price, done) in best.items():
                now = _added(worn, counts, dress)
                # A whisper of a price keeps copies that can be dressed alike next to each other.
                cost = price + extra + (0.0 if not done or done[-1] == dress else 0.01)
                if _in_stock(now, kit) and (now not in step or cost < step[now][0] - 1e-9):
                    step[now] = (cost, (*done, dress))
        best = step
    return [(done, worn, price) for worn, (price, done) in sorted(best.items())]


def _added(worn: Worn, counts: tuple[tuple[str, int], ...], dress: Dress) -> Worn:
    total = dict(worn)
    for (_, count), (_, colour) in zip(counts, dress, strict=True):
        total[colour] = total.get(colour, 0) + count
    return tuple(sorted(total.items()))


def _in_stock(worn: Worn, kit: Kit) -> bool:
    stock = dict(kit.bibs)
    return all(colour == OWN or count <= stock.get(colour, 0) for colour, count in worn)
