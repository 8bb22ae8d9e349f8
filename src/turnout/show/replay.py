"""A simulated passage as a page of its own: one drawing that moves, and the play told as one numbered paragraph."""

import json
from base64 import b64encode
from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from hashlib import sha256
from importlib.resources import files
from itertools import pairwise
from math import atan2, degrees
from typing import Any

from turnout.care import Caution
from turnout.play.recording import Recording
from turnout.practice.setup import Setup
from turnout.practice.units import units_in
from turnout.show import strokes, symbols
from turnout.show.captions import Caption, Cast, shifted
from turnout.show.drawing import Drawing, LineKind
from turnout.show.evening import PartView
from turnout.show.frame import Frame, radius_px
from turnout.show.ink import INK, Side
from turnout.show.key import Sign, signs
from turnout.show.settle import along
from turnout.show.svg import element, ground_body, laid_out
from turnout.show.words import players

WIDTH_PX, HIGH_PX = 980.0, 760.0
TRAIL_M = 2.2  # who moved farther than this in two seconds is drawn with where they came from
BALL_PX = 5.4
ROLLS_M, HIGHEST_M, AIR_PX_PER_M = 0.15, 4.0, 4.0  # a ball lower than the first rolls; the ring grows to the second
ROOM_M = 1.0  # ground shown round the outermost place anybody reaches


@dataclass(frozen=True)
class Stage:
    """A recording laid out for the page: the frame, the cast, and pixels for every metre."""

    recording: Recording
    cast: Cast
    frame: Frame
    width: float
    height: float
    drawing: Drawing

    @cached_property
    def radius(self) -> float:
        return self.frame.radius_px

    def keeps(self, player: int, side: Side) -> bool:
        """Whether a player is in goal when first seen on a side."""
        roles = self.recording.role[:, player].tolist()
        groups = self.cast.groups
        return next((groups[role].keeper for role in roles if self.cast.side_of(role) == side), False)

    @property
    def links(self) -> tuple[tuple[int, int], ...]:
        """Players (by number) of one small side, each with the next."""
        return tuple(pair for unit in units_in(self.cast.setup) for pair in pairwise(unit))

    @property
    def sides(self) -> tuple[Side, ...]:
        return self.cast.sides


def replay_page(recording: Recording, setup: Setup, view_part: PartView, captions: Sequence[Caption]) -> str:
    """The page as one HTML file that needs nothing else: its one script and one style are pinned by their hashes."""
    made = replay_files(recording, setup, view_part, captions)
    style, script = made["replay.css"], made["replay.js"]
    policy = f"default-src 'none'; style-src '{_hash(style)}'; script-src '{_hash(script)}'; base-uri 'none'"
    page = made["replay.html"]
    page = page.replace(
        _LINKS[0], f'<meta http-equiv="Content-Security-Policy" content="{policy}"><style>{style}</style>'
    )
    return page.replace(_LINKS[1], f"<script>{script}</script>")


_LINKS = ('<link rel="stylesheet" href="replay.css">', '<script src="replay.js"></script>')


def replay_files(
    recording: Recording, setup: Setup, view_part: PartView, captions: Sequence[Caption]
) -> dict[str, str]:
    """The same page as three files for a server that allows no inline script: replay.html, replay.css, replay.js."""
    told = shifted(captions, float(recording.t_s[0]))
    stage = stage_for(recording, setup, view_part)
    code = (files("turnout.show") / "replay.js").read_text(encoding="utf-8")
    data = json.dumps(_data(stage, told), ensure_ascii=False, separators=(",", ":")).replace("<", "\\u003c")
    return {
        "replay.html": _html(stage, view_part, told),
        "replay.css": (files("turnout.show") / "replay.css").read_text(encoding="utf-8"),
        "replay.js": f"const DATA={data};\n{code}",
    }


def stage_for(
    recording: Recording,
    setup: Setup,
    view_part: PartView,
    *,
    width_px: float = WIDTH_PX,
    high_px: float = HIGH_PX,
    plain: bool = False,
) -> Stage:
    """The ground of a part without its players, wide enough for everywhere the recording goes.

    plain: no room for measures and names of places.
    """
    sides = tuple(view.side for view in view_part.sides)
    whole = view_part.drawing
    bare = replace(
        whole,
        marks=tuple(mark for mark in whole.marks if mark.kind not in ("player", "ball")),
        lines=(),
        links=(),
        numbered=False,
        bounds_m=_bounds(recording, whole),
    )
    said = {"measures": not plain, "names": not plain}
    scale = laid_out(bare, width_px=width_px, max_height_px=high_px, key=False, **said)[0].px_per_yd
    frame, width, height = laid_out(bare, px_per_yd=scale, key=False, **said)
    frame = replace(frame, radius_px=max(7.0, radius_px(whole, frame.px_per_yd)))
    return Stage(recording, Cast(recording, setup, sides), frame, width, height, whole)


