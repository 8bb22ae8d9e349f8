"""Races for a ball, aims, runs of passes, scoring as a game, another program's game: answered by play and study."""

from fractions import Fraction
from random import Random

from asking import Departure, Given, answers

from turnout.play import aim
from turnout.play.race import control_rate_per_s, mean_control_s, race_shares
from turnout.study.outside.other_rules import holder_sees, stepped_roll_m
from turnout.study.points import Zones, best_play, guarded_zones
from turnout.study.runs import expected_run

# ---- races, aims, runs


@answers("race-A-0", "race-A-0.25", "race-A-0.5", "race-A-1", "race-A-2")
def attacker_share(given: Given) -> float:
    rate_per_s, advantage = given["lambda"], given["kappa"]
    lateness_s = given.numbers[-2:]
    rates = (rate_per_s, rate_per_s * advantage)
    return race_shares(lateness_s=lateness_s, rates_per_s=rates, spread_s=given["sigma"])[0]


@answers("race-02")
def attacker_against_a_keeper(given: Given) -> float:
    rates = (control_rate_per_s(setting="A"), control_rate_per_s(setting="A", keeper=True))
    return race_shares(lateness_s=(0.0, 0.0), rates_per_s=rates)[0]


@answers("race-03")
def control_time(given: Given) -> float:
    return mean_control_s(rate_per_s=given["lambda"])


@answers("pass-07")
def passes_per_possession(given: Given) -> float:
    return expected_run(pass_success=given["p"])


@answers("pass-09")
def spread_that_keeps_a_metre(given: Given) -> tuple[float, ...]:
    return tuple(aim.spread_deg(distance_m=each, within_m=1.0, share=0.95) for each in given.numbers)


# ---- scoring as a game


@answers("game-penalty")
def penalty(given: Given) -> tuple[float, ...]:
    a, b, c, d = given.numbers[:4]
    play = best_play([[a, b], [c, d]])
    return float(play.attack[0]), float(play.guard[0]), float(play.value)


@answers("game-3x3")
def three_by_three(given: Given) -> tuple[float, ...]:
    cells = given.numbers
    play = best_play([cells[:3], cells[3:6], cells[6:9]])
    value = round(float(play.value), 3)  # the row prints three decimals of it, beside four of the shares
    return (*map(float, (*play.attack, *play.guard)), value)


@answers("game-rps")
def even_games(given: Given) -> str:
    rps, pennies = best_play([[0, -1, 1], [1, 0, -1], [-1, 1, 0]]), best_play([[1, -1], [-1, 1]])
    names = {Fraction(1, 3): "thirds", Fraction(1, 2): "halves"}
    mixed = [{names[share] for share in play.attack + play.guard} for play in (rps, pennies)]
    assert rps.value == pennies.value
    return f"{'; '.join(name for names in mixed for name in names)}; value {rps.value}"


@answers("game-2x2")
def two_by_two(given: Given) -> Departure:
    draw, worst, saddles = Random(7), 0.0, 0
    for _ in range(300):
        a, b, c, d = (draw.uniform(-5, 5) for _ in range(4))
        play = best_play([[a, b], [c, d]])
        saddles += play.saddle
        if play.saddle:  # a row's least entry that is its column's greatest
            stated = (max(min(a, b), min(c, d)),)
            ours = (float(play.value),)
            assert stated[0] == min(max(a, c), max(b, d))
        else:
            below = a - b - c + d
            stated = ((d - c) / below, (d - b) / below, (a * d - b * c) / below)
            ours = (float(play.attack[0]), float(play.guard[0]), float(play.value))
        worst = max(worst, *(abs(x - y) for x, y in zip(ours, stated, strict=True)))
    assert 50 < saddles < 250  # both cases were tried
    return Departure(worst)


def told(zones: Zones) -> str:
    attack, guard = (" ".join(map(str, shares)) for shares in (zones.attack, zones.guard))
    return f"V {zones.value}; p {attack}; q {guard}"


@answers("game-zone-111", "game-zone-112", "game-zone-234")
def guarded(given: Given) -> str:
    points = [int(each) for each in given.numbers]
    ours = guarded_zones(points)
    gains = [[0 if stands == goes else worth for stands in range(3)] for goes, worth in enumerate(points)]
    assert best_play(gains).value == ours.value  # the solver of any table agrees
    return told(ours)


@answers("game-zone-law")
def zones_in_use_are_worth_the_same(given: Given) -> Departure:
    draw, worst, left_out = Random(3), 0.0, 0
    for _ in range(200):
        points = [draw.uniform(0.2, 6) for _ in range(draw.randint(2, 5))]
        zones = guarded_zones(points)
        worth = [float(point * (1 - share)) for point, share in zip(points, zones.guard, strict=True)]
        used = [each for each, share in zip(worth, zones.attack, strict=True) if share > 0]
        unused = [each for each, share in zip(worth, zones.attack, strict=True) if share == 0]
        left_out += bool(unused)
        assert sum(zones.attack) == sum(zones.guard) == 1 and max(unused, default=0) <= min(used) + 1e-12
        worst = max(worst, max(used) - min(used))
    assert 20 < left_out < 180  # with and without zones that are not worth going for
    return Departure(worst)


# ---- another program's game

STRUCK_MPS = 10.0


@answers("keep-decay")
def ball_of_another_program(given: Given) -> float:
    keeps, step_s = given.numbers
    return stepped_roll_m(speed_mps=STRUCK_MPS, keeps=keeps, step_s=step_s)


@answers("keep-state")
def state_of_keep_ball(given: Given) -> int:
    keepers, takers = (int(each) for each in given.numbers)
    where = [(float(each), float(each * each)) for each in range(keepers + takers)]
    distances, angles = holder_sees(keepers=where[:keepers], takers=where[keepers:])
    assert (len(distances), len(angles)) == (11, 2)
    return len(distances) + len(angles)
