"""The games the outside rows are about, written as coaches write them and read as every practice is read."""

from dataclasses import dataclass
from functools import cache

from turnout.practice.ground import setup_of
from turnout.practice.model import Practice
from turnout.practice.read import practice_of
from turnout.practice.setup import Setup
from turnout.reading import Report
from turnout.reading.load import load_text

FLOAT = "Neutrals play for the side with the ball."
AGAIN = ("Play starts with a side.", "The ball comes back in with a kick-in.",
         "When a side scores, the other side starts.")  # fmt: skip
RUN_IN = ("Amber score 1 for running the ball into the north end.",
          "Blue score 1 for running the ball into the south end.")  # fmt: skip


@dataclass(frozen=True)
class Game:
    """Ground beside the pitch, people beside amber and blue, sentences; whether a keeper stands in either goal.

    alone: the sides stand so, instead of some amber and some blue in the pitch.
    """

    ground: tuple[str, ...] = ()
    people: tuple[str, ...] = ()
    rules: tuple[str, ...] = ()
    keepers: bool = False
    alone: tuple[str, ...] = ()


def attack(what: str) -> tuple[str, str]:
    """The direction of the sides: amber up the page, blue down."""
    return (
        f"Amber attack the north {what} and defend the south {what}.",
        f"Blue attack the south {what} and defend the north {what}.",
    )


def strips(deep: str) -> tuple[str, ...]:
    """A strip inside either end."""
    return tuple(f"{end} end: strip {deep} inside the {end} end of pitch" for end in ("north", "south"))


def with_goals(goal: str, *, keepers: bool, people: tuple[str, ...] = ()) -> Game:
    """One goal at either end, each worth 1 to the side that attacks it."""
    ground = tuple(f"{end} goal: {goal} at the {end} end of pitch" for end in ("north", "south"))
    return Game(ground, people, (*attack("goal"), *AGAIN, *([FLOAT] if people else [])), keepers)


def with_four_goals() -> Game:
    """Two small goals at either end, 6 m to each side of the middle."""
    ground: list[str] = []
    for end in ("north", "south"):
        for side in ("west", "east"):
            ground.append(f"{end} {side}: small goal 2 m at the {end} end of pitch, 6 m {side} of the middle")
        ground.append(f"{end} goals: {end} west, {end} east")
    return Game(tuple(ground), (), (*attack("goals"), *AGAIN))


ZONES = Game(
    strips("4 m"),
    (),
    (
        *attack("end"),
        "Amber score 1 for receiving in the north end.",
        "Blue score 1 for receiving in the south end.",
        *RUN_IN,
        *AGAIN,
    ),
)
KEEP_BALL = ("Play starts with a side.", "A side scores 1 for completing 8 passes in a row.")
# Numbers and the size of the pitch come from the row; keepers come on top of its numbers.
GAMES: dict[str, Game] = {
    "keep-ball": Game((), (), KEEP_BALL),
    "keep-ball with neutrals": Game((), ("neutral: 2 (0-6) in pitch",), (*KEEP_BALL, FLOAT)),
    "keep it from them": Game(
        (),
        (),
        (
            "Play starts with amber.",
            "Amber score 1 for completing 10 passes in a row.",
            "Blue score 1 for winning the ball.",
            "When blue win the ball, amber start.",
            "When the ball goes out, amber start.",
        ),
    ),
    "end zones": ZONES,
    "end zones with a floater": Game(
        ZONES.ground,
        ("neutral: 1 (0-3) in pitch",),
        (*ZONES.rules, FLOAT, "Neutrals stay out of the north end.", "Neutrals stay out of the south end."),
    ),
    "a line to run over": Game(strips("1 m"), (), (*attack("end"), *RUN_IN, *AGAIN)),
    "small goals": with_goals("small goal 2 m", keepers=False),
    "two small goals each": with_four_goals(),
    "goals 12 x 6 ft": with_goals("goal 12 x 6 ft", keepers=True),
    "goals 16 x 7 ft": with_goals("goal 16 x 7 ft", keepers=True),
    "goals 24 x 8 ft": with_goals("goal 24 x 8 ft", keepers=True),
    "goals 12 x 6 ft, outer floaters": with_goals(
        "goal 12 x 6 ft", keepers=True, people=("neutral: 2 (0-4) on the edge of pitch",)
    ),
    "goals 16 x 7 ft, a floater": with_goals("goal 16 x 7 ft", keepers=True, people=("neutral: 1 (0-3) in pitch",)),
    "passing in twos": Game(
        ("west spot: strip 2 m inside the west end of pitch", "east spot: strip 2 m inside the east end of pitch"),
        (),
        (
            "Play starts with amber.",
            "Amber score 1 for completing 10 passes in a row.",
            "When the ball goes out, amber start.",
        ),
        alone=("amber west: 1 in west spot", "amber east: 1 in east spot"),
    ),
}


def text_of(game: str, more: tuple[str, ...] = ()) -> str:
    """The practice file of a game, with further sentences."""
    lines = ["practice: Outside row", "ages: U7-U18", "ground:", "  pitch: rectangle 30 x 20 m"]
    lines += [f"  {line}" for line in GAMES[game].ground]
    lines += ["people:", *(f"  {line}" for line in people_of(GAMES[game]))]
    return "\n".join([*lines, "rules:", *(f"  - {line}" for line in (*GAMES[game].rules, *more))]) + "\n"


def people_of(game: Game) -> tuple[str, ...]:
    """The groups of a game, one a line."""
    if game.alone:
        return game.alone
    if not game.keepers:
        return ("amber: 4 (1-11) in pitch", "blue: 4 (1-11) in pitch", *game.people)
    outfield = ("amber outfield: 4 (1-11) in pitch", "blue outfield: 4 (1-11) in pitch")
    return (*outfield, "amber keeper: 1 in south goal", "blue keeper: 1 in north goal", *game.people)


@cache
def practice(game: str, more: tuple[str, ...] = ()) -> Practice:
    """A game as a practice; raises BadInput where its text has a fault."""
    document = load_text(text_of(game, more), f"{game}.yaml")
    report = Report(document.file, document.problems)
    found = practice_of(document, report)
    report.close()
    assert found is not None
    return found


@cache
def game_setup(
    game: str, *, amber: int, blue: int, neutral: int = 0, size_m: tuple[float, float], more: tuple[str, ...] = ()
) -> Setup:
    """A game at these numbers (keepers on top) on a pitch of this size (across, up the page), with more sentences."""
    counts = {"amber": amber, "blue": blue, "neutral": neutral}
    counts |= {"amber outfield": amber, "blue outfield": blue, "amber keeper": 1, "blue keeper": 1}
    counts |= {"amber west": 1, "amber east": 1}
    return setup_of(practice(game, more), counts, size_m)
