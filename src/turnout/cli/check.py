"""turnout check"""

from dataclasses import asdict
from pathlib import Path

from turnout.cli.answer import BAD_INPUT, answering
from turnout.evening.check import check_files, files_of, tidy_files
from turnout.evening.stamp import files_hash
from turnout.practice.tidy import Reworded
from turnout.problems import Problem


def run(paths: list[Path], *, tidy: bool, json: bool) -> None:
    """Check files and folders, and tidy them if asked; exit 2 when anything in them cannot be used."""
    with answering("check", json=json) as answer:
        files, problems = files_of(paths)
        answer.inputs_hash = files_hash(files)
        reworded, found = tidy_files(files) if tidy else ([], check_files(files))
        problems = problems + found
        wrong = any(problem.severity == "error" for problem in problems)
        answer.body = {"ok": not wrong, "files": len(files), "problems": [asdict(problem) for problem in problems]}
        told = as_text(len(files), problems)
        if tidy:
            answer.body["reworded"] = [asdict(one) for one in reworded]
            told = f"{tidy_text(reworded)}\n{told}"
        answer.text = told
        answer.code = BAD_INPUT if wrong else 0


def tidy_text(reworded: list[Reworded]) -> str:
    """Each sentence as it was and as it is now, then the count."""
    lines = [f"{one.file}:{one.line}: “{one.was}” is now “{one.now}”" for one in reworded]
    counted = {0: "No sentence", 1: "1 sentence"}.get(len(lines), f"{len(lines)} sentences")
    return "\n".join([*lines, f"{counted} written the printed way."])


def as_text(files: int, problems: list[Problem]) -> str:
    """One line a problem, then the count."""
    counted = "1 file read" if files == 1 else f"{files} files read"
    if not problems:
        return f"{counted}, nothing wrong."
    found = "1 problem" if len(problems) == 1 else f"{len(problems)} problems"
    return "\n".join([*map(str, problems), f"{counted}, {found}."])
