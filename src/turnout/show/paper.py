"""The evening sheet and a card for each part as one tagged PDF (PDF/UA-1), set by Typst."""

import json
from dataclasses import replace
from functools import cache
from importlib.resources import files
from typing import Any

from turnout.care import Caution
from turnout.show.drawing import Drawing
from turnout.show.evening import EveningView, ForecastRow, PartView, RotaView
from turnout.show.ink import Side
from turnout.show.key import key_svg, side_sign
from turnout.show.strips import strip, tally
from turnout.show.svg import svg
from turnout.show.words import figure, listed, minutes_text

CARD_PX, SHEET_PX = (302.0, 264.0, 227.0), (140.0, 106.0, 83.0)  # 96 px an inch; the smaller for crowded pages
FORECAST_ROWS = (
    "passes_in_a_row", "success", "touches_per_player_min", "regains_per_side_min", "distance_m_per_player_min",
    "waiting_share",
)  # fmt: skip
MOST_COLUMNS = 6  # of the rota, with names in them
EMERGENCY = {
    "title": "Emergency: 999 or 112",
    "lines": [
        "Gate for the ambulance", "Nearest defibrillator", "Who holds the contacts", "Who meets the ambulance",
        "Address or grid reference", "Heads counted: in, out",
    ],
}  # fmt: skip


def cards_pdf(view: EveningView) -> bytes:
    """The whole evening as paper: one A4 sheet, then one A4 card for each part."""
    return compile_pdf({**_document(view), "sheet": _sheet(view), "parts": [_card(part, view) for part in view.parts]})


def compile_pdf(data: dict[str, Any]) -> bytes:
    """Set the data through the template; raises what Typst raises when the template and data disagree."""
    import typst

    template = (files("turnout.show") / "paper.typ").read_bytes()
    source: dict[str, bytes] = {"main": template, "data.json": json.dumps(data, ensure_ascii=False).encode()}
    return typst.compile(  # type: ignore[call-overload, no-any-return]
        source, format="pdf", font_paths=_fonts(), ignore_system_fonts=True, pdf_standards=["ua-1"]
    )


@cache
def _fonts() -> list[str]:
    """Folders of the two families, from their packages: no font of the machine is used."""
    return [str(files(package) / "files") for package in ("font_source_serif_pro", "font_source_sans_pro")]


def _document(view: EveningView) -> dict[str, Any]:
    parts = listed([part.name for part in view.parts])
    return {"title": f"{view.title}: evening sheet and cards", "description": f"{parts}, for {view.players} players."}


def _sheet(view: EveningView) -> dict[str, Any]:
    when = f"{view.start}–{view.end}"
    why_no = "No names on this sheet, because it says when and where." if not view.names else "No club, date or place."
    heading = f"{view.date}, {when}" if view.date else f"{view.title}, {when}"
    under = [word for word in (view.club, view.age, view.aim, view.space, view.adults) if word]
    return {
        "when": heading,
        "under": " · ".join(under),
        "players": view.players,
        "tally": tally(view.players),
        "parts": [_row(part, 4 if len(view.parts) <= 4 else 2) for part in view.parts],
        "key": key_svg([without_line_cones(part.drawing) for part in view.parts], 700.0),
        "set_up": [f"{part.start} {part.name}: {part.set_up}" for part in view.parts if part.set_up],
        "kit": view.kit,
        "short": list(view.short),
        "gave_way": [f"{part.name}: {line}" for part in view.parts for line in part.gave_way],
        "care": [_caution(row) for row in view.care],
        "emergency": EMERGENCY if view.country in ("England", "Scotland", "Wales", "Northern Ireland") else _ABROAD,
        "foot": f"Attack up the page; north is up. {why_no}",
    }


_ABROAD = {**EMERGENCY, "title": "Emergency: your country’s number"}


def _row(part: PartView, rules: int) -> dict[str, Any]:
    more = f" All {len(part.rules)} sentences: card {part.number}." if len(part.rules) > rules else ""
    return {
        "name": part.name,
        "start": part.start,
        "minutes": minutes_text(part.minutes),
        "drawings": [_thumbnail(part.drawing, px) for px in SHEET_PX],
        "alt": _alt(part),
        "brief": " ".join((*(part.brief or part.people), *part.rules[:rules])) + more,
        "copies_text": part.copies_text,
        "sides": [{"sign": side_sign(side.side), "short": side.bibs} for side in part.sides if side.players],
        "balls": f"{part.balls} ball" + ("" if part.balls == 1 else "s"),
    }


