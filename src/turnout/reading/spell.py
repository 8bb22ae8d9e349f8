"""How a value is written in YAML. Which quotes a text needs is not worked out by rules: the ways are tried, and the
first that reads back as the text is taken."""

import json
from collections.abc import Iterator
from typing import Any

from turnout.problems import BadInput, Problem
from turnout.reading.load import load_text
from turnout.reading.nodes import Items, Node, Text

Plain = Any  # a text, a list of such, or a dict of such by key: what a file says, without places and marks


def plain_of(node: Node) -> Plain:
    """A node as texts, lists and dicts."""
    if isinstance(node, Text):
        return node.value
    if isinstance(node, Items):
        return [plain_of(item) for item in node.items]
    return {key.value: plain_of(value) for key, value in node.entries}


def spellings(value: str, like: str = "") -> Iterator[str]:
    """The ways to write a text on one line; first the way of `like`, the text that stood there."""
    single, double = "'" + value.replace("'", "''") + "'", json.dumps(value, ensure_ascii=False)
    yield from {"'": (single, double), '"': (double, single)}.get(like[:1], (value, double, single))
    yield json.dumps(value)


def scalar(value: str, *, flow: bool = False, key: bool = False) -> str:
    """A text so written that it reads back as itself: `flow` inside brackets, `key` before a colon.

    Raises BadInput for a text that no way of writing brings back.
    """
    for way in spellings(value):
        said = f"{way}: x" if key else f"[{way}]" if flow else f"x: {way}"
        wanted = {value: "x"} if key else [value] if flow else {"x": value}
        if reads_as(said, wanted):
            return way
    raise BadInput([Problem("", None, None, value[:60], "this cannot be written on one line of a file")])


def reads_as(text: str, wanted: Plain) -> bool:
    """Whether a text reads without a fault and says exactly `wanted`, keys in the same order."""
    try:
        document = load_text(text, "")
    except BadInput:
        return False
    return not document.problems and json.dumps(plain_of(document.root)) == json.dumps(wanted)


def in_brackets(value: Plain) -> str:
    """A value as it stands inside [ ] or { }, on one line."""
    if isinstance(value, str):
        return scalar(value, flow=True)
    if isinstance(value, dict):
        return "{" + ", ".join(f"{scalar(key, key=True)}: {in_brackets(one)}" for key, one in value.items()) + "}"
    return "[" + ", ".join(map(in_brackets, value)) + "]"


def in_lines(value: Plain, *, list_indent: int = 2) -> list[str]:
    """A value as lines; a list under a key is indented by `list_indent` spaces, keys under a key by two."""
    if isinstance(value, str):
        return [scalar(value)]
    if not value:
        return [in_brackets(value)]
    if isinstance(value, dict):
        return [line for key, one in value.items() for line in under_key(key, one, list_indent=list_indent)]
    found: list[str] = []
    for item in value:
        first, *rest = in_lines(item, list_indent=list_indent)
        found += [f"- {first}", *(f"  {line}" for line in rest)]
    return found


def under_key(key: str, value: Plain, *, list_indent: int = 2) -> list[str]:
    """The lines of one key with its value."""
    head = f"{scalar(key, key=True)}:"
    if isinstance(value, str) or not value:
        return [f"{head} {scalar(value) if isinstance(value, str) else in_brackets(value)}"]
    inner = " " * (list_indent if isinstance(value, list) else 2)
    return [head, *(inner + line for line in in_lines(value, list_indent=list_indent))]
