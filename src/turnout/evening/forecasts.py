"""Forecasts of an evening's parts, from the cache where the same question was asked before."""

import os
from collections.abc import Callable, Iterable
from pathlib import Path

from turnout.evening.cache import keep, recall
from turnout.evening.fits import FittedEvening
from turnout.evening.stamp import content_hash
from turnout.fit.model import FittedPart
from turnout.practice.setup import Setup
from turnout.study.model import Figure, Forecast

SECONDS = 14_400.0  # simulated seconds a part at most, about half a second of waiting; the stop rule may end earlier
BLOCK_S = 180.0  # a block when nobody has fitted one: 3 minutes, own choice

Tell = Callable[[str, float], None]
Stop = Callable[[], bool]


def nobody(_stage: str, _share: float) -> None:
    """Progress that nobody watches."""


def forecast_setup(
    setup: Setup,
    *,
    age: int,
    level: str,
    seed: int,
    seconds: float = SECONDS,
    block_s: float = BLOCK_S,
    waiting: int = 0,
    surface: str = "3G",
    tell: Tell = nobody,
    stop: Stop | None = None,
) -> Forecast:
    """The forecast of one setup; kept on disk under the hash of everything it depends on."""
    from turnout.study.forecast import forecast, model_stamp

    key = content_hash(setup, age, level, seed, seconds, block_s, waiting, surface, model_stamp())
    found = recall(key)
    if found is not None:
        return found
    stage = f"Playing {setup.practice.name}"
    tell(f"{stage}; first the simulator is compiled, once, about a minute" if to_be_compiled() else stage, 0.0)
    made = forecast(
        setup, age=age, level=level, seconds=seconds, block_s=block_s, seed=seed, waiting=waiting,
        surface=surface,
        progress=lambda share: tell(stage, share), stop=stop,
    )  # fmt: skip
    if stop is None or not stop():
        keep(key, made)
    return made


def to_be_compiled() -> bool:
    """Whether the simulator has to be compiled before it plays, as the first time after every change of it."""
    import turnout.play.kernel.playing  # noqa: F401  names its cache folder

    folder = os.environ.get("NUMBA_CACHE_DIR")
    return folder is not None and not any(Path(folder).rglob("*.nbi"))


def forecast_part(
    answer: FittedEvening, part: FittedPart, *, seconds: float = SECONDS, tell: Tell = nobody, stop: Stop | None = None
) -> Forecast:
    """The forecast of one fitted part: of its first copy, the one that is drawn."""
    tonight = answer.evening.tonight
    block_s = 60.0 * min(part.blocks)
    first = part.copies[0]
    return forecast_setup(
        first.setup, age=tonight.age, level=tonight.level, seed=answer.evening.seed,
        seconds=seconds, block_s=block_s, waiting=first.waiting, surface=tonight.surface, tell=tell, stop=stop,
    )  # fmt: skip


def forecast_evening(
    answer: FittedEvening, *, seconds: float = SECONDS, tell: Tell = nobody, stop: Stop | None = None
) -> tuple[Forecast, ...]:
    """The forecasts of all parts, in order."""
    parts = answer.fitted.parts
    return tuple(
        forecast_part(answer, part, seconds=seconds, stop=stop, tell=shared(tell, done, len(parts)))
        for done, part in enumerate(parts)
    )


def shared(tell: Tell, done: int, of: int) -> Tell:
    """Progress of one of several equal pieces of work, as progress of the whole."""
    return lambda stage, share: tell(stage, (done + share) / of)


def evening_plain(answer: FittedEvening, forecasts: Iterable[Forecast]) -> list[dict]:
    """The forecasts of all parts as JSON values, each with who is simulated in it."""
    pairs = zip(answer.fitted.parts, forecasts, strict=True)
    return [forecast_plain(made, part.copies[0].setup) for part, made in pairs]


def forecast_plain(forecast: Forecast, setup: Setup) -> dict:
    """A forecast and whom it is about as JSON values."""
    return {
        "practice": setup.practice.key,
        "name": forecast.practice,
        "players": setup.players,
        "roles": dict(setup.counts),
        "simulated_s": forecast.simulated_s,
        "seed": forecast.seed,
        "blocks": forecast.blocks,
        "block_s": forecast.block_s,
        "settled": forecast.settled,
        "model": forecast.model,
        "figures": {name: figure_plain(figure) for name, figure in forecast.figures},
        "by_role": {role: dict(rows) for role, rows in forecast.by_role},
        "ends": dict(forecast.ends),
    }


def figure_plain(figure: Figure) -> dict:
    """One figure: mean, its 90 % interval, and the percentiles of one block."""
    band = figure.one_block
    block = {"p5": band.p5, "p25": band.p25, "p50": band.p50, "p75": band.p75, "p95": band.p95}
    return {
        "value": figure.value, "low": figure.low, "high": figure.high,
        "unit": figure.unit, "per": figure.per, "one_block": block,
    }  # fmt: skip
