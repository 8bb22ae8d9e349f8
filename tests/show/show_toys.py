"""Hand-made practices small enough to hold in the head."""

from turnout.measure import YARD_M
from turnout.practice.model import Group, Home, Phrase, Place, Practice, Question, Rule, Source, Step, Tie
from turnout.practice.setup import Setup
from turnout.practice.table import Act, Event, Row, Where, Who

HERE = Source("toy.yaml", 1, 1, "")


def rule(text):
    return Rule(Phrase("toy"), text, HERE)


SQUARE_RULES = (
    "Play starts with amber inside.",
    "A side scores 1 for completing 6 passes in a row.",
    "Edge players have 2 touches.",
    "When a side wins the ball and completes a pass, its nearest edge player comes in and the other side's farthest"
    " inside player goes out.",
    "When the ball goes out, the other side starts from the edge of square.",
)


def square_practice():
    """An overload inside a square with edge players of both sides."""
    square = Home("square")
    edge = Home("square", on_edge=True)
    return Practice(
        key="harbour-square",
        name="Harbour square",
        about="Two sides keep the ball in a square, each with edge players; one more inside for whoever has it.",
        ages=(10, 16),
        develops=(("scanning", 3), ("positioning", 2)),
        ground=(),
        groups=(
            Group("amber", "inside", 4, 2, 5, square),
            Group("blue", "inside", 3, 1, 4, square, tie=Tie("amber inside", -1)),
            Group("amber", "edge", 3, 2, 5, edge),
            Group("blue", "edge", 3, 2, 5, edge),
        ),
        rules=tuple(rule(text) for text in SQUARE_RULES),
        steps=(Step("Earn it inside", "harder", add=(rule("Only passes between inside players count."),)),),
        questions=(Question("scanning", "What did you see before it came?", "head turns before the pass arrives"),),
    )


def square_setup(inside=4, edge=3, side_yd=16.0):
    side_m = side_yd * YARD_M
    counts = (("amber inside", inside), ("blue inside", inside - 1), ("amber edge", edge), ("blue edge", edge))
    return Setup(square_practice(), counts, (("square", Place("square", "rectangle", 0.0, 0.0, side_m, side_m)),))


SQUARE_ROWS = (
    Row("start", "starts", Who("role", side="amber", role="inside"), HERE, (1, 0)),
    Row(
        "change",
        "comes in",
        Who("nearest", role="edge", whose="its"),
        HERE,
        (4, 0),
        when=Event("act", Who("side"), Act("win and pass")),
        where=Where("square"),
    ),
    Row(
        "change",
        "goes out",
        Who("farthest", role="inside", whose="other"),
        HERE,
        (4, 1),
        when=Event("act", Who("side"), Act("win and pass")),
    ),
)


def ring(count, radius_m, turn=0.0):
    from math import cos, pi, sin

    angles = [turn + 2 * pi * n / count for n in range(count)]
    return tuple((radius_m * cos(a), radius_m * sin(a)) for a in angles)


def square_spots(setup):
    half = setup.field.across_m / 2
    along = [-half * 0.6, 0.0, half * 0.6, half * 0.85, -half * 0.85]
    amber, blue = setup.count("amber edge"), setup.count("blue edge")
    return {
        "amber inside": ring(setup.count("amber inside"), half * 0.65, 0.4),
        "blue inside": ring(setup.count("blue inside"), half * 0.3, 1.0),
        "amber edge": tuple((x, half + 0.5) for x in along[:amber]),
        "blue edge": tuple((half + 0.5, y) for y in along[:blue]),
    }


def zone_setup(a_side=4, neutrals=2):
    """An end-zone game with neutrals: three places, directional."""
    across, up, depth = 20 * YARD_M, 30 * YARD_M, 5 * YARD_M
    pitch = Home("pitch")
    practice = Practice(
        key="end-zones",
        name="Two harbours",
        about="Score by reaching the end zone with a pass.",
        ages=(9, 16),
        develops=(("positioning", 3),),
        ground=(),
        groups=(
            Group("red", "", a_side, 2, 7, pitch),
            Group("white", "", a_side, 2, 7, pitch),
            Group("neutral", "", neutrals, 0, 3, pitch),
        ),
        rules=(
            rule("A side scores 1 for receiving in the north zone."),
            rule("Neutrals play for the side with the ball."),
        ),
    )
    places = (
        ("pitch", Place("pitch", "rectangle", 0.0, 0.0, across, up)),
        ("north zone", Place("north zone", "rectangle", 0.0, (up - depth) / 2, across, depth)),
        ("south zone", Place("south zone", "rectangle", 0.0, -(up - depth) / 2, across, depth)),
    )
    return Setup(practice, (("red", a_side), ("white", a_side), ("neutral", neutrals)), places)


def zone_spots(setup):
    n, k = setup.count("red"), setup.count("neutral")
    xs = [(i + 0.5) / n * 16 - 8 for i in range(n)]
    return {
        "red": tuple((x, -5.0 - (i % 2) * 3) for i, x in enumerate(xs)),
        "white": tuple((x, 5.0 + (i % 2) * 3) for i, x in enumerate(xs)),
        "neutral": tuple(((i + 0.5) / max(1, k) * 14 - 7, 0.0) for i in range(k)),
    }


def circle_setup(outside=5, inside=2):
    """A rondo on a circle."""
    ring_home = Home("ring", on_edge=True)
    practice = Practice(
        key="ring",
        name="Lighthouse",
        about="Those outside keep the ball from those inside.",
        ages=(8, 16),
        develops=(("technique", 3),),
        ground=(),
        groups=(Group("yellow", "", outside, 4, 6, ring_home), Group("blue", "", inside, 1, 2, Home("ring"))),
        rules=(rule("Yellows score 1 for completing 6 passes in a row."),),
    )
    size = 10 * YARD_M
    return Setup(
        practice, (("yellow", outside), ("blue", inside)), (("ring", Place("ring", "circle", 0, 0, size, size)),)
    )


def circle_spots(setup):
    return {"yellow": ring(setup.count("yellow"), 5.1, 1.57), "blue": ring(setup.count("blue"), 1.2)}
