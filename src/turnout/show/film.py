"""A passage as a strip of stills side by side, each with its sentence: for paper and for explaining."""

from collections.abc import Sequence
from dataclasses import replace

from turnout.play.recording import Recording
from turnout.practice.setup import Setup
from turnout.show import strokes, symbols
from turnout.show.captions import Caption
from turnout.show.drawing import Drawing, Line
from turnout.show.evening import PartView
from turnout.show.ink import INK, RULE
from turnout.show.key import key_block
from turnout.show.replay import Stage, stage_for
from turnout.show.settle import GAP_PX, apart, text_width
from turnout.show.svg import element, ground_body

STILL_PX, STILL_HIGH_PX, GUTTER_PX = 230.0, 260.0, 16.0
WORDS, LEADING, NUMBER_PX = 13.0, 17.0, 16.0
MOST = 6
NUMBERED_PX = 8.4  # the least radius that carries a number: the sentences call players by it


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
    step = stage.width + GUTTER_PX
    parts = [_still(stage, caption, n, n * step + GUTTER_PX / 2) for n, caption in enumerate(told)]
    lines = [_wrapped(caption.text, stage.width - NUMBER_PX) for n, caption in enumerate(told)]
    texts = [_words(rows, n + 1, n * step + GUTTER_PX / 2, stage.height + 22) for n, rows in enumerate(lines)]
    height = stage.height + 18 + LEADING * max((len(rows) for rows in lines), default=1) + 8
    width = max(1, len(told)) * step
    legend, legend_px = key_block(_keyed(stage, told), width, top=height)
    titled = replace(
        stage.drawing,
        title=f"{view_part.name}: {len(told)} moments of simulated play",
        desc=" ".join(caption.text for caption in told),
    )
    return element(titled, "".join((*parts, *texts)) + legend, width, height + legend_px)


def _still(stage: Stage, caption: Caption, number: int, left: float) -> str:
    """The ground with everybody where the sentence ends: for a pass, as it arrives."""
    at = caption.line_to_s if caption.line else caption.t_s
    frame = int(abs(stage.recording.t_s - at).argmin())
    body = ground_body(stage.frame, names=False, measures=False)
    if caption.line:
        a, b = (stage.frame.at(*point) for point in caption.line)
        body += strokes.line("ball", *strokes.shortened(a, b, 0.0, stage.radius + 2))
    rule = "" if number == 0 else f'<path d="M{left - GUTTER_PX / 2:.1f} 6V{stage.height:.1f}" stroke="{RULE}"/>'
    return f'{rule}<g transform="translate({left:.1f} 0)">{body}{_people(stage, frame)}</g>'


def _people(stage: Stage, frame: int) -> str:
    recording, radius = stage.recording, max(NUMBERED_PX, stage.radius)
    points = [stage.frame.at(*point) for point in recording.players_m[frame].tolist()]
    count = len(points)
    spots = apart(points, [radius] * count, [False] * count, gap=GAP_PX / 2)
    drawn = [
        symbols.player(*spot, radius, stage.cast.side_of(int(recording.role[frame, i])), stage.cast.numbers[i])
        for i, spot in enumerate(spots)
    ]
    return "".join(drawn) + symbols.ball(*stage.frame.at(*recording.ball_m[frame].tolist()), 4.2)


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


def _keyed(stage: Stage, told: Sequence[Caption]) -> Drawing:
    passes = (Line("ball", (0.0, 0.0), (1.0, 0.0)),) if any(caption.line for caption in told) else ()
    return replace(stage.drawing, lines=passes, numbered=False, sides=stage.sides)
