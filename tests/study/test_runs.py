"""Runs of passes in closed form, against simply drawing them."""

from random import Random

import pytest

from turnout.study.runs import expected_run, run_chance, success_for_run


def test_drawn_runs_have_the_stated_mean():
    draw, runs = Random(1), []
    for _ in range(20_000):
        run = 0
        while draw.random() < 0.8:
            run += 1
        runs.append(run)
    assert expected_run(pass_success=0.8) == pytest.approx(sum(runs) / len(runs), rel=0.03)
    assert run_chance(pass_success=0.8, passes=5) == pytest.approx(sum(run >= 5 for run in runs) / len(runs), abs=0.01)


@pytest.mark.parametrize("success", [0.0, 0.5, 0.9])
def test_the_inverse(success):
    assert success_for_run(run=expected_run(pass_success=success)) == pytest.approx(success)


@pytest.mark.parametrize("success", [1.0, -0.1])
def test_a_chance_out_of_range_is_refused(success):
    with pytest.raises(ValueError, match="chance of a pass"):
        expected_run(pass_success=success)
