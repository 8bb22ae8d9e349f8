"""Who may talk to the desk: this computer's own browser, shown by Host, Origin and a start token.

Loopback alone is no protection: any page open in the same browser can send requests to it, and a name somebody
else owns can be pointed at 127.0.0.1. So every request must name the desk as its host, carry the cookie that only
the first address hands out, and every change must come from the desk's own pages.
"""

import hmac
import secrets
from dataclasses import dataclass, field

from starlette.datastructures import Headers, QueryParams
from starlette.requests import cookie_parser
from starlette.responses import HTMLResponse, PlainTextResponse
from starlette.types import ASGIApp, Message, Receive, Scope, Send

NAMES = ("localhost", "127.0.0.1", "[::1]")
READS = ("GET", "HEAD")

HEADERS = (
    (
        b"content-security-policy",
        b"default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; "
        b"form-action 'self'; base-uri 'none'; frame-ancestors 'none'",
    ),
    (b"x-content-type-options", b"nosniff"),
    # 'same-origin' rather than 'no-referrer': the latter would make browsers send 'Origin: null' with forms
    (b"referrer-policy", b"same-origin"),
    (b"cross-origin-opener-policy", b"same-origin"),
    (b"cross-origin-resource-policy", b"same-origin"),
    (b"cache-control", b"no-store"),
)

OPENING = """<!doctype html><html lang="en-GB"><head><meta charset="utf-8"><title>Turnout</title>
<link rel="icon" href="/static/tally.svg">
<meta http-equiv="refresh" content="0;url=/"></head><body><p><a href="/">Open the desk</a></p></body></html>"""


@dataclass(frozen=True)
class Pass:
    """The port the desk listens on, the token of its first address and the secret of its cookie."""

    port: int
    token: str = field(default_factory=lambda: secrets.token_urlsafe(24))
    secret: str = field(default_factory=lambda: secrets.token_urlsafe(24))

    @property
    def cookie(self) -> str:
        # cookies are shared by all ports of a host, so the name carries the port
        return f"turnout_desk_{self.port}"

    @property
    def hosts(self) -> tuple[str, ...]:
        return tuple(f"{name}:{self.port}" for name in NAMES)

    @property
    def first_address(self) -> str:
        return f"http://127.0.0.1:{self.port}/?start={self.token}"


class Guard:
    """Lets through what comes from the desk's own browser and answers the rest in one sentence."""

    def __init__(self, app: ASGIApp, *, allowed: Pass):
        self.app = app
        self.allowed = allowed

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] == "lifespan":
            return await self.app(scope, receive, send)
        if scope["type"] != "http":
            return None
        answer = self._answer(scope) or self.app

        async def send_with_headers(message: Message) -> None:
            if message["type"] == "http.response.start":
                own = {name.lower() for name, _ in message["headers"]}
                message["headers"] = [*message["headers"], *(pair for pair in HEADERS if pair[0] not in own)]
            await send(message)

        await answer(scope, receive, send_with_headers)

    def _answer(self, scope: Scope) -> ASGIApp | None:
        """The refusal or the opening page; None lets the request through."""
        headers = Headers(scope=scope)
        if headers.getlist("host") not in [[host] for host in self.allowed.hosts]:
            return refusal(421, "This desk answers to localhost, 127.0.0.1 and [::1] with its own port only.")
        if scope["method"] not in READS and not self._own_page(headers):
            return refusal(403, "A change must come from a page of this desk.")
        if scope["method"] in READS and scope["path"] == "/" and self._has_token(scope):
            return self._opening()
        if not self._has_cookie(headers):
            return refusal(401, "Open the address that `turnout desk` printed: it carries the start token.")
        return None

    def _own_page(self, headers: Headers) -> bool:
        return headers.getlist("origin") == [f"http://{headers['host']}"]

    def _has_token(self, scope: Scope) -> bool:
        given = QueryParams(scope["query_string"]).get("start", "")
        return hmac.compare_digest(given.encode(), self.allowed.token.encode())

    def _has_cookie(self, headers: Headers) -> bool:
        given = cookie_parser(headers.get("cookie", "")).get(self.allowed.cookie, "")
        return hmac.compare_digest(given.encode(), self.allowed.secret.encode())

    def _opening(self) -> ASGIApp:
        # a page that leads on, not a redirect: a redirect begun on another site would not carry a Strict cookie
        page = HTMLResponse(OPENING)
        page.set_cookie(self.allowed.cookie, self.allowed.secret, httponly=True, samesite="strict", path="/")
        return page


def refusal(status: int, sentence: str) -> ASGIApp:
    """One sentence in plain text."""
    return PlainTextResponse(sentence + "\n", status_code=status)
