"""The answers printed in the README are the program's."""

import re
from pathlib import Path

from typer.testing import CliRunner

from turnout.cli.main import app
from turnout.evening.fits import fit_evening
from turnout.evening.load import load_evening
from turnout.evening.pack import pack_contents

README = Path(__file__).parents[2] / "README.md"


def answer(command: str) -> str:
    """The indented block after the mark of an answer."""
    text = README.read_text(encoding="utf-8").split(f"<!-- answer: {command} -->\n", 1)[1]
    block = re.match(r"(?:    .*\n|\n(?=    ))+", text)
    assert block is not None
    return "".join(line.removeprefix("    ") + "\n" for line in block[0].splitlines())


def test_the_fit_printed_is_the_fit() -> None:
    done = CliRunner().invoke(app, ["fit", "hold-and-break", "--players", "13"])
    assert done.exit_code == 0
    assert answer("fit hold-and-break --players 13") == done.stdout


def test_the_files_named_are_those_of_the_pack() -> None:
    made = pack_contents(fit_evening(load_evening(None)), seconds=60)
    named = [line.removeprefix("out/") for line in answer("pack").split()]
    assert sorted(named) == sorted(made)


def test_every_picture_shown_is_there() -> None:
    shown = re.findall(r"!\[[^\]]+\]\(([^)]+)\)", README.read_text(encoding="utf-8"))
    assert shown and all((README.parent / name).exists() for name in shown)
