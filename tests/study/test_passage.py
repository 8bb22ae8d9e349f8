"""The passage to show: it happens in the play it was found in, and something happens in it."""

import pytest
from shipped_practices import KEYS, shipped

from turnout.play.simulate import record
from turnout.study.passage import AFTER_S, BEFORE_S, find


@pytest.mark.parametrize("key", KEYS)
def test_a_passage_has_passes_and_a_turn(key: str) -> None:
    start, end = find(shipped(key), age=12, level="settled", seed=7)
    assert 5 < end - start <= BEFORE_S + AFTER_S + 1.01
    film = record(shipped(key), age=12, level="settled", seed=7, window=(start, end))
    kinds = [event.kind for event in film.events]
    assert kinds.count("pass") >= 3
    assert {"score", "owner", "tackle", "cut out"} & set(kinds)


def test_the_same_seed_finds_the_same_passage() -> None:
    setup = shipped("breakwater")
    assert find(setup, age=12, level="settled", seed=2) == find(setup, age=12, level="settled", seed=2)
