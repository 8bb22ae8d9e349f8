"""Surfaces, balls and running ages come out of the evidence room and say what is free."""

import pytest

from turnout.evidence import number
from turnout.play.sprint import sprint_profile
from turnout.play.surfaces import SURFACES, ball, surface
from turnout.problems import TurnoutError


def test_every_surface_stays_inside_its_own_bands() -> None:
    for name in SURFACES:
        for each in (surface(name).roll, surface(name).slide, surface(name).bounce):
            assert each.low is not None and each.high is not None
            assert each.low <= each.number <= each.high


def test_longer_grass_rolls_shorter_and_a_hall_longer() -> None:
    rolls = {name: surface(name).roll_mps2 for name in SURFACES}
    assert rolls["wet grass"] > rolls["grass"] > rolls["hall"]


def test_free_figures_are_named() -> None:
    assert surface("grass").free == ()
    assert surface("3G").free == ("slide",)
    assert surface("wet grass").free == ("roll", "slide", "bounce")


def test_balls_by_size() -> None:
    masses = [ball(size).mass_kg for size in ("3", "4", "5")]
    assert masses == sorted(masses)
    assert ball("futsal").radius_m == pytest.approx(0.1003, abs=1e-4)


def test_unknown_names_are_answered_with_the_known() -> None:
    with pytest.raises(TurnoutError, match="3G, grass, wet grass, hall"):
        surface("sand")
    with pytest.raises(TurnoutError, match="3, 4, 5 and futsal"):
        ball("6")


def test_ages_between_and_beyond_the_table() -> None:
    eleven = sprint_profile(age=11, season="end")
    assert eleven.top_speed_mps == pytest.approx((6.3 + 6.8) / 2)
    assert eleven.first_mps2 == pytest.approx(number("sprint.boys.u10.f0.end"))
    old, oldest = sprint_profile(age=16), sprint_profile(age=14)
    assert old.top_speed_mps == oldest.top_speed_mps
    assert "U16 is shown as U14" in old.note and "shown as" not in oldest.note
    assert "girls" in oldest.note


def test_the_weights_of_the_table_are_those_of_the_usual_surface() -> None:
    from turnout.play.kernel.weights import TABLE
    from turnout.play.physics import GRAVITY_MPS2

    usual = surface("3G")
    assert usual.roll_mps2 == TABLE["ROLL"].value
    assert usual.friction * GRAVITY_MPS2 == pytest.approx(TABLE["SLIDE"].value)
