"""The desk's addresses: one page, its changes, the forecasts as they come in, replays and the pack."""

import json
from collections.abc import AsyncIterator
from pathlib import Path
from urllib.parse import parse_qs

from fastapi import FastAPI, Request, Response
from fastapi.responses import FileResponse, HTMLResponse, PlainTextResponse, RedirectResponse, StreamingResponse
from fastapi.staticfiles import StaticFiles
from starlette.concurrency import iterate_in_threadpool, run_in_threadpool

from turnout.evening.forecasts import to_be_compiled
from turnout.problems import BadInput, Problem
from turnout.web.desk import Answer, Desk
from turnout.web.guard import Guard, Pass
from turnout.web.page import FIELDS, forecast_html, page_html

STATIC = Path(__file__).parent / "static"
LARGEST_FORM = 4096  # bytes; the form has three short fields
COMPILING = "The simulator is being compiled, once after it is installed or changed: about a minute."
FROM_SCRIPT = "x-turnout-page"  # set by the page's own script, which takes the page in place of a redirect


def create_app(desk: Desk, allowed: Pass) -> Guard:
    """The desk as an ASGI app, guarded."""
    app = FastAPI(openapi_url=None, docs_url=None, redoc_url=None)
    app.mount("/static", StaticFiles(directory=str(STATIC)), name="static")
    add_page(app, desk)
    add_forecasts(app, desk)
    add_downloads(app, desk)
    return Guard(app, allowed=allowed)


def add_page(app: FastAPI, desk: Desk) -> None:
    """The page itself and the one way to change it."""

    @app.get("/", response_class=HTMLResponse)
    def page(wait: bool = False) -> HTMLResponse:
        if wait:  # without a script the forecasts are waited for
            list(desk.play(desk.answer, lambda: False))
        return HTMLResponse(page_html(desk.answer))

    @app.get("/favicon.ico")
    def icon() -> FileResponse:  # what browsers ask for where a page, such as a replay, names no icon
        return FileResponse(str(STATIC / "tally.svg"), media_type="image/svg+xml")

    @app.post("/tonight")
    async def change(request: Request) -> Response:
        typed: dict[str, str] = {}
        try:
            typed = await typed_fields(request)
            answer = await run_in_threadpool(lambda: desk.change(**typed))
        except BadInput as error:
            return HTMLResponse(page_html(desk.answer, error.problems, typed), status_code=422)
        if FROM_SCRIPT in request.headers:
            return HTMLResponse(await run_in_threadpool(page_html, answer))
        return RedirectResponse("/", status_code=303)


async def typed_fields(request: Request) -> dict[str, str]:
    """The form's fields that were filled in; a pressed button's `to` stands for the turnout. Raises BadInput."""
    body = b""
    async for piece in request.stream():
        body += piece
        if len(body) > LARGEST_FORM:
            raise BadInput([Problem("players", None, None, f"{len(body)} bytes", "a form of three short fields")])
    try:
        given = {name: values[-1] for name, values in parse_qs(body.decode(), max_num_fields=8).items()}
    except ValueError:
        raise BadInput([Problem("players", None, None, "another form", "the three fields of this page")]) from None
    if "to" in given:
        return {"players": given["to"]}
    return {name: given[name] for name in FIELDS if name in given}


def add_forecasts(app: FastAPI, desk: Desk) -> None:
    """Forecasts part by part, as server-sent events: a quick answer first, then the settled one."""

    @app.get("/forecasts")
    async def forecasts(request: Request, revision: int) -> StreamingResponse:
        return StreamingResponse(events(request, desk, revision), media_type="text/event-stream")


async def events(request: Request, desk: Desk, revision: int) -> AsyncIterator[str]:
    """One event a forecast, then `done`; `stale` when the evening has been changed meanwhile."""
    answer = desk.answer
    gone: list[bool] = []
    if answer.revision == revision:
        if await run_in_threadpool(to_be_compiled):
            yield event("wait", {"sentence": COMPILING})
        try:
            async for index, made in iterate_in_threadpool(desk.play(answer, lambda: bool(gone))):
                yield event("part", {"index": index, "html": forecast_html(answer, index), "settled": made.settled})
                if await request.is_disconnected():
                    return
        finally:
            gone.append(True)
    yield event("done" if desk.answer is answer and answer.revision == revision else "stale", {})


def event(name: str, data: dict) -> str:
    """One server-sent event."""
    return f"event: {name}\ndata: {json.dumps(data)}\n\n"


def add_downloads(app: FastAPI, desk: Desk) -> None:
    """Replays and the pack."""
    from turnout.web import downloads

    @app.get("/replay/{part}/")
    def replay(part: int) -> Response:
        return of_part(desk.answer, part, "")

    @app.get("/replay/{part}/{file}")
    def replay_file(part: int, file: str) -> Response:
        return of_part(desk.answer, part, file)

    @app.get("/pack/cards.pdf")
    def cards() -> Response:
        return downloads.cards(desk.answer)

    @app.get("/pack/evening.zip")
    def evening() -> Response:
        return downloads.whole_pack(desk.answer, seconds=desk.seconds)


def of_part(answer: Answer, part: int, file: str) -> Response:
    """A file of the replay of part 1, 2, ...; a plain sentence when there is no such part."""
    from turnout.web.downloads import replay_file

    if not 1 <= part <= len(answer.fitted.fitted.parts):
        return PlainTextResponse("There is no such part tonight.\n", status_code=404)
    return replay_file(answer, part - 1, file)
