"""The key that stands under every drawing: what each fill, sign and line means."""

from collections.abc import Callable, Sequence
from dataclasses import replace

from turnout.show import strokes, symbols
from turnout.show.drawing import BarKind, Drawing, LineKind, Mark, MarkKind
from turnout.show.ink import INK_2, RULE, Side
from turnout.show.settle import text_width

ROW_PX, GAP_PX, SIZE = 20.0, 13.0, 12.5
Draw = Callable[[float, float], str]
Sign = tuple[float, Draw, str]  # width, draw(x, y), words
THINGS: dict[MarkKind, str] = {
    "corner cone": "corner cone",
    "line cone": "cone on a line",
    "zone cone": "zone cone",
    "ball heap": "spare balls",
    "bib heap": "spare bibs",
    "coach": "coach",
}
LINES: dict[LineKind, str] = {"ball": "pass", "run": "run", "dribble": "dribble", "shot": "shot"}


def key_block(drawing: Drawing, width_px: float, *, top: float, more: Sequence[Sign] = ()) -> tuple[str, float]:
    """The key flowed into rows under a hairline, and the height it takes, pixels."""
    rows: list[list[tuple[float, Sign]]] = [[]]
    x = 0.0
    for sign in (*signs(drawing), *more):
        wide = sign[0] + 6 + text_width(sign[2], SIZE)
        if rows[-1] and x + wide > width_px - 8:
            rows.append([])
            x = 0.0
        rows[-1].append((x, sign))
        x += wide + GAP_PX
    height = ROW_PX * len(rows) + 14
    rule = f'<path d="M4 {top + 4:.1f}H{width_px - 4:.1f}" stroke="{RULE}" stroke-width="1"/>'
    drawn = [_row(row, width_px, top + 10 + ROW_PX * (n + 0.5)) for n, row in enumerate(rows)]
    return rule + "".join(drawn), height


def signs(drawing: Drawing) -> list[Sign]:
    """What the key of this drawing must explain, in reading order."""
    kinds = {mark.kind for mark in drawing.marks}
    lines = {line.kind for line in drawing.lines}
    found: list[Sign] = [(18.0, _side(side), side.key) for side in drawing.sides]
    if any(mark.keeper for mark in drawing.marks):
        found.append((24.0, _keeper(drawing), "keeper"))
    if drawing.links:
        found.append((34.0, _pair(drawing), f"a {drawing.linked}" if drawing.linked else "together"))
    found += [(36.0, _line(kind), word) for kind, word in LINES.items() if kind in lines]
    if drawing.numbered:
        found.append((16.0, lambda x, y: symbols.order_disc(x + 8, y, 1, 7.0), "number of its sentence"))
    found += [
        (15.0, _limit(touches), f"{'touch' if touches == 1 else 'touches'}, {who}") for touches, who in drawing.limits
    ]
    if "ball" in kinds:
        found.append((12.0, lambda x, y: symbols.ball(x + 6, y), "ball at the start" if drawing.numbered else "ball"))
    bars = {bar.kind for bar in drawing.bars}
    found += [(30.0, draw, kind) for kind, draw in BARS.items() if kind in bars]
    plain = {"corner cone": "cone"} if not kinds & {"line cone", "zone cone"} else {}
    found += [(13.0, _thing(kind), plain.get(kind, word)) for kind, word in THINGS.items() if kind in kinds]
    return found


def _keeper(drawing: Drawing) -> Draw:
    side = next(mark.side for mark in drawing.marks if mark.keeper and mark.side)
    return lambda x, y: symbols.player(x + 11, y, 7.0, side, None, keeper=True)


def _pair(drawing: Drawing) -> Draw:
    side = drawing.marks[drawing.links[0][0]].side

    def draw(x: float, y: float) -> str:
        both = "".join(symbols.player(at, y, 6.0, side, None) for at in (x + 7, x + 27)) if side else ""
        return symbols.link((x + 13, y), (x + 21, y)) + both

    return draw


def _goal(high: float) -> Draw:
    return lambda x, y: symbols.goal((x + 3, y + high / 2), (x + 27, y + high / 2), (0.0, -high))


def _small_goal(x: float, y: float) -> str:
    return symbols.goal((x + 6, y + 3.5), (x + 24, y + 3.5), (0.0, -7.0))


def _gate(x: float, y: float) -> str:
    cones = symbols.cone(x + 4, y, 4.2, filled=True) + symbols.cone(x + 26, y, 4.2, filled=True)
    return symbols.gate((x + 9, y), (x + 21, y)) + cones


BARS: dict[BarKind, Draw] = {"goal": _goal(10.0), "small goal": _small_goal, "gate": _gate}


def _side(side: Side) -> Draw:
    if side.fill == "open":
        return lambda x, y: "".join(symbols.player(x + at, y, 3.2, side, None) for at in (2, 9, 16))
    return lambda x, y: symbols.player(x + 9, y, 8.6, side, None)


def _limit(touches: int) -> Draw:
    return lambda x, y: symbols.limit(x + 7, y, touches)


def _line(kind: LineKind) -> Draw:
    return lambda x, y: strokes.line(kind, (x, y), (x + 36, y))


def _thing(kind: MarkKind) -> Draw:
    return lambda x, y: symbols.thing(Mark(kind, 0, 0), x + 6.5, y, 5.0)


def _row(row: list[tuple[float, Sign]], width_px: float, y: float) -> str:
    last_x, last = row[-1]
    spare = width_px - last_x - last[0] - 6 - text_width(last[2], SIZE)
    start = max(4.0, spare / 2)
    parts = []
    for x, (wide, draw, words) in row:
        parts.append(draw(start + x, y))
        parts.append(symbols.text(start + x + wide + 6, y + SIZE * 0.34, words, SIZE, fill=INK_2, anchor="start"))
    return "".join(parts)


def key_svg(drawings: Sequence[Drawing], width_px: float) -> str:
    """One key for several drawings of a page: every sign any of them shows, once."""
    drawings = sorted(drawings, key=lambda drawing: not drawing.links)  # links count marks: their drawing comes first
    marks = tuple(mark for drawing in drawings for mark in drawing.marks)
    lines = tuple(line for drawing in drawings for line in drawing.lines)
    shown = {(side.letter, side.ink, side.key): side for drawing in drawings for side in drawing.sides}
    sides = tuple(sorted(shown.values(), key=lambda side: side.letter))
    bars = tuple(bar for drawing in drawings for bar in drawing.bars)
    every = replace(drawings[0], marks=marks, lines=lines, sides=sides, numbered=False, bars=bars)
    body, height = key_block(every, width_px, top=0.0)
    return _svg(width_px, height, body)


def side_sign(side: Side) -> str:
    """A side's sign alone, for the head of a column or a line of text."""
    return _svg(20.0, 20.0, symbols.player(10.0, 10.0, 9.0, side, None))


def _svg(width: float, height: float, body: str) -> str:
    size = f'width="{width:.0f}" height="{height:.0f}" viewBox="0 0 {width:.0f} {height:.0f}"'
    return f'<svg xmlns="http://www.w3.org/2000/svg" aria-hidden="true" {size}>{body}</svg>'
