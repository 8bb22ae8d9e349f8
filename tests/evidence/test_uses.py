"""Every row of checks.csv is assigned: what answers it, and for outputs whether it is fitted to or kept for testing."""

from collections import defaultdict

from turnout.evidence import checks

OUTPUTS = [check for check in checks() if check.use == "simulator output"]


def test_rows_of_one_topic_or_one_source_are_not_half_fitted_half_tested() -> None:
    parts = defaultdict(set)
    for check in OUTPUTS:
        parts[check.topic].add(check.part)
        parts[check.ref].add(check.part)
    assert {name: found for name, found in parts.items() if len(found) > 1} == {}


def test_at_least_a_third_of_the_outputs_is_kept_for_testing() -> None:
    kept = [check for check in OUTPUTS if check.part == "test"]
    assert 3 * len(kept) >= len(OUTPUTS)
    for kind in ("published", "direction"):
        ours = [check for check in OUTPUTS if check.kind == kind]
        assert 3 * sum(check.part == "test" for check in ours) >= len(ours), kind


def test_what_is_not_answered_says_why_and_outputs_say_what_is_played() -> None:
    silent = [check.id for check in checks() if check.status == "not yet" and not check.why]
    silent += [check.id for check in OUTPUTS if not check.why]
    assert silent == []


def test_a_row_that_is_not_modelled_is_not_answered() -> None:
    answered = [check.id for check in checks() if check.use == "not modelled" and check.status != "not yet"]
    assert answered == []


def test_looked_up_answers_are_declared_as_such() -> None:
    wrong = [check.id for check in checks() if check.status == "looked up" and check.use not in ("look-up", "input")]
    assert wrong == []
