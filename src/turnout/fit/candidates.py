"""The best few ways to do one part: arrangements in order of price, each at the cheapest size that packs."""

from dataclasses import dataclass
from functools import lru_cache

from turnout.club.tonight import Kit, Space
from turnout.fit import prices
from turnout.fit.arrangements import Arrangement, arrangements
from turnout.fit.dress import can_dress
from turnout.fit.ground import Needs, needs_of
from turnout.fit.sizes import Size, sizes_with
from turnout.practice.model import Practice
from turnout.shapes.boxes import Box
from turnout.shapes.packing import Piece, Spot, pack

KEPT = 6  # one candidate a part lost up to a tenth in bibs, six lost nothing against forty (own trial)


@dataclass(frozen=True)
class Candidate:
    """One way to do a part: who shares out how, at which size, lying where (spots of the footprints in the space)."""

    way: Arrangement
    size: Size
    spots: tuple[Spot, ...]
    price: float


@lru_cache(maxsize=4096)
def candidates(
    practice: Practice, players: int, space: Space, adults: int | None, kit: Kit, minutes: float
) -> tuple[Candidate, ...]:
    """The cheapest ways for this many players on this ground with this kit, at most KEPT; empty when there is none."""
    needs = needs_of(practice)
    found: list[Candidate] = []
    for way in arrangements(practice, players, adults, minutes):
        if len(found) >= KEPT and way.price >= found[KEPT - 1].price:
            break
        placed = _placed(practice, needs, way, space) if can_dress(practice, way, kit) else None
        if placed is not None:
            found.append(placed)
            found.sort(key=lambda candidate: (candidate.price, candidate.way.copies))
    return tuple(found[:KEPT])


@lru_cache(maxsize=16_384)
def part_goes(practice: Practice, players: int, space: Space, adults: int | None, kit: Kit) -> bool:
    """Whether there is any way at all: the smallest sizes of each arrangement, each sort of arrangement once."""
    needs = needs_of(practice)
    packs: dict[tuple[int, tuple[int, ...]], bool] = {}
    for way in arrangements(practice, players, adults, 0.0):
        ask = (way.copies, homes_of(needs, way))
        if ask not in packs:
            smallest = _smallest(sizes_with(practice, needs, ask[1]))
            packs[ask] = any(packed(needs, way.copies, size, space) for size in smallest)
        if packs[ask] and can_dress(practice, way, kit):
            return True
    return False


@lru_cache(maxsize=4096)
def _smallest(listed: tuple[Size, ...]) -> tuple[Size, ...]:
    """The sizes no other size lies inside of."""
    kept: list[Size] = []
    for size in sorted(listed, key=lambda size: (size.across_m * size.up_m, size.across_m)):
        if not any(other.across_m <= size.across_m and other.up_m <= size.up_m for other in kept):
            kept.append(size)
    return tuple(kept)


def _placed(practice: Practice, needs: Needs, way: Arrangement, space: Space) -> Candidate | None:
    """The way at the cheapest size that packs; None when no size does."""
    for size in sizes_with(practice, needs, homes_of(needs, way)):
        spots = packed(needs, way.copies, size, space)
        if spots is not None:
            turned = prices.TURNED * sum(spot.turned for spot in spots)
            return Candidate(way, size, spots, way.price + size.price + turned)
    return None


def homes_of(needs: Needs, way: Arrangement) -> tuple[int, ...]:
    """Players at home in the field of each copy, fewest first."""
    return tuple(sorted(needs.players_home(mix.counts) for mix in way.mixes))


def packed(needs: Needs, copies: int, size: Size, space: Space) -> tuple[Spot, ...] | None:
    """The footprints at this size inside the space less its run-off, in the space's metres; None if they do not go."""
    across_m, up_m = needs.footprint_m((size.across_m, size.up_m))
    off = space.run_off_m
    piece = Piece(round(across_m, 6), round(up_m, 6), needs.gap_m)
    spots = pack(copies, piece, across=space.across_m - 2 * off, up=space.up_m - 2 * off)
    return None if spots is None else tuple(Spot(_shifted(spot, off), spot.turned) for spot in spots)


def _shifted(spot: Spot, off: float) -> Box:
    box = spot.box
    return Box(box.x0 + off, box.y0 + off, box.x1 + off, box.y1 + off)
