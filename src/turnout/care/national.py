"""National values of the care box, as data. Older than 400 days: the box says to ask the association."""

from datetime import date, timedelta

from turnout.care.model import National, Origin

CHECKED_ON = date(2026, 11, 25)  # taken over from the evidence room
STALE_AFTER = timedelta(days=400)

UK = ("England", "Scotland", "Wales", "Northern Ireland")
ELSEWHERE = "elsewhere"

NSPCC = Origin("NSPCC ratios", None, "nspcc-ratios")
FA_HEADING = Origin("FA heading guidance, training", 2020, "fa-heading-2020")
SFA_HEADING = Origin("Scottish FA heading guidelines", None, "sfa-heading")
US_HEADING = Origin("US Soccer heading rules", 2015, "us-heading")
GOALS = Origin("FA with HSE and BSI, goalpost safety", None, "goal-safety")
RUN_OFF = Origin("FA pitch and goalpost guide", 2012, "fa-goal-guide")
THUNDER = Origin("RoSPA 30/30 rule", None, "lightning")
CONCUSSION = Origin("UK concussion guidelines for grassroots sport", 2023, "uk-concussion")
FIRST_AID = Origin("FA accreditation", None, "fa-accreditation")
ORIGINS = (NSPCC, FA_HEADING, SFA_HEADING, US_HEADING, GOALS, RUN_OFF, THUNDER, CONCUSSION, FIRST_AID)
COMMON_PRACTICE = "common practice, no source"

# Children per adult, by the age of the youngest.
SUPERVISION = tuple(
    National("supervision", country, ages, key, NSPCC, None, CHECKED_ON)
    for country in (*UK, ELSEWHERE)
    for ages, key in (
        ((0, 8), "supervision.UK.4-8y"),
        ((9, 12), "supervision.UK.9-12y"),
        ((13, 99), "supervision.UK.13-18y"),
    )
)

# Headers a session in training by age group. The USA's weekly band for U12 and U13 is no single number and is left out.
_ENGLAND = "heading.training.ENG.u7-u11"
_FROM_2020 = date(2020, 2, 24)
HEADING = (
    National("heading", "England", (0, 11), _ENGLAND, FA_HEADING, _FROM_2020, CHECKED_ON),
    National("heading", "England", (12, 12), "heading.training.ENG.u12", FA_HEADING, _FROM_2020, CHECKED_ON, "month"),
    National("heading", "England", (13, 13), "heading.training.ENG.u13", FA_HEADING, _FROM_2020, CHECKED_ON, "week"),
    National(
        "heading", "England", (14, 16), "heading.training.ENG.u14-u16", FA_HEADING, _FROM_2020, CHECKED_ON, "week"
    ),
    National("heading", "Scotland", (0, 11), "heading.training.SCO.to-11", SFA_HEADING, None, CHECKED_ON),
    National("heading", "USA", (0, 11), "heading.training.USA.to-10", US_HEADING, date(2015, 11, 1), CHECKED_ON),
    National("heading", ELSEWHERE, (0, 11), _ENGLAND, FA_HEADING, _FROM_2020, CHECKED_ON),
)


def national(rule: str, *, country: str, age: int) -> National | None:
    """The country's own row for this age, else the row used elsewhere; None when neither speaks of the age."""
    rows = [row for row in (*SUPERVISION, *HEADING) if row.rule == rule]
    own = [row for row in rows if row.country == country] or [row for row in rows if row.country == ELSEWHERE]
    return next((row for row in own if row.ages[0] <= age <= row.ages[1]), None)


def is_stale(row: National, on: date) -> bool:
    """True when a national value was last looked up more than 400 days before `on`."""
    return on - row.checked_on > STALE_AFTER
