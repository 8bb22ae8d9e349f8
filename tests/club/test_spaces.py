"""Shares of a pitch, and what an area per player is called."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from turnout.club.spaces import SHARES, area_word, space_named, usable_share
from turnout.problems import BadInput


def test_a_third_is_what_is_left_between_the_neighbours() -> None:
    third = space_named("third of 3G")
    assert (third.across_m, third.up_m) == pytest.approx((64, 31.83), abs=0.01)
    assert space_named("middle third of 3g").up_m == pytest.approx(30.33, abs=0.01)


def test_whole_pitch_and_hall() -> None:
    assert (space_named("3G").across_m, space_named("3G").up_m) == (64, 100)
    assert (space_named("Hall").across_m, space_named("Hall").up_m) == (18, 33)


@pytest.mark.parametrize("name", ["fifth of 3G", "third", "", "third of a car park"])
def test_an_unknown_share_is_answered_with_the_known(name: str) -> None:
    with pytest.raises(BadInput, match="quarter of 3G"):
        space_named(name)


@given(st.sampled_from(sorted(SHARES)), st.floats(40, 120), st.floats(30, 90), st.floats(0, 3))
def test_shares_with_their_edges_never_add_up_to_more_than_the_pitch(
    share: str, length: float, width: float, edge: float
) -> None:
    along, across, *_ = SHARES[share]
    used_m, used_across_m = usable_share(share, length_m=length, width_m=width, edge_m=edge)
    assert used_m * along <= length + 1e-9
    assert used_across_m * across <= width + 1e-9


def test_area_words_change_at_their_bounds() -> None:
    assert [area_word(m2) for m2 in (64.9, 65, 109.9, 110, 199.9, 200, 900)] == [
        "tight", "tactical", "tactical", "running", "running", "match-like", "match-like",
    ]  # fmt: skip
