"""Minutes that add up exactly: blocks and rests inside each part, change-overs between, in half minutes."""

from dataclasses import dataclass
from functools import lru_cache
from math import floor, inf

from turnout.fit import prices
from turnout.fit.turns import turn_minutes
from turnout.session.model import Part

_RESTS = (1, 2, 3, 4)  # half minutes
_CHANGEOVERS = (4, 5, 6)  # half minutes: 2 to 3 minutes


@dataclass(frozen=True)
class Timing:
    """One part's share of the hour. blocks in minutes; rest_min between two blocks; changeover_min after the part."""

    blocks: tuple[float, ...]
    rest_min: float
    changeover_min: float
    price: float

    @property
    def minutes(self) -> float:
        return sum(self.blocks) + self.rest_min * (len(self.blocks) - 1)


def shares(parts: tuple[Part, ...], total_min: float) -> list[float]:
    """What each part would get of the hour if it were stretched evenly, change-overs of two minutes taken off, min."""
    free = total_min - 2.0 * (len(parts) - 1)
    written = sum(part.minutes for part in parts)
    return [free * part.minutes / written for part in parts]


def share_out(parts: tuple[Part, ...], total_min: float) -> tuple[Timing, ...] | None:
    """The cheapest timings of these parts that fill `total_min` exactly; None when they cannot.

    Half minutes are the grain; what is left of an odd total goes to the first change-over (or the only block).
    """
    total = floor(total_min * 2 + 1e-9)
    asked = tuple(_asked(part) for part in parts)
    timings = _cheapest(asked, tuple(shares(parts, total / 2)), total)
    return None if timings is None else _with_rest(timings, total_min - total / 2)


def can_share_out(parts: tuple[Part, ...], total_min: float) -> bool:
    """Whether the parts can fill `total_min` exactly; share_out without the prices."""
    return floor(total_min * 2 + 1e-9) in _totals(tuple(_asked(part) for part in parts))


Asked = tuple[tuple[float, float], float | None, float, float]  # block range, turn by the clock, shortest, longest, min


def _asked(part: Part) -> Asked:
    """What a part asks of the hour."""
    arrange = part.practice.arrange
    return (arrange.block_minutes, turn_minutes(part.practice), *arrange.minutes)


@lru_cache(maxsize=1024)
def _cheapest(asked: tuple[Asked, ...], wanted: tuple[float, ...], total: int) -> tuple[Timing, ...] | None:
    best: dict[int, tuple[float, tuple[Timing, ...]]] = {0: (0.0, ())}
    for number, ask in enumerate(asked):
        best = _extended(best, _choices(ask, wanted[number], number == len(asked) - 1), total)
    return best[total][1] if total in best else None


@lru_cache(maxsize=256)
def _totals(asked: tuple[Asked, ...]) -> frozenset[int]:
    """Every total of half minutes these parts can fill."""
    reached = {0}
    for number, ask in enumerate(asked):
        changes = (0,) if number == len(asked) - 1 else _CHANGEOVERS
        steps = {length + change for length in _lengths(ask) for change in changes}
        reached = {used + step for used in reached for step in steps}
    return frozenset(reached)


def least_minutes(parts: tuple[Part, ...]) -> float:
    """The shortest hour these parts fill, change-overs of two minutes included."""
    return sum(min(_lengths(_asked(part)), default=inf) for part in parts) / 2 + 2.0 * (len(parts) - 1)


def blocks_go(part: Part) -> bool:
    """Whether any number of blocks goes into the minutes the practice allows."""
    return bool(_lengths(_asked(part)))


def _lengths(ask: Asked) -> dict[int, Timing]:
    """Half minutes -> timing, for every length the part may have."""
    block, turn, low, high = ask
    return _block_table(block, turn, low, high * prices.LONGEST_SHARE)


def _extended(
    best: dict[int, tuple[float, tuple[Timing, ...]]], choices: list[tuple[int, Timing]], total: int
) -> dict[int, tuple[float, tuple[Timing, ...]]]:
    found: dict[int, tuple[float, tuple[Timing, ...]]] = {}
    for used, (price, timings) in best.items():
        for length, timing in choices:
            now = used + length
            cost = price + timing.price
            if now <= total and (now not in found or cost < found[now][0] - 1e-9):
                found[now] = (cost, (*timings, timing))
    return found


def _choices(ask: Asked, wanted_min: float, last: bool) -> list[tuple[int, Timing]]:
    """(half minutes used, timing) for every length of a part and every change-over after it."""
    high = ask[3]
    found = []
    for length, timing in sorted(_lengths(ask).items()):
        odd = prices.NOT_WHOLE * (length % 2)
        off = odd + prices.MINUTE_OFF * abs(length / 2 - wanted_min) + prices.MINUTE_OVER * max(0.0, length / 2 - high)
        for change in (0,) if last else _CHANGEOVERS:
            extra = 0.0 if last else prices.CHANGEOVER_OFF * (change - _CHANGEOVERS[0] + 2 * (change % 2))
            price = timing.price + off + extra
            found.append((length + change, Timing(timing.blocks, timing.rest_min, change / 2, price)))
    return found


@lru_cache(maxsize=512)
def _block_table(block: tuple[float, float], turn: float | None, low: float, high: float) -> dict[int, Timing]:
    """Half minutes of a part -> its cheapest blocks and rest."""
    found: dict[int, Timing] = {}
    for length in range(round(low * 2), floor(high * 2 + 1e-9) + 1):
        options = [timing for count in range(1, length + 1) for timing in _blocks(length, count, block, turn)]
        if options:
            found[length] = min(options, key=lambda timing: (timing.price, len(timing.blocks), timing.rest_min))
    return found


def _blocks(length: int, count: int, block: tuple[float, float], turn: float | None) -> list[Timing]:
    """Ways to cut `length` half minutes into `count` blocks with equal rests between."""
    found = []
    for rest in _RESTS if count > 1 else (2,):
        play = length - rest * (count - 1)
        short, more = divmod(play, count)
        if play < count or short < block[0] * 2 - 1e-9 or short + (more > 0) > block[1] * 2 + 1e-9:
            continue
        blocks = tuple((short + 1) / 2 if number < more else short / 2 for number in range(count))
        found.append(Timing(blocks, rest / 2 if count > 1 else 0.0, 0.0, _block_price(blocks, rest, block, turn)))
    return found


def _block_price(blocks: tuple[float, ...], rest: int, block: tuple[float, float], turn: float | None) -> float:
    """Blocks near their best length and whole, rests near theirs. `turn`: minutes after which players swap anyway."""
    mean = sum(blocks) / len(blocks)
    off = abs(mean - (block[0] + block[1]) / 2) if turn is None else prices.TURN_OFF * abs(mean - turn)
    price = prices.BLOCK_OFF * off + prices.BLOCKS_DIFFER * (blocks[0] != blocks[-1])
    if len(blocks) > 1:
        price += (
            prices.REST_OFF * abs(rest - (2 if turn is None else 1)) + prices.REST_MINUTE * (len(blocks) - 1) * rest / 2
        )
    return price + prices.NOT_WHOLE * any(minutes != int(minutes) for minutes in blocks)


def _with_rest(timings: tuple[Timing, ...], left_min: float) -> tuple[Timing, ...]:
    if left_min < 1e-9:
        return timings
    first = timings[0]
    if len(timings) > 1:
        changed = Timing(first.blocks, first.rest_min, first.changeover_min + left_min, first.price)
    else:
        changed = Timing((*first.blocks[:-1], first.blocks[-1] + left_min), first.rest_min, 0.0, first.price)
    return (changed, *timings[1:])
