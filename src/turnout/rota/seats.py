"""Names to copies and sides at the start of a part: whoever wears a colour keeps it where the colour is needed."""

from turnout.fit.model import Copy, FittedPart

OWN = "own"
Seat = tuple[int, str | None]  # copy, side; side None: waits first, or has no side yet


def seats(part: FittedPart, labels: tuple[str, ...], worn: dict[str, str], turn: int) -> dict[str, Seat]:
    """Label -> seat. `worn` is the colour each label wears; `turn` shifts the order so that groups mix over the hour.

    In the first part labels fill the areas in order, so that those who came first can start. As many as can be keep
    their colour, which is the fewest changes there are.
    """
    order = list(labels[turn:] + labels[:turn])
    open_seats = _open_seats(part, in_order=turn == 0)
    if turn == 0:
        return dict(zip(order, [seat for seat, _ in open_seats], strict=True))
    found: dict[str, Seat] = {}
    for colour in dict.fromkeys(colour for _, colour in open_seats if colour is not None):
        wearing = [label for label in order if worn.get(label, OWN) == colour and label not in found]
        wanted = [seat for seat, needed in open_seats if needed == colour]
        found.update(zip(wearing, wanted, strict=False))
    taken = list(found.values())
    rest = [seat for seat, _ in open_seats]
    for seat in taken:
        rest.remove(seat)
    found.update(zip([label for label in order if label not in found], rest, strict=True))
    return found


def _open_seats(part: FittedPart, *, in_order: bool) -> list[tuple[Seat, str | None]]:
    """Every (seat, colour): area by area, or dealt out in turn over the areas."""
    per_copy = [_seats_of(number, copy) for number, copy in enumerate(part.copies)]
    if in_order:
        return [seat for seats in per_copy for seat in seats]
    longest = max(len(seats) for seats in per_copy)
    return [seats[place] for place in range(longest) for seats in per_copy if place < len(seats)]


def _seats_of(number: int, copy: Copy) -> list[tuple[Seat, str | None]]:
    colours = dict(copy.bibs)
    groups = zip(copy.setup.practice.groups, copy.setup.counts, strict=True)
    found: list[tuple[Seat, str | None]] = [
        ((number, None), None) if group.waits else ((number, group.side), colours.get(group.side, OWN))
        for group, (_, count) in groups
        for _ in range(count)
    ]
    return found + [((number, None), None)] * copy.waiting
