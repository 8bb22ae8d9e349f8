"""Ground and people as sentences, with tonight's numbers, sizes and colours."""

from turnout.practice.ground import setup_of
from turnout.practice.read import read_practice
from turnout.practice.sentences import ground_sentences, people_sentences, rule_sentences
from turnout.practice.shelf import SHELF

YD = 0.9144


def practice(key: str):  # type: ignore[no-untyped-def]
    return read_practice(SHELF / key / "practice.yaml")


def test_an_overload_with_edge_players() -> None:
    counts = {"amber inside": 4, "blue inside": 3, "amber edge": 2, "blue edge": 1}
    setup = setup_of(practice("harbour-square"), counts, (17 * YD, 17 * YD))
    assert people_sentences(setup, {"amber": "red", "blue": "green"}) == [
        "4 red v 3 green inside a square of 17 yd.",
        "2 red and 1 green edge player on its edge.",
    ]


def test_neutrals_own_shirts_and_no_neutrals() -> None:
    read = practice("breakwater")
    setup = setup_of(read)
    assert people_sentences(setup, {"amber": "green shirt"}) == [
        "4 green shirts v 4 blue inside a pitch of 24 x 34 yd.",
        "2 neutrals inside it.",
    ]
    assert people_sentences(setup_of(read, {"amber": 4, "blue": 4, "neutral": 0})) == [
        "4 amber v 4 blue inside a pitch of 24 x 34 yd."
    ]
    assert people_sentences(setup_of(read, {"amber": 4, "blue": 4, "neutral": 1}))[1] == "1 neutral inside it."


def test_ground_says_what_each_place_is() -> None:
    assert ground_sentences(setup_of(practice("breakwater"))) == [
        "Pitch: 24 x 34 yd.",
        "North end: the 5 yd inside the north end of the pitch.",
        "South end: the 5 yd inside the south end of the pitch.",
        "End zones: the north end and the south end.",
    ]


def test_rules_in_tonights_colours() -> None:
    told = rule_sentences(practice("gull-square"), {"amber": "own", "blue": "red"})
    assert told[1] == "Own shirts score 1 for completing 5 passes in a row."
    assert told[-1] == "Every 2 minutes, the next group changes places with red."
    assert "Play starts with red inside players." in rule_sentences(practice("harbour-square"), {"amber": "red"})
