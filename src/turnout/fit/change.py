"""The smallest change that would do: by bisection per kind, each tried out on the fit before it is said.

Kinds: players, yards (across, up, both), adults, minutes, bibs, or one part left out. When no single kind does it,
pairs are tried.
"""

from collections.abc import Callable
from dataclasses import dataclass, replace
from itertools import combinations

from turnout.club.tonight import Tonight
from turnout.fit.altered import (
    endless_ground,
    plenty_of_adults,
    plenty_of_bibs,
    with_adults,
    with_minutes,
    with_more_bibs,
    with_players,
    with_space,
)
from turnout.fit.plan import plan_exists
from turnout.fit.words import plural
from turnout.measure import YARD_M
from turnout.session.model import Session

MOST_YARDS = 120
MOST_PLAYERS = 30
MOST_MORE_PLAYERS = 8
MOST_MINUTES = 120
MOST_ADULTS = 8
MOST_BIBS = 30

_WAYS = {"yards across": "from west to east", "yards up": "from south to north", "yards both ways": "both ways"}

Change = tuple[str, float]
Works = Callable[[Tonight], bool]


@dataclass(frozen=True)
class Kind:
    """One way to change the evening. `sizes` in the order they are tried; `rising`: once enough, more is enough."""

    name: str
    sizes: tuple[int, ...]
    rising: bool


KINDS = (
    Kind("players", tuple(sign * size for size in range(1, MOST_PLAYERS + 1) for sign in (1, -1)), False),
    Kind("yards across", tuple(range(1, MOST_YARDS + 1)), True),
    Kind("yards up", tuple(range(1, MOST_YARDS + 1)), True),
    Kind("yards both ways", tuple(range(1, MOST_YARDS + 1)), True),
    Kind("adults", tuple(range(1, MOST_ADULTS + 1)), True),
    Kind("minutes", tuple(sign * size for size in range(1, MOST_MINUTES + 1) for sign in (1, -1)), False),
    Kind("bibs", tuple(range(1, MOST_BIBS + 1)), True),
)


def smallest_changes(session: Session, tonight: Tonight) -> tuple[str | None, tuple[Change, ...]]:
    """The smallest change of each kind that would do, as a sentence and as data; a pair of changes if none alone does.

    With a pair, the changes are meant together; None and () when nothing tried does it.
    """

    def works(other: Tonight) -> bool:
        return plan_exists(session, other)

    found = _best_yards([change for kind in KINDS for change in _smallest(kind, tonight, works)])
    dropped = _parts_to_leave_out(session, tonight)
    if found or dropped:
        words = [change_words(change) for change in found]
        words += [f"leaving out {session.parts[int(number)].practice.name}" for _, number in dropped]
        return f"{_listed(words, 'or')} would do.", (*found, *dropped)
    pair = _smallest_pair(tonight, works)
    if pair is None:
        return None, ()
    return f"{_listed([change_words(change) for change in pair], 'and')} together would do.", pair


def _parts_to_leave_out(session: Session, tonight: Tonight) -> list[Change]:
    """Single parts without which the rest goes, as ('leave out', number of the part)."""
    if len(session.parts) == 1:
        return []
    numbers = range(len(session.parts))
    return [("leave out", number) for number in numbers if plan_exists(without_part(session, number), tonight)]


def without_part(session: Session, number: int) -> Session:
    """The session without one of its parts."""
    return replace(session, parts=session.parts[:number] + session.parts[number + 1 :])


