"""Minutes that add up exactly: blocks and rests inside each part, change-overs between, in half minutes."""

from dataclasses import dataclass
from functools import lru_cache
from math import floor

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
    wanted = shares(parts, total / 2)
    best: dict[int, tuple[float, tuple[Timing, ...]]] = {0: (0.0, ())}
    for number, part in enumerate(parts):
        last = number == len(parts) - 1
        best = _extended(best, _choices(part, wanted[number], last), total)
    if total not in best:
        return None
    return _with_rest(best[total][1], total_min - total / 2)


def can_share_out(parts: tuple[Part, ...], total_min: float) -> bool:
    """Whether the parts can fill `total_min` exactly; share_out without the prices."""
    total = floor(total_min * 2 + 1e-9)
    reached = {0}
    for number, part in enumerate(parts):
        changes = (0,) if number == len(parts) - 1 else _CHANGEOVERS
        steps = {length + change for length in _lengths(part) for change in changes}
        reached = {used + step for used in reached for step in steps if used + step <= total}
    return total in reached


def least_minutes(parts: tuple[Part, ...]) -> float:
    """The shortest hour these parts fill, change-overs of two minutes included."""
    return sum(_shortest(part) for part in parts) / 2 + 2.0 * (len(parts) - 1)


def _shortest(part: Part) -> int:
    return min(_lengths(part))


def _lengths(part: Part) -> dict[int, Timing]:
    """Half minutes -> timing, for every length the part may have."""
    low, high = part.practice.arrange.minutes
    turn = turn_minutes(part.practice)
    return _block_table(part.practice.arrange.block_minutes, turn, low, high * prices.LONGEST_SHARE)


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


def _choices(part: Part, wanted_min: float, last: bool) -> list[tuple[int, Timing]]:
    """(half minutes used, timing) for every length of a part and every change-over after it."""
    high = part.practice.arrange.minutes[1]
    found = []
    for length, timing in sorted(_lengths(part).items()):
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
