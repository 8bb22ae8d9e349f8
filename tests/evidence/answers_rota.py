"""The rotation rows: worked designs counted pair by pair, and the arithmetic of fair turns."""

from collections import Counter
from itertools import combinations

from asking import Given, answers

from turnout.evidence import Design, design


def together(given: Design) -> Counter[tuple[int, int]]:
    """How often each pair of a design stands in one group."""
    groups = (group for groups in given.rounds for group in groups)
    return Counter(pair for group in groups for pair in combinations(sorted(group), 2))


def against(given: Design) -> Counter[tuple[int, int]]:
    """How often each pair of a design meets as opponents."""
    games = ((a, b) for groups in given.rounds for a, b in zip(groups[::2], groups[1::2], strict=True))
    return Counter(tuple(sorted((x, y))) for a, b in games for x in a for y in b)  # type: ignore[misc]


def everyone_once(given: Design) -> bool:
    """Whether every round holds every player exactly once."""
    return all(sorted(p for group in groups for p in group) == list(range(given.players)) for groups in given.rounds)


def every(counts: Counter[tuple[int, int]], players: int) -> int:
    """The one number of times every pair of `players` comes up; fails when pairs differ."""
    times = {counts[pair] for pair in combinations(range(players), 2)}
    assert len(times) == 1, f"pairs come up {sorted(times)} times"
    return times.pop()


TIMES = {1: "once", 2: "twice"}


@answers("des-wh8")
def whist_of_eight(given: Given) -> str:
    whist = design("whist-8")
    assert everyone_once(whist)
    partner, oppose = together(whist), against(whist)
    return (
        f"{len(whist.rounds)} rounds; {len(partner)} pairs partner {TIMES[every(partner, 8)]}; "
        f"{len(oppose)} pairs oppose {TIMES[every(oppose, 8)]}"
    )


@answers("des-kirkman")
def kirkman_week(given: Given) -> str:
    week = design("kirkman-15")
    assert everyone_once(week) and len(week.rounds) == 7
    return f"{len(together(week))} pairs {TIMES[every(together(week), 15)]} each"


@answers("des-k6")
def defender_pairs(given: Given) -> str:
    pairs = design("pairs-6")
    assert sum(len(block) for block in pairs.rounds) == 15
    each_block = "once per block" if everyone_once(pairs) else "not once per block"
    return f"every pair defends together {TIMES[every(together(pairs), 6)]}; each {each_block}"


def halves(players: int) -> str:
    games = design(f"halves-{players}")
    assert everyone_once(games) and all(len(group) == players // 2 for pair in games.rounds for group in pair)
    return f"every pair together {every(together(games), players)}"


@answers("des-half-6")
def halves_of_six(given: Given) -> str:
    assert len(design("halves-6").rounds) == given.numbers[0]
    return halves(6)


@answers("des-half-8")
def halves_of_eight(given: Given) -> str:
    assert len(design("halves-8").rounds) == given.numbers[0]
    return f"{halves(8)}, apart {every(against(design('halves-8')), 8)}"


@answers("des-half-10")
def halves_of_ten(given: Given) -> str:
    assert len(design("halves-10").rounds) == given.numbers[0]
    return halves(10)


@answers("des-half-14")
def halves_of_fourteen(given: Given) -> str:
    assert len(design("halves-14").rounds) == given.numbers[0]
    return halves(14)
