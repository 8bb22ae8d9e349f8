"""Goals, gates, keepers, pairs and those who wait: drawn where they are, told in words, explained in the key."""

from itertools import combinations
from math import dist
from pathlib import Path

import pytest
from shipped_practices import shipped

from turnout.practice.ground import setup_of
from turnout.practice.line_sentences import told_by_list
from turnout.practice.nets import NET_DEPTH_M
from turnout.practice.read import read_practice
from turnout.practice.sentences import ground_sentences, people_sentences
from turnout.practice.setup import Setup
from turnout.practice.steps import with_steps
from turnout.show.frame import frame_for
from turnout.show.key import key_svg, signs
from turnout.show.paper import without_line_cones
from turnout.show.plan import setup_drawing
from turnout.show.steps import step_views
from turnout.show.svg import svg

LINE = """practice: Toy waves
ground:
  pitch: rectangle 24 x 30 yd
  north goal: goal 12 x 6 ft at the north end of pitch
people:
  amber: 3 in pitch
  blue outfield: 2 in pitch
  blue keeper: 1 in north goal
  waiting: 3 (0-3) behind the south end of pitch
rules:
  - Play starts with amber.
  - Amber attack the north goal.
arrange:
  waiting at most: 3
"""
SIZES = (2.4, 4.0, 7.0, 14.0)  # px per yard


def waves(folder: Path) -> Setup:
    file = folder / "toy.yaml"
    file.write_text(LINE, encoding="utf-8")
    return setup_of(read_practice(file))


def words_of_key(drawing) -> list[str]:
    return [words for _, _, words in signs(drawing)]


def with_counts(key: str, **counts: int) -> Setup:
    practice = shipped(key).practice
    return setup_of(practice, dict(shipped(key).counts) | {name.replace("_", " "): n for name, n in counts.items()})


def test_a_goal_has_its_net_outside_the_field_and_the_drawing_has_room_for_it():
    drawing = setup_drawing(shipped("open-water"))
    field, (west, south, east, north) = drawing.field.box, drawing.bounds_m
    assert [bar.kind for bar in drawing.bars] == ["goal", "goal"]
    assert (south, north) == pytest.approx((field[1] - NET_DEPTH_M["goal"], field[3] + NET_DEPTH_M["goal"]))
    assert (west, east) == pytest.approx((field[0], field[2]))
    assert [bar.back[1] > 0 for bar in drawing.bars] == [True, False]


@pytest.mark.parametrize("scale", SIZES)
@pytest.mark.parametrize("key", ["open-water", "four-coves", "lock-gates"])
def test_no_two_players_touch_and_no_keeper_stands_in_the_net(key, scale):
    drawing = setup_drawing(shipped(key))
    frame = frame_for(drawing, px_per_yd=scale, margins=(0.0, 0.0))
    spots = [(mark, spot) for mark, spot in zip(drawing.marks, frame.spots, strict=True) if mark.kind == "player"]
    if scale >= 4.0:
        assert all(dist(a, b) >= 2 * frame.radius_px for (_, a), (_, b) in combinations(spots, 2))
    _, top, _, bottom = frame.box(drawing.field)
    assert all(top < y < bottom for mark, (_, y) in spots if mark.keeper)


def test_the_key_explains_what_is_drawn_and_nothing_else():
    keys = ("open-water", "four-coves", "lock-gates")
    open_water, coves, gates = (words_of_key(setup_drawing(shipped(key))) for key in keys)
    assert {"keeper", "goal"} <= set(open_water) and "small goal" not in open_water
    assert "small goal" in coves and not {"keeper", "goal", "gate"} & set(coves)
    assert {"a pair", "gate"} <= set(gates) and "zone cone" not in gates
    assert not {"a pair", "gate", "keeper", "goal"} & set(words_of_key(setup_drawing(shipped("breakwater"))))
    together = key_svg([setup_drawing(shipped(key)) for key in ("open-water", "lock-gates")], 700.0)
    assert all(f">{words}</text>" in together for words in ("keeper", "a pair", "gate", "goal"))


def test_every_gate_has_its_two_cones():
    drawing = setup_drawing(shipped("lock-gates"))
    cones = [(mark.x_m, mark.y_m) for mark in drawing.marks if mark.kind == "gate cone"]
    assert len(cones) == 16
    assert {end for bar in drawing.bars for end in (bar.start, bar.end)} == set(cones)


