"""Which files to check, and what is wrong with them."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from turnout.problems import BadInput, Problem

if TYPE_CHECKING:
    from turnout.practice.tidy import Reworded

ENDINGS = (".yaml", ".yml")
SNAPSHOT = "expected.yaml"  # beside a practice of the shelf: written and read by programs only


def files_of(paths: list[Path]) -> tuple[list[Path], list[Problem]]:
    """The files meant by files and folders, in order; a path that leads nowhere is a problem."""
    files: list[Path] = []
    problems: list[Problem] = []
    for path in paths:
        found = sorted(inner for inner in path.rglob("*") if is_checked(inner)) if path.is_dir() else [path]
        files += [file for file in found if file.is_file()]
        if not found:
            problems.append(Problem(str(path), None, None, "a folder", "it holds no .yaml file to check"))
        elif not path.exists():
            problems.append(no_such_file(path))
        elif not path.is_file() and not path.is_dir():
            problems.append(Problem(str(path), None, None, path.name, "this is no file; name a file or a folder"))
    return list(dict.fromkeys(files)), problems


def is_checked(file: Path) -> bool:
    """Whether a file of a folder is one that people write."""
    return file.suffix in ENDINGS and file.name != SNAPSHOT


def no_such_file(path: Path) -> Problem:
    """A path that leads nowhere, with the nearest name beside it."""
    from turnout.evening.values import nearest

    if not path.parent.is_dir():
        return Problem(str(path), None, None, str(path.parent), "there is no such folder; name a file that is there")
    beside = {inner.stem: inner.name for inner in path.parent.iterdir() if inner.suffix in (path.suffix, *ENDINGS)}
    near = nearest(path.stem, beside)
    expected = "there is no such file; name a practice, session, tonight or squad file, or a folder of them"
    return Problem(str(path), None, None, path.name, expected, beside[near] if near else None)


def check_files(files: list[Path]) -> list[Problem]:
    """Everything wrong in the files, each file read as what it is."""
    if not files:
        return []
    from turnout.club.check import check_file

    return [problem for file in files for problem in check_file(file)]


def tidy_files(files: list[Path]) -> tuple[list[Reworded], list[Problem]]:
    """Write the sentences of practice files the printed way: which ones, and what is wrong. A file in which anything
    is wrong is left as it is."""
    changes: list[Reworded] = []
    problems: list[Problem] = []
    for file in files:
        found = check_files([file])
        problems += found
        if not any(problem.severity == "error" for problem in found):
            try:
                changes += tidy_file(file)
            except BadInput as error:
                problems += error.problems
    return changes, problems


def tidy_file(file: Path) -> list[Reworded]:
    """Write one file's sentences the printed way; a file of another kind has none. Raises BadInput."""
    from turnout.club.check import kind_of
    from turnout.practice.tidy import tidied
    from turnout.reading import load_text
    from turnout.reading.whole import read_draft, write_draft

    draft, stamp = read_draft(file)
    if kind_of(load_text(draft.text, draft.file)) != "practice":
        return []
    after, changes = tidied(draft)
    write_draft(file, after, stamp)
    return changes
