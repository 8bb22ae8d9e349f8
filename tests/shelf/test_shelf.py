"""The shelf as a coach opens it: complete files, sizes that fit, drawings and cards that can be read."""

import re
import runpy
from dataclasses import replace
from math import dist
from pathlib import Path

import pytest
from shelf_shown import ALL, shown

from turnout.club.check import check_file
from turnout.club.read import read_space
from turnout.club.tonight import Kit, Space, Tonight
from turnout.evening.fits import fit_evening
from turnout.evening.load import Evening
from turnout.evening.views import view_of
from turnout.fit import fit_session
from turnout.practice.edges import EDGE_OUT_M
from turnout.practice.shelf import SHELF, practice_files
from turnout.practice.shelf_rows import row_of
from turnout.session.model import Part, Session
from turnout.session.read import read_session
from turnout.show.paper import cards_pdf
from turnout.show.plan import setup_drawing

SESSIONS = sorted((SHELF / "sessions").glob("*.yaml"))
HALF, HALL = read_space("half of 3G"), read_space("hall 33 x 18 m")
TURNOUTS = (6, 11, 14, 17, 22)
MARK_M = 1.0  # nearer than this two players are one on top of the other


def tonight(players: int, space: Space, minutes: float, age: int = 12) -> Tonight:
    kit = Kit(bibs=(("blue", 12), ("yellow", 12), ("white", 8)), cones=(("white", 80), ("red", 40)), balls=24)
    return Tonight(players=players, space=space, kit=kit, minutes=minutes, age=age, adults=2)


def test_there_is_enough_of_it() -> None:
    assert len(ALL) >= 28 and len(SESSIONS) >= 8


def test_ages_run_from_the_youngest_to_the_oldest() -> None:
    for age in range(7, 19):
        fit = [key for key in ALL if shown(key).practice.ages[0] <= age <= shown(key).practice.ages[1]]
        assert len(fit) >= 4, f"U{age}: {fit}"


@pytest.mark.parametrize("key", ALL)
def test_a_file_is_whole_and_without_a_doubt(key: str) -> None:
    practice = shown(key).practice
    assert check_file(practice_files()[key]) == []
    assert len(practice.steps) >= 3 and {"harder", "easier"} <= {step.direction for step in practice.steps}
    assert all(step.tags for step in practice.steps)
    assert [name for name, weight in practice.develops if weight == 3] == [practice.develops[0][0]]
    assert {question.capability for question in practice.questions} == {name for name, _ in practice.develops}
    assert all(question.ask.endswith("?") and question.look_for for question in practice.questions)


@pytest.mark.parametrize("key", ALL)
def test_its_words_hold_whatever_the_bibs(key: str) -> None:
    practice = shown(key).practice
    words = " ".join([practice.about, *(f"{q.ask} {q.look_for}" for q in practice.questions)]).lower()
    assert not {"amber", "blue", "white"} & set(re.findall(r"[a-z]+", words))


NEW = sorted(set(ALL) - {"gull-square", "harbour-square", "breakwater", "lock-gates", "four-coves", "open-water"})


@pytest.mark.parametrize("key", NEW)
def test_its_purpose_is_told_in_two_sentences(key: str) -> None:
    assert len(re.findall(r"\.(?= |$)", shown(key).practice.about)) == 2


@pytest.mark.parametrize("key", ALL)
def test_it_fits_wherever_its_numbers_allow(key: str) -> None:
    practice, row = shown(key).practice, row_of(practice_files()[key])
    minutes = max(10.0, sum(practice.arrange.minutes) / 2)
    session = Session(key, key, practice.ages[0], "", minutes, (6, 24), (Part(practice, minutes),))
    spare = min(1, practice.arrange.waiting_at_most)
    able = [count for count in (*TURNOUTS, row.designed) if row.areas(count) or row.areas(count - spare)]
    assert len(able) >= 4
    for players in able:
        fitted = fit_session(session, tonight(players, HALF, minutes))
        assert fitted.fits, f"{players}: {fitted.smallest_change}"


