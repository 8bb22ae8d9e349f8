"""The grammar is unambiguous and reads every declared example back as it stands."""

import pytest

from turnout.practice.forms import ENTRIES, FORMS
from turnout.practice.grammar import build, productions, read
from turnout.practice.meaning import CHANGE_MEANINGS, MEANINGS
from turnout.practice.names import Names
from turnout.practice.printing import print_rule

NAMES = Names(
    ("amber", "blue", "neutral"), ("inside", "edge"), ("square", "north end", "south end", "west half", "gates"),
    (("helper", "edge"), ("outside player", "edge")),
)  # fmt: skip


def test_grammar_is_strict_lalr() -> None:
    """lark's strict mode refuses every shift/reduce and reduce/reduce conflict: no sentence reads two ways."""
    assert build(strict=True) is not None


def test_ids_and_symbol_sequences_are_unique() -> None:
    assert len({entry.id for entry in ENTRIES}) == len(ENTRIES)
    made = [(production.left, production.right) for production in productions()]
    assert len(set(made)) == len(made)


@pytest.mark.parametrize("form", FORMS, ids=lambda form: form.id)
def test_every_example_is_canonical(form) -> None:  # type: ignore[no-untyped-def]
    tree = read(form.example, NAMES)
    assert tree.form == form.id
    assert print_rule(tree) == form.example


def test_every_form_and_change_has_a_meaning() -> None:
    assert set(MEANINGS) == {form.id for form in FORMS}
    assert set(CHANGE_MEANINGS) == {entry.id for entry in ENTRIES if entry.type == "change"}


def test_number_does_not_matter_to_reading_and_agrees_in_print() -> None:
    for text in ("Everyone has 1 touch.", "everyone have 1 touches"):
        assert print_rule(read(text, NAMES)) == "Everyone has 1 touch."


def test_other_words_and_articles_lead_to_the_same_tree() -> None:
    same = {read(text, NAMES) for text in ("Edge players have 2 touches.", "Helpers have 2 touches",
                                           "The outside players have 2 touches.", "Edges have 2 touches.")}  # fmt: skip
    assert len(same) == 1


def test_a_name_that_is_a_keyword_is_read_as_either() -> None:
    """`edge` is a role and a word of “the edge of”; `inside` is a role here."""
    tree = read("Edge players move only along the edge of the square.", NAMES)
    assert print_rule(tree) == "Edge players move only along the edge of the square."


def test_tonights_colour_replaces_stand_in_sides_only() -> None:
    tree = read("When amber edge players pass to neutrals, the passer changes places with the receiver.", NAMES)
    printed = print_rule(tree, NAMES, {"amber": "blue", "neutral": "red"})
    assert printed == "When blue edge players pass to neutrals, the passer changes places with the receiver."
    own = print_rule(read("Amber score 1 for winning the ball.", NAMES), NAMES, {"amber": "own"})
    assert own == "Own shirts score 1 for winning the ball."
