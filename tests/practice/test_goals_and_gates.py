"""Goals and gates: read, printed back, placed on the ground, and answered when they cannot be."""

import pytest

from turnout.club.check import check_file
from turnout.practice.ground import places_of, setup_of
from turnout.practice.ground_words import PlaceError, read_place
from turnout.practice.lines import ground_line
from turnout.practice.meaning import table
from turnout.practice.model import PlaceDef, Practice
from turnout.practice.read import read_practice
from turnout.practice.sentences import rule_sentences
from turnout.practice.table import Act, Event, Where, Who

YD, FT = 0.9144, 0.3048
KNOWN = {
    "pitch": PlaceDef("pitch", "rectangle", 20.0, 30.0), "ring": PlaceDef("ring", "circle", 20.0),
    "goal A": PlaceDef("goal A", "goal", width_m=5.0, side="north", of="pitch"),
    "goal B": PlaceDef("goal B", "goal", width_m=5.0, side="south", of="pitch"),
    "both": PlaceDef("both", "list", members=("goal A", "goal B")),
}  # fmt: skip
FILE = """practice: Toy goals
ground:
  pitch: rectangle 30 x 40 yd
  north goal: goal 16 x 7 ft at the north end of pitch
  south goal: goal 16 x 7 ft at the south end of pitch
  north-west goal: small goal 4 ft at the north end of pitch, 9 yd west of the middle
  north-east goal: small goal 4 ft at the north end of pitch, 9 yd east of the middle
  corner goals: north-west goal, north-east goal
  west gate: gate 3 yd at the middle of the west side of pitch
  inner gate: gate 3 yd at (4, -2)
  gates: west gate, inner gate
people:
  amber: 4 (2-7) in pitch
  blue: amber (2-7) in pitch
rules:
"""
ATTACK = "Amber attack the north goal and defend the south goal."


def practice(tmp_path, *rules: str) -> Practice:  # type: ignore[no-untyped-def]
    path = tmp_path / "toy.yaml"
    path.write_text(FILE + "".join(f"  - {rule}\n" for rule in rules), encoding="utf-8")
    return read_practice(path)


def errors(tmp_path, *rules: str, file: str = FILE) -> list[tuple[int | None, str]]:  # type: ignore[no-untyped-def]
    path = tmp_path / "toy.yaml"
    path.write_text(file + "".join(f"  - {rule}\n" for rule in rules), encoding="utf-8")
    return [(problem.line, problem.expected) for problem in check_file(path) if problem.severity == "error"]


@pytest.mark.parametrize(
    ("text", "fields"),
    [
        ("goal 16 x 7 ft at the north end of pitch",
         {"kind": "goal", "width_m": 16 * FT, "height_m": 7 * FT, "side": "north", "of": "pitch", "unit": "ft"}),
        ("small goal 4 ft at the west side of ring", {"kind": "small goal", "height_m": 1.0, "side": "west"}),
        ("small goal 4 x 2.5 ft at the south end of pitch, 6 yd west of the middle",
         {"height_m": 2.5 * FT, "offset_m": -6 * YD, "at_unit": "yd"}),
        ("small goal 1.5 m at the east side of pitch, 6 m north of the middle", {"offset_m": 6.0, "width_m": 1.5}),
        ("gate 3 yd at the middle of the north side of pitch", {"kind": "gate", "width_m": 3 * YD, "height_m": 0.0}),
        ("gate 3 yd at the north side of pitch, 5 yd east of the middle", {"offset_m": 5 * YD}),
        ("gate 3 yd at (4, -2)", {"x_m": 4 * YD, "y_m": -2 * YD, "along": "west to east", "side": None}),
        ("gate 2 m at (-3.5, 2) m from south to north", {"x_m": -3.5, "y_m": 2.0, "along": "south to north"}),
        ("small goal 4 ft at (0, 12)", {"y_m": 12 * YD}),
    ],
)  # fmt: skip
def test_read_and_written_back(text: str, fields: dict) -> None:
    (place,) = read_place("p", text, KNOWN)
    for name, value in fields.items():
        assert getattr(place, name) == (pytest.approx(value) if isinstance(value, float) else value)
    assert ground_line(place) == text


@pytest.mark.parametrize(
    ("text", "canonical"),
    [
        ("gate 3yd at the north end of pitch", "gate 3 yd at the middle of the north side of pitch"),
        ("goal 16x7 ft at the middle of the north side of the pitch", "goal 16 x 7 ft at the north end of pitch"),
        ("small goal 4 ft at (1, 2) yd, from west to east", "small goal 4 ft at (1, 2)"),
    ],
)
def test_other_wordings_are_written_back_in_one(text: str, canonical: str) -> None:
    (place,) = read_place("p", text, KNOWN)
    assert ground_line(place) == canonical


