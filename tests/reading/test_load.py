"""YAML as nodes with lines and columns; scalars stay text; what is wrong is collected."""

import pytest

from turnout.problems import BadInput
from turnout.reading import Items, Pairs, Report, Text, load_text, nearest
from turnout.reading.nearest import distance


def pairs(text: str) -> Pairs:
    root = load_text(text, "toy").root
    assert isinstance(root, Pairs)
    return root


def test_every_scalar_stays_text_with_its_place() -> None:
    root = pairs("first aider: yes\nstart: 18:00\nsize: 010\n")
    assert [value.value for _, value in root.entries if isinstance(value, Text)] == ["yes", "18:00", "010"]
    assert root.entries[1][1] == Text("18:00", 2, 8, True)


@pytest.mark.parametrize("written", ['"2 touches"', "'2 touches'", ">\n    2\n    touches", "2\n    touches"])
def test_quoted_and_folded_text_has_no_sure_column(written: str) -> None:
    value = pairs(f"rule: {written}\n").get("rule")
    assert isinstance(value, Text) and value.value.split() == ["2", "touches"] and not value.plain
    report = Report("toy")
    report.add(value, "something else", offset=2)
    assert (report.problems[0].line, report.problems[0].column) == (1, None)


def test_block_and_flow_are_told_apart() -> None:
    root = pairs("block:\n  - one\nflow: [one, two]\n")
    block, flow = root.get("block"), root.get("flow")
    assert isinstance(block, Items) and isinstance(flow, Items) and (block.flow, flow.flow) == (False, True)


def test_duplicates_and_empty_values_are_all_told() -> None:
    document = load_text("a: 1\nb: {p: rectangle 1, 30 m2}\na: 2\nc:\n", "toy")
    assert [(problem.line, problem.read) for problem in document.problems] == [(2, "30 m2"), (3, "a"), (4, "c")]
    assert 'p: "rectangle 1, 30 m2"' in document.problems[0].expected


@pytest.mark.parametrize(
    ("text", "line", "cure"),
    [
        ("practice: one: two\n", 1, "quotes"),
        ("a:\n\tb: 1\n", 2, "use spaces"),
        ("a:\n  - b\n c: 1\n", 3, "line it up"),
        ("a: 'open\n", 2, "cannot be read as YAML"),
        ("a: 1\n---\nb: 2\n", 2, "one file holds one"),
    ],
)
def test_what_is_no_yaml(text: str, line: int, cure: str) -> None:
    with pytest.raises(BadInput) as caught:
        load_text(text, "toy")
    (problem,) = caught.value.problems
    assert problem.line == line and cure in problem.expected


@pytest.mark.parametrize(
    ("one", "other", "steps"), [("edge", "edge", 0), ("egde", "edge", 1), ("edg", "edge", 1), ("square", "sqare", 1),
                                ("touch", "torch", 1), ("", "abc", 3)]
)  # fmt: skip
def test_distance(one: str, other: str, steps: int) -> None:
    assert distance(one, other) == distance(other, one) == steps


def test_nearest_is_careful_with_short_words() -> None:
    assert nearest("toouch", ["touch", "torch"]) == "touch"
    assert nearest("in", ["at", "of"]) is None
    assert nearest("x" * 5000, ["x"]) is None
