"""Who is where in one copy, block by block: first by construction, then by swaps that never worsen anything.

Sides stay for the whole part, unless somebody waits or a rule swaps a group with the next one: then whoever comes in
takes the place and the bib of who goes out.
"""

from collections import Counter
from dataclasses import dataclass
from itertools import pairwise

from turnout.rota.designs import in_turn

WAITING = "waiting"
_UNFAIR, _TWICE_RUNNING, _SIDE_CHANGED = 10, 400, 1


@dataclass(frozen=True)
class CopyTask:
    """One copy to fill: groups as (key, side, role, places), keys everybody takes turns in, how many wait at a time."""

    groups: tuple[tuple[str, str, str, int], ...]
    turning: tuple[str, ...]
    waiting: int
    blocks: int

    @property
    def sides_stay(self) -> bool:
        return self.waiting == 0 and not self.turning

    def side_of(self, key: str) -> str | None:
        """The side of a group; None for waiting."""
        return {group: side for group, side, _, _ in self.groups}.get(key)

    def kind_of(self, key: str) -> str | None:
        """What a place counts as when turns are shared out; None when it is not a turn of anything."""
        if key == WAITING or key in self.turning:
            return key
        roles = {group: (side, role) for group, side, role, _ in self.groups}
        side, role = roles[key]
        if not role or len([1 for _, other, _, count in self.groups if other == side and count]) < 2:
            return None
        return f"{side} {role}" if self.sides_stay else role

    def shown(self, kind: str) -> str:
        """A kind of turn as a coach says it: the role alone where sides stay."""
        return next((role for _, side, role, _ in self.groups if role and kind == f"{side} {role}"), kind)


Rows = list[list[str]]  # per player the key of each block


def fill(task: CopyTask, sides: list[str | None]) -> Rows:
    """Places per player and block. `sides` is where each player starts, by colour worn before; None: anywhere.

    The order of the players decides who goes first; the same input gives the same rows.
    """
    rows: Rows = [[] for _ in sides]
    taken = _turns(task, sides)
    last = list(sides)
    served: list[Counter[str]] = [Counter() for _ in sides]
    for block in range(task.blocks):
        places = _one_block(task, taken[block], last, served)
        for player, key in enumerate(places):
            rows[player].append(key)
            served[player][task.kind_of(key) or ""] += 1
            last[player] = task.side_of(key) or last[player]
    return rows if even_enough(task, rows) else improved(task, rows)


def _turns(task: CopyTask, sides: list[str | None]) -> list[dict[int, str]]:
    """Who waits and who is in a turning group in each block; those who start there by colour go first."""
    taken: list[dict[int, str]] = [{} for _ in range(task.blocks)]
    wanted = [(WAITING, task.waiting), *((key, count) for key, _, _, count in task.groups if key in task.turning)]
    shift = 0
    for key, count in wanted:
        if not count:
            continue
        order = _first(task, key, sides, shift)
        for block, turn in enumerate(in_turn(len(sides), count, task.blocks)):
            _take(taken[block], key, [order[place] for place in turn], order)
        shift += count
    return taken


def _first(task: CopyTask, key: str, sides: list[str | None], shift: int) -> list[int]:
    """Players in the order in which their turn comes, the places of the first turn given to those in the bib."""
    side = task.side_of(key)
    players = list(range(len(sides)))
    if key == WAITING:
        return players
    there = [player for player in players if sides[player] == side]
    return there + [player for player in players[shift:] + players[:shift] if player not in there]


def _take(taken: dict[int, str], key: str, turn: list[int], order: list[int]) -> None:
    """Give the places to whose turn it is; where somebody is taken already, to the next in order."""
    spare = [player for player in order if player not in taken and player not in turn]
    for player in turn:
        chosen = player if player not in taken else spare.pop(0)
        taken[chosen] = key


def _one_block(task: CopyTask, taken: dict[int, str], last: list[str | None], served: list[Counter[str]]) -> list[str]:
    """Everybody's place in one block: turns first, then sides kept where they can be, then roles by least served."""
    places: dict[int, str] = dict(taken)
    left = [player for player in range(len(last)) if player not in places]
    for side, members in _sides(task, left, last).items():
        roles = [(count, key) for key, at, _, count in task.groups if at == side and key not in task.turning and count]
        for count, key in sorted(roles, key=lambda role: role[0]):
            kind = task.kind_of(key) or ""
            members.sort(key=lambda player: served[player][kind])
            for player in members[:count]:
                places[player] = key
            del members[:count]
    return [places[player] for player in range(len(last))]


