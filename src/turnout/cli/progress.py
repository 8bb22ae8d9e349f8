"""A progress bar on stderr for whatever takes over half a second."""

import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING

import typer

if TYPE_CHECKING:
    from rich.progress import Progress as Bar
    from rich.progress import TaskID

PATIENCE_S = 0.5


class Progress:
    """Tells how far a verb has come: a bar on a terminal, else a line a stage; silent at first."""

    def __init__(self) -> None:
        self._start_s = time.monotonic()
        self._told: str | None = None
        self._bar: Bar | None = None
        self._task: TaskID | None = None

    def __call__(self, stage: str, share: float | None = None) -> None:
        """Stage in words and the share done, 0 to 1 (None: not known)."""
        if time.monotonic() - self._start_s < PATIENCE_S:
            return
        if sys.stderr.isatty():
            self._draw(stage, share)
        elif stage != self._told:
            self._told = stage
            typer.echo(f"{stage} …", err=True)

    def _draw(self, stage: str, share: float | None) -> None:
        if self._bar is None:
            self._bar, self._task = new_bar(stage)
        if self._task is not None:
            self._bar.update(self._task, description=stage, completed=share or 0.0)

    def close(self) -> None:
        """Take the bar away."""
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
