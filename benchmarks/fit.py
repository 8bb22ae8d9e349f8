"""How long a fit takes with nothing remembered: the shipped session on three grounds, 6 to 24 players, three hours."""

import statistics
import time
from dataclasses import replace
from functools import _lru_cache_wrapper
from importlib import import_module
from pathlib import Path
from pkgutil import iter_modules

import turnout
import turnout.fit
from turnout.club.tonight import Space, Tonight
from turnout.fit import Fitted, fit_range, fit_session
from turnout.layout import lay_out
from turnout.rota import rota_for
from turnout.session.model import Session
from turnout.session.read import read_session
from turnout.shapes import packing

SPACES = (Space("third of 3G", 31.8, 64.0), Space("quarter", 50.0, 32.0), Space("hall", 33.0, 18.0))
MINUTES = (45.0, 60.0, 75.0)
TURNOUTS = range(6, 25)
YARDSTICK_STEPS = 200_000


def run() -> dict:
    """Fits cold (caches cleared before each), the range 6-24, rota and layout, in seconds; a plain loop beside."""
    session = demo_session()
    cases = [
        Tonight(players, space, minutes=minutes) for space in SPACES for minutes in MINUTES for players in TURNOUTS
    ]
    timed = [cold_fit(session, tonight) for tonight in cases]
    yes = [seconds for seconds, fitted in timed if fitted.fits]
    no = [seconds for seconds, fitted in timed if not fitted.fits]
    every = yes + no
    figures = {
        "cases": len(every),
        "fits_yes": len(yes),
        "fit_median_s": round(statistics.median(every), 4),
        "fit_worst_s": round(max(every), 4),
        "no_with_smallest_change_worst_s": round(max(no), 4),
        "range_6_24_s": round(cold_range(session), 3),
        "rota_worst_s": round(max(seconds_of(rota_for, fitted) for _, fitted in timed), 4),
        "layout_worst_s": round(max(seconds_of(lay_out, fitted) for _, fitted in timed), 4),
    }
    return {"figures": figures, "yardstick": {"plain_loop_s": round(min(plain_loop_s() for _ in range(5)), 4)}}


def demo_session() -> Session:
    """The session that ships with the program."""
    return read_session(Path(turnout.__file__).parent / "shelf" / "sessions" / "hold-and-break.yaml")


def cold_fit(session: Session, tonight: Tonight) -> tuple[float, Fitted]:
    """Seconds and answer of one fit, reasons and smallest change included, nothing remembered from before."""
    forget()
    start = time.perf_counter()
    fitted = fit_session(session, tonight)
    return time.perf_counter() - start, fitted


def cold_range(session: Session) -> float:
    """Seconds for 6 to 24 players on a third, one call, nothing remembered."""
    forget()
    start = time.perf_counter()
    fit_range(session, replace(Tonight(12, SPACES[0]), minutes=60.0), TURNOUTS)
    return time.perf_counter() - start


def seconds_of(work, fitted: Fitted) -> float:
    """Seconds of one piece of work on a fitted session."""
    start = time.perf_counter()
    work(fitted)
    return time.perf_counter() - start


def forget() -> None:
    """Clear every cache of the fit and of the packing."""
    modules = [import_module(f"turnout.fit.{found.name}") for found in iter_modules(turnout.fit.__path__)]
    for module in (*modules, packing):
        for value in vars(module).values():
            if isinstance(value, _lru_cache_wrapper):
                value.cache_clear()


def plain_loop_s() -> float:
    """Seconds of a fixed plain loop: what this machine makes of Python just now."""
    start, total = time.perf_counter(), 0
    for step in range(YARDSTICK_STEPS):
        total += step * step % 7
    return time.perf_counter() - start
