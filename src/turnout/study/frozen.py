"""What standing still costs: one side's players off the ball hold their places, from the start and for good.

Five keep-balls and two games with goals. A side that keeps the ball succeeds by passes in a row, one that attacks a
place by scores a minute. Frozen means no support, no runs, no checking away; who has the ball and who goes for it move.
"""

from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from functools import cache

import numpy as np

from turnout.play.abilities import squad_abilities
from turnout.play.kernel import columns as c
from turnout.play.simulate import Sums, simulate
from turnout.practice.ground import setup_of
from turnout.practice.read import practice_of, read_practice
from turnout.practice.setup import Setup
from turnout.practice.shelf import practice_files
from turnout.reading import Report
from turnout.reading.load import load_text
from turnout.study.figures import student90
from turnout.study.many import run_seed

KEEP = (
    "Play starts with amber.", "Amber score 1 for completing 10 passes in a row.",
    "Blue score 1 for winning the ball.", "When blue win the ball, amber start.",
    "When the ball goes out, amber start.",
)  # fmt: skip
SHOOT = (
    "Amber attack the north goal and defend the south goal.", "Blue attack the south goal and defend the north goal.",
    "Play starts with a side.",
)  # fmt: skip
# name -> ground, people, sentences; or a practice of the shelf
GAMES: dict[str, tuple[tuple[str, ...], tuple[str, ...], tuple[str, ...]]] = {
    "4 v 2, 12 m": (("pitch: rectangle 12 x 12 m",), ("amber: 4 in pitch", "blue: 2 in pitch"), KEEP),
    "3 v 2, 15 m": (("pitch: rectangle 15 x 15 m",), ("amber: 3 in pitch", "blue: 2 in pitch"), KEEP),
    "4 v 3, 14 m": (("pitch: rectangle 14 x 14 m",), ("amber: 4 in pitch", "blue: 3 in pitch"), KEEP),
    "small goals 4 v 4": (
        ("pitch: rectangle 20 x 30 m", "north goal: small goal 2 m at the north end of pitch",
         "south goal: small goal 2 m at the south end of pitch"),
        ("amber: 4 in pitch", "blue: 4 in pitch"), SHOOT,
    ),
    "keepers 5 v 5": (
        ("pitch: rectangle 30 x 40 m", "north goal: goal 12 x 6 ft at the north end of pitch",
         "south goal: goal 12 x 6 ft at the south end of pitch"),
        ("amber outfield: 4 in pitch", "blue outfield: 4 in pitch", "amber keeper: 1 in south goal",
         "blue keeper: 1 in north goal"), SHOOT,
    ),
}  # fmt: skip
SHELF = ("harbour-square", "breakwater")
KEEP_BALLS = ("4 v 2, 12 m", "3 v 2, 15 m", "4 v 3, 14 m", *SHELF)
GOAL_GAMES = ("small goals 4 v 4", "keepers 5 v 5")
QUESTION, BLOCK_S = 5, 110.0


@dataclass(frozen=True)
class Frozen:
    """A side's success moving and frozen; the paired change as a share of the moving one, with its 90 % interval."""

    game: str
    unit: str
    moving: float
    frozen: float
    change: float
    low: float
    high: float

    @property
    def pays(self) -> bool:
        """Whether standing still costs, the interval clear of zero."""
        return self.high < 0

    def why(self) -> str:
        """The answer in words."""
        said = "movement pays" if self.pays else "no clear difference" if self.low < 0 else "standing still pays"
        return (
            f"{self.game}: {self.moving:.2f} {self.unit} moving, {self.frozen:.2f} frozen: {self.change:+.0%} "
            f"({self.low:+.0%} to {self.high:+.0%}), {said}"
        )


@cache
def frozen_game(name: str) -> Setup:
    """One of the seven games, at its own numbers and size."""
    if name in SHELF:
        return setup_of(read_practice(practice_files()[name]))
    return written(*GAMES[name])


def written(ground: Sequence[str], people: Sequence[str], rules: Sequence[str]) -> Setup:
    """A game out of its lines of ground, people and sentences; raises BadInput where one has a fault."""
    lines = ["practice: Asked of", "ages: U7-U18", "ground:", *(f"  {line}" for line in ground)]
    lines += ["people:", *(f"  {line}" for line in people), "rules:", *(f"  - {line}" for line in rules)]
    document = load_text("\n".join(lines) + "\n", "game.yaml")
    report = Report(document.file, document.problems)
    practice = practice_of(document, report)
    report.close()
    assert practice is not None
    return setup_of(practice)


def frozen(
    name: str, *, age: int = 12, level: str = "settled", runs: int = 200, W: np.ndarray | None = None,
    question: int = QUESTION, threads: int = 2,
) -> Frozen:  # fmt: skip
    """Play a game with the first side moving and frozen under the same seeds; raises KeyError on an unknown game.

    runs: blocks of BLOCK_S seconds each · question: which block of run seeds; another one is fresh
    """
    setup = frozen_game(name)
    seeds = [run_seed(question, number) for number in range(runs)]

    def pair(seed: int) -> tuple[Sums, Sums]:
        return _played(setup, age, level, seed, False, W), _played(setup, age, level, seed, True, W)

    with ThreadPoolExecutor(threads) as pool:
        pairs = list(pool.map(pair, seeds))
    top, under, unit = _success(name)
    moving, still = ([(top(sums), under(sums)) for sums in side] for side in zip(*pairs, strict=True))
    return _compared(name, unit, np.array(moving), np.array(still))


def _played(setup: Setup, age: int, level: str, seed: int, freeze: bool, W: np.ndarray | None) -> Sums:
    A = squad_abilities(setup.players, age, level, seed)
    if freeze:
        first = setup.practice.sides[0]
        sides = [group.side for group in setup.practice.groups for _ in range(setup.count(group.key))]
        A[[side == first for side in sides], c.MOVE_PACE] = 0.0
    return simulate(setup, age=age, level=level, seed=seed, seconds=BLOCK_S, A=A, W=W)


def _success(name: str):  # type: ignore[no-untyped-def]
    if name in GOAL_GAMES or name == "breakwater":
        column = c.V_GOALS if name in GOAL_GAMES else c.V_SCORES
        return (lambda s: s.V[0, column]), (lambda s: s.Q[c.Q_TIME] / 60), "scores a minute"
    return (lambda s: s.V[0, c.V_RUN_SUM]), (lambda s: s.V[0, c.V_SPELLS]), "passes in a row"


def _compared(name: str, unit: str, moving: np.ndarray, still: np.ndarray) -> Frozen:
    """Ratio of sums, its paired change by the jackknife over runs."""
    a, b = moving.sum(0), still.sum(0)
    before, after = a[0] / a[1], b[0] / b[1]
    left = a - moving, b - still
    shares = (left[1][:, 0] / left[1][:, 1]) / (left[0][:, 0] / left[0][:, 1]) - 1
    runs = len(shares)
    half = student90(runs - 1) * float(np.sqrt((runs - 1) / runs * ((shares - shares.mean()) ** 2).sum()))
    change = after / before - 1
    return Frozen(name, unit, float(before), float(after), float(change), float(change - half), float(change + half))


def frozen_all(names: Sequence[str] = (*KEEP_BALLS, *GOAL_GAMES), **how: object) -> dict[str, Frozen]:
    """The answer of every game; further arguments as for `frozen`."""
    return {name: frozen(name, **how) for name in names}  # type: ignore[arg-type]
