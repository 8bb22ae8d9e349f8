"""The declared keys of every kind of file: readers, JSON Schema and page say the same."""

import re
from collections.abc import Iterator
from copy import deepcopy
from io import StringIO
from pathlib import Path

import pytest
from jsonschema import Draft202012Validator
from ruamel.yaml import YAML

from turnout.club.check import check_document, check_file
from turnout.club.file_page import page, schemas
from turnout.club.keys import FILES
from turnout.reading import load_text
from turnout.reading.declare import Answer, Either, Keys, Line, Named, Several, Value, Whole, Words, Written
from turnout.reading.schema import file_schema
from turnout.reading.spell import in_lines

ROOT = Path(__file__).parents[2]
SHIPPED = [path for folder in ("shelf", "season-example") for path in (ROOT / "src/turnout" / folder).rglob("*.yaml")]
GOOD = [path for path in SHIPPED if path.name != "expected.yaml"]  # a snapshot is written and read by programs only
BAD = sorted((ROOT / "tests/bad").glob("*.yaml"))
SEEN_BY_SCHEMA = {  # mistakes of keys, numbers and spelling; the others are in sentences, lines or between them
    "colon-in-rule", "comma-in-braces", "kit-in-a-step", "no-kind", "no-people", "squad-list-in-list",
    "squad-with-birth-dates", "step-without-change", "unknown-key",
}  # fmt: skip
NO_YAML = {"binary", "colon-in-text", "empty", "key-twice", "tab-indent"}
VALIDATORS = {kind: Draft202012Validator(file_schema(kind, declared)) for kind, declared in FILES.items()}
BASES: dict[str, dict] = {
    "practice": {
        "practice": "Toy", "about": "A toy.", "ages": "U10-U16", "develops": {"scanning": "2"},
        "ground": {"square": "rectangle 16 x 16 yd"}, "people": {"amber": "4 (2-5) in square", "blue": "2 in square"},
        "also called": {"square": ["box"]},
        "rules": ["A side scores 1 for completing 6 passes in a row.", "Everyone has 3 touches."],
        "steps": [{"harder": "Two", "change": ["Everyone has 2 touches."]}],
        "coach": {"scanning": {"ask": "What?", "look for": "heads"}}, "kit": {"balls": "6", "bibs": "per side"},
        "arrange": {"gap": "3 yd", "keep square": ["square"]},
    },
    "session": {
        "session": "Toy", "for": "U12", "minutes": "180", "expected": "11-15",
        "parts": [{"practice": "gull-square", "minutes": "12", "steps": ["One touch"], "success": "40-55 %"}],
    },
    "tonight": {"tonight": {"players": "14", "space": "third of 3G", "kit": {"bibs": {"blue": "8"}}, "adults": "2"}},
    "squad": {"squad": "Toy", "age": "U12", "level": "learning", "players": ["Ada", "Bram"]},
}  # fmt: skip
ODD = ["7", "yes", "u12-U14", "40-55 %", ["a", "b"], [], {"a": "b"}]


def loaded(text: str) -> object:
    """What a YAML 1.2 reader makes of a text."""
    return YAML(typ="safe", pure=True).load(StringIO(text))


def valid(kind: str, text: str) -> bool:
    return VALIDATORS[kind].is_valid(loaded(text))


def accepted(text: str) -> bool:
    try:
        problems = check_document(load_text(text, "toy.yaml"))
    except Exception as error:
        assert type(error).__name__ == "BadInput"
        return False
    return not [problem for problem in problems if problem.severity == "error"]


def leaves(declared: Value, way: tuple = ()) -> Iterator[tuple[tuple, Value]]:
    """Every declared value and a way to it."""
    yield way, declared
    if isinstance(declared, Keys):
        for key, one in declared.keys.items():
            yield from leaves(one, (*way, key))
    elif isinstance(declared, Several):
        yield from leaves(declared.each, (*way, 0))
    elif isinstance(declared, Named):
        yield from leaves(declared.each, (*way, "square"))


def with_value(base: dict, way: tuple, value: object) -> dict:
    """The file with a value put at a way; what is missing on it is made."""
    found = deepcopy(base)
    node: dict | list = found
    for step, after in zip(way, (*way[1:], None), strict=True):
        if after is None:
            fresh: object = value
        else:
            fresh = [] if isinstance(after, int) else {}
        if isinstance(node, list) and step == len(node):
            node.append(fresh)
        elif after is None or (isinstance(node, dict) and not isinstance(node.get(step), (dict, list))):
            node[step] = fresh  # type: ignore[index]
        node = node[step]  # type: ignore[index]
    return found


