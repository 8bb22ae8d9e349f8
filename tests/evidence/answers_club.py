"""Rows about match formats, the full pitch and the load of a week: answered by club."""

from datetime import date

from asking import Given, answers

from turnout.club.formats import match_format
from turnout.club.load import session_load, week_of
from turnout.club.pitch import pitch_faults
from turnout.evidence import checks

FORMATS = ("u7-2026-09", "u9-2026-09", "u11-2026-09", "u13-2026-09", "u14-2026-09", "u13-2026-05", "u11-2026-05")


@answers(*(f"fmt-{each}" for each in FORMATS), how="looked up")
def format_offered(given: Given) -> str:
    age = int(str(dict.__getitem__(given, "age")).removeprefix("U"))
    offered = match_format(age=age, on=date.fromisoformat(given.text.partition("date=")[2].strip()))
    assert offered is not None
    return offered.sides


@answers("pitch-valid", how="looked up")
def lawful_pitch(given: Given) -> str:
    shortest, longest, narrowest, widest = (abs(each) for each in given.numbers)
    assert pitch_faults(touchline_m=longest, goal_line_m=widest) == ()
    assert pitch_faults(touchline_m=shortest, goal_line_m=narrowest) == ()
    for touchline_m, goal_line_m in ((shortest - 1, narrowest), (longest + 1, widest)):
        assert len(pitch_faults(touchline_m=touchline_m, goal_line_m=goal_line_m)) == 1
    for goal_line_m in (narrowest - 1, widest + 1):
        assert len(pitch_faults(touchline_m=longest, goal_line_m=goal_line_m)) == 1
    return " and ".join(pitch_faults(touchline_m=shortest, goal_line_m=widest))


# ---- load

WEEK = Given(next(check.inputs for check in checks() if check.id == "load-02")).numbers


@answers("load-01")
def load_of_a_session(given: Given) -> float:
    return session_load(minutes=given.numbers[0], effort=given.numbers[-1])


@answers("load-02")
def load_of_a_week(given: Given) -> float:
    return week_of(given.numbers).total


@answers("load-03")
def strain_by_population(given: Given) -> tuple[float, ...]:
    week = week_of(WEEK, spread="population")
    return (week.monotony or 0.0, week.strain or 0.0)


@answers("load-04")
def strain_by_sample(given: Given) -> tuple[float, ...]:
    week = week_of(WEEK, spread="sample")
    return (week.monotony or 0.0, week.strain or 0.0)


@answers("load-05")
def monotony_of_six_equal_days(given: Given) -> tuple[float, ...]:
    load, days, rest = given.numbers
    week = (*[load] * int(days), rest)
    return (week_of(week).monotony or 0.0, week_of(week, spread="sample").monotony or 0.0)


@answers("load-06")
def equal_days(given: Given) -> str:
    weeks = [week_of([day] * 7, spread=spread) for day in (0.0, 0.1, 300.0) for spread in ("population", "sample")]  # type: ignore[arg-type]
    undefined = all(week.monotony is None and week.strain is None for week in weeks)
    return "undefined, handled" if undefined else "a number"


@answers("load-07")
def grassroots_week(given: Given) -> float:
    pairs = zip(given.numbers[::2], given.numbers[1::2], strict=True)
    return week_of([session_load(minutes=minutes, effort=effort) for minutes, effort in pairs]).total
