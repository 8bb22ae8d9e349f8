"""Reasons are recomputed, and the smallest change is imposed: it works, and one less does not."""

from dataclasses import replace

import pytest
from toy_practices import (
    HALL,
    QUARTER,
    THIRD,
    bibs,
    end_zones,
    keep_ball,
    overload,
    session_of,
    shelf_session,
    tonight,
    toy_session,
)

from turnout.club.tonight import Space
from turnout.fit import fit_session, with_adults, with_space
from turnout.fit.change import change_words, impose, without_part
from turnout.fit.ground import area_per_player_m2
from turnout.fit.why import seen_differently
from turnout.session.model import Part

CASES = {
    "few players": (toy_session(), tonight(6)),
    "hall": (toy_session(), tonight(12, HALL)),
    "crowded quarter": (toy_session(), tonight(23, QUARTER)),
    "short hour": (toy_session(), tonight(12, minutes=24)),
    "long hour": (toy_session(), tonight(12, minutes=110)),
    "one adult": (
        session_of(Part(end_zones(minutes=(8, 20)), 18)),
        tonight(40, Space("field", 90, 60), minutes=18, adults=1),
    ),
    "few bibs": (toy_session(), tonight(14, kit=bibs(blue=3, yellow=1))),
    "yard": (toy_session(), tonight(14, Space("yard", 16, 20))),
}


@pytest.mark.parametrize("case", CASES)
def test_each_single_change_does_it_and_one_less_does_not(case):
    session, evening = CASES[case]
    no = fit_session(session, evening)
    assert not no.fits
    assert no.changes and no.smallest_change
    single = no.smallest_change.count("together") == 0
    for kind, size in no.changes if single else ():
        if kind == "leave out":
            assert fit_session(without_part(session, int(size)), evening).fits
            continue
        assert fit_session(session, impose(evening, (kind, size))).fits
        assert change_words((kind, size)) in no.smallest_change
        less = int(size) - (1 if size > 0 else -1)
        for smaller in range(0, less, 1 if size > 0 else -1):
            assert not fit_session(session, impose(evening, (kind, smaller))).fits
        assert not fit_session(session, impose(evening, (kind, less))).fits if less else True


def test_a_pair_of_changes_does_it_together_and_neither_alone():
    session = session_of(Part(overload(), 15))
    evening = tonight(6, Space("yard", 12, 12), minutes=15)
    no = fit_session(session, evening)
    assert not no.fits and no.smallest_change is not None and "together" in no.smallest_change
    first, second = no.changes
    assert fit_session(session, impose(impose(evening, first), second)).fits
    assert not fit_session(session, impose(evening, first)).fits
    assert not fit_session(session, impose(evening, second)).fits


def test_each_kind_of_limit_is_named():
    said = {case: " ".join(fit_session(*CASES[case]).reasons) for case in CASES}
    assert "6 players cannot be shared into areas of 7 to 19" in said["few players"]
    assert "inside the run-off" in said["hall"]
    assert "there are 24" in said["short hour"]
    assert "do not fill 110 minutes" in said["long hour"]
    assert "too many for 1 adult" in said["one adult"]
    assert "the bibs in the bag" in said["few bibs"]


def test_blocks_that_cannot_go_into_the_part_are_named():
    session = session_of(Part(keep_ball(block_minutes=(20.0, 20.0), minutes=(8.0, 10.0)), 12))
    no = fit_session(session, tonight(12))
    assert not no.fits
    assert no.reasons == ("Toy keep-ball: blocks of 20 to 20 minutes do not go into 8 to 10 minutes.",)


def test_a_session_without_parts_is_a_no():
    no = fit_session(session_of(), tonight(12))
    assert not no.fits and no.reasons == ("The session has no parts.",)


def test_what_more_ground_would_give_is_what_it_gives():
    session, evening = session_of(Part(end_zones(), 18)), tonight(20, THIRD, minutes=18, adults=2)
    here = fit_session(session, evening)
    there = fit_session(session, with_space(evening, across_m=400, up_m=400))
    (line,) = [reason for reason in here.reasons if reason.startswith("More ground")]
    field = there.parts[0].copies[0].setup.field
    assert seen_differently(here.parts[0], there.parts[0])
    assert f"{round(field.across_m / 0.9144)} × {round(field.up_m / 0.9144)} yd" in line


def test_more_adults_is_said_exactly_when_it_changes_something():
    session = session_of(Part(end_zones(), 18))
    for players in range(8, 25):
        one = fit_session(session, tonight(players, Space("field", 90, 60), minutes=18, adults=1))
        many = fit_session(session, with_adults(one.tonight, 12))
        said = any(reason.startswith("More adults would give") for reason in one.reasons)
        assert said == seen_differently(one.parts[0], many.parts[0])


def test_room_given_up_is_the_figure_counted():
    fitted = fit_session(toy_session(), tonight(20))
    part = fitted.parts[2]
    (line,) = [sentence for sentence in part.gave_way if "room" in sentence]
    written = 24 * 36 * 0.9144**2 / 10
    now = area_per_player_m2(part.copies[0].setup)
    assert f"{round((1 - now / written) * 100)} % less room" in line
    assert f"({now:.0f} m²)" in line


def test_unknown_adults_are_neither_priced_nor_promised():
    unknown = fit_session(toy_session(), tonight(20))
    plenty = fit_session(toy_session(), tonight(20, adults=9))
    assert [part.copies for part in unknown.parts] == [part.copies for part in plenty.parts]
    (line,) = [reason for reason in unknown.reasons if "not known" in reason]
    assert "asks for 2 adults" in line
    assert not any("not known" in reason for reason in plenty.reasons)


def test_a_stretched_adult_is_said():
    fitted = fit_session(session_of(Part(end_zones(), 18)), tonight(20, Space("field", 90, 60), minutes=18, adults=1))
    assert len(fitted.parts[0].copies) == 2
    assert "Two areas are one more than your adults can look after." in fitted.parts[0].gave_way


def test_a_part_left_out_says_which_limit():
    first = replace(Part(overload(), 15), may_be_left_out=True)
    fitted = fit_session(session_of(first, Part(keep_ball(), 12)), tonight(6, minutes=14))
    assert fitted.fits and fitted.left_out == ("Toy overload",)
    assert any("6 players cannot be shared" in reason for reason in fitted.reasons)


def test_why_is_the_reasons():
    fitted = fit_session(shelf_session(), tonight(13))
    assert fitted.why() == fitted.reasons
    assert fitted.reasons[0].startswith("Gull square: two areas of")
