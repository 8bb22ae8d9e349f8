"""Toy practices small enough to hold in the head, and plain evenings to fit them to."""

from dataclasses import replace
from functools import lru_cache
from pathlib import Path

from turnout.club.tonight import Kit, Space, Tonight
from turnout.practice.model import Practice
from turnout.practice.read import read_practice
from turnout.session.model import Part, Session

THIRD = Space("third of 3G", 31.8, 64.0)
HALL = Space("hall", 33.0, 18.0)
QUARTER = Space("quarter", 50.0, 32.0)


@lru_cache
def _read(name: str) -> Practice:
    return read_practice(Path(__file__).parent / "toys" / f"{name}.yaml")


def keep_ball(**arrange: object) -> Practice:
    """Four keep the ball from two in a square of 9 yd (3-5 and 1-3); the pair in the middle changes by the clock."""
    return _arranged("toy-keep-ball", arrange)


def overload(**arrange: object) -> Practice:
    """Four against three inside 16 yd, three of each side on the edge."""
    return _arranged("toy-overload", arrange)


def end_zones(**arrange: object) -> Practice:
    """Four a side and two neutrals on 24 x 36 yd, a zone of 5 yd at each end."""
    return _arranged("toy-end-zones", arrange)


def _arranged(name: str, arrange: dict[str, object]) -> Practice:
    practice = _read(name)
    return replace(practice, arrange=replace(practice.arrange, **arrange))  # type: ignore[arg-type]


def session_of(*parts: Part, minutes: float = 45.0) -> Session:
    return Session("toy", "Toy evening", 12, "keep it", minutes, (8, 16), parts)


def toy_session() -> Session:
    """Keep-ball, overload, end zones: 12, 15 and 18 minutes as written."""
    return session_of(Part(keep_ball(), 12), Part(overload(), 15), Part(end_zones(), 18))


def shelf_session() -> Session:
    """The shipped session, as a coach would open it."""
    import turnout
    from turnout.session.read import read_session

    return read_session(Path(turnout.__file__).parent / "shelf" / "sessions" / "hold-and-break.yaml")


def tonight(players: int = 14, space: Space = THIRD, **more: object) -> Tonight:
    """A plain evening of an hour; bibs 8 blue, 8 yellow unless said otherwise."""
    return Tonight(players=players, space=space, **more)  # type: ignore[arg-type]


def bibs(**colours: int) -> Kit:
    """A bag with these bibs."""
    return Kit(bibs=tuple(colours.items()))
