"""How a verb answers: sentences or one JSON object, errors that teach, and the exit code."""

import json as json_text
import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import asdict, dataclass, field

import typer

from turnout import __version__
from turnout.evening.values import seed_value
from turnout.problems import BadInput, Problem, TurnoutError

DONE, NO, BAD_INPUT, STOPPED = 0, 1, 2, 130


@dataclass
class Answer:
    """What a verb will print: `text` for people, `body` for machines, `code` for the shell."""

    verb: str
    seed: int | None = None
    inputs_hash: str | None = None
    text: str = ""
    body: dict = field(default_factory=dict)
    code: int = DONE

    def as_json(self) -> str:
        """The one JSON object of the verb."""
        head = {"turnout": __version__, "verb": self.verb, "seed": self.seed, "inputs_hash": self.inputs_hash}
        return json_text.dumps({**head, **self.body}, ensure_ascii=False, indent=2)


@contextmanager
def answering(verb: str, *, json: bool, seed: str | None = None) -> Iterator[Answer]:
    """Collect a verb's answer, print it and leave with its code; refusals become sentences, never tracebacks."""
    answer = Answer(verb)
    try:
        answer.seed = None if seed is None else seed_value(seed)
        yield answer
    except BadInput as error:
        answer.body, answer.code = {"problems": [asdict(problem) for problem in error.problems]}, BAD_INPUT
        tell_problems(error.problems)
    except TurnoutError as error:
        answer.body, answer.code = {"problems": [asdict(as_problem(verb, error))]}, BAD_INPUT
        typer.echo(str(error), err=True)
    except KeyboardInterrupt:
        typer.echo("Stopped. Nothing half-done was written.", err=True)
        raise typer.Exit(STOPPED) from None
    print_out(answer.as_json() if json else answer.text)
    raise typer.Exit(answer.code)


def as_problem(verb: str, error: TurnoutError) -> Problem:
    """A refusal without a place as a problem of the verb itself."""
    return Problem(verb, None, None, "", str(error))


def tell_problems(problems: list[Problem]) -> None:
    """Problems on stderr, the mark in red on a terminal."""
    for problem in problems:
        mark = typer.style("!", fg="red", bold=True) if colour_wanted() else "!"
        typer.echo(f"{mark} {problem}", err=True)


def colour_wanted() -> bool:
    """Colour only where a person looks: stderr is a terminal and NO_COLOR is not set."""
    return sys.stderr.isatty() and not os.environ.get("NO_COLOR")


def print_out(text: str) -> None:
    """The answer on stdout; a reader that has gone away (`| head`) is no error."""
    if not text:
        return
    try:
        print(text, flush=True)
    except BrokenPipeError:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
