"""What levels, ages, capabilities, surfaces and shelter are worth in play, paired by seed."""

import numpy as np
import pytest

from turnout.play.abilities import squad_abilities
from turnout.play.kernel import columns as c
from turnout.play.kernel.weights import TABLE
from turnout.study.frozen import GAMES as WRITTEN
from turnout.study.pays import (
    ARRIVE,
    FAST,
    GAP,
    QUESTION,
    ROW,
    ROWS,
    SCORE,
    SCORES,
    Experiment,
    Paid,
    Variant,
    abilities_of,
    asked_game,
    counts,
    first_side,
    jackknife,
    left_out,
    paid,
    weights_of,
)
from turnout.study.pays_asked import (
    SHELF,
    capabilities,
    ground,
    ladders,
    pressure,
    scanning,
    shelter,
    spots,
    success,
    tiredness,
)

GAMES = ("4 v 2, 12 m", "harbour-square", "breakwater", "keepers 5 v 5")
WON = Experiment("levels", "4 v 2, 12 m", Variant(level="new"), Variant(level="strong"), ARRIVE, guess="so it is")
LOST = Experiment("unsure", "4 v 2, 12 m", Variant(), Variant(scaled=((c.WEIGHT_SD, 2.0),)), ARRIVE, -1)


@pytest.mark.parametrize(("low", "high", "said"), [(0.5, 1.5, "clear"), (-0.5, 0.5, "flat"), (-1.5, -0.5, "reversed")])
def test_a_verdict_is_of_the_interval_and_the_claimed_sign(low: float, high: float, said: str) -> None:
    turned = {"clear": "reversed", "flat": "flat", "reversed": "clear"}[said]
    assert Paid(WON, 1.0, 1.0 + (low + high) / 2, low, high).verdict == said
    assert Paid(LOST, 1.0, 1.0 + (low + high) / 2, low, high).verdict == turned


def test_a_guess_is_told_only_where_the_answer_is_not_clear() -> None:
    assert "so it is" not in Paid(WON, 1.0, 2.0, 0.5, 1.5).why()
    assert "so it is" in Paid(WON, 1.0, 1.0, -0.5, 0.5).why()


def test_the_jackknife_of_a_mean_is_its_standard_error() -> None:
    values = np.array([[1.0], [2.0], [4.0], [5.0], [8.0], [3.0], [6.0], [7.0]])
    means = left_out(values)[:, 0] / (len(values) - 1)
    assert jackknife(means) == pytest.approx(1.895 * values.std(ddof=1) / np.sqrt(8), rel=0.01)  # t of 7 at 95 %


def test_nothing_changed_is_no_change() -> None:
    found = paid(Experiment("same", "4 v 2, 12 m", Variant(), Variant(), ROW), runs=6)
    assert found.low == found.high == 0.0
    assert found.verdict == "flat"


def test_only_the_first_side_gets_its_own_capabilities() -> None:
    setup = asked_game("harbour-square")
    plain = squad_abilities(setup.players, 12, "settled", 5)
    A = abilities_of(setup, Variant(first=(("timing", "new"),), first_scaled=((c.SCAN, 2.0),)), 5)
    mine = first_side(setup)
    assert 0 < mine.sum() < setup.players
    assert (A[~mine] == plain[~mine]).all()
    assert (A[mine, c.RELEASE_S] > plain[mine, c.RELEASE_S]).all()
    assert A[mine, c.SCAN] == pytest.approx(2 * plain[mine, c.SCAN])
    assert (np.delete(A, [c.RELEASE_S, c.SCAN], 1) == np.delete(plain, [c.RELEASE_S, c.SCAN], 1)).all()


def test_a_variant_changes_its_weights_and_tonights_surface_only() -> None:
    names = list(TABLE)
    plain, wet = weights_of(Variant()), weights_of(Variant(surface="wet grass", weights=(("BELIEF", 0.0),)))
    changed = {names[number] for number in np.flatnonzero(plain != wet)}
    assert changed == {"ROLL", "SLIDE", "BOUNCE", "BELIEF"}


def test_a_late_part_is_the_whole_less_the_early_part() -> None:
    game = "4 v 2, 12 m"
    early, whole, late = (
        counts(game, one, FAST, runs=3)
        for one in (Variant(seconds=30.0), Variant(seconds=60.0), Variant(since_s=30.0, seconds=60.0))
    )
    assert late == pytest.approx(whole - early)
    assert late[:, 1] == pytest.approx(early[:, 1])  # as many player-minutes


def test_a_sentence_can_be_added_only_to_a_game_written_here() -> None:
    rules = ("Nobody tackles in the strips.",)
    assert len(asked_game("4 v 3, side strips", rules).practice.rules) == 1 + len(
        asked_game("4 v 3, side strips").practice.rules
    )
    with pytest.raises(KeyError):
        asked_game("harbour-square", rules)


def test_every_question_is_about_a_game_there_is_and_changes_something() -> None:
    asked = [*capabilities(), *pressure(), *scanning(), *spots(), *ground(), *shelter(), *tiredness()]
    for one in asked:
        assert one.a != one.b, one.name
        assert asked_game(one.game, one.b.rules).players >= asked_game(one.game, one.a.rules).players > 0
    assert len({(one.name, one.game, one.outcome.name) for one in asked}) == len(asked)


def test_success_is_of_both_sides_where_both_keep_the_ball() -> None:
    assert success("4 v 2, 12 m", both=True) is ROW
    assert (success("harbour-square"), success("harbour-square", both=True)) == (ROW, ROWS)
    assert (success("breakwater"), success("breakwater", both=True)) == (SCORE, SCORES)
    assert {*WRITTEN, *SHELF} >= {"lock-gates", "keepers 5 v 5"}
    assert QUESTION not in (5, 6)  # the seeds of the fit and of the frozen games are others


@pytest.mark.parametrize("game", GAMES)
def test_a_better_level_completes_more_passes_everywhere(game: str) -> None:
    ((arrive, _),) = ladders("levels", games=(game,), runs=120)
    assert all(step.verdict == "clear" for step in arrive.steps), [step.why() for step in arrive.steps]
    assert list(arrive.values) == sorted(arrive.values)
    assert len(arrive.values) == len(arrive.rungs)


@pytest.mark.parametrize("game", GAMES)
def test_under_eights_complete_fewer_passes_than_under_fourteens(game: str) -> None:
    found = paid(Experiment(game, game, Variant(age=8), Variant(age=14), ARRIVE), runs=160)
    assert found.verdict == "clear", found.why()


@pytest.mark.parametrize("one", [one for one in pressure() if one.game in ("4 v 2, 12 m", "harbour-square")])
def test_beginners_suffer_more_from_pressure(one: Experiment) -> None:
    found = paid(one, runs=40)
    assert one.outcome is GAP
    assert found.verdict == "clear", found.why()


@pytest.mark.parametrize("name", ("technique", "scanning", "timing"))
def test_one_sides_capability_is_worth_passes_in_a_row(name: str) -> None:
    (one,) = (each for each in capabilities(("harbour-square",)) if each.name == name)
    found = paid(one, runs=60)
    assert found.verdict == "clear", found.why()


@pytest.mark.parametrize("one", [one for one in ground() if one.name.startswith("pass weight")])
def test_an_unsure_pass_weight_costs_passes(one: Experiment) -> None:
    found = paid(one, runs=40)
    assert found.verdict == "clear", found.why()


@pytest.mark.parametrize("one", [one for one in shelter() if one.game == "4 v 3, side strips"])
def test_shelter_raises_possession(one: Experiment) -> None:
    found = paid(one, runs=60)
    assert found.verdict == "clear", found.why()