def candidates(declared: Value) -> list:
    """Values at and beyond what is declared."""
    if isinstance(declared, Whole):
        return [str(number) for number in (declared.low, declared.high, declared.low - 1, declared.high + 1)]
    if isinstance(declared, Written):
        return [declared.example, f" {declared.example} ", declared.example + "!"]
    if isinstance(declared, Words):
        return [*declared.words, *(word.upper() for word in declared.words), "other"]
    if isinstance(declared, Answer):
        return ["yes", "NO", "true", "perhaps"]
    return ["5", "some words"] if isinstance(declared, (Line, Either)) else []


def test_page_and_schemas_are_those_of_the_declarations() -> None:
    assert (ROOT / "docs/files.md").read_text("utf-8") == page()
    folder = ROOT / "docs/schema"
    assert {path.name: path.read_text("utf-8") for path in folder.iterdir()} == schemas()


@pytest.mark.parametrize("kind", FILES)
def test_each_schema_is_one(kind: str) -> None:
    Draft202012Validator.check_schema(file_schema(kind, FILES[kind]))


@pytest.mark.parametrize("path", GOOD, ids=lambda path: f"{path.parent.name}-{path.stem}")
def test_every_shipped_file_is_valid(path: Path) -> None:
    text = path.read_text("utf-8")
    (kind,) = [kind for kind in FILES if text.startswith(f"{kind}:")]
    errors = VALIDATORS[kind].iter_errors(loaded(text))
    assert not [f"{list(error.path)}: {error.message}" for error in errors]


@pytest.mark.parametrize("path", [path for path in BAD if path.stem not in NO_YAML], ids=lambda path: path.stem)
def test_a_schema_sees_mistakes_of_keys_and_spelling(path: Path) -> None:
    text = path.read_text("utf-8")
    kind = path.stem.split("-")[0] if path.stem.split("-")[0] in FILES else "practice"
    assert valid(kind, text) == (path.stem not in SEEN_BY_SCHEMA)
    assert check_file(path)


@pytest.mark.parametrize("kind", FILES)
def test_whatever_check_takes_is_valid(kind: str) -> None:
    assert accepted("\n".join(in_lines(BASES[kind])))
    both = {True: 0, False: 0}
    for way, declared in leaves(FILES[kind]):
        for value in [*candidates(declared), *ODD] if way else []:
            text = "\n".join(in_lines(with_value(BASES[kind], way, value)))
            good = accepted(text)
            assert valid(kind, text) or not good, text
            if valid(kind, text) == good:
                both[good] += 1
    assert min(both.values()) > 10


@pytest.mark.parametrize("kind", FILES)
def test_a_reader_takes_what_is_declared(kind: str) -> None:
    asked = 0
    for way, declared in leaves(FILES[kind]):
        if isinstance(declared, Whole) and "parts" not in way and "minutes" not in way:
            text = ["\n".join(in_lines(with_value(BASES[kind], way, value))) for value in candidates(declared)]
            assert [accepted(one) for one in text] == [True, True, False, False], (way, text)
            asked += 1
        elif isinstance(declared, (Words, Answer)):
            for value in candidates(declared)[:2] if isinstance(declared, Answer) else declared.words:
                assert accepted("\n".join(in_lines(with_value(BASES[kind], way, value)))), way
                asked += 1
    assert asked


def test_an_unknown_key_is_refused_by_reader_and_schema_alike() -> None:
    for kind, base in BASES.items():
        for way, declared in leaves(FILES[kind]):
            if isinstance(declared, Keys) and "coach" not in way and "steps" not in way:
                text = "\n".join(in_lines(with_value(base, (*way, "colour of it"), "red")))
                assert not accepted(text) and not valid(kind, text), text


def test_the_example_on_the_page_does_what_it_says(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (code,) = re.findall(r"```python\n(.*?)```", page(), re.DOTALL)
    text = (ROOT / "src/turnout/shelf/harbour-square/practice.yaml").read_text("utf-8")
    (tmp_path / "harbour.yaml").write_text(text, encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    exec(code, {})
    lines = (tmp_path / "harbour.yaml").read_text("utf-8").splitlines()
    changed = [(was, now) for was, now in zip(text.splitlines(), lines, strict=True) if was != now]
    assert changed == [("  - Edge players have 2 touches.", "  - Edge players have 3 touches.")]
