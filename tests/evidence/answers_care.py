"""Rows about weather, heading and a knock on the head: answered by care."""

from datetime import date

from asking import Given, answers

from turnout.care.head import heading_cap, return_after_knock
from turnout.care.weather import air_heat, heat_band, thunder_clear_min, wbgt_estimate_c, wind_chill_c


@answers("heat-28-60", "heat-30-40", "heat-30-60")
def wet_bulb_globe(given: Given) -> float:
    return wbgt_estimate_c(air_c=given["T"], humidity_pct=given["RH"])


@answers("heat-uk-bands", how="looked up")
def bands_of_heat(given: Given) -> str:
    return "; ".join(heat_band(wbgt_c=each) for each in given.numbers)


@answers("heat-uk-air", how="looked up")
def stop_by_air(given: Given) -> str:
    return air_heat(air_c=given.numbers[0])


@answers("cold-01")
def chill(given: Given) -> float:
    air_c, wind_kmph = given.numbers
    return wind_chill_c(air_c=air_c, wind_kmph=wind_kmph)


@answers("light-01")
def thunder_over(given: Given) -> float:
    return thunder_clear_min(given.numbers) or 0.0


@answers("head-u12", "head-u13", "head-u15", how="looked up")
def heading_caps(given: Given) -> str:
    cap = heading_cap(age=int(str(dict.__getitem__(given, "age")).removeprefix("U")))
    assert cap is not None
    often = {"month": "1 session a month", "week": "1 a week"}[str(cap.one_session_a)]
    return f"cap {cap.headers} per session, {often}"


@answers("conc-01", how="looked up")
def match_after_a_knock(given: Given) -> int:
    day_zero = date(2027, 2, 20)  # over the end of a month
    return (return_after_knock(day_zero).match - day_zero).days + int(given.numbers[0])
