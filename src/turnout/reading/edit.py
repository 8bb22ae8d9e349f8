"""Editing a file that a person wrote: one value changes, every other character stays.

A YAML library's own round trip was measured first. It brought back 13 of our 13 files, which are written its way, but
only 4 of 20 other layouts a coach may write: it sets its own indent, line endings and spaces inside brackets, joins
lines, drops a comment inside brackets and a last line without its break. So an edit is a splice at the places the
reader knows. The spliced text is read again, and unless exactly the meant value has changed the edit is refused.
"""

import json
from collections.abc import Iterable
from copy import deepcopy
from dataclasses import dataclass

from turnout.problems import BadInput, Problem
from turnout.reading import splice
from turnout.reading.load import load_text
from turnout.reading.nearest import nearest
from turnout.reading.nodes import Items, Node, Pairs, Text, shown
from turnout.reading.report import cut
from turnout.reading.spell import Plain, plain_of, reads_as

Way = tuple[str | int, ...]  # what leads to a value: ("steps", 1, "add", 0); positions count from 0


@dataclass(frozen=True)
class Draft:
    """The text of a file and what it says. Every edit answers with a new draft or raises BadInput."""

    text: str
    file: str
    root: Node

    def at(self, way: Way) -> Node:
        """The node that `way` leads to; raises BadInput."""
        node = self.root
        for step in way:
            node = self._inside(node, step)
        return node

    def key(self, way: Way) -> Text:
        """The key that `way` ends with, as written; raises BadInput."""
        self.at(way)
        node = self.at(way[:-1])
        if not isinstance(node, Pairs):
            raise self.refused(node, "this is no key")
        return node.key(str(way[-1]))

    def set(self, way: Way, value: str) -> "Draft":
        """The draft with the text at `way` replaced, in the quotes that stood there when they will do."""
        node = self.at(way)
        if not isinstance(node, Text):
            raise self.refused(node, "only a single text can be replaced; this is a list")
        if node.value == value:
            return self
        wanted = deepcopy(plain_of(self.root))
        place(wanted, way, value)
        return self._one_of(splice.replaced(self.text, node, value), wanted, node, value)

    def insert(self, way: Way, at: int, value: Plain) -> "Draft":
        """The draft with `value` put into the list at `way`, before what stood at position `at`."""
        node = self.at(way)
        if not isinstance(node, Items) or not 0 <= at <= len(node.items):
            raise self.refused(node, "there is no such position in a list here")
        wanted = deepcopy(plain_of(self.root))
        inside(wanted, way).insert(at, value)
        key = self.key(way) if way and isinstance(way[-1], str) else None
        return self._one_of(splice.inserted(self.text, node, at, value, key), wanted, node, shown_plain(value))

    def add_key(self, way: Way, key: str, value: Plain, *, after: str | None = None) -> "Draft":
        """The draft with a key added under `way` (the top: ()), after the key `after` or as the last."""
        node = self.at(way)
        if not isinstance(node, Pairs) or not node.entries:
            raise self.refused(node, "a key can stand only beside other keys")
        names = [name.value for name, _ in node.entries]
        if key in names:
            raise self.refused(node.key(key), "this key stands there already; change what it says")
        at = names.index(after) + 1 if after in names else len(names)
        wanted = deepcopy(plain_of(self.root))
        put(wanted, way, [*names[:at], key, *names[at:]], {key: value})
        return self._one_of(splice.key_added(self.text, node, at, key, value), wanted, node, key)

    def take_out(self, way: Way) -> "Draft":
        """The draft without the item or key at `way`, with what stands behind it on its last line. A comment on a
        line above it stays."""
        node, parent = self.at(way), self.at(way[:-1])
        if splice.size(parent) == 1:
            raise self.refused(node, "this is the only one there; take out the whole list or replace it")
        wanted = deepcopy(plain_of(self.root))
        del inside(wanted, way[:-1])[way[-1]]
        at = int(way[-1]) if isinstance(parent, Items) else [name.value for name, _ in parent.entries].index(way[-1])  # type: ignore[union-attr]
        return self._one_of(splice.taken_out(self.text, parent, at), wanted, node, shown(node))

    def rename(self, way: Way, name: str) -> "Draft":
        """The draft with the key that `way` ends with called `name`; its value stays."""
        key, parent = self.key(way), self.at(way[:-1])
        names = [one.value for one, _ in parent.entries]  # type: ignore[union-attr]
        if name in names and name != key.value:
            raise self.refused(key, f"“{name}” stands there already; choose another name")
        wanted = deepcopy(plain_of(self.root))
        put(wanted, way[:-1], [name if one == key.value else one for one in names], {name: plain_of(self.at(way))})
        return self._one_of(splice.replaced(self.text, key, name), wanted, key, name)

    def refused(self, node: Node, expected: str, read: str | None = None) -> BadInput:
        """Why an edit at `node` cannot be made."""
        said = cut(shown(node) if read is None else read)
        return BadInput([Problem(self.file, node.line, node.column, said, f"{expected}. The file stays as it was")])

    def _inside(self, node: Node, step: str | int) -> Node:
        """The value under a key or at a position of a node; raises BadInput."""
        if isinstance(step, int):
            if isinstance(node, Items) and 0 <= step < len(node.items):
                return node.items[step]
            raise self.refused(node, f"there is no item {step + 1} here")
        found = node.get(step) if isinstance(node, Pairs) else None
        if found is None:
            names = [key.value for key, _ in node.entries] if isinstance(node, Pairs) else []
            near = nearest(step, names)
            told = f"there is no “{step}” here" + (f"; did you mean “{near}”?" if near else "")
            raise self.refused(node, told, ", ".join(names) or None)
        return found

    def _one_of(self, texts: Iterable[str], wanted: Plain, node: Node, read: str) -> "Draft":
        """The first of `texts` that says exactly `wanted`; raises BadInput when none does."""
        for text in texts:
            if reads_as(text, wanted):
                return Draft(text, self.file, load_text(text, self.file).root)
        raise self.refused(
            node,
            "with this the file would not read, or something else in it would change; edit this line by hand",
            read,
        )


def draft_of(text: str, file: str) -> Draft:
    """A text as a draft to edit; raises BadInput when it does not read as YAML or holds a key twice or empty."""
    document = load_text(text, file)
    if document.problems:
        raise BadInput(list(document.problems))
    return Draft(text, file, document.root)


def inside(value: Plain, way: Way) -> Plain:
    """What `way` leads to in a plain value."""
    for step in way:
        value = value[step]
    return value


def place(value: Plain, way: Way, new: Plain) -> None:
    """Put `new` where `way` leads."""
    inside(value, way[:-1])[way[-1]] = new


def put(value: Plain, way: Way, names: list[str], new: dict[str, Plain]) -> None:
    """Give the keys at `way` the order `names`, with `new` values among them."""
    keys = inside(value, way)
    ordered = {name: new[name] if name in new else keys[name] for name in names}
    keys.clear()
    keys.update(ordered)


def shown_plain(value: Plain) -> str:
    """A plain value as a short piece for a message."""
    return value if isinstance(value, str) else json.dumps(value, ensure_ascii=False)
