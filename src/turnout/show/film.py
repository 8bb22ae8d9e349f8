"""A passage as stills side by side, each with its sentences: for paper, for explaining and for checking by eye."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import dist

from turnout.play.recording import Recording
from turnout.practice.setup import Setup
from turnout.show import strokes, symbols
from turnout.show.captions import Caption
from turnout.show.drawing import Drawing, Line, LineKind, Point
from turnout.show.evening import PartView
from turnout.show.ink import INK, RULE
from turnout.show.key import Sign, key_block
from turnout.show.replay import Stage, air_px, stage_for
from turnout.show.settle import GAP_PX, apart, text_width
from turnout.show.svg import element, ground_body
from turnout.show.words import listed

STILL_PX, STILL_HIGH_PX, GUTTER_PX = 230.0, 260.0, 16.0
WORDS, LEADING, NUMBER_PX = 13.0, 17.0, 16.0
MOST = 6
NUMBERED_PX = 8.4  # the least radius that carries a number: the sentences call players by it
BALL_PX = 4.2
TRAIL_M = 1.0  # who has moved less than this since the still before is drawn without a trail


@dataclass(frozen=True)
class Moment:
    """One still: when, what is said under it, the ball's lines in metres, and since when movement is drawn."""

    at_s: float
    text: str = ""
    lines: tuple[tuple[LineKind, Point, Point], ...] = ()
    since_s: float | None = None


def film_strip(
    recording: Recording,
    setup: Setup,
    view_part: PartView,
    captions: Sequence[Caption],
    *,
    stills: int = 5,
    first: int = 0,
) -> str:
    """Up to six stills from one caption on (`first`, from 0), with the pass each sentence tells, as one SVG."""
    told = list(captions)[first : first + min(stills, MOST)]
    stage = stage_for(recording, setup, view_part, width_px=STILL_PX, high_px=STILL_HIGH_PX, plain=True)
    moments = [_of_caption(caption) for caption in told]
    return _strip(stage, moments, across=max(1, len(told)), name=view_part.name)


def even_strip(
    recording: Recording,
    setup: Setup,
    view_part: PartView,
    captions: Sequence[Caption],
    *,
    times: Sequence[float],
    since_s: float | None = None,
    across: int = 3,
    still_px: tuple[float, float] = (300.0, 330.0),
    blind: bool = False,
) -> str:
    """Stills at these moments (s), `across` in a row, with what happened since the one before, as one SVG.

    since_s: from when the first still draws movement. blind: the stills alone: no sentences, no name of the practice,
    no rules in the key.
    """
    stage = stage_for(recording, setup, view_part, width_px=still_px[0], high_px=still_px[1], plain=True)
    moments = [_since(stage, captions, start, at) for start, at in zip((since_s, *times), times, strict=False)]
    if blind:
        moments = [replace(moment, text="") for moment in moments]
        stage = replace(stage, drawing=replace(stage.drawing, limits=()))
    return _strip(stage, moments, across=across, name="" if blind else view_part.name)


def _of_caption(caption: Caption) -> Moment:
    """The ground with everybody where the sentence ends: for a pass, as it arrives."""
    lines = (_kicked(caption, *caption.line),) if caption.line else ()
    return Moment(caption.line_to_s if caption.line else caption.t_s, caption.text, lines)


def _kicked(caption: Caption, start: Point, end: Point) -> tuple[LineKind, Point, Point]:
    return "shot" if caption.kind == "shot" else "ball", start, end


def _since(stage: Stage, captions: Sequence[Caption], start: float | None, at: float) -> Moment:
    """What was told after one moment, up to another, with the balls on their way; with nothing told, who has it."""
    said = [] if start is None else [c.text for c in captions if start < c.t_s <= at]
    rolling = [c for c in captions if c.line and c.t_s <= at and c.line_to_s > (at if start is None else start)]
    lines = tuple(_kicked(c, *c.line) for c in rolling if c.line)
    return Moment(at, " ".join(said or [_holding(stage, at)]), lines, start)


def _holding(stage: Stage, at: float) -> str:
    holders = [holder for holder in stage.recording.holders[_frame(stage, at)].tolist() if holder >= 0]
    if not holders:
        return "The ball is on its way."
    labels = [stage.cast.label(holder, at) for holder in holders]
    return f"{labels[0]} has the ball." if len(labels) == 1 else f"{listed(labels)} have a ball each."


def _strip(stage: Stage, moments: Sequence[Moment], *, across: int, name: str) -> str:
    """Stills in rows with their sentences and one key, as one SVG; without a name, without words."""
    step = stage.width + GUTTER_PX
    parts, top = [], 0.0
    for first in range(0, len(moments), across):
        row = moments[first : first + across]
        drawn, high = _row(stage, row, first, step)
        parts.append(f'<g transform="translate(0 {top:.1f})">{drawn}</g>' if top else drawn)
        top += high
    width = max(1, min(across, len(moments))) * step
    legend, legend_px = key_block(_keyed(stage, moments), width, top=top, more=_trail_sign(moments))
    count = "moment" if len(moments) == 1 else "moments"
    title = f"{len(moments)} {count} of simulated play"
    said = " ".join(moment.text for moment in moments if moment.text)
    titled = replace(stage.drawing, title=f"{name}: {title}" if name else title, desc=said if name else "")
    return element(titled, "".join(parts) + legend, width, top + legend_px)


