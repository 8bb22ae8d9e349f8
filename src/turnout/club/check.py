"""Everything wrong in one file, whatever kind it is: practice, session, tonight or squad."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

from turnout.club.keys import FILES
from turnout.club.read import squad_of, tonight_of
from turnout.practice.read import practice_of
from turnout.practice.shelf import SHELF, practice_files
from turnout.problems import BadInput, Problem
from turnout.reading import Document, Pairs, Report, load, nearest
from turnout.reading.report import in_order
from turnout.session.read import session_of

Reader = Callable[[Document, Report], Any]
KINDS = tuple(FILES)


def check_file(path: str | Path) -> list[Problem]:
    """Every problem and doubt of the file at `path`, in order; an empty list when it is good."""
    try:
        document = load(path)
    except BadInput as error:
        return error.problems
    return check_document(document)


def check_document(document: Document) -> list[Problem]:
    """Every problem and doubt of a file that has been read as YAML, in order."""
    report = Report(document.file, document.problems)
    reader = readers(Path(document.file)).get(kind_of(document) or "")
    if reader is None:
        say_kinds(document, report)
    else:
        reader(document, report)
    return in_order(report.problems)


def readers(path: Path) -> dict[str, Reader]:
    """The reader of each kind of file."""
    beside = path.parent

    def session(document: Document, report: Report) -> Any:
        return session_of(document, report, practice_files((beside, beside.parent, SHELF)))

    return {"practice": practice_of, "session": session, "tonight": tonight_of, "squad": squad_of}


def kind_of(document: Document) -> str | None:
    """What a file says it is: the first of its keys that is a kind."""
    root = document.root
    keys = [key.value for key, _ in root.entries] if isinstance(root, Pairs) else []
    return next((key for key in keys if key in KINDS), None)


def say_kinds(document: Document, report: Report) -> None:
    """Fault a file that does not say what it is."""
    root = document.root
    wanted = "a file begins with its kind: “practice: its name”, “session: …”, “tonight:” or “squad: …”"
    if isinstance(root, Pairs) and root.entries:
        first = root.entries[0][0]
        report.add(first, wanted, near=nearest(first.value, KINDS))
    else:
        report.add(root, wanted)
