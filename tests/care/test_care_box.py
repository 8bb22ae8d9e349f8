"""The care box shows each caution exactly when its trigger holds."""

import re
from datetime import date

import pytest

from turnout.care import adults_needed, care_box, youngest_age
from turnout.care.national import HEADING, ORIGINS, SUPERVISION
from turnout.evidence import reference, value

CALM = {
    "players": 14,
    "age": 13,
    "adults": 2,
    "first_aider": True,
    "uses_goals": False,
    "run_off_m": 3.0,
    "outdoors": True,
    "country": "England",
}


def levels(**changes):
    return {caution.key: caution.level for caution in care_box(**{**CALM, **changes})}


# what changes, the caution's key, its level with the change, its level without it (None: not shown)
TRIGGERS = [
    ({"uses_goals": True}, "goals", "stop", None),
    ({"run_off_m": 2.9}, "run-off", "caution", "default"),
    ({"run_off_m": 1.5}, "run-off", "caution", "default"),
    ({"run_off_m": 1.4}, "run-off", "stop", "default"),
    ({"adults": None}, "adults", "caution", "default"),
    ({"adults": 1}, "adults", "stop", "default"),
    ({"adults": 0}, "adults", "stop", "default"),
    ({"players": 17}, "adults", "caution", "default"),  # 17 of 11 and up need three
    ({"players": 16}, "adults", "default", "default"),
    ({"adults": 1}, "alone", "stop", "default"),
    ({"adults": None}, "alone", "default", "default"),
    ({"first_aider": None}, "first aider", "caution", None),
    ({"first_aider": False}, "first aider", "caution", None),
    ({"outdoors": False}, "thunder", None, "stop"),
    ({"age": 11}, "heading", "stop", None),
    ({"age": 7}, "heading", "stop", None),
    ({"age": 12}, "heading", None, None),
    ({"players": 6}, "head knock", "stop", "stop"),
    ({"players": 6}, "boots", "default", "default"),
]


@pytest.mark.parametrize(("change", "key", "with_it", "without"), TRIGGERS)
def test_a_caution_appears_at_its_trigger_and_not_otherwise(change, key, with_it, without):
    assert levels().get(key) == without
    assert levels(**change).get(key) == with_it


def test_a_trigger_changes_its_own_row_only():
    shown = levels()
    with_goals = levels(uses_goals=True)
    assert with_goals.pop("goals") == "stop"
    assert with_goals == shown


@pytest.mark.parametrize(
    ("age", "players", "need"),
    # U10: youngest 8, 1 to 6 · U11 to U14: 9 to 12, 1 to 8 · U15: 13, 1 to 10; two at the least
    [
        (10, 12, 2),
        (10, 13, 3),
        (11, 13, 2),
        (11, 17, 3),
        (14, 24, 3),
        (14, 25, 4),
        (15, 20, 2),
        (15, 21, 3),
        (18, 6, 2),
    ],
)
def test_adults_follow_the_lower_bound_of_the_age_group(age, players, need):
    assert adults_needed(players=players, age=age) == need


def test_under_twelves_may_be_ten_when_the_season_starts():
    assert youngest_age(12) == 10


@pytest.mark.parametrize("country", ["England", "Scotland", "USA", "Germany"])
@pytest.mark.parametrize("age", [7, 11, 12, 16])
def test_every_line_is_short_sourced_and_dated(country, age):
    for adults in (None, 0, 1, 2, 5):
        for caution in care_box(**{**CALM, "uses_goals": True, "age": age, "country": country, "adults": adults}):
            assert 1 <= len(caution.do_now.split()) <= 12, caution.do_now
            assert caution.why.endswith(".")
            assert re.search(r", (19|20)\d\d|, undated|common practice, no source", caution.source), caution.source


def test_the_gravest_come_first():
    order = [caution.level for caution in care_box(**{**CALM, "uses_goals": True, "adults": None})]
    assert order == sorted(order, key=["stop", "caution", "default"].index)


def test_a_country_without_its_own_row_is_told_to_ask():
    sources = {caution.key: caution.source for caution in care_box(**{**CALM, "age": 10, "country": "Germany"})}
    assert "ask your association" in sources["adults"]
    assert "ask your association" in sources["heading"]
    assert not any("999" in caution.why for caution in care_box(**{**CALM, "country": "Germany"}))


def test_values_older_than_400_days_say_so():
    fresh = care_box(**CALM, on=date(2026, 12, 1))
    old = care_box(**CALM, on=date(2028, 10, 6))
    assert not any("ask your association" in caution.why for caution in fresh)
    assert any("ask your association" in caution.why for caution in old)


def test_sources_and_years_are_those_of_the_evidence_room():
    for origin in ORIGINS:
        assert reference(origin.reference).year == origin.year, origin.name
    for row in (*SUPERVISION, *HEADING):
        assert value(row.value).ref == row.origin.reference
