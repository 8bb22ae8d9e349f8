"""Every command written in the documentation does what it says."""

import re
import shlex
import subprocess
import sys
from pathlib import Path

import pytest

from turnout.evening import shelf

DOCS = Path(__file__).parents[2] / "docs" / "faces.md"
BLOCKS = re.findall(r"```sh\n(.*?)```", DOCS.read_text("utf-8"), re.DOTALL)
COMMANDS = [line for block in BLOCKS for line in block.splitlines() if line.startswith("turnout ")]


def test_there_are_commands_for_every_verb_that_ends():
    assert {command.split()[1] for command in COMMANDS} == {"check", "fit", "forecast", "pack", "shelf"}


@pytest.mark.parametrize("command", COMMANDS)
def test_a_documented_command_ends_well(command, tmp_path):
    practice = shelf.find("harbour-square", ("practice",), name="practice")
    (tmp_path / "practice.yaml").write_bytes(practice.read_bytes())
    start = [sys.executable, "-c", "from turnout.cli.main import run; run()", *shlex.split(command)[1:]]
    made = subprocess.run(start, cwd=tmp_path, capture_output=True, text=True, timeout=300)
    assert made.returncode == 0, made.stderr
    assert made.stdout.strip()
