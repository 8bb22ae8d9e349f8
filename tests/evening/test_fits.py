"""A fit as JSON values: it says who, where and when, and an independent geometry library agrees."""

import pytest
from shapely import Polygon, box

from turnout.evening.fits import fit_evening, fit_plain, fits_for
from turnout.evening.load import load_evening, with_facts

TURNOUTS = (8, 11, 13, 14, 17, 20)


@pytest.fixture(scope="module")
def fits() -> dict[str, dict]:
    return fits_for(load_evening(None), TURNOUTS)


@pytest.mark.parametrize("turnout", TURNOUTS)
def test_everybody_is_placed_once_in_every_block(fits, turnout):
    for part in fits[str(turnout)]["parts"]:
        for block in part["blocks"]:
            placed = [label for labels in block["who"].values() for label in labels] + block["waiting"]
            assert len(placed) == len(set(placed)) == turnout
            apart = [label for copy in block["by_copy"] for labels in copy.values() for label in labels]
            assert sorted(apart + block["waiting"]) == sorted(placed)


@pytest.mark.parametrize("turnout", TURNOUTS)
def test_blocks_fill_the_roles_of_the_copies(fits, turnout):
    for part in fits[str(turnout)]["parts"]:
        for block in part["blocks"]:
            for copy, who in zip(part["copies"], block["by_copy"], strict=True):
                counted = {role: len(labels) for role, labels in who.items() if labels}
                assert counted == {role: count for role, count in copy["roles"].items() if count}


@pytest.mark.parametrize("turnout", TURNOUTS)
def test_the_hour_adds_up(fits, turnout):
    parts = fits[str(turnout)]["parts"]
    assert sum(part["minutes"] + part["changeover_min"] for part in parts) == pytest.approx(60.0)
    for part in parts:
        played = sum(block["minutes"] for block in part["blocks"])
        assert played + part["rest_min"] * (len(part["blocks"]) - 1) == pytest.approx(part["minutes"])


@pytest.mark.parametrize("turnout", TURNOUTS)
def test_copies_lie_inside_the_space_and_apart(fits, turnout):
    space = load_evening(None).tonight.space
    inside = box(0, 0, space.across_m, space.up_m).buffer(-space.run_off_m + 0.01)
    for part in fits[str(turnout)]["parts"]:
        fields = [Polygon(next(iter(copy["places"].values()))["polygon_m"]) for copy in part["copies"]]
        assert all(field.exterior.is_ccw and inside.contains(field) for field in fields)
        for number, field in enumerate(fields):
            assert all(field.distance(other) > 1.0 for other in fields[:number])


def test_what_does_not_fit_names_the_smallest_change():
    answer = fit_plain(fit_evening(with_facts(load_evening(None), space="15 x 15 m")))
    assert answer["fits"] is False and answer["why"] and answer["smallest_change"]
