"""A progress bar on stderr for whatever takes over half a second."""

import sys
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING

import typer

if TYPE_CHECKING:
    from rich.progress import Progress as Bar
    from rich.progress import TaskID

PATIENCE_S = 0.5


class Progress:
    """How far a verb has come: a bar on a terminal, else a line a stage; silent in the first half second."""

    def __init__(self) -> None:
        self._stage, self._share = "", 0.0
        self._told: str | None = None
        self._bar: Bar | None = None
        self._task: TaskID | None = None
        self._lock = threading.Lock()
        # a stage may be long in saying anything, so the clock and not the next call ends the patience
        self._patience = threading.Timer(PATIENCE_S, self._show)
        self._patience.daemon = True
        self._patience.start()

    def __call__(self, stage: str, share: float = 0.0) -> None:
        """Stage in words and the share of the whole that is done, 0 to 1."""
        self._stage, self._share = stage, share
        if not self._patience.is_alive():
            self._show()

    def _show(self) -> None:
        with self._lock:
            if self._stage and sys.stderr.isatty():
                self._draw()
            elif self._stage and self._stage != self._told:
                self._told = self._stage
                typer.echo(f"{self._stage} …", err=True)

    def _draw(self) -> None:
        if self._bar is None:
            self._bar, self._task = new_bar(self._stage)
        if self._task is not None:
            self._bar.update(self._task, description=self._stage, completed=self._share)

    def close(self) -> None:
        """Take the bar away."""
        self._patience.cancel()
        with self._lock:
            self._stage = ""
            if self._bar is not None:
                self._bar.stop()
                self._bar = None


def new_bar(stage: str) -> "tuple[Bar, TaskID]":
    """A started bar on stderr that leaves no trace when stopped."""
    from rich.console import Console
    from rich.progress import Progress as Bar

    bar = Bar(console=Console(stderr=True), transient=True)
    task = bar.add_task(stage, total=1.0)
    bar.start()
    return bar, task


@contextmanager
def progress() -> Iterator[Progress]:
    """A progress bar that is gone afterwards, whatever happened."""
    shown = Progress()
    try:
        yield shown
    finally:
        shown.close()
