"""docs/files.md and docs/schema, written from the declared keys of every kind of file. `tools/file-kinds` runs it."""

import json
from collections.abc import Iterator

from turnout.club.keys import FILES
from turnout.reading.declare import Answer, Either, Keys, Several, Value, Whole, Words, Written
from turnout.reading.schema import file_schema

INTRO = """\
# The files

*Written by `tools/file-kinds` from the declarations the readers use (`keys.py` in the rooms `practice`, `session` and
`club`); a test keeps it equal to them.*

There are four kinds of file, all YAML text of at most 200 kB in UTF-8: a **practice**, a **session** (practices in the
order of an hour), **tonight** (who came and what there is) and a **squad** (labels or first names, nothing else about
anybody). A file begins with the key that says its kind. `turnout check FILES` reads any of them and says at line and
column what cannot be understood and what would do; nothing in a file is ever guessed.

Write one thing a line. Inside `{ }` and `[ ]` a comma ends a value, and a colon followed by a space ends a key: put a
text that holds one in quotes. Everything after ` #` is your own comment.
"""
PROMISE = """\
## What an edit leaves alone

When a program changes such a file for you (`turnout check --tidy`, and whatever edits it in place), then

- **only the characters of the changed value change.** Comments, blank lines, indents, quotes, brackets, the order of
  keys, line endings, a byte order mark and a missing last line break stay, byte for byte. A value keeps the quotes it
  stood in where they will do; a folded text becomes one line.
- **something new stands behind what comes before it**, so that a comment above the next line stays with that line. It
  takes the indent of the list it joins.
- **taking something out takes its own lines**, with a comment at their end or between them. A comment on a line above
  it stays.
- **what cannot be done exactly is refused.** After each change the text is read again; unless it says just what it said
  with the one value changed, nothing is written, and the message names the line to edit by hand (so it is where a
  comment stands between two items inside brackets). A change that brings a fault the file had not is refused too; one
  fault can be mended while another still stands.
- **the file is written whole or not at all**: beside its place first, then renamed. If somebody else has written it
  since it was read, that is said, and nothing is written over.

`turnout check --tidy FILES` writes sentences back as they are printed: one that is read but worded otherwise is
replaced, the rest stays. A file in which anything is wrong is left as it is. It never applies a suggestion.

From Python:

```python
from turnout.club.writing import edit_file
from turnout.practice.writing import replace_sentence

edit_file("harbour.yaml", lambda file: replace_sentence(file, 3, "Edge players have 3 touches."))
```

`turnout.practice.writing` adds, replaces and takes out sentences, ground and people lines and steps, and changes
numbers; `turnout.practice.renaming` renames a place, side or role wherever it is named; `turnout.session.writing` edits
parts;
`Draft` in `turnout.reading.edit` sets, inserts, adds, takes out and renames anything else.
"""
SCHEMAS = """\
## JSON Schema

`docs/schema/` holds a schema (draft 2020-12) of each kind, for editors that complete and check while you type, and for
other programs. A file that `check` takes is valid under its schema. A schema knows keys, numbers and how things are
spelt; what sentences and lines mean, and whether they contradict each other, only `check` can say.
"""


def page() -> str:
    """The whole page as Markdown."""
    kinds = [section(kind, declared) for kind, declared in FILES.items()]
    return "\n".join([INTRO, *kinds, PROMISE, SCHEMAS])


def section(kind: str, declared: Keys) -> str:
    """The keys of one kind of file as a table."""
    rows = [f"| {' '.join(cell)} |" for cell in rows_of(declared)]
    return "\n".join([f"## {kind.capitalize()}\n", "| key | | what stands there |\n|---|---|---|", *rows, ""])


def rows_of(declared: Keys, above: str = "") -> Iterator[tuple[str, ...]]:
    """One row a key, the keys under it behind it."""
    for key, one in declared.keys.items():
        needed = "needed" if key in declared.needed else "one of them" if key in declared.one_of else ""
        yield f"`{above}{key}`", "|", needed, "|", cell_of(one)
        inner = one.each if isinstance(one, Several) else one
        if isinstance(inner, Keys) and not alike(inner):
            yield from rows_of(inner, f"{above}{key} · ")


def alike(declared: Keys) -> bool:
    """Whether every key holds the same: one row then tells them all."""
    values = list(declared.keys.values())
    return len(values) > 3 and all(value == values[0] for value in values)


def cell_of(declared: Value) -> str:
    """What a value is, in words."""
    return f"{declared.said}{how(declared)}"


def how(declared: Value) -> str:
    """How a value is written, after what it is."""
    if isinstance(declared, Whole):
        return f" ({declared.low} to {declared.high})"
    if isinstance(declared, Written):
        return f": `{declared.example}`"
    if isinstance(declared, Words):
        return f": {', '.join(f'`{word}`' for word in declared.words)}"
    if isinstance(declared, Answer):
        return ": `yes` or `no`"
    if isinstance(declared, Either):
        return ": " + " or ".join(cell_of(way) for way in declared.ways)
    if isinstance(declared, Keys) and alike(declared):
        inner = next(iter(declared.keys.values()))
        lines = f" ({', '.join(f'`{key}`' for key in inner.keys)})" if isinstance(inner, Keys) else how(inner)
        return f": {', '.join(f'`{key}`' for key in declared.keys)}{lines}"
    return " (a list)" if isinstance(declared, Several) else ""


def schemas() -> dict[str, str]:
    """File name -> the text of each schema."""
    return {
        f"{kind}.schema.json": json.dumps(file_schema(kind, declared), ensure_ascii=False, indent=2) + "\n"
        for kind, declared in FILES.items()
    }
