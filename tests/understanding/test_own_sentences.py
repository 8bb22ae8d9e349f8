"""Sentences of the tuner's own: read with the right meaning or not at all, and those that must not be read."""

from pathlib import Path

import pytest
from understanding.corpus import Sentence, names
from understanding.measure import understood

from turnout.practice.rules import RuleError, parse_rules

HERE = Path(__file__).parent


def rows(name: str) -> list[list[str]]:
    """The columns of each line that is no remark."""
    lines = (HERE / name).read_text(encoding="utf-8").splitlines()
    return [line.split(" | ") for line in lines if line and not line.startswith("#")]


OWN = [Sentence("", "own", "", context, said, told, "", "tune") for context, said, told in rows("own.txt")]
# what is not read yet: the number may fall, not grow
UNREAD_AT_MOST = 43


@pytest.mark.parametrize("said", OWN, ids=lambda said: said.sentence)
def test_an_own_sentence_is_not_read_wrong(said: Sentence) -> None:
    assert not understood(said).wrong


def test_most_own_sentences_are_read() -> None:
    unread = [said.sentence for said in OWN if said.sayable and not understood(said).right]
    assert len(unread) <= UNREAD_AT_MOST, unread


@pytest.mark.parametrize(("context", "sentence"), rows("traps.txt"), ids=lambda text: text)
def test_a_trap_is_not_read(context: str, sentence: str) -> None:
    with pytest.raises(RuleError):
        parse_rules(sentence, names(context))
