"""A drawing as SVG for one size. Redrawn, not shrunk: marks and letters keep a size that can be read."""

from zlib import crc32

from turnout.measure import YARD_M
from turnout.show import strokes, symbols
from turnout.show.drawing import Area, Bar, Drawing, Line, Mark, Measure, Point
from turnout.show.frame import Frame, frame_for, pads_px, radius_px, text_box
from turnout.show.ink import EDGE, INK, INK_2, RULE, SHEET, WASH
from turnout.show.key import key_block
from turnout.show.settle import Box, clear_share, disc_box, first_free, text_width

FEW_LINES_PX_PER_YD = 4.5  # below this scale two lines at most: arrow heads do not shrink
NUMBERS_PX_PER_YD = 6.5  # below this scale a number would cover its line
GRID_M = 5 * YARD_M
MEASURE_PX = 30.0


def svg(
    drawing: Drawing,
    *,
    px_per_yd: float | None = None,
    width_px: float | None = None,
    max_height_px: float | None = None,
    key: bool = True,
    measures: bool = True,
    names: bool = True,
) -> str:
    """The drawing as one SVG element with a title and a description.

    Give the scale (px_per_yd) or the width to fill (width_px, with max_height_px if the height is short too).
    key, measures, names: whether the key, the dimension lines and the names of places are drawn.
    """
    frame, width, height = laid_out(
        drawing,
        px_per_yd=px_per_yd,
        width_px=width_px,
        max_height_px=max_height_px,
        key=key,
        measures=measures,
        names=names,
    )
    body = ground_body(frame, names=names, measures=measures)
    legend, legend_px = key_block(drawing, width, top=height) if key else ("", 0.0)
    return element(drawing, body + legend, width, height + legend_px)


def laid_out(
    drawing: Drawing,
    *,
    px_per_yd: float | None = None,
    width_px: float | None = None,
    max_height_px: float | None = None,
    key: bool = True,
    measures: bool = True,
    names: bool = True,
) -> tuple[Frame, float, float]:
    """The frame `svg` would draw in, and the width and height of the drawing without its key, pixels."""
    margins = _margins(drawing, measures, names)
    scale = px_per_yd or _scale(drawing, margins, width_px or 420.0, max_height_px, key)
    frame = frame_for(drawing, px_per_yd=scale, margins=margins[:2])
    width, height = _size(frame, margins)
    width = max(width, width_px or 0.0)
    return _centred(frame, margins, width), width, height


def ground_body(frame: Frame, *, names: bool = True, measures: bool = True) -> str:
    """Everything of a drawing but its key, in a frame."""
    return "".join((*_ground(frame), *_things(frame, names), *(_measures(frame) if measures else ())))


def element(drawing: Drawing, body: str, width: float, height: float) -> str:
    """The drawing's SVG element with its title and description; ids come from the content."""
    ident = f"d{crc32(body.encode()):08x}"
    head = (
        f'<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="{ident}t {ident}d" '
        f'width="{width:.0f}" height="{height:.0f}" viewBox="0 0 {width:.1f} {height:.1f}">'
    )
    title = f'<title id="{ident}t">{symbols.escape(drawing.title)}</title>'
    return f'{head}{title}<desc id="{ident}d">{symbols.escape(drawing.desc)}</desc>{body}</svg>'


def _margins(drawing: Drawing, measures: bool, names: bool) -> tuple[float, float, float, float]:
    """Pixels kept left, above, right and below for measures and names."""
    sides = {measure.side for measure in drawing.measures} if measures else set()
    west, east, south = (MEASURE_PX if side in sides else 0.0 for side in ("west", "east", "south"))
    return west, 12.0 if names and drawing.field.name else 0.0, east, south


def _scale(
    drawing: Drawing, margins: tuple[float, ...], width_px: float, max_height_px: float | None, key: bool
) -> float:
    """The largest scale, px per yard, at which width (and height) hold the drawing with its margins."""
    west, south, east, north = drawing.bounds_m
    legend = key_block(drawing, width_px, top=0.0)[1] if key else 0.0
    scale = 40.0
    for _ in range(4):  # the room for marks depends on the scale, a little
        left, top, right, bottom = pads_px(drawing, radius_px(drawing, scale))
        fits = [(width_px - margins[0] - margins[2] - left - right) / (east - west)]
        if max_height_px:
            fits.append((max_height_px - legend - margins[1] - margins[3] - top - bottom) / (north - south))
        scale = max(1.5, min(fits) * YARD_M)
    return scale


def _size(frame: Frame, margins: tuple[float, ...]) -> tuple[float, float]:
    west, south, east, north = frame.drawing.bounds_m
    left, top, right, bottom = pads_px(frame.drawing, frame.radius_px)
    across = (east - west) * frame.px_per_m + margins[0] + margins[2] + left + right
    return across, (north - south) * frame.px_per_m + margins[1] + margins[3] + top + bottom


