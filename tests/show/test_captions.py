"""The telling says what the log holds, and nothing else."""

from pathlib import Path

import pytest
from shipped_practices import KEYS
from show_recording import event, recording, setup

from turnout.practice.ground import setup_of
from turnout.practice.read import read_practice
from turnout.practice.shelf import practice_files
from turnout.show.captions import Cast, captions
from turnout.show.following import followed, of_ball
from turnout.show.ink import sides_of

SIDES = sides_of(setup().practice, bibs=(("amber", "yellow"), ("blue", "blue")))


def told(*events):
    return [caption.text for caption in captions(recording(events or None), setup(), SIDES)]


def test_a_whole_passage_in_order():
    assert told() == [
        "A1 has the ball.",
        "A1 passes to A3 on the edge, 13 yd: 2 in a row.",
        "A3, first time, passes to A2, 9 yd: 3 in a row.",
        "A2 passes to A1, 12 yd.",
        "Yellows have it now: A3 comes in and A2 goes out.",
        "A1 passes towards A3; B1 cuts it out.",
        "Blues score 1 (sentence 3).",
        "A1 and B1 fight for it, and B1 comes away with it.",
        "B1 passes towards B2, and it goes out.",
    ]


@pytest.mark.parametrize(
    ("events", "sentence"),
    [
        ([event(0.1, "start", 3)], "A3 starts on the edge."),
        ([event(0.1, "start", 0)], "A1 starts."),
        ([event(0.1, "out", 2, side=1)], "The ball goes out off B1."),
        ([event(0.1, "tackle", 2, 0, side=1, value=1.0)], "B1 tackles A1 and has the ball."),
        ([event(0.1, "cut out", 2, 0, side=1, value=4.0)], "A1’s touch is loose and B1 takes it."),
        ([event(0.1, "score", 0, 2, side=0, value=2.0)], "Yellows score 2 (sentence 2)."),
        ([event(0.1, "pass", 0, 1)], "A1 passes towards A2."),
        (
            [event(0.1, "pass", 0, 1), event(0.9, "control", 4, 0, x_m=3.0, y_m=7.8)],
            "A1 looks for A2, and A4 has it on the edge, 9 yd.",
        ),
    ],
)
def test_each_thing_that_happens_has_its_sentence(events, sentence):
    assert told(*events)[-1] == sentence


def test_a_pass_carries_its_line_and_when_it_arrives():
    passed = captions(recording(), setup(), SIDES)[1]
    assert passed.line == ((-4.0, -4.0), (-3.0, 7.8))
    assert (passed.t_s, passed.line_to_s) == (21.0, 22.0)


def test_times_never_go_back():
    times = [caption.t_s for caption in captions(recording(), setup(), SIDES)]
    assert times == sorted(times)


def test_no_run_is_told_that_the_log_does_not_hold():
    events = [event(0.1, "pass", 0, 1), event(0.9, "control", 1, 0, value=5.0), event(1.5, "tackle", 2, 1, side=1)]
    assert not any("in a row" in sentence for sentence in told(*events))


def test_numbers_run_through_everybody_when_players_change_sides():
    made = recording()
    made.role[50:, 0] = 1  # an amber player becomes blue
    cast = Cast(made, setup(), SIDES)
    assert cast.numbers == (1, 2, 3, 4, 5, 6, 7)
    assert cast.label(0, 20.0) == "A1"
    assert cast.label(0, 28.0) == "B1"


@pytest.mark.parametrize("key", KEYS)
def test_a_practice_of_the_shelf_can_be_told(key):
    from turnout.play.simulate import record

    practice = read_practice(Path(practice_files()[key]))
    made = setup_of(practice)
    window = record(made, age=12, level="learning", seed=3, window=(5.0, 30.0))
    sides = sides_of(practice, bibs=(("amber", "yellow"), ("blue", "blue"), ("neutral", "black")))
    sentences = captions(window, made, sides)
    told = of_ball(followed(window.events, Cast(window, made, sides)), window.events, Cast(window, made, sides))
    passes = sum(event.kind == "pass" for event in told)
    assert sum(caption.kind == "pass" for caption in sentences) == passes > 0
    labels = {f"{side.letter}{n}" for side in sides for n in range(1, 30)}
    for caption in sentences:
        assert caption.text.endswith(".")
        assert "-1" not in caption.text
        named = {word.strip(".,;:’s") for word in caption.text.split() if word[:1] in "ABN" and word[1:2].isdigit()}
        assert named <= labels