@pytest.mark.parametrize("key", ALL)
def test_its_drawing_has_everybody_apart_and_on_the_paper(key: str) -> None:
    drawn = setup_drawing(shown(key).setup)
    players = [mark for mark in drawn.marks if mark.kind == "player"]
    assert len(players) == shown(key).setup.players
    west, south, east, north = drawn.bounds_m  # round everybody but those on an edge, half a metre outside
    for number, mark in enumerate(players):
        assert west - EDGE_OUT_M <= mark.x_m <= east + EDGE_OUT_M
        assert south - EDGE_OUT_M <= mark.y_m <= north + EDGE_OUT_M
        others = [dist((mark.x_m, mark.y_m), (other.x_m, other.y_m)) for other in players[:number]]
        assert min(others, default=9.0) >= MARK_M, mark


@pytest.mark.parametrize("path", SESSIONS, ids=lambda path: path.stem)
def test_a_session_fits_everybody_it_expects(path) -> None:  # type: ignore[no-untyped-def]
    session = read_session(path)
    assert sum(part.minutes for part in session.parts) == session.minutes
    for part in session.parts:
        low, high = part.practice.ages
        assert low <= session.age <= high, part.practice.key
    space = HALL if path.stem == "under-the-roof" else HALF
    for players in range(session.expected[0], session.expected[1] + 1):
        fitted = fit_session(session, tonight(players, space, session.minutes, session.age))
        assert fitted.fits, f"{players}: {fitted.smallest_change}"


@pytest.mark.parametrize("path", SESSIONS, ids=lambda path: path.stem)
def test_a_session_is_printed(path) -> None:  # type: ignore[no-untyped-def]
    session = read_session(path)
    players = sum(session.expected) // 2
    space = HALL if path.stem == "under-the-roof" else HALF
    answer = fit_evening(Evening(session, tonight(players, space, session.minutes, session.age)))
    view = view_of(answer, {})
    assert cards_pdf(view).startswith(b"%PDF")
    for part in view.parts:
        assert part.rules and part.people and part.harder and part.easier
        assert not any("None" in text or " 0 x " in text for text in (*part.people, *part.rules))
        assert not any("0 x 0" in step.sentence for step in (*part.harder, *part.easier, *part.different))


def test_in_a_small_practice_inside_the_next_one_the_cones_may_stay() -> None:
    """The square of the first practice is as large as the one that lies inside the second, give or take a yard or so,
    and lies inside the ground of the second as fitted."""
    from turnout.fit.ground import place_polygon

    session = read_session(SHELF / "sessions" / "out-of-the-basin.yaml")
    answer = fit_evening(Evening(session, tonight(9, HALF, session.minutes, session.age)))
    first, second = (part.copies[0] for part in answer.fitted.parts[:2])
    inner = place_polygon(first, first.setup.field.name)
    outer = place_polygon(second, second.setup.field.name)
    xs, ys = [x for x, _ in outer], [y for _, y in outer]
    assert all(min(xs) <= x <= max(xs) and min(ys) <= y <= max(ys) for x, y in inner)


def test_a_hall_takes_a_whole_hour() -> None:
    session = read_session(SHELF / "sessions" / "under-the-roof.yaml")
    fitted = fit_session(replace(session, expected=(8, 12)), tonight(10, HALL, session.minutes, session.age))
    assert fitted.fits and {part.practice.key for part in session.parts} >= {"boathouse"}


def test_checking_the_folder_reads_what_people_write_and_nothing_else() -> None:
    from turnout.evening.check import files_of

    files, problems = files_of([SHELF])
    assert problems == [] and len(files) == len(ALL) + len(SESSIONS)
    assert all(file.name != "expected.yaml" for file in files)


def test_the_example_evening_is_the_one_it_was() -> None:
    from turnout.evening.load import load_evening

    assert load_evening(None).session.key == "hold-and-break"


def test_the_page_says_what_the_files_say() -> None:
    root = Path(__file__).parents[2]
    script = runpy.run_path(str(root / "tools" / "shelf-page"))
    text = (root / "docs" / "shelf.md").read_text("utf-8")
    assert text == script["page"]()
    assert {path.stem for path in (root / "docs" / "pictures").glob("*.svg")} >= set(ALL)
