"""Role tables: every mix inside the ranges, ties followed; checked by plain enumeration."""

from itertools import product

import pytest
from toy_practices import end_zones, keep_ball, overload

from turnout.fit.roles import allowed_counts, designed_mix, role_table, tie_order
from turnout.practice.model import Group, Home, Tie


def test_keep_ball_counts_are_all_pairs_in_range():
    assert set(allowed_counts(keep_ball().groups)) == set(product((3, 4, 5), (1, 2, 3)))


def test_a_tie_follows_its_group_and_stays_in_its_range():
    mixes = list(allowed_counts(overload().groups))
    assert {(amber, blue) for amber, blue, *_ in mixes} == {(2, 1), (3, 2), (4, 3), (5, 4)}
    assert len(mixes) == 4 * 4 * 4


def test_the_designed_number_gets_the_designed_mix_first_and_free():
    for practice in (keep_ball(), overload(), end_zones()):
        written = designed_mix(practice.groups)
        best = role_table(practice.groups)[sum(written)][0]
        assert best.counts == written
        assert best.price == 0


def test_an_odd_player_on_the_edge_goes_to_the_side_that_is_one_short_inside():
    best = role_table(overload().groups)[12][0]
    assert best.counts == (4, 3, 2, 3)


def test_every_kept_mix_has_its_number_of_players():
    for practice in (keep_ball(), overload(), end_zones()):
        for players, mixes in role_table(practice.groups).items():
            assert mixes
            assert all(sum(mix.counts) == players for mix in mixes)
            assert [mix.price for mix in mixes] == sorted(mix.price for mix in mixes)


def test_ties_in_a_circle_are_refused():
    home = Home("square")
    groups = (Group("a", "", 3, 1, 5, home, Tie("b", 0)), Group("b", "", 3, 1, 5, home, Tie("a", 0)))
    with pytest.raises(ValueError, match="circle"):
        tie_order(groups)


def test_a_tie_to_a_later_group_is_followed():
    home = Home("square")
    groups = (Group("a", "", 3, 1, 5, home, Tie("b", 1)), Group("b", "", 2, 1, 4, home))
    assert set(allowed_counts(groups)) == {(2, 1), (3, 2), (4, 3), (5, 4)}
