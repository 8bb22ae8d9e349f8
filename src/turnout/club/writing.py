"""Writing an edited file back: only when it still reads as what it is, whatever kind of file that is."""

from collections import Counter
from collections.abc import Callable
from pathlib import Path

from turnout.club.check import check_document
from turnout.problems import BadInput, Problem
from turnout.reading import load_text
from turnout.reading.edit import Draft
from turnout.reading.whole import read_draft, write_draft


def edit_file(path: str | Path, change: Callable[[Draft], Draft], *, stamp: str | None = None) -> tuple[Draft, str]:
    """Change the file at `path` and answer with what it now is and its stamp.

    stamp: names the content the editor saw; without it, what the file holds now. Raises BadInput, the file untouched,
    when the change cannot be made exactly, brings a fault the file had not, or the content is another by now.
    """
    before, seen = read_draft(path)
    after = change(before)
    if fresh := new_faults(before, after):
        raise BadInput(fresh)
    return after, write_draft(path, after, seen if stamp is None else stamp)


def new_faults(before: Draft, after: Draft) -> list[Problem]:
    """The errors an edit brings: those of the draft after it that the draft before did not have."""
    known = Counter(map(_said, errors(before)))
    fresh = []
    for problem in errors(after):
        if known[_said(problem)]:
            known[_said(problem)] -= 1
        else:
            fresh.append(problem)
    return fresh


def errors(draft: Draft) -> list[Problem]:
    """Everything wrong with a draft, doubts left out."""
    found = check_document(load_text(draft.text, draft.file))
    return [problem for problem in found if problem.severity == "error"]


def _said(problem: Problem) -> tuple[str, str]:
    return problem.read, problem.expected
