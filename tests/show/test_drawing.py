"""Drawings: everything in metres is shown, nothing overlaps at any size, and grey paper still tells the sides apart."""

import re
from dataclasses import replace
from itertools import combinations
from math import dist
from xml.etree import ElementTree

import pytest
from show_toys import (
    SQUARE_ROWS,
    circle_setup,
    circle_spots,
    square_setup,
    square_spots,
    zone_setup,
    zone_spots,
)

from turnout.show.frame import RADIUS_LEAST_PX, frame_for
from turnout.show.ink import BIB_INK, contrast, on, sides_of
from turnout.show.plan import setup_drawing
from turnout.show.svg import svg

BIBS = (("amber", "yellow"), ("blue", "blue"))


def square(inside=4, edge=3, side_yd=16.0, **more):
    setup = square_setup(inside, edge, side_yd)
    return setup_drawing(setup, bibs=BIBS, spots=square_spots(setup), rows=SQUARE_ROWS, **more)


def zones():
    setup = zone_setup()
    bibs = (("red", "red"), ("white", "white"), ("neutral", "black"))
    return setup_drawing(setup, bibs=bibs, spots=zone_spots(setup), rows=())


def rondo():
    setup = circle_setup()
    return setup_drawing(setup, bibs=BIBS, spots=circle_spots(setup), rows=())


DRAWINGS = {
    "square": square,
    "zones": zones,
    "rondo": rondo,
    "crowded": lambda: square(5, 5, 12),
    "big": lambda: square(5, 5, 24),
}


def words(drawn):
    return [text.text for text in ElementTree.fromstring(drawn).iter("{http://www.w3.org/2000/svg}text")]


def test_a_player_for_every_count_numbered_through_the_side():
    labels = [mark.label for mark in square().marks if mark.kind == "player"]
    assert labels == ["A1", "A2", "A3", "A4", "B1", "B2", "B3", "A5", "A6", "A7", "B4", "B5", "B6"]


def test_cones_stand_at_corners_and_where_zones_meet_the_sides():
    kinds = [mark.kind for mark in zones().marks]
    assert kinds.count("corner cone") == 4
    assert kinds.count("zone cone") == 4
    corner = {(round(m.x_m, 2), round(m.y_m, 2)) for m in zones().marks if m.kind == "corner cone"}
    assert corner == {(x, y) for x in (-9.14, 9.14) for y in (-13.72, 13.72)}


def test_measures_say_yards_and_paces():
    texts = {measure.side: measure.text for measure in square().measures}
    assert texts == {"south": "16 yd · 16 paces", "east": "16 yd · 16 paces"}
    assert [m.text for m in zones().measures if m.side == "west"] == ["5 yd · 5 paces", "5 yd · 5 paces"]


@pytest.mark.parametrize("name", DRAWINGS)
@pytest.mark.parametrize("px_per_yd", [4.0, 7.0, 12.0, 30.0])
def test_no_two_marks_touch_and_none_is_too_small(name, px_per_yd):
    drawing = DRAWINGS[name]()
    frame = frame_for(drawing, px_per_yd=px_per_yd, margins=(0.0, 0.0))
    assert frame.radius_px >= RADIUS_LEAST_PX
    spots = [spot for mark, spot in zip(drawing.marks, frame.spots, strict=True) if mark.kind == "player"]
    closest = min(dist(a, b) for a, b in combinations(spots, 2))
    assert closest >= 2 * frame.radius_px - 0.5


@pytest.mark.parametrize("name", DRAWINGS)
def test_making_room_moves_nobody_far_on_a_card(name):
    drawing = DRAWINGS[name]()
    frame = frame_for(drawing, px_per_yd=10.0, margins=(0.0, 0.0))
    for mark, spot in zip(drawing.marks, frame.spots, strict=True):
        if mark.kind == "player":
            assert dist(spot, frame.at(mark.x_m, mark.y_m)) < 3 * frame.radius_px


@pytest.mark.parametrize("name", DRAWINGS)
@pytest.mark.parametrize(("width", "height"), [(620, 620), (302, 400)])
def test_labels_stay_on_the_sheet(name, width, height):
    drawn = svg(DRAWINGS[name](), width_px=width, max_height_px=height)
    root = ElementTree.fromstring(drawn)
    assert float(root.get("width")) <= width + 1
    assert float(root.get("height")) <= height + 1
    for text in root.iter("{http://www.w3.org/2000/svg}text"):
        assert 0 <= float(text.get("x")) <= width
        assert 0 <= float(text.get("y")) <= float(root.get("height"))


