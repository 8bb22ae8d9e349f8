"""Everyday words: what is read, what is offered where it is not, and how it is written back."""

import pytest

from turnout.practice.forms import BY_ID, FORMS
from turnout.practice.model import Phrase
from turnout.practice.names import names_of
from turnout.practice.read import read_practice
from turnout.practice.rules import RuleError, parse_rule, parse_rules, print_rule
from turnout.practice.saying.building import JOINED, slot_names
from turnout.practice.saying.chart import phrasings
from turnout.practice.saying.cues import CUES
from turnout.practice.saying.examples import LOOSELY, NOT_READ
from turnout.practice.saying.patterns import Choice, Gap, Made, Node, Notation, compiled, meant
from turnout.practice.saying.reading import understood
from turnout.practice.saying.words import words_alike
from turnout.practice.tidy import tidied
from turnout.reading.whole import read_draft

SQUARE = """practice: Harbour square
about: Two sides keep the ball in a square, with helpers on its edge.
ground:
  square: rectangle 20 x 20 yd
people:
  amber inside: 4 (2-6) in square
  blue inside: 4 (2-6) in square
  amber edge: 3 (2-6) on the edge of square
  blue edge: 3 (2-6) on the edge of square
  neutral: 1 (0-2) in square
rules:
  - A side scores 1 for completing 8 passes in a row.
"""
FROM_PRACTICE = {"side_name", "role_name", "place_name", "list_name", "coach_who", "coach_role", "coach_place",
                 "coach_places", "coach_end", "in_middle", "server_who", "on_edge", "int"}  # fmt: skip


@pytest.fixture(scope="module")
def names(tmp_path_factory):  # type: ignore[no-untyped-def]
    return names_of(practice(tmp_path_factory.mktemp("square"), "Play starts with amber inside."))


def practice(folder, *rules):  # type: ignore[no-untyped-def]
    file = folder / "square.yaml"
    file.write_text(SQUARE + "".join(f"  - {rule}\n" for rule in rules), encoding="utf-8")
    return read_practice(file)


def said(text, names):  # type: ignore[no-untyped-def]
    return [print_rule(rule, names) for rule in parse_rules(text, names)]


def gaps(nodes: tuple[Node, ...]) -> list[Gap]:
    found = [node for node in nodes if isinstance(node, Gap)]
    return found + [
        gap for node in nodes if isinstance(node, Choice) for option in node.options for gap in gaps(option)
    ]


def parts(made: Made) -> list[Made]:
    inner = [value for _, value in made.slots] + ([made.missing] if made.missing else [])
    return [made, *(part for value in inner for part in parts(value))]


def test_every_slot_of_a_phrasing_has_a_type_and_every_value_a_slot() -> None:
    known = set(phrasings()) | FROM_PRACTICE
    for kind, rows in phrasings().items():
        for row in rows:
            assert {gap.type for gap in gaps(row.nodes)} <= known, (kind, row.written)
            used = {part.gap for made in row.meaning for part in parts(made) if part.gap}
            assert used <= {gap.name for gap in gaps(row.nodes)}, (kind, row.written)


def test_every_form_a_phrasing_means_is_declared_with_its_slots() -> None:
    for kind, rows in phrasings().items():
        for part in (part for row in rows for made in row.meaning for part in parts(made) if part.form in BY_ID):
            assert {name for name, _ in part.slots} <= set(slot_names(part.form)[0]), (kind, part)


def test_what_is_no_form_is_a_joiner_or_filled_from_the_practice() -> None:
    for rows in phrasings().values():
        for part in (part for row in rows for made in row.meaning for part in parts(made) if part.form):
            last = part.form.rpartition(".")[2]
            assert part.form in BY_ID or part.form in JOINED or last.isupper() or part.form == "free", part.form


def test_every_form_has_cues() -> None:
    assert set(CUES) == {form.id for form in FORMS}


@pytest.mark.parametrize("form", FORMS, ids=lambda form: form.id)
def test_a_canonical_sentence_is_read_by_the_language_alone(form, names) -> None:  # type: ignore[no-untyped-def]
    try:
        own = parse_rule(form.example, names)
    except RuleError:
        return  # it names what is not in this practice
    assert parse_rules(form.example, names) == (own,)


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("EDGE PLAYERS HAVE TWO TOUCHES", "Edge players have 2 touches."),
        ("Helpers on the outside are two-touch.", "Edge players have 2 touches."),
        ("Wingers are two-touch.", ""),
        ("The players on the outside are two-touch.", "Edge players have 2 touches."),
        ("Floaters are on two touches max.", "Neutrals have 2 touches."),
        ("Jokers can't score.", "Neutrals may not score."),
        ("Floaters aren't allowed to score.", "Neutrals may not score."),
        ("Floaters must not score.", "Neutrals may not score."),
        ("Edge players can't be tackled.", "Nobody tackles edge players."),
        ("Headers count double.", "A score with the head counts 2."),
        ("If you give it away the other team starts.", "When a side loses the ball, the other side starts."),
        ("The other team starts when you give it away.", "When a side loses the ball, the other side starts."),
        ("Six passes in a row is worth a point.", "A side scores 1 for completing 6 passes in a row."),
        ("Two points for eight passes in a row.", "A side scores 2 for completing 8 passes in a row."),
        ("Twenty-five passes in a row is a point.", "A side scores 1 for completing 25 passes in a row."),
        ("Half a minute a go.", "A turn lasts 30 seconds."),
    ],
)
def test_everyday_words(text, wanted, names) -> None:  # type: ignore[no-untyped-def]
    if wanted:
        assert said(text, names) == [wanted]
    else:
        with pytest.raises(RuleError):
            parse_rules(text, names)


