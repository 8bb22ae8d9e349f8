"""Turn orders against the worked designs and the equal-time law."""

from collections import Counter
from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from turnout.evidence import design
from turnout.rota.designs import fewest_equal_periods, in_turn, least_spread, rounds_of_pairs


def pair_counts(turns) -> Counter:
    return Counter(tuple(sorted(pair)) for pair in turns)


def test_six_players_defend_in_every_pair_once_in_fifteen_stints():
    # Worked design: 15 stints in 5 blocks of 3, each player once in each block.
    worked = design("pairs-6")
    ours = in_turn(6, 2, 15)
    assert pair_counts(ours) == pair_counts(pair for block in worked.rounds for pair in block)
    for block in range(5):
        stints = ours[3 * block : 3 * block + 3]
        assert sorted(player for pair in stints for player in pair) == list(range(6))


def test_eight_players_take_28_stints_in_7_blocks_of_4():
    ours = in_turn(8, 2, 28)
    assert set(pair_counts(ours).values()) == {1} and len(pair_counts(ours)) == 28
    for block in range(7):
        assert sorted(player for pair in ours[4 * block : 4 * block + 4] for player in pair) == list(range(8))


@pytest.mark.parametrize("players", [3, 5, 7, 11, 13])
def test_a_prime_number_of_players_also_meets_in_every_pair(players):
    every = players * (players - 1) // 2
    assert set(pair_counts(in_turn(players, 2, every)).values()) == {1}
    assert len(pair_counts(in_turn(players, 2, every))) == every


@given(st.integers(2, 20))
def test_the_circle_meets_every_pair_once(players):
    rounds = rounds_of_pairs(players)
    assert len(rounds) == (players - 1 if players % 2 == 0 else players)
    assert pair_counts(pair for pairs in rounds for pair in pairs) == Counter(combinations(range(players), 2))
    assert all(len({player for pair in pairs for player in pair}) == 2 * len(pairs) for pairs in rounds)


@pytest.mark.parametrize(
    ("players", "places", "periods"), [(7, 5, 7), (9, 7, 9), (10, 8, 5), (11, 9, 11), (12, 9, 4), (14, 10, 7)]
)
def test_fewest_equal_periods(players, places, periods):
    # Worked examples of the law n / gcd(n, p).
    assert fewest_equal_periods(players, places) == periods


@given(st.integers(2, 24), st.integers(1, 12), st.integers(1, 30))
def test_turns_reach_the_least_spread_and_the_law_is_met(players, places, periods):
    places = min(places, players)
    turns = in_turn(players, places, periods)
    served = Counter(player for turn in turns for player in turn)
    counts = [served[player] for player in range(players)]
    assert all(len(set(turn)) == places for turn in turns)
    assert max(counts) - min(counts) == least_spread(players, places, periods)
    assert (max(counts) == min(counts)) == (periods % fewest_equal_periods(players, places) == 0)
