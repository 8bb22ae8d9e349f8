"""Games of two against two in which everybody is with everybody once."""

from collections import Counter
from itertools import combinations

import pytest

from turnout.rota.whist import whist_rounds


@pytest.mark.parametrize("players", [4, 5, 8, 12, 13, 16])
def test_together_once_and_against_twice(players):
    rounds = whist_rounds(players)
    mates = Counter(tuple(sorted(side)) for games in rounds for game in games for side in game)
    rivals = Counter(tuple(sorted((x, y))) for games in rounds for one, other in games for x in one for y in other)
    everybody = list(combinations(range(players), 2))
    assert {mates[pair] for pair in everybody} == {1} and {rivals[pair] for pair in everybody} == {2}
    for games in rounds:
        on = [player for game in games for side in game for player in side]
        assert len(set(on)) == len(on) == players - players % 2


def test_nine_has_no_round_that_only_moves_on():
    assert whist_rounds(9) is None  # it exists, but not by moving everybody on by one


@pytest.mark.parametrize("players", [0, 3, 6, 7, 10])
def test_other_numbers_do_not_come_out_even(players):
    with pytest.raises(ValueError, match=f"not {players}"):
        whist_rounds(players)
