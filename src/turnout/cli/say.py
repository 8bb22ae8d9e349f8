"""Answers as sentences for the terminal."""

from turnout.club.tonight import Space
from turnout.evening.fits import FittedEvening
from turnout.fit.model import Copy, FittedPart
from turnout.fit.words import group_counts
from turnout.show.ink import sides_of
from turnout.show.strips import AXES, Axis
from turnout.show.view import retold, told_tonight
from turnout.show.words import clock, figure, metres_text, minutes_text, number_word, players, size_yards
from turnout.study.model import Figure, Forecast

NAME_WIDTH = 34


def fit_text(answer: FittedEvening) -> str:
    """A fitted evening: the verdict, the hour part by part, why; or why not and what would do."""
    fitted, tonight = answer.fitted, answer.evening.tonight
    given = f"{players(tonight.players)}, {space_text(tonight.space)}, {minutes_text(tonight.minutes)}"
    if not fitted.fits:
        change = [f"Smallest change: {fitted.smallest_change}"] if fitted.smallest_change else []
        return "\n".join([f"{fitted.session.name} does not fit {given}.", *fitted.why(), *change])
    lines = [f"{fitted.session.name} fits {given}."]
    for part in fitted.parts:
        lines += part_lines(part, answer)
    return "\n".join([*lines, "", *(f"- {retold(sentence, fitted)}" for sentence in fitted.why())])


def space_text(space: Space) -> str:
    """What the coach calls it and its size; only the size when that is its name."""
    size = f"{metres_text(space.across_m)} x {metres_text(space.up_m)}"
    return size if any(sign.isdigit() for sign in space.name.replace("3G", "")) else f"{space.name}, {size}"


def part_lines(part: FittedPart, answer: FittedEvening) -> list[str]:
    """One part: when, how long, who plays what on how much ground."""
    tonight = answer.evening.tonight
    name = answer.fitted.session.parts[part.index].practice.name
    start = clock(tonight.start, part.start_min)
    head = f"{start}  {name}, {minutes_text(part.minutes)}: {blocks_text(part.blocks)}"
    return [head, *(f"       {copy_text(copy, tonight.kit.own)}" for copy in part.copies)]


def blocks_text(blocks: tuple[float, ...]) -> str:
    """'3 blocks of 4 min', or their lengths when they differ."""
    if len(set(blocks)) == 1:
        word = "block" if len(blocks) == 1 else "blocks"
        return f"{number_word(len(blocks))} {word} of {minutes_text(blocks[0])}"
    return "blocks of " + ", ".join(minutes_text(block) for block in blocks)


def copy_text(copy: Copy, own: str | None) -> str:
    """'4 amber inside, 3 blue inside on 16 x 16 yd', in the colours of this copy."""
    practice = copy.setup.practice
    roles = ", ".join(group_counts(copy))
    roles = told_tonight(roles, practice, sides_of(practice, bibs=copy.bibs, own=own))
    field = copy.setup.field
    waiting = f"; {players(copy.waiting)} waiting" if copy.waiting else ""
    return f"{roles} on {size_yards(field.across_m, field.up_m)}{waiting}"


def range_text(fits: dict[str, dict]) -> str:
    """One line a turnout: yes and what gave way, or no and what would do."""
    return "\n".join(f"{count:>3}  {range_line(fit)}" for count, fit in fits.items())


def range_line(fit: dict) -> str:
    """Yes with the copies of every part, or no with the smallest change."""
    if not fit["fits"]:
        return f"no   {fit['smallest_change'] or ' '.join(fit['why'])}"
    parts = [f"{part['practice']} x {len(part['copies'])}" for part in fit["parts"]]
    return f"yes  {', '.join(parts)}"


def forecast_text(forecast: Forecast, *, players: int | None, age: int, level: str) -> str:
    """Each figure with its range in one block, and how long was simulated."""
    who = f"{players} players, " if players is not None else ""
    head = f"{forecast.practice}: {who}U{age}, {level}"
    columns = f"  {'':<{NAME_WIDTH}} {'mean (90 % sure)':<20} nine blocks in ten"
    rows = [figure_line(AXES[name], one) for name, one in forecast.figures if name in AXES]
    settled = "" if forecast.settled else "; not settled yet: give it more --seconds"
    block = minutes_text(forecast.block_s / 60)
    foot = f"{forecast.simulated_s / 60:.0f} simulated minutes in blocks of {block}, seed {forecast.seed}{settled}."
    return "\n".join([head, columns, *rows, foot])


def figure_line(axis: Axis, one: Figure) -> str:
    """The measure in words, its mean with the interval of the mean, and what single blocks look like."""
    mean, low, high = (figure(axis.scale * value) for value in (one.value, one.low, one.high))
    block_low, block_high = figure(axis.scale * one.one_block.p5), figure(axis.scale * one.one_block.p95)
    return f"  {axis.label:<{NAME_WIDTH}} {f'{mean} ({low}–{high})':<20} {block_low}–{block_high}"
