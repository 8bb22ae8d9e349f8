"""Play that football people would not believe is caught by these figures."""

import pytest
from shipped_practices import KEYS, shipped

from turnout.study.looks import looks


@pytest.mark.parametrize("key", KEYS)
def test_nobody_freezes_bunches_zigzags_or_bursts(key: str) -> None:
    seen = looks(shipped(key), age=12, level="settled", seed=5)
    assert 0.05 < seen.still_share < 0.55
    assert seen.close_pairs < 0.8
    assert seen.reversals_per_player_min < 4.0
    assert seen.hard_share < 0.01  # tracking: 99 % of accelerations lie within about 4.5 m/s2
    assert abs(seen.first_pass_lost - seen.one_minus_success) < 0.12
    assert seen.free_first_pass_lost < 0.09
