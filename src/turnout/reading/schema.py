"""JSON Schema (draft 2020-12) of a declared file, for editors and other programs.

A file that `turnout check` takes is valid under its schema, as a YAML 1.2 reader loads it: a number may come as number
or as text, yes as a word or as true. The other way round does not hold: what sentences, ground and people lines mean,
and whether things contradict each other, no schema can say.
"""

from typing import Any

from turnout.reading.declare import Answer, Either, Keys, Line, Named, Several, Value, Whole, Words, Written

DRAFT = "https://json-schema.org/draft/2020-12/schema"
YES_OR_NO = ("yes", "no", "true", "false")
NUMBERS = ("1", "12", "2.5")  # if one of these is written the way of a text, a reader may load it as a number


def file_schema(kind: str, declared: Keys) -> dict[str, Any]:
    """The schema of one kind of file."""
    head = {"$schema": DRAFT, "$id": f"urn:turnout:file:{kind}", "title": f"Turnout: {declared.said}"}
    body = schema(declared)
    body.pop("description")
    return head | body


def schema(declared: Value) -> dict[str, Any]:
    """The schema of one declared value."""
    return {"description": said(declared), **shape(declared)}


def said(declared: Value) -> str:
    """What a value is, with its example or bounds."""
    if isinstance(declared, Written):
        return f"{declared.said}, such as {declared.example}"
    if isinstance(declared, Whole):
        return f"{declared.said}: {declared.low} to {declared.high}"
    return declared.said


def shape(declared: Value) -> dict[str, Any]:
    """What a value may be."""
    if isinstance(declared, Line):
        return {"type": "string" if declared.words else ["string", "number", "boolean"]}
    if isinstance(declared, Whole):
        ends = {"minimum": declared.low, "maximum": declared.high}
        return {"anyOf": [{"type": "integer", **ends}, {"type": "string", "pattern": "^[0-9]{1,4}$"}]}
    if isinstance(declared, Written):
        return written(declared)
    if isinstance(declared, Words):
        return words(declared.words, any_case=declared.any_case)
    if isinstance(declared, Answer):
        return {"anyOf": [{"type": "boolean"}, words(YES_OR_NO, any_case=True)]}
    if isinstance(declared, Several):
        several = {"type": "array", "items": schema(declared.each)}
        return {"anyOf": [several, schema(declared.each)]} if declared.alone else several
    return keyed(declared)


def keyed(declared: Value) -> dict[str, Any]:
    """What keys may stand in a value, or which of several kinds it is."""
    if isinstance(declared, Either):
        return {"anyOf": [schema(way) for way in declared.ways]}
    if isinstance(declared, Named):
        return {"type": "object", "additionalProperties": schema(declared.each)}
    assert isinstance(declared, Keys)
    found: dict[str, Any] = {
        "type": "object",
        "properties": {key: schema(one) for key, one in declared.keys.items()},
        "additionalProperties": False,
    }
    for key in declared.needed:
        found["properties"][key] |= filled(declared.keys[key])
    if declared.needed:
        found["required"] = list(declared.needed)
    if declared.one_of:
        found["oneOf"] = [{"required": [key]} for key in declared.one_of]
    if declared.some_of:
        found["anyOf"] = [{"required": [key]} for key in declared.some_of]
    return found


def filled(declared: Value) -> dict[str, Any]:
    """That a needed list or set of keys has something in it."""
    if isinstance(declared, Several) and not declared.alone:
        return {"minItems": 1}
    return {"minProperties": 1} if isinstance(declared, (Named, Keys)) else {}


def written(declared: Written) -> dict[str, Any]:
    """Text of a pattern; also a number where a number alone is written that way."""
    text = {"type": "string", "pattern": rf"^\s*(?:{declared.pattern.pattern})\s*$"}
    numbers = any(declared.pattern.fullmatch(number) for number in NUMBERS)
    return {"anyOf": [text, {"type": "number"}]} if numbers else text


def words(known: tuple[str, ...], *, any_case: bool) -> dict[str, Any]:
    """One of a few words. A pattern has no flag for letter case, so each letter brings both."""
    if not any_case:
        return {"enum": list(known)}
    either = "|".join("".join(letter_pattern(letter) for letter in word) for word in known)
    return {"anyOf": [{"enum": list(known)}, {"type": "string", "pattern": rf"^\s*(?:{either})\s*$"}]}


def letter_pattern(letter: str) -> str:
    """A letter in both cases."""
    both = sorted({letter.lower(), letter.upper()})
    return f"[{''.join(both)}]" if len(both) > 1 else letter
