"""Sizes a part may have at given numbers: whole yards (or metres, if it is written in metres), cheapest first."""

from dataclasses import dataclass, replace
from functools import lru_cache
from math import ceil, floor

from turnout.fit import prices
from turnout.fit.ground import Needs, needs_of
from turnout.measure import UNITS_M, YARD_M
from turnout.practice.model import Practice

SMALLEST_SIDE_M = 4 * YARD_M
MOST_ASPECT = 0.10  # length to width may leave the designed one by this share
_EPS = 1e-9


@dataclass(frozen=True)
class Size:
    """A size of the first place, metres, and its price against the designed area and shape."""

    across_m: float
    up_m: float
    price: float


def sizes(practice: Practice, designed_home: int, homes: tuple[int, ...]) -> tuple[Size, ...]:
    """The sizes when `designed_home` players at home in the field is what the written size is right for."""
    return sizes_with(practice, replace(needs_of(practice), designed_home=designed_home), homes)


def sizes_with(practice: Practice, needs: Needs, homes: tuple[int, ...]) -> tuple[Size, ...]:
    """The sizes for copies with these numbers at home in the field, cheapest first; one size serves all copies."""
    field = practice.ground[0]
    written = (field.across_m, field.across_m if field.kind == "circle" else field.up_m)
    if practice.arrange.fixed:
        return (Size(*written, 0.0),)
    square = field.kind == "circle" or field.name in practice.arrange.keep_square
    step = UNITS_M[field.unit] if field.unit in ("yd", "m", "paces") else YARD_M
    return _listed(written, step, square, bands(practice), needs, homes)


def bands(practice: Practice) -> tuple[float, float]:
    """By how much the area for each player may be below and above the written one; a field of at least or at most so
    much keeps that side."""
    band, bound = practice.arrange.band, practice.ground[0].bound
    return (0.0 if bound == "least" else band), (0.0 if bound == "most" else band)


@lru_cache(maxsize=4096)
def _listed(
    written: tuple[float, float],
    step: float,
    square: bool,
    band: tuple[float, float],
    needs: Needs,
    homes: tuple[int, ...],
) -> tuple[Size, ...]:
    """Sizes inside band and aspect; a size no smaller than one that costs no more is left out."""
    per_player = written[0] * written[1] / needs.designed_home
    low = per_player * (1 - band[0]) * max(homes)
    high = per_player * (1 + band[1]) * min(homes)
    found = []
    for across, up in _whole_sides(written, step, square, low, high):
        if needs.room_left_m((across, up)) < SMALLEST_SIDE_M - _EPS:
            continue
        if across < needs.least_m[0] - _EPS or up < needs.least_m[1] - _EPS:
            continue
        shares = [abs(across * up / (home * per_player) - 1) for home in homes]
        aspect = abs((across / up) / (written[0] / written[1]) - 1)
        price = prices.AREA * 100 * sum(shares) / len(shares) + prices.ASPECT * 100 * aspect
        found.append(Size(across, up, round(price, 6)))
    return _useful(found)


def _whole_sides(
    written: tuple[float, float], step: float, square: bool, low: float, high: float
) -> list[tuple[float, float]]:
    """Whole steps across and up with an area between low and high, near the written length to width."""
    shape = written[0] / written[1]
    longest = floor((high * shape * (1 + MOST_ASPECT)) ** 0.5 / step + 1)
    shortest = ceil(SMALLEST_SIDE_M / step - _EPS)
    found = []
    for across in range(shortest, longest + 1):
        narrow, wide = across / shape / (1 + MOST_ASPECT), across / shape / (1 - MOST_ASPECT)
        ups = [across] if square else range(max(shortest, ceil(narrow - _EPS)), floor(wide + _EPS) + 1)
        for up in ups:
            area = across * up * step * step
            if low - _EPS <= area <= high + _EPS:
                found.append((across * step, up * step))
    return found


def _useful(found: list[Size]) -> tuple[Size, ...]:
    kept: list[Size] = []
    for size in sorted(found, key=lambda size: (size.price, size.across_m * size.up_m, size.across_m)):
        if not any(other.across_m <= size.across_m and other.up_m <= size.up_m for other in kept):
            kept.append(size)
    return tuple(kept)
