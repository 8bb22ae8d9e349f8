"""The five-bar tally: the mark of the page and the ruler of the turnout. Drawn with attributes only, no style."""

from markupsafe import Markup

STEP_PX, GROUP_PX, TOP_PX, FOOT_PX = 19.4, 96.0, 2.0, 52.0


def stroke(number: int) -> tuple[float, float, float, float]:
    """Ends of the stroke for player `number` (from 1): four upright, the fifth across; pixels."""
    group, place = divmod(number - 1, 5)
    left = 7.0 + group * GROUP_PX
    if place == 4:
        return left - 5.0, 46.0, left + 67.0, 10.0
    x = left + place * STEP_PX
    lean = 2.2 - 1.1 * place
    return x + lean, TOP_PX, x, FOOT_PX


def line(ends: tuple[float, float, float, float], *, solid: bool) -> str:
    """One stroke: in ink, or dotted for a player who has not come."""
    look = 'class="inked"' if solid else 'class="open"'
    return '<line {} x1="{:.1f}" y1="{:.1f}" x2="{:.1f}" y2="{:.1f}"/>'.format(look, *ends)


def middle(number: int) -> float:
    """Where the stroke of a player stands along the ruler, pixels."""
    x1, _, x2, _ = stroke(number)
    return (x1 + x2) / 2


def tally_ruler(count: int, *, low: int, high: int, expected: tuple[int, int]) -> Markup:
    """A tally of `count` out of `high`, with the expected turnout bracketed beneath; the number stands beside it."""
    lines = "".join(line(stroke(number), solid=number <= count) for number in range(1, high + 1))
    title = f"Tally: {count} players; from {low} to {high} can be fitted; expected {expected[0]} to {expected[1]}"
    return Markup(
        f'<svg class="tally" viewBox="0 0 484 88" role="img"><title>{title}</title>{lines}{bracket(expected)}'
        f"{mark(low)}{mark(high)}</svg>"
    )


def bracket(expected: tuple[int, int]) -> str:
    """The expected turnout as a bracket with its words."""
    left, right = middle(expected[0]) - 8, middle(expected[1]) + 8
    words = f"expected {expected[0]} to {expected[1]}"
    centre = (left + right) / 2
    return (
        f'<path class="bracket" d="M{left:.1f} 58v7H{right:.1f}v-7"/>'
        f'<text x="{centre:.1f}" y="82" text-anchor="middle">{words}</text>'
    )


def mark(number: int) -> str:
    """An end of the range, written under its stroke."""
    return f'<text class="end" x="{middle(number):.1f}" y="82" text-anchor="middle">{number}</text>'