def _centred(frame: Frame, margins: tuple[float, ...], width: float) -> Frame:
    spare = width - _size(frame, margins)[0]
    return Frame(frame.drawing, frame.px_per_m, frame.left_px + spare / 2, frame.top_px, frame.radius_px)


def _ground(frame: Frame) -> list[str]:
    areas = frame.drawing.areas
    fields = [area for area in areas if area.kind == "field"]
    zones = [area for area in areas if area.kind == "zone"]
    return [
        *(_area(frame, area, "none", EDGE, ' stroke-dasharray="7 4"') for area in areas if area.kind == "space"),
        *(_area(frame, area, SHEET, INK) for area in fields),
        *(_area(frame, area, WASH, INK_2, ' stroke-dasharray="1.5 3"') for area in zones),
        *(_grid(frame, area) for area in fields),
        *(_area(frame, area, "none", INK) for area in fields),
        *(_bar(frame, bar) for bar in frame.drawing.bars),
    ]


def _bar(frame: Frame, bar: Bar) -> str:
    a, b = frame.at(*bar.start), frame.at(*bar.end)
    return symbols.gate(a, b) if bar.kind == "gate" else symbols.goal(a, b, frame.back_px(bar))


def _links(frame: Frame) -> list[str]:
    """Thin lines between the players of a pair, from rim to rim."""
    spots, off = frame.spots, frame.radius_px
    lines = [strokes.shortened(spots[a], spots[b], off, off) for a, b in frame.drawing.links]
    return [symbols.link(*line) for line in lines]


def _area(frame: Frame, area: Area, fill: str, ink: str, extra: str = "") -> str:
    paint = f'fill="{fill}" stroke="{ink}" stroke-width="1.3"{extra}'
    left, top, right, bottom = frame.box(area)
    if area.shape == "circle":
        centre = f'cx="{(left + right) / 2:.1f}" cy="{(top + bottom) / 2:.1f}"'
        return f'<circle {centre} r="{(right - left) / 2:.1f}" {paint}/>'
    return f'<rect x="{left:.1f}" y="{top:.1f}" width="{right - left:.1f}" height="{bottom - top:.1f}" {paint}/>'


def _grid(frame: Frame, area: Area) -> str:
    """Faint crosses every five yards from the south-west corner; on a circle, inside it only."""
    west, south, east, north = area.box
    crosses = []
    for x in _steps(west, east):
        for y in _steps(south, north):
            if area.shape == "circle" and (x - area.x_m) ** 2 + (y - area.y_m) ** 2 > (area.across_m / 2 - 0.5) ** 2:
                continue
            px, py = frame.at(x, y)
            crosses.append(f"M{px - 2.5:.1f} {py:.1f}h5M{px:.1f} {py - 2.5:.1f}v5")
    return f'<path d="{"".join(crosses)}" stroke="{RULE}" stroke-width="1" fill="none"/>' if crosses else ""


def _steps(low: float, high: float) -> list[float]:
    count = int((high - low - 0.3) / GRID_M)
    return [low + GRID_M * step for step in range(1, count + 1)]


def _things(frame: Frame, names: bool) -> list[str]:
    marks, spots = frame.drawing.marks, frame.spots
    lines, discs, taken = _lines(frame)
    drawn = [
        _player(frame, mark, spot)
        for mark, spot in zip(marks, spots, strict=True)
        if mark.kind == "player" and mark.side
    ]
    things = [
        symbols.thing(mark, *spot, frame.cone_px)
        for mark, spot in zip(marks, spots, strict=True)
        if mark.kind != "player"
    ]
    return [*_links(frame), *lines, *(_names(frame, taken) if names else ()), *drawn, *things, *discs]


def _player(frame: Frame, mark: Mark, spot: Point) -> str:
    radius = frame.waiting_px if mark.waits else frame.radius_px
    return symbols.player(*spot, radius, mark.side, mark.number, keeper=mark.keeper) if mark.side else ""


def _lines(frame: Frame) -> tuple[list[str], list[str], list[Box]]:
    """Line strokes, their number discs, and every box taken so far."""
    lines = frame.drawing.lines
    if frame.px_per_yd < FEW_LINES_PX_PER_YD:
        lines = lines[:2]
    taken, drawn, discs = frame.taken(), [], []
    for line in lines:
        a, b = _ends(frame, line)
        drawn.append(strokes.line(line.kind, a, b, faint=line.faint))
        radius = min(8.5, max(6.2, frame.radius_px * 0.64))
        numbered = line.number and frame.px_per_yd >= NUMBERS_PX_PER_YD
        spot = clear_share(a, b, radius, taken, (0.5, 0.42, 0.58, 0.34, 0.66, 0.26)) if numbered else None
        if spot is not None and line.number:
            discs.append(symbols.order_disc(*spot, line.number, radius))
            taken.append(disc_box(spot, radius + 1))
        taken.extend(_line_boxes(a, b))
    return drawn, discs, taken


