"""The edge of a place: where round it, in shares of the way, and who has which stretch."""

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from turnout.practice.attack import attack_axis
from turnout.practice.model import Group, Home, Place
from turnout.practice.setup import Setup
from turnout.practice.table import Row

EDGE_OUT_M = 0.5  # an edge player stands this far outside the line, own choice
CLOCKWISE = ("north", "east", "south", "west")
TURNED = {"left": 3, "right": 1}  # quarters clockwise from the way a side attacks

Spot = tuple[float, float]


@dataclass(frozen=True)
class Stretch:
    """One player's stretch of an edge: its middle and half its length, in shares of the way round clockwise from the
    middle of the north side."""

    place: str
    share: float
    half: float


def stretches(setup: Setup, rows: Sequence[Row]) -> dict[str, tuple[Stretch, ...]]:
    """A stretch for every player at home on an edge, by group key; groups sharing one are dealt round it."""
    found: dict[str, list[Stretch]] = {}
    groups = [group for group in setup.practice.groups if group.home.on_edge]
    for key in dict.fromkeys((group.home.place, told_sides(setup, group, rows)) for group in groups):
        sharing = [g for g in groups if (g.home.place, told_sides(setup, g, rows)) == key]
        order = edge_order((group.key, setup.count(group.key)) for group in sharing)
        for owner, (share, half) in zip(order, dealt(setup.place(key[0]), key[1], len(order)), strict=True):
            found.setdefault(owner, []).append(Stretch(key[0], share, half))
    return {group.key: tuple(found.get(group.key, ())) for group in groups}


def told_sides(setup: Setup, group: Group, rows: Sequence[Row]) -> tuple[str, ...]:
    """The sides of its place a group stands on as north, east, south and west; none: all round."""
    return named_sides(setup, group.home, group.side, rows)


def named_sides(setup: Setup, home: Home, side: str, rows: Sequence[Row]) -> tuple[str, ...]:
    """Long, short, left and right as the points of the compass; left and right of the way the side attacks."""
    place = setup.place(home.place)
    upright = place.up_m >= place.across_m
    ends, flanks = ("north", "south"), ("east", "west")
    axis = attack_axis(setup, side, rows) or (0.0, 1.0)
    forward = round(math.atan2(axis[0], axis[1]) / (math.pi / 2)) % 4
    pairs = {"long": flanks if upright else ends, "short": ends if upright else flanks}
    told = [
        pairs.get(word) or ((CLOCKWISE[(forward + TURNED[word]) % 4],) if word in TURNED else (word,))
        for word in home.sides
    ]
    return tuple(dict.fromkeys(way for ways in told for way in ways))


def dealt(place: Place, sides: tuple[str, ...], number: int) -> list[tuple[float, float]]:
    """The middle and half the length of the stretch of each of `number` players, in shares of the way; those on some
    sides are shared out over them evenly."""
    if not sides:
        return [(index / number, 0.5 / number) for index in range(number)]
    runs = [side_run(place, side) for side in CLOCKWISE if side in sides]
    found: list[tuple[float, float]] = []
    for index, (start, end) in enumerate(runs):
        here = number // len(runs) + (index < number % len(runs))
        half = (end - start) / max(1, here) / 2
        found += [((start + (2 * spot + 1) * half) % 1.0, half) for spot in range(here)]
    return found


def side_run(place: Place, side: str) -> tuple[float, float]:
    """Where one side begins and ends, in shares of the way round."""
    if place.kind == "circle":
        middle = CLOCKWISE.index(side) / 4
        return middle - 0.125, middle + 0.125
    round_m = 2 * (place.across_m + place.up_m)
    middle = {"north": 0.0, "east": 0.25, "south": 0.5, "west": 0.75}[side]
    length = place.across_m if side in ("north", "south") else place.up_m
    return middle - length / round_m / 2, middle + length / round_m / 2


def edge_spots(setup: Setup, rows: Sequence[Row]) -> dict[str, tuple[Spot, ...]]:
    """Start spots of everybody at home on an edge, in the middle of each one's stretch."""
    return {
        key: tuple(perimeter_point(setup.place(one.place), one.share) for one in own)
        for key, own in stretches(setup, rows).items()
    }


def perimeter_point(place: Place, share: float, out_m: float = EDGE_OUT_M) -> Spot:
    """The point a share (0 to 1) of the way round a place, clockwise from the middle of its north side."""
    if place.kind == "circle":
        angle = math.pi / 2 - 2 * math.pi * share
        radius = place.across_m / 2 + out_m
        return place.x_m + radius * math.cos(angle), place.y_m + radius * math.sin(angle)
    if place.corners:
        return polygon_point(place, share, out_m)
    across, up = place.across_m, place.up_m
    along = (share % 1.0) * 2 * (across + up) + across / 2
    for length, corner, step, out in (
        (across, (-across / 2, up / 2), (1, 0), (0, 1)),
        (up, (across / 2, up / 2), (0, -1), (1, 0)),
        (across, (across / 2, -up / 2), (-1, 0), (0, -1)),
        (up, (-across / 2, -up / 2), (0, 1), (-1, 0)),
        (across, (-across / 2, up / 2), (1, 0), (0, 1)),
    ):
        if along <= length:
            x = corner[0] + step[0] * along + out[0] * out_m
            return place.x_m + x, place.y_m + corner[1] + step[1] * along + out[1] * out_m
        along -= length
    return place.x_m, place.y_m + up / 2 + out_m


def polygon_point(place: Place, share: float, out_m: float) -> Spot:
    """The point a share of the way round a polygon, from its first corner, `out_m` outside it."""
    sides = list(zip(place.corners, (*place.corners[1:], place.corners[0]), strict=True))
    signed = sum(ax * by - bx * ay for (ax, ay), (bx, by) in sides)
    way = (share % 1.0) * sum(math.dist(a, b) for a, b in sides)
    for (ax, ay), (bx, by) in sides:
        length = math.dist((ax, ay), (bx, by))
        if way <= length:
            ux, uy = (bx - ax) / length, (by - ay) / length
            turn = math.copysign(out_m, signed)
            return ax + ux * way + uy * turn, ay + uy * way - ux * turn
        way -= length
    return place.corners[0]


def edge_order(counts: Iterable[tuple[str, int]]) -> list[str]:
    """Groups sharing one edge, dealt round it as evenly as their numbers allow."""
    dealt = sorted(
        ((index + 0.5) / count, order, key) for order, (key, count) in enumerate(counts) for index in range(count)
    )
    return [key for _, _, key in dealt]
