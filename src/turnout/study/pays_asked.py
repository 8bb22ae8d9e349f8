"""The questions of docs/what-pays.md: which games, which variants, which figure, which sign."""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from turnout.play.kernel import columns as c
from turnout.study.frozen import GAMES, GOAL_GAMES, KEEP_BALLS
from turnout.study.pays import (
    ARRIVE,
    FAST,
    FAST_SHARE,
    GAP,
    HELD,
    POSSESSION,
    ROW,
    ROWS,
    RUNS,
    SCORE,
    SCORES,
    Experiment,
    Outcome,
    Paid,
    Variant,
    paid,
)
from turnout.study.thinking import OFTEN, RARELY

SHELF = ("gull-square", "harbour-square", "breakwater", "four-coves", "open-water", "lock-gates")
RARE = 4  # scores are rare: so many times the blocks where they are counted
LADDER_GAMES = (*GAMES, *SHELF)
RUNS_OF_PASSES = ("4 v 2, 12 m", "3 v 2, 15 m", "4 v 3, 14 m", "gull-square", "harbour-square")
ONE_KEEPS = tuple(game for game in RUNS_OF_PASSES if game != "harbour-square")  # the other side only takes it
LOOKED_ROUND = ("4 v 2, 12 m", "4 v 3, 14 m", "harbour-square")
TO_GOAL = (*GOAL_GAMES, "four-coves", "open-water")
LEVELS, AGES = ("new", "learning", "settled", "strong"), (8, 10, 12, 14, 16)
CAPABILITIES = {
    "technique": "",
    "scanning": "",
    "timing": "the kick goes a little sooner; where nobody closes the lane meanwhile that buys nothing",
    "movement": "a spot left late is one a marker still knows: running more loses as many set receivers as it frees",
    "positioning": "only the noise in weighing spots differs, and it is small beside what staying or moving costs",
    "disguise": "an opponent who answers late stays in the next lane instead of running after the ball",
}
LONG_S, PART_S = 900.0, 300.0


def success(game: str, *, both: bool = False) -> Outcome:
    """What success is in a game: passes in a row or scores a minute, of the first side or of both."""
    if game in RUNS_OF_PASSES:
        return ROWS if both and game not in ONE_KEEPS else ROW
    return SCORES if both else SCORE


# why a step up may not show
LADDER_GUESS = {
    "levels": "the other side improves too: with more passes between two shots, better keepers and more blocks the "
    "scores a minute need not rise",
    "ages": "older players pass harder, and a hard ball goes farther astray and is harder to control; older opponents "
    "run, answer and tackle faster too",
}


@dataclass(frozen=True)
class Ladder:
    """A figure on every rung from worst to best, and the answer for every step up."""

    game: str
    outcome: str
    rungs: tuple[str, ...]
    steps: tuple[Paid, ...]

    @property
    def values(self) -> tuple[float, ...]:
        return (self.steps[0].before, *(step.after for step in self.steps))


def ladders(rungs: str, *, games: tuple[str, ...] = LADDER_GAMES, runs: int = RUNS) -> Iterator[tuple[Ladder, Ladder]]:
    """Of every game two ladders, by passes that arrive and by its success. rungs: 'levels' or 'ages', of everybody."""
    names = LEVELS if rungs == "levels" else tuple(f"U{age}" for age in AGES)
    variants = [Variant(level=each) for each in LEVELS] if rungs == "levels" else [Variant(age=each) for each in AGES]
    for game in games:
        yield (
            _ladder(game, ARRIVE, names, variants, runs),
            _ladder(game, success(game, both=True), names, variants, runs),
        )


def _ladder(game: str, figure: Outcome, names: tuple[str, ...], variants: list[Variant], runs: int) -> Ladder:
    times = RARE if figure.name.startswith("scores") else 1
    steps = [
        paid(
            Experiment(f"{names[n]} to {names[n + 1]}", game, variants[n], variants[n + 1], figure, times=times),
            runs=runs,
        )
        for n in range(len(names) - 1)
    ]
    return Ladder(game, figure.name, names, tuple(steps))


def capabilities(games: tuple[str, ...] = (*KEEP_BALLS, *GOAL_GAMES)) -> tuple[Experiment, ...]:
    """Each capability of the first side from new to strong, everything else settled."""
    return tuple(
        Experiment(name, game, Variant(first=((name, "new"),)), Variant(first=((name, "strong"),)), success(game),
                   guess=guess)
        for name, guess in CAPABILITIES.items()
        for game in games
    )  # fmt: skip


