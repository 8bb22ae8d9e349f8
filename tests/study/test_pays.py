"""What levels, ages and capabilities are worth in play, paired by seed."""

import numpy as np
import pytest

from turnout.study.pays import ARRIVE, Experiment, Paid, Variant, _half, experiments, paid

GAMES = ("4 v 2, 12 m", "harbour-square", "breakwater", "keepers 5 v 5")


@pytest.mark.parametrize("game", GAMES)
def test_a_better_level_completes_more_passes_everywhere(game: str) -> None:
    for worse, better in (("new", "learning"), ("learning", "settled"), ("settled", "strong")):
        found = paid(Experiment(game, game, Variant(level=worse), Variant(level=better), ARRIVE), runs=120)
        assert found.verdict == "clear", found.why()


@pytest.mark.parametrize("game", GAMES)
def test_under_eights_complete_fewer_passes_than_under_fourteens(game: str) -> None:
    found = paid(Experiment(game, game, Variant(age=8), Variant(age=14), ARRIVE), runs=160)
    assert found.verdict == "clear", found.why()


def test_a_verdict_can_go_either_way() -> None:
    question = experiments()[0]
    assert Paid(question, 1.0, 2.0, 0.5, 1.5).verdict == "clear"
    assert Paid(question, 1.0, 1.0, -0.5, 0.5).verdict == "flat"
    assert Paid(question, 2.0, 1.0, -1.5, -0.5).verdict == "reversed"


def test_the_half_width_is_nothing_when_every_pair_differs_alike() -> None:
    a = np.array([[1.0, 1.0], [2.0, 1.0], [3.0, 1.0]])
    assert _half(a, a + np.array([1.0, 0.0])) == pytest.approx(0.0)