def _line_boxes(a: Point, b: Point) -> list[Box]:
    return [disc_box((a[0] + (b[0] - a[0]) * n / 6, a[1] + (b[1] - a[1]) * n / 6), 3.0) for n in range(7)]


def _ends(frame: Frame, line: Line) -> tuple[Point, Point]:
    """Where a line starts and stops, pixels: clear of the marks it joins."""
    a, b = _end(frame, line.start), _end(frame, line.end)
    off_a = frame.radius_px + 3.5 if isinstance(line.start, int) else 0.0
    off_b = frame.radius_px + 3.5 if isinstance(line.end, int) else 0.0
    return strokes.shortened(a, b, off_a, off_b)


def _end(frame: Frame, end: int | Point) -> Point:
    return frame.spots[end] if isinstance(end, int) else frame.at(*end)


def _names(frame: Frame, taken: list[Box]) -> list[str]:
    """Names of places, each in the first free corner; a name with no free corner is left to the sentences."""
    size = 13.0 if frame.px_per_yd > 12 else 12.0 if frame.px_per_yd > 7 else 11.0
    shown = []
    for area in frame.drawing.areas:
        if not area.name:
            continue
        spots = _corners_for_name(frame, area, size)
        boxes = [text_box(x, y, area.name, size, anchor) for x, y, anchor in spots]
        free = first_free(boxes, taken)
        if free is not None:
            x, y, anchor = spots[boxes.index(free)]
            shown.append(symbols.text(x, y, area.name, size, fill=INK_2, anchor=anchor, halo=area.kind != "zone"))
            taken.append(free)
    return shown


def _corners_for_name(frame: Frame, area: Area, size: float) -> list[tuple[float, float, str]]:
    left, top, right, bottom = frame.box(area)
    middle = (left + right) / 2
    outside = [(left + 8, top - 6, "start"), (right - 8, top - 6, "end")]
    within = [
        (left + 8, top + size + 3, "start"),
        (right - 8, top + size + 3, "end"),
        (left + 8, bottom - 6, "start"),
        (right - 8, bottom - 6, "end"),
    ]
    centre = (middle, (top + bottom) / 2 + size * 0.35, "middle")
    return [*within, centre] if area.kind == "zone" else [*outside, *within]


def _measures(frame: Frame) -> list[str]:
    size = 13.0 if frame.px_per_yd > 12 else 12.0
    return [_measure(frame, measure, size) for measure in frame.drawing.measures]


def _measure(frame: Frame, measure: Measure, size: float) -> str:
    west, south, east, _ = frame.drawing.bounds_m
    left, _, right, bottom = pads_px(frame.drawing, frame.radius_px)
    if measure.side == "south":
        y = frame.at(west, south)[1] + bottom + 14
        return _across(frame.at(measure.from_m, 0)[0], frame.at(measure.to_m, 0)[0], y, measure, size)
    x = frame.at(east, 0)[0] + right + 12 if measure.side == "east" else frame.at(west, 0)[0] - left - 12
    return _upright(frame.at(0, measure.to_m)[1], frame.at(0, measure.from_m)[1], x, measure, size)


def _words(measure: Measure, length_px: float, size: float) -> str:
    return measure.text if text_width(measure.text, size) + 20 < length_px else measure.short


def _across(left: float, right: float, y: float, measure: Measure, size: float) -> str:
    words = _words(measure, right - left, size)
    half = text_width(words, size) / 2 + 5
    middle = (left + right) / 2
    path = f"M{left:.1f} {y - 5:.1f}v10M{right:.1f} {y - 5:.1f}v10M{left:.1f} {y:.1f}H{max(left, middle - half):.1f}"
    path += f"M{min(right, middle + half):.1f} {y:.1f}H{right:.1f}"
    return _dimension(path) + symbols.text(middle, y + size * 0.34, words, size, fill=INK_2)


def _upright(top: float, bottom: float, x: float, measure: Measure, size: float) -> str:
    words = _words(measure, bottom - top, size)
    half = text_width(words, size) / 2 + 5
    middle = (top + bottom) / 2
    path = f"M{x - 5:.1f} {top:.1f}h10M{x - 5:.1f} {bottom:.1f}h10"
    if half * 2 + 8 > bottom - top:  # a zone too shallow for its words along the line: words beside it
        return _dimension(path + f"M{x:.1f} {top:.1f}V{bottom:.1f}") + symbols.text(
            x - 8, middle + size * 0.34, words, size, fill=INK_2, anchor="end"
        )
    path += f"M{x:.1f} {top:.1f}V{middle - half:.1f}M{x:.1f} {middle + half:.1f}V{bottom:.1f}"
    return _dimension(path) + symbols.text(x + size * 0.34, middle, words, size, fill=INK_2, turn=-90)


def _dimension(path: str) -> str:
    return f'<path d="{path}" stroke="{INK_2}" stroke-width="1" fill="none"/>'
