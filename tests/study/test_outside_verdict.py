"""The judge of simulated figures: bands as rows state them, signs with their intervals, and that each can fail."""

from dataclasses import replace

import pytest

from turnout.evidence import Check
from turnout.study.outside import Answer, Figure, output_checks
from turnout.study.outside.page import page, totals
from turnout.study.outside.verdict import answer, bands_of, judge, mean_of, misses, waiting

ROWS = output_checks()


def stated(expected: str, tolerance: str = "", kind: str = "published") -> Check:
    return replace(ROWS["pass-02"], expected=expected, tolerance=tolerance, kind=kind)  # type: ignore[arg-type]


def figures(*values: float, half: float = 0.1) -> list[Figure]:
    return [Figure("it", value, value - half, value + half) for value in values]


@pytest.mark.parametrize(
    ("expected", "tolerance", "right", "wrong"),
    [
        ("12.05", "2.25", (14.3,), (14.31,)),
        ("-4", "2", (-2.0,), (-1.99,)),
        ("4.8", "15%", (5.51,), (5.53,)),
        (">=0.90", "", (0.9,), (0.899,)),
        ("<=0.10", "", (0.1,), (0.101,)),
        ("ratio >=2", "", (2.0,), (1.99,)),
        ("positive and <10 points", "", (0.01,), (0.0,)),
        ("positive and <10 points", "", (9.9,), (10.0,)),
        ("80-105", "hard fail outside 60-140", (80.0, 105.0), (80.0, 105.1)),
        ("never", "", (0.0,), (0.02,)),
        ("strictly rising", "", (0.3, 0.01), (0.3, 0.0)),
        ("4; 10; 18", "short 2-6, medium 7-13, long 14-24", (4.0, 7.0, 24.0), (7.0, 4.0, 24.0)),
    ],
)
def test_bands(expected: str, tolerance: str, right: tuple[float, ...], wrong: tuple[float, ...]) -> None:
    check = stated(expected, tolerance)
    assert judge(check, figures(*right)) == "inside"
    assert judge(check, figures(*wrong)) == "outside"
    assert judge(check, figures(*(float("nan") for _ in right))) == "outside"


def test_signs() -> None:
    check = stated("rises", kind="direction")
    assert judge(check, figures(0.11, 5.0)) == "clear"
    assert judge(check, figures(5.0, 0.09)) == "flat"
    assert judge(check, figures(-0.09)) == "flat"
    assert judge(check, figures(5.0, -0.11)) == "reversed"


def test_what_misses_is_said_with_how_much() -> None:
    band = stated("12.05", "2.25")
    assert misses(band, figures(12.0)) == ()
    assert misses(band, figures(15.0)) == ("it is 15, 0.7 above 9.8 to 14.3",)
    assert misses(band, figures(9.0)) == ("it is 9, 0.8 below 9.8 to 14.3",)
    assert misses(band, figures(float("nan"))) == ("it was never seen in play",)
    rises = stated("rises", kind="direction")
    assert misses(rises, figures(5.0, 0.09, -0.11)) == (
        "it, 0.09, is not clear of zero", "it goes the other way, -0.11"
    )  # fmt: skip
    assert (
        answer(band, figures(15.0), "a toy game").why().endswith("Misses: it is 15, 0.7 above 9.8 to 14.3. a toy game")
    )


def test_a_row_says_what_misses_exactly_when_it_is_not_met() -> None:
    for expected, value in (
        ("never", 0.0),
        ("never", 0.02),
        ("ratio >=2", 1.9),
        ("<=0.10", 0.1),
        ("strictly rising", 0.0),
    ):
        given = answer(stated(expected), figures(value), "a toy game")
        assert bool(given.missed) != given.good


def test_every_output_row_that_states_a_band_is_read() -> None:
    for check in ROWS.values():
        if check.kind != "direction":
            assert all(band.low < float("inf") for band in bands_of(check)), check.id
    with pytest.raises(ValueError, match="no band is read out of “more or less”"):
        bands_of(stated("more or less"))
    with pytest.raises(ValueError, match="states 3 bands and got 2"):
        judge(stated("4; 10; 18", "short 2-6, medium 7-13, long 14-24"), figures(1, 2))


def test_mean_and_interval_over_seeds() -> None:
    figure = mean_of("it", [1.0, 2.0, 3.0, 4.0, 5.0, 6.0, float("nan")])
    assert figure.value == 3.5
    assert figure.high - figure.value == pytest.approx(2.015 * 1.8708 / 6**0.5, rel=0.01)  # Student's t, 5 degrees
    single = mean_of("it", [1.0])
    assert (single.value, single.low, single.high) == (1.0, float("-inf"), float("inf"))


def test_the_least_favourable_figure_speaks_for_a_direction() -> None:
    given = answer(stated("rises", kind="direction"), figures(5.0, 0.3), "a toy game")
    assert (given.value, given.verdict, given.good) == (0.3, "clear", True)
    assert given.why().startswith("clear: it 5 (4.9 to 5.1); it 0.3")
    assert waiting(stated("rises"), "a goal").why() == "waiting: a goal"


def toy_answers(verdict: str) -> dict[str, Answer]:
    return {each: Answer(each, 1.0, 0.9, 1.1, verdict, tuple(figures(1.0)), "toy") for each in ROWS}  # type: ignore[arg-type]


def test_totals_count_what_is_met_of_what_is_answered_and_of_all() -> None:
    found = toy_answers("inside") | {"ssg-duel": replace(toy_answers("outside")["ssg-duel"])}
    found["ssg-shots"] = waiting(ROWS["ssg-shots"], "goals")
    bands = next(line for line in totals(list(ROWS.values()), found) if line.startswith("| test"))
    assert bands == "| test | 16 | 14 | 1 | 1 | 93 % | 88 % |"


def test_the_page_shows_every_row_with_its_verdict_and_part() -> None:
    text = page(toy_answers("outside"), seeds=6, model="toy")
    for each, check in ROWS.items():
        line = next(line for line in text.splitlines() if line.startswith(f"| {each} |"))
        assert line.endswith(f"| **outside** | {check.part} |")
        assert check.ref in line
