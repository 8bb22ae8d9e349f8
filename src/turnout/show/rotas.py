"""Who goes where, as a table: one row for blocks that are alike, one column for each group."""

from collections.abc import Iterator, Sequence

from turnout.club.tonight import Tonight
from turnout.fit.model import FittedPart
from turnout.practice.units import unit_sizes
from turnout.rota.model import BlockPlaces, PartRota
from turnout.show.evening import RotaRow, RotaView
from turnout.show.ink import Side, colour_words, is_neutral
from turnout.show.words import clock


def rota_view(part: FittedPart, rota: PartRota, sides: Sequence[Side], tonight: Tonight, *, names: bool) -> RotaView:
    """The rota of a part; without names, each player's number on the coach's list."""
    practice = part.copies[0].setup.practice
    by_side = {side.side: side for side in sides}
    playing = [group for group in practice.groups if not group.waits]
    keys = [(group.key, group.of) for group in playing]
    differ = bibs_differ(part)
    columns: list[tuple[Side | None, str]] = [
        (by_side[group.side], f"{_called(by_side[group.side], differ)} {group.role}".strip()) for group in playing
    ]
    waits = any(block.waiting for block in rota.blocks)
    if waits:
        columns.append((None, "Waiting"))
    shown = {label: label if names else str(number) for number, label in enumerate(_everybody(rota, tonight), start=1)}
    worn = [_copy(part, copy, sides if differ else ()) for copy in range(len(part.copies))]
    rows = tuple(_rows(part, rota, keys, shown, worn, tonight.start, waits))
    return RotaView(tuple(columns), rows, rota.note, len(part.copies))


def _everybody(rota: PartRota, tonight: Tonight) -> list[str]:
    """Every label of the evening once: the squad's order first, then those the rota filled up with."""
    dealt = [label for block in rota.blocks for _, labels in block.who for label in labels]
    waiting = [label for block in rota.blocks for label in block.waiting]
    filled = sorted({*dealt, *waiting} - set(tonight.labels), key=lambda label: (len(label), label))
    return [*tonight.labels, *filled]


def bibs_differ(part: FittedPart) -> bool:
    """Whether a side wears one colour in one copy and another in the next."""
    first = dict(part.bibs)
    return any(first.get(side, colour) != colour for copy in part.copies for side, colour in copy.bibs)


def _called(side: Side, differ: bool) -> str:
    """A side over its column: by its colour, or by its letter when the colour is not the same in every copy."""
    return side.letter if differ and not is_neutral(side.side) else side.name


def _rows(
    part: FittedPart,
    rota: PartRota,
    keys: Sequence[tuple[str, int]],
    shown: dict[str, str],
    worn: Sequence[str],
    start: str,
    waits: bool,
) -> Iterator[RotaRow]:
    starts = _block_starts(part)
    for first, last, block in _runs(rota.blocks):
        who = dict(block.who)
        name = str(first + 1) if first == last else f"{first + 1}–{last + 1}"
        for copy in range(len(part.copies)):
            cells = [_cell(who.get((copy, key), ()), shown, of) for key, of in keys]
            if waits:
                cells.append(_cell(block.waiting, shown) if copy == 0 else "")
            top = copy == 0
            yield RotaRow(name if top else "", clock(start, starts[first]) if top else "", worn[copy], tuple(cells))


def _copy(part: FittedPart, index: int, sides: Sequence[Side]) -> str:
    """'2', or with the sides whose bibs differ '2: A own shirts, B blue'."""
    if len(part.copies) == 1:
        return ""
    worn = dict(part.copies[index].bibs)
    told = [f"{side.letter} {colour_words(worn[side.side])}" for side in sides if side.side in worn]
    return f"{index + 1}: {', '.join(told)}" if told else str(index + 1)


def _cell(labels: Sequence[str], shown: dict[str, str], of: int = 1) -> str:
    """Labels in a row; those of one small side together: 'Ada & Bram & Cleo, Dewi & Esme'."""
    told = [shown.get(label, label) for label in labels]
    sizes = unit_sizes(len(told), of) if of > 1 else (1,) * len(told)
    return ", ".join(" & ".join(told[sum(sizes[:n]) : sum(sizes[: n + 1])]) for n in range(len(sizes)))


def _block_starts(part: FittedPart) -> list[float]:
    starts, at = [], part.start_min
    for block in part.blocks:
        starts.append(at)
        at += block + part.rest_min
    return starts


def _runs(blocks: Sequence[BlockPlaces]) -> Iterator[tuple[int, int, BlockPlaces]]:
    """Blocks next to each other with everybody in the same place, as one: first, last, block."""
    first = 0
    for index in range(1, len(blocks) + 1):
        alike = index < len(blocks) and (blocks[index].who, blocks[index].waiting) == (
            blocks[first].who,
            blocks[first].waiting,
        )
        if not alike:
            yield first, index - 1, blocks[first]
            first = index
