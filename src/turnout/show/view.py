"""From what was fitted, dealt out, laid and forecast to the one telling of the evening that every face reads."""

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace

from turnout.care import Caution, care_box
from turnout.club.tonight import Tonight
from turnout.fit.model import Fitted, FittedPart
from turnout.layout.model import Layout, PartLayout
from turnout.measure import PACE_M, YARD_M, yards
from turnout.practice.model import LINES, Place, PlaceDef, Practice, Question
from turnout.practice.nets import has_net
from turnout.practice.setup import Setup
from turnout.practice.units import balls_for
from turnout.rota.model import PartRota
from turnout.show.evening import AskView, EveningView, ForecastRow, PartView, RotaView, SideView, SizeView
from turnout.show.ground import cones_of, space_drawing
from turnout.show.ink import OWN_SHIRTS, Side, is_neutral, sides_of
from turnout.show.plan import setup_drawing
from turnout.show.rotas import rota_view
from turnout.show.steps import step_views
from turnout.show.strips import AXES
from turnout.show.words import clock, figure, listed, minutes_text, number_word, paces_text, size_yards, yards_text
from turnout.study.model import Band, Figure, Forecast

INDOOR_WORDS = ("hall", "indoor", "sports hall", "futsal")


def evening_view(
    fitted: Fitted,
    rotas: Sequence[PartRota],
    layout: Layout,
    forecasts: Mapping[int, Forecast],
    *,
    names: bool,
    date: str | None = None,
    club: str | None = None,
) -> EveningView:
    """The evening as every face reads it.

    forecasts: by `FittedPart.index`; a part without one shows no figures. names: first names on the rota, and then
    neither club, date nor place; without, the players' numbers on the coach's list.
    """
    tonight = fitted.tonight
    by_part = {rota.part: rota for rota in rotas}
    laid = {part.part: part for part in layout.parts}
    parts = tuple(
        part_view(fitted, part, by_part.get(part.index), laid.get(part.index), forecasts, names=names)
        for part in fitted.parts
    )
    end = max((part.start_min + part.minutes for part in fitted.parts), default=0.0)
    return EveningView(
        title=fitted.session.name,
        aim=fitted.session.aim,
        players=tonight.players,
        start=clock(tonight.start, 0),
        end=clock(tonight.start, end),
        space=_space(tonight, names),
        adults=_adults(tonight),
        kit=", ".join(f"{count} {thing}" for thing, count in layout.kit),
        age=f"U{tonight.age}",
        parts=parts,
        care=_care(tonight, fitted.parts),
        why=tuple(retold(line, fitted) for line in fitted.why()),
        left_out=fitted.left_out,
        short=layout.short,
        country=tonight.country,
        names=names,
        date=None if names else date,
        club=None if names else club,
    )


def part_view(
    fitted: Fitted,
    part: FittedPart,
    rota: PartRota | None,
    laid: PartLayout | None,
    forecasts: Mapping[int, Forecast],
    *,
    names: bool,
) -> PartView:
    """One part: its first copy drawn, its sentences with tonight's side names, who goes where, what to expect."""
    tonight = fitted.tonight
    setup = part.copies[0].setup
    practice = setup.practice
    sides = sides_of(practice, bibs=part.bibs, own=tonight.kit.own)
    forecast = forecasts.get(part.index)
    steps = step_views(setup, side_words(sides))
    return PartView(
        number=fitted.parts.index(part) + 1,
        of=len(fitted.parts),
        key=practice.key,
        name=practice.name,
        about=practice.about,
        start=clock(tonight.start, part.start_min),
        end=clock(tonight.start, part.start_min + part.minutes),
        minutes=part.minutes,
        blocks=_blocks(part),
        copies=len(part.copies),
        copies_text=_copies(part),
        drawing=setup_drawing(setup, bibs=part.bibs, own=tonight.kit.own, cones=cones_of(part, laid)),
        ground=space_drawing(part, tonight.space, laid, own=tonight.kit.own),
        sides=tuple(_side(side, part) for side in sides),
        sizes=_sizes(setup),
        people=(*_people(setup, sides), *_places(setup, sides, lines=True)),
        brief=(*_people(setup, sides), *_places(setup, sides, lines=False)),
        rules=_rules(setup, sides),
        rota=_rota(part, rota, sides, tonight, names) if rota else None,
        forecast=_forecast(forecast, fitted.session.parts[part.index].success),
        forecast_note=_forecast_note(forecast),
        harder=steps["harder"],
        easier=steps["easier"],
        different=steps["different"],
        questions=tuple(_question(question) for question in practice.questions),
        set_up=laid.sentence if laid else "",
        balls=balls_for(setup),
        waiting=sum(copy.waiting for copy in part.copies),
        gave_way=tuple(told_tonight(line, practice, sides) for line in part.gave_way),
        care=_care(tonight, (part,)),
    )


