"""What can be said is played or stands on the list of what play cannot do yet; nothing is silently ignored."""

import re
from typing import get_args

import pytest
from shipped_practices import KEYS

from turnout.play.knows import MISSING, PLAYED, check_played, kinds_of, unplayed
from turnout.play.scene import scene_of
from turnout.practice.ground import setup_of
from turnout.practice.meaning import rule_rows, table
from turnout.practice.model import Rule, Source
from turnout.practice.names import Names
from turnout.practice.read import read_practice
from turnout.practice.rules import parse_rule
from turnout.practice.shelf import practice_files
from turnout.practice.table import MEANS, ActKind, Do, Event, EventKind, Passes, Where, While, WhoKind
from turnout.problems import TurnoutError

NAMES = Names(("amber", "blue", "neutral"), ("inside", "edge"), ("square", "north end", "south end", "west half"))
KINDS = {
    "do": get_args(Do), "act": get_args(ActKind), "who": get_args(WhoKind), "event": get_args(EventKind),
    "while": get_args(While.__annotations__["kind"]), "passes": get_args(Passes.__annotations__["kind"]),
}  # fmt: skip


@pytest.mark.parametrize("sort", KINDS)
def test_every_kind_is_played_or_on_the_list_and_never_both(sort: str) -> None:
    missing = {name.removeprefix(f"{sort}: ") for name in MISSING if name.startswith(f"{sort}: ")}
    assert PLAYED[sort] | missing == set(KINDS[sort])
    assert not PLAYED[sort] & missing


def test_every_do_has_a_meaning_of_one_line() -> None:
    assert set(MEANS) == set(get_args(Do))
    assert all(re.fullmatch(r"[^\n]{12,}", meaning) for meaning in (*MEANS.values(), *MISSING.values()))


def kinds(sentence: str) -> set[str]:
    rule = Rule(parse_rule(sentence, NAMES), sentence, Source("toy", 1, 1, sentence))
    return {kind for row in rule_rows(rule) for kind in kinds_of(row)} & set(MISSING)


@pytest.mark.parametrize(
    ("sentence", "missing"),
    [
        ("A side scores 1 for completing 6 passes in a row.", set()),
        ("Edge players have 2 touches.", set()),
        ("No heading.", {"do: no heading"}),
        ("A side scores 1 for winning the ball within 5 seconds of losing the ball.", {"within: act"}),
        ("A side scores 1 for receiving outside the square.", {"act where: outside"}),
        ("Amber stay on the edge of the square.", {"limit where: edge"}),
        ("Edge players move only along the edge of the square.", set()),
        ("Neutrals play for amber.", {"plays for: named"}),
        ("When a side scores, the scorer starts.", {"starts: player"}),
        ("When a side scores, the scorer goes out to the west half.", {"to a place"}),
        ("Blue stay out of the square until a side completes 3 passes.", {"until: act"}),
        ("Blue stay out of the square until the turn ends.", {"until: other", "event: turn ends"}),
        ("The ball comes back in with a throw-in.", {"ball in: throw-in"}),
        ("Nobody tackles in the square until the player there has 2 touches.", {"who: player there"}),
        ("Only passes over the square count.", {"passes: over"}),
    ],
)
def test_what_a_sentence_asks_of_play(sentence: str, missing: set[str]) -> None:
    assert kinds(sentence) == missing


FILE = """practice: Toy
ground:
  square: rectangle 16 x 16 yd
people:
  amber: 4 (2-5) in square
  blue: 3 (1-4) in square
rules:
  - A side scores 1 for completing 6 passes in a row.
"""


def toy(folder, text: str):  # type: ignore[no-untyped-def]
    path = folder / "toy.yaml"
    path.write_text(text, encoding="utf-8")
    return read_practice(path)


@pytest.mark.parametrize(
    ("change", "words"),
    [
        (("row.\n", "row.\n  - No heading.\n"), "“No heading.”"),
        (("blue: 3 (1-4) in", "blue: 3 (1-4) on the long sides of"), "blue"),
        (("blue: 3 (1-4) in square", "blue: 1 at (0, 12)"), "stand at a point"),
        (("blue: 3 (1-4) in square", "blue: 3 (1-4) on the edge of square with the ball, in square without"),
         "two homes"),
        (("rectangle 16 x 16 yd", "polygon (0,0) (16,0) (16,16) (4,12) yd"), "square"),
        (("rules:", "balls in play: 2\nrules:"), "balls in play: 2"),
    ],
)  # fmt: skip
def test_play_refuses_by_the_sentence(tmp_path, change: tuple[str, str], words: str) -> None:  # type: ignore[no-untyped-def]
    setup = setup_of(toy(tmp_path, FILE.replace(*change)))
    with pytest.raises(TurnoutError, match="not played yet") as caught:
        scene_of(setup)
    assert words in str(caught.value)


def test_the_first_six_ask_for_nothing_on_the_list() -> None:
    for key in KEYS:
        practice = read_practice(practice_files()[key])
        assert list(unplayed(practice, table(practice))) == []


def test_without_the_list_nothing_is_refused(tmp_path) -> None:  # type: ignore[no-untyped-def]
    practice = toy(tmp_path, FILE)
    check_played(practice, table(practice))
    assert Where("square").how == "in" and Event("ball out").kind in PLAYED["event"]