def _bounds(recording: Recording, drawing: Drawing) -> tuple[float, float, float, float]:
    west, south, east, north = drawing.bounds_m
    x, y = recording.players_m[..., 0], recording.players_m[..., 1]
    return (
        min(west, float(x.min()) - ROOM_M),
        min(south, float(y.min()) - ROOM_M),
        max(east, float(x.max()) + ROOM_M),
        max(north, float(y.max()) + ROOM_M),
    )


def _hash(text: str) -> str:
    return "sha256-" + b64encode(sha256(text.encode()).digest()).decode()


def _data(stage: Stage, told: Sequence[Caption]) -> dict[str, Any]:
    """What the script needs: times, pixels for players and balls, rings of balls in the air, sides, captions."""
    recording = stage.recording
    sides = [stage.sides.index(stage.cast.side_of(role)) for role in range(len(recording.roles))]
    people = range(recording.players_m.shape[1])
    return {
        "t": [round(float(t - recording.t_s[0]), 2) for t in recording.t_s],
        "xy": [_pixels(stage, frame) for frame in range(len(recording.t_s))],
        "side": [[sides[role] for role in row] for row in recording.role.tolist()],
        "face": [[round(-degrees(atan2(y, x))) for x, y in row] for row in recording.facing.tolist()],
        "high": _rings(recording),
        "links": [list(pair) for pair in stage.links],
        "marks": [[f"p{i}s{n}" for n in range(len(stage.sides))] for i in people],
        "captions": [{"t": round(caption.t_s, 2), "text": caption.text} for caption in told],
        "radius": round(stage.radius, 1),
        "trail": round(TRAIL_M * stage.frame.px_per_m, 1),
    }


def _rings(recording: Recording) -> list[list[float]]:
    """The ring round every ball, pixels; 0 on the ground."""
    return [[round(air_px(high), 1) for high in row] for row in recording.balls_m[:, :, 2].tolist()]


def air_px(height_m: float) -> float:
    """The radius of the ring round a ball in the air: the higher the wider; 0 where it rolls."""
    return 0.0 if height_m < ROLLS_M else BALL_PX + 2.0 + AIR_PX_PER_M * min(height_m, HIGHEST_M)


def _pixels(stage: Stage, frame: int) -> list[float]:
    recording = stage.recording
    points = [*recording.players_m[frame].tolist(), *recording.balls_m[frame, :, :2].tolist()]
    return [round(value, 1) for x, y in points for value in stage.frame.at(x, y)]


def _html(stage: Stage, part: PartView, told: Sequence[Caption]) -> str:
    start, end = stage.recording.t_s[0], stage.recording.t_s[-1]
    name = symbols.escape(part.name)
    under = (
        f"{players(stage.recording.players_m.shape[1])}, {end - start:.0f} seconds from second {start:.0f} of a "
        f"simulated game, seed {stage.recording.seed}. Simulated players, not yours: a forecast, not a film."
    )
    return f"""<!doctype html>
<html lang="en-GB"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width,initial-scale=1">
<title>{name}, played</title>{_LINKS[0]}</head><body><main>
<p class="over">Simulated play</p><h1>{name}, played</h1><p class="under">{symbols.escape(under)}</p>
<figure id="play">{_picture(stage, told)}<figcaption class="key">{_key(stage)}</figcaption></figure>
<p class="say">{_paragraph(told)}</p>
<div class="ctl"><button id="run" class="main" type="button">Play</button>
<span class="speed">Playing at <button id="speed" type="button" aria-pressed="false">full</button> speed.</span>
<button id="back" type="button">Back a sentence</button><button id="on" type="button">On a sentence</button></div>
<p class="note">Tap a sentence and the play goes there; the dark one is being played. Keys: space plays and pauses,
the arrows go a sentence back or on.</p><p class="vh" id="live" aria-live="polite"></p>
<h2>The sentences it plays by</h2><ol class="rules">{_items(part.rules)}</ol>
<h2>Care</h2><ul class="care">{"".join(_caution(row) for row in part.care)}</ul>
</main>{_LINKS[1]}</body></html>
"""


def _items(sentences: Sequence[str]) -> str:
    return "".join(f"<li>{symbols.escape(sentence)}</li>" for sentence in sentences)


def _paragraph(told: Sequence[Caption]) -> str:
    return " ".join(_spoken(number, caption.text) for number, caption in enumerate(told))


def _spoken(number: int, text: str) -> str:
    current = ' aria-current="true"' if number == 0 else ""
    words = f"<b>{number + 1}</b>{symbols.escape(text)}"
    return f'<span role="button" tabindex="0" data-c="{number}"{current}>{words}</span>'


