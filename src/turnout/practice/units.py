"""Many small sides of one group (pairs, threes), and the balls in play at once."""

from turnout.practice.model import Practice
from turnout.practice.setup import Setup


def unit_sizes(players: int, of: int) -> tuple[int, ...]:
    """How many players each small side has, the larger ones first: 13 in pairs are one three and five pairs.

    Players are numbered through the units in this order: the first unit's first.
    """
    if players == 0:
        return ()
    units = max(1, players // of)
    return tuple(players // units + (unit < players % units) for unit in range(units))


def balls_in_play(setup: Setup) -> int:
    """How many balls are in play at once."""
    if setup.practice.balls_in_play == "per player":
        return max(1, sum(setup.count(group.key) for group in setup.practice.groups if not group.waits))
    if setup.practice.balls_in_play == "per unit":
        sizes = [unit_sizes(setup.count(g.key), g.of) for g in setup.practice.groups if g.of > 1]
        return max(1, sum(len(units) for units in sizes))
    return 1


def units_side(practice: Practice) -> str | None:
    """The side that is many small sides, if there is one."""
    return next((group.side for group in practice.groups if group.of > 1), None)
