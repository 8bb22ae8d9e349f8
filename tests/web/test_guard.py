"""The desk answers its own browser only."""

import pytest
from starlette.applications import Starlette
from starlette.responses import PlainTextResponse
from starlette.routing import Route
from starlette.testclient import TestClient

from turnout.web.guard import Guard, Pass

ALLOWED = Pass(port=8123, token="start-token", secret="cookie-secret")
COOKIE = {"cookie": f"{ALLOWED.cookie}={ALLOWED.secret}"}
ORIGIN = {"origin": "http://127.0.0.1:8123"}


@pytest.fixture
def client() -> TestClient:
    async def home(request):
        return PlainTextResponse("the evening")

    app = Starlette(routes=[Route("/", home, methods=["GET", "POST"])])
    return TestClient(Guard(app, allowed=ALLOWED), base_url="http://127.0.0.1:8123", follow_redirects=False)


@pytest.mark.parametrize("host", ["127.0.0.1:8123", "localhost:8123", "[::1]:8123"])
def test_own_hosts_are_served(client, host):
    assert client.get("/", headers={**COOKIE, "host": host}).text == "the evening"


@pytest.mark.parametrize(
    "host", ["evil.example", "evil.example:8123", "127.0.0.1", "127.0.0.1:8124", "localhost.evil:8123", ""]
)
def test_foreign_hosts_are_refused_even_with_the_cookie(client, host):
    answer = client.get("/", headers={**COOKIE, "host": host})
    assert answer.status_code == 421
    assert "evening" not in answer.text


def test_without_cookie_nothing_is_shown(client):
    answer = client.get("/")
    assert answer.status_code == 401
    assert "start token" in answer.text


@pytest.mark.parametrize("start", ["", "wrong", "start-token2", "cookie-secret", "é"])
def test_a_wrong_token_opens_nothing(client, start):
    answer = client.get("/", params={"start": start})
    assert answer.status_code == 401
    assert "set-cookie" not in answer.headers


def test_the_start_token_becomes_a_strict_cookie(client):
    answer = client.get("/?start=start-token")
    assert answer.status_code == 200
    assert "the evening" not in answer.text
    cookie = answer.headers["set-cookie"].lower()
    assert "httponly" in cookie and "samesite=strict" in cookie and "start-token" not in cookie
    assert client.get("/").text == "the evening"


@pytest.mark.parametrize(
    "origin", ["http://evil.example", "null", "https://127.0.0.1:8123", "http://localhost:8123", ""]
)
def test_changes_from_elsewhere_are_refused(client, origin):
    assert client.post("/", headers={**COOKIE, "origin": origin}).status_code == 403


def test_a_change_without_origin_is_refused(client):
    assert client.post("/", headers=COOKIE).status_code == 403


def test_a_change_from_the_own_page_needs_the_cookie_too(client):
    assert client.post("/", headers=ORIGIN).status_code == 401
    assert client.post("/", headers={**ORIGIN, **COOKIE}).text == "the evening"


def test_every_answer_carries_the_policy(client):
    for answer in (client.get("/"), client.get("/", headers=COOKIE), client.get("/", headers={"host": "evil"})):
        policy = answer.headers["content-security-policy"]
        assert "default-src 'none'" in policy and "unsafe" not in policy
        assert answer.headers["x-content-type-options"] == "nosniff"


def test_the_start_token_is_no_way_into_a_change(client):
    assert client.post("/?start=start-token", headers=ORIGIN).status_code == 401