@pytest.mark.parametrize(
    ("text", "read", "near", "words"),
    [
        ("goal 16 ft at the north end of pitch", "goal 16 ft at the north end of pitch", None, "width and a height"),
        ("gate 3 x 2 yd at (0, 0)", "gate 3 x 2 yd at (0, 0)", None, "without a height"),
        ("goal at the north end of pitch", "goal at the north end of pitch", None, "16 x 7 ft"),
        ("goal 16 x 7 ft at the noth end of pitch", "noth", "north", "sides of a place"),
        ("goal 16 x 7 ft at the north end of ptich", "ptich", "pitch", "no place above"),
        ("gate 3 yards at (0, 0)", "yards", "yd", "lengths are in"),
        ("gate 3 yd at (0, 0) yards", "yards", "yd", "lengths are in"),
        ("gate 3 yd at (400, 0)", "(400, 0)", None, "within 100 m"),
        ("gate 3 yd in the middle", "gate 3 yd in the middle", None, "reads like"),
        ("gate 3 yd at the corner", "the corner", None, "stands on a side"),
        ("small goal 4 ft at the north end of pitch, 6 yd north of the middle", "north", None, "west or east"),
        ("small goal 4 ft at the north end of ring, 6 yd west of the middle",
         "the north end of ring, 6 yd west of the middle", None, "on a circle"),
        ("gate 3 yd at the middle of the north side of both", "both", None, "one area"),
        ("strip 3 yd inside the north end of goal A", "goal A", None, "one area"),
        ("small gaol 4 ft at (0, 0)", "small gaol 4 ft at (0, 0)", None, "small goal"),
        ("gate 0 yd at (0, 0)", "0 yd", None, "between"),
    ],
)  # fmt: skip
def test_none_of_them(text: str, read: str, near: str | None, words: str) -> None:
    with pytest.raises(PlaceError) as caught:
        read_place("p", text, KNOWN)
    assert (caught.value.read, caught.value.nearest) == (read, near) and words in caught.value.expected


def test_a_list_of_numbered_goals_is_a_list() -> None:
    known = {"gate 1": PlaceDef("gate 1", "gate"), "gate 2": PlaceDef("gate 2", "gate")}
    (gates,) = read_place("gates", "gate 1, gate 2", known)
    assert gates.members == ("gate 1", "gate 2")


def test_lines_on_the_ground_and_when_it_grows(tmp_path) -> None:  # type: ignore[no-untyped-def]
    read = practice(tmp_path, ATTACK)
    places = dict(places_of(read))
    north, west = places["north goal"], places["west gate"]
    assert (north.x_m, north.y_m, north.across_m, north.up_m) == pytest.approx((0, 20 * YD, 16 * FT, 0))
    assert north.height_m == pytest.approx(7 * FT) and north.is_line
    assert (west.x_m, west.y_m, west.across_m, west.up_m) == pytest.approx((-15 * YD, 0, 0, 3 * YD))
    assert places["corner goals"].members == ("north-west goal", "north-east goal")
    larger = dict(places_of(read, (36 * YD, 60 * YD)))
    corner, inner = larger["north-west goal"], larger["inner gate"]
    assert (corner.x_m, corner.y_m, corner.across_m) == pytest.approx((-9 * YD, 30 * YD, 4 * FT))
    assert (inner.x_m, inner.y_m, inner.across_m) == pytest.approx((4 * 1.2 * YD, -2 * 1.5 * YD, 3 * YD))


def test_a_point_after_south_to_north_lies_so() -> None:
    (gate,) = read_place("g", "gate 2 yd at (1, 1) from south to north", KNOWN)
    toy = Practice("t", "T", "", (8, 9), (), (KNOWN["pitch"], gate), (), ())
    assert dict(places_of(toy))["g"].across_m == 0.0 and dict(places_of(toy))["g"].up_m == pytest.approx(2 * YD)


def scores(read: Practice) -> list[tuple[str | None, str, object, int]]:
    found = []
    for row in table(read):
        if row.do == "score":
            assert row.when and row.when.act and row.when.act.where
            found.append((row.who.side, row.when.act.where.place, row.value, row.order[0]))
    return found


def test_a_goal_a_side_attacks_is_worth_one(tmp_path) -> None:  # type: ignore[no-untyped-def]
    read = practice(tmp_path, "Play starts with amber.", ATTACK)
    row = next(row for row in table(read) if row.do == "score")
    amber = Who("side", side="amber")
    assert (row.kind, row.who, row.value, row.source.text) == ("points", amber, 1, ATTACK)
    assert row.when == Event("act", amber, Act("score", where=Where("north goal")))
    assert row.order == (2, 2)


