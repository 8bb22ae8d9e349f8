"""Where everybody stands when play starts."""

import pytest
from shipped_practices import KEYS, shipped

from turnout.practice.ground import setup_of
from turnout.practice.starts import perimeter_point, starts


@pytest.mark.parametrize("key", KEYS)
def test_every_player_has_a_spot_of_his_own_at_home(key: str) -> None:
    setup = shipped(key)
    spots = starts(setup)
    assert {group: len(at) for group, at in spots.items()} == dict(setup.counts)
    everyone = [spot for at in spots.values() for spot in at]
    assert len({(round(x, 2), round(y, 2)) for x, y in everyone}) == setup.players
    half_x, half_y = setup.field.across_m / 2, setup.field.up_m / 2
    for group in setup.practice.groups:
        for x, y in spots[group.key]:
            inside = abs(x) <= half_x and abs(y) <= half_y
            assert inside != group.home.on_edge


@pytest.mark.parametrize("number", [3, 4, 5, 6])
def test_nobody_starts_where_a_sentence_keeps_him_out(number: int) -> None:
    practice = shipped("breakwater").practice
    setup = setup_of(practice, {"amber": number, "blue": number, "neutral": 2})
    spots = starts(setup)
    north = setup.place("north end")
    line = north.y_m - north.up_m / 2
    assert all(y > -line for _, y in spots["amber"])  # amber stay out of the south end
    assert all(y < line for _, y in spots["blue"])
    assert all(abs(y) < line for _, y in spots["neutral"])


def test_an_edge_is_walked_clockwise_from_the_middle_of_its_north_side() -> None:
    square = shipped("harbour-square").field
    north, east = perimeter_point(square, 0.0, 0.0), perimeter_point(square, 0.25, 0.0)
    assert north == pytest.approx((0.0, square.up_m / 2))
    assert east == pytest.approx((square.across_m / 2, 0.0))


def test_with_two_homes_the_other_side_starts_in_the_one_without_the_ball() -> None:
    setup = shipped("three-lanterns")
    court, spots = setup.field, starts(setup)
    assert all(abs(y) > court.up_m / 2 for _, y in spots["amber"])
    assert all(abs(x) < court.across_m / 2 and abs(y) < court.up_m / 2 for x, y in spots["blue"])
    assert len(spots["blue"]) == setup.count("blue")
