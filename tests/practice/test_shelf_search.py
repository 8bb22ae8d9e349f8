"""What the shelf tells of a practice, held to the readers; and searching it."""

from itertools import product
from pathlib import Path

import pytest

from turnout.practice.finding import Wanted, alike, find, without_each
from turnout.practice.ground import setup_of, tied_count
from turnout.practice.model import Group, Home, Practice, Tie
from turnout.practice.names import names_of
from turnout.practice.printing import Printer
from turnout.practice.read import read_practice
from turnout.practice.rules import parse_rule
from turnout.practice.shelf import practice_files
from turnout.practice.shelf_rows import IN_A_GOAL, SCORES, Row, row_of, totals
from turnout.problems import BadInput

FILES = practice_files()
ROWS = [row_of(path) for path in FILES.values()]


def row(key: str = "toy", **more: object) -> Row:
    """A row of a toy: 4 to 6 or 8 players, 10 x 20 m, 10 to 20 minutes, U9 to U12."""
    given = {
        "name": key.title(), "about": "", "ages": (9, 12), "numbers": (4, 5, 6, 8), "designed": 6, "across_m": 10.0,
        "up_m": 20.0, "gap_m": 2.0, "minutes": (10.0, 20.0), "groups": ("amber inside", "neutral"),
        "called": ("amber", "inside", "neutral", "helper"), "scored": ("completing 6 passes in a row",), "steps": (),
        "words": "A side scores 1 for completing 6 passes in a row. Edge players stand still.",
    }  # fmt: skip
    return Row(key=key, **{**given, **more})  # type: ignore[arg-type]


def group(key: str, count: int, low: int, high: int, tie: Tie | None = None) -> Group:
    side, _, role = key.partition(" ")
    return Group(side, role, count, low, high, Home("square"), tie)


def every_total(practice: Practice) -> set[int]:
    """All totals by trying every count of every group: slow and plain."""
    found = set()
    for counts in product(*(range(one.low, one.high + 1) for one in practice.groups)):
        chosen = dict(zip((one.key for one in practice.groups), counts, strict=True))
        if all(tied_count(one, chosen) == chosen[one.key] for one in practice.groups):
            found.add(sum(counts))
    return found


@pytest.mark.parametrize("key", sorted(FILES))
def test_a_row_says_what_the_readers_make_of_the_file(key: str) -> None:
    practice, shown = read_practice(FILES[key]), row_of(FILES[key])
    setup = setup_of(practice)
    assert set(shown.numbers) == every_total(practice)
    assert shown.designed == setup.players and shown.designed in shown.numbers
    assert shown.across_m >= setup.field.across_m - 1e-9 and shown.up_m >= setup.field.up_m - 1e-9
    assert (shown.key, shown.name, shown.about) == (practice.key, practice.name, practice.about)
    assert (shown.ages, shown.minutes) == (practice.ages, practice.arrange.minutes)
    assert shown.steps == tuple(step.name for step in practice.steps)
    assert {one.side for one in practice.groups} <= set(shown.called)


@pytest.mark.parametrize("key", sorted(FILES))
def test_what_scores_is_what_the_grammar_reads(key: str) -> None:
    practice = read_practice(FILES[key])
    names = names_of(practice)
    printer = Printer(lists=names.lists, units=names.units)
    acts = [rule.phrase["act"] for rule in practice.rules if rule.phrase.form == "score"]
    printed = [" ".join(printer.phrase(act, "ing", "many")) for act in acts]  # type: ignore[arg-type]
    told = [
        SCORES.search(parse_and_print(rule.text, practice)) for rule in practice.rules if rule.phrase.form == "score"
    ]
    assert [found[2].split(" within ")[0] for found in told if found] == printed
    assert len([one for one in row_of(FILES[key]).scored if one != IN_A_GOAL]) == len(dict.fromkeys(printed))


def parse_and_print(text: str, practice: Practice) -> str:
    assert parse_rule(text, names_of(practice))
    return text


def test_totals_follow_ties() -> None:
    first = group("amber inside", 4, 2, 5)
    tied = group("blue inside", 3, 1, 4, Tie("amber inside", -1))
    chain = group("red inside", 3, 0, 9, Tie("blue inside", 0))
    assert totals([first]) == {2, 3, 4, 5}
    assert totals([first, tied]) == {3, 5, 7, 9}
    assert totals([first, tied, chain]) == {4, 7, 10, 13}
    assert totals([first, tied, group("neutral", 1, 0, 1)]) == {3, 4, 5, 6, 7, 8, 9, 10}


@pytest.mark.parametrize(
    ("players", "areas"), [(3, None), (4, 1), (6, 1), (7, None), (8, 1), (9, 2), (13, 2), (15, 3), (32, 4), (33, None)]
)
def test_players_are_shared_over_as_few_areas_as_go(players: int, areas: int | None) -> None:
    assert row().areas(players) == areas


@pytest.mark.parametrize(
    ("space", "areas", "fits"),
    [((10, 20), 1, True), ((20, 10), 1, True), ((19, 10), 1, False), ((21, 20), 2, False), ((22, 20), 2, True)],
)
def test_areas_lie_side_by_side_with_their_gap(space: tuple[float, float], areas: int, fits: bool) -> None:
    assert row().fits_on(*space, areas) is fits


@pytest.mark.parametrize(
    ("wanted", "found"),
    [
        (Wanted(), True),
        (Wanted(players=9), True),
        (Wanted(players=3), False),
        (Wanted(players=9, space_m=(10, 20)), False),
        (Wanted(players=9, space_m=(22, 20)), True),
        (Wanted(minutes=10), True),
        (Wanted(minutes=9.5), False),
        (Wanted(age=12), True),
        (Wanted(age=13), False),
        (Wanted(role="Helper"), True),
        (Wanted(role="keeper"), False),
        (Wanted(scored=("pass", "row")), True),
        (Wanted(scored=("edge",)), False),
        (Wanted(words=("EDGE", "stands")), True),
        (Wanted(words=("edge", "keeper")), False),
    ],
)
def test_a_practice_is_found_only_when_it_takes_all_that_is_asked(wanted: Wanted, found: bool) -> None:
    assert bool(find([row()], wanted)) is found


def test_what_stands_in_the_way_is_counted() -> None:
    rows = [row("one"), row("two", minutes=(5.0, 8.0)), row("three", ages=(14, 16))]
    assert [one.row.key for one in find(rows, Wanted(players=6))] == ["one", "three", "two"]
    assert without_each(rows, Wanted(minutes=6, age=15)) == {"minutes": 1, "age": 1}
    assert without_each(rows, Wanted(minutes=6, words=("keeper",))) == {"minutes": 0, "words": 1}


@pytest.mark.parametrize(
    ("one", "other", "same"),
    [("passes", "passing", True), ("pass", "passes", True), ("run", "running", True), ("goals", "goal", True),
     ("pases", "passing", False), ("in", "inside", False), ("edge", "Edge", True), ("goal", "gate", False)],
)  # fmt: skip
def test_words_are_alike_whatever_their_ending(one: str, other: str, same: bool) -> None:
    assert alike(one, other) is same


def test_a_practice_that_cannot_be_read_is_told(tmp_path: Path) -> None:
    path = tmp_path / "bad.yaml"
    path.write_text("practice: Bad\nground:\n  square: rectangel 9 x 9 yd\n", encoding="utf-8")
    with pytest.raises(BadInput, match="needs a line “people"):
        row_of(path)
