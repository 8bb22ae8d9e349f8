"""Every place expression and people line: read, written back, and where it lies."""

import pytest

from turnout.club.check import check_file
from turnout.practice.ground import places_of, setup_of
from turnout.practice.ground_words import PlaceError, read_place
from turnout.practice.lines import balls_line, ground_line, people_line
from turnout.practice.model import Group, Home, Place, PlaceDef, Practice
from turnout.practice.people_words import PeopleError, read_people
from turnout.practice.read import read_practice
from turnout.practice.sentences import ground_sentences, people_sentences
from turnout.practice.starts import starts
from turnout.practice.steps import with_steps
from turnout.practice.units import balls_in_play

YD = 0.9144
PITCH = PlaceDef("pitch", "rectangle", 20.0, 30.0, unit="m")
KNOWN = {"pitch": PITCH, "box 1": PlaceDef("box 1", "rectangle", 8.0, 6.0, spot="point", x_m=-4.0, y_m=2.0)}


def lies(text: str, size_m: tuple[float, float] | None = None) -> Place:
    """The place on a pitch of 20 x 30 m, or at another size."""
    (made,) = read_place("p", text, KNOWN)
    toy = Practice("t", "T", "", (8, 9), (), (*KNOWN.values(), made), (), ())
    return dict(places_of(toy, size_m))["p"]


@pytest.mark.parametrize(
    ("text", "x", "y", "across", "up"),
    [
        ("square 8 m at the centre of pitch", 0, 0, 8, 8),
        ("square 5 m in the north-east corner of pitch", 7.5, 12.5, 5, 5),
        ("rectangle 12 x 4 m inside the south end of pitch", 0, -13, 12, 4),
        ("rectangle 12 x 4 m at (3, -2) m", 3, -2, 12, 4),
        ("circle 6 m across at (2, 1) m", 2, 1, 6, 6),
        ("circle 6 m across in the south-west corner of pitch", -7, -12, 6, 6),
        ("channel 5 m along the west side of pitch", -7.5, 0, 5, 30),
        ("strip 4 m beyond the north end of pitch", 0, 17, 20, 4),
        ("same as box 1, 2 m east of it", 6, 2, 8, 6),
        ("same as box 1, 1 m north of it", -4, 9, 8, 6),
        ("polygon (0,0) (6,0) (6,4) (2,8) m", 3, 4, 6, 8),
    ],
)
def test_where_a_place_lies_and_its_words(text: str, x: float, y: float, across: float, up: float) -> None:
    place = lies(text)
    assert (place.x_m, place.y_m, place.across_m, place.up_m) == pytest.approx((x, y, across, up))
    assert ground_line(read_place("p", text, KNOWN)[0]) == text


def test_sizes_keep_their_metres_and_points_move_with_the_field() -> None:
    corner, box = (
        lies("square 5 m in the north-east corner of pitch", (24.0, 36.0)),
        lies("square 4 m at (3, 2) m", (24.0, 36.0)),
    )
    assert (corner.x_m, corner.y_m, corner.across_m) == pytest.approx((9.5, 15.5, 5))
    assert (box.x_m, box.y_m, box.across_m) == pytest.approx((3.6, 2.4, 4))


def test_a_polygon_has_its_area_and_the_first_is_moved_to_the_middle() -> None:
    (made,) = read_place("yard", "polygon (0,0) (20,0) (20,12) (8,18) yd", {})
    place = places_of(Practice("t", "T", "", (8, 9), (), (made,), (), ()))[0][1]
    assert (place.x_m, place.y_m) == (0.0, 0.0)
    assert place.corners[0] == pytest.approx((-10 * YD, -9 * YD)) and place.area_m2 == pytest.approx(252 * YD * YD)


@pytest.mark.parametrize("text", ["quarters of pitch from south to north (one, two, three, four)",
                                  "thirds of pitch from west to east (left, middle, right)"])  # fmt: skip
def test_pieces_share_a_place_out(text: str) -> None:
    made = read_place("pieces", text, KNOWN)
    places = dict(places_of(Practice("t", "T", "", (8, 9), (), (PITCH, *made), (), ())))
    assert sum(places[piece.name].area_m2 for piece in made[:-1]) == pytest.approx(600)
    assert ground_line(made[0], tuple(piece.name for piece in made[:-1])) == text


