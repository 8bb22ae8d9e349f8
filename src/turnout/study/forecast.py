"""How a setup will play: blocks simulated until the headline is sharp, the budget is spent or somebody stops it."""

from collections.abc import Callable

from turnout.play.kernel.compiling import model_stamp
from turnout.play.scene import scene_of
from turnout.play.simulate import Sums
from turnout.practice.setup import Setup
from turnout.study.figures import Scale, by_role, ends, figures
from turnout.study.many import Who, many
from turnout.study.model import Forecast

__all__ = ["forecast", "model_stamp"]

HALF_WIDTH = 0.03  # success is known well enough at +- 3 points
LEAST_BLOCKS = 12
BATCH = 8


def forecast(
    setup: Setup,
    *,
    age: int,
    level: str,
    surface: str = "3G",
    seconds: float = 3600.0,
    block_s: float = 180.0,
    seed: int = 7,
    waiting: int = 0,
    threads: int | None = None,
    progress: Callable[[float], None] | None = None,
    stop: Callable[[], bool] | None = None,
) -> Forecast:
    """Forecast a setup for an age group and level.

    seconds: budget of simulated time · block_s: length of one block · waiting: players who wait beside it.
    The answer is the same on any number of threads. Stopped early, it says what it has; at least one block is played.
    Raises TurnoutError on a sentence that cannot be played.
    """
    scene = scene_of(setup)
    scale = Scale(scene.players, waiting, len({*scene.R[:, 0]} & {0.0, 1.0}), scene.scoring_sides)
    wanted = max(2, round(seconds / block_s))
    blocks: list[Sums] = []
    settled = False
    while len(blocks) < wanted and not settled:
        batch = many(
            setup, Who(age, level, surface), block_s=block_s, seed=seed, first=len(blocks),
            number=min(BATCH, wanted - len(blocks)), threads=threads,
        )  # fmt: skip
        blocks.extend(batch)
        settled = len(blocks) >= LEAST_BLOCKS and _sharp(blocks, scale)
        if progress is not None:
            progress(min(1.0, len(blocks) / wanted))
        if stop is not None and stop():
            break
    return Forecast(
        practice=setup.practice.name,
        simulated_s=len(blocks) * block_s,
        seed=seed,
        blocks=len(blocks),
        block_s=block_s,
        figures=tuple(figures(blocks, scale).items()),
        by_role=by_role(blocks, scene.keys),
        ends=ends(blocks),
        settled=settled,
        model=model_stamp(),
    )


def _sharp(blocks: list[Sums], scale: Scale) -> bool:
    success = figures(blocks, scale)["success"]
    return success.high - success.value <= HALF_WIDTH
