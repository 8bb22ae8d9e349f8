"""What is wrong with an input, said so that it teaches; and the exceptions every room raises."""

from dataclasses import dataclass
from typing import Literal


@dataclass(frozen=True)
class Problem:
    """One thing wrong in a file: where it stands, what was read, what would do."""

    file: str
    line: int | None
    column: int | None
    read: str
    expected: str
    nearest: str | None = None
    severity: Literal["error", "warning"] = "error"

    def __str__(self) -> str:
        place = ":".join(str(part) for part in (self.file, self.line, self.column) if part is not None)
        near = f" Did you mean “{self.nearest}”?" if self.nearest else ""
        return f"{place}: read “{self.read}”; {self.expected}.{near}"


class TurnoutError(Exception):
    """Anything Turnout refuses, with a sentence a coach can act on."""


class BadInput(TurnoutError):
    """One or more files or values that cannot be used; nothing has been written."""

    def __init__(self, problems: list[Problem]):
        self.problems = problems
        super().__init__("\n".join(str(problem) for problem in problems))
