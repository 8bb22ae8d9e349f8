"""Place expressions and people lines, one by one."""

import pytest

from turnout.practice.ground_words import PlaceError, read_place
from turnout.practice.model import Group, Home, PlaceDef, Tie
from turnout.practice.people_words import PeopleError, read_people

YD = 0.9144
KNOWN = {"pitch": PlaceDef("pitch", "rectangle", 20.0, 30.0), "box": PlaceDef("box", "rectangle", 5.0, 5.0)}
AMBER = Group("amber", "", 4, 2, 5, Home("pitch"))


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("rectangle 16 x 20 yd", PlaceDef("p", "rectangle", 16 * YD, 20 * YD)),
        ("rectangle 9.5x7 m", PlaceDef("p", "rectangle", 9.5, 7.0, unit="m")),
        ("circle 18 yd across", PlaceDef("p", "circle", 18 * YD)),
        ("circle 20 paces across", PlaceDef("p", "circle", 18.0, unit="paces")),
        ("strip 5 yd inside the north end of pitch", PlaceDef("p", "strip", depth_m=5 * YD, side="north", of="pitch")),
        ("strip 6 ft beyond the west side of Pitch",
         PlaceDef("p", "strip", depth_m=6 * 0.3048, inside=False, side="west", of="pitch", unit="ft")),
        ("pitch, box", PlaceDef("p", "list", members=("pitch", "box"))),
    ],
)  # fmt: skip
def test_places(text: str, expected: PlaceDef) -> None:
    (place,) = read_place("p", text, KNOWN)
    assert place.across_m == pytest.approx(expected.across_m) and place.depth_m == pytest.approx(expected.depth_m)
    fields = ("kind", "up_m", "inside", "side", "of", "members", "unit")
    assert [getattr(place, name) for name in fields] == [pytest.approx(getattr(expected, name)) if name == "up_m"
                                                         else getattr(expected, name) for name in fields]  # fmt: skip


def test_thirds_bring_their_pieces_and_the_list_of_them() -> None:
    places = read_place("lanes", "thirds of pitch from west to east (left, middle, right)", KNOWN)
    assert [(place.name, place.kind, place.index, place.pieces) for place in places] == [
        ("left", "part", 0, 3), ("middle", "part", 1, 3), ("right", "part", 2, 3), ("lanes", "list", 0, 0),
    ]  # fmt: skip
    assert places[0].along == "west to east" and places[3].members == ("left", "middle", "right")


@pytest.mark.parametrize(
    ("text", "read", "near"),
    [
        ("rectangle 16 x 16", "rectangle 16 x 16", None),
        ("rectange 16 x 16 yd", "rectange 16 x 16 yd", "rectangle"),
        ("rectangle 16 x 16 yards", "yards", "yd"),
        ("rectangle 0 x 16 yd", "0 yd", None),
        ("rectangle 9999 x 16 yd", "9999 yd", None),
        ("strip 5 yd inside the north end of ptich", "ptich", "pitch"),
        ("thirds of pitch from west to east (left, right)", "left, right", None),
        ("halves of pitch from west to east (box, far)", "box", None),
        ("pitch, bx", "bx", "box"),
        ("", "", None),
    ],
)
def test_places_that_are_none(text: str, read: str, near: str | None) -> None:
    with pytest.raises(PlaceError) as caught:
        read_place("p", text, KNOWN)
    assert (caught.value.read, caught.value.nearest) == (read, near)


@pytest.mark.parametrize(
    ("key", "text", "expected"),
    [
        ("amber inside", "4 (2-5) in pitch", Group("amber", "inside", 4, 2, 5, Home("pitch"))),
        ("blue", "3 on the edge of box", Group("blue", "", 3, 3, 3, Home("box", on_edge=True))),
        ("blue", "2 (0-3) from pitch", Group("blue", "", 2, 0, 3, Home("pitch", fence=False))),
        ("blue", "amber (3-6) in pitch", Group("blue", "", 4, 3, 6, Home("pitch"), Tie("amber", 0))),
        ("blue", "amber - 1 (1-4) in pitch", Group("blue", "", 3, 1, 4, Home("pitch"), Tie("amber", -1))),
        ("blue", "amber + 2 (1-5) in pitch", Group("blue", "", 5, 1, 5, Home("pitch"), Tie("amber", 2))),
    ],
)
def test_people(key: str, text: str, expected: Group) -> None:
    """A tie beyond the range is clamped to it (4 + 2 is 6, at most 5)."""
    assert read_people(key, text, KNOWN, {"amber": AMBER}) == expected


@pytest.mark.parametrize(
    ("text", "read", "near"),
    [
        ("4 (5-2) in pitch", "(5-2)", "(2-5)"),
        ("7 (2-5) in pitch", "7 (2-5)", None),
        ("99 in pitch", "99", None),
        ("red - 1 (1-4) in pitch", "red", None),
        ("ambr - 1 (1-4) in pitch", "ambr", "amber"),
        ("4 (2-5) in ptich", "ptich", "pitch"),
        ("four in pitch", "four", None),
        ("4 (2-5)", "4 (2-5)", None),
    ],
)
def test_people_that_are_none(text: str, read: str, near: str | None) -> None:
    with pytest.raises(PeopleError) as caught:
        read_people("blue", text, KNOWN, {"amber": AMBER})
    assert (caught.value.read, caught.value.nearest) == (read, near)
