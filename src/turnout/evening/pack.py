"""The evening as files: cards to print, a replay of each part, the fits of every likely turnout, the forecasts."""

import io
import json
import zipfile
from pathlib import Path

from turnout import __version__
from turnout.evening.files import ready_folder, write_folder
from turnout.evening.fits import FittedEvening, fits_for
from turnout.evening.forecasts import SECONDS, Tell, evening_plain, forecast_evening, nobody, shared
from turnout.evening.replays import replay_pages
from turnout.evening.values import LEAST, MOST
from turnout.evening.views import evening_text, view_of
from turnout.problems import TurnoutError

SPARE = 3  # turnouts beyond the expected ones, either way, that the pack carries fits for
STAGES = 4


class DoesNotFit(TurnoutError):
    """The session does not fit tonight; `answer` says why and what would do."""

    def __init__(self, answer: FittedEvening):
        self.answer = answer
        super().__init__("; ".join(answer.fitted.why()))


def likely_turnouts(expected: tuple[int, int]) -> range:
    """From 3 below the least expected turnout to 3 above the most, inside what can be asked at all."""
    return range(max(LEAST, expected[0] - SPARE), min(MOST, expected[1] + SPARE) + 1)


def pack_contents(answer: FittedEvening, *, seconds: float = SECONDS, tell: Tell = nobody) -> dict[str, bytes]:
    """Every file of the pack by name; raises DoesNotFit when there is no evening to pack."""
    if not answer.fitted.fits:
        raise DoesNotFit(answer)
    forecasts = forecast_evening(answer, seconds=seconds, tell=shared(tell, 0, STAGES))
    view = view_of(answer, dict(enumerate(forecasts)), names=bool(answer.evening.tonight.labels))
    replays = replay_pages(answer, view, tell=shared(tell, 1, STAGES))
    turnouts = likely_turnouts(answer.evening.session.expected)
    fits = fits_for(answer.evening, turnouts, shared(tell, 2, STAGES))
    tell("Printing the cards", 3 / STAGES)
    from turnout.show.paper import cards_pdf

    return {
        "cards.pdf": cards_pdf(view),
        **{f"replay-{key}.html": page.encode() for key, page in replays.items()},
        "fits.json": as_json("fit", answer, {"fits": fits}),
        "forecast.json": as_json("forecast", answer, {"parts": evening_plain(answer, forecasts)}),
        "evening.txt": evening_text(view).encode(),
    }


def write_pack(answer: FittedEvening, out: Path, *, seconds: float = SECONDS, tell: Tell = nobody) -> list[Path]:
    """Write the pack into a folder, all of it or nothing; raises DoesNotFit or BadInput."""
    ready_folder(out)
    return write_folder(out, pack_contents(answer, seconds=seconds, tell=tell))


def zipped(contents: dict[str, bytes]) -> bytes:
    """The pack as one zip file, with the same bytes for the same contents."""
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w", zipfile.ZIP_DEFLATED) as folder:
        for name, content in contents.items():
            # a fixed date: a zip should change only when what is in it does
            folder.writestr(zipfile.ZipInfo(name, (2000, 1, 1, 0, 0, 0)), content, zipfile.ZIP_DEFLATED)
    return buffer.getvalue()


def as_json(verb: str, answer: FittedEvening, body: dict) -> bytes:
    """A verb's object as a file: the same form as `--json` prints."""
    evening = answer.evening
    head = {"turnout": __version__, "verb": verb, "seed": evening.seed, "inputs_hash": evening.inputs_hash}
    return (json.dumps({**head, **body}, ensure_ascii=False, indent=1) + "\n").encode()
