"""Ground that is not a plain rectangle: circles, strips on one side only, copies that lie turned."""

from dataclasses import replace

import pytest
from seen_by_shapely import faults, place_shape
from shapely.geometry import Point, Polygon
from toy_practices import keep_ball, overload, session_of, tonight

from turnout.club.tonight import Space
from turnout.fit import fit_session
from turnout.fit.ground import place_polygon
from turnout.layout import lay_out
from turnout.measure import YARD_M
from turnout.practice.model import PlaceDef
from turnout.session.model import Part


def with_channel():
    """The overload with a strip of 6 yd beyond the north end only."""
    practice = overload()
    channel = PlaceDef("channel", "strip", depth_m=6 * YARD_M, inside=False, side="north", of="box")
    return replace(practice, ground=(*practice.ground, channel))


def round_keep_ball():
    """The keep-ball in a circle of 10 yd across."""
    return replace(keep_ball(), ground=(PlaceDef("square", "circle", across_m=10 * YARD_M),))


@pytest.mark.parametrize("space", [Space("upright", 24, 60), Space("lying", 60, 23), Space("tight", 29, 23)], ids=str)
@pytest.mark.parametrize("players", [10, 13, 16, 20])
def test_a_strip_on_one_side_lies_inside_also_when_turned(players, space):
    fitted = fit_session(session_of(Part(with_channel(), 15)), tonight(players, space, minutes=15))
    assert faults(fitted) == []


def test_a_copy_is_turned_where_it_must_be():
    fitted = fit_session(session_of(Part(with_channel(), 15)), tonight(13, Space("lying", 40, 23.5), minutes=15))
    (copy,) = fitted.parts[0].copies
    assert copy.turned
    assert faults(fitted) == []


@pytest.mark.parametrize("players", [6, 13, 18])
def test_circles_are_fitted_as_circles(players):
    fitted = fit_session(session_of(Part(round_keep_ball(), 15)), tonight(players, minutes=15))
    assert fitted.fits and faults(fitted) == []
    assert "yd across" in fitted.reasons[0]
    ((part,), copies) = lay_out(fitted).parts, fitted.parts[0].copies
    circles = [place_shape(copy, "square") for copy in copies]
    cones = [item for item in part.items if item.kind.endswith("cone")]
    assert len(cones) % len(copies) == 0 and len(cones) >= 8 * len(copies)
    for cone in cones:
        assert min(circle.exterior.distance(Point(cone.x_m, cone.y_m)) for circle in circles) < 0.05


@pytest.mark.parametrize("space", [Space("upright", 24, 60), Space("lying", 40, 23.5)], ids=str)
def test_the_polygons_others_draw_are_those_shapely_sees(space):
    fitted = fit_session(session_of(Part(with_channel(), 15)), tonight(13, space, minutes=15))
    for copy in fitted.parts[0].copies:
        for name, _ in copy.setup.places:
            ours, theirs = Polygon(place_polygon(copy, name)), place_shape(copy, name)
            assert ours.symmetric_difference(theirs).area < 1e-6
