"""Put rows to the simulator: every play once per seed, however many rows share it; answers with intervals."""

import threading
from collections.abc import Callable, Iterable, Sequence
from concurrent.futures import ThreadPoolExecutor

import numpy as np

from turnout.evidence import Check, checks
from turnout.study.outside import counts, holding, keeping, kicks, legs, on_the_ball, scoring, team_shape  # noqa: F401
from turnout.study.outside.plays import Play, play_once
from turnout.study.outside.register import ROWS, Row
from turnout.study.outside.verdict import LEAST_SEEDS, Answer, answer, mean_of, waiting

SEEDS = range(96)


def output_checks() -> dict[str, Check]:
    """The rows that come out of simulated play, by id, in file order."""
    return {check.id: check for check in checks() if check.use == "simulator output"}


def answers(
    ids: Iterable[str] | None = None,
    *,
    W: np.ndarray | None = None,
    seeds: Sequence[int] = SEEDS,
    share: float = 1.0,
    threads: int = 2,
    progress: Callable[[float], None] | None = None,
) -> dict[str, Answer]:
    """What play says to these outside rows (default: all), by id.

    W: weights (default: the table's) · seeds: at least six; variants of one row share them ·
    share: of each play's seconds · progress: told the share done after every seed.
    Raises ValueError on fewer seeds, KeyError on an id that is no output of the simulator.
    """
    if len(seeds) < LEAST_SEEDS:
        raise ValueError(f"an outside row is averaged over at least {LEAST_SEEDS} seeds, not {len(seeds)}")
    wanted = output_checks()
    asked = {each: wanted[each] for each in (ids if ids is not None else wanted)}
    ready = [ROWS[each] for each in asked if not ROWS[each].open]
    found = _figures(ready, W, seeds, share, threads, progress)
    return {each: _answer(check, ROWS[each], found.get(each)) for each, check in asked.items()}


def _figures(
    rows: list[Row], W: np.ndarray | None, seeds: Sequence[int], share: float, threads: int,
    progress: Callable[[float], None] | None,
) -> dict[str, list[tuple[float, ...]]]:  # fmt: skip
    done, lock = 0, threading.Lock()

    def one(seed: int) -> dict[str, tuple[float, ...]]:
        nonlocal done
        found = under_one_seed(rows, seed, W, share)
        with lock:
            done += 1
            if progress is not None:
                progress(done / len(seeds))
        return found

    with ThreadPoolExecutor(threads) as pool:
        by_seed = list(pool.map(one, seeds))
    return {row.id: [found[row.id] for found in by_seed] for row in rows}


def under_one_seed(rows: list[Row], seed: int, W: np.ndarray | None, share: float) -> dict[str, tuple[float, ...]]:
    """The figures of rows under one seed; a play shared by rows is simulated once and dropped after its last row."""
    last = {play: row.id for row in rows for play in row.plays}
    runs: dict[Play, object] = {}
    found = {}
    for row in rows:
        for play in row.plays:
            if play not in runs:
                runs[play] = play_once(play, seed, W=W, share=share)
        found[row.id] = row.answered_by(runs)  # type: ignore[arg-type]
        for play in {play for play in row.plays if last[play] == row.id}:
            del runs[play]
    return found


def _answer(check: Check, row: Row, found: list[tuple[float, ...]] | None) -> Answer:
    if found is None:
        return waiting(check, row.open)
    columns = zip(row.figures, zip(*found, strict=True), strict=True)
    figures = [mean_of(what, values) for what, values in columns]
    return answer(check, figures, "; ".join(play.says() for play in row.plays))
