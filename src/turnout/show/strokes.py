"""The four kinds of line. Ball: solid, filled head. Run: dashed, open head. Dribble: wavy. Shot: double weight."""

from math import hypot, pi, sin

from turnout.show.drawing import LineKind, Point
from turnout.show.ink import INK

WEIGHT = {"ball": 2.0, "run": 1.6, "dribble": 1.8, "shot": 4.0}
HEAD_PX = 9.0


def line(kind: LineKind, a: Point, b: Point, *, faint: bool = False, ink: str = INK) -> str:
    """One line from a to b, pixels, with its head at b; nothing when they touch."""
    length = hypot(b[0] - a[0], b[1] - a[1])
    if length < 6:
        return ""
    weight = WEIGHT[kind] * (0.6 if faint else 1.0)
    shaft = shortened(a, b, 0.0, HEAD_PX * 0.6 if kind != "run" else 1.0)
    dash = ' stroke-dasharray="6 4.5"' if kind == "run" else ""
    path = _wave(*shaft) if kind == "dribble" else f"M{_at(shaft[0])}L{_at(shaft[1])}"
    paint = f'fill="none" stroke="{ink}" stroke-width="{weight:.2f}"{dash}{_faint(faint)}'
    return f'<path d="{path}" {paint}/>' + head(kind, a, b, weight, ink=ink, faint=faint)


def head(kind: LineKind, a: Point, b: Point, weight: float, *, ink: str = INK, faint: bool = False) -> str:
    """The arrow head at b."""
    length = hypot(b[0] - a[0], b[1] - a[1]) or 1.0
    ux, uy = (b[0] - a[0]) / length, (b[1] - a[1]) / length
    size = min(HEAD_PX + weight * 0.6, length * 0.7)
    back = (b[0] - ux * size, b[1] - uy * size)
    left = (back[0] - uy * size * 0.42, back[1] + ux * size * 0.42)
    right = (back[0] + uy * size * 0.42, back[1] - ux * size * 0.42)
    if kind == "run":
        path = f"M{_at(left)}L{_at(b)}L{_at(right)}"
        return f'<path d="{path}" fill="none" stroke="{ink}" stroke-width="{max(1.2, weight):.2f}"{_faint(faint)}/>'
    return f'<path d="M{_at(left)}L{_at(b)}L{_at(right)}Z" fill="{ink}"{_faint(faint)}/>'


def shortened(a: Point, b: Point, off_a: float, off_b: float) -> tuple[Point, Point]:
    """The stretch from a to b without its first off_a and last off_b pixels."""
    length = hypot(b[0] - a[0], b[1] - a[1]) or 1.0
    ux, uy = (b[0] - a[0]) / length, (b[1] - a[1]) / length
    return (a[0] + ux * off_a, a[1] + uy * off_a), (b[0] - ux * off_b, b[1] - uy * off_b)


def _wave(a: Point, b: Point, *, high: float = 3.2, long: float = 11.0) -> str:
    length = hypot(b[0] - a[0], b[1] - a[1])
    ux, uy = (b[0] - a[0]) / length, (b[1] - a[1]) / length
    points = []
    for step in range(int(length / 1.5) + 1):
        along = min(length, step * 1.5)
        off = high * sin(2 * pi * along / long) * min(1.0, along / 6, (length - along) / 6)
        points.append((a[0] + ux * along - uy * off, a[1] + uy * along + ux * off))
    return "M" + "L".join(_at(point) for point in [*points, b])


def _at(point: Point) -> str:
    return f"{point[0]:.1f} {point[1]:.1f}"


def _faint(faint: bool) -> str:
    return ' opacity="0.55"' if faint else ""
