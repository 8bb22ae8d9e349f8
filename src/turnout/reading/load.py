"""One YAML file as nodes. YAML that cannot be read at all is reported alone; other faults are collected."""

from dataclasses import dataclass
from pathlib import Path
from typing import Any

from turnout.problems import BadInput, Problem
from turnout.reading.build import Builder, alone
from turnout.reading.nodes import Node
from turnout.reading.report import cut

LARGEST_BYTES = 200_000  # a practice is 2 to 5 kB; own choice


@dataclass(frozen=True)
class Document:
    """One file as read: the name it is reported under, its top node, and faults found on the way."""

    file: str
    root: Node
    problems: tuple[Problem, ...] = ()


def load(path: str | Path) -> Document:
    """Read the file at `path`; raises BadInput when it cannot be read as YAML text at all."""
    file = str(path)
    return load_text(text_of(read_bytes(path), file), file)


def read_bytes(path: str | Path) -> bytes:
    """The content of a file that is not too large; raises BadInput."""
    file = str(path)
    try:
        with open(path, "rb") as stream:
            data = stream.read(LARGEST_BYTES + 1)
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or str(error)
        raise alone(file, None, Path(file).name, f"this file cannot be opened ({reason})") from None
    if len(data) > LARGEST_BYTES:
        raise alone(file, None, f"more than {LARGEST_BYTES // 1000} kB", "a file is at most 200 kB of text")
    return data


def text_of(data: bytes, file: str) -> str:
    """The text of a file's bytes, without a byte order mark, line endings as they are; raises BadInput."""
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = data[: error.start].count(b"\n") + 1
        raise alone(file, line, f"byte {error.start + 1}", "this is not text; save the file as UTF-8 text") from None


def load_text(text: str, file: str) -> Document:
    """Read YAML from `text`, reported under the name `file`; raises BadInput when it is not YAML."""
    from ruamel.yaml import YAML
    from ruamel.yaml.error import YAMLError

    try:
        builder = Builder(YAML(typ="safe", pure=True).parse(text), file, text)
        root = builder.document()
    except YAMLError as error:
        raise not_yaml(error, text, file) from None
    except (ValueError, IndexError, TypeError, AttributeError) as error:  # faults inside the YAML reader itself
        raise alone(file, None, cut(text[:60]), f"this cannot be read as YAML ({type(error).__name__})") from None
    if root is None:
        raise alone(file, 1, "nothing", "the file is empty; a practice begins “practice: its name”")
    return Document(file, root, tuple(builder.problems))


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
