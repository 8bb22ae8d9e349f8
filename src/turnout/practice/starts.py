"""Where everybody stands when play starts: one start spot per player, drawn on the card and taken up in play."""

import math
from collections.abc import Iterable
from dataclasses import replace

from turnout.practice.attack import attack_axis
from turnout.practice.edges import edge_order, edge_spots, perimeter_point
from turnout.practice.meaning import table
from turnout.practice.model import Direction, Group, Place
from turnout.practice.nets import has_net
from turnout.practice.setup import Setup
from turnout.practice.table import Row
from turnout.practice.units import unit_sizes

__all__ = ["attack_axis", "edge_order", "perimeter_point", "starts", "waiting_line"]

Spot = tuple[float, float]
CLEAR_M = 1.0  # a start spot stands this far clear of a place closed to it, own choice
BESIDE_M = 2.0  # a line of those who wait stands this far from the post of a goal, own choice
OFF_LINE_M, IN_LINE_M = 1.5, 1.2  # a line of those who wait: off the field, and from one to the next, own choice
KEEPER_M = 0.5  # a keeper starts this far in front of the goal line, own choice
UNITS_AT = 0.72  # of half the place: how far out small sides start, own choice
UNIT_SPREAD = 0.8  # of the way to the next small side: how far its players spread, own choice
OUTWARD = {"north": (0.0, 1.0), "south": (0.0, -1.0), "east": (1.0, 0.0), "west": (-1.0, 0.0)}
ROWS = {
    1: (1,), 2: (2,), 3: (1, 2), 4: (1, 2, 1), 5: (2, 1, 2), 6: (2, 3, 1), 7: (2, 3, 2), 8: (3, 3, 2), 9: (3, 4, 2),
    10: (3, 4, 3), 11: (4, 4, 3),
}  # players a side -> rows from the back, own choice  # fmt: skip
WIDTHS = {1: (0.0,), 2: (-0.5, 0.5), 3: (-0.7, 0.0, 0.7), 4: (-0.8, -0.27, 0.27, 0.8)}  # of half the width, own choice


def starts(setup: Setup) -> dict[str, tuple[Spot, ...]]:
    """Start spots (x_m, y_m) per group key, in the practice's own coordinates."""
    rows = table(setup.practice)
    spots = edge_spots(setup, rows)
    rank: dict[str, int] = {}
    for group in setup.practice.groups:
        if group.without is not None and _starts_without(setup, group, rows):
            group = replace(group, home=group.without)
            spots.pop(group.key, None)
        if group.key in spots:
            continue
        if group.waits or group.keeper or group.home.at is not None:
            spots[group.key] = _off_the_game(setup, group)
            continue
        place = setup.place(_start_place(group, rows))
        axis = attack_axis(setup, group.side, rows)
        number = setup.count(group.key)
        order = rank.setdefault(place.name, 0)
        rank[place.name] += 1
        if group.of > 1:
            spots[group.key] = _units(place, unit_sizes(number, group.of))
        elif axis is not None:
            spots[group.key] = _formation(place, number, axis)
        elif _is_neutral(group, rows) and any(attack_axis(setup, side, rows) for side in setup.practice.sides):
            spots[group.key] = _line(place, number)
        else:
            spots[group.key] = _ring(place, number, order)
        spots[group.key] = tuple(_kept_out(setup, group, rows, spot) for spot in spots[group.key])
    return spots


def _starts_without(setup: Setup, group: Group, rows: Iterable[Row]) -> bool:
    """Whether a group with two homes starts in the one without the ball: where another side starts."""
    if group.without is None or group.without.on_edge:
        return False
    start = next((row for row in rows if row.do in ("starts", "first pass") and row.when is None), None)
    who = start.target if start and start.do == "first pass" else start.who if start else None
    return group.side != (who.side if who and who.side else setup.practice.sides[0])


def waiting_line(place: Place, behind: Direction, number: int, goals: Iterable[Place] = ()) -> tuple[Spot, ...]:
    """Spots of those who wait: one behind the other straight back from the middle of a side, off the place; east or
    north of a goal that stands there, out of the way of shots."""
    dx, dy = OUTWARD[behind]
    reach = (abs(dx) * place.across_m + abs(dy) * place.up_m) / 2
    aside = _beside_goal(place.x_m + dx * reach, place.y_m + dy * reach, goals)
    steps = [reach + OFF_LINE_M + index * IN_LINE_M for index in range(number)]
    return tuple((place.x_m + dx * step + abs(dy) * aside, place.y_m + dy * step + abs(dx) * aside) for step in steps)


def _beside_goal(x_m: float, y_m: float, goals: Iterable[Place]) -> float:
    """How far from this point of a side a line clear of the goal there stands, m; 0 where there is none."""
    there = [
        goal
        for goal in goals
        if abs(goal.x_m - x_m) <= goal.across_m / 2 + BESIDE_M and abs(goal.y_m - y_m) <= goal.up_m / 2 + BESIDE_M
    ]
    return max((max(goal.across_m, goal.up_m) / 2 + BESIDE_M for goal in there), default=0.0)


def _off_the_game(setup: Setup, group: Group) -> tuple[Spot, ...]:
    """Keepers in their goal, those at a point and those who wait."""
    if group.home.at is not None:
        return at_point(setup, group.home.at, setup.count(group.key))
    if group.home.behind is None:
        return _in_goal(setup, group)
    goals = [place for _, place in setup.places if has_net(place)]
    return waiting_line(setup.place(group.home.place), group.home.behind, setup.count(group.key), goals)


