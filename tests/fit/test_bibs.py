"""Bibs: which pairs are refused, own shirts, short stock, and the fewest changes against trying everything."""

from itertools import product

import pytest
from toy_practices import THIRD, bibs, end_zones, keep_ball, overload

from turnout.club.tonight import Kit
from turnout.fit import prices
from turnout.fit.bibs import OWN, bib_changes, chain, dress_all
from turnout.fit.candidates import candidates
from turnout.fit.colours import verdict
from turnout.fit.dress import dressings


@pytest.mark.parametrize(
    ("one", "other"),
    [("red", "green"), ("green", "orange"), ("Lime", "scarlet"), ("amber", "dark green"), ("blue", "blue")],
)
def test_pairs_that_are_never_given(one, other):
    # Worked out in checks col-02: red/green and orange/green collapse for colour-blind eyes.
    assert verdict(one, other) == "never"
    assert verdict(other, one) == "never"


def test_own_shirts_count_as_their_colour():
    assert verdict("own", "green", own="red") == "never"
    assert verdict("own", "blue", own="navy") == "never"
    assert verdict("own", "blue", own=None) == "good"
    assert verdict("blue", "purple") == "hard"


SIDES = ((("amber", 5), ("blue", 5)), (("amber", 5), ("blue", 5)))


def test_copies_are_dressed_alike_when_the_bag_allows():
    found = dressings(SIDES, bibs(blue=10))
    assert {copies[0] == copies[1] for copies, _, _ in found} == {True}


def test_short_of_one_colour_the_copies_differ():
    (_, worn, price), *_ = sorted(dressings(SIDES, bibs(blue=5, yellow=5)), key=lambda found: found[2])
    assert dict(worn) == {OWN: 10, "blue": 5, "yellow": 5}
    assert price >= prices.BIBS_DIFFER


def test_too_few_bibs_is_no_dress_at_all():
    assert dressings(SIDES, bibs(blue=9)) == ()
    assert dressings(((("amber", 3), ("blue", 3), ("neutral", 1)),), bibs(blue=6)) == ()


def test_never_more_bibs_than_in_the_bag():
    kit = bibs(blue=7, yellow=6, purple=4)
    for players in (8, 12, 15, 18, 22):
        for practice in (keep_ball(), overload(), end_zones()):
            for dressed in dress_all(practice, candidates(practice, players, THIRD, None, kit, 15.0), kit):
                assert all(count <= dict(kit.bibs)[colour] for colour, count in dressed.worn if colour != OWN)


def test_a_side_called_after_a_colour_in_the_bag_wears_it():
    layer = dress_all(keep_ball(), candidates(keep_ball(), 12, THIRD, None, Kit(), 12.0), Kit())
    assert dict(layer[0].copies[0])["blue"] == "blue"


def test_changes_are_those_beyond_who_wore_the_colour():
    assert bib_changes(((OWN, 10),), (("blue", 4), (OWN, 6))) == 4
    assert bib_changes((("blue", 4), (OWN, 6)), (("blue", 3), ("yellow", 2), (OWN, 5))) == 2


def test_the_chain_is_the_cheapest_of_all():
    kit = bibs(blue=8, yellow=8, purple=8)
    layers = [
        dress_all(practice, candidates(practice, 13, THIRD, None, kit, 15.0), kit)
        for practice in (keep_ball(), overload(), end_zones())
    ]
    layers = [layer[:8] for layer in layers]
    best = chain(layers, 13)
    assert best is not None
    every = []
    for walk in product(*layers):
        worn, total = ((OWN, 13),), 0.0
        for dressed in walk:
            total += dressed.price + prices.BIB_CHANGE * bib_changes(worn, dressed.worn)
            worn = dressed.worn
        every.append(total)
    assert best.price == pytest.approx(min(every))
