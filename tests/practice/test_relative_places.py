"""Places told from a side: a place and a row for each side that attacks something."""

import pytest

from turnout.practice.ground import places_of
from turnout.practice.meaning import table
from turnout.practice.model import Practice
from turnout.practice.read import read_practice
from turnout.practice.table import Where, While, Who

HEAD = """practice: Toy
ground:
  pitch: rectangle 20 x 30 m
  north end: strip 4 m inside the north end of pitch
  south end: strip 4 m inside the south end of pitch
people:
  amber: 4 (2-6) in pitch
  blue: amber (2-6) in pitch
rules:
  - Amber attack the north end and defend the south end.
  - Blue attack the south end.
"""


def toy(folder, *rules: str, head: str = HEAD) -> Practice:  # type: ignore[no-untyped-def]
    path = folder / "toy.yaml"
    path.write_text(head + "".join(f"  - {rule}\n" for rule in rules), encoding="utf-8")
    return read_practice(path)


def test_the_attacking_end_of_a_side_is_what_each_attacks(tmp_path) -> None:  # type: ignore[no-untyped-def]
    read = toy(tmp_path, "A side scores 1 for receiving in the attacking end.")
    found = {row.who: row.when.act.where.place for row in table(read) if row.do == "score"}
    assert found == {Who("side", "amber"): "north end", Who("side", "blue"): "south end"}


def test_the_defending_end_is_said_or_what_the_other_attacks(tmp_path) -> None:  # type: ignore[no-untyped-def]
    read = toy(tmp_path, "Everyone stays out of the defending end.", "Amber score 1 for shooting.")
    assert {row.who.side: row.where.place for row in table(read) if row.do == "stay out"} == {
        "amber": "south end", "blue": "north end",
    }  # fmt: skip


def test_a_half_becomes_a_place_of_each_side(tmp_path) -> None:  # type: ignore[no-untyped-def]
    read = toy(tmp_path, "A score counts only when everyone is in the attacking half.", "Amber score 1 for shooting.")
    places = dict(places_of(read))
    half = places["amber attacking half"]
    assert (half.x_m, half.y_m, half.across_m, half.up_m) == pytest.approx((0, 7.5, 20, 15))
    assert places["blue attacking half"].y_m == pytest.approx(-7.5)
    guards = [row for row in table(read) if row.do == "score when"]
    assert [row.while_ for row in guards] == [
        While("in place", Who("side", side), Where(f"{side} attacking half", relative="attacking half"))
        for side in ("amber", "blue")
    ]


def test_a_role_that_one_side_has_is_told_of_that_side(tmp_path) -> None:  # type: ignore[no-untyped-def]
    head = HEAD.replace("amber: 4", "amber runner: 4").replace("  blue: amber ", "  amber wide: 1 in pitch\n  blue: 3 ")
    read = toy(tmp_path, "Runners stay out of the defending half.", "Amber score 1 for shooting.", head=head)
    out = [(row.who, row.where.place) for row in table(read) if row.do == "stay out"]
    assert out == [(Who("role", "amber", "runner"), "amber defending half")]


def test_thirds_lie_one_behind_the_other(tmp_path) -> None:  # type: ignore[no-untyped-def]
    read = toy(tmp_path, "Blue stay out of the defending third until the ball enters the middle third.",
               "Amber score 1 for shooting.")  # fmt: skip
    places = dict(places_of(read))
    assert [places[f"blue {third} third"].y_m for third in ("defending", "middle")] == pytest.approx([10, 0])
    (row,) = [row for row in table(read) if row.do == "stay out"]
    assert (row.where.place, row.until.where.place) == ("blue defending third", "blue middle third")


def test_the_one_who_starts_starts_from_its_own_place(tmp_path) -> None:  # type: ignore[no-untyped-def]
    read = toy(tmp_path, "A side scores 1 for receiving in the attacking end.",
               "When a side scores, the other side starts from the defending half.")  # fmt: skip
    rows = [row for row in table(read) if row.do == "starts"]
    assert [(row.when.who.side, row.where.place) for row in rows] == [
        ("amber", "blue defending half"), ("blue", "amber defending half"),
    ]  # fmt: skip


def test_a_practice_without_such_words_has_its_own_places_only(tmp_path) -> None:  # type: ignore[no-untyped-def]
    assert len(places_of(toy(tmp_path, "Amber score 1 for shooting."))) == 3


def test_sideways_attack_cuts_sideways(tmp_path) -> None:  # type: ignore[no-untyped-def]
    head = HEAD.replace("north end", "east end").replace("south end", "west end").replace(
        "the east end of", "the east side of").replace("the west end of", "the west side of")  # fmt: skip
    read = toy(tmp_path, "Amber stay in the attacking half.", "Amber score 1 for shooting.", head=head)
    half = dict(places_of(read))["amber attacking half"]
    assert (half.x_m, half.across_m, half.up_m) == pytest.approx((5, 10, 30))
