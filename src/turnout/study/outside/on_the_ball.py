"""Rows about passing, the touch and looking round, adult match figures held against eight against eight keep-ball."""

from dataclasses import replace
from itertools import pairwise

from turnout.study.outside.measures import failed_passes_per_min, lost_per_min, pass_success, scored_share, share, total
from turnout.study.outside.passes import completion, mean_speed_mps, on_ball_s, touches_per_hold
from turnout.study.outside.plays import Change, Play, Run
from turnout.study.outside.register import row

ADULTS = Play("keep-ball", 8, 8, (40.0, 60.0), 18, "strong")
LOOKING = "SCAN"
BEGINNERS = Play("end zones", 5, 5, (20.0, 30.0), 11, "new")
CLUB = Play("end zones", 5, 5, (20.0, 30.0), 14, "settled")
DUEL = Play("end zones", 1, 1, (12.0, 20.0), 18, "strong")
FREE = Play("keep-ball", 4, 4, (20.0, 25.0), 18, "settled")
TWO_TOUCH = replace(FREE, more=("Everyone has 2 touches.",))
ONE_TOUCH = replace(FREE, more=("Everyone has 1 touch.",))


@row("pass-01", ADULTS, figures=("5 m more: 5-10 m", "10-15 m", "15-20 m", "20-25 m", "25-30 m"))
def speed_rises_with_length(adults: Run) -> list[float]:
    speeds = [mean_speed_mps(adults, low, low + 5.0) for low in range(0, 30, 5)]
    return [after - before for before, after in pairwise(speeds)]


@row("pass-02", ADULTS, figures="m/s")
def speed_of_a_usual_pass(adults: Run) -> float:
    return mean_speed_mps(adults, 10.0, 15.0)


@row("pass-03", ADULTS, figures="share that arrives")
def completion_of_usual_passes(adults: Run) -> float:
    return completion(adults, 10.0, 25.0)


@row("pass-04", ADULTS, figures="points", needs=("S_PRESSED_OK",))
def cost_of_pressure(adults: Run) -> float:
    pressed = share(total(adults, "S_PRESSED_OK"), total(adults, "S_PRESSED"))
    free = total(adults, "S_COMPLETED") - total(adults, "S_PRESSED_OK")
    return 100 * (pressed - share(free, total(adults, "S_PASSES") - total(adults, "S_PRESSED")))


@row("pass-05", BEGINNERS, figures="share that arrives")
def beginners(run: Run) -> float:
    return pass_success(run)


@row("pass-06", CLUB, figures="share that arrives")
def club_players(run: Run) -> float:
    return pass_success(run)


@row("touch-01", ADULTS, figures="s")
def time_on_the_ball(adults: Run) -> float:
    return on_ball_s(adults)


@row("touch-02", ADULTS, figures="touches")
def touches(adults: Run) -> float:
    return touches_per_hold(adults)


@row("touch-04", DUEL, figures="share that gets past")
def take_ons(duel: Run) -> float:
    return scored_share(duel)


@row("scan-01", ADULTS, figures="looks a second", needs=("S_LOOKS",))
def looks_round(adults: Run) -> float:
    return share(total(adults, "S_LOOKS"), total(adults, "S_OFF_BALL"))


@row(
    "scan-02",
    replace(ADULTS, changes=(Change(LOOKING, "set", 20.0, side=0),)),
    replace(ADULTS, changes=(Change(LOOKING, "set", 0.0, side=0),)),
    figures="points",
)
def worth_of_looking(always: Run, never: Run) -> float:
    return 100 * (pass_success(always, 0) - pass_success(never, 0))


@row("dir-08", ONE_TOUCH, TWO_TOUCH, FREE, figures=("one less two touches, a minute", "one touch less free"))
def one_touch_loses(one: Run, two: Run, free: Run) -> tuple[float, float]:
    return lost_per_min(one) - lost_per_min(two), lost_per_min(one) - lost_per_min(free)


@row("dir-09", replace(TWO_TOUCH, age=15), replace(FREE, age=15), figures="failed passes more a minute")
def two_touch_fails(two: Run, free: Run) -> float:
    return failed_passes_per_min(two) - failed_passes_per_min(free)


@row(
    "dir-11",
    replace(ADULTS, levels=((0, "scanning", "strong"),)),
    replace(ADULTS, levels=((0, "scanning", "new"),)),
    figures="share that arrives",
)
def scanning_pays(strong: Run, new: Run) -> float:
    return pass_success(strong, 0) - pass_success(new, 0)


@row("dir-10", ADULTS, figures="looks a second more when free", needs=("S_LOOKS_PRESSED", "S_NEAR_S"))
def looks_when_free(adults: Run) -> float:
    near, near_s = total(adults, "S_LOOKS_PRESSED"), total(adults, "S_NEAR_S")
    free_s = total(adults, "S_TIME") - near_s
    return share(total(adults, "S_LOOKS") - near, free_s) - share(near, near_s)
