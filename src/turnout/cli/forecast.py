"""turnout forecast"""

from dataclasses import replace

from turnout.cli.answer import NO, Answer, answering
from turnout.cli.progress import Progress, progress
from turnout.cli.say import fit_text, forecast_text
from turnout.evening import shelf
from turnout.evening.fits import fit_evening
from turnout.evening.forecasts import evening_plain, forecast_evening, forecast_plain
from turnout.evening.load import load_evening, with_facts
from turnout.evening.single import forecast_practice, load_practice, usual_age
from turnout.evening.stamp import content_hash
from turnout.evening.values import age_value, level_value, players_value, refuse, seconds_value


def run(
    what: str,
    *,
    players: str | None,
    age: str | None,
    level: str | None,
    steps: str | None,
    seconds: str,
    seed: str,
    json: bool,
) -> None:
    """Forecast a practice at a turnout, or every part of a session."""
    with answering("forecast", json=json, seed=seed) as answer, progress() as tell:
        path = shelf.find(what, ("practice", "session"), name="practice or session")
        given = {
            "players": None if players is None else players_value(players),
            "age": None if age is None else age_value(age),
            "level": None if level is None else level_value(level),
        }
        span_s = seconds_value(seconds)
        if shelf.kind_of(path) == "session":
            if steps is not None:
                refuse("--steps", steps, "a practice to take them in; a session's parts name their own steps")
            session_into(answer, str(path), given, span_s, tell)
        else:
            practice_into(answer, str(path), given, steps, span_s, tell)


def practice_into(answer: Answer, path: str, given: dict, steps: str | None, seconds: float, tell: Progress) -> None:
    """Answer for one practice."""
    setup = load_practice(path, players=given["players"], steps=steps)
    age, level = given["age"] or usual_age(setup.practice.ages), given["level"] or "learning"
    made = forecast_practice(setup, age=age, level=level, seed=answer.seed or 0, seconds=seconds, tell=tell)
    answer.inputs_hash = content_hash(setup, age, level, seconds)
    answer.body = {**forecast_plain(made, setup), "age": f"U{age}", "level": level}
    answer.text = forecast_text(made, players=setup.players, age=age, level=level)


def session_into(answer: Answer, path: str, given: dict, seconds: float, tell: Progress) -> None:
    """Answer for every part of a session, fitted first; exit 1 when it does not fit."""
    evening = load_evening(path, seed=answer.seed or 0)
    players = given["players"]
    evening = with_facts(evening, players=None if players is None else str(players))
    changes = {name: given[name] for name in ("age", "level") if given[name] is not None}
    evening = replace(evening, tonight=replace(evening.tonight, **changes))
    fitted = fit_evening(evening)
    answer.inputs_hash = content_hash(evening.session, evening.tonight, seconds)
    if not fitted.fitted.fits:
        answer.text, answer.code, answer.body = fit_text(fitted), NO, {"fits": False, "parts": []}
        return
    made = forecast_evening(fitted, seconds=seconds, tell=tell)
    facts = {"players": evening.tonight.players, "age": f"U{evening.tonight.age}", "level": evening.tonight.level}
    answer.body = {**facts, "parts": evening_plain(fitted, made)}
    texts = [forecast_text(one, players=None, age=evening.tonight.age, level=evening.tonight.level) for one in made]
    answer.text = "\n\n".join(texts)
