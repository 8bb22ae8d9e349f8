"""The evidence room itself: typed, one home per number, errors that teach."""

from dataclasses import fields

import pytest

from turnout.evidence import Check, Unknown, checks, number, reference, references, value, values
from turnout.evidence.loader import _check, _once, _value
from turnout.problems import TurnoutError


def test_a_number_knows_where_it_comes_from() -> None:
    mass = value("ball.size5.mass")
    assert (mass.value, mass.low, mass.high, mass.unit, mass.mark) == (0.43, 0.41, 0.45, "kg", "relayed")
    assert reference(mass.ref).title.startswith("Laws of the Game")


def test_numbers_are_numbers_and_words_stay_words() -> None:
    assert number("unit.yard") == 0.9144
    assert value("format.ENG.2026.u7.players").value == "3v3"


def test_a_band_without_a_value_is_no_number() -> None:
    with pytest.raises(TurnoutError, match=r"only a band from 28\.6 to 34\.5"):
        number("kick.max.adult")


def test_a_mistyped_key_names_the_nearest() -> None:
    with pytest.raises(Unknown, match=r"“slide\.my”.*Did you mean “slide\.mu”"):
        value("slide.my")
    with pytest.raises(Unknown, match="Did you mean “ifab-law1”"):
        reference("ifab-law-1")


def test_every_source_named_is_on_file() -> None:
    named = {each.ref for each in (*values().values(), *checks())}
    assert named <= set(references())


def test_bands_hold_their_values() -> None:
    banded = [each for each in values().values() if isinstance(each.value, float)]
    low = [each.key for each in banded if each.low is not None and each.number < each.low]
    high = [each.key for each in banded if each.high is not None and each.number > each.high]
    assert (low, high) == ([], [])


def test_own_choices_cite_no_study() -> None:
    studies = {each.ref for each in values().values() if each.mark == "own"} - {"own-choice"}
    assert studies == {"daqi"}  # its bands are read, only the trigger is ours


def test_a_remembered_published_figure_warns_and_the_rest_fails() -> None:
    gates = {check.id: check.gate for check in checks()}
    assert gates["ball-04"] == "warn"  # roll bands from memory
    assert gates["ball-12a"] == gates["ball-03"] == gates["adults-8-13"] == "fail"
    assert gates["motion-02-10"] == "fail"  # parameters remembered, but the arithmetic is exact


def test_a_number_may_have_one_home_only() -> None:
    with pytest.raises(TurnoutError, match="“a” stands twice"):
        _once([{"key": "a"}, {"key": "a"}], "key")


def test_unknown_marks_and_statuses_are_refused() -> None:
    row = {"key": "a", "value": "1", "unit": "m", "low": "", "high": "", "about": "", "ref": "", "locus": ""}
    with pytest.raises(TurnoutError, match="marked “guess”"):
        _value({**row, "mark": "guess"})
    with pytest.raises(TurnoutError, match="status “done”"):
        _check({"id": "x", "kind": "definition", "status": "done"})


def test_a_row_is_fitted_or_tested_exactly_where_it_is_an_output() -> None:
    row = dict.fromkeys((field.name for field in fields(Check)), "")
    row |= {"id": "x", "kind": "published", "status": "not yet"}
    with pytest.raises(TurnoutError, match="use “guess”"):
        _check({**row, "use": "guess"})
    for use, part in (("simulator output", ""), ("own code", "fit")):
        with pytest.raises(TurnoutError, match="fitted or tested"):
            _check({**row, "use": use, "part": part})
    assert _check({**row, "use": "simulator output", "part": "test"}).part == "test"
