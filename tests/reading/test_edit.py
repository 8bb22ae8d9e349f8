"""An edit changes one value; what a person wrote round it stays byte for byte, or the edit is refused."""

import re
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from written_files import WORDS, values, written

from turnout.problems import BadInput
from turnout.reading import load_text
from turnout.reading.edit import Draft, Way, draft_of
from turnout.reading.lines import line_end, line_start
from turnout.reading.spell import plain_of

PACKAGE = Path(__file__).parents[2] / "src" / "turnout"
SHIPPED = [*PACKAGE.glob("shelf/**/*.yaml"), *PACKAGE.glob("season-example/*.yaml")]
MANY = settings(max_examples=300, deadline=None, suppress_health_check=[HealthCheck.too_slow])
LINES = re.compile(r"[^\r\n]*(?:\r\n|\r|\n)|[^\r\n]+$")


def ways(value: object, way: Way = ()) -> list[Way]:
    """Every way through a plain tree."""
    inner = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    return [way, *(deeper for step, one in inner for deeper in ways(one, (*way, step)))]


def said(draft: Draft) -> object:
    return plain_of(load_text(draft.text, "toy").root)


def ways_to(draft: Draft, kind: type) -> list[Way]:
    tree = plain_of(draft.root)
    return [way for way in ways(tree) if isinstance(plain_of(draft.at(way)), kind)]


def in_order_within(few: list[str], many: list[str]) -> bool:
    rest = iter(many)
    return all(line in rest for line in few)


def bare(text: str) -> list[str]:
    """The lines of a text, whichever break ends the last."""
    return [line.rstrip("\r\n") for line in LINES.findall(text)]


@MANY
@given(written(), st.data())
def test_setting_a_value_touches_its_own_characters_only(file: tuple[str, dict], data: st.DataObject) -> None:
    text, tree = file
    draft = draft_of(text, "toy")
    assert plain_of(draft.root) == tree
    way = data.draw(st.sampled_from(ways_to(draft, str)))
    node = draft.at(way)
    new = draft.set(way, data.draw(values))
    tail = len(text) - node.end
    assert new.text[: node.start] == text[: node.start] and new.text[len(new.text) - tail :] == text[node.end :]
    assert all(plain_of(new.at(other)) == plain_of(draft.at(other)) for other in ways_to(draft, str) if other != way)
    if text[node.start] not in ">|":
        assert new.set(way, node.value).text == text or text[node.start] not in "'\""


@MANY
@given(written(), st.data())
def test_an_item_put_in_and_taken_out_leaves_no_trace(file: tuple[str, dict], data: st.DataObject) -> None:
    text, _ = file
    draft = draft_of(text, "toy")
    lists = ways_to(draft, list)
    if not lists:
        return
    way = data.draw(st.sampled_from(lists))
    at = data.draw(st.integers(0, len(draft.at(way).items)))  # type: ignore[union-attr]
    value = data.draw(st.one_of(values, st.just({"harder": "More", "add": ["Everyone has 1 touch.", "it's"]})))
    try:
        new = draft.insert(way, at, value)
    except BadInput as error:
        assert "stays as it was" in str(error)
        return
    assert plain_of(new.at((*way, at))) == value
    assert new.take_out((*way, at)).text == text
    if not draft.at(way).flow:  # type: ignore[union-attr]
        assert in_order_within(bare(text), bare(new.text))


@MANY
@given(written(), st.data())
def test_taking_out_removes_only_its_own_lines(file: tuple[str, dict], data: st.DataObject) -> None:
    text, _ = file
    draft = draft_of(text, "toy")
    way = data.draw(st.sampled_from([way for way in ways(plain_of(draft.root)) if way]))
    try:
        new = draft.take_out(way)
    except BadInput as error:
        assert "stays as it was" in str(error)
        return
    node = draft.at(way)
    key = node if isinstance(way[-1], int) else draft.key(way)
    own = line_start(text, key.start)
    dash_above = isinstance(way[-1], int) and not text[own : key.start].strip()
    if not dash_above:  # else the item begins on an earlier line than its text
        assert new.text.startswith(text[:own].rstrip("\r\n"))
    assert new.text.endswith(text[line_end(text, node.end) :].lstrip(" \r\n"))
    assert len(ways(said(new))) == len(ways(plain_of(draft.root))) - len(ways(plain_of(draft.at(way))))


@MANY
@given(written(), st.data())
def test_a_key_added_or_renamed_leaves_the_rest(file: tuple[str, dict], data: st.DataObject) -> None:
    text, _ = file
    draft = draft_of(text, "toy")
    way = data.draw(st.sampled_from(ways_to(draft, dict)))
    after = data.draw(st.sampled_from([key.value for key, _ in draft.at(way).entries]))  # type: ignore[union-attr]
    try:
        new = draft.add_key(way, "a new: one", {"add": ["x"]}, after=after)
        assert new.take_out((*way, "a new: one")).text == text
    except BadInput as error:
        assert "stays as it was" in str(error)
    other = draft.rename((*way, after), "an other")
    key = draft.key((*way, after))
    assert other.text[: key.start] == text[: key.start] and other.text.endswith(text[key.end :])


