"""Making room in pixels: marks that would touch move apart, labels take the first free corner. Nothing overlaps."""

from collections.abc import Iterable, Sequence
from math import cos, hypot, sin

Point = tuple[float, float]
Box = tuple[float, float, float, float]  # left, top, right, bottom
ROUNDS = 120
GAP_PX = 2.0


def apart(
    points: Sequence[Point],
    radii: Sequence[float],
    fixed: Sequence[bool],
    *,
    gap: float,
    cages: Sequence[Box | None] | None = None,
) -> list[Point]:
    """Points moved as little as needed until any two lie their radii and `gap` apart, pixels.

    fixed ones stay; a point with a cage stays inside it as far as its radius lets it.
    """
    spots = list(points)
    for _ in range(ROUNDS):
        if not _push_all(spots, radii, fixed, gap):
            break
        if cages is not None:
            spots = [p if fixed[i] else _clamp(p, radii[i], cages[i]) for i, p in enumerate(spots)]
    return spots


def _push_all(spots: list[Point], radii: Sequence[float], fixed: Sequence[bool], gap: float) -> bool:
    moved = False
    for i in range(len(spots)):
        for j in range(i + 1, len(spots)):
            if fixed[i] and fixed[j]:
                continue
            push = _push(spots[i], spots[j], radii[i] + radii[j] + gap, i + j)
            if push is None:
                continue
            moved = True
            share = 1.0 if fixed[j] else 0.0 if fixed[i] else 0.5
            spots[i] = (spots[i][0] - push[0] * share, spots[i][1] - push[1] * share)
            spots[j] = (spots[j][0] + push[0] * (1 - share), spots[j][1] + push[1] * (1 - share))
    return moved


def _push(a: Point, b: Point, need: float, turn: int) -> Point | None:
    dx, dy = b[0] - a[0], b[1] - a[1]
    length = hypot(dx, dy)
    if length >= need - 0.05:
        return None
    if length < 1e-6:
        dx, dy, length = cos(turn * 2.4), sin(turn * 2.4), 1.0
        return dx * need, dy * need
    return dx / length * (need - length), dy / length * (need - length)


def _clamp(point: Point, radius: float, inside: Box | None) -> Point:
    if inside is None:
        return point
    left, top, right, bottom = inside
    return min(max(point[0], left + radius), right - radius), min(max(point[1], top + radius), bottom - radius)


def overlaps(a: Box, b: Box) -> bool:
    """Whether two boxes share any point."""
    return a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3]


def first_free(candidates: Iterable[Box], taken: Sequence[Box]) -> Box | None:
    """The first candidate box clear of everything taken; None when all are covered."""
    return next((box for box in candidates if not any(overlaps(box, other) for other in taken)), None)


def disc_box(point: Point, radius: float) -> Box:
    """The box round a disc."""
    return point[0] - radius, point[1] - radius, point[0] + radius, point[1] + radius


def along(a: Point, b: Point, share: float) -> Point:
    """The point a share of the way from a to b."""
    return a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share


def clear_share(a: Point, b: Point, radius: float, taken: Sequence[Box], shares: Sequence[float]) -> Point | None:
    """Where on a line a disc stands clear: the first share that overlaps nothing."""
    spots = (along(a, b, share) for share in shares)
    return next((s for s in spots if not any(overlaps(disc_box(s, radius), box) for box in taken)), None)


def text_width(words: str, size: float) -> float:
    """Width of a line of sans text, pixels: a little generous, because pages set it in different faces."""
    return sum(_WIDE.get(letter, 0.55) for letter in words) * size


_WIDE = {
    **dict.fromkeys("iljt.,:;|!'·’ ", 0.29),
    **dict.fromkeys("frI()-–", 0.36),
    **dict.fromkeys("mwMW", 0.86),
    **dict.fromkeys("ABCDEFGHKNOPQRSTUVXYZ&", 0.65),
}
