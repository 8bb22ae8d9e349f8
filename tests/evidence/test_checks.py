"""One row of checks.csv, one test: the program answers the question, the row judges the answer."""

import warnings
from pathlib import Path

import answers_ball
import answers_care
import answers_club
import answers_evening
import answers_ground
import answers_motion
import answers_rota
import answers_study
import pytest
from asking import ANSWERS, Departure, Given, agrees

from turnout.evidence import Check, checks
from turnout.evidence.page import counts, page
from turnout.study.outside.asking import ROWS as OUTPUTS

ROOMS = (
    answers_ball,
    answers_care,
    answers_club,
    answers_evening,
    answers_ground,
    answers_motion,
    answers_rota,
    answers_study,
)
ROWS = {check.id: check for check in checks()}
RUNNING = [check for check in checks() if check.id in ANSWERS]


@pytest.mark.parametrize("check", RUNNING, ids=[check.id for check in RUNNING])
def test_check(check: Check) -> None:
    answer = ANSWERS[check.id].function(Given(check.inputs))
    said = f"{check.id} {check.what}: answered {answer!r}, expected {check.expected} ± {check.tolerance or 0}"
    if check.gate == "warn" and not agrees(check, answer):
        warnings.warn(said, stacklevel=1)
    else:
        assert agrees(check, answer), f"{said} {check.unit} ({check.ref} {check.locus})"


@pytest.mark.parametrize("check", RUNNING, ids=[check.id for check in RUNNING])
def test_a_wrong_answer_would_be_refused(check: Check) -> None:
    answer = ANSWERS[check.id].function(Given(check.inputs))
    assert not agrees(check, _spoilt(check, answer))


def _spoilt(check: Check, answer: object) -> object:
    if isinstance(answer, str):
        return f"not {answer}"
    if isinstance(answer, Departure):
        return Departure(0.5)
    factor = 0.2 if check.expected.startswith(">") else 3.0
    return tuple(each * factor for each in answer) if isinstance(answer, tuple) else answer * factor  # type: ignore


def test_every_answer_belongs_to_a_row() -> None:
    assert set(ANSWERS) <= set(ROWS)


def test_statuses_are_true() -> None:
    stated = {check.id: check.status for check in checks()}
    true = {check.id: ANSWERS[check.id].how if check.id in ANSWERS else "not yet" for check in checks()}
    true |= {each: "not yet" if row.open else "simulated" for each, row in OUTPUTS.items()}
    assert stated == true


def test_an_output_is_answered_by_play_alone() -> None:
    assert set(OUTPUTS) & set(ANSWERS) == set()


def test_every_definition_worked_example_and_look_up_is_answered() -> None:
    plain = [check for check in checks() if check.kind in ("definition", "worked-example") or check.use == "look-up"]
    assert [check.id for check in plain if check.status == "not yet"] == []


def test_enough_rows_run() -> None:
    by = counts()
    assert by["computed"] >= 95
    assert sum(by.values()) == len(ROWS)


def test_the_page_in_the_docs_is_true() -> None:
    shown = Path(__file__).parents[2] / "docs" / "evidence.md"
    assert shown.read_text(encoding="utf-8") == page(), "run tools/evidence-page"