@pytest.mark.parametrize(("text", "wanted"), LOOSELY, ids=lambda text: text)
def test_a_sentence_of_the_reference_is_read_so(text, wanted, names) -> None:  # type: ignore[no-untyped-def]
    assert " ".join(said(text, names)) == wanted


@pytest.mark.parametrize(("text", "why"), NOT_READ, ids=lambda text: text)
def test_a_sentence_the_reference_says_is_not_read_is_not(text, why, names) -> None:  # type: ignore[no-untyped-def]
    with pytest.raises(RuleError):
        parse_rules(text, names)
    assert why


def test_two_rules_in_one_sentence(names) -> None:  # type: ignore[no-untyped-def]
    assert said("Edge players have two touches and can't come into the square.", names) == [
        "Edge players have 2 touches.", "Edge players stay out of the square."
    ]  # fmt: skip


def test_two_rules_are_written_back_as_two(tmp_path) -> None:  # type: ignore[no-untyped-def]
    practice(
        tmp_path, "Inside players have two touches and edge players one.", "Play starts with amber inside players."
    )
    after, changes = tidied(read_draft(tmp_path / "square.yaml")[0])
    assert [change.now for change in changes] == ["Inside players have 2 touches. Edge players have 1 touch."]
    assert after.text.splitlines()[-3:] == [
        "  - Inside players have 2 touches.",
        "  - Edge players have 1 touch.",
        "  - Play starts with amber inside players.",
    ]


def test_a_name_of_the_practice_goes_before_a_coachs_word(tmp_path) -> None:  # type: ignore[no-untyped-def]
    file = tmp_path / "two.yaml"
    file.write_text(SQUARE.replace("neutral:", "floater:") + "  - Floaters have two touches.\n", encoding="utf-8")
    assert read_practice(file).rules[-1].text == "Floaters have 2 touches."


def test_a_word_that_fits_two_roles_is_not_read(tmp_path) -> None:  # type: ignore[no-untyped-def]
    file = tmp_path / "two.yaml"
    more = "  white wall: 2 (0-4) on the edge of square\n"
    file.write_text(SQUARE.replace("rules:\n", f"{more}rules:\n"), encoding="utf-8")
    with pytest.raises(RuleError):
        parse_rules("The outside players have two touches.", names_of(read_practice(file)))


def test_what_is_not_read_is_offered_with_its_slots_filled(names) -> None:  # type: ignore[no-untyped-def]
    found, offers = understood("Two touches is all the helpers there ever get off me.", names)
    assert found == ()
    assert offers[0].form == "touches"
    assert len(offers) <= 3


def test_an_offer_drops_no_word_that_turns_the_meaning(names) -> None:  # type: ignore[no-untyped-def]
    for text in ("Edge players don't have two touches.", "Six passes is a point unless a neutral was used."):
        _, offers = understood(text, names)
        for offer in offers:
            said = set(words_alike(offer.text))
            assert "…" in offer.text or said & {"not", "nobody", "no", "until", "only", "out"}, (text, offer)


def test_a_meaning_that_is_not_certain_is_offered_both_ways(names) -> None:  # type: ignore[no-untyped-def]
    text = "When you win the ball your nearest edge player comes in and their farthest inside player goes out."
    found, offers = understood(text, names)
    assert found == ()
    assert offers


def test_the_error_names_the_nearest_forms(names) -> None:  # type: ignore[no-untyped-def]
    with pytest.raises(RuleError) as caught:
        parse_rules("Two touches is all the helpers there ever get off me.", names)
    assert "did you mean “" in caught.value.expected
    assert caught.value.offers[0].form == "touches"


def test_a_pattern_with_a_bracket_too_few_is_refused() -> None:
    with pytest.raises(Notation):
        compiled("(one|two", {})
    with pytest.raises(Notation):
        compiled("one)", {})
    with pytest.raises(Notation):
        meant("touches(who={w}) and more")


def test_words_made_alike() -> None:
    assert words_alike("They can't, he's got two touches") == ["they", "may", "not", "he", "have", "2", "touch"]
    assert words_alike("Passing and passes") == ["pass", "and", "pass"]


def test_a_very_long_sentence_is_refused_and_not_searched_for_ever(names) -> None:  # type: ignore[no-untyped-def]
    with pytest.raises(RuleError):
        parse_rules("when a side wins the ball " * 60, names)


def test_a_phrase_of_the_language_is_what_is_returned(names) -> None:  # type: ignore[no-untyped-def]
    assert all(isinstance(rule, Phrase) and rule.form in BY_ID for rule in parse_rules("Two-touch.", names))
