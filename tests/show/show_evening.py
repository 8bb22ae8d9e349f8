"""A hand-made evening: three parts with everything a card may carry."""

from show_toys import (
    SQUARE_ROWS,
    SQUARE_RULES,
    circle_setup,
    circle_spots,
    square_setup,
    square_spots,
    zone_setup,
    zone_spots,
)

from turnout.care import care_box
from turnout.show.evening import (
    AskView,
    EveningView,
    ForecastRow,
    PartView,
    RotaRow,
    RotaView,
    SideView,
    SizeView,
    StepView,
)
from turnout.show.plan import setup_drawing
from turnout.show.strips import AXES
from turnout.show.view import band_text
from turnout.study.model import Band

NAMES = (
    "Ada", "Bea", "Carys", "Dot", "Esme", "Fern", "Gwen", "Hana", "Ines", "Juno", "Kit", "Lola", "Mab", "Nell", "Orla",
    "Pia", "Queenie", "Rhian", "Sian", "Tess", "Una", "Vida", "Wren", "Yara",
)  # fmt: skip
BANDS = {
    "passes_in_a_row": Band(1, 2, 3, 5, 8),
    "success": Band(0.08, 0.15, 0.21, 0.27, 0.4),
    "touches_per_player_min": Band(2.8, 3.4, 4, 4.6, 5.4),
    "regains_per_side_min": Band(2.9, 3.8, 4.4, 5.1, 6.2),
    "distance_m_per_player_min": Band(56, 64, 70, 77, 85),
}


def care(players=14, **changes):
    facts = {
        "age": 13, "adults": 2, "first_aider": True, "uses_goals": False, "run_off_m": 3.0, "outdoors": True,
        "country": "England",
    }  # fmt: skip
    return care_box(players=players, **{**facts, **changes})


def forecast_rows():
    return tuple(
        ForecastRow(name, AXES[name], band.p50, band.p25, band.p75, "", "side", band, band_text(band, AXES[name].scale))
        for name, band in BANDS.items()
    )


def rota(sides, roles, names, blocks=5, waiting=0, copies=1, note="Everybody is outside twice or three times."):
    columns = tuple((side, f"{side.name} {role}".strip()) for side, role in zip(sides, roles, strict=True))
    rows = []
    for block in range(blocks):
        for copy in range(copies):
            dealt = [names[(i + block) % len(names)] for i in range(len(names))]
            share = max(1, len(names) // copies // len(roles))
            cells = [", ".join(dealt[i * share : (i + 1) * share]) for i in range(len(roles))]
            rows.append(
                RotaRow(
                    str(block + 1) if copy == 0 else "",
                    f"18:{14 + 3 * block}" if copy == 0 else "",
                    str(copy + 1) if copies > 1 else "",
                    tuple(cells),
                )
            )
    return RotaView(columns, tuple(rows), note, copies)


def square_part(number=2, of=3, names=NAMES[:14], rules=SQUARE_RULES, blocks=5, copies=1, **changes):
    setup = square_setup(4, 3, 16)
    bibs = (("amber", "yellow"), ("blue", "blue"))
    drawing = setup_drawing(setup, bibs=bibs, spots=square_spots(setup), rows=SQUARE_ROWS)
    first, second = drawing.sides
    facts = {
        "number": number,
        "of": of,
        "key": "harbour-square",
        "name": "Harbour square",
        "about": "Two sides keep the ball in a square.",
        "start": "18:14",
        "end": "18:32",
        "minutes": 18.0,
        "blocks": f"{blocks} blocks of 3 min",
        "copies": copies,
        "copies_text": "" if copies == 1 else f"{copies} side by side, of {len(names) // copies}",
        "drawing": drawing,
        "ground": drawing,
        "sides": (SideView(first, 7, "7 yellow bibs"), SideView(second, 6, "6 blue bibs")),
        "sizes": (SizeView("square", "16 x 16 yd", "14.6 x 14.6 m", "16 x 16 paces"),),
        "people": ("4 v 3 inside a square of 16 yd.", "3 Yellows and 3 Blues on its edge."),
        "rules": tuple(rule.replace("amber", "yellow") for rule in rules),
        "rota": rota(
            (first, second, first, second), ("inside", "inside", "edge", "edge"), names, blocks=blocks, copies=copies
        ),
        "forecast": forecast_rows(),
        "forecast_note": "400 simulated minutes, seed 7; one block of 3 min.",
        "harder": (StepView("Earn it inside", "Only passes between inside players count.", ("task",)),),
        "easier": (StepView("More room", "Square is 20 x 20 yd: 20 paces.", ("space",)),),
        "different": (),
        "questions": (AskView("scanning", "What did you see before it came?", "head turns before the pass arrives"),),
        "set_up": "Lay 4 white cones; 4 stay.",
        "balls": 6,
        "waiting": 0,
        "gave_way": ("14 players instead of 13.",),
        "care": care(len(names)),
    }
    return PartView(**{**facts, **changes})


def zone_part(number=3, of=3, **changes):
    setup = zone_setup()
    bibs = (("red", "yellow"), ("white", "blue"), ("neutral", "black"))
    drawing = setup_drawing(setup, bibs=bibs, spots=zone_spots(setup), rows=())
    sides = drawing.sides
    return square_part(
        number,
        of,
        name="Two harbours",
        key="end-zones",
        start="18:34",
        end="18:45",
        drawing=drawing,
        ground=drawing,
        sides=tuple(SideView(side, 4, f"4 {side.colour} bibs") for side in sides),
        sizes=(SizeView("pitch", "20 x 30 yd", "18.3 x 27.4 m", "20 x 30 paces"),),
        people=("4 v 4 in a pitch of 20 x 30 yd.", "2 neutrals in it."),
        rules=("A side scores 1 for receiving in the zone it attacks.", "Neutrals play for the side with the ball."),
        rota=rota(sides, ("", "", ""), NAMES[:14], blocks=2),
        **changes,
    )


def circle_part(number=1, of=3, **changes):
    setup = circle_setup()
    drawing = setup_drawing(setup, bibs=(("yellow", "yellow"), ("blue", "blue")), spots=circle_spots(setup), rows=())
    return square_part(
        number,
        of,
        name="Lighthouse",
        key="ring",
        start="18:00",
        end="18:12",
        copies=2,
        drawing=drawing,
        ground=drawing,
        people=("5 Yellows on the edge of a ring of 10 yd across.", "2 Blues in it."),
        rules=("Yellows score 1 for completing 6 passes in a row.", "Yellows have 2 touches."),
        sizes=(SizeView("ring", "10 yd across", "9.1 m across", "10 paces"),),
        rota=rota(drawing.sides, ("", ""), NAMES[:14], blocks=3, copies=2),
        **changes,
    )


def evening(parts=None, names=True, **changes):
    parts = parts or (circle_part(), square_part(), zone_part())
    facts = {
        "title": "Out of pressure",
        "aim": "receive facing forward when a defender is close",
        "players": 14,
        "start": "18:00",
        "end": "18:45",
        "space": "36 x 70 yd" if names else "third of 3G, 36 x 70 yd",
        "adults": "2 adults",
        "kit": "16 white cones, 8 red cones, 7 yellow bibs, 7 blue bibs, 6 balls",
        "age": "U13",
        "parts": parts,
        "care": parts[0].care,
        "why": ("Harbour square: one area of 16 x 16 yd.",),
        "left_out": (),
        "short": (),
        "country": "England",
        "names": names,
        "date": None if names else "Tuesday 6 October",
        "club": None if names else "Saltmarsh Juniors",
    }
    return EveningView(**{**facts, **changes})
