"""What files cost: a shelf of forty practices listed by its own process, one practice read, two edits written."""

import shutil
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from functools import partial
from pathlib import Path

from turnout.club.writing import edit_file
from turnout.practice.read import read_practice
from turnout.practice.shelf import practice_files
from turnout.practice.writing import replace_sentence

SHELVED = 40
ROUNDS = 7
LISTING = """
import sys
from pathlib import Path
import turnout.practice.shelf as shelf
shelf.practice_files.__defaults__ = ((Path(sys.argv.pop(1)),),)
from turnout.cli.main import run
run()
"""


def run() -> dict:
    """The best of some rounds each; a bare process beside."""
    with tempfile.TemporaryDirectory() as name:
        fill(folder := Path(name))
        bare, told = [sys.executable, "-c", "pass"], [sys.executable, "-c", LISTING, name, "shelf", "--players", "14"]
        figures = {"practices": SHELVED, "shelf_s": round(best(lambda: subprocess.run(told, capture_output=True)), 3)}
        files = list(practice_files().values())
        read_practice(files[0])  # the grammar is built once a process
        figures["read_median_ms"] = round(
            1000 * statistics.median(best(partial(read_practice, file)) for file in files), 1
        )
        figures["two_edits_ms"] = round(1000 * best(partial(edited, folder / "1" / "practice.yaml")), 1)
        yardstick = {"bare_python_s": round(best(lambda: subprocess.run(bare)), 3)}
    return {"figures": figures, "yardstick": yardstick}


def fill(folder: Path) -> None:
    """Forty practices: those there are, over and over."""
    files = list(practice_files().values())
    for number in range(SHELVED):
        (folder / str(number)).mkdir()
        shutil.copy(files[number % len(files)], folder / str(number) / "practice.yaml")


def edited(path: Path) -> None:
    """One sentence said anew, checked and written, and back."""
    sentence = read_practice(path).rules[0].source.text
    edit_file(path, lambda draft: replace_sentence(draft, 1, sentence.lower()))
    edit_file(path, lambda draft: replace_sentence(draft, 1, sentence))


def best(work: Callable[[], object]) -> float:
    """Seconds of the quickest of some rounds."""
    taken = []
    for _ in range(ROUNDS):
        start = time.perf_counter()
        work()
        taken.append(time.perf_counter() - start)
    return min(taken)
