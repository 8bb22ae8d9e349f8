"""Read values.csv, references.yaml and checks.csv once, typed."""

import csv
from collections.abc import Iterable
from dataclasses import dataclass
from difflib import get_close_matches
from functools import cache
from importlib.resources import files
from typing import Any, Literal, get_args

from turnout.problems import TurnoutError

Mark = Literal["read", "relayed", "memory", "computed", "own"]
Kind = Literal["definition", "worked-example", "published", "other-program", "direction"]
Status = Literal["computed", "looked up", "simulated", "not yet"]
Use = Literal["own code", "look-up", "input", "simulator output", "not modelled"]
Part = Literal["fit", "test", ""]


class Unknown(TurnoutError, KeyError):
    """A key nobody has written down; the message names the nearest one."""

    def __str__(self) -> str:
        return str(self.args[0])


@dataclass(frozen=True)
class Value:
    """One outside number: how it was come by (`mark`) and where it stands (`ref`, `locus`).

    `value` is None where only a band is known, and text where the fact is no number ('3v3').
    """

    key: str
    value: float | str | None
    unit: str
    low: float | None
    high: float | None
    mark: Mark
    about: str
    ref: str
    locus: str

    @property
    def number(self) -> float:
        """The value as a number; raises TurnoutError where there is none."""
        if isinstance(self.value, float):
            return self.value
        have = f"the text “{self.value}”" if self.value else f"only a band from {self.low} to {self.high}"
        raise TurnoutError(
            f"“{self.key}” is no single number: there is {have}. Read `.value`, `.low` or `.high` instead."
        )


@dataclass(frozen=True)
class Reference:
    """One source. `read`: read, relayed (seen in others' copies), memory (not re-read) or computed."""

    key: str
    authors: str
    year: int | None
    title: str
    where: str
    read: Mark
    part: str


@dataclass(frozen=True)
class Check:
    """One question with its outside answer. `status` says whether our program answers it yet, and how.

    use: what answers it: code of ours, a figure looked up in our tables, a figure put into the simulator, an output of
    the simulator, or nothing (`why` says why not).
    part: outputs only: whether weights may be fitted to the row, or it is kept to test them.
    why: for outputs the simulated game and measure; for the rest why it is not answered, or not yet.
    """

    id: str
    topic: str
    what: str
    inputs: str
    expected: str
    tolerance: str
    unit: str
    kind: Kind
    ref: str
    locus: str
    note: str
    status: Status
    use: Use
    part: Part
    why: str

    @property
    def gate(self) -> Literal["fail", "warn"]:
        """Whether a wrong answer fails the build: not where a published figure was only remembered."""
        remembered = "memory" in self.note or reference(self.ref).read == "memory"
        return "warn" if self.kind == "published" and remembered else "fail"


def value(key: str) -> Value:
    """The outside number filed under `key`; raises Unknown with the nearest key."""
    return find_key(values(), key, "value")


def number(key: str) -> float:
    """The number filed under `key` in its own unit; raises Unknown, or TurnoutError where it is no number."""
    return value(key).number


def reference(key: str) -> Reference:
    """The source filed under `key`; raises Unknown with the nearest key."""
    return find_key(references(), key, "reference")


@cache
def values() -> dict[str, Value]:
    """Every outside number by key, in file order."""
    return {row["key"]: _value(row) for row in _once(read_rows("values.csv"), "key")}


@cache
def references() -> dict[str, Reference]:
    """Every source by key, in file order."""
    from ruamel.yaml import YAML

    text = (files("turnout.evidence") / "references.yaml").read_text(encoding="utf-8")
    entries = YAML(typ="safe", pure=True).load(text)
    return {entry["key"]: Reference(**entry) for entry in _once(entries, "key")}


@cache
def checks() -> tuple[Check, ...]:
    """Every check, in file order."""
    return tuple(_check(row) for row in _once(read_rows("checks.csv"), "id"))


def find_key(table: dict[str, Any], key: str, kind: str) -> Any:
    """What `table` holds under `key`; raises Unknown with the nearest key of this `kind`."""
    if key in table:
        return table[key]
    near = get_close_matches(key, table, n=1, cutoff=0.5)
    hint = f" Did you mean “{near[0]}”?" if near else ""
    raise Unknown(f"No {kind} is filed under “{key}”.{hint}")


def read_rows(name: str) -> list[dict[str, str]]:
    """The lines of one of the room's tables, by column name."""
    text = (files("turnout.evidence") / name).read_text(encoding="utf-8")
    return list(csv.DictReader(text.splitlines()))


def _once(rows: Iterable[dict[str, Any]], key: str) -> list[dict[str, Any]]:
    seen: dict[str, dict[str, Any]] = {}
    for row in rows:
        if row[key] in seen:
            raise TurnoutError(f"“{row[key]}” stands twice in the evidence; one number has one home.")
        seen[row[key]] = row
    return list(seen.values())


def _value(row: dict[str, str]) -> Value:
    if row["mark"] not in get_args(Mark):
        raise TurnoutError(f"“{row['key']}” is marked “{row['mark']}”; a mark is one of {', '.join(get_args(Mark))}.")
    low, high = (float(row[bound]) if row[bound] else None for bound in ("low", "high"))
    plain = {name: row[name] for name in ("key", "unit", "about", "ref", "locus")}
    return Value(value=_figure(row["value"]), low=low, high=high, mark=row["mark"], **plain)  # type: ignore[arg-type]


def _check(row: dict[str, str]) -> Check:
    for name, kinds in (("kind", Kind), ("status", Status), ("use", Use), ("part", Part)):
        if row[name] not in (allowed := get_args(kinds)):
            raise TurnoutError(f"Check “{row['id']}” has {name} “{row[name]}”; it is one of {', '.join(allowed)}.")
    if (row["part"] == "") == (row["use"] == "simulator output"):
        raise TurnoutError(f"Check “{row['id']}”: an output of the simulator is fitted or tested, and nothing else is.")
    return Check(**row)  # type: ignore[arg-type]


def _figure(text: str) -> float | str | None:
    try:
        return float(text) if text else None
    except ValueError:
        return text
