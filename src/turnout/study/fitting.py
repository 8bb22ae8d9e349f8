"""Set the free weights of both sides together against the outside rows kept for fitting, with movement that must pay.

Cross-entropy search: candidates are drawn round a mean, the best quarter sets the next mean and spread. Every weight
stays inside its range of kernel/weights.py and is pulled a little towards where it was, so that a weight no row says
anything about stays put. Rows kept for testing are never looked at.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np

from turnout.evidence import Check
from turnout.play.kernel.weights import TABLE, weights
from turnout.study.frozen import GOAL_GAMES, KEEP_BALLS, frozen
from turnout.study.outside import Answer, answers, output_checks
from turnout.study.outside.verdict import bands_of

ATTACK = (
    "HOLD", "HOLD_PRESS", "HOLD_TIRE", "LOSS", "OPEN", "CLOSED", "SWITCH", "PROGRESS", "SHOOT", "ASSIST", "SUP_GAP",
    "SUP_OPP", "SUP_MATE", "SUP_BALL", "SUP_FORWARD", "SUP_MOVE", "SUP_STAY", "WIDE", "REAR", "CHANCE", "RUN",
)  # fmt: skip
DEFENCE = (
    "MARK_MATE", "MARK_BALL", "MARK_GOAL", "TIGHT", "CUSHION", "PRESS_OFF", "PRESS_PACE", "COUNTER_S", "DOUBLE_S",
    "DELAY", "LAST_OUT",
)  # fmt: skip
BODIES = (
    "DRIBBLE", "TACKLE_REACH", "TACKLE_CLEAN", "TACKLE_RATE", "FIRST_PRESS", "RUN_AT", "SHIELD", "PRESSURE", "FIRM",
    "READ", "HAZARD_CUT",
)  # fmt: skip
FITTED = (*ATTACK, *DEFENCE, *BODIES)
SPREAD, PULL, MISS_MOST = 0.12, 0.15, 1.0
PAYS, FROZEN_WORTH = -0.05, 12.0  # a frozen side should lose at least this share of its success


@dataclass(frozen=True)
class Score:
    """How far a weight vector is from the fit rows: the whole loss and what each row adds."""

    loss: float
    parts: dict[str, float]

    def why(self) -> str:
        """The rows that miss most."""
        worst = sorted(self.parts.items(), key=lambda item: -item[1])[:8]
        return ", ".join(f"{name} {part:.2f}" for name, part in worst if part > 0.01)


def fit_rows() -> tuple[str, ...]:
    """The outside rows kept for fitting."""
    return tuple(each for each, check in output_checks().items() if check.part == "fit")


def miss(check: Check, answer: Answer) -> float:
    """How far an answer is from its row, 0 inside, in half widths of its band or of its interval; at most MISS_MOST."""
    if answer.verdict == "waiting":
        return 0.0
    if check.kind == "direction":
        parts = [max(0.0, -one.low) / max(1e-9, one.high - one.low) for one in answer.figures]
        return min(MISS_MOST, float(np.mean(parts)))
    bands = bands_of(check)
    wanted = bands * len(answer.figures) if len(bands) == 1 else bands
    parts = [_outside(band.low, band.high, one.value) for band, one in zip(wanted, answer.figures, strict=True)]
    return min(MISS_MOST, float(np.mean(parts)))


def _outside(low: float, high: float, value: float) -> float:
    if not np.isfinite(value):
        return MISS_MOST
    half = (
        (high - low) / 2 if np.isfinite(high - low) and high > low else max(abs(low if np.isfinite(low) else high), 1.0)
    )
    off = max(0.0, low - value, value - high)
    return min(MISS_MOST, off / half)


def score(values: dict[str, float], *, seeds: Sequence[int], share: float, runs: int, threads: int = 2) -> Score:
    """The loss of these weights (the others as in the table): fit rows, movement that must pay, a pull to the table."""
    W, rows = weights(**values), output_checks()
    found = answers(fit_rows(), W=W, seeds=seeds, share=share, threads=threads)
    parts = {each: miss(rows[each], one) for each, one in found.items()}
    for game in (*KEEP_BALLS, *GOAL_GAMES):
        change = frozen(game, runs=runs, W=W, question=6, threads=threads).change
        parts[game] = FROZEN_WORTH * max(0.0, change - PAYS)
    parts["pull"] = PULL * float(np.mean([_from_table(name, value) ** 2 for name, value in values.items()]))
    return Score(sum(parts.values()), parts)


def _from_table(name: str, value: float) -> float:
    return (value - TABLE[name].value) / (0.25 * (TABLE[name].high - TABLE[name].low))


def fit(
    *, rounds: int, candidates: int, seed: int, how: dict, told: Callable[[str], None], names: Sequence[str] = FITTED
) -> tuple[dict[str, float], Score]:  # fmt: skip
    """Search; `how` goes to `score` (its seeds are moved on every round, so that no luck is fitted). Returns the mean.

    told: gets a line after every candidate and round
    """
    chance = np.random.default_rng(seed)
    low, high = (np.array([getattr(TABLE[name], end) for name in names]) for end in ("low", "high"))
    mean = np.array([TABLE[name].value for name in names])
    spread = SPREAD * (high - low)
    for number in range(rounds):
        seeds = [each + 1000 * (number + 1) for each in how["seeds"]]
        tried = np.clip(mean + spread * chance.standard_normal((candidates, len(names))), low, high)
        tried[0] = mean
        scores = []
        for row in tried:
            scores.append(score(dict(zip(names, map(float, row), strict=True)), **{**how, "seeds": seeds}))
            told(f"round {number + 1}: {len(scores)} of {candidates}, loss {scores[-1].loss:.2f}")
        best = np.argsort([one.loss for one in scores])[: max(3, candidates // 4)]
        mean = 0.3 * mean + 0.7 * tried[best].mean(0)
        spread = np.maximum(0.75 * spread, 0.02 * (high - low))
        told(f"round {number + 1}: best {scores[best[0]].loss:.2f} ({scores[best[0]].why()})")
    values = dict(zip(names, map(float, mean), strict=True))
    return values, score(values, **{**how, "seeds": [each + 900_000 for each in how["seeds"]]})
