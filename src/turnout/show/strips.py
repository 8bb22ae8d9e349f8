"""Small figures in ink: forecast strips on a fixed axis for each measure, and tally strokes."""

from dataclasses import dataclass

from turnout.show.ink import EDGE, INK, SHEET, WASH_2
from turnout.show.symbols import escape
from turnout.study.model import Band


@dataclass(frozen=True)
class Axis:
    """The fixed axis of a measure: the same on every page, so that strips compare. `scale` turns shares into 100s."""

    label: str
    low: float
    high: float
    tick: float
    scale: float = 1.0


AXES = {
    "passes_in_a_row": Axis("Passes in a row", 0, 15, 5),
    "success": Axis("Possessions that score, in 100", 0, 100, 25, 100),
    "passes_per_min": Axis("Passes a minute", 0, 50, 10),
    "pass_success": Axis("Passes that arrive, in 100", 0, 100, 25, 100),
    "possession_s": Axis("Seconds a possession lasts", 0, 30, 5),
    "regains_per_side_min": Axis("Balls won a minute, a side", 0, 10, 2),
    "touches_per_player_min": Axis("Touches a minute, each", 0, 20, 5),
    "actions_per_player_min": Axis("Times on the ball a minute, each", 0, 10, 2),
    "distance_m_per_player_min": Axis("Metres a minute, each", 0, 150, 25),
    "fast_share": Axis("Metres above 16 km/h, in 100", 0, 20, 5, 100),
    "rolling_share": Axis("Time the ball rolls, in 100", 0, 100, 25, 100),
    "waiting_share": Axis("Time spent waiting, in 100", 0, 100, 25, 100),
    "scores_per_side_min": Axis("Scores a minute, a side", 0, 5, 1),
}


def strip(
    band: Band, axis: Axis, *, width_px: float = 150.0, alt: str = "", wanted: tuple[float, float] | None = None
) -> str:
    """One block's range: thin line nine in ten, thick the middle half, white dot the middle value.

    wanted: the span the coach wants, in the measure's own unit, shaded. Values past the axis end at its edge.
    """
    left, right, y, base = 4.0, width_px - 4.0, 8.0, 16.0

    def x(value: float) -> float:
        share = (value * axis.scale - axis.low) / (axis.high - axis.low)
        return left + min(1.0, max(0.0, share)) * (right - left)

    parts = [_wanted(x(wanted[0]), x(wanted[1]), base)] if wanted else []
    parts.append(_scale(axis, left, right, base))
    parts.append(f'<path d="M{x(band.p5):.1f} {y}H{x(band.p95):.1f}" stroke="{INK}" stroke-width="1.4"/>')
    thick = max(x(band.p75), x(band.p25) + 2.5)
    parts.append(f'<path d="M{x(band.p25):.1f} {y}H{thick:.1f}" stroke="{INK}" stroke-width="6"/>')
    parts.append(f'<circle cx="{x(band.p50):.1f}" cy="{y}" r="3.4" fill="{SHEET}" stroke="{INK}" stroke-width="1.8"/>')
    return _svg(width_px, 22.0, "".join(parts), alt)


def tally(count: int, *, height_px: float = 30.0, alt: str | None = None) -> str:
    """A count in five-bar tally strokes; the number always stands beside it."""
    step, weight = height_px * 0.24, max(1.8, height_px * 0.075)
    paths, x = [], weight
    for number in range(count):
        if number % 5 == 4:
            start = x - 4 * step - step * 0.5
            paths.append(f"M{start:.1f} {height_px * 0.76:.1f}L{x - step * 0.5:.1f} {height_px * 0.24:.1f}")
            x += step * 0.7
        else:
            lean = (1.5 - number % 5) * 0.35
            paths.append(f"M{x + lean:.1f} {weight:.1f}L{x - lean:.1f} {height_px - weight:.1f}")
            x += step
    stroke = f'stroke="{INK}" stroke-width="{weight:.1f}" stroke-linecap="round" fill="none"'
    return _svg(x + weight, height_px, f'<path d="{"".join(paths)}" {stroke}/>', alt or f"{count} in tally strokes")


def _wanted(left: float, right: float, base: float) -> str:
    return f'<path d="M{left:.1f} {base}V1H{right:.1f}V{base}" fill="{WASH_2}" stroke="{EDGE}" stroke-width="1"/>'


def _scale(axis: Axis, left: float, right: float, base: float) -> str:
    count = round((axis.high - axis.low) / axis.tick)
    ticks = "".join(f"M{left + (right - left) * n / count:.1f} {base}v-4" for n in range(count + 1))
    return f'<path d="M{left} {base}H{right}{ticks}" stroke="{EDGE}" stroke-width="1" fill="none"/>'


def _svg(width: float, height: float, body: str, alt: str) -> str:
    role = f'role="img" aria-label="{escape(alt)}"' if alt else 'aria-hidden="true"'
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" {role} width="{width:.1f}" height="{height:.1f}" '
        f'viewBox="0 0 {width:.1f} {height:.1f}">{body}</svg>'
    )