def _thumbnail(drawing: Drawing, px: float) -> str:
    small = without_line_cones(drawing)
    return svg(small, width_px=px, max_height_px=px * 1.05, key=False, measures=False, names=False)


def without_line_cones(drawing: Drawing) -> Drawing:
    """A drawing for a thumbnail: cones along a line are setting out, and the card shows them."""
    return replace(drawing, marks=tuple(mark for mark in drawing.marks if mark.kind != "line cone"))


def _card(part: PartView, view: EveningView) -> dict[str, Any]:
    names = "First names, so no club, date or place." if view.names else "Numbers from the coach’s list, no names."
    return {
        "number": part.number,
        "of": part.of,
        "name": part.name,
        "under": f"Part {part.number} of {part.of} · {part.start} to {part.end} · {part.blocks}",
        "players": view.players,
        "tally": tally(view.players),
        "drawings": [svg(part.drawing, width_px=px, max_height_px=px * 1.5) for px in CARD_PX],
        "alt": _alt(part),
        "sizes": [{"name": size.name.capitalize(), **_fields(size, "yards", "metres", "paces")} for size in part.sizes],
        "set_up": part.set_up,
        "sides": [_side(side.side, side.bibs) for side in part.sides if side.players],
        "questions": [{"ask": q.ask, "look_for": _sentence(q.look_for)} for q in part.questions],
        "people": list(part.people),
        "rules": list(part.rules),
        "copies_text": part.copies_text,
        "rota": _rota(part.rota) if part.rota else None,
        "harder": [step.sentence for step in part.harder],
        "easier": [step.sentence for step in part.easier],
        "forecast": [_forecast(row) for row in part.forecast if row.name in FORECAST_ROWS],
        "forecast_note": _note(part),
        "care": [_caution(row) for row in part.care],
        "foot": names,
    }


def _note(part: PartView) -> str:
    wanted = " Shaded: what you want." if any(row.wanted for row in part.forecast) else ""
    return f"Middle value and nine blocks in ten.{wanted} {part.forecast_note}"


def _alt(part: PartView) -> str:
    return f"{part.drawing.title}. {part.drawing.desc}"


def _side(side: Side, bibs: str) -> dict[str, Any]:
    return {"sign": side_sign(side), "name": side.name, "bibs": bibs}


def _rota(rota: RotaView) -> dict[str, Any]:
    rota = _side_by_side(rota)
    return {
        "copies": rota.copies,
        "copy_word": "Copy",
        "note": rota.note,
        "columns": [{"sign": side_sign(side) if side else None, "words": words} for side, words in rota.columns],
        "rows": [_fields(row, "block", "start", "copy", "cells") for row in rota.rows],
    }


def _side_by_side(rota: RotaView) -> RotaView:
    """A few copies in the same bibs as columns of one row for each block; else as they are, a row for each copy."""
    playing = [n for n, (side, _) in enumerate(rota.columns) if side]
    same_bibs = not any(":" in row.copy for row in rota.rows)
    if rota.copies == 1 or not same_bibs or rota.copies * len(playing) > MOST_COLUMNS:
        return rota
    copies = range(rota.copies)
    columns = [(rota.columns[n][0], f"{copy + 1}: {rota.columns[n][1]}") for copy in copies for n in playing]
    waiting = [n for n in range(len(rota.columns)) if n not in playing]
    rows = []
    for first in range(0, len(rota.rows), rota.copies):
        block = rota.rows[first : first + rota.copies]
        cells = [block[copy].cells[n] for copy in copies for n in playing] + [block[0].cells[n] for n in waiting]
        rows.append(replace(block[0], copy="", cells=tuple(cells)))
    return replace(rota, columns=(*columns, *(rota.columns[n] for n in waiting)), rows=tuple(rows), copies=1)


def _forecast(row: ForecastRow) -> dict[str, Any]:
    middle, _, span = row.text.partition(" ")
    alt = f"{row.axis.label}: middle value {middle}, nine blocks in ten {span.strip('()')}"
    if row.wanted:
        alt += f", wanted {figure(row.wanted[0] * row.axis.scale)} to {figure(row.wanted[1] * row.axis.scale)}"
    drawn = strip(row.one_block, row.axis, width_px=102.0, wanted=row.wanted)
    return {"label": row.axis.label, "strip": drawn, "alt": alt, "middle": middle, "range": span}


def _caution(row: Caution) -> dict[str, Any]:
    return _fields(row, "do_now", "why", "source", "level")


def _fields(item: object, *names: str) -> dict[str, Any]:
    return {name: getattr(item, name) for name in names}


def _sentence(words: str) -> str:
    return words[:1].upper() + words[1:].rstrip(".") + "." if words else ""
