"""Who came and what there is."""

from dataclasses import dataclass, field


@dataclass(frozen=True)
class Space:
    """A rectangle of grass or floor, metres; x east, y north, origin at its south-west corner; run-off already inside.

    `name` is what the coach calls it ('third of 3G'); usable sizes of shares come from the evidence room.
    """

    name: str
    across_m: float
    up_m: float
    run_off_m: float = 3.0


@dataclass(frozen=True)
class Kit:
    """What is in the bag. Colours by name; `own` is the colour of the players' own shirts (None: mixed)."""

    bibs: tuple[tuple[str, int], ...] = (("blue", 8), ("yellow", 8))
    cones: tuple[tuple[str, int], ...] = (("white", 40), ("red", 16))
    balls: int = 8
    own: str | None = None


@dataclass(frozen=True)
class Tonight:
    """One evening's facts. Labels are first names or numbers from the squad, in its order; adults None = unknown."""

    players: int
    space: Space
    kit: Kit = field(default_factory=Kit)
    minutes: float = 60.0
    labels: tuple[str, ...] = ()
    age: int = 12  # the squad's age group: U12
    level: str = "learning"  # new, learning, settled, strong
    adults: int | None = None
    first_aider: bool | None = None
    surface: str = "3G"
    country: str = "England"
    start: str = "18:00"
