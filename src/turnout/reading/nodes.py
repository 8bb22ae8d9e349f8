"""A file as three kinds of node, each with the line (and column) it stands at. Every scalar stays text.

`start` and `end` are the characters of the file a node reaches from and to (quotes and brackets included, line breaks
after it not): an edit needs them. Two nodes that say the same at the same place are equal whatever their span.
"""

from dataclasses import dataclass, field
from typing import Union


@dataclass(frozen=True)
class Text:
    """One value or key as written. `plain` means unquoted and on one line: only then is a word's column exact."""

    value: str
    line: int
    column: int
    plain: bool = True
    start: int = field(default=0, compare=False, repr=False)
    end: int = field(default=0, compare=False, repr=False)


@dataclass(frozen=True)
class Pairs:
    """Keys and values in order. `flow` means written inside { }."""

    entries: tuple[tuple[Text, "Node"], ...]
    line: int
    column: int
    flow: bool = False
    start: int = field(default=0, compare=False, repr=False)
    end: int = field(default=0, compare=False, repr=False)

    def get(self, key: str) -> "Node | None":
        """The value under `key`, or None."""
        return next((value for name, value in self.entries if name.value == key), None)

    def key(self, key: str) -> Text:
        """The key itself as written, for its line; raises StopIteration when it is not there."""
        return next(name for name, _ in self.entries if name.value == key)


@dataclass(frozen=True)
class Items:
    """A list. `flow` means written inside [ ]."""

    items: tuple["Node", ...]
    line: int
    column: int
    flow: bool = False
    start: int = field(default=0, compare=False, repr=False)
    end: int = field(default=0, compare=False, repr=False)


Node = Union[Text, Pairs, Items]  # noqa: UP007  (a string forward reference needs Union at run time)


def shown(node: Node) -> str:
    """A node as a short piece of what was read."""
    if isinstance(node, Text):
        return node.value
    if isinstance(node, Pairs):
        return ", ".join(f"{key.value}: {shown(value)}" for key, value in node.entries[:3])
    return ", ".join(shown(item) for item in node.items[:3])
