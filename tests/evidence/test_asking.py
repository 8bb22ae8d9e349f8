"""The judge itself: what it lets pass and what it does not."""

from dataclasses import replace

import pytest
from answers_rota import against, every, everyone_once, together
from asking import Departure, Given, agrees, numbers

from turnout.evidence import Check, checks, design

ROW = next(check for check in checks() if check.id == "ball-01")


def row(expected: str, tolerance: str = "") -> Check:
    return replace(ROW, expected=expected, tolerance=tolerance)


@pytest.mark.parametrize(
    ("expected", "tolerance", "right", "wrong"),
    [
        ("0.1095", "0.0015", 0.111, 0.1111),
        ("2.51", "6%", 2.6606, 2.6608),
        ("42", "", 42, 41),
        ("<=7", "", 7.0, 7.01),
        (">=42", "", 42.0, 41.9),
        ("<0.76", "", 0.7599, 0.76),
        ("7.32 x 2.44", "0.005", (7.32, 2.44), (2.44, 7.32)),
        ("1.0552; 1804.4", "0.0001; 0.1", (1.0552, 1804.45), (1.0554, 1804.4)),
        ("22-23.5 x 30.5", "0.05", (22, 23.5, 30.5), (22, -23.5, 30.5)),
        ("5", "1", (4, 6), (4, 6.1)),
        ("105 pairs once each", "0", "105 pairs once each", "105 pairs twice each"),
        ("a disc", "1%", Departure(0.0099), Departure(0.0101)),
        ("a law", "1e-09", Departure(1e-10), Departure(1e-8)),
        ("row .4289 .2375", "0.0001", (0.4289, 0.2375), (0.4289, 0.2378)),
    ],
)
def test_judging(expected: str, tolerance: str, right: object, wrong: object) -> None:
    assert agrees(row(expected, tolerance), right)  # type: ignore[arg-type]
    assert not agrees(row(expected, tolerance), wrong)  # type: ignore[arg-type]


def test_an_answer_of_another_shape_is_a_mistake_in_the_test() -> None:
    with pytest.raises(AssertionError, match="expects 2 numbers, got 3"):
        agrees(row("7.32 x 2.44"), (1.0, 2.0, 3.0))
    with pytest.raises(AssertionError, match="expects words"):
        agrees(row("never"), 3.0)


def test_the_answerer_sees_the_question_only() -> None:
    given = Given("v0=20; angle=30 deg; age=U12; 1.5 m per shared edge")
    assert (given["v0"], given["angle"], given.get("age")) == (20.0, 30.0, "U12")
    assert numbers("115 +-35 against 187 +-53") == (115, 35, 187, 53)
    assert not hasattr(given, "expected")


def test_a_broken_design_is_found() -> None:
    whist = design("whist-8")
    first, *rest = whist.rounds
    swapped = replace(whist, rounds=(((7, 1), (0, 3), *first[2:]), *rest))
    assert everyone_once(swapped)
    with pytest.raises(AssertionError, match="pairs come up"):
        every(together(swapped), 8)
    doubled = replace(whist, rounds=(((7, 0), (0, 3), *first[2:]), *rest))
    assert not everyone_once(doubled)
    assert every(against(whist), 8) == 2
