"""What paper, replay and the desk all read: an evening told once, in words and figures, with its drawings."""

from dataclasses import dataclass

from turnout.care import Caution
from turnout.problems import TurnoutError
from turnout.show.drawing import Drawing
from turnout.show.ink import Side
from turnout.show.strips import Axis
from turnout.study.model import Band


@dataclass(frozen=True)
class SideView:
    """A side tonight: how it is drawn, and how many of its bibs go out over all copies."""

    side: Side
    players: int
    bibs: str  # '7 blue bibs', '7 in own shirts'


@dataclass(frozen=True)
class SizeView:
    """A place in the three measures a coach may use."""

    name: str
    yards: str
    metres: str
    paces: str


@dataclass(frozen=True)
class RotaRow:
    """Who is where for one or more blocks that are alike; one cell for each column, joined names."""

    block: str  # '1', '2–3'
    start: str
    copy: str  # '' with one copy
    cells: tuple[str, ...]


@dataclass(frozen=True)
class RotaView:
    """The rota as a table. columns: (side, what stands over the column)."""

    columns: tuple[tuple[Side | None, str], ...]
    rows: tuple[RotaRow, ...]
    note: str
    copies: int = 1


@dataclass(frozen=True)
class ForecastRow:
    """One measure: the mean with its 90 % interval, and the band of one block on the measure's own axis."""

    name: str
    axis: Axis
    value: float
    low: float
    high: float
    unit: str
    per: str
    one_block: Band
    text: str  # '3 (1–8)': the middle value of one block and nine in ten
    wanted: tuple[float, float] | None = None  # what the coach wants, in the measure's own unit


@dataclass(frozen=True)
class StepView:
    """A progression as one sentence, with what it changes (space, task, people)."""

    name: str
    sentence: str
    tags: tuple[str, ...]


@dataclass(frozen=True)
class AskView:
    """A question to the players and what to look for."""

    capability: str
    ask: str
    look_for: str


@dataclass(frozen=True)
class PartView:
    """One part of the hour."""

    number: int
    of: int
    key: str
    name: str
    about: str
    start: str
    end: str
    minutes: float
    blocks: str  # '5 blocks of 3 min'
    copies: int
    copies_text: str  # '' with one copy, else '3 squares side by side'
    drawing: Drawing
    ground: Drawing
    sides: tuple[SideView, ...]
    sizes: tuple[SizeView, ...]
    people: tuple[str, ...]
    rules: tuple[str, ...]
    rota: RotaView | None
    forecast: tuple[ForecastRow, ...]
    forecast_note: str
    harder: tuple[StepView, ...]
    easier: tuple[StepView, ...]
    different: tuple[StepView, ...]
    questions: tuple[AskView, ...]
    set_up: str
    balls: int
    waiting: int
    gave_way: tuple[str, ...]
    care: tuple[Caution, ...]
    brief: tuple[str, ...] = ()  # people without the goals and gates, which the drawing shows; empty: as people


@dataclass(frozen=True)
class EveningView:
    """The whole evening. With names it carries no club, date or place; with any of those, no names."""

    title: str
    aim: str
    players: int
    start: str
    end: str
    space: str  # its size; with no names also what it is called
    adults: str
    kit: str
    age: str
    parts: tuple[PartView, ...]
    care: tuple[Caution, ...]
    why: tuple[str, ...]
    left_out: tuple[str, ...]
    short: tuple[str, ...]
    country: str
    names: bool
    date: str | None = None
    club: str | None = None

    def __post_init__(self) -> None:
        if self.names and (self.date or self.club):
            raise TurnoutError(
                "A sheet with names carries no club and no date; ask for it without names to print them."
            )
