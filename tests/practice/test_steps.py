"""Steps: what they change, how they combine, and how contradicting ones are answered."""

import pytest
from shipped_practices import KEYS

from turnout.practice.ground import setup_of
from turnout.practice.read import read_practice
from turnout.practice.shelf import SHELF
from turnout.practice.steps import with_steps
from turnout.problems import BadInput


def practice(key: str):  # type: ignore[no-untyped-def]
    return read_practice(SHELF / key / "practice.yaml")


@pytest.mark.parametrize("key", KEYS)
def test_every_shipped_step_can_be_taken_alone(key: str) -> None:
    read = practice(key)
    for step in read.steps:
        changed = with_steps(read, [step.name])
        assert changed.taken == (step.name,)
        assert (changed.rules, changed.ground, changed.groups) != (read.rules, read.ground, read.groups)
        assert step.tags


def test_a_change_replaces_its_sentence_in_place() -> None:
    read = practice("harbour-square")
    changed = with_steps(read, ["One touch on the edge"])
    assert [rule.text for rule in changed.rules][2] == "Edge players have 1 touch."
    assert len(changed.rules) == len(read.rules)


def test_steps_combine() -> None:
    changed = with_steps(practice("harbour-square"), ["Edge players may move", "More room"])
    assert changed.taken == ("Edge players may move", "More room") and len(changed.rules) == 7


def test_a_strip_can_deepen_and_its_list_follows() -> None:
    changed = with_steps(practice("breakwater"), ["Deeper zones"])
    depths = {place.name: place.depth_m for place in changed.ground if place.kind == "strip"}
    assert depths == {"north end": pytest.approx(8 * 0.9144), "south end": pytest.approx(8 * 0.9144)}
    assert [place.name for place in changed.ground] == [place.name for place in practice("breakwater").ground]


def test_a_new_place_stands_before_the_list_it_joins() -> None:
    read = practice("long-waves")
    changed = with_steps(read, ["One goal more to guard"])
    names = [place.name for place in changed.ground]
    assert "south middle goal" not in [place.name for place in read.ground]
    assert names.index("south middle goal") < names.index("south goals") and names[0] == read.ground[0].name
    assert len(setup_of(changed).place("south goals").members) == 3


@pytest.mark.parametrize(
    ("key", "names", "expected", "near"),
    [
        ("harbour-square", ["Earn it insid"], "has the steps", "Earn it inside"),
        ("harbour-square", ["More room", "More room"], "taken already", None),
        ("breakwater", ["By pass only", "By pass only"], "taken already", None),
    ],
)
def test_steps_that_cannot_be_taken(key: str, names: list[str], expected: str, near: str | None) -> None:
    with pytest.raises(BadInput) as caught:
        with_steps(practice(key), names)
    assert expected in caught.value.problems[0].expected and caught.value.problems[0].nearest == near
