"""Forecasts kept on disk under the hash of what they were computed from."""

import json
from dataclasses import asdict
from pathlib import Path

from turnout.evening.files import read_or_none, write_whole
from turnout.play.kernel.compiling import cache_folder
from turnout.study.model import Band, Figure, Forecast

FORM = 1  # raise when the stored form changes: older entries are then simply not found


def forecast_to_plain(forecast: Forecast) -> dict:
    """A forecast as JSON values."""
    return asdict(forecast)


def forecast_from_plain(stored: dict) -> Forecast:
    """A forecast from JSON values; raises KeyError, TypeError or ValueError when they are not one."""
    figures = tuple((str(name), _figure(figure)) for name, figure in stored["figures"])
    by_role = tuple(
        (str(role), tuple((str(name), float(value)) for name, value in rows)) for role, rows in stored["by_role"]
    )
    ends = tuple((str(cause), int(count)) for cause, count in stored["ends"])
    return Forecast(**{**stored, "figures": figures, "by_role": by_role, "ends": ends})


def _figure(stored: dict) -> Figure:
    return Figure(**{**stored, "one_block": Band(**stored["one_block"])})


def recall(key: str, folder: Path | None = None) -> Forecast | None:
    """The forecast kept under `key`, or None; a damaged entry counts as none."""
    path = _entry(key, folder)

    def parse(content: bytes) -> Forecast:
        stored = json.loads(content)
        if stored["form"] != FORM or stored["key"] != key:
            raise ValueError("another form or another key")
        return forecast_from_plain(stored["forecast"])

    found = read_or_none(path, parse)
    return found if isinstance(found, Forecast) else None


def keep(key: str, forecast: Forecast, folder: Path | None = None) -> None:
    """Keep a forecast. A disk that refuses costs time next evening, never the answer: it is passed over."""
    path = _entry(key, folder)
    text = json.dumps({"form": FORM, "key": key, "forecast": forecast_to_plain(forecast)})
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        write_whole(path, text.encode())
    except OSError:
        return


def _entry(key: str, folder: Path | None) -> Path:
    return (folder or cache_folder()) / "forecasts" / f"{key}.json"
