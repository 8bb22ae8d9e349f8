"""Groups that mix: what is reached is counted pair by pair, what is claimed is proven."""

from itertools import combinations, permutations

import pytest

from turnout.rota.mixing import Mixed, counting_bound, meetings, mixed_rounds, rounds_bound, unrepeated_rounds

SMALL = [(groups, size) for size in range(2, 6) for groups in range(2, 24 // size + 1)]


@pytest.mark.parametrize(("groups", "size"), SMALL)
def test_no_pair_meets_twice_and_everybody_is_in_every_round(groups, size):
    found = unrepeated_rounds(groups, size)
    assert max(meetings(found.rounds).values()) == 1
    for day in found.rounds:
        assert sorted(player for group in day for player in group) == list(range(groups * size))
        assert {len(group) for group in day} == {size}
    assert 1 <= len(found.rounds) <= found.bound <= counting_bound(groups, size)


def test_what_a_coach_meets_is_reached():
    reached = {(g, p): len(unrepeated_rounds(g, p).rounds) for g, p in ((4, 3), (5, 3), (6, 3), (8, 3), (4, 4), (6, 4))}
    assert reached == {(4, 3): 4, (5, 3): 7, (6, 3): 7, (8, 3): 11, (4, 4): 5, (6, 4): 7}
    assert not unrepeated_rounds(6, 3).optimal  # eight are known, so seven may not be called the most


def test_two_groups_of_two_by_trying_everything():
    """Six players in threes: any second round repeats a pair, so one round is all; four in twos have three."""

    def rounds(groups, size):
        order = permutations(range(groups * size))
        return {frozenset(frozenset(p[i : i + size]) for i in range(0, groups * size, size)) for p in order}

    def most(days, met):
        fits = [day for day in days if not met & {pair for g in day for pair in combinations(sorted(g), 2)}]
        pairs = ({pair for g in day for pair in combinations(sorted(g), 2)} for day in fits)
        return max((1 + most(fits, met | each) for each in pairs), default=0)

    assert most(rounds(2, 3), set()) == rounds_bound(2, 3) == 1
    assert most(rounds(2, 2), set()) == rounds_bound(2, 2) == 3


@pytest.mark.parametrize(("groups", "size", "rounds"), [(3, 4, 5), (2, 4, 7), (3, 3, 6), (5, 3, 9), (4, 4, 3)])
def test_more_rounds_repeat_as_evenly_as_can_be_found(groups, size, rounds):
    mixed = mixed_rounds(groups, size, rounds)
    met = meetings(mixed.rounds)
    counts = [met[pair] for pair in combinations(range(groups * size), 2)]
    assert len(mixed.rounds) == rounds
    assert (max(counts), min(counts)) == (mixed.most, mixed.least)
    assert sum(count * count for count in counts) == mixed.bound + mixed.excess
    assert mixed.optimal == (mixed.most - mixed.least <= 1)
    assert mixed_rounds(groups, size, rounds) == mixed


def test_halves_of_eight_come_out_even_after_seven():
    assert mixed_rounds(2, 4, 7).optimal  # the worked halves of eight: every pair together three times


def test_a_gap_is_stated():
    uneven = mixed_rounds(3, 4, 5)
    assert isinstance(uneven, Mixed) and uneven.excess > 0 and not uneven.optimal


@pytest.mark.parametrize(("groups", "size"), [(1, 4), (4, 1), (0, 0)])
def test_one_group_has_nothing_to_mix(groups, size):
    with pytest.raises(ValueError, match="at least two groups of two"):
        unrepeated_rounds(groups, size)
