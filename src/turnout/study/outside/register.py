"""Who answers which row: one small function from the runs of a seed to the row's figures."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from turnout.play.kernel import columns as c
from turnout.study.outside.plays import Play, Run

Measure = Callable[..., float | Sequence[float]]


@dataclass(frozen=True)
class Row:
    """A row's plays, in the order its function takes their runs, and what its figures are.

    needs: sums and log columns the kernel must have.
    """

    id: str
    plays: tuple[Play, ...]
    measure: Measure
    figures: tuple[str, ...]
    needs: tuple[str, ...] = ()

    @property
    def open(self) -> str:
        """What the row still waits for; empty when it can be answered."""
        missing = [name for name in self.needs if not hasattr(c, name)]
        return f"the kernel to count {', '.join(missing)}" if missing else ""

    def answered_by(self, runs: dict[Play, Run]) -> tuple[float, ...]:
        """The row's figures out of the runs of one seed."""
        found = self.measure(*(runs[play] for play in self.plays))
        return tuple(float(one) for one in found) if isinstance(found, Sequence) else (float(found),)


ROWS: dict[str, Row] = {}


def row(
    id: str, *plays: Play, figures: str | tuple[str, ...], needs: tuple[str, ...] = ()
) -> Callable[[Measure], Measure]:
    """Let a function answer the row `id`; it gets the runs of `plays` under one seed. No row is answered twice."""

    def keep(measure: Measure) -> Measure:
        _enter(Row(id, plays, measure, (figures,) if isinstance(figures, str) else figures, needs))
        return measure

    return keep


def _enter(entry: Row) -> None:
    if entry.id in ROWS:
        raise ValueError(f"{entry.id} is answered twice")
    ROWS[entry.id] = entry
