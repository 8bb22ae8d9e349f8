"""Where a text is cut and what is put in: each function gives the texts to try, best first. None of them is trusted:
the caller reads the result again."""

import re
from collections.abc import Iterator

from turnout.reading.lines import after_line, break_near, line_end, line_start
from turnout.reading.nodes import Items, Node, Pairs, Text
from turnout.reading.spell import Plain, in_brackets, in_lines, spellings, under_key

HEADER_COMMENT = re.compile(r"[>|][^\s#]*([ \t]+#[^\r\n]*)")


def size(node: Node) -> int:
    """How many items or keys a node has."""
    return len(node.items) if isinstance(node, Items) else len(node.entries) if isinstance(node, Pairs) else 0


def replaced(text: str, node: Text, value: str) -> Iterator[str]:
    """The text with another value; folded text becomes one line and keeps the comment of its first."""
    written = text[node.start : node.end]
    comment = HEADER_COMMENT.match(written)
    for way in spellings(value, written):
        yield text[: node.start] + way + (comment[1] if comment else "") + text[node.end :]


def inserted(text: str, node: Items, at: int, value: Plain, key: Text | None) -> Iterator[str]:
    """The text with a new item: behind the one before it, so that comments above the next one stay with that."""
    if node.flow:
        yield from in_flow(text, node, [(item.start, item.end) for item in node.items], at, in_brackets(value))
    elif (at or key) and (dash := dash_of(text, node, min(at, len(node.items) - 1))) is not None:
        lead = text[line_start(text, dash) : dash]
        gap = gap_after(text, dash)
        first, *rest = in_lines(value, list_indent=list_indent(node, key))
        lines = [f"{lead}-{gap}{first}", *(f"{lead} {' ' * len(gap)}{line}" for line in rest)]
        yield behind(text, node.items[at - 1].end if at or key is None else key.end, lines)


def key_added(text: str, node: Pairs, at: int, key: str, value: Plain) -> Iterator[str]:
    """The text with a new key behind the one before it (`at` is 1 or more)."""
    if node.flow:
        spans = [(name.start, one.end) for name, one in node.entries]
        yield from in_flow(text, node, spans, at, in_brackets({key: value})[1:-1])
        return
    first = node.entries[0][0]
    lists = [(name, one) for name, one in node.entries if isinstance(one, Items) and not one.flow]
    lines = under_key(key, value, list_indent=list_indent(lists[0][1], lists[0][0]) if lists else 2)
    lead = " " * (first.start - line_start(text, first.start))
    yield behind(text, node.entries[at - 1][1].end, [lead + line for line in lines])


def taken_out(text: str, parent: Node, at: int) -> Iterator[str]:
    """The text without one item or key of a node that has several."""
    if isinstance(parent, Items):
        spans = [(item.start, item.end) for item in parent.items]
        start = None if parent.flow else dash_of(text, parent, at)
    elif isinstance(parent, Pairs):
        spans = [(name.start, value.end) for name, value in parent.entries]
        start = spans[at][0]
    else:
        return
    if parent.flow:
        yield from out_of_flow(text, spans, at)
    elif start is not None:
        yield from without_lines(text, start, spans[at][1])
        if isinstance(parent, Pairs) and at == 0 and not text[spans[0][1] : spans[1][0]].strip():
            yield text[:start] + text[spans[1][0] :]  # the first key of an item stands behind its dash


def without_lines(text: str, start: int, end: int) -> Iterator[str]:
    """The text without the lines from `start` to `end`, if nothing stands before `start` on its line."""
    first, last = line_start(text, start), after_line(text, end)
    if text[first:start].strip():
        return
    if last == len(text) and line_end(text, end) == last and first:
        first = len(text[:first].removesuffix("\n").removesuffix("\r"))  # the file ends without a line break, as before
    yield text[:first] + text[last:]


def in_flow(text: str, node: Node, spans: list[tuple[int, int]], at: int, new: str) -> Iterator[str]:
    """The text with something new inside brackets."""
    if not spans:
        yield text[: node.start + 1] + new + text[node.end - 1 :]
    elif at:
        yield text[: spans[at - 1][1]] + ", " + new + text[spans[at - 1][1] :]
    else:
        yield text[: spans[0][0]] + new + ", " + text[spans[0][0] :]


def out_of_flow(text: str, spans: list[tuple[int, int]], at: int) -> Iterator[str]:
    """The text without one thing inside brackets; not if a comment would go with its comma."""
    cut = (spans[at - 1][1], spans[at][1]) if at else (spans[0][0], spans[1][0])
    between = text[cut[0] : spans[at][0]] if at else text[spans[0][1] : cut[1]]
    if "#" not in between:
        yield text[: cut[0]] + text[cut[1] :]


def behind(text: str, at: int, lines: list[str]) -> str:
    """The text with new lines behind the one on which `at` stands."""
    end, stop = line_end(text, at), break_near(text, at)
    return text[:end] + "".join(stop + line for line in lines) + text[end:]


def dash_of(text: str, node: Items, at: int) -> int | None:
    """Where the dash of an item stands; None when something else stands before it on its line."""
    column = node.start - line_start(text, node.start)
    line = line_start(text, node.start) if at == 0 else after_line(text, node.items[at - 1].end)
    while line <= node.items[at].start:
        if re.match(rf" {{{column}}}-(?=\s)", text[line : line + column + 2]):
            return line + column
        line = after_line(text, line)
    return None


def gap_after(text: str, dash: int) -> str:
    """The spaces between a dash and what follows it on its line; one where nothing does."""
    found = re.compile(r" +(?=[^\s#])").match(text, dash + 1)
    return found[0] if found else " "


def list_indent(node: Items, key: Text | None) -> int:
    """By how many spaces a list of this file is indented under its key."""
    return max(0, node.column - key.column) if key else 2
