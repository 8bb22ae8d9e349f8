"""What the desk hands out: replays, the cards and the whole pack."""

from fastapi.responses import HTMLResponse, PlainTextResponse, Response

from turnout.evening.pack import pack_contents, zipped
from turnout.evening.replays import replay_files_of
from turnout.evening.views import view_of
from turnout.web.desk import Answer


def cards(answer: Answer) -> Response:
    """The cards as one PDF, with the forecasts there are so far."""
    if not answer.fitted.fitted.fits:
        return no_evening()
    from turnout.show.paper import cards_pdf

    names = bool(answer.fitted.evening.tonight.labels)
    pdf = cards_pdf(view_of(answer.fitted, answer.forecasts, names=names))
    return attached(pdf, "application/pdf", "turnout-cards.pdf")


def whole_pack(answer: Answer, *, seconds: float) -> Response:
    """Every file of the pack in one zip; plays to the end what has not been played yet."""
    if not answer.fitted.fitted.fits:
        return no_evening()
    return attached(zipped(pack_contents(answer.fitted, seconds=seconds)), "application/zip", "turnout-evening.zip")


REPLAY_KINDS = {"replay.css": "text/css", "replay.js": "text/javascript"}


def replay_file(answer: Answer, index: int, file: str) -> Response:
    """One of the replay's files; the page itself when no file is named."""
    made = made_replay(answer, index)
    if file == "":
        return HTMLResponse(made["replay.html"])
    if file not in REPLAY_KINDS:
        return PlainTextResponse("There is no such file in this replay.\n", status_code=404)
    return Response(made[file], media_type=REPLAY_KINDS[file])


def made_replay(answer: Answer, index: int) -> dict[str, str]:
    """The replay's files, made once for each answer."""
    with answer.recording:
        if index not in answer.replays:
            view = view_of(answer.fitted, answer.forecasts)
            answer.replays[index] = replay_files_of(answer.fitted, view, index)
    return answer.replays[index]


def no_evening() -> Response:
    """There is nothing to hand out."""
    return PlainTextResponse("The session does not fit tonight, so there is nothing to print.\n", status_code=409)


def attached(content: bytes, kind: str, name: str) -> Response:
    """A file to keep."""
    return Response(content, media_type=kind, headers={"content-disposition": f'attachment; filename="{name}"'})