@pytest.mark.parametrize(("players", "links", "balls"), [(12, 6, 6), (13, 7, 6), (4, 2, 2)])
def test_a_pair_is_linked_and_has_a_ball(players, links, balls):
    drawing = setup_drawing(with_counts("lock-gates", pairs=players))
    assert len(drawing.links) == links
    held = [mark.number for mark in drawing.marks if mark.kind == "ball"]
    assert len(held) == balls
    partner = {a for pair in drawing.links for a in pair}
    assert partner == set(range(players)) and set(held) <= partner
    assert not drawing.lines  # nobody plays to another pair's player


def test_those_who_wait_stand_off_the_field_without_a_letter(tmp_path):
    drawing = setup_drawing(waves(tmp_path))
    waiting = [mark for mark in drawing.marks if mark.waits]
    assert len(waiting) == 3 and all(mark.y_m < drawing.field.box[1] for mark in waiting)
    assert drawing.bounds_m[1] < min(mark.y_m for mark in waiting)
    assert "waiting their turn" in words_of_key(drawing)
    for scale in SIZES:
        frame = frame_for(drawing, px_per_yd=scale, margins=(0.0, 0.0))
        bottom = frame.box(drawing.field)[3]
        below = [spot[1] for mark, spot in zip(drawing.marks, frame.spots, strict=True) if mark.waits]
        assert all(y > bottom for y in below)
    assert "W1" not in svg(drawing, width_px=420)


def test_the_description_says_who_keeps_which_goal(tmp_path):
    desc = setup_drawing(shipped("open-water")).desc
    assert "North goal: 12 x 6 ft at the north end of the pitch." in desc
    assert "In south goal: the keeper of the Ambers." in desc and " x 0 yd" not in desc
    assert "Gates: 8 gates of 2 yd. In basin: 6 pairs." in setup_drawing(shipped("lock-gates")).desc
    assert "Waiting south of pitch: three." in setup_drawing(waves(tmp_path)).desc


def test_people_in_sentences(tmp_path):
    assert people_sentences(shipped("open-water"), {"amber": "red"}) == [
        "4 red v 4 blue outfield players inside a pitch of 26 x 38 yd.",
        "1 red keeper in the south goal and 1 blue keeper in the north goal.",
    ]
    assert people_sentences(with_counts("lock-gates", pairs=13)) == [
        "6 pairs (one of 3), each with a ball, inside a basin of 26 x 22 yd."
    ]
    assert people_sentences(waves(tmp_path))[-1] == "3 wait behind the south end of the pitch."


def test_goals_and_gates_in_sentences():
    told = dict(text.split(": ", 1) for text in ground_sentences(shipped("four-coves")))
    assert told["North-west goal"] == "6 x 3 ft at the north end of the pitch, 8 yd west of the middle."
    assert told["South goals"] == (
        "2 small goals of 6 x 3 ft at the south end of the pitch, 8 yd west and 8 yd east of the middle."
    )
    gates = dict(text.split(": ", 1) for text in ground_sentences(shipped("lock-gates")))
    assert gates["Gate 1"] == "2 yd wide, 10 yd west and 8 yd north of the middle."
    assert told_by_list(shipped("lock-gates")) == {f"gate {n}" for n in range(1, 9)}


def test_steps_speak_of_all_gates_at_once_and_of_two_goals_apart():
    gates, goals = (step_views(shipped(key), {}) for key in ("lock-gates", "open-water"))
    assert [step.sentence for step in gates["harder"]] == ["Pairs have 2 touches.", "Gates are 1.5 yd wide."]
    assert goals["easier"][0].sentence == "North goal is 16 x 7 ft. South goal is 16 x 7 ft."
    wide = setup_of(with_steps(shipped("lock-gates").practice, ["Wide gates"]))
    assert wide.place("gate 1").across_m == pytest.approx(3 * 0.9144)


def test_a_thumbnail_leaves_out_cones_along_a_line():
    field = setup_drawing(shipped("open-water"), cones=[("corner cone", 0, 0), ("line cone", 5, 0)])
    assert [mark.kind for mark in without_line_cones(field).marks if "cone" in mark.kind] == ["corner cone"]
