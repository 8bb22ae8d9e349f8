"""Whole sessions: yes where it must be, the hour adds up, and an independent geometry library finds nothing wrong."""

import subprocess
import sys

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from seen_by_shapely import faults
from toy_practices import HALL, QUARTER, THIRD, bibs, session_of, shelf_session, tonight, toy_session

from turnout.club.tonight import Kit, Space
from turnout.fit import fit_range, fit_session, with_minutes, with_players, with_space
from turnout.measure import YARD_M
from turnout.session.model import Part


def hour(fitted) -> float:
    return sum(part.minutes + part.changeover_min for part in fitted.parts)


def blocks_add_up(part) -> bool:
    return part.minutes == pytest.approx(sum(part.blocks) + part.rest_min * (len(part.blocks) - 1))


@pytest.mark.parametrize("minutes", [60, 45])
@pytest.mark.parametrize("players", range(8, 21))
@pytest.mark.parametrize("session", [shelf_session(), toy_session()], ids=["shelf", "toy"])
def test_yes_on_a_third_for_every_turnout_from_8_to_20(session, players, minutes):
    fitted = fit_session(session, tonight(players, THIRD, minutes=minutes))
    assert fitted.fits
    assert not fitted.left_out
    assert hour(fitted) == pytest.approx(minutes)
    assert faults(fitted) == []


@pytest.mark.parametrize("space", [THIRD, HALL, QUARTER], ids=lambda space: space.name)
@pytest.mark.parametrize("minutes", [30, 45, 60, 75, 90])
def test_everywhere_a_clean_yes_or_a_no_with_its_smallest_change(space, minutes):
    for players, fitted in fit_range(shelf_session(), tonight(space=space, minutes=minutes), range(6, 25)).items():
        if fitted.fits:
            assert faults(fitted) == []
            assert hour(fitted) == pytest.approx(minutes)
            assert all(blocks_add_up(part) for part in fitted.parts)
            starts = [part.start_min for part in fitted.parts]
            ends = [part.start_min + part.minutes + part.changeover_min for part in fitted.parts]
            assert starts == pytest.approx([0.0, *ends[:-1]])
        else:
            assert fitted.reasons, (space.name, minutes, players)
            assert fitted.smallest_change, (space.name, minutes, players)
            assert fitted.parts == ()


@settings(max_examples=60, deadline=None)
@given(
    players=st.integers(1, 30),
    across=st.floats(7, 90),
    up=st.floats(7, 90),
    minutes=st.floats(5, 130),
    adults=st.none() | st.integers(1, 4),
    blue=st.integers(0, 14),
    yellow=st.integers(0, 14),
)
def test_any_evening_gets_a_clean_answer(players, across, up, minutes, adults, blue, yellow):
    evening = tonight(
        players, Space("any", across, up), minutes=minutes, adults=adults, kit=bibs(blue=blue, yellow=yellow)
    )
    fitted = fit_session(toy_session(), evening)
    assert faults(fitted) == []
    assert fitted.reasons
    if fitted.fits:
        assert hour(fitted) == pytest.approx(minutes)


def test_the_same_evening_gets_the_same_answer():
    from turnout.fit.arrangements import arrangements
    from turnout.fit.candidates import candidates, part_goes
    from turnout.shapes.packing import pack

    first = fit_session(toy_session(), tonight(19, QUARTER))
    for cached in (arrangements, candidates, part_goes, pack):
        cached.cache_clear()
    assert fit_session(toy_session(), tonight(19, QUARTER)) == first


def test_the_designed_turnout_runs_as_written():
    fitted = fit_session(session_of(Part(shelf_session().parts[2].practice, 17)), tonight(10, minutes=17))
    (part,) = fitted.parts
    (copy,) = part.copies
    assert copy.setup.counts == (("amber", 4), ("blue", 4), ("neutral", 2))
    assert (copy.setup.field.across_m / YARD_M, copy.setup.field.up_m / YARD_M) == pytest.approx((24, 34))
    assert part.gave_way == ()


def test_a_part_that_may_be_left_out_goes_when_the_hour_is_short():
    short = shelf_session()  # its first part may be left out
    fitted = fit_session(short, tonight(12, minutes=26))
    assert fitted.fits
    assert fitted.left_out == ("Gull square",)
    assert [part.index for part in fitted.parts] == [1, 2]
    assert hour(fitted) == pytest.approx(26)
    assert any("Gull square is left out" in reason for reason in fitted.reasons)


def test_sides_with_bibs_short_are_dressed_from_two_colours():
    fitted = fit_session(toy_session(), tonight(20, kit=Kit(bibs=(("blue", 6), ("yellow", 6)))))
    assert fitted.fits
    assert faults(fitted) == []


def test_helpers_change_one_thing():
    evening = tonight(3, labels=("Ada", "Ben", "Cal"))
    assert with_players(evening, 5).labels == ("Ada", "Ben", "Cal", "4", "5")
    assert with_players(evening, 2).labels == ("Ada", "Ben")
    assert with_minutes(evening, 40).minutes == 40
    assert with_space(evening, across_m=20, up_m=30).space == Space("20 × 30 m", 20, 30, 3.0)


def test_a_fit_loads_no_solver_and_no_geometry_library():
    code = (
        "import sys; from turnout.fit import fit_session; from turnout.rota import rota_for; "
        "from turnout.layout import lay_out; "
        "print([name for name in ('ortools', 'shapely', 'scipy', 'numba') if name in sys.modules])"
    )
    answer = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert answer.stdout.strip() == "[]"