def _row(stage: Stage, moments: Sequence[Moment], first: int, step: float) -> tuple[str, float]:
    lines = [_wrapped(moment.text, stage.width - NUMBER_PX) for moment in moments]
    lefts = [n * step + GUTTER_PX / 2 for n in range(len(moments))]
    stills = [_still(stage, moment, n, lefts[n]) for n, moment in enumerate(moments)]
    words = [_words(rows, first + n + 1, lefts[n], stage.height + 22) for n, rows in enumerate(lines) if rows != [""]]
    return "".join((*stills, *words)), stage.height + 18 + LEADING * max(len(rows) for rows in lines) + 8


def _still(stage: Stage, moment: Moment, number: int, left: float) -> str:
    frame = _frame(stage, moment.at_s)
    body = ground_body(stage.frame, names=False, measures=False)
    if moment.since_s is not None:
        body += _trails(stage, _frame(stage, moment.since_s), frame)
    for kind, start, end in moment.lines:
        a, b = stage.frame.at(*start), stage.frame.at(*end)
        body += strokes.line(kind, *strokes.shortened(a, b, 0.0, stage.radius + 2))
    rule = "" if number == 0 else f'<path d="M{left - GUTTER_PX / 2:.1f} 6V{stage.height:.1f}" stroke="{RULE}"/>'
    return f'{rule}<g transform="translate({left:.1f} 0)">{body}{_people(stage, frame)}</g>'


def _frame(stage: Stage, at_s: float) -> int:
    return int(abs(stage.recording.t_s - at_s).argmin())


def _trails(stage: Stage, before: int, now: int) -> str:
    """Where everybody who has moved came from: an open disc and a dashed line."""
    recording, drawn = stage.recording, []
    ways = zip(recording.players_m[before].tolist(), recording.players_m[now].tolist(), strict=True)
    for old, new in ways:
        if dist(old, new) >= TRAIL_M:
            a, b = stage.frame.at(*old), stage.frame.at(*new)
            drawn.append(strokes.line("run", a, strokes.shortened(a, b, 0.0, stage.radius)[1], faint=True))
            drawn.append(symbols.old_place(*a))
    return "".join(drawn)


def _people(stage: Stage, frame: int) -> str:
    recording, radius = stage.recording, max(NUMBERED_PX, stage.radius)
    points = [stage.frame.at(*point) for point in recording.players_m[frame].tolist()]
    count = len(points)
    spots = apart(points, [radius] * count, [False] * count, gap=GAP_PX / 2)
    tied = (strokes.shortened(spots[a], spots[b], radius, radius) for a, b in stage.links)
    drawn = [symbols.link(*line) for line in tied]
    drawn += [_person(stage, frame, player, spot, radius) for player, spot in enumerate(spots)]
    for x_m, y_m, high_m in recording.balls_m[frame].tolist():
        spot = _clear_of(spots, stage.frame.at(x_m, y_m), radius + BALL_PX)
        drawn.append(symbols.ball_in_air(*spot, air_px(high_m)) if air_px(high_m) else "")
        drawn.append(symbols.ball(*spot, BALL_PX))
    return "".join(drawn)


def _person(stage: Stage, frame: int, player: int, spot: Point, radius: float) -> str:
    role = int(stage.recording.role[frame, player])
    keeper = stage.cast.groups[role].keeper
    return symbols.player(*spot, radius, stage.cast.side_of(role), stage.cast.numbers[player], keeper=keeper)


def _clear_of(spots: Sequence[Point], ball: Point, reach: float) -> Point:
    """The ball at the feet of whoever's mark would cover it: outside the mark, on its own side of it."""
    near = min(spots, key=lambda spot: dist(spot, ball))
    far = dist(near, ball)
    if far >= reach:
        return ball
    ux, uy = ((ball[0] - near[0]) / far, (ball[1] - near[1]) / far) if far > 0.1 else (0.0, 1.0)
    return near[0] + ux * reach, near[1] + uy * reach


def _wrapped(text: str, width: float) -> list[str]:
    rows: list[str] = [""]
    for word in text.split():
        longer = f"{rows[-1]} {word}".strip()
        if rows[-1] and text_width(longer, WORDS) > width - 6:
            rows.append(word)
        else:
            rows[-1] = longer
    return rows


def _words(rows: Sequence[str], number: int, left: float, top: float) -> str:
    lines = (
        symbols.text(left + NUMBER_PX, top + n * LEADING, row, WORDS, fill=INK, anchor="start")
        for n, row in enumerate(rows)
    )
    return symbols.text(left + 2, top, str(number), WORDS, anchor="start", bold=True) + "".join(lines)


def _keyed(stage: Stage, moments: Sequence[Moment]) -> Drawing:
    kinds = dict.fromkeys(kind for moment in moments for kind, _, _ in moment.lines)
    lines = tuple(Line(kind, (0.0, 0.0), (1.0, 0.0)) for kind in kinds)
    return replace(stage.drawing, lines=lines, numbered=False, sides=stage.sides)


def _trail_sign(moments: Sequence[Moment]) -> tuple[Sign, ...]:
    if all(moment.since_s is None for moment in moments):
        return ()

    def was(x: float, y: float) -> str:
        return strokes.line("run", (x + 4, y), (x + 44, y), faint=True) + symbols.old_place(x + 4, y)

    return ((44.0, was, "since the still before"),)
