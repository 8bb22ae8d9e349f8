"""The desk's page: what stands in each place, then the templates."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from importlib.resources import files

from jinja2 import DictLoader, Environment, StrictUndefined
from markupsafe import Markup

from turnout.evening.values import LEAST, MOST
from turnout.evening.views import view_of
from turnout.fit.model import FittedPart
from turnout.layout.model import PartLayout
from turnout.measure import yards
from turnout.problems import Problem
from turnout.show.drawing import Drawing
from turnout.show.evening import EveningView, ForecastRow, PartView
from turnout.show.words import clock, figure, listed, minutes_text, players
from turnout.web.desk import Answer
from turnout.web.ledger import SIGNS, ruler
from turnout.web.tally import tally_ruler

PLAN_PX, PLAN_HIGH_PX = 272.0, 330.0
STRIP_PX = 138.0
FIELDS = ("players", "space", "minutes")
FIRST = (
    "success", "passes_in_a_row", "regains_per_side_min", "touches_per_player_min", "distance_m_per_player_min",
    "waiting_share",
)  # fmt: skip
PLAYED = "Every part has been played."
PLAYING = "Each part is being played now; the figures come in as they are ready."


@dataclass(frozen=True)
class How:
    """The forecast of a part as the page shows it; no strips while it has not been played."""

    first: tuple[dict, ...] = ()
    others: tuple[dict, ...] = ()
    judgement: str = ""
    source: str = ""


def page_html(answer: Answer, problems: Sequence[Problem] = (), typed: Mapping[str, str] | None = None) -> str:
    """The whole page. `typed` stands in the fields instead of tonight's values when it could not be used."""
    view = view_of(answer.fitted, answer.forecasts) if answer.fitted.fitted.fits else None
    hour = {"rows": rows(answer, view), "cautions": view.care} if view else {"rows": (), "cautions": ()}
    fields = {"problems": by_field(problems), "typed": {**typed_values(answer), **(typed or {})}}
    page = {**fact_words(answer), **fields, **verdict_words(answer, view, problems), **hour}
    return template("desk.html").render(page=page, signs=SIGNS)


def forecast_html(answer: Answer, index: int) -> str:
    """The forecast of one part, as far as it has come."""
    return template("how.html").render(how=how(view_of(answer.fitted, answer.forecasts).parts[index]))


def fact_words(answer: Answer) -> dict:
    """Tonight's facts, above the ledger."""
    evening, fitted = answer.fitted.evening, answer.fitted.fitted
    tonight, session = evening.tonight, evening.session
    space, (low, high) = tonight.space, session.expected
    below = f" Everything below is for {tonight.players}." if fitted.fits else ""
    end = fitted.parts[-1].start_min + fitted.parts[-1].minutes if fitted.parts else tonight.minutes
    return {
        "title": f"Tonight, {players(tonight.players)}: {session.name}",
        "name": session.name,
        "aim": f"Aim: {session.aim}.",
        "squad": f"U{tonight.age}",
        "age": tonight.age,
        "level": tonight.level,
        "surface": tonight.surface,
        "revision": answer.revision,
        "whole": answer.whole,
        "players": tonight.players,
        "fewer": max(LEAST, tonight.players - 1),
        "more": min(MOST, tonight.players + 1),
        "expected": f"{low} to {high} were expected." + below,
        "tally": tally_ruler(tonight.players, low=LEAST, high=MOST, expected=session.expected),
        "ground": f"{round(yards(space.across_m))} x {round(yards(space.up_m))} yd, run-off included",
        "times": f"{clock(tonight.start, 0)} to {clock(tonight.start, end)}",
        "played": PLAYED if answer.whole else PLAYING,
    }


def verdict_words(answer: Answer, view: EveningView | None, problems: Sequence[Problem]) -> dict:
    """Whether it fits, what gave way or what would do, and the sentence a screen reader hears."""
    fitted, count = answer.fitted.fitted, answer.fitted.evening.tonight.players
    gave = gave_way(view) if view else fitted.why()
    title = f"What gave way for {count}" if fitted.fits else f"It does not fit {players(count)}"
    said = " ".join(str(problem.expected) for problem in problems) or f"{title}. {' '.join(gave)}"
    layout = answer.fitted.layout
    kit = listed([f"{number} {thing}" for thing, number in layout.kit]) if layout else "Nothing is laid out."
    return {
        "fits": fitted.fits, "gave_title": title, "gave": gave, "said": said, "kit": kit,
        "short": layout.short if layout else (), "smallest_change": fitted.smallest_change,
    }  # fmt: skip


def typed_values(answer: Answer) -> dict[str, str]:
    """What stands in the three fields."""
    tonight = answer.fitted.evening.tonight
    return {"players": str(tonight.players), "space": tonight.space.name, "minutes": figure(tonight.minutes)}


