"""Role tables: every mix of counts a practice allows, by number of players, cheapest first."""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from itertools import product

from turnout.fit import prices
from turnout.practice.ground import tied_count
from turnout.practice.model import Group


@dataclass(frozen=True)
class Mix:
    """Players per group, in the order of `people`, and what this mix costs against the designed one scaled."""

    counts: tuple[int, ...]
    price: float


@lru_cache(maxsize=256)
def role_table(groups: tuple[Group, ...], waiting_at_most: int | None = None) -> dict[int, tuple[Mix, ...]]:
    """Number of players -> the mixes worth keeping: the best, and those nearly as good (they may dress better).

    waiting_at_most: players who may stand in line; mixes with more are left out.
    """
    found: dict[int, list[Mix]] = {}
    for counts in allowed_counts(groups):
        if waiting_at_most is not None and in_line(groups, counts) > waiting_at_most:
            continue
        mix = Mix(counts, mix_price(groups, counts))
        found.setdefault(sum(counts), []).append(mix)
    return {players: _near_best(mixes) for players, mixes in sorted(found.items())}


def allowed_counts(groups: tuple[Group, ...]) -> Iterator[tuple[int, ...]]:
    """Every mix of counts inside the ranges, ties followed and clamped to their range."""
    free = [group for group in groups if group.tie is None]
    tied = tie_order(groups)
    for values in product(*(range(group.low, group.high + 1) for group in free)):
        counts = {group.key: value for group, value in zip(free, values, strict=True)}
        for group in tied:
            counts[group.key] = tied_count(group, counts)
        yield tuple(counts[group.key] for group in groups)


def in_line(groups: tuple[Group, ...], counts: tuple[int, ...]) -> int:
    """Players who stand in a line until it is their turn."""
    return sum(count for group, count in zip(groups, counts, strict=True) if group.waits)


def tie_order(groups: tuple[Group, ...]) -> list[Group]:
    """The tied groups, each after the group it follows; a circle of ties raises ValueError."""
    known = {group.key for group in groups if group.tie is None}
    left = [group for group in groups if group.tie is not None]
    order: list[Group] = []
    while left:
        ready = [group for group in left if group.tie is not None and group.tie.group in known]
        if not ready:
            raise ValueError(f"the counts of {', '.join(group.key for group in left)} follow each other in a circle")
        order += ready
        known.update(group.key for group in ready)
        left = [group for group in left if group.key not in known]
    return order


def mix_price(groups: tuple[Group, ...], counts: tuple[int, ...]) -> float:
    """Roles off the designed mix scaled to this number, and sides made uneven."""
    designed = designed_mix(groups)
    scale = sum(counts) / max(1, sum(designed))
    off = sum(abs(count - scale * wanted) for count, wanted in zip(counts, designed, strict=True)) / 2
    by_role = _beyond(_by_role(groups, counts), _by_role(groups, designed))
    by_side = _beyond([_by_side(groups, counts)], [_by_side(groups, designed)])
    return prices.ROLE_OFF * off + prices.UNEVEN_ROLE * by_role + prices.UNEVEN * by_side


@lru_cache(maxsize=512)
def designed_mix(groups: tuple[Group, ...]) -> tuple[int, ...]:
    """The counts as written, ties followed."""
    counts: dict[str, int] = {group.key: group.count for group in groups}
    for group in tie_order(groups):
        counts[group.key] = tied_count(group, counts)
    return tuple(counts[group.key] for group in groups)


def _beyond(now: list[list[int]], made: list[list[int]]) -> int:
    """Players of difference between like sides, beyond the difference the practice was made with."""
    return sum(max(0, _range(here) - _range(there)) for here, there in zip(now, made, strict=True))


def _range(values: list[int]) -> int:
    return max(values) - min(values) if values else 0


def _by_role(groups: tuple[Group, ...], counts: tuple[int, ...]) -> list[list[int]]:
    """Counts per role over the sides that have it."""
    found: dict[str, list[int]] = {}
    for group, count in zip(groups, counts, strict=True):
        found.setdefault(_role_of(group), []).append(count)
    return list(found.values())


def _by_side(groups: tuple[Group, ...], counts: tuple[int, ...]) -> list[int]:
    """Players per side, over the sides that share a role with another."""
    sides_of: dict[str, set[str]] = {}
    for group in groups:
        sides_of.setdefault(_role_of(group), set()).add(group.side)
    like = {side for sides in sides_of.values() if len(sides) > 1 for side in sides}
    total = dict.fromkeys(sorted(like), 0)
    for group, count in zip(groups, counts, strict=True):
        if group.side in like:
            total[group.side] += count
    return list(total.values())


def _role_of(group: Group) -> str:
    """What a role is called across sides; sides with one role share it when home and range agree."""
    return group.role or f"{group.home.place} {group.home.on_edge} {group.low}-{group.high}"


def _near_best(mixes: list[Mix]) -> tuple[Mix, ...]:
    ordered = sorted(mixes, key=lambda mix: (mix.price, mix.counts))
    limit = ordered[0].price + prices.SAME_ROLES_SLACK
    return tuple(mix for mix in ordered if mix.price <= limit)[:8]
