"""Reading a session file: its parts, each a practice of the shelf with its steps taken."""

from collections.abc import Iterable, Mapping
from pathlib import Path

from turnout.practice.model import Practice
from turnout.practice.read import read_practice
from turnout.practice.read_small import whole, yes_or_no
from turnout.practice.shelf import SHELF, practice_files
from turnout.practice.steps import with_steps
from turnout.problems import BadInput, Problem
from turnout.reading import Document, Items, Node, Report, Text, load, nearest
from turnout.session.keys import AGE, EXPECTED, PART, SESSION, SUCCESS
from turnout.session.model import Part, Session

MOST_PARTS = 12


def read_session(path: str | Path, shelf_folders: Iterable[Path] = ()) -> Session:
    """The session in the file at `path`, its practices found in `shelf_folders`, beside the file or on the shelf;
    raises BadInput with every problem of the file and of the practices it names."""
    document = load(path)
    report = Report(document.file, document.problems)
    beside = Path(path).parent
    session = session_of(document, report, practice_files((*shelf_folders, beside, beside.parent, SHELF)))
    report.close()
    assert session is not None  # a session that could not be built has left an error behind
    return session


def session_of(document: Document, report: Report, files: Mapping[str, Path]) -> Session | None:
    """The session of a document, its faults added to `report`; `files` are practices by key."""
    root = report.pairs(document.root, "a session")
    if root is None:
        return None
    report.keys(root, SESSION.keys, "a session")
    report.needed(root, SESSION.needed, "a session")
    name, aim = report.text(root.get("session"), "the session's name"), report.text(root.get("aim"), "the aim")
    minutes = whole(root.get("minutes"), report, "minutes", *SESSION.whole("minutes"))
    parts = parts_of(root.get("parts"), report, files)
    expected, age = expected_of(root.get("expected"), report), age_of(root.get("for"), report)
    planned = sum(part.minutes for part in parts)
    if minutes and planned > minutes:
        report.add(root.key("minutes"), f"the parts take {planned:g} minutes, more than the {minutes} there are")
    if report.errors or not name or not minutes or not age:
        return None
    return Session(Path(report.file).stem, name.value, age, aim.value if aim else "", minutes, expected, tuple(parts))


def age_of(node: Node | None, report: Report) -> int | None:
    """`U13` as 13."""
    text = report.text(node, "the age group")
    if text is None:
        return None
    found = AGE.fullmatch(text.value.strip())
    if found and 5 <= int(found[1]) <= 21:
        return int(found[1])
    report.add(text, "the age group reads like U12")
    return None


def expected_of(node: Node | None, report: Report) -> tuple[int, int]:
    """`11-15` as (11, 15); one number is both."""
    text = report.text(node, "expected")
    if text is None:
        return (8, 16)
    found = EXPECTED.fullmatch(text.value.strip())
    low, high = (int(found[1]), int(found[2] or found[1])) if found else (0, 0)
    if not 2 <= low <= high <= 40:
        report.add(text, "the turnout expected reads like 11-15, from the fewest to the most")
        return (8, 16)
    return low, high


def parts_of(node: Node | None, report: Report, files: Mapping[str, Path]) -> list[Part]:
    """The parts of the hour, in order."""
    if node is None:
        return []
    if not isinstance(node, Items) or not node.items:
        report.add(node, "parts is a list; each part begins “- practice: its key”")
        return []
    read: dict[str, Practice | None] = {}
    found = [part_of(item, report, files, read) for item in node.items[:MOST_PARTS]]
    return [part for part in found if part]


def part_of(item: Node, report: Report, files: Mapping[str, Path], read: dict[str, Practice | None]) -> Part | None:
    """One part; `read` keeps practices already read, so that each is read and faulted once."""
    pairs = report.pairs(item, "a part")
    if pairs is None:
        return None
    report.keys(pairs, PART.keys, "a part")
    report.needed(pairs, PART.needed, "a part")
    minutes = whole(pairs.get("minutes"), report, "a part's minutes", *PART.whole("minutes"))
    key = report.text(pairs.get("practice"), "the practice's key")
    success = success_of(pairs.get("success"), report)
    left_out = yes_or_no(pairs.get("may be left out"), report, "may be left out")
    practice = practice_called(key, report, files, read) if key else None
    steps = report.texts(pairs.get("steps"), "steps")
    taken = stepped(practice, steps, report) if practice else None
    if taken is None or minutes is None:
        return None
    low, high = taken.arrange.minutes
    if key and not low <= minutes <= high:
        said = f"{taken.name} is made for {low:g} to {high:g} minutes"
        report.add(key, said, read=f"{minutes} minutes", severity="warning")
    return Part(taken, minutes, tuple(taken.taken), success, bool(left_out))


def practice_called(
    key: Text, report: Report, files: Mapping[str, Path], read: dict[str, Practice | None]
) -> Practice | None:
    """The practice with that key; its own faults join the report."""
    if key.value in read:
        return read[key.value]
    if key.value not in files:
        listed = ", ".join(sorted(files)[:8])
        report.add(key, f"no practice of this key is on the shelf (there are {listed})", near=nearest(key.value, files))
        return None
    try:
        read[key.value] = read_practice(files[key.value])
    except BadInput as error:
        report.problems += error.problems
        read[key.value] = None
    return read[key.value]


def stepped(practice: Practice, steps: list[Text], report: Report) -> Practice | None:
    """The practice with its steps taken; an unknown step is faulted at its word."""
    for step in steps:
        try:
            practice = with_steps(practice, (step.value,))
        except BadInput as error:
            fault: Problem = error.problems[0]
            report.add(step, fault.expected, near=fault.nearest)
            return None
    return practice


def success_of(node: Node | None, report: Report) -> tuple[float, float] | None:
    """`40-55 %` as (0.40, 0.55)."""
    text = report.text(node, "success")
    if text is None:
        return None
    found = SUCCESS.fullmatch(text.value.strip())
    low, high = (int(found[1]), int(found[2])) if found else (1, 0)
    if not 0 <= low < high <= 100:
        report.add(text, "the success wanted reads like “40-55 %”, from the lower to the higher")
        return None
    return low / 100, high / 100
