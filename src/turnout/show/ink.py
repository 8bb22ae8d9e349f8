"""Paper and ink: the few colours of a page, bib colours, and how each side is drawn and named tonight."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal

from turnout.practice.model import Practice
from turnout.practice.names import COLOURS

Fill = Literal["solid", "ring", "half", "hatched", "open"]

PAPER, SHEET, WASH, WASH_2 = "#FAF8F2", "#FFFFFF", "#F1EDE2", "#E6E0D0"
INK, INK_2, INK_3 = "#17191E", "#43464D", "#63666C"
EDGE, RULE = "#837E73", "#CFC9BA"
PEN, PEN_WASH = "#98290F", "#F8E7E0"
SANS = "'Source Sans Pro','Helvetica Neue','Segoe UI',Roboto,'Liberation Sans',Arial,sans-serif"

BIB_INK = {
    "blue": "#0B4F8A",
    "yellow": "#F2C12E",
    "black": "#17191E",
    "plum": "#8B3A7B",
    "purple": "#6A3D8F",
    "red": "#B3261E",
    "orange": "#E07B1A",
    "amber": "#E8A317",
    "green": "#2E7D4F",
    "sky": "#5DA9D6",
    "pink": "#E58FB1",
    "white": "#FFFFFF",
    "grey": "#8C8F94",
    "navy": "#22305C",
    "lime": "#B7D433",
    "maroon": "#7A1F2B",
    "violet": "#6A3D8F",
}
OWN_SHIRTS = "own"
_PLAIN = "#D9D4C7"  # own shirts of mixed colours
_FILLS: tuple[Fill, ...] = ("solid", "ring", "hatched")
_LETTERS = "ABDEFGHJK"  # C is the coach


@dataclass(frozen=True)
class Side:
    """A side as it is drawn and named tonight: fill, letter, colour and name, so that grey paper still tells it."""

    side: str  # its name in the practice
    letter: str
    fill: Fill
    colour: str  # bib colour, or 'own'
    ink: str
    name: str  # 'Blues', 'Neutrals'
    key: str  # 'Blues', 'Neutrals, black bibs'


def sides_of(practice: Practice, *, bibs: Iterable[tuple[str, str]] = (), own: str | None = None) -> tuple[Side, ...]:
    """How each side of a practice is drawn tonight. bibs: side -> colour; own: colour of the players' own shirts.

    A side without a colour keeps its name in the practice, and its ink when the name is a colour.
    """
    colours = dict(bibs)
    sides, plain = [], 0
    waiting = {group.side for group in practice.groups if group.waits}
    for side in practice.sides:
        colour = colours.get(side, side)
        if side in waiting:
            sides.append(Side(side, "W", "open", colour, SHEET, side[:1].upper() + side[1:], "waiting their turn"))
            continue
        if is_neutral(side):
            sides.append(Side(side, "N", "half", colour, bib_ink(colour, own), "Neutrals", _neutral_key(colour, own)))
            continue
        letter, fill = _LETTERS[plain], _FILLS[plain % len(_FILLS)]
        names = _names(colour, own) if side in COLOURS else _job_names(side, colour, own)
        sides.append(Side(side, letter, fill, colour, bib_ink(colour, own), *names))
        plain += 1
    return tuple(sides)


def is_neutral(side: str) -> bool:
    """Whether a side is the neutrals: they carry the letter N and keep their word on the page."""
    return side.rstrip("s") == "neutral"


def bib_ink(colour: str, own: str | None = None) -> str:
    """A bib colour as ink; own shirts in their own colour, plain when mixed or unknown."""
    if colour == OWN_SHIRTS:
        return BIB_INK.get(own or "", _PLAIN)
    return BIB_INK.get(colour, BIB_INK["grey"])


def on(ink: str) -> str:
    """White or ink, whichever reads better on a fill."""
    return SHEET if contrast(SHEET, ink) >= contrast(INK, ink) else INK


def contrast(first: str, second: str) -> float:
    """Contrast ratio of two colours, 1 to 21 (WCAG 2.2, relative luminance)."""
    light, dark = sorted((_luminance(first), _luminance(second)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def _luminance(ink: str) -> float:
    parts = [int(ink[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    red, green, blue = (c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def _names(colour: str, own: str | None) -> tuple[str, str]:
    if colour == OWN_SHIRTS:
        return "Own shirts", f"Own shirts ({own})" if own and own != "mixed" else "Own shirts"
    return plural(colour), plural(colour)


def _job_names(side: str, colour: str, own: str | None) -> tuple[str, str]:
    """A side called by what it does keeps its word: 'Pairs', 'Pairs, blue bibs'."""
    if colour == side:
        return plural(side), plural(side)
    worn = _names(colour, own)[1].lower() if colour == OWN_SHIRTS else f"{colour} bibs"
    return plural(side), f"{plural(side)}, {worn}"


def _neutral_key(colour: str, own: str | None) -> str:
    if colour == OWN_SHIRTS:
        return "Neutrals, own shirts"
    return "Neutrals" if is_neutral(colour) else f"Neutrals, {colour} bibs"


def colour_words(colour: str) -> str:
    """A colour as it is worn: 'blue', 'own shirts'."""
    return "own shirts" if colour == OWN_SHIRTS else colour


def plural(colour: str) -> str:
    """A side's name from its colour: blue, Blues."""
    return colour[:1].upper() + colour[1:] + ("" if colour.endswith("s") else "s")
