"""Marks as SVG, drawn outright: no ids, no styles, so that any number of drawings stand on one page."""

from math import sqrt

from turnout.show.drawing import Mark
from turnout.show.ink import INK, INK_3, SANS, SHEET, Side, on

LETTER_ONLY_PX = 8.0  # below this radius a mark carries its letter without the number


def text(
    x: float, y: float, words: str, size: float, *, fill: str = INK, anchor: str = "middle", bold: bool = False,
    halo: bool = False, turn: float | None = None,
) -> str:  # fmt: skip
    """A line of text with its baseline at y. halo: a white rim that keeps it clear of lines under it."""
    extra = ' font-weight="700"' if bold else ""
    extra += f' paint-order="stroke" stroke="{SHEET}" stroke-width="4" stroke-linejoin="round"' if halo else ""
    extra += f' transform="rotate({turn:g} {x:.1f} {y:.1f})"' if turn is not None else ""
    place = f'x="{x:.1f}" y="{y:.1f}" font-size="{size:.1f}" text-anchor="{anchor}"'
    return f'<text {place} font-family="{SANS}" fill="{fill}"{extra}>{escape(words)}</text>'


def escape(words: str) -> str:
    """Text safe inside SVG and HTML."""
    return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace('"', "&quot;")


def player(x: float, y: float, radius: float, side: Side, number: int | None) -> str:
    """A player: fill, letter and number of the side."""
    inner = {"solid": _solid, "ring": _ring, "half": _half, "hatched": _hatched}[side.fill]
    return inner(x, y, radius, side, f"{number}" if number and radius >= LETTER_ONLY_PX else "")


def _disc(x: float, y: float, radius: float, fill: str, weight: float, ink: str = INK) -> str:
    return (
        f'<circle cx="{x:.1f}" cy="{y:.1f}" r="{radius:.2f}" fill="{fill}" stroke="{ink}" stroke-width="{weight:.2f}"/>'
    )


def _weight(radius: float) -> float:
    return 1.0 + radius * 0.035


def _name(x: float, y: float, size: float, words: str, fill: str) -> str:
    return text(x, y + size * 0.34, words, size, fill=fill, bold=True)


def _size(radius: float, words: str) -> float:
    return radius * {1: 1.2, 2: 0.94}.get(len(words), 0.74)


def _solid(x: float, y: float, radius: float, side: Side, number: str) -> str:
    words = side.letter + number
    return _disc(x, y, radius, side.ink, _weight(radius)) + _name(x, y, _size(radius, words), words, on(side.ink))


def _ring(x: float, y: float, radius: float, side: Side, number: str) -> str:
    words = side.letter + number
    inner = radius * 0.7
    discs = _disc(x, y, radius, side.ink, _weight(radius)) + _disc(x, y, inner, SHEET, _weight(radius) * 0.7)
    return discs + _name(x, y, _size(radius, words) * (0.86 if len(words) > 1 else 0.9), words, INK)


def _half(x: float, y: float, radius: float, side: Side, number: str) -> str:
    cut = 0.0 if number else -radius * 0.28
    reach = sqrt(radius**2 - cut**2)
    dark = (
        f'<path d="M{x + cut:.2f} {y - reach:.2f}A{radius:.2f} {radius:.2f} 0 0 0 {x + cut:.2f} {y + reach:.2f}Z" '
        f'fill="{side.ink}" stroke="{INK}" stroke-width="0.8"/>'
    )
    body = _disc(x, y, radius, SHEET, 0.0) + dark + _disc(x, y, radius, "none", _weight(radius))
    if not number:
        return body + _name(x + radius * 0.34, y, radius * 0.98, side.letter, INK)
    size = radius * (0.9 if len(number) == 1 else 0.74)
    letter = text(x - radius * 0.1, y + size * 0.34, side.letter, size, fill=on(side.ink), anchor="end", bold=True)
    return body + letter + text(x + radius * 0.14, y + size * 0.34, number, size, anchor="start", bold=True)


