"""The step table: its sums, its verdicts, and that it can say no."""

import runpy
from pathlib import Path

import numpy as np
import pytest

from turnout.study.figures import ratio

ROOT = Path(__file__).parents[2]


@pytest.fixture(scope="module")
def script() -> dict:
    return runpy.run_path(str(ROOT / "tools" / "step-halving"))


def test_a_level_is_the_ratio_the_forecast_would_print(script: dict) -> None:
    top, under = np.array([3.0, 5.0, 4.0, 6.0]), np.array([10.0, 11.0, 9.0, 12.0])
    level = script["ratio_level"](top, under)
    assert (level.value, level.half) == pytest.approx(ratio(top, under))
    assert script["ratio_level"](top, under * 0) is None


def test_a_difference_of_paired_blocks_forgets_what_they_share(script: dict) -> None:
    shared, one = np.array([1.0, -2.0, 3.0, -2.0]), np.ones(4)
    first = script["ratio_level"](10 + shared, one)
    second = script["ratio_level"](12 + shared, one)
    difference = second.minus(first)
    assert difference.value == pytest.approx(2.0)
    assert difference.half == pytest.approx(0.0, abs=1e-12)
    assert first.half > 1.0


def row(script: dict, whole: float, half: float, name: str = "passes_in_a_row"):
    def level(value: float, width: float):
        return script["Level"](value, width, np.zeros(3))

    levels = {0.05: level(9.0, 0.1), 0.025: level(whole, 0.1), 0.0125: level(half, 0.2)}
    same = {step: level(0.5, 0.1) for step in levels}
    return script["Row"](name, levels, same)


def test_kept_is_three_per_cent_and_both_half_widths(script: dict) -> None:
    assert row(script, 10.0, 10.59).kept() == (True, True)  # 0.3 + 0.1 + 0.2
    assert row(script, 10.0, 10.61).kept() == (False, True)
    assert row(script, 10.0, 9.39).kept() == (False, True)
    assert row(script, 0.1, 0.1 + 0.31, "first_pass_lost").kept() == (True, True)  # 0.015 + 0.1 + 0.2
    assert row(script, 0.1, 0.1 + 0.32, "first_pass_lost").kept() == (False, True)


def test_what_is_not_kept_is_said_in_the_row_and_at_the_top(script: dict) -> None:
    bad = row(script, 10.0, 11.0)
    assert "**not kept**" in script["line"](bad)
    text = script["page"]({"Gull square": [bad]}, 3)
    assert "**1 of 2 comparisons are kept.** Not kept: Gull square, passes in a row." in text


def test_a_level_that_is_not_sharp_is_named(script: dict) -> None:
    assert (
        script["blunt"]({"Gull square": [row(script, 10.0, 10.0)]})
        == "Every level but the rare shares is known to 1 %."
    )
    blunt = script["blunt"]({"Gull square": [row(script, 5.0, 5.0)]})
    assert blunt == "Known less well than to 1 %: Gull square, passes in a row (2.0%)."


def test_a_practice_is_measured_at_every_step(script: dict, capsys: pytest.CaptureFixture[str]) -> None:
    code = script["main"](["--blocks", "6", "gull-square"])
    printed = capsys.readouterr().out
    assert code in (0, 1) and (code == 1) == ("**not kept**" in printed)
    assert "| passes in a row |" in printed and "| metres a player and minute |" in printed


def test_a_practice_there_is_not_is_refused(script: dict) -> None:
    with pytest.raises(SystemExit):
        script["main"](["gull"])
