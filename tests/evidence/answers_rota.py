"""The rotation rows: worked designs counted pair by pair, and the arithmetic of fair turns."""

from collections import Counter
from itertools import combinations

from asking import Departure, Given, answers

from turnout.evidence import Design, design
from turnout.rota.designs import fewest_equal_periods, in_turn, rounds_of_pairs
from turnout.rota.mixing import counting_bound, unrepeated_rounds
from turnout.rota.whist import whist_rounds


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


@answers("des-rr")
def round_robin(given: Given) -> str:
    even, odd = rounds_of_pairs(8), rounds_of_pairs(9)
    for players, rounds in ((8, even), (9, odd)):
        met = Counter(tuple(sorted(pair)) for pairs in rounds for pair in pairs)
        assert every(met, players) == 1
    byes = Counter(player for pairs in odd for player in set(range(9)) - {p for pair in pairs for p in pair})
    assert set(byes.values()) == {1} and len(byes) == 9
    return f"{'n-1' if len(even) == 7 else len(even)}; {'n' if len(odd) == 9 else len(odd)} with one bye each"


def turns(players: int, places: int, periods: int) -> list[int]:
    on = Counter(player for period in in_turn(players, places, periods) for player in period)
    return [on[player] for player in range(players)]


@answers(*(f"des-time-{pair}" for pair in ("7-5", "9-7", "10-8", "11-9", "12-9", "14-10")))
def equal_time(given: Given) -> str:
    players, places = int(given["n"]), int(given["places"])
    periods = next(each for each in range(1, players + 1) if len(set(turns(players, places, each))) == 1)
    assert periods == fewest_equal_periods(players, places)
    return f"{periods} periods; each plays {turns(players, places, periods)[0]}"


@answers("des-time-gen")
def turns_never_differ_by_more_than_one(given: Given) -> tuple[int, ...]:
    cases = ((n, p, periods) for n in range(2, 23) for p in range(1, n + 1) for periods in range(1, 16))
    return tuple(max(turns(*case)) - min(turns(*case)) for case in cases)


# ---- schedulers


@answers("des-wh8-tool")
def whist_by_our_scheduler(given: Given) -> str:
    players, rounds = (int(each) for each in given.numbers)
    found = whist_rounds(players)
    assert found is not None and len(found) == rounds and {len(games) for games in found} == {2}  # two areas
    ours = Design("ours", tuple(tuple(side for game in games for side in game) for games in found), opposed=True)
    assert everyone_once(ours)
    partner, oppose = every(together(ours), players), every(against(ours), players)
    return f"every pair partners {TIMES[partner]} and opposes {TIMES[oppose]}"


def most_rounds(groups: int, size: int) -> int:
    """Rounds our scheduler reaches, counted pair by pair and proven the most there can be."""
    found = unrepeated_rounds(groups, size)
    ours = Design("ours", found.rounds, opposed=False)
    assert everyone_once(ours) and {len(group) for groups in ours.rounds for group in groups} == {size}
    assert max(together(ours).values()) == 1 and found.optimal
    return len(found.rounds)


@answers("des-15-3")
def fifteen_in_threes(given: Given) -> int:
    players, size = int(given["n"]), int(given["g"])
    return most_rounds(players // size, size)


@answers(*(f"des-opt-{each}" for each in ("3x3", "5x3", "2x4", "3x4")))
@answers(*(f"des-lit-{each}" for each in ("7x3", "8x3", "9x3", "5x5")))
def most_rounds_without_a_repeat(given: Given) -> int:
    groups, size = (int(each) for each in given.numbers)
    return most_rounds(groups, size)


@answers("des-bound")
def never_more_than_the_bound(given: Given) -> Departure:
    worst = 0.0
    for groups, size in ((g, p) for g in range(2, 9) for p in range(2, 25 // g + 1)):
        mates = groups * size - 1
        most = next(rounds for rounds in range(mates + 1) if (rounds + 1) * (size - 1) > mates)
        worst = max(worst, abs(counting_bound(groups, size) - most))
        assert len(unrepeated_rounds(groups, size).rounds) <= most
    return Departure(worst)