def side_words(sides: Sequence[Side]) -> dict[str, str]:
    """A side's name in the practice -> its colour tonight, as sentences inflect it: amber -> blue, amber -> own."""
    return {side.side: side.colour for side in sides if not is_neutral(side.side)}


def told_tonight(text: str, practice: Practice, sides: Sequence[Side]) -> str:
    """A sentence that calls the sides by their names in the practice, with tonight's colours instead."""
    from turnout.practice.printing import side_name, tonight_name

    worn = side_words(sides)
    words = {name: tonight_name(name, worn) for name in worn if worn[name] != name}
    if not words:
        return text
    roles = "|".join(re.escape(group.role) for group in practice.groups if group.role) or "(?!)"
    pattern = rf"\b({'|'.join(map(re.escape, words))})\b(?=( (?:{roles})\b)?)"
    return re.sub(pattern, lambda hit: side_name(words[hit[1]], "adjective" if hit[2] else "noun"), text)


def retold(line: str, fitted: Fitted) -> str:
    """A sentence of the whole evening, by the part whose practice it names first."""
    for part in fitted.parts:
        practice = part.copies[0].setup.practice
        if practice.name in line:
            return told_tonight(line, practice, sides_of(practice, bibs=part.bibs, own=fitted.tonight.kit.own))
    return line


def _people(setup: Setup, sides: Sequence[Side]) -> tuple[str, ...]:
    """Who is where."""
    from turnout.practice.sentences import people_sentences

    return tuple(people_sentences(setup, side_words(sides)))


def _places(setup: Setup, sides: Sequence[Side], *, lines: bool) -> tuple[str, ...]:
    """Each place but the first that has a size of its own; with `lines` goals and gates too, those alike as one."""
    from turnout.practice.line_sentences import listed_lines, told_by_list
    from turnout.practice.sentences import ground_sentences

    words = side_words(sides)
    definitions = setup.practice.ground
    told = zip(definitions, ground_sentences(setup, words), strict=True)
    spoken_for, lists = told_by_list(setup), listed_lines(setup.practice)
    hidden = spoken_for if lines else {place.name for place in definitions if place.kind in LINES}
    shown = {place.name for place in definitions[1:] if place.kind != "list" and place.name not in hidden}
    return tuple(text for place, text in told if place.name in shown or (lines and place.name in lists))


def _rules(setup: Setup, sides: Sequence[Side]) -> tuple[str, ...]:
    from turnout.practice.sentences import rule_sentences

    return tuple(rule_sentences(setup.practice, side_words(sides)))


def _care(tonight: Tonight, parts: Sequence[FittedPart]) -> tuple[Caution, ...]:
    indoors = any(word in f"{tonight.surface} {tonight.space.name}".lower() for word in INDOOR_WORDS)
    return care_box(
        players=tonight.players,
        age=tonight.age,
        adults=tonight.adults,
        first_aider=tonight.first_aider,
        uses_goals=any(has_net(place) for part in parts for _, place in part.copies[0].setup.places),
        run_off_m=tonight.space.run_off_m,
        outdoors=not indoors,
        country=tonight.country,
    )


def _space(tonight: Tonight, names: bool) -> str:
    size = size_yards(round(yards(tonight.space.across_m)) * YARD_M, round(yards(tonight.space.up_m)) * YARD_M)
    return size if names else f"{tonight.space.name}, {size}"


def _adults(tonight: Tonight) -> str:
    if tonight.adults is None:
        return "adults not said"
    return f"{tonight.adults} adult" + ("" if tonight.adults == 1 else "s")


def _blocks(part: FittedPart) -> str:
    lengths = set(part.blocks)
    if len(lengths) == 1:
        return f"{len(part.blocks)} block{'s' if len(part.blocks) > 1 else ''} of {minutes_text(part.blocks[0])}"
    return "blocks of " + ", ".join(minutes_text(block) for block in part.blocks)


def _copies(part: FittedPart) -> str:
    if len(part.copies) == 1:
        return ""
    sizes = [str(copy.setup.players + copy.waiting) for copy in part.copies]
    each = f"of {sizes[0]}" if len(set(sizes)) == 1 else f"of {', '.join(sizes[:-1])} and {sizes[-1]}"
    return f"{number_word(len(sizes)).capitalize()} side by side, {each}"


