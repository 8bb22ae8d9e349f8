"""A sentence that cannot be read is answered at its word, with what could stand there."""

import pytest

from turnout.practice.names import Names
from turnout.practice.rules import RuleError, parse_rule

NAMES = Names(("amber", "blue", "neutral"), ("inside", "edge"), ("square", "north end"), (("helper", "edge"),))


@pytest.mark.parametrize(
    ("text", "offset", "read", "near"),
    [
        ("Edge playrs have 2 touches.", 5, "playrs", "players"),
        ("Amber attack the nroth end.", 17, "nroth", "north"),
        ("Helprs have 2 touches.", 0, "Helprs", "Helpers"),
        ("Edge players have two touches.", 18, "two", "2"),
        ("Edge players have", 17, "the end of the sentence", None),
        ("Edge players have 2 touches. Everyone has 1 touch.", 29, "Everyone", None),
        ("The passer has 2 touches.", 0, "the passer", None),
        ("Neutrals play for everyone.", 18, "everyone", None),
        ("Blue stay out of it.", 17, "it", None),
        ("No talking.", 3, "talking", None),
        ("", 0, "", None),
        ("Edge players have 0 touches.", 18, "0", None),
        ("😀", 0, "😀", None),
    ],
)
def test_where_and_what(text: str, offset: int, read: str, near: str | None) -> None:
    with pytest.raises(RuleError) as caught:
        parse_rule(text, NAMES)
    assert (caught.value.offset, caught.value.read, caught.value.nearest) == (offset, read, near)


@pytest.mark.parametrize(
    ("text", "example"),
    [
        ("A side gets 1 point for 6 passes in a row.", "A side scores 1 for completing 6 passes in a row."),
        ("When a side scores the other side starts.", "When a side scores, its inside players"),
        ("Helpers can only use 1 touch.", "Edge players have 2 touches."),
    ],
)
def test_a_sentence_like_it(text: str, example: str) -> None:
    with pytest.raises(RuleError) as caught:
        parse_rule(text, NAMES)
    assert example in caught.value.expected


def test_names_that_could_stand_there_are_listed() -> None:
    with pytest.raises(RuleError) as caught:
        parse_rule("Amber attack the goal.", NAMES)
    assert "square" in caught.value.expected or "edge" in caught.value.expected


def test_a_very_long_text_is_refused_at_once() -> None:
    with pytest.raises(RuleError, match="at most"):
        parse_rule("Edge players have 2 touches " * 400, NAMES)


def test_two_readings_are_told_and_not_guessed() -> None:
    """A place and a role that share a plural spelling read two ways only where both could stand."""
    names = Names(("amber", "ambers team"), ("inside", "insides"), ("square",))
    with pytest.raises(RuleError, match="two ways"):
        parse_rule("Insides have 2 touches.", names)
