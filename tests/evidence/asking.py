"""What turns a row of checks.csv into a test: the question, who answers it, and how answer and expectation meet."""

import re
from collections.abc import Callable
from dataclasses import dataclass

from turnout.evidence import Check

NUMBER = re.compile(r"(?<![\d.])-?(?:\d+(?:\.\d+)?|\.\d+)(?:e-?\d+)?")


class Departure(float):
    """For a row that states a form: the answer's largest departure from it, relative where its tolerance is a share."""


Answer = float | int | str | tuple[float, ...] | Departure


class Given(dict[str, float | str]):
    """A row's question and nothing of its expected answer: the inputs by name, their text and all numbers in it."""

    def __init__(self, text: str):
        self.text = text
        self.numbers = numbers(text)
        super().__init__(_pair(part) for part in text.split(";") if "=" in part)

    def __getitem__(self, name: str) -> float:
        value = super().__getitem__(name)
        assert isinstance(value, float), f"{name} is no number in “{self.text}”"
        return value


@dataclass(frozen=True)
class Answering:
    """The function that answers a row, and whether it computes or only looks a figure up in our own tables."""

    function: Callable[[Given], Answer]
    how: str


ANSWERS: dict[str, Answering] = {}


def answers(*ids: str, how: str = "computed") -> Callable[[Callable[[Given], Answer]], Callable[[Given], Answer]]:
    """Let a function answer the rows called `ids`; no row may be answered twice."""

    def keep(function: Callable[[Given], Answer]) -> Callable[[Given], Answer]:
        for each in ids:
            assert each not in ANSWERS, f"{each} is answered twice"
            ANSWERS[each] = Answering(function, how)
        return function

    return keep


def numbers(text: str) -> tuple[float, ...]:
    """Every number in a text; in '22-23.5' and '115 +-35' the sign is a dash."""
    return tuple(float(found) for found in NUMBER.findall(text.replace("+-", " ")))


def agrees(check: Check, answer: Answer) -> bool:
    """Whether `answer` is what the row expects, within its tolerance."""
    if isinstance(answer, str):
        return answer == check.expected
    if isinstance(answer, Departure):
        return answer <= (_shares(check.tolerance) if "%" in check.tolerance else numbers(check.tolerance))[0]
    given = answer if isinstance(answer, tuple) else (answer,)
    bound = re.match(r"(<=|>=|<|>)\s*(.+)", check.expected)
    if bound:
        return all(_within(bound[1], each, float(bound[2])) for each in given)
    targets = numbers(check.expected)
    assert targets, f"{check.id} expects words: answer with words"
    wanted = targets * len(given) if len(targets) == 1 else targets
    assert len(wanted) == len(given), f"{check.id} expects {len(wanted)} numbers, got {len(given)}"
    allowed = _allowed(check.tolerance, wanted)
    return all(abs(a - b) <= room + 1e-9 for a, b, room in zip(given, wanted, allowed, strict=True))


def _pair(part: str) -> tuple[str, float | str]:
    name, _, said = part.partition("=")
    found = NUMBER.match(said.strip())
    return name.strip(), float(found[0]) if found else said.strip()


def _within(sign: str, answer: float, bound: float) -> bool:
    return {"<": answer < bound, "<=": answer <= bound, ">": answer > bound, ">=": answer >= bound}[sign]


def _allowed(tolerance: str, wanted: tuple[float, ...]) -> list[float]:
    if "%" in tolerance:
        return [abs(each) * _shares(tolerance)[0] for each in wanted]
    rooms = numbers(tolerance) or (0.0,)
    assert len(rooms) in (1, len(wanted))
    return list(rooms * len(wanted) if len(rooms) == 1 else rooms)


def _shares(tolerance: str) -> tuple[float, ...]:
    assert "%" in tolerance
    return tuple(each / 100 for each in numbers(tolerance))