def test_the_key_names_every_side_and_sign_that_is_drawn():
    told = words(svg(zones(), width_px=620))
    for word in ("Reds", "Whites", "Neutrals, black bibs", "corner cone", "zone cone", "ball"):
        assert word in told
    assert "run" not in told
    assert {"pass", "run", "number of its sentence"} <= set(words(svg(square(), width_px=620)))


def test_alt_text_tells_the_drawing_in_words():
    root = ElementTree.fromstring(svg(square(), width_px=620))
    title, desc = (root.find(f"{{http://www.w3.org/2000/svg}}{tag}").text for tag in ("title", "desc"))
    assert title == "Harbour square, 13 players"
    assert desc.startswith("A square of 16 x 16 yd.")
    assert "In square: four Yellows and three Blues." in desc
    assert "On the edge of square: three Yellows and three Blues." in desc
    assert "(sentence 1)" in desc
    assert root.get("role") == "img"
    assert root.get("aria-labelledby") == f"{root[0].get('id')} {root[1].get('id')}"


def test_lines_are_computed_from_the_sentences_and_numbered_by_them():
    drawing = square()
    ball, *runs = drawing.lines
    assert (ball.kind, ball.number) == ("ball", 1)
    holder, receiver = drawing.marks[ball.start], drawing.marks[ball.end]
    assert holder.group == "amber inside"
    assert receiver.side.letter == "A"
    assert [(line.kind, line.number) for line in runs] == [("run", 4), ("run", 4)]
    movers = [drawing.marks[line.start].group for line in runs]
    assert movers == ["blue edge", "amber inside"]


def test_without_a_start_sentence_no_line_is_invented():
    assert zones().lines == ()


def test_the_first_ball_takes_the_clearest_lane():
    setup = square_setup(2, 2, 16)
    spots = {
        "amber inside": ((-6.0, -6.0), (6.0, -6.0)),
        "blue inside": ((0.0, -6.0),),  # stands in the lane along the south side
        "amber edge": ((-6.0, 7.8), (6.0, 7.8)),
        "blue edge": ((7.8, 0.0), (7.8, 4.0)),
    }
    drawing = setup_drawing(setup, bibs=BIBS, spots=spots, rows=SQUARE_ROWS)
    ball = drawing.lines[0]
    assert drawing.marks[ball.start].label == "A1"
    assert drawing.marks[ball.end].label == "A3"  # straight up the west side, nobody near


def test_small_drawings_carry_two_lines_at_most():
    drawn = svg(square(), width_px=90, key=False, measures=False, names=False)
    assert drawn.count('stroke-dasharray="6 4.5"') <= 1


def test_every_fill_and_letter_differs_between_sides():
    sides = sides_of(zone_setup().practice, bibs=(("red", "red"), ("white", "white"), ("neutral", "black")))
    assert [(side.letter, side.fill) for side in sides] == [("A", "solid"), ("B", "ring"), ("N", "half")]
    assert [side.key for side in sides] == ["Reds", "Whites", "Neutrals, black bibs"]


@pytest.mark.parametrize("colour", BIB_INK)
def test_a_letter_reads_on_every_bib(colour):
    assert contrast(on(BIB_INK[colour]), BIB_INK[colour]) >= 4.5


def test_own_shirts_are_keyed_with_their_colour_when_known():
    practice = square_setup().practice
    bibs = (("amber", "own"), ("blue", "blue"))
    assert [side.key for side in sides_of(practice, bibs=bibs, own="green")] == ["Own shirts (green)", "Blues"]
    assert [side.key for side in sides_of(practice, bibs=bibs)] == ["Own shirts", "Blues"]


def test_names_in_a_title_cannot_break_out_of_the_drawing():
    from dataclasses import replace

    drawn = svg(replace(square(), title='<script>"&'), width_px=300)
    assert "<script" not in drawn
    ElementTree.fromstring(drawn)


def test_no_style_attribute_or_outside_address():
    drawn = svg(square(), width_px=300)
    assert "style=" not in drawn
    assert re.findall(r"https?://[^\"]*", drawn) == ["http://www.w3.org/2000/svg"]


def test_the_key_notes_who_has_how_many_touches():
    from shipped_practices import shipped

    from turnout.practice.steps import with_steps

    setup = shipped("harbour-square")
    two = setup_drawing(setup)
    one = setup_drawing(replace(setup, practice=with_steps(setup.practice, ["One touch on the edge"])))
    assert two.limits == ((2, "edge players"),) and one.limits == ((1, "edge players"),)
    assert "touches, edge players" in svg(two, width_px=400) and "touch, edge players" in svg(one, width_px=400)
    assert "Two touches: edge players." in two.desc
    assert setup_drawing(shipped("breakwater")).limits == ((2, "Neutrals"),)
