"""A squad: labels or first names, and nothing else about anybody."""

from dataclasses import dataclass


@dataclass(frozen=True)
class Squad:
    """A squad by name, its age group (U12 is 12; None: not said), the level of play as a whole, its labels in order."""

    name: str
    age: int | None = None
    level: str = "learning"
    labels: tuple[str, ...] = ()