def _sides(task: CopyTask, left: list[int], last: list[str | None]) -> dict[str, list[int]]:
    """The players left over shared to the sides that do not turn: on their last side while there is room."""
    room: dict[str, int] = {}
    for key, side, _, count in task.groups:
        if key not in task.turning:
            room[side] = room.get(side, 0) + count
    found: dict[str, list[int]] = {side: [] for side in room}
    loose = []
    for player in left:
        before = last[player]
        if before in room and len(found[before]) < room[before]:
            found[before].append(player)
        else:
            loose.append(player)
    for player in loose:
        side = next(side for side in room if len(found[side]) < room[side])
        found[side].append(player)
    return {side: sorted(members) for side, members in found.items()}


def improved(task: CopyTask, rows: Rows) -> Rows:
    """Swaps of two players' places in one block, then in two at once, while any makes turns more even."""
    rows = [list(row) for row in rows]
    singles: list[tuple[int, ...]] = [(block,) for block in range(task.blocks)]
    doubles: list[tuple[int, ...]] = [(one, other) for one in range(task.blocks) for other in range(one)]
    while _swapped(task, rows, singles) or (not even_enough(task, rows) and _swapped(task, rows, doubles)):
        pass
    return rows


def _swapped(task: CopyTask, rows: Rows, moves: list[tuple[int, ...]]) -> bool:
    """Make every swap that lowers the cost of the two rows together; whether there was one."""
    found = False
    costs = [_cost(task, row) for row in rows]
    for first in range(len(rows)):
        for second in range(first):
            for blocks in moves:
                if not _may_swap(task, rows[first], rows[second], blocks):
                    continue
                _swap(rows, first, second, blocks)
                now = _cost(task, rows[first]), _cost(task, rows[second])
                if sum(now) < costs[first] + costs[second]:
                    costs[first], costs[second] = now
                    found = True
                else:
                    _swap(rows, first, second, blocks)
    return found


def _swap(rows: Rows, first: int, second: int, blocks: tuple[int, ...]) -> None:
    for block in blocks:
        rows[first][block], rows[second][block] = rows[second][block], rows[first][block]


def _may_swap(task: CopyTask, one: list[str], other: list[str], blocks: tuple[int, ...]) -> bool:
    if all(one[block] == other[block] for block in blocks):
        return False
    return not task.sides_stay or all(task.side_of(one[block]) == task.side_of(other[block]) for block in blocks)


def _cost(task: CopyTask, row: list[str]) -> int:
    """Squares of the turns of each kind, waiting twice running, and changes of side; lower is better."""
    kinds = Counter(task.kind_of(key) for key in row)
    unfair = sum(count * count for kind, count in kinds.items() if kind is not None)
    sides = [side for side in (task.side_of(key) for key in row) if side is not None]
    changed = sum(one != other for one, other in pairwise(sides))
    return _UNFAIR * unfair + _TWICE_RUNNING * twice_running(row) + _SIDE_CHANGED * changed


def twice_running(row: list[str]) -> int:
    """How often a player waits in two blocks in a row."""
    return sum(one == other == WAITING for one, other in pairwise(row))


def even_enough(task: CopyTask, rows: Rows) -> bool:
    """Whether every kind of turn is as even as arithmetic allows and nobody waits twice running."""
    return all(spread == bound for spread, bound, _, _ in shares(task, rows).values()) and not any(
        twice_running(row) for row in rows
    )


def shares(task: CopyTask, rows: Rows) -> dict[str, tuple[int, int, int, int]]:
    """Kind of turn -> (spread, least spread arithmetic allows, fewest turns, most turns) over those who take part."""
    found = {}
    for kind, places, players in _kinds(task, rows):
        turns = [sum(task.kind_of(key) == kind for key in rows[player]) for player in players]
        bound = 0 if (places * task.blocks) % len(players) == 0 else 1
        found[kind] = (max(turns) - min(turns), bound, min(turns), max(turns))
    return found


def _kinds(task: CopyTask, rows: Rows) -> list[tuple[str, int, list[int]]]:
    """(kind, places at a time, who takes part) for every kind of turn in this copy."""
    places: Counter[str] = Counter()
    for key, count in [(WAITING, task.waiting), *((key, count) for key, _, _, count in task.groups)]:
        kind = task.kind_of(key)
        if kind is not None and count:
            places[kind] += count
    found = []
    for kind, count in places.items():
        members = [
            player
            for player, row in enumerate(rows)
            if not task.sides_stay or kind.startswith(f"{task.side_of(row[0])} ")
        ]
        found.append((kind, count, members))
    return found
