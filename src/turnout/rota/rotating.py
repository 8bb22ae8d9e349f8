"""The rota of a fitted session: names to places, block by block, with how even it is and how even it could be."""

from collections import Counter

from turnout.fit.model import Copy, Fitted, FittedPart
from turnout.fit.turns import turning_groups
from turnout.rota.copy_blocks import WAITING, CopyTask, Rows, fill, shares, twice_running
from turnout.rota.model import BlockPlaces, PartRota
from turnout.rota.seats import OWN, Seat, seats
from turnout.rota.telling import note_for


def rota_for(fitted: Fitted, labels: tuple[str, ...] | list[str] = ()) -> tuple[PartRota, ...]:
    """Who is where in every block of every part; one PartRota per fitted part, the same names the same answer.

    Labels are first names or numbers, in the squad's order; missing ones are filled up with numbers. Raises ValueError
    when a label comes twice.
    """
    names = _names(tuple(labels), fitted.tonight.players)
    worn = dict.fromkeys(names, OWN)
    waited: Counter[str] = Counter()
    found = []
    for turn, part in enumerate(fitted.parts):
        rota = _part_rota(part, names, worn, waited, turn)
        worn.update(_worn_last(part, rota))
        waited.update(label for block in rota.blocks for label in block.waiting)
        found.append(rota)
    return tuple(found)


def _names(labels: tuple[str, ...], players: int) -> tuple[str, ...]:
    given = labels[:players]
    if len(set(given)) != len(given):
        raise ValueError(
            f"a label comes twice: {', '.join(sorted(name for name in set(given) if given.count(name) > 1))}"
        )
    free = (str(number) for number in range(1, 2 * players + 1) if str(number) not in given)
    return given + tuple(next(free) for _ in range(players - len(given)))


def _part_rota(
    part: FittedPart, names: tuple[str, ...], worn: dict[str, str], waited: Counter[str], turn: int
) -> PartRota:
    seat_of = seats(part, names, worn, turn)
    copies = [_copy_rows(part, number, seat_of, names, waited) for number in range(len(part.copies))]
    blocks = tuple(_block(part, copies, block) for block in range(len(part.blocks)))
    kinds = [(task.shown(kind), share) for task, _, rows in copies for kind, share in shares(task, rows).items()]
    spread = max((share[0] for _, share in kinds), default=0)
    bound = max((share[1] for _, share in kinds), default=0)
    twice = sum(twice_running(row) for _, _, rows in copies for row in rows)
    stay = all(task.sides_stay for task, _, _ in copies)
    return PartRota(part.index, blocks, spread, bound, note_for(kinds, len(part.blocks), stay=stay, twice=twice))


def _copy_rows(
    part: FittedPart, number: int, seat_of: dict[str, Seat], names: tuple[str, ...], waited: Counter[str]
) -> tuple[CopyTask, list[str], Rows]:
    """The task of one copy, its players (who has waited least first) and their places per block."""
    task = task_of(part.copies[number], len(part.blocks))
    players = [label for label in names if seat_of[label][0] == number]
    players.sort(key=lambda label: waited[label])
    return task, players, fill(task, [seat_of[label][1] for label in players])


def task_of(copy: Copy, blocks: int) -> CopyTask:
    """What has to be filled in a copy: its groups with players, who turns by rule, who waits (those in line too)."""
    practice = copy.setup.practice
    groups = tuple(
        (group.key, group.side, group.role, count)
        for group, (_, count) in zip(practice.groups, copy.setup.counts, strict=True)
        if count and not group.waits
    )
    in_line = sum(copy.setup.count(group.key) for group in practice.groups if group.waits)
    present = {key for key, _, _, _ in groups}
    turning = tuple(key for key in turning_groups(practice) if key in present)
    return CopyTask(groups, turning, copy.waiting + in_line, blocks)


def _block(part: FittedPart, copies: list[tuple[CopyTask, list[str], Rows]], block: int) -> BlockPlaces:
    who: dict[tuple[int, str], list[str]] = {
        (number, key): [] for number, (task, _, _) in enumerate(copies) for key, _, _, _ in task.groups
    }
    waiting = []
    for number, (_, players, rows) in enumerate(copies):
        for label, row in zip(players, rows, strict=True):
            if row[block] == WAITING:
                waiting.append(label)
            else:
                who[(number, row[block])].append(label)
    return BlockPlaces(part.blocks[block], tuple((key, tuple(names)) for key, names in who.items()), tuple(waiting))


def _worn_last(part: FittedPart, rota: PartRota) -> dict[str, str]:
    """The colour each label wears when the part ends; who waits then keeps the last one worn in it."""
    found: dict[str, str] = {}
    for block in rota.blocks:
        for (number, key), names in block.who:
            copy = part.copies[number]
            side = copy.setup.practice.group(key).side
            found.update(dict.fromkeys(names, dict(copy.bibs).get(side, OWN)))
    return found