def _caution(row: Caution) -> str:
    loud = ' class="loud"' if row.level != "default" else ""
    words = [symbols.escape(text) for text in (row.do_now, row.why, row.source)]
    return f"<li{loud}><b>{words[0]}</b> {words[1]} <small>({words[2]})</small></li>"


def _picture(stage: Stage, told: Sequence[Caption]) -> str:
    """The drawing with everybody where the passage opens, so that it stands even where no script runs."""
    body = (
        ground_body(replace(stage.frame, radius_px=stage.radius))
        + '<g id="lines">'
        + "".join(_line(stage, n, caption) for n, caption in enumerate(told) if caption.line)
        + f'</g><g id="trails"></g><g id="links">{links_drawn(stage, 0)}</g>'
        + "".join(_mark(stage, player) for player in range(stage.recording.players_m.shape[1]))
        + "".join(_ball(stage, number) for number in range(stage.recording.balls_m.shape[1]))
    )
    title = replace(stage.drawing, title=f"{stage.drawing.title}, moving", desc=_telling(told))
    return element(title, body, stage.width, stage.height)


def _telling(told: Sequence[Caption]) -> str:
    return "A passage of simulated play: " + " ".join(caption.text for caption in told)


def _key(stage: Stage) -> str:
    """The key as small pictures with words, so that it flows on a narrow page."""
    still = replace(stage.drawing, lines=(), numbered=False, sides=stage.sides)
    box = '<svg width="{0:.0f}" height="20" viewBox="0 0 {0:.0f} 20" aria-hidden="true">{1}</svg>'
    return "".join(
        f"<span>{box.format(wide, draw(0.0, 10.0))}{symbols.escape(words)}</span>"
        for wide, draw, words in (*signs(still), *_more_signs(bool((stage.recording.balls_m[:, :, 2] > ROLLS_M).any())))
    )


def _in_air(x: float, y: float) -> str:
    return symbols.ball_in_air(x + 13, y, 9.0) + symbols.ball(x + 13, y, 4.6)


def _more_signs(flies: bool) -> list[Sign]:
    def was(x: float, y: float) -> str:
        return symbols.old_place(x + 4, y) + strokes.line("run", (x + 9, y), (x + 44, y))

    def ball(x: float, y: float) -> str:
        return strokes.line("ball", (x, y), (x + 36, y)) + symbols.order_disc(x + 15, y, 1, 6.6)

    in_air = [(26.0, _in_air, "ball in the air, the wider the ring the higher")] if flies else []
    return [
        *in_air,
        (44.0, was, "the last two seconds"),
        (36.0, ball, "pass, numbered as below"),
        (12.0, lambda x, y: f'<path d="M{x} {y}h9" stroke="{INK}" stroke-width="2.4"/>', "facing"),
    ]


def _line(stage: Stage, number: int, caption: Caption) -> str:
    assert caption.line is not None
    a, b = (stage.frame.at(*point) for point in caption.line)
    spot = along(a, b, 0.5)
    disc = symbols.order_disc(*spot, number + 1, 8.5)
    shown = "inline" if number == 0 else "none"
    kind: LineKind = "shot" if caption.kind == "shot" else "ball"
    return f'<g class="line" data-n="{number}" display="{shown}">{strokes.line(kind, a, b)}{disc}</g>'


def _mark(stage: Stage, player: int) -> str:
    x, y = stage.frame.at(*stage.recording.players_m[0, player])
    first = stage.cast.side_of(int(stage.recording.role[0, player]))
    seen = {stage.cast.side_of(role) for role in set(stage.recording.role[:, player].tolist())}
    place = f'transform="translate({x:.1f} {y:.1f})"'
    r = stage.radius
    nose = f'<path id="n{player}" {place} d="M{r:.1f} 0h5.5" stroke="{INK}" stroke-width="2.4"/>'
    drawn = [
        f'<g id="p{player}s{n}" {place} display="{"inline" if side == first else "none"}">'
        f"{symbols.player(0, 0, r, side, stage.cast.numbers[player], keeper=stage.keeps(player, side))}</g>"
        for n, side in enumerate(stage.sides)
        if side in seen
    ]
    return nose + "".join(drawn)


def links_drawn(stage: Stage, frame: int) -> str:
    """The lines between players of one pair in a frame."""
    people = stage.recording.players_m[frame]
    return "".join(symbols.link(stage.frame.at(*people[a]), stage.frame.at(*people[b])) for a, b in stage.links)


def _ball(stage: Stage, number: int) -> str:
    x, y, high = stage.recording.balls_m[0, number]
    px, py = stage.frame.at(x, y)
    name = f"ball{number or ''}"
    ring = symbols.ball_in_air(0, 0, air_px(high), name=f"air{number}")
    return f'<g id="{name}" transform="translate({px:.1f} {py:.1f})">{ring}{symbols.ball(0, 0, BALL_PX)}</g>'
