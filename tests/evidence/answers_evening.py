"""Rows about a planned hour, its colours and its cautions: answered by fit, show and care."""

from asking import Given, answers

from turnout.care import care_box
from turnout.club.spaces import space_named
from turnout.club.tonight import Tonight
from turnout.evidence import value
from turnout.fit import fit_session
from turnout.fit.colours import verdict
from turnout.fit.model import FittedPart
from turnout.practice.shelf import SHELF
from turnout.session.read import read_session
from turnout.show.ink import contrast

PALETTE = ("orange", "sky", "bluish-green", "yellow", "blue", "vermillion", "reddish-purple")


def length_min(part: FittedPart) -> float:
    """Blocks, the rests between them and the change-over after: a part from its pieces, not from its own total."""
    return sum(part.blocks) + part.rest_min * (len(part.blocks) - 1) + part.changeover_min


@answers("time-01")
def hours_of_the_example_session(given: Given) -> tuple[float, ...]:
    session = read_session(SHELF / "sessions" / "hold-and-break.yaml")
    third = space_named("third of 3G")
    hours = (Tonight(players=players, space=third, minutes=60.0, adults=2) for players in range(8, 21))
    return tuple(sum(length_min(part) for part in fit_session(session, hour).parts) for hour in hours)


@answers("col-01")
def contrast_on_grass(given: Given) -> tuple[float, ...]:
    grass = str(value("palette.grass").value)
    ratios = {name: contrast(str(value(f"palette.okabe-ito.{name}").value), grass) for name in PALETTE}
    assert [name for name, ratio in ratios.items() if ratio >= 3] == ["yellow"]
    return (contrast("#000000", grass), contrast("#FFFFFF", grass), ratios["yellow"])


@answers("col-02")
def pairs_never_given(given: Given) -> str:
    pairs = (pair.strip().split("-") for pair in given.text.split(";"))
    return "/".join({verdict(first, second) for first, second in pairs})


@answers("head-u9", "head-u11")
def heading_in_training(given: Given) -> str:
    age = int(str(given.get("age")).removeprefix("U"))
    facts = {"players": 12, "adults": 2, "first_aider": True, "run_off_m": 3.0, "outdoors": True}
    box = care_box(age=age, uses_goals=False, country="England", **facts)
    return next(caution.level for caution in box if caution.key == "heading").upper()
