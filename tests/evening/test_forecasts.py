"""Forecasts are played once and then remembered, and only under what they depend on."""

import pytest

from turnout.evening.fits import fit_evening
from turnout.evening.forecasts import evening_plain, forecast_evening, forecast_setup
from turnout.evening.load import load_evening
from turnout.evening.single import load_practice, set_up, usual_age
from turnout.problems import BadInput
from turnout.study import forecast as study
from turnout.study.model import Forecast

WHO = {"age": 12, "level": "learning", "seed": 7, "seconds": 600.0}


@pytest.fixture
def played(monkeypatch, tmp_path) -> list[dict]:
    """Every question the simulator is asked; it answers at once."""
    asked: list[dict] = []

    def forecast(setup, *, progress, stop, **question):
        asked.append(question)
        progress(1.0)
        seconds = question["seconds"]
        return Forecast(setup.practice.name, seconds, question["seed"], 4, question["block_s"], (), (), (), True, "x")

    monkeypatch.setenv("TURNOUT_CACHE", str(tmp_path))
    monkeypatch.setattr(study, "forecast", forecast)
    return asked


def test_the_same_question_is_played_once(played):
    setup = load_practice("harbour-square", players=11, steps=None)
    assert forecast_setup(setup, **WHO) == forecast_setup(setup, **WHO)
    assert len(played) == 1


@pytest.mark.parametrize("other", [{"age": 13}, {"level": "strong"}, {"seed": 8}, {"seconds": 900.0}, {"waiting": 1}])
def test_another_question_is_played_anew(played, other):
    setup = load_practice("harbour-square", players=11, steps=None)
    forecast_setup(setup, **WHO)
    forecast_setup(setup, **{**WHO, **other})
    assert len(played) == 2


def test_another_size_count_rule_or_simulator_is_played_anew(played, monkeypatch):
    forecast_setup(load_practice("harbour-square", players=11, steps=None), **WHO)
    forecast_setup(load_practice("harbour-square", players=12, steps=None), **WHO)
    forecast_setup(load_practice("harbour-square", players=11, steps="One touch on the edge"), **WHO)
    forecast_setup(load_practice("harbour-square", players=11, steps="More room"), **WHO)
    assert len(played) == 4
    monkeypatch.setattr(study, "model_stamp", lambda: "another simulator")
    forecast_setup(load_practice("harbour-square", players=11, steps=None), **WHO)
    assert len(played) == 5


def test_what_was_stopped_is_not_kept(played):
    setup = load_practice("harbour-square", players=11, steps=None)
    forecast_setup(setup, **WHO, stop=lambda: True)
    forecast_setup(setup, **WHO)
    assert len(played) == 2


def test_every_part_is_forecast_in_order_and_progress_only_rises(played):
    shares: list[float] = []
    answer = fit_evening(load_evening(None))
    made = forecast_evening(answer, seconds=600.0, tell=lambda _stage, share: shares.append(share))
    told = evening_plain(answer, made)
    assert [one["practice"] for one in told] == [part.practice.key for part in answer.evening.session.parts]
    assert shares == sorted(shares) and shares[0] >= 0 and shares[-1] == 1.0
    assert [one["block_s"] for one in told] == [60 * min(part.blocks) for part in answer.fitted.parts]


def test_a_practice_grows_with_its_players():
    small, large = (load_practice("harbour-square", players=count, steps=None) for count in (8, 18))
    assert small.players == 8 and large.players == 18
    assert small.field.across_m < large.field.across_m


def test_too_many_for_one_copy_is_told():
    with pytest.raises(BadInput, match="in one copy"):
        load_practice("harbour-square", players=24, steps=None)


def test_steps_are_taken_by_name():
    setup = load_practice("harbour-square", players=None, steps="more room, One touch on the edge")
    assert set(setup.practice.taken) == {"More room", "One touch on the edge"}
    with pytest.raises(BadInput) as caught:
        load_practice("harbour-square", players=None, steps="More rooom")
    assert caught.value.problems[0].nearest == "More room"


def test_as_designed_without_a_turnout():
    practice = load_practice("harbour-square", players=None, steps=None).practice
    assert set_up(practice, None).players == sum(group.count for group in practice.groups)


def test_usual_age():
    assert usual_age((10, 16)) == 12 and usual_age((7, 9)) == 9 and usual_age((14, 18)) == 14
