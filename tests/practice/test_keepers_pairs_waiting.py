"""Keepers, many small sides and those who wait: read, printed back, counted and placed."""

import math
from itertools import pairwise

import pytest

from turnout.club.check import check_file
from turnout.fit.ground import at_home, footprint
from turnout.practice.ground import setup_of
from turnout.practice.lines import balls_line, people_line
from turnout.practice.meaning import table
from turnout.practice.model import Group, Home, PlaceDef, Practice
from turnout.practice.people_words import PeopleError, read_people
from turnout.practice.read import read_practice
from turnout.practice.sentences import rule_sentences
from turnout.practice.starts import starts
from turnout.practice.table import Who
from turnout.practice.units import balls_in_play, unit_sizes

YD = 0.9144
KNOWN = {
    "pitch": PlaceDef("pitch", "rectangle", 20.0, 30.0), "goal A": PlaceDef("goal A", "goal"),
    "low goal": PlaceDef("low goal", "small goal"), "gate": PlaceDef("gate", "gate"),
}  # fmt: skip
MATCH = """practice: Toy match
ground:
  pitch: rectangle 30 x 40 yd
  north goal: goal 16 x 7 ft at the north end of pitch
  south goal: goal 16 x 7 ft at the south end of pitch
people:
  amber keeper: 1 in the south goal
  amber outfield: 4 (2-7) in pitch
  blue keeper: 1 (0-1) in north goal
  blue outfield: amber outfield (2-7) in pitch
  waiting: 2 (0-6) behind the south end of pitch
rules:
  - Amber attack the north goal and defend the south goal.
  - Blue attack the south goal and defend the north goal.
"""
PAIRS = """practice: Toy pairs
ground:
  bay: rectangle 20 x 20 yd
  one: gate 3 yd at (4, -2)
  two: gate 3 yd at (-4, 2)
  gates: one, two
people:
  pairs: 6 (2-10) of 2 in bay
rules:
  - A pair scores 1 for passing through a gate to a team-mate.
"""


def written(tmp_path, text: str):  # type: ignore[no-untyped-def]
    path = tmp_path / "toy.yaml"
    path.write_text(text, encoding="utf-8")
    return path


def match(tmp_path) -> Practice:  # type: ignore[no-untyped-def]
    return read_practice(written(tmp_path, MATCH))


def pairs(tmp_path, text: str = PAIRS) -> Practice:  # type: ignore[no-untyped-def]
    return read_practice(written(tmp_path, text))


@pytest.mark.parametrize(
    ("key", "text", "expected"),
    [
        ("amber keeper", "1 in goal A", Group("amber", "keeper", 1, 1, 1, Home("goal A"), keeper=True)),
        ("amber keeper", "1 (0-1) in goal A", Group("amber", "keeper", 1, 0, 1, Home("goal A"), keeper=True)),
        ("pairs", "6 (3-10) of 2 in pitch", Group("pairs", "", 12, 6, 20, Home("pitch"), of=2)),
        ("threes", "4 of 3 from pitch", Group("threes", "", 12, 12, 12, Home("pitch", fence=False), of=3)),
        (
            "waiting",
            "2 (0-6) behind the south end of pitch",
            Group("waiting", "", 2, 0, 6, Home("pitch", behind="south")),
        ),
        ("waiting", "2 behind the west side of pitch", Group("waiting", "", 2, 2, 2, Home("pitch", behind="west"))),
    ],
)
def test_read_and_written_back(key: str, text: str, expected: Group) -> None:
    group = read_people(key, text, KNOWN, {})
    assert group == expected
    assert people_line(group) == text


@pytest.mark.parametrize("text", ["4 (2-5) in pitch", "3 on the edge of pitch", "amber - 1 (1-4) in pitch",
                                  "amber (3-6) from pitch"])  # fmt: skip
def test_older_lines_are_written_back_too(text: str) -> None:
    amber = Group("amber", "", 4, 2, 5, Home("pitch"))
    assert people_line(read_people("blue", text, KNOWN, {"amber": amber})) == text


@pytest.mark.parametrize(
    ("key", "text", "read", "words"),
    [
        ("amber keeper", "2 in goal A", "2", "one keeper"),
        ("amber keeper", "1 in low goal", "low goal", "has no keeper"),
        ("amber keeper", "1 on the edge of goal A", "goal A", "is a line"),
        ("amber", "4 in gate", "gate", "nobody's home"),
        ("pairs", "13 of 2 in pitch", "13", "12 of 2"),
        ("pairs", "6 (0-10) of 2 in pitch", "(0-10)", "at least one"),
        ("pairs", "6 of 1 in pitch", "of 1", "from 2"),
        ("pairs wide", "6 of 2 in pitch", "of 2", "one word"),
        ("pairs", "6 of 2 on the edge of pitch", "on the edge of", "“in” or “from”"),
        ("waiting", "2 behind the suoth end of pitch", "suoth", "sides of a place"),
        ("waiting", "2 behind the south end of goal A", "goal A", "one area"),
    ],
)
def test_people_that_are_none(key: str, text: str, read: str, words: str) -> None:
    with pytest.raises(PeopleError) as caught:
        read_people(key, text, KNOWN, {})
    assert caught.value.read == read and words in caught.value.expected


def test_a_keeper_starts_in_front_of_the_goal_and_outfield_players_in_their_half(tmp_path) -> None:  # type: ignore[no-untyped-def]
    spots = starts(setup_of(match(tmp_path)))
    assert spots["amber keeper"] == (pytest.approx((0, -20 * YD + 0.5)),)
    assert spots["blue keeper"] == (pytest.approx((0, 20 * YD - 0.5)),)
    assert all(-20 * YD + 1.5 < y < 0 for _, y in spots["amber outfield"])
    without = {"amber keeper": 1, "amber outfield": 4, "blue keeper": 0, "blue outfield": 4, "waiting": 0}
    assert starts(setup_of(match(tmp_path), without))["blue keeper"] == ()