def impose(tonight: Tonight, change: Change) -> Tonight:
    """Tonight with the change made; raises KeyError on a kind that is not a change of the evening."""
    kind, size = change
    space = tonight.space
    yards_m = size * YARD_M
    ways: dict[str, Callable[[], Tonight]] = {
        "players": lambda: with_players(tonight, tonight.players + int(size)),
        "yards across": lambda: with_space(tonight, across_m=space.across_m + yards_m, up_m=space.up_m),
        "yards up": lambda: with_space(tonight, across_m=space.across_m, up_m=space.up_m + yards_m),
        "yards both ways": lambda: with_space(tonight, across_m=space.across_m + yards_m, up_m=space.up_m + yards_m),
        "adults": lambda: with_adults(tonight, (tonight.adults or 0) + int(size)),
        "minutes": lambda: with_minutes(tonight, tonight.minutes + size),
        "bibs": lambda: with_more_bibs(tonight, int(size)),
    }
    return ways[kind]()


def change_words(change: Change) -> str:
    """'1 player more', '3 yards more across', '9 minutes fewer'."""
    kind, size = change
    more = "more" if size > 0 else "fewer"
    count = abs(size)
    if kind.startswith("yards"):
        return f"{plural(count, 'yard')} more {_WAYS[kind]}"
    if kind == "bibs":
        return f"{plural(count, 'bib')} more of each colour"
    return f"{plural(count, kind.removesuffix('s'))} {more}"


def _smallest(kind: Kind, tonight: Tonight, works: Works) -> list[Change]:
    """The smallest change of one kind, none if it never does; both ways when more and fewer are equally small."""
    if not _can_help(kind, tonight, works):
        return []
    if kind.rising:
        return _bisected(kind, tonight, works)
    good: list[Change] = []
    for size in kind.sizes:
        if good and abs(size) != abs(good[0][1]):
            break
        if _allowed(kind, tonight, size) and works(impose(tonight, (kind.name, size))):
            good.append((kind.name, size))
    return good


def _can_help(kind: Kind, tonight: Tonight, works: Works) -> bool:
    """Whether the kind, lifted altogether, would do; a quick no saves the search."""
    lifts = {"adults": plenty_of_adults, "bibs": plenty_of_bibs, "yards both ways": endless_ground}
    if kind.name == "adults" and tonight.adults is None:
        return False
    return kind.name not in lifts or works(lifts[kind.name](tonight))


def _allowed(kind: Kind, tonight: Tonight, size: int) -> bool:
    if kind.name == "players":
        return size <= MOST_MORE_PLAYERS and tonight.players + size >= 1
    return tonight.minutes + size >= 1


def _bisected(kind: Kind, tonight: Tonight, works: Works) -> list[Change]:
    """The least size that works, for a kind where more never hurts."""
    low, high = 0, kind.sizes[-1]
    if not works(impose(tonight, (kind.name, high))):
        return []
    while high - low > 1:
        middle = (low + high) // 2
        if works(impose(tonight, (kind.name, middle))):
            high = middle
        else:
            low = middle
    return [(kind.name, high)]


def _best_yards(found: list[Change]) -> list[Change]:
    """Of the three ways to lengthen the ground only the least: both ways counts twice."""
    ground = [change for change in found if change[0].startswith("yards")]
    if not ground:
        return found
    best = min(ground, key=lambda change: change[1] * (2 if change[0] == "yards both ways" else 1))
    return [change for change in found if change not in ground or change == best]


def _smallest_pair(tonight: Tonight, works: Works) -> tuple[Change, ...] | None:
    """Two changes of different kinds: the first as small as it can be with the second lifted, then the second."""
    lifts: dict[str, Callable[[Tonight], Tonight]] = {
        "adults": plenty_of_adults, "bibs": plenty_of_bibs, "yards both ways": endless_ground,
    }  # fmt: skip
    for second, first in combinations(reversed(KINDS), 2):
        if second.name not in lifts or (second.name == "adults" and tonight.adults is None):
            continue
        lift = lifts[second.name]

        def lifted(other: Tonight, lift: Callable[[Tonight], Tonight] = lift) -> bool:
            return works(lift(other))

        for change in _smallest(first, tonight, lifted)[:1]:
            rest = _smallest(second, impose(tonight, change), works)
            if rest:
                return change, rest[0]
    return None


def _listed(words: list[str], last: str) -> str:
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} {last} {words[-1]}"
