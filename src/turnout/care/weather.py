"""Heat, cold and thunder: the figures behind the cautions. Estimates; the coach's own eyes and local rules decide."""

from collections.abc import Iterable
from dataclasses import dataclass
from math import exp
from typing import Literal

from turnout.evidence import number

HEAT_BANDS = ("green", "amber", "orange", "red", "black")
HeatBand = Literal["green", "amber", "orange", "red", "black"]
Verdict = Literal["STOP", "CAUTION", "go"]


@dataclass(frozen=True)
class HeatTable:
    """Keys in the evidence room of what one country says; None: nothing was found, so England's serves."""

    bands: str | None  # stem of the keys of where each band starts
    air_stop: str | None
    air_caution: str | None


ENGLAND = HeatTable("heat.wbgt.uk-default-cat1", "heat.air.uk-children.stop", None)
HEAT = {
    "England": ENGLAND,
    "Australia": HeatTable(None, "heat.air.aus-children.stop", "heat.air.aus-children.modify"),
    "USA": HeatTable("heat.wbgt.us-hot-cat3", None, None),
}


def wbgt_estimate_c(*, air_c: float, humidity_pct: float) -> float:
    """Wet-bulb globe temperature, deg C, from air temperature and relative humidity (0 to 100 per cent) alone.

    0.567 T + 0.393 e + 3.94, e = RH / 100 * 6.105 exp(17.27 T / (237.7 + T)) hPa (evidence: bom-wbgt). It takes sun
    and a light wind for granted, so it errs high in cloud or wind. Raises ValueError on a humidity off the scale.
    """
    if not 0 <= humidity_pct <= 100:
        raise ValueError(f"relative humidity is 0 to 100 per cent, not {humidity_pct}")
    vapour_hpa = humidity_pct / 100 * 6.105 * exp(17.27 * air_c / (237.7 + air_c))
    return 0.567 * air_c + 0.393 * vapour_hpa + 3.94


def heat_band(*, wbgt_c: float, country: str = "England") -> HeatBand:
    """The band of a wet-bulb globe temperature, green to black; black is a stop. Other countries: England's table.

    The USA's table is that of its hottest region; each region has its own.
    """
    stem = HEAT.get(country, ENGLAND).bands or ENGLAND.bands
    starts = [number(f"{stem}.{band}") for band in HEAT_BANDS[1:]]
    return HEAT_BANDS[sum(wbgt_c >= start for start in starts)]  # type: ignore[return-value]


def air_heat(*, air_c: float, country: str = "England") -> Verdict:
    """What the air temperature alone says of children's hard play: STOP above the country's limit."""
    table = HEAT.get(country, ENGLAND)
    if air_c > number(table.air_stop or str(ENGLAND.air_stop)):
        return "STOP"
    return "CAUTION" if table.air_caution and air_c >= number(table.air_caution) else "go"


def wind_chill_c(*, air_c: float, wind_kmph: float) -> float:
    """What cold and wind together feel like, deg C; the air temperature itself above 10 deg C or in hardly any wind.

    13.12 + 0.6215 T - 11.37 v^0.16 + 0.3965 T v^0.16, v in km/h at 10 m (evidence: wind-chill).
    """
    if wind_kmph < number("cold.chill.wind-from") or air_c > number("cold.chill.air-to"):
        return air_c
    breeze = wind_kmph**0.16
    return 13.12 + 0.6215 * air_c - 11.37 * breeze + 0.3965 * air_c * breeze


def cold(*, chill_c: float) -> Verdict:
    """What a wind chill says of children's practice: CAUTION below 0, STOP below -10 deg C (both our own choice)."""
    stop_c, caution_c = number("cold.chill.uk.stop"), number("cold.chill.uk.amber")
    return "STOP" if chill_c < stop_c else "CAUTION" if chill_c < caution_c else "go"


def thunder_clear_min(thunder_min: Iterable[float]) -> float | None:
    """The minute from which play may go on after thunder or flashes at `thunder_min`; None when there was none.

    Thirty minutes after the last one: each new one starts the wait again (evidence: lightning).
    """
    heard = list(thunder_min)
    return max(heard) + number("lightning.resume") if heard else None
