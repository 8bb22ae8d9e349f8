"""One practice by itself: at any turnout its ranges allow, one copy, the designed ground per player."""

from turnout.evening import shelf
from turnout.evening.forecasts import SECONDS, Tell, forecast_setup, nobody
from turnout.evening.values import known_value, refuse
from turnout.practice.model import Practice
from turnout.practice.setup import Setup
from turnout.study.model import Forecast


def load_practice(what: str, *, players: int | None, steps: str | None) -> Setup:
    """Read a practice (a file or a name on the shelf), take the steps and set it up for the players.

    Raises BadInput, also when its ranges do not allow the turnout.
    """
    from turnout.practice.read import read_practice
    from turnout.practice.steps import with_steps

    practice = read_practice(shelf.find(what, ("practice",), name="practice"))
    names = step_names(practice, steps)
    return set_up(with_steps(practice, names) if names else practice, players)


def step_names(practice: Practice, text: str | None) -> tuple[str, ...]:
    """The steps meant by names with commas between; raises BadInput naming the nearest."""
    if text is None:
        return ()
    known = [step.name for step in practice.steps]
    if not known:
        refuse("--steps", text, f"{practice.name} has no steps")
    return tuple(known_value(name, known, name="--steps", kind="a step") for name in text.split(","))


def set_up(practice: Practice, players: int | None) -> Setup:
    """The practice for so many players (default: as designed), its ground grown or shrunk with them."""
    from turnout.fit.roles import role_table
    from turnout.practice.ground import setup_of

    if players is None:
        return setup_of(practice)
    mixes = role_table(practice.groups, practice.arrange.waiting_at_most)
    if players not in mixes:
        able = sorted(mixes)
        words = f"{practice.name} takes {able[0]} to {able[-1]} players in one copy; `turnout fit` lays several"
        refuse("--players", players, words, str(min(able, key=lambda count: abs(count - players))))
    counts = dict(zip((group.key for group in practice.groups), mixes[players][0].counts, strict=True))
    return setup_of(practice, counts, size_for(practice, counts))


def size_for(practice: Practice, counts: dict[str, int]) -> tuple[float, float] | None:
    """The field's size in metres that keeps the ground per player nearest to the designed; None: as designed."""
    from turnout.fit.ground import at_home
    from turnout.fit.roles import designed_mix
    from turnout.fit.sizes import sizes

    home = at_home(practice)
    designed = sum(designed_mix(practice.groups)[number] for number in home)
    now = sum(list(counts.values())[number] for number in home)
    found = sizes(practice, max(1, designed), (max(1, now),))
    return (found[0].across_m, found[0].up_m) if found else None


def usual_age(ages: tuple[int, int]) -> int:
    """U12 when nobody says, or the nearest age group the practice is for."""
    return min(max(12, ages[0]), ages[1])


def forecast_practice(
    setup: Setup, *, age: int, level: str, seed: int, seconds: float = SECONDS, tell: Tell = nobody
) -> Forecast:
    """The forecast of one practice set up by itself."""
    low, high = setup.practice.arrange.block_minutes
    block_s = 30.0 * (low + high)
    return forecast_setup(setup, age=age, level=level, seed=seed, seconds=seconds, block_s=block_s, tell=tell)
