"""Twenty layouts a coach may write that a YAML library's own round trip was measured on: an edit keeps them all."""

from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from written_files import COMMENTS

from turnout.practice.shelf import practice_files
from turnout.reading.edit import draft_of
from turnout.reading.whole import read_draft, write_draft

LAYOUTS = {
    "line endings": "practice: x\r\nrules:\r\n  - a\r\n",
    "indent of four": "ground:\n    square: x\nrules:\n- a\n- b\n",
    "two indents": "ground:\n    square: x\npeople:\n  a: 1\nrules:\n    - a\n",
    "spaces in brackets": "kit: {bibs: x,   balls: 4}\nsteps: [ a,b ]\n",
    "brackets over lines": "kit: {\n  balls: x,  # four\n  bibs: per side\n}\n",
    "spaces after a colon": "practice:   x   # note\nages:  U10\n",
    "a space at the end": "practice: x  \nages: U10\n",
    "no last line break": "practice: x",
    "folded": "about: x\nmore: >\n  one\n  two\n\nages: U10\n",
    "several lines": "about: one\n  two\n  three\nages: x\n",
    "comments and blank lines": "# c\n\npractice: x # y\n\n\n# z\nrules:\n  # in\n  - a # b\n\n  - b\n# end\n",
    "a comment far in": "rules:\n  - a\n      # deep\n  - x\n",
    "a byte order mark": "\ufeffpractice: x\n",
    "an escape": 'about: "\\u00e9 y"\nages: x\n',
    "numbers and yes": "a: 010\nb: 1_000\nc: 1e3\nd: 2001-01-01\ne: x\nf: ~\ng: 12.50\nh: yes\n",
    "marks of a document": "---\npractice: x\n...\n",
    "a space before a colon": "practice : x\n",
    "a key in quotes": '"practice": x\n',
    "a long line": "about: " + "word " * 300 + "\nages: x\n",
    "old line endings": "practice: x\rrules:\r  - a\r",
}


def test_there_are_twenty() -> None:
    assert len(LAYOUTS) == 20


@pytest.mark.parametrize("name", LAYOUTS)
def test_only_the_changed_value_changes(tmp_path: Path, name: str) -> None:
    path = tmp_path / "mine.yaml"
    path.write_bytes(LAYOUTS[name].encode("utf-8"))
    draft, stamp = read_draft(path)
    at = draft.text.index("x")
    way = next(way for way in ways(draft.root) if getattr(draft.at(way), "start", None) == at and way)
    write_draft(path, draft.set(way, "another"), stamp)
    assert path.read_bytes().decode("utf-8") == LAYOUTS[name].replace("x", "another", 1)


def ways(node: object, way: tuple = ()) -> list[tuple]:
    """Every way through a node, innermost last."""
    inner = [(key.value, value) for key, value in getattr(node, "entries", ())]
    inner += list(enumerate(getattr(node, "items", ())))
    return [deeper for step, one in inner for deeper in ways(one, (*way, step))] + ([] if inner else [way])


@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(st.data())
def test_a_shelf_file_with_anybodys_comments_and_blank_lines_keeps_them(data: st.DataObject) -> None:
    path = data.draw(st.sampled_from(sorted(practice_files().values())))
    lines = path.read_text("utf-8").splitlines()
    for _ in range(data.draw(st.integers(1, 8))):
        at = data.draw(st.integers(0, len(lines)))
        lines.insert(
            at, data.draw(st.sampled_from(("", *(f"{' ' * data.draw(st.integers(0, 8))}{c}" for c in COMMENTS))))
        )
    stop = data.draw(st.sampled_from(("\n", "\r\n")))
    draft = draft_of(stop.join(lines) + stop, path.name)
    way = data.draw(st.sampled_from(ways(draft.root)))
    node = draft.at(way)
    new = draft.set(way, "It's new: here")
    assert new.text[: node.start] == draft.text[: node.start]
    assert new.text[len(new.text) - (len(draft.text) - node.end) :] == draft.text[node.end :]
    position = data.draw(st.integers(0, len(draft.at(("rules",)).items)))  # type: ignore[union-attr]
    more = draft.insert(("rules",), position, "Play with both feet.")
    assert [line for line in more.text.splitlines() if line.strip() != "- Play with both feet."] == lines
    assert more.take_out(("rules", position)).text == draft.text
