"""Rectangles written as so much for each player: their size, once the players are known."""

from collections.abc import Iterable
from dataclasses import replace
from math import sqrt

from turnout.practice.model import Group, PlaceDef


def sized(ground: Iterable[PlaceDef], groups: Iterable[Group]) -> tuple[PlaceDef, ...]:
    """The places, those of `area_m2` for each player with the size that follows from the designed numbers."""
    players = sum(group.count for group in groups if plays_inside(group))
    return tuple(with_size(place, max(1, players)) if place.area_m2 else place for place in ground)


def plays_inside(group: Group) -> bool:
    """Whether a group shares the room: it neither waits nor stands on an edge or at a point."""
    return not group.waits and not group.home.on_edge and group.home.at is None


def with_size(place: PlaceDef, players: int) -> PlaceDef:
    """The place at its size for so many players, metres."""
    across, up = place.ratio
    across_m = sqrt(place.area_m2 * players * across / up)
    return replace(place, across_m=across_m, up_m=across_m * up / across)
