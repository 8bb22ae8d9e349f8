"""Checks on a tree that no grammar holds: which noun phrase may stand where, and what “it” is."""

from dataclasses import dataclass
from functools import cache

from turnout.practice.forms import BY_ID
from turnout.practice.meaning_parts import RELATIVES
from turnout.practice.model import Phrase
from turnout.practice.phrases import CLASSES
from turnout.practice.templates import parts, slots


@dataclass(frozen=True)
class Misfit:
    """A phrase that cannot stand where it does, and what could."""

    phrase: Phrase
    expected: str


TOPICS = {
    "score": "a score", "touches": "a touch limit", "stay in": "“stay in”", "stay out": "“stay out of”",
    "move along": "“move only along”", "stand still": "“stand still”", "plays for": "“play for”",
    "attacks": "a direction", "no tackle": "“nobody tackles”", "play starts": "“play starts with”",
    "change.over": "a change-over", "change.starts": "a restart", "change.exchange": "changing places",
    "change.comes in": "“comes in”", "change.goes out": "“goes out”", "event.act": "an event",
    "may come in": "“may come in”", "must": "“must”", "may not": "“may not”", "only may": "“only … may”",
    "change.goes back": "“goes back”", "change.joins": "“joins”", "change.attacks": "a direction",
    "change.points": "points", "change.may enter": "“may enter”", "change.new ball": "a new ball",
    "change.keeps": "keeping the ball", "first pass": "“play starts with a pass”", "while.behind": "being behind",
    "while.has": "having the ball", "while.in place": "“in a place”",
}  # fmt: skip


def misfit(phrase: Phrase) -> Misfit | None:
    """The first noun phrase that stands where its kind cannot, or an “it” or “there” without a place before it."""
    found = kind_misfit(phrase)
    if found is None:
        _, found = bound(phrase, None)
    return found


def kind_misfit(phrase: Phrase) -> Misfit | None:
    """The first noun phrase of the wrong kind, or a group changing over with itself."""
    if phrase.form == "change.over" and phrase["who"] == phrase["with"]:
        return Misfit(phrase, "two different groups change over, for example “its inside players and its edge players”")
    where = phrase.get("where")
    if phrase.form in ("attacks", "change.attacks") and isinstance(where, Phrase) and where.form[6:] in RELATIVES:
        return Misfit(where, "a side attacks a place under ground; name it")
    wanted = needs_of(phrase.form)
    for name, value in phrase.slots:
        if not isinstance(value, Phrase):
            continue
        needs = wanted.get(name)
        if needs and value.form.removeprefix("who.") not in CLASSES[needs][0]:
            return Misfit(value, f"{TOPICS.get(phrase.form, 'this')} needs {CLASSES[needs][1]}")
        if inner := kind_misfit(value):
            return inner
    return None


@cache
def needs_of(form: str) -> dict[str, str | None]:
    """What each slot of a form needs to stand in it."""
    return {slot.name: slot.needs for _, template in BY_ID[form].templates for slot in slots(parts(template))}


def bind(phrase: Phrase) -> Phrase:
    """The tree with every “it” replaced by the place named before it."""
    return bound(phrase, None)[0]


def bound(phrase: Phrase, last: Phrase | None) -> tuple[Phrase, Misfit | None]:
    """The tree with “it” replaced, reading from left to right with `last` the place named so far."""
    replaced, _, fault = walk(phrase, last)
    return replaced, fault


def walk(phrase: Phrase, last: Phrase | None) -> tuple[Phrase, Phrase | None, Misfit | None]:
    """The replaced tree, the place named last, and the first “it” that has none."""
    if phrase.form == "place.it":
        fault = (
            None if last else Misfit(phrase, "“it” stands for a place named earlier in the sentence; name the place")
        )
        return last or phrase, last, fault
    if phrase.form.startswith("place."):
        return phrase, phrase, None
    if phrase.form == "who.player there" and last is None:
        return phrase, last, Misfit(phrase, "“there” is a place named earlier in the sentence; name the player's side")
    filled: list[tuple[str, Phrase | str | int]] = []
    first: Misfit | None = None
    for name, value in phrase.slots:
        if isinstance(value, Phrase):
            value, last, fault = walk(value, last)
            first = first or fault
        filled.append((name, value))
    return Phrase(phrase.form, tuple(filled)), last, first
