"""Say at the end of a test run how much of the evidence is answered, and what is not yet."""

from collections import Counter

import pytest


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    from turnout.evidence import checks

    by = Counter(check.status for check in checks())
    topics = Counter(check.topic for check in checks() if check.status == "not yet")
    terminalreporter.write_line(
        f"evidence: {by['computed']} checks computed, {by['looked up']} looked up, {by['simulated']} simulated, "
        f"{by['not yet']} not answered: " + ", ".join(f"{topic} {count}" for topic, count in topics.items())
    )
