"""The lines of a drawing: who is drawn as starting, coming in and following the pass."""

from turnout.practice.ground import setup_of
from turnout.practice.read import read_practice
from turnout.practice.shelf import practice_files
from turnout.show.plan import setup_drawing


def drawing(key):
    return setup_drawing(setup_of(read_practice(practice_files()[key])))


def runs(drawn):
    return [(drawn.marks[line.start].group, line) for line in drawn.lines if line.kind == "run"]


def test_the_other_side_of_a_run_of_passes_is_the_one_without_the_ball():
    drawn = drawing("side-winds")
    assert [group for group, _ in runs(drawn)] == ["blue wide"]


def test_the_other_side_of_a_ball_won_is_the_one_that_had_it():
    assert sorted(group for group, _ in runs(drawing("harbour-square"))) == ["amber inside", "blue edge"]


def test_only_who_follows_a_pass_is_drawn_following_it():
    assert [group for group, _ in runs(drawing("sea-wall"))] == ["amber inside"]
    assert [group for group, _ in runs(drawing("rope-walk"))] == ["amber base"]
    assert runs(drawing("pilot-boats")) == []


def test_a_pass_to_others_is_not_followed():
    drawn = drawing("lighthouse")
    (ball,) = [line for line in drawn.lines if line.kind == "ball"]
    assert drawn.marks[ball.end].group == "amber inside" and runs(drawn) == []


def test_nobody_who_waits_starts_with_the_ball():
    for key in ("narrow-channel", "paired-buoys"):
        drawn = drawing(key)
        (ball,) = [mark for mark in drawn.marks if mark.kind == "ball"]
        assert drawn.marks[ball.number].group == "amber"
