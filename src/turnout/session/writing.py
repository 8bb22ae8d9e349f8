"""Edits of a session file in a coach's terms: its parts. Numbers count from 1."""

from turnout.reading import Items, Pairs
from turnout.reading.edit import Draft
from turnout.reading.spell import Plain


def change_part(draft: Draft, number: int, key: str, value: str) -> Draft:
    """The draft with `key` of part `number` (such as minutes) saying `value`; the key is added when it is not there."""
    part = draft.at(("parts", number - 1))
    if isinstance(part, Pairs) and part.get(key) is None:
        return draft.add_key(("parts", number - 1), key, value)
    return draft.set(("parts", number - 1, key), value)


def add_part(draft: Draft, practice: str, minutes: int, *, number: int | None = None, **more: Plain) -> Draft:
    """The draft with a part more, as part `number` or as the last. `more`: further keys, spaces written as _."""
    parts = draft.at(("parts",))
    last = len(parts.items) if isinstance(parts, Items) else 0
    part = {"practice": practice, "minutes": str(minutes), **{key.replace("_", " "): one for key, one in more.items()}}
    return draft.insert(("parts",), last if number is None else number - 1, part)


def take_part(draft: Draft, number: int) -> Draft:
    """The draft without part `number`."""
    return draft.take_out(("parts", number - 1))
