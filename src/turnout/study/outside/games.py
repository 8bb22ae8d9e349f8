"""The games the outside rows are about, written as coaches write them and read as every practice is read."""

from functools import cache

from turnout.practice.ground import setup_of
from turnout.practice.model import Practice
from turnout.practice.read import practice_of
from turnout.practice.setup import Setup
from turnout.reading import Report
from turnout.reading.load import load_text

# name -> ground (the size is replaced), people beside amber and blue, sentences. Numbers and sizes come from the row.
GAMES: dict[str, tuple[tuple[str, ...], tuple[str, ...], tuple[str, ...]]] = {
    "keep-ball": ((), (), ("Play starts with a side.", "A side scores 1 for completing 8 passes in a row.")),
    "keep-ball with neutrals": (
        (),
        ("neutral: 2 (0-6) in pitch",),
        (
            "Play starts with a side.",
            "A side scores 1 for completing 8 passes in a row.",
            "Neutrals play for the side with the ball.",
        ),
    ),
    "keep it from them": (
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
    "end zones": (
        ("north end: strip 4 m inside the north end of pitch", "south end: strip 4 m inside the south end of pitch"),
        (),
        (
            "Amber attack the north end and defend the south end.",
            "Blue attack the south end and defend the north end.",
            "Amber score 1 for receiving in the north end.",
            "Blue score 1 for receiving in the south end.",
            "Amber score 1 for running the ball into the north end.",
            "Blue score 1 for running the ball into the south end.",
            "Play starts with a side.",
            "The ball comes back in with a kick-in.",
            "When a side scores, the other side starts.",
        ),
    ),
}
GAMES["end zones with a floater"] = (
    GAMES["end zones"][0],
    ("neutral: 1 (0-3) in pitch",),
    (*GAMES["end zones"][2], "Neutrals play for the side with the ball.", "Neutrals stay out of the north end.",
     "Neutrals stay out of the south end."),
)  # fmt: skip


def text_of(game: str, more: tuple[str, ...] = ()) -> str:
    """The practice file of a game, with further sentences."""
    ground, people, rules = GAMES[game]
    lines = ["practice: Outside row", "ages: U7-U18", "ground:", "  pitch: rectangle 30 x 20 m"]
    lines += [f"  {line}" for line in ground]
    lines += ["people:", "  amber: 4 (1-11) in pitch", "  blue: 4 (1-11) in pitch"]
    lines += [f"  {line}" for line in people]
    return "\n".join([*lines, "rules:", *(f"  - {line}" for line in (*rules, *more))]) + "\n"


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
    """A game at these numbers on a pitch of this size (across, up the page), with further sentences."""
    counts = {"amber": amber, "blue": blue, "neutral": neutral}
    return setup_of(practice(game, more), counts, size_m)
