"""The page says what was computed, in place, with or without a script."""

import re

import pytest
from starlette.testclient import TestClient
from toy_practices import overload

from turnout.club.tonight import Space, Tonight
from turnout.evening.load import Evening
from turnout.session.model import Part, Session
from turnout.study.model import Band, Figure, Forecast
from turnout.web import desk as desk_module
from turnout.web.app import create_app
from turnout.web.desk import Desk
from turnout.web.guard import Pass

ALLOWED = Pass(port=8123)
LABELS = tuple(f"Player {letter}" for letter in "ABCDEFGHIJKLMN")
SESSION = Session("toy", "Toy evening", 12, "keep the ball", 30.0, (11, 15), (Part(overload(), 20.0),))
TONIGHT = Tonight(14, Space("third of 3G", 31.8, 64.0), minutes=30.0, labels=LABELS)
MEAN = Figure(3.0, 2.8, 3.2, "passes", "side", Band(1, 2, 3, 4, 8))


def played(seconds: float) -> Forecast:
    figures = (("passes_in_a_row", MEAN),)
    return Forecast("toy-overload", seconds, 7, int(seconds / 180), 180.0, figures, (), (), seconds > 1000, "toy")


@pytest.fixture
def desk(monkeypatch) -> Desk:
    monkeypatch.setattr(desk_module, "forecast_part", lambda answer, part, *, seconds, tell, stop: played(seconds))
    return Desk(Evening(SESSION, TONIGHT))


@pytest.fixture
def client(desk) -> TestClient:
    headers = {"cookie": f"{ALLOWED.cookie}={ALLOWED.secret}", "origin": "http://127.0.0.1:8123"}
    app = create_app(desk, ALLOWED)
    return TestClient(app, base_url="http://127.0.0.1:8123", headers=headers, follow_redirects=False)


def test_the_page_shows_the_fitted_evening(client):
    page = client.get("/").text
    assert "Toy evening" in page and "What gave way for 14" in page
    assert "Player A" in page
    assert '<input id="players"' in page and 'value="14"' in page


def test_nothing_on_the_page_is_inline_or_from_outside(client):
    page = client.get("/").text
    assert not re.search(r"<script(?![^>]*\bsrc=)", page)
    assert not re.search(r"<style|\sstyle=|\son[a-z]+=|javascript:", page)
    addresses = re.findall(r"(?:href|src|action)=\"([^\"]+)\"", page)
    assert addresses and all(address.startswith(("/", "#")) for address in addresses)


def test_every_file_the_page_names_is_served(client):
    page = client.get("/").text
    for address in set(re.findall(r"(?:href|src)=\"(/static/[^\"]+)\"", page)):
        assert client.get(address).status_code == 200


def test_a_change_without_script_leads_back_to_the_page(client, desk):
    answer = client.post("/tonight", data={"to": "13", "players": "14"})
    assert answer.status_code == 303 and answer.headers["location"] == "/"
    assert desk.answer.fitted.evening.tonight.players == 13
    assert "What gave way for 13" in client.get("/").text


def test_a_change_from_the_script_gets_the_page(client):
    answer = client.post("/tonight", data={"players": "13", "minutes": "25"}, headers={"x-turnout-page": "1"})
    assert answer.status_code == 200 and "What gave way for 13" in answer.text
    assert 'data-revision="2"' in answer.text


@pytest.mark.parametrize(
    ("typed", "said"),
    [({"players": "thirteen"}, "whole number"), ({"players": "99"}, "Nearest: 24"), ({"minutes": "soon"}, "minutes"),
     ({"space": "the moon"}, "third of 3G"), ({"players": "<b>1</b>"}, "&lt;b&gt;")],
)  # fmt: skip
def test_nonsense_is_told_at_its_field_and_changes_nothing(client, desk, typed, said):
    answer = client.post("/tonight", data=typed)
    assert answer.status_code == 422
    assert said in answer.text and 'aria-invalid="true"' in answer.text
    assert "<b>1</b>" not in answer.text
    assert desk.answer.revision == 1


def test_a_huge_form_is_refused(client, desk):
    assert client.post("/tonight", data={"players": "1" * 50_000}).status_code == 422
    assert client.post("/tonight", data={f"x{number}": "1" for number in range(100)}).status_code == 422
    assert desk.answer.revision == 1


def test_the_same_values_change_nothing(client, desk):
    client.post("/tonight", data={"players": "14"})
    assert desk.answer.revision == 1


def test_forecasts_come_quick_then_settled(client):
    text = client.get("/forecasts?revision=1").text
    assert text.count("event: part") == 2
    assert '"settled": false' in text and '"settled": true' in text
    assert text.index('"settled": false') < text.index('"settled": true')
    assert "event: done" in text
    assert "(1–8)" in client.get("/").text


def test_an_old_page_is_told_that_it_is_old(client):
    client.post("/tonight", data={"players": "12"})
    text = client.get("/forecasts?revision=1").text
    assert "event: stale" in text and "event: part" not in text


def test_play_stops_when_the_evening_changes(desk):
    running = desk.play(desk.answer, lambda: False)
    next(running)
    desk.change(players="12")
    assert list(running) == []


def test_without_a_script_the_forecasts_can_be_waited_for(client):
    assert "(1–8)" in client.get("/?wait=1").text


def test_what_does_not_fit_says_what_would_do(client, desk):
    answer = client.post("/tonight", data={"space": "15 x 15 m"}, headers={"x-turnout-page": "1"})
    fitted = desk.answer.fitted.fitted
    assert not fitted.fits and fitted.smallest_change
    assert "It does not fit" in answer.text and fitted.smallest_change in answer.text
    assert client.get("/forecasts?revision=2").text.count("event: part") == 0


def test_a_part_that_is_not_there(client):
    assert client.get("/replay/7/").status_code == 404
    assert client.get("/replay/x/").status_code == 422
