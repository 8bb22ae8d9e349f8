"""Cones, heaps and change-overs: where they stand, how many, and that the counts add up."""

from collections import Counter
from itertools import pairwise
from math import dist

import pytest
from seen_by_shapely import ground_taken, place_shape
from shapely.geometry import Point, box
from toy_practices import (
    QUARTER,
    THIRD,
    end_zones,
    keep_ball,
    overload,
    session_of,
    shelf_session,
    tonight,
    toy_session,
)

from turnout.club.tonight import Kit
from turnout.fit import fit_session
from turnout.layout import lay_out
from turnout.session.model import Part

CONES = ("corner cone", "zone cone", "line cone")


def cones(part) -> list:
    return [item for item in part.items if item.kind in CONES]


def fitted_one(practice, players, **more):
    return fit_session(session_of(Part(practice, 15)), tonight(players, minutes=15, **more))


def test_a_small_square_has_its_four_corners_and_no_more():
    layout = lay_out(fitted_one(keep_ball(), 6))
    (part,) = layout.parts
    assert sorted(item.kind for item in cones(part)) == ["corner cone"] * 4
    assert part.sentence == "Lay 4 white cones."
    assert dict(layout.kit)["white cones"] == 4


def test_long_sides_have_a_cone_at_least_every_eight_metres():
    fitted = fitted_one(overload(), 13)
    (part,) = lay_out(fitted).parts
    side = fitted.parts[0].copies[0].setup.field.across_m
    assert side > 12
    assert Counter(item.kind for item in cones(part)) == {"corner cone": 4, "line cone": 4}


@pytest.mark.parametrize("players", range(8, 25))
@pytest.mark.parametrize("space", [THIRD, QUARTER], ids=lambda space: space.name)
def test_every_cone_stands_on_a_line_and_every_corner_has_one(players, space):
    fitted = fit_session(toy_session(), tonight(players, space))
    for fit_part, part in zip(fitted.parts, lay_out(fitted).parts, strict=True):
        places = [place_shape(copy, name) for copy in fit_part.copies for name, _ in copy.setup.places]
        points = [Point(item.x_m, item.y_m) for item in cones(part)]
        for point in points:
            assert min(place.exterior.distance(point) for place in places) < 0.01
        for place in places:
            for corner in place.exterior.coords[:-1]:
                assert min(Point(corner).distance(point) for point in points) < 1.01
        for place in places:
            along = sorted(place.exterior.project(point) for point in points if place.exterior.distance(point) < 0.01)
            gaps = [after - before for before, after in pairwise(along)]
            assert max(gaps) <= 12.01


@pytest.mark.parametrize("players", [8, 14, 20])
def test_no_two_cones_of_an_area_are_nearer_than_a_metre(players):
    for part in lay_out(fit_session(toy_session(), tonight(players))).parts:
        spots = [(item.x_m, item.y_m) for item in cones(part)]
        assert min(dist(one, other) for n, one in enumerate(spots) for other in spots[:n]) >= 0.99


def test_heaps_and_coach_keep_the_run_off_from_every_area():
    for players in (9, 14, 20):
        fitted = fit_session(toy_session(), tonight(players))
        ground = box(0, 0, fitted.tonight.space.across_m, fitted.tonight.space.up_m)
        for fit_part, part in zip(fitted.parts, lay_out(fitted).parts, strict=True):
            kinds = Counter(item.kind for item in part.items)
            assert kinds["coach"] == kinds["bib heap"] == 1
            assert kinds["ball heap"] >= 1
            for item in part.items:
                if item.kind not in CONES:
                    point = Point(item.x_m, item.y_m)
                    assert ground.covers(point)
                    taken = [ground_taken(copy).distance(point) for copy in fit_part.copies]
                    assert min(taken) >= fitted.tonight.space.run_off_m - 1e-3


@pytest.mark.parametrize("players", range(8, 21))
def test_what_is_laid_lifted_and_left_adds_up(players):
    layout = lay_out(fit_session(shelf_session(), tonight(players)))
    standing = 0
    for part in layout.parts:
        assert standing - part.lift == part.stay
        standing = part.stay + part.lay
        assert standing == len(cones(part))


def test_the_same_part_twice_moves_nothing():
    fitted = fit_session(session_of(Part(keep_ball(), 12), Part(keep_ball(), 12)), tonight(12, minutes=26))
    first, second = lay_out(fitted).parts
    assert (second.lay, second.lift, second.stay) == (0, 0, first.lay)
    assert second.sentence == "Nothing to lay; 8 stay."


def test_zones_stand_in_the_second_colour():
    (part,) = lay_out(fitted_one(end_zones(), 10)).parts
    colours = {item.kind: item.colour for item in cones(part)}
    assert colours["zone cone"] == "red"
    assert colours["corner cone"] == colours["line cone"] == "white"


def test_what_the_bag_lacks_is_said_with_its_figure():
    layout = lay_out(fitted_one(overload(), 13, kit=Kit(cones=(("white", 5),), balls=2)))
    assert dict(layout.kit)["white cones"] == 8
    assert layout.short == (
        "3 white cones short: 8 at once, 5 in the bag.",
        "Toy overload: 2 balls for 1 area, 6 would be 6 at each.",
    )


def test_bibs_counted_are_those_worn():
    fitted = fit_session(toy_session(), tonight(16))
    worn = Counter()
    for part in fitted.parts:
        here = Counter()
        for copy in part.copies:
            for group, (_, count) in zip(copy.setup.practice.groups, copy.setup.counts, strict=True):
                if count:
                    here[dict(copy.bibs)[group.side]] += count
        worn |= here
    del worn["own"]
    counted = {name.removesuffix(" bibs"): count for name, count in lay_out(fitted).kit if name.endswith("bibs")}
    assert counted == dict(worn)


def test_nothing_fitted_is_an_empty_layout():
    layout = lay_out(fit_session(toy_session(), tonight(3)))
    assert layout.parts == () and layout.short == ()
