"""Stills at even moments: what happened in between stands under each; blind, nothing is said."""

import re

import pytest
from show_evening import square_part
from show_recording import recording, setup
from show_toys import SQUARE_ROWS, square_spots

from turnout.show.captions import captions
from turnout.show.evening import SideView
from turnout.show.film import even_strip
from turnout.show.plan import setup_drawing

BIBS = (("amber", "yellow"), ("blue", "blue"))
TIMES = (20.5, 22.1, 23.5, 25.0)


def strip(**how):
    drawing = setup_drawing(setup(), bibs=BIBS, spots=square_spots(setup()), rows=SQUARE_ROWS)
    part = square_part(drawing=drawing, sides=tuple(SideView(side, 4, "4 bibs") for side in drawing.sides))
    told = captions(recording(), setup(), [view.side for view in part.sides])
    return even_strip(recording(), setup(), part, told, **({"times": TIMES} | how))


def words(drawn):
    return " ".join(re.findall(r"<text[^>]*>([^<]*)", drawn))


@pytest.fixture(scope="module")
def drawn():
    return strip()


def test_a_still_for_every_moment_in_rows_of_three(drawn):
    stills = re.findall(r'<g transform="translate\(([\d.]+) 0\)"><', drawn)
    assert len(stills) == len(TIMES)
    assert stills[0] == stills[3]  # the fourth begins the second row


def test_every_sentence_of_the_time_between_stands_once(drawn):
    said = words(drawn)
    assert "A1 has the ball." in said  # nothing was told before the first still
    for sentence in ("A1 passes to A3", "A3, first time, passes to", "comes in", "A1 passes towards A3"):
        assert said.count(sentence) == 1, sentence


def test_who_moved_between_stills_has_a_trail():
    # everybody drifts by 0.2 m/s: less than a metre in four seconds, more in six
    old_place = 'r="3.60"'
    assert strip(times=(24.0,), since_s=20.0).count(old_place) == 1  # in the key
    assert strip(times=(26.0,), since_s=20.0).count(old_place) == 1 + 7


def test_the_ball_is_not_hidden_under_a_mark(drawn):
    marks = [tuple(map(float, m)) for m in re.findall(r'<circle cx="([\d.-]+)" cy="([\d.-]+)" r="4.20"', drawn)]
    assert len(marks) == len(TIMES)
    first = drawn.split("</g>")[0]
    balls = re.findall(r'<circle cx="([\d.-]+)" cy="([\d.-]+)" r="4.20"', first)
    players = re.findall(r'<circle cx="([\d.-]+)" cy="([\d.-]+)" r="(\d{2}\.\d+|[89]\.\d+)"', first)
    ((x, y),) = [tuple(map(float, each)) for each in balls]
    for px, py, r in (tuple(map(float, each)) for each in players):
        assert ((x - px) ** 2 + (y - py) ** 2) ** 0.5 > float(r)


def test_blind_says_nothing(drawn):
    silent = strip(blind=True)
    assert "Harbour square" in drawn and "Harbour square" not in silent
    assert "passes" not in silent and "touches" not in silent
    assert set(words(silent).split()) & {"1", "2", "3", "4"} == set()  # not even the numbers of the stills
    assert "A3" in words(silent)  # the players keep theirs