@pytest.mark.parametrize("path", SHIPPED, ids=lambda path: path.parent.name + "-" + path.stem)
def test_every_shipped_text_can_be_changed_and_changed_back(path: Path) -> None:
    text = path.read_text("utf-8")
    draft = draft_of(text, str(path))
    for way in ways_to(draft, str):
        new = draft.set(way, "Another text, it's said")
        assert new.set(way, str(plain_of(draft.at(way)))).text == text or draft.at(way).plain  # type: ignore[union-attr]
        assert len(bare(new.text)) == len(bare(text))
    for way in ways_to(draft, list):
        assert draft.insert(way, 1, "One more.").take_out((*way, 1)).text == text


@pytest.mark.parametrize("word", WORDS)
def test_any_text_can_stand_anywhere(word: str) -> None:
    draft = draft_of("a: one\nb: [one, 'two']\nc:\n  - one\n", "toy")
    for way in (("a",), ("b", 0), ("b", 1), ("c", 0)):
        assert plain_of(draft.set(way, word).at(way)) == word
    assert "'two'" in draft.set(("b", 0), word).text


@pytest.mark.parametrize(
    ("was", "way", "value", "now"),
    [
        ("a: 'one'   # why\r\nb: 2\r\n", ("a",), "it's", "a: 'it''s'   # why\r\nb: 2\r\n"),
        ("kit: {balls: 4,   bibs: x}", ("kit", "balls"), "6", "kit: {balls: 6,   bibs: x}"),
        ("about: > # two lines\n  one\n  two\n\nb: 1\n", ("about",), "one", "about: one # two lines\n\nb: 1\n"),
        ("about: one\n  two  # t\nb: 1\n", ("about",), "three", "about: three  # t\nb: 1\n"),
        ("rules:\n- A.\n-   B.  # b\n", ("rules", 1), "C: no", "rules:\n- A.\n-   'C: no'  # b\n"),
    ],
)
def test_layouts_that_a_library_would_change(was: str, way: Way, value: str, now: str) -> None:
    assert draft_of(was, "toy").set(way, value).text in (now, now.replace("'C: no'", '"C: no"'))


def test_comments_stay_with_the_item_they_stand_above() -> None:
    draft = draft_of("rules:  # all\n  # first\n  - A.\n  # second\n  - B. # b\n# end\n", "toy")
    assert (
        draft.insert(("rules",), 1, "N.").text
        == "rules:  # all\n  # first\n  - A.\n  - N.\n  # second\n  - B. # b\n# end\n"
    )
    assert draft.insert(("rules",), 0, "N.").text.startswith("rules:  # all\n  - N.\n  # first\n  - A.\n")
    assert draft.insert(("rules",), 2, "N.").text.endswith("  - B. # b\n  - N.\n# end\n")
    assert draft.take_out(("rules", 0)).text == "rules:  # all\n  # first\n  # second\n  - B. # b\n# end\n"


def test_a_new_step_takes_the_files_indent() -> None:
    draft = draft_of("steps:\n- harder: One\n  add:\n  - A.\n", "toy")
    new = draft.insert(("steps",), 1, {"easier": "Two", "remove": ["A.", "B."]})
    assert new.text == "steps:\n- harder: One\n  add:\n  - A.\n- easier: Two\n  remove:\n  - A.\n  - B.\n"


@pytest.mark.parametrize(
    ("text", "edit", "told"),
    [
        ("a: [one, # why\n  two]\n", lambda draft: draft.take_out(("a", 1)), "by hand"),
        ("a: [one]\n", lambda draft: draft.take_out(("a", 0)), "the only one"),
        ("a: 1\nb: 2\n", lambda draft: draft.rename(("a",), "b"), "stands there already"),
        ("a: 1\nb: 2\n", lambda draft: draft.add_key((), "b", "3"), "stands there already"),
        ("rules:\n  - A.\n", lambda draft: draft.set(("rules",), "B."), "only a single text"),
        ("rules:\n  - A.\n", lambda draft: draft.set(("rules", 3), "B."), "no item 4"),
        ("rules:\n  - A.\n", lambda draft: draft.set(("ruls",), "B."), "did you mean “rules”?"),
        ("- - A.\n", lambda draft: draft.insert((0,), 0, "B."), "by hand"),
    ],
)
def test_what_cannot_be_done_is_refused_with_what_would_do(text: str, edit: object, told: str) -> None:
    with pytest.raises(BadInput) as caught:
        edit(draft_of(text, "toy.yaml"))  # type: ignore[operator]
    (problem,) = caught.value.problems
    assert told in problem.expected and problem.file == "toy.yaml" and problem.line in (1, 2)


def test_a_file_with_a_key_twice_is_no_draft() -> None:
    with pytest.raises(BadInput):
        draft_of("a: 1\na: 2\n", "toy")


def test_empty_lists_and_keys_can_be_put_in() -> None:
    draft = draft_of("a:\n  - one\n", "toy")
    assert draft.add_key((), "b", []).text == "a:\n  - one\nb: []\n"
    assert draft.insert(("a",), 1, {}).text == "a:\n  - one\n  - {}\n"
    assert draft.add_key((), "b", []).insert(("b",), 0, "two").text == "a:\n  - one\nb: [two]\n"
