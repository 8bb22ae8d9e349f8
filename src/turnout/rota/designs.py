"""Exact turn orders: rounds of pairs by the circle method, and the arithmetic of equal time."""

from math import gcd

Pair = tuple[int, int]


def rounds_of_pairs(players: int) -> list[list[Pair]]:
    """Every pair of `players` (numbered from 0) once, in rounds where everybody is in one pair (circle method).

    With an odd number one player sits out in each round. Even n: n - 1 rounds; odd n: n rounds.
    """
    ring = list(range(players if players % 2 == 0 else players + 1))
    rounds = []
    for _ in range(len(ring) - 1):
        pairs = [(ring[place], ring[-1 - place]) for place in range(len(ring) // 2)]
        rounds.append([pair for pair in pairs if max(pair) < players])
        ring = [ring[0], ring[-1], *ring[1:-1]]
    return rounds


def fewest_equal_periods(players: int, places: int) -> int:
    """Fewest equal periods after which everybody has been on equally often: n / gcd(n, p)."""
    return players // gcd(players, places)


def least_spread(players: int, places: int, periods: int) -> int:
    """Most minus least turns that arithmetic allows for any turns at all: 0 when they share out evenly, else 1."""
    return 0 if (places * periods) % players == 0 else 1


def in_turn(players: int, places: int, periods: int) -> list[tuple[int, ...]]:
    """Who takes `places` in each period so that turns never differ by more than one: the next ones round the ring.

    The first ones (0, 1, ...) begin. Two places: every pair once before any comes again, where the steps round an odd
    ring reach them all (a prime number of players) or the number is even.
    """
    if places == 2 and players > 2:
        return _pairs_in_turn(players, periods)
    return [tuple((period * places + place) % players for place in range(places)) for period in range(periods)]


def _pairs_in_turn(players: int, periods: int) -> list[tuple[int, ...]]:
    if players % 2 == 0:
        named = [0, *range(2, players), 1]  # so that 0 and 1, not 0 and the last, are the first pair
        pairs = [(named[one], named[other]) for pairs in rounds_of_pairs(players) for one, other in pairs]
    else:
        pairs = [pair for step in _ring_steps(players) for pair in _ring(players, step)]
    return [pairs[period % len(pairs)] for period in range(periods)]


def _ring_steps(players: int) -> list[int]:
    """Steps that lead round all of an odd ring; each gives every player two turns in as many periods as players."""
    return [step for step in range(1, (players + 1) // 2) if gcd(step, players) == 1]


def _ring(players: int, step: int) -> list[Pair]:
    """Neighbours two by two, twice round the ring: after any number of periods turns differ by at most one."""
    order = [(place * step) % players for place in range(players)]
    return [(order[(2 * period) % players], order[(2 * period + 1) % players]) for period in range(players)]