@pytest.mark.parametrize(
    ("text", "read", "near", "words"),
    [
        ("square 8 yd at the centre of ptich", "ptich", "pitch", "no place above"),
        ("square 8 yd in the north-est corner of pitch", "north-est", "north-east", "corners of a place"),
        ("square 8 yd at the side", "at the side", None, "stands"),
        ("rectangle 8 x 6 yd inside the noth end of pitch", "noth", "north", "sides of a place"),
        ("polygon (0,0) (6,0) yd", "polygon (0,0) (6,0) yd", None, "polygon (0,0)"),
        ("polygon (0,0) (6,6) (6,0) (0,6) yd", "(0,0) (6,6) (6,0) (0,6)", None, "do not cross"),
        ("polygon (0,0) (6,0) (a,b) yd", "(a,b)", None, "a corner reads"),
        ("polygon (0,0) (6,0) (6,4) yrd", "yrd", "yd", "lengths are in"),
        ("rectangle 3:2 with 900 m2 per player", "900 m2", None, "area for each player"),
        ("rectangle 9:1 with 90 m2 per player", "9:1", None, "shape"),
        ("same as box 3, 2 yd east of it", "box 3", "box 1", "no place above"),
        ("same as box 1, 2 yd left of it", "left", None, "sides of a place"),
        ("channel 5 yd down the west side of pitch", "channel 5 yd down the west side of pitch", None, "along"),
    ],
)
def test_places_that_are_none(text: str, read: str, near: str | None, words: str) -> None:
    with pytest.raises(PlaceError) as caught:
        read_place("p", text, KNOWN)
    assert (caught.value.read, caught.value.nearest) == (read, near) and words in caught.value.expected


@pytest.mark.parametrize(
    ("text", "home", "without"),
    [
        ("2 (0-3) on the long sides of pitch", Home("pitch", True, sides=("long",)), None),
        ("2 on the north end of pitch", Home("pitch", True, sides=("north",)), None),
        ("2 on the left and right sides of pitch", Home("pitch", True, sides=("left", "right")), None),
        ("1 at (0, -12)", Home("pitch", at=(0.0, -12 * YD)), None),
        ("1 at (0, -12) m", Home("pitch", at=(0.0, -12.0), at_unit="m"), None),
        ("1 on the left side of pitch with the ball, in pitch without",
         Home("pitch", True, sides=("left",)), Home("pitch")),
        ("2 in box 1 with the ball, on the edge of pitch without", Home("box 1"), Home("pitch", True)),
    ],
)  # fmt: skip
def test_homes_read_and_written_back(text: str, home: Home, without: Home | None) -> None:
    group = read_people("amber wide", text, KNOWN, {})
    assert (group.home, group.without) == (home, without) and people_line(group) == text


@pytest.mark.parametrize(
    ("key", "text", "read", "near", "words"),
    [
        ("amber", "2 on the norht end of pitch", "norht", "north", "sides of a place"),
        ("amber", "2 on the long and left sides of pitch", "long", None, "two sides are two of"),
        ("amber", "2 beside pitch", "2 beside pitch", None, "people read like"),
        ("amber", "2 at (900, 0)", "at (900, 0)", None, "within 100 m"),
        ("amber", "2 in pitch with the ball, from pitch without", "from pitch", None, "two homes"),
        ("waiting for amber", "2 in pitch", "waiting for amber", None, "stand “behind"),
    ],
)
def test_homes_that_are_none(key: str, text: str, read: str, near: str | None, words: str) -> None:
    with pytest.raises(PeopleError) as caught:
        read_people(key, text, KNOWN, {})
    assert (caught.value.read, caught.value.nearest) == (read, near) and words in caught.value.expected


FILE = """practice: Toy
ground:
  pitch: rectangle 3:2 with 60 m2 per player
people:
  amber outfield: 4 (2-6) in pitch
  amber wing: 1 on the left side of pitch with the ball, in pitch without
  blue outfield: amber outfield (2-6) in pitch
  neutral: 3 (0-4) on the long sides of pitch
  white server: 1 at (0, -12)
  waiting for outfield: 2 (0-6) behind the south end of pitch
balls in play: 3
rules:
  - A turn lasts 2 minutes.
  - A side scores 1 for completing 6 passes in a row.
"""


