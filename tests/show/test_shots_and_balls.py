"""Shots, saves, blocks and many balls: told from the log, and every ball drawn with its height."""

import re
from types import SimpleNamespace

import numpy as np
import pytest
from shipped_practices import shipped
from show_evening import square_part

from turnout.play.recording import PlayEvent, Recording
from turnout.show.captions import captions
from turnout.show.evening import SideView
from turnout.show.film import film_strip
from turnout.show.ink import sides_of
from turnout.show.plan import setup_drawing
from turnout.show.replay import air_px, replay_page

GATE_1 = (-9.5 * 0.9144, 7.5 * 0.9144)


def event(t_s, kind, player, other=-1, side=0, x_m=0.0, y_m=0.0, value=0.0):
    return PlayEvent(t_s, kind, player, other, side, x_m, y_m, value)


def still(key: str, events, heights=(0.0,)) -> Recording:
    """Everybody stands; the balls lie in a row, as high as said."""
    setup = shipped(key)
    t = np.arange(0, 8.01, 0.1)
    roles = [role for role, (_, count) in enumerate(setup.counts) for _ in range(count)]
    spots = np.array([(number - 5.0, number % 3) for number in range(setup.players)], dtype=float)
    balls = np.array([(number, 0.0, high) for number, high in enumerate(heights)])
    return Recording(
        seed=1, roles=tuple(key for key, _ in setup.counts), t_s=t, players_m=np.tile(spots, (len(t), 1, 1)),
        facing=np.tile(np.array([0.0, 1.0]), (len(t), len(roles), 1)), ball_m=np.tile(balls[0, :2], (len(t), 1)),
        balls_m=np.tile(balls, (len(t), 1, 1)), holder=np.zeros(len(t), dtype=int),
        holders=np.tile(2 * np.arange(len(heights)), (len(t), 1)), role=np.tile(roles, (len(t), 1)),
        events=tuple(events),
    )  # fmt: skip


def told(key: str, *events, heights=(0.0,)) -> list[str]:
    sides = sides_of(shipped(key).practice)
    return [caption.text for caption in captions(still(key, events, heights), shipped(key), sides)]


SHOT = event(1.0, "shot", 2, y_m=9.0)
KEEPER = 9  # four amber, their keeper, four blue, their keeper


@pytest.mark.parametrize(
    ("after", "sentences"),
    [
        ([event(1.5, "save", KEEPER, 2, 1)], ["A3 shoots; keeper B5 saves."]),
        (
            [event(1.5, "save", KEEPER, 2, 1), event(1.5, "spill", KEEPER, side=1), event(2, "cut out", 6, 2, 1)],
            ["A3 shoots; keeper B5 saves and it comes loose.", "B2 wins the ball."],
        ),
        ([event(1.4, "block", 6, 2, 1)], ["A3 shoots; B2 blocks it."]),
        ([event(1.7, "out", 2, y_m=17.5)], ["A3 shoots, and it goes out."]),
        (
            [event(1.7, "score", 2, 1, y_m=17.5, value=1.0)],
            ["A3 shoots from 9 yd, and it is in.", "Ambers score 1 (sentence 1)."],
        ),
        ([event(1.7, "control", 6, side=1)], ["A3 shoots; B2 has it."]),
        ([], ["A3 shoots."]),
    ],
)
def test_a_shot_is_told_with_what_became_of_it(after, sentences):
    assert told("open-water", SHOT, *after)[1:] == sentences


def test_a_pass_may_end_with_the_keeper_and_a_save_may_come_alone():
    assert told("open-water", event(1, "pass", 0, 1), event(2, "save", KEEPER, 0, 1))[-1] == (
        "A1 passes towards A2; keeper B5 gathers it."
    )
    assert told("open-water", event(2, "save", KEEPER, side=1))[-1] == "Keeper B5 gathers the ball."


def test_of_many_balls_the_telling_follows_the_one_that_scores():
    passed = [
        event(1.0, "pass", 0, 1), event(1.2, "pass", 4, 5, x_m=GATE_1[0], y_m=GATE_1[1] - 3.0),
        event(1.9, "control", 1, 0, x_m=4.0), event(2.0, "control", 5, 4, x_m=GATE_1[0], y_m=GATE_1[1] + 3.0, value=7),
        event(2.0, "score", 4, 1, value=1.0), event(2.6, "pass", 1, 0),
    ]  # fmt: skip
    assert told("lock-gates", *passed, heights=(0.0,) * 6) == [
        "Six balls are in play; this follows A5 and A6.",
        "A5 passes to A6 through gate 1, 7 yd.",
        "A5 and A6 score 1 (sentence 1).",
    ]


def page(key: str, heights) -> str:
    setup, recording = shipped(key), still(key, [SHOT, event(1.5, "save", 0, 2, 1)], heights)
    drawing = setup_drawing(setup)
    seen = square_part(drawing=drawing, sides=tuple(SideView(side, 5, "5 bibs") for side in drawing.sides))
    return replay_page(recording, setup, seen, captions(recording, setup, [view.side for view in seen.sides]))


def test_the_replay_has_every_ball_and_a_line_for_each_pair():
    many = page("lock-gates", (0.0,) * 6)
    assert re.findall(r'<g id="(ball\d*)"', many) == ["ball", "ball1", "ball2", "ball3", "ball4", "ball5"]
    drawn = re.search(r'<g id="links">(.*?)</g>', many)[1]
    assert drawn.count("<path") == 6
    assert "ball in the air" not in many


def test_a_ball_in_the_air_wears_a_ring_the_key_explains():
    flying = page("open-water", (1.5,))
    assert re.search(r'id="air0" cx="0.0" cy="0.0" r="13.4"', flying) and "ball in the air" in flying
    assert (air_px(0.1), air_px(0.5) < air_px(2.0), air_px(4.0) == air_px(9.0)) == (0.0, True, True)


@pytest.mark.parametrize(
    ("key", "heights", "links", "rings"), [("lock-gates", (0.0,) * 6, 6, 0), ("open-water", (2.0,), 0, 1)]
)
def test_the_strip_shows_them_too(key, heights, links, rings):
    setup, recording = shipped(key), still(key, [], heights)
    drawing = setup_drawing(setup)
    seen = SimpleNamespace(name="Toy", drawing=drawing, sides=[SimpleNamespace(side=side) for side in drawing.sides])
    strip = film_strip(recording, setup, seen, captions(recording, setup, drawing.sides))
    keyed = 1 if links else 0
    assert strip.count('stroke="#63666C" stroke-width="1" fill="none"/>') == links + keyed
    assert strip.count('stroke-dasharray="2 2"') == rings
