"""The sentences and their meanings: each meaning is in the language, and the measure tells right from wrong."""

from collections import Counter
from dataclasses import replace

import pytest
from understanding.corpus import context, expanded, right_forms, right_meanings, sentences
from understanding.measure import understood, wilson
from understanding.split import split_of

CORPUS = sentences()
BY_ID = {said.id: said for said in CORPUS}
SAID = [said for said in CORPUS if said.readings]


@pytest.mark.parametrize("name", sorted({said.context for said in CORPUS}))
def test_a_context_is_a_practice_with_rules(name: str) -> None:
    assert context(name).rules


@pytest.mark.parametrize("said", SAID, ids=lambda said: said.id)
def test_a_meaning_reads_to_rows(said) -> None:  # type: ignore[no-untyped-def]
    assert all(right_meanings(said))
    assert right_forms(said)


@pytest.mark.parametrize("said", [one for one in SAID if one.sayable], ids=lambda said: said.id)
def test_a_canonical_sentence_is_read_right(said) -> None:  # type: ignore[no-untyped-def]
    one = next((reading[0] for reading in said.readings if len(reading) == 1), None)
    found = understood(replace(said, sentence=one or said.readings[0][0]))
    assert found.right if one else found.wrong  # half of two rules is not the meaning


def test_each_sentence_stands_once() -> None:
    assert len(BY_ID) == len(CORPUS)
    assert len({said.sentence for said in CORPUS}) == len(CORPUS)


def test_what_cannot_be_said_has_a_word_why() -> None:
    assert [said.id for said in CORPUS if not said.sayable and not said.note] == []


def test_both_halves_hold_both_sources() -> None:
    counts = Counter((said.split, said.source) for said in CORPUS)
    assert len(counts) == 4
    assert min(counts.values()) > 50


def test_the_half_is_told_by_the_text_alone() -> None:
    assert split_of("  Six passes is\ta POINT. ") == split_of("six passes is a point.")
    assert {split_of(str(number)) for number in range(20)} == {"tune", "held"}


def test_a_turned_meaning_is_wrong() -> None:
    sheltered = replace(BY_ID["fresh-010"], sentence="Edge players have 2 touches.")
    assert understood(sheltered).wrong
    assert not understood(sheltered).offered()


def test_a_sentence_outside_the_language_that_is_read_is_wrong() -> None:
    talk = next(said for said in CORPUS if said.note == "coaching talk")
    assert understood(replace(talk, sentence="No heading.")).wrong
    assert not understood(talk).wrong


def test_a_suggested_form_is_found() -> None:
    told = replace(BY_ID["fresh-010"], sentence="Nobody tackels edge players.")
    assert understood(told).suggested[0] == "no tackle"
    assert understood(told).offered(1)


def test_the_same_meaning_told_of_each_side_is_one() -> None:
    starts = "A side scores 1 for stopping the ball in the"
    told = next(said for said in CORPUS if said.canonical.startswith(starts) and said.context == "end-zones")
    one = "Amber score 1 for stopping the ball in the north end."
    other = one.replace("Amber", "Blue").replace("north", "south")
    assert right_meanings(told) == right_meanings(replace(told, canonical=f"{one} {other}"))
    assert right_meanings(told) != right_meanings(replace(told, canonical=one))


def test_choices_in_choices() -> None:
    assert expanded("a {b|c {d|e}}.") == ["a b.", "a c d.", "a c e."]
    with pytest.raises(ValueError, match="not closed"):
        expanded("a {b|c")


def test_the_interval_of_a_share() -> None:
    low, high = wilson(10, 20)  # worked by hand: (0.5 + 0.0960) -+ 0.2389 over 1.1921
    assert (round(low, 3), round(high, 3)) == (0.299, 0.701)
    assert wilson(0, 50)[0] == 0.0