def toy(folder, text: str = FILE) -> Practice:  # type: ignore[no-untyped-def]
    path = folder / "toy.yaml"
    path.write_text(text, encoding="utf-8")
    return read_practice(path)


def test_a_size_by_the_player_follows_from_the_designed_numbers(tmp_path) -> None:  # type: ignore[no-untyped-def]
    pitch = toy(tmp_path).ground[0]
    assert pitch.across_m * pitch.up_m == pytest.approx(8 * 60) and pitch.across_m / pitch.up_m == pytest.approx(1.5)
    assert ground_line(pitch) == "rectangle 3:2 with 60 m2 per player"


def test_sides_points_and_lines_start_where_they_are_told(tmp_path) -> None:  # type: ignore[no-untyped-def]
    read = toy(tmp_path)
    setup, spots = setup_of(read), starts(setup_of(read))
    half_x, half_y = setup.field.across_m / 2, setup.field.up_m / 2
    assert sorted(round(y) for _, y in spots["neutral"]) == [
        -round(half_y + 0.5),
        round(half_y + 0.5),
        round(half_y + 0.5),
    ]
    assert all(abs(x) < half_x for x, _ in spots["neutral"])
    assert spots["amber wing"] == (pytest.approx((-half_x - 0.5, 0)),)
    assert spots["white server"] == (pytest.approx((0, -12 * YD)),)
    assert read.group("waiting for outfield").feeds == ("amber outfield", "blue outfield")


def test_left_is_left_of_the_way_a_side_attacks(tmp_path) -> None:  # type: ignore[no-untyped-def]
    east = FILE.replace("people:", "  goal: small goal 4 ft at the east side of pitch\npeople:")
    read = toy(tmp_path, east + "  - Amber attack the goal.\n")
    (spot,) = starts(setup_of(read))["amber wing"]
    assert spot[1] == pytest.approx(setup_of(read).field.up_m / 2 + 0.5)


def test_balls_in_play_and_the_people_as_sentences(tmp_path) -> None:  # type: ignore[no-untyped-def]
    read = toy(tmp_path)
    assert (read.balls_in_play, balls_in_play(setup_of(read)), balls_line(read)) == ("several", 3, "3")
    told = people_sentences(setup_of(read))
    assert "3 neutrals on its long sides." in told and "2 wait behind the south end of the pitch." in told
    assert any(line.startswith("1 white server player at a point 12 yd south") for line in told)


def test_ground_sentences_say_where_a_place_stands(tmp_path) -> None:  # type: ignore[no-untyped-def]
    more = FILE.replace("people:", "  den: square 6 yd in the north-east corner of pitch\n"
                        "  lair: same as den, 4 yd west of it\npeople:")  # fmt: skip
    told = ground_sentences(setup_of(toy(tmp_path, more)))
    assert told[1:] == ["Den: 6 yd, in the north-east corner of the pitch.", "Lair: 6 yd, 4 yd west of the den."]


def test_a_line_waits_for_somebody_who_plays(tmp_path) -> None:  # type: ignore[no-untyped-def]
    path = tmp_path / "toy.yaml"
    path.write_text(FILE.replace("waiting for outfield", "waiting for outfeld"), encoding="utf-8")
    (problem,) = check_file(path)
    assert problem.line == 10 and "amber outfield" in problem.expected and problem.nearest == "outfield"


STEPS = """steps:
  - harder: A third side
    people:
      red: 2 (0-3) in pitch
    add:
      - Red have 1 touch.
  - easier: More balls
    kit:
      balls: 9
    balls in play: 1 per player
"""


def test_a_step_may_bring_a_new_side_and_more_balls(tmp_path) -> None:  # type: ignore[no-untyped-def]
    read = toy(tmp_path, FILE + STEPS)
    assert [step.tags for step in read.steps] == [("task", "people"), ("equipment",)]
    changed = with_steps(read, ["A third side", "More balls"])
    assert changed.sides[-1] == "red" and isinstance(changed.group("red"), Group)
    assert (changed.balls, changed.balls_in_play) == (9, "per player")
    grown = changed.ground[0]
    assert grown.across_m * grown.up_m == pytest.approx(10 * 60)  # the size by the player follows the people