def test_those_who_wait_stand_in_a_line_off_the_field_beside_the_goal(tmp_path) -> None:  # type: ignore[no-untyped-def]
    beside = 8 * 0.3048 + 2.0  # half of 16 ft, and out of the way of shots
    read = match(tmp_path)
    first, second = starts(setup_of(read))["waiting"]
    assert first == pytest.approx((beside, -20 * YD - 1.5)) and second == pytest.approx((beside, -20 * YD - 2.7))
    group = read.group("waiting")
    assert group.waits and not read.group("amber outfield").waits
    assert read.groups.index(group) not in at_home(read)
    assert footprint(read).y0 == pytest.approx(-20 * YD - 1.5 - 5 * 1.2 - 0.5)  # room for the most who may wait


def test_without_a_goal_there_they_stand_behind_the_middle(tmp_path) -> None:  # type: ignore[no-untyped-def]
    west = MATCH.replace("behind the south end", "behind the west side")
    first, second = starts(setup_of(read_practice(written(tmp_path, west))))["waiting"]
    assert first == pytest.approx((-15 * YD - 1.5, 0)) and second == pytest.approx((-15 * YD - 2.7, 0))


def test_no_more_stand_in_line_than_may_wait(tmp_path) -> None:  # type: ignore[no-untyped-def]
    many = MATCH.replace("waiting: 2 (0-6)", "waiting: 3 (0-6)")
    found = [p for p in check_file(written(tmp_path, many)) if p.severity == "error"]
    assert [problem.line for problem in found] == [11] and "waiting at most" in found[0].expected
    more = many + "arrange:\n  waiting at most: 3\n"
    assert not [p for p in check_file(written(tmp_path, more)) if p.severity == "error"]


def test_units_share_out_evenly() -> None:
    assert unit_sizes(12, 2) == (2,) * 6
    assert unit_sizes(13, 2) == (3, 2, 2, 2, 2, 2)
    assert unit_sizes(11, 3) == (4, 4, 3)
    assert unit_sizes(5, 3) == (5,) and unit_sizes(0, 2) == ()


@pytest.mark.parametrize("players", [4, 5, 12, 13, 20])
def test_small_sides_start_together(tmp_path, players: int) -> None:  # type: ignore[no-untyped-def]
    spots = starts(setup_of(pairs(tmp_path), {"pairs": players}))["pairs"]
    assert len({(round(x, 2), round(y, 2)) for x, y in spots}) == players
    at = 0
    for size in unit_sizes(players, 2):
        mates, rest = spots[at : at + size], spots[:at] + spots[at + size :]
        at += size
        for one, two in pairwise(mates):
            assert math.dist(one, two) < min(math.dist(one, other) for other in rest)


def test_balls_in_play(tmp_path) -> None:  # type: ignore[no-untyped-def]
    read = pairs(tmp_path)
    assert (read.balls_in_play, balls_line(read)) == ("per unit", "1 per pair")
    assert balls_in_play(setup_of(read)) == 6 and balls_in_play(setup_of(read, {"pairs": 13})) == 6
    said = PAIRS.replace("rules:", "balls in play: 1 per pair\nrules:")
    assert pairs(tmp_path, said).balls_in_play == "per unit"
    each = pairs(tmp_path, PAIRS.replace("rules:", "balls in play: 1 per player\nrules:"))
    assert balls_in_play(setup_of(each)) == 12 and balls_line(each) == "1 per player"
    assert match(tmp_path).balls_in_play == "one" and balls_line(match(tmp_path)) is None
    assert balls_in_play(setup_of(match(tmp_path))) == 1


@pytest.mark.parametrize(
    ("text", "line", "words"),
    [
        (PAIRS.replace("rules:", "balls in play: 2 per pair\nrules:"), 9, "1 per pair"),
        (MATCH.replace("rules:", "balls in play: 1 per pair\nrules:"), 12, "of 2 in"),
        (PAIRS + "  - When a pair passes through a gate, the other side starts.\n", 11, "no other side"),
    ],
)
def test_balls_and_sides_that_cannot_be(tmp_path, text: str, line: int, words: str) -> None:  # type: ignore[no-untyped-def]
    found = [p for p in check_file(written(tmp_path, text)) if p.severity == "error"]
    assert [problem.line for problem in found] == [line] and words in found[0].expected


def test_a_pair_acts_as_a_side_and_prints_as_one(tmp_path) -> None:  # type: ignore[no-untyped-def]
    rules = "  - When pairs pass through a gate, pairs start.\n  - Pairs have 2 touches.\n"
    read = pairs(tmp_path, PAIRS + rules)
    row = next(row for row in table(read) if row.do == "score")
    assert row.who == Who("side", side="pairs")
    assert rule_sentences(read) == [
        "A pair scores 1 for passing through a gate to a team-mate.",
        "When a pair passes through a gate to a team-mate, pairs start.",
        "Pairs have 2 touches.",
    ]
    back = next(row for row in table(pairs(tmp_path)) if row.do == "ball in")
    assert (back.who, back.value) == (Who("side", side="pairs"), "dribble-in")


def test_a_step_cannot_take_the_goal_from_under_its_keeper(tmp_path) -> None:  # type: ignore[no-untyped-def]
    step = "steps:\n  - harder: Low goal\n    ground:\n      south goal: small goal 6 ft at the south end of pitch\n"
    found = [p for p in check_file(written(tmp_path, MATCH + step)) if p.severity == "error"]
    assert len(found) == 1 and "south goal is a small goal now" in found[0].expected