def test_unless_a_sentence_says_what_it_is_worth(tmp_path) -> None:  # type: ignore[no-untyped-def]
    said = practice(tmp_path, ATTACK, "Amber score 3 for scoring in the north goal.")
    assert scores(said) == [("amber", "north goal", 3, 2)]
    other = practice(tmp_path, ATTACK, "Blue score 3 for scoring in the north goal.")
    assert ("amber", "north goal", 1, 1) in scores(other)
    listed = practice(tmp_path, "Amber attack the corner goals.")
    assert scores(listed) == [("amber", "corner goals", 1, 1)]
    partly = practice(tmp_path, "Amber attack the corner goals.", "A side scores 2 for scoring in the north-east goal.")
    assert scores(partly) == [(None, "north-east goal", 2, 2), ("amber", "north-west goal", 1, 1)]


def test_a_zone_a_side_attacks_is_worth_nothing_by_itself(tmp_path) -> None:  # type: ignore[no-untyped-def]
    read = practice(tmp_path, "Amber attack the pitch.", "Amber score 1 for shooting.")
    assert [row.order for row in table(read) if row.do == "score"] == [(2, 1)]


def test_passing_through_and_shooting_in_the_table(tmp_path) -> None:  # type: ignore[no-untyped-def]
    read = practice(
        tmp_path,
        "A side scores 1 for passing through a gate.",
        "When a side passes through the west gate to a team-mate, the other side starts.",
        "When amber shoot, blue start.",
        "Nobody uses the same gate twice in a row.",
    )
    acts = [row.when.act for row in table(read) if row.when and row.when.act]
    assert acts == [
        Act("pass through", where=Where("gates")),
        Act("pass through", where=Where("west gate")),
        Act("shoot"),
    ]
    (once,) = [row for row in table(read) if row.do == "no repeat"]
    assert (once.kind, once.where) == ("limit", Where("gates"))
    assert rule_sentences(read) == [
        "A side scores 1 for passing through a gate to a team-mate.",
        "When a side passes through the west gate to a team-mate, the other side starts.",
        "When amber shoot, blue start.",
        "Nobody uses the same gate twice in a row.",
    ]


@pytest.mark.parametrize(
    ("rules", "line", "words"),
    [
        ([ATTACK, "Amber score 1 for receiving in the north goal."], 17, "is a line"),
        ([ATTACK, "Amber score 1 for passing through the north goal."], 17, "scoring in it"),
        ([ATTACK, "Blue score 1 for scoring in the gates."], 17, "passing through it"),
        ([ATTACK, "Blue stay out of the north goal."], 17, "is a line"),
        ([ATTACK, "Blue move only along the edge of the north goal."], 17, "is a line"),
        ([ATTACK, "Nobody uses the same gate twice in a row."], 17, "no sentence gives points"),
        (["A side scores 1 for passing through the west gate.", "Nobody uses the same west gate twice in a row."], 17,
         "one place"),
    ],
)  # fmt: skip
def test_sentences_that_do_not_fit_a_line(tmp_path, rules, line, words) -> None:  # type: ignore[no-untyped-def]
    ((at, said),) = errors(tmp_path, *rules)
    assert at == line and words in said


def test_each_gate_may_have_its_own_sentence(tmp_path) -> None:  # type: ignore[no-untyped-def]
    own = [f"A side scores {n} for passing through the {gate}." for n, gate in ((1, "west gate"), (2, "inner gate"))]
    assert errors(tmp_path, *own, "Nobody uses the same gate twice in a row.") == []


def test_a_goal_that_is_longer_than_its_end(tmp_path) -> None:  # type: ignore[no-untyped-def]
    wide = FILE.replace("9 yd east", "15 yd east")
    ((line, said),) = errors(tmp_path, ATTACK, file=wide)
    assert line == 7 and "reaches beyond the north side" in said


def test_the_field_is_no_gate(tmp_path) -> None:  # type: ignore[no-untyped-def]
    odd = FILE.replace("ground:\n", "ground:\n  first gate: gate 3 yd at (0, 0)\n")
    found = errors(tmp_path, ATTACK, file=odd)
    assert found[0][0] == 3 and "rectangle or a circle" in found[0][1]


def test_nobody_starts_in_the_goal_without_a_keeper(tmp_path) -> None:  # type: ignore[no-untyped-def]
    setup = setup_of(practice(tmp_path, ATTACK))
    assert not any(group.keeper for group in setup.practice.groups)