def pressure() -> tuple[Experiment, ...]:
    """What pressure takes from pass success, of beginners and of strong players."""
    guess = "beginners lose free passes too, so that pressure has less left to take"
    return tuple(
        Experiment("new to strong", game, Variant(level="new"), Variant(level="strong"), GAP, -1, guess)
        for game in ("4 v 2, 12 m", "4 v 3, 14 m", "gull-square", "harbour-square", "breakwater", *GOAL_GAMES)
    )


def scanning() -> tuple[Experiment, ...]:
    """Looks round alone, of the first side, from a beginner's to a strong player's; thinking time stays."""
    guess = "the cone of sight already shows most of what a look round would, so the picture is seldom old"
    games = LOOKED_ROUND
    return (
        *(Experiment("looks round, new to strong", game, RARELY, OFTEN, HELD, -1, guess, 4) for game in games),
        *(Experiment("looks round, new to strong", game, RARELY, OFTEN, ROW, 1, guess, 4) for game in games),
    )


def spots() -> tuple[Experiment, ...]:
    """Spots weighed by lanes and room, beside spots that only keep away from mates.

    Only games in which one side keeps the ball: the weights are everybody's, but just that side supports.
    """
    guess = "keeping apart in a small square already opens the lanes there are"
    only_apart = (("SUP_GAP", 0.0), ("SUP_OPP", 0.0))
    return tuple(
        Experiment("lanes and room weighed, not only distance to mates", game, Variant(weights=only_apart), Variant(),
                   success(game), 1, guess, 2)
        for game in ONE_KEEPS[:3]
    )  # fmt: skip


def ground() -> tuple[Experiment, ...]:
    """Surfaces and the weight of the pass."""
    plain, wet, hall = Variant(), Variant(surface="wet grass"), Variant(surface="hall")
    short = (
        "a pass of a few metres is struck harder than either ground would stop, and a slow ball is easily controlled"
    )
    surfaces = [
        Experiment(f"{name} to long wet grass", game, dry, wet, ARRIVE, -1, short, 2)
        for name, dry in (("3G", plain), ("hall", hall))
        for game in ("harbour-square", "keepers 5 v 5", "four-coves")
    ]
    weighed = [
        Experiment("pass weight twice as unsure", game, plain, Variant(scaled=((c.WEIGHT_SD, 2.0),)), ARRIVE, -1)
        for game in ("4 v 2, 12 m", "harbour-square", "breakwater")
    ]
    judged = [
        Experiment("long wet grass not allowed for, from wholly", game, replace(wet, weights=(("BELIEF", 1.0),)),
                   replace(wet, weights=(("BELIEF", 0.0),)), ARRIVE, -1,
                   "over so short a way a ball played as for the 3G arrives too", 2)
        for game in ("harbour-square", "keepers 5 v 5")
    ]  # fmt: skip
    return (*surfaces, *weighed, *judged)


def shelter() -> tuple[Experiment, ...]:
    """A zone where nobody tackles, or which the other side may not enter."""
    guess = "whoever may not tackle there closes a lane instead"
    nobody, out = ("Nobody tackles in the strips.",), ("Blue stay out of the strips.",)
    asked = (("nobody tackles in the strips", "4 v 4, side strips", nobody, ROWS),
             ("nobody tackles in the strips", "4 v 4, side strips", nobody, POSSESSION),
             ("nobody tackles in the strips", "4 v 3, side strips", nobody, ROW),
             ("the other side stays out of the strips", "4 v 3, side strips", out, ROW))  # fmt: skip
    return tuple(
        Experiment(name, game, Variant(), Variant(rules=rules), figure, 1, guess) for name, game, rules, figure in asked
    )


def tiredness() -> tuple[Experiment, ...]:
    """The first and the last third of a quarter of an hour, and the last third with and without tiring."""
    first, last = Variant(seconds=PART_S), Variant(since_s=LONG_S - PART_S, seconds=LONG_S)
    fresh = replace(last, weights=(("TIRE", 0.0),))
    guess = "recovery keeps the reserve nearly full, and top speed, all that tiring lowers, is seldom asked for"
    return tuple(
        Experiment(name, game, before, last, figure, -1, guess)
        for game in GOAL_GAMES
        for name, before, figure in (
            ("first to last five minutes of fifteen", first, FAST),
            ("first to last five minutes of fifteen", first, FAST_SHARE),
            ("last five minutes, nobody tires to all do", fresh, FAST),
        )
    )


def parts() -> dict[str, tuple[Experiment, ...]]:
    """The single questions under their headings."""
    return {
        "Pressure": pressure(), "Looks round": scanning(), "Surface and weight of the pass": ground(),
        "Shelter": shelter(), "Tiredness": tiredness(),
    }  # fmt: skip
