"""The words a fit speaks in: numbers, sizes and lists as a coach says them."""

from turnout.fit.model import Copy, FittedPart
from turnout.measure import UNITS_M
from turnout.practice.model import Practice
from turnout.practice.units import counted

_NUMBERS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve")


def number_word(count: int) -> str:
    """A small count in words, a larger one in figures."""
    return _NUMBERS[count] if 0 <= count < len(_NUMBERS) else str(count)


def plural(count: int | float, one: str, many: str | None = None) -> str:
    """'1 area', '3 areas'."""
    return f"{figure(count)} {one if count == 1 else many or one + 's'}"


def figure(value: float) -> str:
    """A number without needless decimals."""
    return f"{round(value, 2):g}"


def joined(parts: list[str]) -> str:
    """'a', 'a and b', 'a, b and c'."""
    return parts[0] if len(parts) == 1 else f"{', '.join(parts[:-1])} and {parts[-1]}" if parts else ""


def size_words(practice: Practice, across_m: float, up_m: float) -> str:
    """'16 x 16 yd', in the unit the practice is written in."""
    field = practice.ground[0]
    unit = field.unit if field.unit in ("yd", "m", "paces") else "yd"
    if field.kind == "circle":
        return f"{figure(across_m / UNITS_M[unit])} {unit} across"
    return f"{figure(across_m / UNITS_M[unit])} × {figure(up_m / UNITS_M[unit])} {unit}"


def counts_words(copy: Copy) -> str:
    """'4 amber inside, 3 blue inside, 3 amber edge and 3 blue edge'."""
    return joined(group_counts(copy))


def group_counts(copy: Copy) -> list[str]:
    """Each group that somebody is in with its number: '4 amber inside', '6 pairs'."""
    setup = copy.setup
    return [counted(group, setup.count(group.key)) for group in setup.practice.groups if setup.count(group.key)]


def copies_words(part: FittedPart) -> str:
    """'one area of 16 × 16 yd with 4 amber inside and …', copies that are alike taken together."""
    field = part.copies[0].setup.field
    size = size_words(part.copies[0].setup.practice, field.across_m, field.up_m)
    alike: dict[tuple[str, int], int] = {}
    for copy in part.copies:
        key = (counts_words(copy), copy.waiting)
        alike[key] = alike.get(key, 0) + 1
    total = len(part.copies)
    head = f"{number_word(total)} area{'s' if total > 1 else ''} of {size}"
    if len(alike) == 1:
        (words, waiting), _ = next(iter(alike.items()))
        return f"{head}{', each' if total > 1 else ''} with {words}{_waiting(waiting)}"
    return f"{head}: " + "; ".join(
        f"{number_word(count)} with {words}{_waiting(waiting)}" for (words, waiting), count in alike.items()
    )


def _waiting(count: int) -> str:
    return f", {number_word(count)} waiting a turn" if count else ""


def blocks_words(part: FittedPart) -> str:
    """'18 min: 4 blocks of 3 min, 1 min between'."""
    lengths = [figure(minutes) for minutes in part.blocks]
    if len(lengths) == 1:
        return f"{figure(part.minutes)} min in one block"
    same = len(set(lengths)) == 1
    blocks = f"{len(lengths)} blocks of {lengths[0]} min" if same else f"blocks of {joined(lengths)} min"
    return f"{figure(part.minutes)} min: {blocks}, {figure(part.rest_min)} min between"