def by_field(problems: Sequence[Problem]) -> dict[str, list[Problem]]:
    """Problems under the field they are about."""
    named = [(problem.file.removeprefix("--"), problem) for problem in problems]
    return {name: [problem for field, problem in named if field == name] for name in FIELDS}


def gave_way(view: EveningView) -> tuple[str, ...]:
    """What gave way, part by part, then what holds for all; what was chosen stands in the rows."""
    lost = [f"{part.name}: {way}" for part in view.parts for way in part.gave_way]
    names = tuple(f"{part.name}: " for part in view.parts)
    return (*lost, *(sentence for sentence in view.why if not sentence.startswith(names)))


def rows(answer: Answer, view: EveningView) -> tuple[dict, ...]:
    """One row a part."""
    layout = answer.fitted.layout
    laid = {part.part: part for part in layout.parts} if layout else {}
    parts = answer.fitted.fitted.parts
    following = [laid.get(part.index) for part in parts[1:]] + [None]
    return tuple(
        row(index, part, seen, after)
        for index, (part, seen, after) in enumerate(zip(parts, view.parts, following, strict=True))
    )


def row(index: int, part: FittedPart, view: PartView, after: PartLayout | None) -> dict:
    """One part of the hour and the change-over after it."""
    from turnout.show.svg import svg

    gap = part.changeover_min
    return {
        "index": index,
        "view": view,
        "minutes": minutes_text(part.minutes),
        "ruler": ruler(part.minutes, blocks=part.blocks, rest_min=part.rest_min),
        "key": key(view.drawing),
        "plan": Markup(svg(view.drawing, width_px=PLAN_PX, max_height_px=PLAN_HIGH_PX, key=False)),
        "how": how(view),
        "gap_minutes": minutes_text(gap) if gap else "",
        "gap_ruler": ruler(gap),
        "walk": after.sentence if after else "",
    }


def key(drawing: Drawing) -> tuple[tuple[Markup, str], ...]:
    """The signs of a drawing with their words, so that the page can flow them."""
    from turnout.show.key import signs

    box = '<svg width="{0:.0f}" height="20" viewBox="0 0 {0:.0f} 20" aria-hidden="true">{1}</svg>'
    return tuple((Markup(box.format(wide, draw(0.0, 10.0))), words) for wide, draw, words in signs(drawing))


def how(view: PartView) -> How:
    """The forecast of a part: the strips a coach looks for first, the others behind them, and a sentence."""
    if not view.forecast:
        return How()
    drawn = {one.name: strip_words(one) for one in view.forecast}
    first = tuple(drawn[name] for name in FIRST if name in drawn)
    others = tuple(words for name, words in drawn.items() if name not in FIRST)
    return How(first, others, judgement(view), view.forecast_note)


def strip_words(one: ForecastRow) -> dict:
    """A strip, and the same in figures."""
    from turnout.show.strips import strip

    middle, _, span = one.text.partition(" ")
    drawn = Markup(strip(one.one_block, one.axis, width_px=STRIP_PX, wanted=one.wanted))
    wanted = [figure(one.axis.scale * end) for end in one.wanted or ()]
    return {"label": one.axis.label, "drawn": drawn, "middle": middle, "range": span, "wanted": "–".join(wanted)}


def judgement(view: PartView) -> str:
    """What the means say, in a sentence or two."""
    found = {one.name: one.value for one in view.forecast}
    told = [scoring(one) for one in view.forecast if one.name == "success"]
    rest = []
    if "possession_s" in found:
        rest.append(f"a possession lasts {figure(found['possession_s'])} seconds")
    if found.get("touches_per_player_min"):
        rest.append(f"each player touches the ball every {figure(60 / found['touches_per_player_min'])} seconds")
    if rest:
        told.append(f"On average {listed(rest)}.")
    return " ".join(told)


def scoring(one: ForecastRow) -> str:
    """How many possessions score, against what the coach wants."""
    told = f"About {figure(100 * one.value)} possessions in 100 score"
    if one.wanted is None:
        return f"{told}."
    low, high = one.wanted
    verdict = "fewer than" if one.value < low else "more than" if one.value > high else "within"
    return f"{told}, {verdict} the {figure(100 * low)} to {figure(100 * high)} you want."


@lru_cache(maxsize=1)
def templates() -> Environment:
    """The templates, with autoescape; a name that is missing is an error, never an empty place."""
    folder = files("turnout.web") / "pages"
    texts = {name: (folder / name).read_text("utf-8") for name in ("desk.html", "row.html", "how.html")}
    return Environment(
        loader=DictLoader(texts), autoescape=True, undefined=StrictUndefined, trim_blocks=True, lstrip_blocks=True
    )


def template(name: str):
    """A template by name."""
    return templates().get_template(name)
