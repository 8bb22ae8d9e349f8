"""Marks as SVG, drawn outright: no ids, no styles, so that any number of drawings stand on one page."""

from math import hypot, sqrt

from turnout.show.drawing import Mark
from turnout.show.ink import INK, INK_2, INK_3, SANS, SHEET, Side, on

NO_NET_PX = 16.0  # a goal drawn narrower than this is its frame alone
THREAD_PX = 9.0  # threads of a net stand about this far apart
KEEPER_PX, KEEPER_RIM_PX = 3.0, 1.3  # the ring round a keeper: off the mark, and its weight
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


def player(x: float, y: float, radius: float, side: Side, number: int | None, *, keeper: bool = False) -> str:
    """A player: fill, letter and number of the side; a keeper with a second ring round it."""
    inner = {"solid": _solid, "ring": _ring, "half": _half, "hatched": _hatched, "open": _open}[side.fill]
    mark = inner(x, y, radius, side, f"{number}" if number and radius >= LETTER_ONLY_PX else "")
    return (_disc(x, y, radius + KEEPER_PX, SHEET, KEEPER_RIM_PX) if keeper else "") + mark


def _open(x: float, y: float, radius: float, side: Side, number: str) -> str:
    """Who waits: one open disc of a string of them, without a letter, for they belong to no side yet."""
    return _disc(x, y, radius, SHEET, 1.1, INK_2)


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


def ball_in_air(x: float, y: float, radius: float, *, name: str = "") -> str:
    """The ring round a ball in the air; none with radius 0. name: an id, for a script that lets it grow."""
    ident = f' id="{name}"' if name else ""
    size = f'cx="{x:.1f}" cy="{y:.1f}" r="{radius:.1f}"'
    return f'<circle{ident} {size} fill="none" stroke="{INK}" stroke-width="1" stroke-dasharray="2 2"/>'


def cone(x: float, y: float, size: float, *, filled: bool) -> str:
    """A cone: an open triangle at a corner of the field, filled at a zone or on a line."""
    wide, low = size * 1.05, y + size * 0.86
    points = f"{x:.1f},{y - size:.1f} {x + wide:.1f},{low:.1f} {x - wide:.1f},{low:.1f}"
    fill = INK if filled else SHEET
    return f'<polygon points="{points}" fill="{fill}" stroke="{INK}" stroke-width="1.4" stroke-linejoin="round"/>'


def goal(a: tuple[float, float], b: tuple[float, float], back: tuple[float, float]) -> str:
    """A goal: a bracket behind its line, from post to post round the net, and a few threads of the net in it."""
    (ax, ay), (bx, by), (dx, dy) = a, b, back
    frame = f"M{ax:.1f} {ay:.1f}L{ax + dx:.1f} {ay + dy:.1f}L{bx + dx:.1f} {by + dy:.1f}L{bx:.1f} {by:.1f}"
    wide = hypot(bx - ax, by - ay)
    small = wide < NO_NET_PX
    threads = 1 if small else max(2, round(wide / THREAD_PX))
    shares = [step / threads for step in range(1, threads)]
    net = "".join(f"M{ax + (bx - ax) * s:.1f} {ay + (by - ay) * s:.1f}l{dx:.1f} {dy:.1f}" for s in shares)
    net += "" if small else f"M{ax + dx * 0.5:.1f} {ay + dy * 0.5:.1f}L{bx + dx * 0.5:.1f} {by + dy * 0.5:.1f}"
    posts = "".join(_disc(x, y, 1.4 if small else 2.1, INK, 0.0) for x, y in (a, b))
    thin = f'<path d="{net}" stroke="{INK_3}" stroke-width="0.7" fill="none"/>' if net else ""
    paint = f'stroke="{INK}" stroke-width="{1.4 if small else 2}" fill="none" stroke-linejoin="round"'
    return f'{thin}<path d="{frame}" {paint}/>{posts}'


def gate(a: tuple[float, float], b: tuple[float, float]) -> str:
    """The line of a gate between its two cones."""
    path = f"M{a[0]:.1f} {a[1]:.1f}L{b[0]:.1f} {b[1]:.1f}"
    return f'<path d="{path}" stroke="{INK_2}" stroke-width="1.2" stroke-dasharray="3 2.6" fill="none"/>'


def link(a: tuple[float, float], b: tuple[float, float]) -> str:
    """The thin line between two players of one pair."""
    return f'<path d="M{a[0]:.1f} {a[1]:.1f}L{b[0]:.1f} {b[1]:.1f}" stroke="{INK_3}" stroke-width="1" fill="none"/>'


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
    if mark.kind in ("corner cone", "line cone", "zone cone", "gate cone"):
        return cone(x, y, size, filled=mark.kind != "corner cone")
    if mark.kind in ("ball heap", "bib heap"):
        return heap(x, y, size, balls=mark.kind == "ball heap")
    if mark.kind == "coach":
        return coach(x, y, size * 1.3)
    return ball(x, y, size * 0.9) if mark.kind == "ball" else old_place(x, y)