def _hatched(x: float, y: float, radius: float, side: Side, number: str) -> str:
    gap = max(3.2, radius * 0.42)
    steps = int(radius * 2 / gap)
    strokes = []
    for step in range(1, steps + 1):
        off = -radius + step * gap
        half = sqrt(max(0.0, radius**2 - off**2))
        a, b = _diagonal(x, y, off, -half), _diagonal(x, y, off, half)
        strokes.append(f"M{a[0]:.1f} {a[1]:.1f}L{b[0]:.1f} {b[1]:.1f}")
    lines = f'<path d="{"".join(strokes)}" stroke="{side.ink}" stroke-width="{gap * 0.42:.2f}" fill="none"/>'
    words = side.letter + number
    size = _size(radius, words)
    plate = f'<circle cx="{x:.1f}" cy="{y:.1f}" r="{radius * 0.56:.2f}" fill="{SHEET}"/>'
    rim = _disc(x, y, radius, "none", _weight(radius))
    return _disc(x, y, radius, SHEET, 0.0) + lines + plate + rim + _name(x, y, size * 0.86, words, INK)


def _diagonal(x: float, y: float, off: float, along: float) -> tuple[float, float]:
    turned = sqrt(0.5)
    return x + (along - off) * turned, y - (along + off) * turned


def ball(x: float, y: float, radius: float = 4.6) -> str:
    """The ball: a white disc with a dot."""
    dot = f'<circle cx="{x:.1f}" cy="{y:.1f}" r="{radius * 0.34:.2f}" fill="{INK}"/>'
    return _disc(x, y, radius, SHEET, radius * 0.34) + dot


def cone(x: float, y: float, size: float, *, filled: bool) -> str:
    """A cone: an open triangle at a corner of the field, filled at a zone or on a line."""
    wide, low = size * 1.05, y + size * 0.86
    points = f"{x:.1f},{y - size:.1f} {x + wide:.1f},{low:.1f} {x - wide:.1f},{low:.1f}"
    fill = INK if filled else SHEET
    return f'<polygon points="{points}" fill="{fill}" stroke="{INK}" stroke-width="1.4" stroke-linejoin="round"/>'


def coach(x: float, y: float, size: float) -> str:
    """The coach: a square with a cap and a C."""
    box = f'<rect x="{x - size:.1f}" y="{y - size:.1f}" width="{2 * size:.1f}" height="{2 * size:.1f}" fill="{SHEET}"'
    cap = (
        f'<rect x="{x - size:.1f}" y="{y - size:.1f}" width="{2 * size:.1f}" height="{size * 0.42:.1f}" fill="{INK}"/>'
    )
    letter = text(x, y + size * 0.78, "C", size * 1.25, bold=True)
    return f'{box} stroke="{INK}" stroke-width="1.5"/>{cap}{letter}'


def heap(x: float, y: float, size: float, *, balls: bool) -> str:
    """A heap of spare balls (three discs) or of bibs (a folded square)."""
    if balls:
        spots = ((-size * 0.6, size * 0.4), (size * 0.6, size * 0.4), (0.0, -size * 0.55))
        return "".join(ball(x + dx, y + dy, size * 0.55) for dx, dy in spots)
    side = size * 1.5
    box = f'<rect x="{x - side / 2:.1f}" y="{y - side / 2:.1f}" width="{side:.1f}" height="{side:.1f}" fill="{SHEET}"'
    fold = f'<path d="M{x - side / 2:.1f} {y:.1f}h{side:.1f}" stroke="{INK}" stroke-width="1.2"/>'
    return f'{box} stroke="{INK}" stroke-width="1.3"/>{fold}'


def order_disc(x: float, y: float, number: int, radius: float) -> str:
    """The number of the sentence a line belongs to."""
    size = radius * (1.4 if number < 10 else 1.15)
    return _disc(x, y, radius, SHEET, 1.2) + text(x, y + size * 0.35, str(number), size, bold=True)


def limit(x: float, y: float, touches: int) -> str:
    """How many touches a sentence leaves: the number in an open square, unlike the discs of players and sentences."""
    square = f'<rect x="{x - 6.5:.1f}" y="{y - 6.5:.1f}" width="13" height="13" fill="{SHEET}" stroke="{INK}"/>'
    return square + text(x, y + 3.6, str(touches), 10.0, bold=True)


def old_place(x: float, y: float) -> str:
    """Where somebody was: a small open disc."""
    return _disc(x, y, 3.6, SHEET, 1.1, INK_3)


def thing(mark: Mark, x: float, y: float, size: float) -> str:
    """Anything on the ground but players and the ball in play."""
    if mark.kind in ("corner cone", "line cone", "zone cone"):
        return cone(x, y, size, filled=mark.kind != "corner cone")
    if mark.kind in ("ball heap", "bib heap"):
        return heap(x, y, size, balls=mark.kind == "ball heap")
    if mark.kind == "coach":
        return coach(x, y, size * 1.3)
    return ball(x, y, size * 0.9) if mark.kind == "ball" else old_place(x, y)
