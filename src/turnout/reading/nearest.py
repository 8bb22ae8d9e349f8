"""The nearest spelling: how a mistyped word is answered."""

from collections.abc import Iterable


def distance(one: str, other: str) -> int:
    """Letters to add, drop, change or swap with the neighbour to turn `one` into `other`
    (optimal string alignment distance)."""
    before: list[int] = []
    last = list(range(len(other) + 1))
    for i, a in enumerate(one, 1):
        row = [i]
        for j, b in enumerate(other, 1):
            cost = min(last[j] + 1, row[j - 1] + 1, last[j - 1] + (a != b))
            if i > 1 and j > 1 and a == other[j - 2] and one[i - 2] == b:
                cost = min(cost, before[j - 2] + 1)
            row.append(cost)
        before, last = last, row
    return last[-1]


def nearest(word: str, words: Iterable[str]) -> str | None:
    """The one of `words` closest to `word`, or None when all are too far: 1 letter for short words, 2 from 5 on."""
    if len(word) > 40:
        return None
    allowed = 1 if len(word) < 5 else 2
    near = (
        (distance(word.casefold(), other.casefold()), other)
        for other in words
        if abs(len(other) - len(word)) <= allowed
    )
    best = min(near, default=(99, ""))
    return best[1] if best[0] <= allowed else None
