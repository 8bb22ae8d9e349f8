"""An evening as loaded: the session, tonight's facts, and what they were read from."""

from dataclasses import dataclass, replace
from pathlib import Path

from turnout.club.tonight import Space, Tonight
from turnout.evening import shelf
from turnout.evening.stamp import content_hash
from turnout.evening.values import minutes_value, players_value
from turnout.session.model import Session

SHARE = "third of 3G"  # the usual hire, when nobody says otherwise (common practice, no source)


@dataclass(frozen=True)
class Evening:
    """A session and one evening's facts; everything else is computed from these and a seed."""

    session: Session
    tonight: Tonight
    seed: int = 7

    @property
    def inputs_hash(self) -> str:
        """Names this evening by content: equal inputs, equal name."""
        return content_hash(self.session, self.tonight)

    def at(self, players: int) -> "Evening":
        """The same evening with another turnout."""
        from turnout.fit import with_players

        return replace(self, tonight=with_players(self.tonight, players))


def load_evening(session: str | None, *, tonight: Path | None = None, seed: int = 7) -> Evening:
    """Read a session (a file or a name on the shelf) and tonight's facts; without either, the example evening.

    Raises BadInput.
    """
    from turnout.session.read import read_session

    path = shelf.find(session, ("session",), name="session") if session else shelf.first("session")
    read = read_session(path, (path.parent, *shelf.folders()))
    return Evening(read, load_tonight(read, tonight, example=session is None), seed)


def load_tonight(session: Session, path: Path | None, *, example: bool) -> Tonight:
    """Tonight's facts from a file; for the example evening its own; else the middle of what the session expects.

    Age group and minutes are the session's where the file does not say.
    """
    from turnout.club.read import read_space, read_tonight

    if path is not None:
        file = shelf.find(str(path), ("tonight",), name="--tonight")
        return read_tonight(file, age=session.age, minutes=session.minutes)
    if example:
        return read_tonight(shelf.first("tonight"), age=session.age, minutes=session.minutes)
    middle = (session.expected[0] + session.expected[1] + 1) // 2
    return Tonight(players=middle, space=read_space(SHARE), minutes=session.minutes, age=session.age)


def with_facts(
    evening: Evening, *, players: str | None = None, space: str | None = None, minutes: str | None = None
) -> Evening:
    """The evening with typed facts put in the place of the read ones; raises BadInput."""
    if players is not None:
        evening = evening.at(players_value(players))
    tonight = evening.tonight
    if space is not None:
        tonight = replace(tonight, space=space_value(space))
    if minutes is not None:
        tonight = replace(tonight, minutes=minutes_value(minutes))
    return replace(evening, tonight=tonight)


def space_value(text: str) -> Space:
    """A typed space such as `32 x 30 m` or `third of 3G`; raises BadInput."""
    from turnout.club.read import read_space

    return read_space(text)


def labels_for(tonight: Tonight) -> tuple[str, ...]:
    """One label for everybody who came: the squad's first, then plain numbers."""
    given = tonight.labels[: tonight.players]
    return (*given, *(str(number) for number in range(len(given) + 1, tonight.players + 1)))
