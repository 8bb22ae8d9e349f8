"""From YAML's events to nodes in one pass. Depth is counted here, so nothing can nest without end."""

from collections.abc import Iterator
from typing import Any

from turnout.problems import BadInput, Problem
from turnout.reading.nodes import Items, Node, Pairs, Text
from turnout.reading.report import cut

DEEPEST = 12  # levels of nesting; a practice uses 5; own choice
Pair = tuple[Text, Node]


def alone(file: str, line: int | None, read: str, expected: str, column: int | None = None) -> BadInput:
    """The one problem of a file nothing more can be said about."""
    return BadInput([Problem(file, line, column, read, expected)])


class Builder:
    """Reads one document's events; `problems` collects what is wrong but readable."""

    def __init__(self, events: Iterator[Any], file: str, text: str = ""):
        self.events = events
        self.file = file
        self.text = text
        self.reached = 0  # the character after the last node read
        self.problems: list[Problem] = []

    def document(self) -> Node | None:
        """The top node, or None for an empty file; raises BadInput for a second document."""
        root: Node | None = None
        for event in self.events:
            kind = type(event).__name__
            if kind == "DocumentStartEvent" and root is not None:
                line = event.start_mark.line + 1
                raise alone(self.file, line, "---", "one file holds one practice, session, squad or evening")
            if kind not in ("StreamStartEvent", "StreamEndEvent", "DocumentStartEvent", "DocumentEndEvent"):
                root = self.node(event, 1)
        return root

    def node(self, event: Any, depth: int) -> Node:
        """The node that begins with `event`."""
        line, column = event.start_mark.line + 1, event.start_mark.column + 1
        if depth > DEEPEST:
            raise alone(self.file, line, f"{depth} levels", f"lists inside lists end at {DEEPEST} levels")
        if event.anchor is not None:
            raise alone(self.file, line, f"& or * {event.anchor}", "anchors are not used here; write it out again")
        kind, flow, start = type(event).__name__, bool(getattr(event, "flow_style", False)), event.start_mark.index
        if kind == "ScalarEvent":
            return self.scalar(event, line, column)
        if kind == "SequenceStartEvent":
            return Items(tuple(self.items(depth)), line, column, flow, start, self.reached)
        return Pairs(tuple(self.pairs(depth, flow).values()), line, column, flow, start, self.reached)

    def scalar(self, event: Any, line: int, column: int) -> Text:
        """A value or key; folded and quoted text is joined, and no column inside it is sure."""
        plain = event.style is None and event.start_mark.line == event.end_mark.line
        folded = event.style in (">", "|")
        start, end = event.start_mark.index, event.end_mark.index
        # a folded text is read past its line breaks, up to the next key
        self.reached = start + len(self.text[start:end].rstrip()) if folded else end
        value = str(event.value)
        return Text(value.strip() if folded else value, line, column, plain, start, self.reached)

    def items(self, depth: int) -> Iterator[Node]:
        """The items of a list until it ends."""
        while type(event := next(self.events)).__name__ != "SequenceEndEvent":
            yield self.node(event, depth + 1)
        self.ended(event)

    def ended(self, event: Any) -> None:
        """Note where a bracket closed; a list without brackets ends with its last item."""
        if event.end_mark.index > event.start_mark.index:
            self.reached = event.end_mark.index

    def pairs(self, depth: int, flow: bool) -> dict[str, Pair]:
        """Keys and values until they end; a key written twice keeps its first value."""
        found: dict[str, Pair] = {}
        while type(event := next(self.events)).__name__ != "MappingEndEvent":
            key, value = self.node(event, depth + 1), self.node(next(self.events), depth + 1)
            before = list(found.values())[-1] if flow and found else None
            if not isinstance(key, Text):
                self.fault(key, "a list as key", "a key is one word or a few words")
            elif isinstance(value, Text) and value.plain and value.value == "":
                self.fault(key, key.value, empty_value(key.value, before))
            elif key.value in found:
                wanted = f"this key stands already on line {found[key.value][0].line}; keep one of them"
                self.fault(key, key.value, wanted)
            else:
                found[key.value] = key, value
        self.ended(event)
        return found

    def fault(self, node: Node, read: str, expected: str) -> None:
        """Note a fault at a node."""
        self.problems.append(Problem(self.file, node.line, node.column, cut(read), expected))


def empty_value(key: str, before: Pair | None) -> str:
    """What to say about a key without a value: inside braces a comma has usually cut a text in two."""
    if before and isinstance(before[1], Text):
        whole = cut(f'{before[0].value}: "{before[1].value}, {key}"')
        return f"inside {{ }} a comma ends a value; if they belong together write {whole}, else give this key a value"
    return "this key has no value; write one after the colon or take the line out"
