"""Boxes, quarter turns and even spacing, checked with shapely and by hand."""

from math import dist, pi

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.affinity import rotate
from shapely.geometry import box as shape

from turnout.shapes.boxes import Box, distance, grown, hull, inside, turned
from turnout.shapes.spacing import along, apart, round_circle, sides

side = st.floats(-50, 50)
boxes = st.builds(lambda x, y, w, h: Box(x, y, x + w, y + h), side, side, st.floats(0.5, 30), st.floats(0.5, 30))


def as_shape(box: Box):
    return shape(box.x0, box.y0, box.x1, box.y1)


@given(boxes, boxes)
def test_distance_is_shapelys(one, other):
    assert distance(one, other) == pytest.approx(as_shape(one).distance(as_shape(other)), abs=1e-9)


@given(boxes)
def test_a_quarter_turn_is_shapelys(box):
    theirs = rotate(as_shape(box), 90, origin=(0, 0)).bounds
    ours = turned(box)
    assert (ours.x0, ours.y0, ours.x1, ours.y1) == pytest.approx(theirs, abs=1e-9)


@given(boxes, boxes)
def test_the_hull_holds_both_and_nothing_smaller_does(one, other):
    around = hull([one, other])
    assert inside(one, around) and inside(other, around)
    assert (around.x0, around.y0, around.x1, around.y1) == pytest.approx(as_shape(one).union(as_shape(other)).bounds)


def test_growing_moves_every_side():
    assert grown(Box(0, 0, 2, 4), 1) == Box(-1, -1, 3, 5)


def test_points_along_a_side_are_even_and_near_enough():
    assert along((0, 0), (24, 0), at_most=8) == [(8, 0), (16, 0)]
    assert along((0, 0), (8, 0), at_most=8) == []
    assert len(along((0, 0), (8.1, 0), at_most=8)) == 1


def test_a_box_has_four_sides_that_meet():
    ends = [end for _, end in sides(Box(0, 0, 3, 2))]
    starts = [start for start, _ in sides(Box(0, 0, 3, 2))]
    assert ends == starts[1:] + starts[:1]


@given(st.floats(2, 60), st.floats(1, 8))
def test_chords_are_even_and_no_longer_than_asked(across, chord):
    points = round_circle(0, 0, across=across, chord_at_most=chord)
    gaps = [dist(points[number], points[number - 1]) for number in range(len(points))]
    assert max(gaps) <= chord + 1e-9 or len(points) == 8
    assert max(gaps) - min(gaps) < 1e-9
    assert all(dist(point, (0, 0)) == pytest.approx(across / 2) for point in points)
    assert len(points) >= pi * across / chord - 1e-9


def test_points_too_near_are_dropped_the_first_stays():
    assert apart([(0, 0), (0.5, 0), (2, 0)], by=1) == [(0, 0), (2, 0)]
