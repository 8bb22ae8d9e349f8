"""Rounds of games of two against two: everybody with everybody else once, against everybody else twice."""

from collections import Counter
from collections.abc import Iterator
from functools import cache

Game = tuple[tuple[int, int], tuple[int, int]]  # two players against two
STAYS = -1
EFFORT = 150_000  # games tried before the search is given up: two seconds, and always the same ones


class _GaveUpError(Exception):
    """The search has used its effort."""


@cache
def whist_rounds(players: int) -> tuple[tuple[Game, ...], ...] | None:
    """Rounds of 2v2 in which each pair of players is together once and opposed twice; None where none was found.

    players: a multiple of 4 (all play, players - 1 rounds), or one more (each sits out once, as many rounds as
    players); with any other number such rounds do not exist, ValueError. They exist for all of these (evidence:
    haanpaa2005), but not for all from one base round whose players all move on by one, which is what is looked for.
    """
    if players < 4 or players % 4 > 1:
        raise ValueError(f"2v2 with everybody once comes out even for 4, 5, 8, 9, 12, 13, ... players, not {players}")
    ring = players - 1 if players % 4 == 0 else players
    seats = [STAYS, *range(ring)] if players % 4 == 0 else list(range(1, ring))
    try:
        base = _filled(seats, set(), Counter(), ring, [EFFORT])
    except _GaveUpError:
        return None
    return None if base is None else tuple(tuple(_shifted(game, by, ring) for game in base) for by in range(ring))


def _shifted(game: Game, by: int, ring: int) -> Game:
    (a, b), (c, d) = ([ring if seat == STAYS else (seat + by) % ring for seat in side] for side in game)
    return (a, b), (c, d)


def _filled(
    left: list[int], together: set[int], against: Counter[int], ring: int, effort: list[int]
) -> list[Game] | None:
    """Games of everybody left in which no difference comes twice together or three times against; None: none."""
    if not left:
        return []
    for game in _games(left):
        effort[0] -= 1
        if effort[0] < 0:
            raise _GaveUpError
        mates, rivals = _differences(game, ring)
        now = against + rivals
        if len(set(mates)) < len(mates) or together & set(mates) or max(now.values()) > 2:
            continue
        rest = _filled(
            [seat for seat in left if seat not in game[0] + game[1]], together | set(mates), now, ring, effort
        )
        if rest is not None:
            return [game, *rest]
    return None


def _games(left: list[int]) -> Iterator[Game]:
    """Every game of the first player left."""
    first, *others = left
    for mate in others:
        rivals = [seat for seat in others if seat != mate]
        for at, one in enumerate(rivals):
            for other in rivals[at + 1 :]:
                yield (first, mate), (one, other)


def _differences(game: Game, ring: int) -> tuple[list[int], Counter[int]]:
    """How far round the ring mates and rivals stand from each other; those of the player who stays are always new."""
    (a, b), (c, d) = game
    mates = [_apart(x, y, ring) for x, y in ((a, b), (c, d)) if STAYS not in (x, y)]
    rivals = Counter(_apart(x, y, ring) for x in (a, b) for y in (c, d) if STAYS not in (x, y))
    return mates, rivals


def _apart(one: int, other: int, ring: int) -> int:
    return min((one - other) % ring, (other - one) % ring)
