"""Balls and surfaces by name, every figure out of the evidence room and marked as it is there."""

from dataclasses import dataclass
from functools import cache
from math import pi

from turnout.evidence import Value, number, value
from turnout.problems import TurnoutError

# What each surface's roll, slide and bounce stand on; a key of `surface.` marked `own` is free: no source was found.
# 'grass' is short and dry enough, 'wet grass' long and wet.
_KEYS = {
    "3G": ("roll.decel.artificial.top", "surface.3g.slide-mu", "turf.restitution.artificial"),
    "grass": ("roll.decel.after-slide", "slide.mu", "turf.restitution.grass"),
    "wet grass": (
        "surface.long-wet-grass.roll-decel",
        "surface.long-wet-grass.slide-mu",
        "surface.long-wet-grass.restitution",
    ),
    "hall": ("surface.hall.roll-decel", "surface.hall.slide-mu", "surface.hall.restitution"),
}
SURFACES = tuple(_KEYS)


@dataclass(frozen=True)
class Surface:
    """How a ball rolls, slides and bounces on one ground; each figure with its band and mark."""

    name: str
    roll: Value  # m/s2, beside air drag
    slide: Value  # friction, -
    bounce: Value  # restitution, -

    @property
    def roll_mps2(self) -> float:
        return self.roll.number

    @property
    def friction(self) -> float:
        return self.slide.number

    @property
    def restitution(self) -> float:
        return self.bounce.number

    @property
    def free(self) -> tuple[str, ...]:
        """Which of roll, slide and bounce have no source and may be moved within their band."""
        return tuple(name for name in ("roll", "slide", "bounce") if getattr(self, name).mark == "own")


@dataclass(frozen=True)
class Ball:
    """A ball by size: 3, 4, 5 or futsal."""

    size: str
    mass_kg: float
    radius_m: float
    inertia_ratio: float  # I/(m r^2)


@cache
def surface(name: str) -> Surface:
    """The surface called `name`, one of SURFACES; raises TurnoutError naming them."""
    if name not in _KEYS:
        raise TurnoutError(f"No surface is called “{name}”; the surfaces are {', '.join(SURFACES)}.")
    return Surface(name, *(value(key) for key in _KEYS[name]))


@cache
def ball(size: str) -> Ball:
    """The ball of `size` '3', '4', '5' or 'futsal'; raises TurnoutError naming them."""
    if size == "futsal":
        girth_m, mass_kg = number("ball.futsal.circumference"), number("ball.futsal.mass")
        return Ball(size, mass_kg, girth_m / (2 * pi), number("roll.inertia.k"))
    if size not in ("3", "4", "5"):
        raise TurnoutError(f"No ball is of size “{size}”; the sizes are 3, 4, 5 and futsal.")
    return Ball(size, number(f"ball.size{size}.mass"), number(f"ball.size{size}.radius"), number("roll.inertia.k"))
