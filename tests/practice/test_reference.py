"""The written reference is what the declarations say."""

from pathlib import Path

from turnout.practice.forms import ENTRIES
from turnout.practice.reference import reference

DOCUMENT = Path(__file__).parents[2] / "docs" / "practice-language.md"


def test_the_document_is_the_declarations() -> None:
    assert DOCUMENT.read_text(encoding="utf-8") == reference()


def test_every_form_and_phrase_says_what_it_means() -> None:
    assert all(entry.meaning for entry in ENTRIES)
