"""Arrangements, sizes and candidates: small cases against brute force."""

from itertools import product

import pytest
from toy_practices import HALL, THIRD, bibs, end_zones, keep_ball, overload

from turnout.club.tonight import Kit, Space
from turnout.fit import prices
from turnout.fit.arrangements import MOST_APART, arrangements, most_copies
from turnout.fit.candidates import candidates, packed, part_goes
from turnout.fit.ground import needs_of
from turnout.fit.roles import role_table
from turnout.fit.sizes import SMALLEST_SIDE_M, sizes
from turnout.measure import YARD_M


def shares_by_hand(players: int, copies: int) -> set[tuple[int, ...]]:
    """All ways to share players out, by trying everything."""
    found = product(range(1, players + 1), repeat=copies)
    return {
        tuple(sorted(way, reverse=True)) for way in found if sum(way) == players and max(way) - min(way) <= MOST_APART
    }


@pytest.mark.parametrize("players", [6, 9, 13])
def test_every_way_to_share_out_is_there_once(players):
    practice = keep_ball(waiting_at_most=0)
    table = role_table(practice.groups)
    found = [tuple(sum(mix.counts) for mix in way.mixes) for way in arrangements(practice, players, None, 10.0)]
    by_hand = {way for copies in (1, 2, 3) for way in shares_by_hand(players, copies) if all(n in table for n in way)}
    assert set(found) == by_hand


def test_everybody_plays_or_waits_and_nobody_waits_beyond_the_cap():
    for players in range(6, 25):
        for way in arrangements(overload(), players, 2, 15.0):
            assert sum(sum(mix.counts) for mix in way.mixes) + sum(way.waiting) == players
            assert max(way.waiting) <= overload().arrange.waiting_at_most


def test_waiting_is_priced_per_child_and_minute():
    ways = arrangements(end_zones(), 9, None, 15.0)
    nobody = next(way for way in ways if sum(way.waiting) == 0)
    one = next(way for way in ways if sum(way.waiting) == 1)
    assert one.price >= prices.WAITING * 15.0 > nobody.price


def test_adults_are_stretched_by_one_area_at_most_and_at_a_price():
    assert most_copies(end_zones(), 24, 1) == 2
    assert most_copies(end_zones(), 24, None) == 24 // 4
    ways = arrangements(end_zones(), 20, 1, 15.0)
    assert {way.copies for way in ways} == {2}
    assert all(way.stretched == 1 and way.price >= prices.ADULTS_STRETCHED for way in ways)


def test_sizes_are_whole_yards_inside_band_and_shape():
    written = (24, 36)
    for homes in ((7,), (10,), (13,), (8, 9)):
        listed = sizes(end_zones(), 10, homes)
        assert listed
        for size in listed:
            across, up = size.across_m / YARD_M, size.up_m / YARD_M
            assert across == pytest.approx(round(across)) and up == pytest.approx(round(up))
            assert abs((across / up) / (written[0] / written[1]) - 1) <= 0.10 + 1e-9
            for home in homes:
                assert 0.75 - 1e-9 <= across * up / home / (written[0] * written[1] / 10) <= 1.25 + 1e-9


def test_a_square_that_stays_square_does():
    assert all(size.across_m == size.up_m for size in sizes(keep_ball(), 6, (7,)))


def test_a_fixed_size_stays():
    (size,) = sizes(keep_ball(fixed=True), 6, (9,))
    assert (size.across_m, size.up_m) == pytest.approx((9 * YARD_M, 9 * YARD_M))


def test_no_side_is_shorter_than_four_yards_between_the_zones():
    for size in sizes(end_zones(band=0.9), 10, (4,)):
        assert size.up_m - 10 * YARD_M >= SMALLEST_SIDE_M - 1e-9


def test_the_written_size_comes_first_at_the_written_number():
    assert sizes(end_zones(), 10, (10,))[0].price == 0


def test_the_search_stops_early_but_finds_the_cheapest():
    for practice, players in ((keep_ball(), 13), (overload(), 17), (end_zones(), 20)):
        needs = needs_of(practice)
        best = candidates(practice, players, THIRD, 2, Kit(), 15.0)[0]
        for way in arrangements(practice, players, 2, 15.0):
            homes = tuple(sorted(needs.players_home(mix.counts) for mix in way.mixes))
            for size in sizes(practice, needs.designed_home, homes):
                if way.price + size.price < best.price - 1e-9:
                    assert packed(needs, way.copies, size, THIRD) is None


def test_part_goes_agrees_with_the_search():
    for practice in (keep_ball(), overload(), end_zones()):
        for players in range(4, 25):
            for space in (THIRD, HALL, Space("yard", 14.0, 14.0)):
                for kit in (Kit(), bibs(blue=3)):
                    found = candidates(practice, players, space, 1, kit, 15.0)
                    assert bool(found) == part_goes(practice, players, space, 1, kit)
