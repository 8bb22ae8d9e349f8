"""Collecting everything that is wrong with one file, each at its place."""

from collections.abc import Iterable
from typing import Literal

from turnout.problems import BadInput, Problem
from turnout.reading.nearest import nearest
from turnout.reading.nodes import Items, Node, Pairs, Text, shown

SHOWN_CHARACTERS = 120  # a longer piece of a file is cut when it is quoted back


def cut(text: str) -> str:
    """Text short enough to quote in a message."""
    flat = " ".join(text.split())
    return flat if len(flat) <= SHOWN_CHARACTERS else flat[: SHOWN_CHARACTERS - 1] + "…"


class Report:
    """The problems of one file. Reading goes on after a fault, so that all of them are told at once."""

    def __init__(self, file: str, problems: Iterable[Problem] = ()):
        self.file = file
        self.problems: list[Problem] = list(problems)

    def add(
        self,
        node: Node,
        expected: str,
        *,
        read: str | None = None,
        near: str | None = None,
        offset: int | None = None,
        severity: Literal["error", "warning"] = "error",
    ) -> None:
        """Note a fault at `node`; `offset` is the character of its text where the fault begins."""
        exact = not isinstance(node, Text) or node.plain
        column = node.column + (offset or 0) if exact else None
        said = cut(shown(node) if read is None else read)
        self.problems.append(Problem(self.file, node.line, column, said, expected, near, severity))

    @property
    def errors(self) -> list[Problem]:
        return [problem for problem in self.problems if problem.severity == "error"]

    def close(self) -> None:
        """Raise BadInput with every problem, in file order, if one of them is an error."""
        if self.errors:
            raise BadInput(in_order(self.problems))

    def pairs(self, node: Node | None, what: str) -> Pairs | None:
        """`node` if it is keys and values, else a fault saying that `what` needs them."""
        if node is None or isinstance(node, Pairs):
            return node
        self.add(node, f"{what} needs lines of the form “key: value” under it")
        return None

    def text(self, node: Node | None, what: str) -> Text | None:
        """`node` if it is plain text, else a fault."""
        if node is None or (isinstance(node, Text) and node.value.strip()):
            return node
        if isinstance(node, Text):
            self.add(node, f"{what} is empty; write something or take the line out", read="nothing")
            return None
        self.add(node, f"{what} is one line of text; if it holds a colon or a comma, put it in quotes")
        return None

    def texts(self, node: Node | None, what: str) -> list[Text]:
        """The texts of a list; one text alone counts as a list of one."""
        if node is None:
            return []
        found = [node] if isinstance(node, Text) else list(node.items) if isinstance(node, Items) else None
        if found is None:
            self.add(node, f"{what} is a list of names, for example [one, two]")
        return [text for item in found or [] if (text := self.text(item, f"each item of {what}"))]

    def keys(self, pairs: Pairs | None, allowed: Iterable[str], what: str) -> None:
        """Fault every key of `pairs` that is not one of `allowed`."""
        known = tuple(allowed)
        for key, _ in pairs.entries if pairs else ():
            if key.value not in known:
                wanted = f"{what} knows the keys {', '.join(known)}"
                self.add(key, wanted, near=nearest(key.value, known))

    def needed(self, pairs: Pairs, wanted: Iterable[str], what: str) -> None:
        """Fault every key of `wanted` that `pairs` lacks or that holds an empty list."""
        for key in wanted:
            if (value := pairs.get(key)) is not None and empty(value):
                self.add(pairs.key(key), f"{what} needs something under {key}", read=f"nothing under {key}")
            elif value is None:
                first = pairs.entries[0][0] if pairs.entries else pairs
                self.add(first, f"{what} needs a line “{key}: …”", read=f"no {key}")


def empty(node: Node) -> bool:
    """Whether a node is a list or a set of keys without anything in it."""
    return (isinstance(node, Items) and not node.items) or (isinstance(node, Pairs) and not node.entries)


def in_order(problems: Iterable[Problem]) -> list[Problem]:
    """Problems by line and column, each said once."""
    return sorted(dict.fromkeys(problems), key=lambda problem: (problem.line or 0, problem.column or 0))
