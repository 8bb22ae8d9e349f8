"""Many small sides of one group (pairs, threes), and the balls in play at once."""

from turnout.practice.model import Group, Practice
from turnout.practice.names import singular
from turnout.practice.setup import Setup


def unit_sizes(players: int, of: int) -> tuple[int, ...]:
    """How many players each small side has, the larger ones first: 13 in pairs are one three and five pairs.

    Players are numbered through the units in this order: the first unit's first.
    """
    if players == 0:
        return ()
    units = max(1, players // of)
    return tuple(players // units + (unit < players % units) for unit in range(units))


def units_in(setup: Setup) -> tuple[tuple[int, ...], ...]:
    """The players of every small side, by number through all groups in the order of `people`."""
    found: list[tuple[int, ...]] = []
    first = 0
    for group in setup.practice.groups:
        count = setup.count(group.key)
        at = first
        for size in unit_sizes(count, group.of) if group.of > 1 else ():
            found.append(tuple(range(at, at + size)))
            at += size
        first += count
    return tuple(found)


def balls_in_play(setup: Setup) -> int:
    """How many balls are in play at once."""
    return max(1, len(ball_holders(setup)), setup.practice.balls_at_once)


def ball_holders(setup: Setup) -> tuple[tuple[int, ...], ...]:
    """For every ball its own players, by number; empty where one ball is for everybody."""
    if setup.practice.balls_in_play == "per unit":
        return units_in(setup)
    if setup.practice.balls_in_play in ("one", "several"):
        return ()
    counts = [(group.waits, setup.count(group.key)) for group in setup.practice.groups]
    plays = [not waits for waits, count in counts for _ in range(count)]
    return tuple((number,) for number, plays_on in enumerate(plays) if plays_on)


def balls_for(setup: Setup) -> int:
    """How many balls lie ready: the practice's number for one in play, else as many as are in play."""
    return setup.practice.balls if setup.practice.balls_in_play in ("one", "several") else balls_in_play(setup)


def units_side(practice: Practice) -> str | None:
    """The side that is many small sides, if there is one."""
    return next((group.side for group in practice.groups if group.of > 1), None)


def counted(group: Group, players: int) -> str:
    """A group's number as said: '4 amber inside', '6 pairs', '6 pairs (one of 3)', '1 three'."""
    if group.of == 1:
        return f"{players} {group.key}"
    sizes = unit_sizes(players, group.of)
    word = singular(group.side) if len(sizes) == 1 else group.side
    larger = [size for size in sizes if size != group.of]
    if not larger:
        return f"{len(sizes)} {word}"
    number = "all" if len(larger) == len(sizes) > 1 else NUMBERS.get(len(larger), str(len(larger)))
    return f"{len(sizes)} {word} ({f'{number} ' if len(sizes) > 1 else ''}of {larger[0]})"


NUMBERS = {1: "one", 2: "two", 3: "three", 4: "four"}
