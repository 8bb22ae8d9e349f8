"""The hour as a proportional ledger: bars where the ball rolls, a ruler of minutes beside them."""

from collections.abc import Iterable

from markupsafe import Markup

MINUTE_PX = 17.0
WIDTH_PX, BAR_X, RULER_X = 36, 4, 35
LEAST_PX = 32.0  # a row is never lower than this


def ruler(minutes: float, *, blocks: Iterable[float] = (), rest_min: float = 0.0) -> Markup:
    """One row's piece of the hour, 17 px a minute: a bar for each block in minutes, ticks at whole minutes."""
    height = minutes * MINUTE_PX
    drawn = [*bars(blocks, rest_min), *ticks(minutes)]
    line = f'<path class="tick" d="M{RULER_X} 0V{height:.1f}M{BAR_X + 4} 0V{height:.1f}"/>'
    return Markup(
        f'<svg class="minutes" width="{WIDTH_PX}" height="{height:.0f}" viewBox="0 0 {WIDTH_PX} {height:.1f}" '
        f'aria-hidden="true">{line}{"".join(drawn)}</svg>'
    )


def bars(blocks: Iterable[float], rest_min: float) -> list[str]:
    """A bar for each block, the rests left open between them."""
    top, drawn = 0.0, []
    for block in blocks:
        drawn.append(
            f'<rect class="bar" x="{BAR_X}" y="{top * MINUTE_PX:.1f}" width="8" height="{block * MINUTE_PX:.1f}"/>'
        )
        top += block + rest_min
    return drawn


def ticks(minutes: float) -> list[str]:
    """A tick a minute, a longer one every fifth."""
    marks = range(int(minutes) + 1)
    return [
        f'<path class="tick" d="M{RULER_X} {mark * MINUTE_PX:.1f}h-{10 if mark % 5 == 0 else 5}"/>' for mark in marks
    ]


def sign(width_px: int, height_px: int, body: str) -> Markup:
    """A small sign for the key or the ruler; the words beside it say what it is."""
    size = f'width="{width_px}" height="{height_px}" viewBox="0 0 {width_px} {height_px}"'
    return Markup(f'<svg class="sign" {size} aria-hidden="true">{body}</svg>')


def break_at(*places_px: int) -> str:
    """The double break, at these places across the ruler."""
    return "".join(f'<path class="tick" d="M{x - 5} 6l5-4 5 4m-10 6l5-4 5 4"/>' for x in places_px)


STRIP = '<path class="tick" d="M4 7H56"/><path class="thick" d="M16 7H36"/><circle class="dot" cx="24" cy="7" r="3.4"/>'
SIGNS = {
    "bar": sign(8, 14, '<rect class="bar" width="8" height="14"/>'),
    "line": sign(8, 14, '<path class="tick" d="M4 0V14"/>'),
    "strip": sign(60, 14, STRIP),
    "wanted": sign(20, 14, '<path class="wanted" d="M3 13V1H17V13"/>'),
    "broken": sign(14, 14, break_at(7)),
    "foot": sign(WIDTH_PX + 5, 14, break_at(BAR_X + 4, RULER_X)),
}
