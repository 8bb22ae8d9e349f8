"""The evening as every face reads it, and as plain text."""

from collections.abc import Mapping

from turnout.evening.fits import FittedEvening
from turnout.show.evening import EveningView, PartView, RotaView
from turnout.study.model import Forecast


def view_of(answer: FittedEvening, forecasts: Mapping[int, Forecast], *, names: bool = True) -> EveningView:
    """The fitted evening with the forecasts there are so far, by the part's place in `fitted.parts`."""
    from turnout.show.view import evening_view

    assert answer.layout is not None, "an evening that does not fit has no view"
    by_part = {answer.fitted.parts[place].index: made for place, made in forecasts.items()}
    return evening_view(answer.fitted, answer.rotas, answer.layout, by_part, names=names)


def evening_text(view: EveningView) -> str:
    """The evening sheet as plain text: to read out, to send, to keep."""
    head = [f"{view.title}, {view.players} players, {view.start} to {view.end}", f"Aim: {view.aim}", f"Kit: {view.kit}"]
    parts = [line for part in view.parts for line in ("", *part_text(part))]
    why = ["", "What was chosen and what gave way", *(f"- {sentence}" for sentence in view.why)]
    care = ["", "Care", *(f"- {row.do_now} {row.why} ({row.source})" for row in view.care)]
    return "\n".join([*head, *parts, *why, *care]) + "\n"


def part_text(part: PartView) -> list[str]:
    """One part: when, how it is set up, its sentences, its rota, its forecast."""
    many = [f"{part.copies_text}."] if part.copies_text else []
    rules = [f"{number}. {sentence}" for number, sentence in enumerate(part.rules, start=1)]
    lines = [f"{part.start} {part.name}, {part.blocks}", *many, part.set_up, *part.people, *rules]
    forecast = [f"{row.axis.label}: {row.text}" for row in part.forecast]
    return [*lines, *(rota_text(part.rota) if part.rota else ()), *forecast, part.forecast_note]


def rota_text(rota: RotaView) -> list[str]:
    """One line a block and copy: every group with its players."""
    lines, block = [], ""
    for row in rota.rows:
        block = row.block or block
        head = f"Block {block}" + (f", copy {row.copy}" if row.copy else "")
        cells = [f"{words}: {cell}" for (_, words), cell in zip(rota.columns, row.cells, strict=True) if cell]
        lines.append(f"{head}. {'; '.join(cells)}.")
    return lines