def _side(side: Side, part: FittedPart) -> SideView:
    keys = {group.key for group in part.copies[0].setup.practice.groups if group.side == side.side}
    worn: dict[str, int] = {}
    for copy in part.copies:
        colour = dict(copy.bibs or part.bibs).get(side.side, side.colour)
        worn[colour] = worn.get(colour, 0) + sum(count for key, count in copy.setup.counts if key in keys)
    if side.fill == "open":  # they wait, and take the bib of whom they replace
        return SideView(side, sum(worn.values()), f"{sum(worn.values())} waiting")
    return SideView(side, sum(worn.values()), listed([_worn(colour, count) for colour, count in worn.items()]))


def _worn(colour: str, count: int) -> str:
    if colour == OWN_SHIRTS:
        return f"{count} in own shirts"
    return f"{count} without bibs" if is_neutral(colour) else f"{count} {colour} bib" + ("" if count == 1 else "s")


def _sizes(setup: Setup) -> tuple[SizeView, ...]:
    from turnout.practice.line_sentences import listed_lines, told_by_list

    spoken_for, lists = told_by_list(setup), listed_lines(setup.practice)
    found = []
    for definition in setup.practice.ground:
        place = setup.place(definition.name)
        if definition.name in lists:
            found.append(_line_size(lists[definition.name][0], definition.name, len(lists[definition.name])))
        elif place.is_line and definition.name not in spoken_for:
            found.append(_line_size(definition, definition.name, 1))
        elif place.kind in ("rectangle", "circle"):
            found.append(_size(place))
    return tuple(found)


def _line_size(definition: PlaceDef, name: str, count: int) -> SizeView:
    """A goal or gate, or so many alike: '2 of 6 x 3 ft'."""
    from turnout.practice.line_sentences import line_size

    high = f" x {definition.height_m:.1f}" if definition.height_m else ""
    many = f"{count} of " if count > 1 else ""
    metres = f"{many}{definition.width_m:.1f}{high} m"
    return SizeView(name, f"{many}{line_size(definition)}", metres, f"{many}{paces_text(definition.width_m)}")


def _size(place: Place) -> SizeView:
    if place.kind == "circle":
        across = place.across_m
        return SizeView(place.name, f"{yards_text(across)} across", f"{across:.1f} m across", paces_text(across))
    paces = f"{round(place.across_m / PACE_M)} x {round(place.up_m / PACE_M)} paces"
    metres = f"{place.across_m:.1f} x {place.up_m:.1f} m"
    return SizeView(place.name, size_yards(place.across_m, place.up_m), metres, paces)


def _rota(part: FittedPart, rota: PartRota, sides: Sequence[Side], tonight: Tonight, names: bool) -> RotaView:
    note = told_tonight(rota.note, part.copies[0].setup.practice, sides)
    return rota_view(part, replace(rota, note=note), sides, tonight, names=names)


def _question(question: Question) -> AskView:
    return AskView(question.capability, question.ask, question.look_for)


def _forecast(forecast: Forecast | None, wanted: tuple[float, float] | None) -> tuple[ForecastRow, ...]:
    """A row for each measure that has an axis; nobody waiting is not worth a row."""
    if forecast is None:
        return ()
    found = dict(forecast.figures)
    rows = (_row(name, found[name], wanted if name == "success" else None) for name in AXES if name in found)
    return tuple(row for row in rows if row.name != "waiting_share" or row.one_block.p95 > 0)


def _row(name: str, made: Figure, wanted: tuple[float, float] | None) -> ForecastRow:
    axis = AXES[name]
    text = band_text(made.one_block, axis.scale)
    return ForecastRow(name, axis, made.value, made.low, made.high, made.unit, made.per, made.one_block, text, wanted)


def band_text(band: Band, scale: float = 1.0) -> str:
    """'3 (1–8)': the middle value of one block and the span of nine blocks in ten."""
    return f"{figure(band.p50 * scale)} ({figure(band.p5 * scale)}–{figure(band.p95 * scale)})"


def _forecast_note(forecast: Forecast | None) -> str:
    if forecast is None:
        return ""
    minutes = forecast.simulated_s / 60
    sure = "" if forecast.settled else " Still rough."
    block = minutes_text(forecast.block_s / 60)
    return f"{minutes:.0f} simulated minutes, seed {forecast.seed}; one block of {block}.{sure}"
