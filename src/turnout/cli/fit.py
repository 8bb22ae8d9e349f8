"""turnout fit"""

from pathlib import Path

from turnout.cli.answer import NO, Answer, answering
from turnout.cli.progress import progress
from turnout.cli.say import fit_text, range_text
from turnout.evening.fits import fit_evening, fit_plain, fits_for
from turnout.evening.load import Evening, load_evening, with_facts
from turnout.evening.values import players_range


def run(
    session: str,
    *,
    tonight: Path | None,
    players: str | None,
    space: str | None,
    minutes: str | None,
    seed: str,
    json: bool,
) -> None:
    """Fit one turnout or a range of them; exit 1 when it does not fit (of a range: when any does not)."""
    with answering("fit", json=json, seed=seed) as answer:
        evening = load_evening(session, tonight=tonight, seed=answer.seed or 0)
        evening = with_facts(evening, space=space, minutes=minutes)
        turnouts = players_range(players) if players is not None else None
        if turnouts is not None and len(turnouts) > 1:
            fit_range_into(answer, evening, turnouts)
        else:
            fit_one_into(answer, evening.at(turnouts[0]) if turnouts else evening)


def fit_one_into(answer: Answer, evening: Evening) -> None:
    """Answer for one turnout."""
    fitted = fit_evening(evening)
    answer.inputs_hash = evening.inputs_hash
    answer.body = {**fit_plain(fitted), "players": evening.tonight.players}
    answer.text = fit_text(fitted)
    answer.code = 0 if fitted.fitted.fits else NO


def fit_range_into(answer: Answer, evening: Evening, turnouts: range) -> None:
    """Answer for every turnout of a range."""
    with progress() as tell:
        fits = fits_for(evening, turnouts, tell)
    answer.inputs_hash = evening.inputs_hash
    answer.body = {"fits": fits}
    answer.text = range_text(fits)
    answer.code = 0 if all(fit["fits"] for fit in fits.values()) else NO
