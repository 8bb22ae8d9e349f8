"""Sentences that cannot hold together, and names nobody uses: what a reader of the whole practice would stop at.

Each finding stands at one sentence, quotes the other and says the smallest cure.
"""

from collections.abc import Callable

from turnout.practice.clash_changes import CHANGES
from turnout.practice.clash_ground import GROUND, lines_that_fit, no_direction
from turnout.practice.clash_limits import LIMITS
from turnout.practice.clash_parts import Case, Finding, Findings
from turnout.practice.clash_scores import SCORES
from turnout.practice.meaning import table
from turnout.practice.model import LINES, Practice

__all__ = ["CHECKS", "Finding", "contradictions"]

CHECKS: tuple[Callable[[Case], Findings], ...] = (*LIMITS, *SCORES, *CHANGES, *GROUND)


def contradictions(practice: Practice) -> list[Finding]:
    """Every contradiction (error) and doubt (warning), each at its sentence, each once."""
    if practice.ground[0].kind in (*LINES, "list"):
        return list(lines_that_fit(Case(practice, ())))
    case = Case(practice, table(practice))
    if lost := list(dict.fromkeys(no_direction(case))):
        return lost
    return list(dict.fromkeys(finding for check in CHECKS for finding in check(case)))
