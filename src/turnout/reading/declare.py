"""What may stand under the keys of a file, declared once: readers take their keys and bounds from it, and the JSON
Schema and the page on files are written from it."""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Union


@dataclass(frozen=True)
class Line:
    """Text in free words. `words` means that a bare number will not do: a sentence, a place, a group."""

    said: str
    words: bool = False


@dataclass(frozen=True)
class Whole:
    """A whole number from `low` to `high`."""

    said: str
    low: int
    high: int


@dataclass(frozen=True)
class Written:
    """Text that is written one way, such as `example`."""

    said: str
    pattern: re.Pattern[str]
    example: str


@dataclass(frozen=True)
class Words:
    """One of a few words; in any letter case if `any_case`."""

    said: str
    words: tuple[str, ...]
    any_case: bool = False


@dataclass(frozen=True)
class Answer:
    """Yes or no."""

    said: str


@dataclass(frozen=True)
class Several:
    """A list. `alone` means that one text alone counts as a list of one."""

    said: str
    each: "Value"
    alone: bool = False


@dataclass(frozen=True)
class Named:
    """Keys of the writer's own choice, each with a value of one kind."""

    said: str
    each: "Value"


@dataclass(frozen=True)
class Either:
    """One of several kinds of value."""

    said: str
    ways: tuple["Value", ...]


@dataclass(frozen=True)
class Keys:
    """Keys with a value each. `needed` must stand there with something in them; of `one_of` exactly one stands there,
    of `some_of` at least one."""

    said: str
    keys: Mapping[str, "Value"]
    needed: tuple[str, ...] = ()
    one_of: tuple[str, ...] = ()
    some_of: tuple[str, ...] = ()

    def whole(self, key: str) -> tuple[int, int]:
        """The bounds of a whole number under a key."""
        found = self.keys[key]
        assert isinstance(found, Whole), key
        return found.low, found.high

    def words(self, key: str) -> tuple[str, ...]:
        """The words that may stand under a key."""
        found = self.keys[key]
        assert isinstance(found, Words), key
        return found.words


Value = Union[Line, Whole, Written, Words, Answer, Several, Named, Either, Keys]  # noqa: UP007  (strings above need it)
