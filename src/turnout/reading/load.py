"""One YAML file as nodes. YAML that cannot be read at all is reported alone; other faults are collected."""

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from turnout.problems import BadInput, Problem
from turnout.reading.nodes import Items, Node, Pairs, Text
from turnout.reading.report import cut

LARGEST_BYTES = 200_000  # a practice is 2 to 5 kB; own choice
DEEPEST = 12  # levels of nesting; a practice uses 5; own choice


@dataclass(frozen=True)
class Document:
    """One file as read: the name it is reported under, its top node, and faults found on the way."""

    file: str
    root: Node
    problems: tuple[Problem, ...] = ()


def load(path: str | Path) -> Document:
    """Read the file at `path`; raises BadInput when it cannot be read as YAML text at all."""
    file = str(path)
    try:
        with open(path, "rb") as stream:
            data = stream.read(LARGEST_BYTES + 1)
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or str(error)
        raise alone(file, None, Path(file).name, f"this file cannot be opened ({reason})") from None
    if len(data) > LARGEST_BYTES:
        raise alone(file, None, f"more than {LARGEST_BYTES // 1000} kB", "a file is at most 200 kB of text")
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = data[: error.start].count(b"\n") + 1
        raise alone(file, line, f"byte {error.start + 1}", "this is not text; save the file as UTF-8 text") from None
    return load_text(text, file)


def load_text(text: str, file: str) -> Document:
    """Read YAML from `text`, reported under the name `file`; raises BadInput when it is not YAML."""
    from ruamel.yaml import YAML
    from ruamel.yaml.error import YAMLError

    yaml = YAML(typ="rt")
    try:
        check_events(yaml.parse(text), file)
        node = YAML(typ="rt").compose(text)
    except YAMLError as error:
        raise not_yaml(error, text, file) from None
    except (ValueError, RecursionError, IndexError, TypeError, AttributeError) as error:  # faults inside the reader
        raise alone(file, None, cut(text[:60]), f"this cannot be read as YAML ({type(error).__name__})") from None
    if node is None:
        raise alone(file, 1, "nothing", "the file is empty; a practice begins “practice: its name”")
    problems: list[Problem] = []
    return Document(file, convert(node, file, problems), tuple(problems))


def alone(file: str, line: int | None, read: str, expected: str, column: int | None = None) -> BadInput:
    """The one problem of a file nothing more can be said about."""
    return BadInput([Problem(file, line, column, read, expected)])


def check_events(events: Iterator[Any], file: str) -> None:
    """Refuse nesting that is too deep, and anchors, aliases and tags, before any tree is built."""
    depth = 0
    for event in events:
        kind = type(event).__name__
        depth += kind.endswith("StartEvent") - kind.endswith("EndEvent")
        line = event.start_mark.line + 1
        if depth > DEEPEST + 2:  # the stream and the document are two of them
            raise alone(file, line, f"{DEEPEST + 1} levels", f"lists inside lists end at {DEEPEST} levels")
        if getattr(event, "anchor", None) is not None:
            raise alone(file, line, f"& or * {event.anchor}", "anchors are not used here; write it out again")


def not_yaml(error: Any, text: str, file: str) -> BadInput:
    """What YAML itself could not read, with the usual cure for the usual reason."""
    mark = getattr(error, "problem_mark", None) or getattr(error, "context_mark", None)
    problem = str(getattr(error, "problem", None) or error).splitlines()[0]
    if mark is None:
        return alone(file, None, cut(text[:60]), f"this cannot be read as YAML: {cut(problem)}")
    lines = text.splitlines()
    read = lines[mark.line] if mark.line < len(lines) else ""
    return alone(file, mark.line + 1, cut(read), cure(problem), mark.column + 1)


def cure(problem: str) -> str:
    """YAML's complaint, and what to do about the common ones."""
    if "mapping values are not allowed" in problem:
        return "a colon inside a text ends it; put the whole text in quotes, or check the indent of this line"
    if "found character '\\t'" in problem:
        return "a tab cannot indent; use spaces"
    if "expected <block end>" in problem:
        return "the indent of this line fits neither the line above nor its list; line it up"
    return f"this cannot be read as YAML: {problem}; check quotes, brackets and indent"


def convert(node: Any, file: str, problems: list[Problem]) -> Node:
    """ruamel's node as ours."""
    line, column = node.start_mark.line + 1, node.start_mark.column + 1
    kind = type(node).__name__
    if kind == "ScalarNode":
        plain = node.style is None and node.start_mark.line == node.end_mark.line
        value = str(node.value).replace("\a", "") if node.style == ">" else str(node.value)  # ruamel marks folds by \a
        return Text(value.strip() if node.style in (">", "|") else value, line, column, plain)
    if kind == "SequenceNode":
        items = tuple(convert(item, file, problems) for item in node.value)
        return Items(items, line, column, bool(node.flow_style))
    entries: dict[str, tuple[Text, Node]] = {}
    for key_node, value_node in node.value:
        before = list(entries.values())[-1] if node.flow_style and entries else None
        entry = convert_pair(key_node, value_node, before, file, problems)
        if entry and entry[0].value in entries:
            first = entries[entry[0].value][0].line
            wanted = f"this key stands already on line {first}; keep one of them"
            problems.append(Problem(file, entry[0].line, entry[0].column, cut(entry[0].value), wanted))
        elif entry:
            entries[entry[0].value] = entry
    return Pairs(tuple(entries.values()), line, column, bool(node.flow_style))


def convert_pair(
    key_node: Any, value_node: Any, before: tuple[Text, Node] | None, file: str, problems: list[Problem]
) -> tuple[Text, Node] | None:
    """One key with its value; a key that is not text and a key without a value are faults. `before` is the pair
    written before it inside { }."""
    key = convert(key_node, file, problems)
    value = convert(value_node, file, problems)
    if not isinstance(key, Text):
        problems.append(Problem(file, key.line, key.column, "a list as key", "a key is one word or a few words"))
        return None
    if isinstance(value, Text) and value.value == "" and value_node.style is None:
        problems.append(Problem(file, key.line, key.column, cut(key.value), empty_value(key.value, before)))
        return None
    return key, value


def empty_value(key: str, before: tuple[Text, Node] | None) -> str:
    """What to say about a key without a value: inside braces a comma has usually cut a text in two."""
    if before and isinstance(before[1], Text):
        whole = cut(f'{before[0].value}: "{before[1].value}, {key}"')
        return f"inside {{ }} a comma ends a value; if they belong together write {whole}, else give this key a value"
    return "this key has no value; write one after the colon or take the line out"