def _in_goal(setup: Setup, group: Group) -> tuple[Spot, ...]:
    """The keeper, half a metre in front of the middle of the goal, on the side where the field is."""
    goal, field = setup.place(group.home.place), setup.field
    if not setup.count(group.key):
        return ()
    if goal.up_m == 0.0:
        return ((goal.x_m, goal.y_m + math.copysign(KEEPER_M, field.y_m - goal.y_m)),)
    return ((goal.x_m + math.copysign(KEEPER_M, field.x_m - goal.x_m), goal.y_m),)


def _units(place: Place, sizes: tuple[int, ...]) -> tuple[Spot, ...]:
    """Small sides evenly round the place, the players of each beside each other."""
    spots: list[Spot] = []
    for unit, size in enumerate(sizes):
        for player in range(size):
            turn = (unit + (player - (size - 1) / 2) * UNIT_SPREAD / size) / len(sizes)
            angle = math.pi / 2 - 2 * math.pi * turn
            x, y = place.across_m / 2 * UNITS_AT, place.up_m / 2 * UNITS_AT
            spots.append((place.x_m + x * math.cos(angle), place.y_m + y * math.sin(angle)))
    return tuple(spots)


def at_point(setup: Setup, point: Spot, number: int) -> tuple[Spot, ...]:
    """Side by side round a point, which moves with the field as goals at a point do."""
    written = setup.practice.ground[0]
    written_up = written.across_m if written.kind == "circle" else written.up_m
    x, y = point[0] * setup.field.across_m / written.across_m, point[1] * setup.field.up_m / written_up
    return tuple((x + (index - (number - 1) / 2) * IN_LINE_M, y) for index in range(number))


def _start_place(group: Group, rows: Iterable[Row]) -> str:
    for row in rows:
        always = row.while_ is None and row.until is None
        if row.do == "stay in" and always and row.where is not None and row.where.how == "in" and _about(row, group):
            return row.where.place
    return group.home.place


def _kept_out(setup: Setup, group: Group, rows: Iterable[Row], spot: Spot) -> Spot:
    """The spot, moved out of every place the group stays out of at the start, towards the middle of the field."""
    for row in rows:
        if row.do == "stay out" and row.while_ is None and row.where is not None and _about(row, group):
            place = setup.place(row.where.place)
            for member in place.members or (place.name,):
                spot = _out_of(setup.place(member), setup.field, spot)
    return spot


def _out_of(place: Place, field: Place, spot: Spot) -> Spot:
    reach_x, reach_y = place.across_m / 2 + CLEAR_M, place.up_m / 2 + CLEAR_M
    if abs(spot[0] - place.x_m) >= reach_x or abs(spot[1] - place.y_m) >= reach_y:
        return spot
    to_x, to_y = field.x_m - place.x_m, field.y_m - place.y_m
    if abs(to_y) >= abs(to_x):
        return spot[0], place.y_m + (reach_y if to_y >= 0 else -reach_y)
    return place.x_m + (reach_x if to_x >= 0 else -reach_x), spot[1]


def _about(row: Row, group: Group) -> bool:
    if row.who.kind == "everyone":
        return True
    same_side = row.who.side in (None, group.side)
    return same_side and row.who.role in (None, group.role or group.side)


def _is_neutral(group: Group, rows: Iterable[Row]) -> bool:
    return any(row.do == "plays for" and _about(row, group) for row in rows)


def _ring(place: Place, number: int, order: int) -> tuple[Spot, ...]:
    """Evenly round the middle: the first group wide, later groups closer in and turned between them."""
    if number == 0:
        return ()
    share = 0.68 if order == 0 else 0.34
    if number == 1:
        share *= 0.35
    turn = math.pi / 2 + (math.pi / number if order else 0.0)
    angles = [turn - 2 * math.pi * index / number for index in range(number)]
    reach_x, reach_y = place.across_m / 2 * share, place.up_m / 2 * share
    return tuple((place.x_m + reach_x * math.cos(a), place.y_m + reach_y * math.sin(a)) for a in angles)


def _formation(place: Place, number: int, axis: tuple[float, float]) -> tuple[Spot, ...]:
    """Rows in the side's own half, the back row first."""
    rows = ROWS.get(number, ()) or _even_rows(number)
    spots: list[Spot] = []
    for index, width in enumerate(rows):
        depth = -0.78 + 0.66 * (index / max(1, len(rows) - 1)) if len(rows) > 1 else -0.4
        columns = WIDTHS.get(width) or [(column + 0.5) / width * 1.8 - 0.9 for column in range(width)]
        spots.extend(_along(place, axis, depth, across) for across in columns)
    return tuple(spots)


def _even_rows(number: int) -> tuple[int, ...]:
    return (number // 3 + (number % 3 > 0), number // 3 + (number % 3 > 1), number // 3) if number else ()


def _along(place: Place, axis: tuple[float, float], depth: float, across: float) -> Spot:
    half_x, half_y = place.across_m / 2, place.up_m / 2
    x = place.x_m + (axis[0] * depth - axis[1] * across) * half_x
    y = place.y_m + (axis[1] * depth + axis[0] * across) * half_y
    return x, y


def _line(place: Place, number: int) -> tuple[Spot, ...]:
    """Neutrals of a directional game: a line across the middle, between the sides."""
    return tuple(
        (place.x_m + ((index + 0.5) / number - 0.5) * place.across_m * 0.8, place.y_m) for index in range(number)
    )
