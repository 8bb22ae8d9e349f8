"""Sentences as rows: the shapes that play, fit and study rely on."""

import pytest
from shipped_practices import KEYS

from turnout.practice.meaning import rule_rows, table
from turnout.practice.model import Rule, Source
from turnout.practice.names import names_of
from turnout.practice.read import read_practice
from turnout.practice.rules import parse_rule
from turnout.practice.shelf import SHELF
from turnout.practice.table import Act, Event, Passes, Where, While, Who


def practice(key: str):  # type: ignore[no-untyped-def]
    return read_practice(SHELF / key / "practice.yaml")


def rows_of(text: str, key: str):  # type: ignore[no-untyped-def]
    phrase = parse_rule(text, names_of(practice(key)))
    return rule_rows(Rule(phrase, text, Source("toy", 1, 1, text)))


@pytest.mark.parametrize("key", KEYS)
def test_shipped_practices_are_read_and_carry_their_lines(key: str) -> None:
    read = practice(key)
    assert read.key == key
    lines = (SHELF / key / "practice.yaml").read_text().splitlines()
    for rule in read.rules:
        line = lines[rule.source.line - 1]
        assert line[rule.source.column - 1 :] == rule.source.text
    assert len(read.steps) >= 3 and len(read.questions) == 3


def test_coming_in_and_going_out_are_two_rows_of_one_event() -> None:
    rows = [row for row in table(practice("harbour-square")) if row.order[0] == 4]
    event = Event("act", Who("a side"), Act("win and pass"))
    assert [row.when for row in rows] == [event, event]
    assert [row.do for row in rows] == ["comes in", "goes out"]
    assert rows[0].who == Who("nearest", role="edge", whose="its")
    assert rows[1].who == Who("farthest", role="inside", whose="other")


def test_change_over_restart_start_and_score() -> None:
    rows = {row.order: row for row in table(practice("harbour-square"))}
    assert (rows[1, 1].do, rows[1, 1].who) == ("starts", Who("role", side="amber", role="inside"))
    assert rows[2, 1].when == Event("act", Who("a side"), Act("passes in a row", 6)) and rows[2, 1].value == 1
    assert (rows[3, 1].do, rows[3, 1].who, rows[3, 1].value) == ("touches", Who("role", role="edge"), 2)
    assert rows[5, 1].target == Who("its role", role="edge", whose="its")
    assert (rows[6, 1].who, rows[6, 1].where) == (Who("other side"), Where("square", "edge"))


def test_rotation_on_the_clock_and_neutrals() -> None:
    rows = table(practice("breakwater"))
    rotate = next(row for row in rows if row.do == "rotate")
    assert (rotate.every_s, rotate.who, rotate.target) == (180.0, Who("next group"), Who("side", side="neutral"))
    member = next(row for row in rows if row.do == "plays for")
    assert member.target == Who("side with the ball")
    out = [row for row in rows if row.do == "stay out"]
    assert out[0].until == Event("ball enters", where=Where("south end"))  # “it” is the place named before


def test_default_restart_only_where_no_sentence_states_one() -> None:
    read = practice("gull-square")
    stated = [row for row in table(read) if row.when and row.when.kind == "ball out"]
    assert [row.do for row in stated] == ["starts"]
    rules = tuple(rule for rule in read.rules if "goes out" not in rule.text)
    from dataclasses import replace

    default = [row for row in table(replace(read, rules=rules)) if row.when and row.when.kind == "ball out"]
    assert [(row.do, row.value, row.who.kind) for row in default] == [("ball in", "kick-in", "other side")]


@pytest.mark.parametrize(
    ("text", "field", "value"),
    [
        ("Everyone has 1 touch.", "who", Who("everyone")),
        ("Only passes between inside players count.", "passes", Passes("between", Who("role", role="inside"))),
        ("Blue stay in square while amber have the ball.", "while_", While("has the ball", Who("side", side="amber"))),
        ("Nobody tackles edge players.", "who", Who("role", role="edge")),
        ("Edge players move only along the edge of square.", "where", Where("square", "edge")),
        ("The ball comes back in with a pass from amber.", "who", Who("side", side="amber")),
        ("Amber score 2 for passing to edge players within 8 seconds of winning the ball.", "within_s", 8.0),
        ("Amber score 2 for passing to edge players within 8 seconds of winning the ball.", "after", Act("win")),
        ("Every 90 seconds, amber inside players change places with the next group.", "do", "rotate"),
        ("When a side receives outside square, the other side starts.", "do", "starts"),
    ],
)
def test_one_field_of_a_sentence(text: str, field: str, value: object) -> None:
    assert getattr(rows_of(text, "harbour-square")[0], field) == value
