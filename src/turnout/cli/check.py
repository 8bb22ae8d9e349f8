"""turnout check"""

from dataclasses import asdict
from pathlib import Path

from turnout.cli.answer import BAD_INPUT, answering
from turnout.evening.check import check_files, files_of
from turnout.evening.stamp import files_hash
from turnout.problems import Problem


def run(paths: list[Path], *, json: bool) -> None:
    """Check files and folders; exit 2 when anything in them cannot be used."""
    with answering("check", json=json) as answer:
        files, problems = files_of(paths)
        problems = problems + check_files(files)
        wrong = any(problem.severity == "error" for problem in problems)
        answer.inputs_hash = files_hash(files)
        answer.body = {"ok": not wrong, "files": len(files), "problems": [asdict(problem) for problem in problems]}
        answer.text = as_text(len(files), problems)
        answer.code = BAD_INPUT if wrong else 0


def as_text(files: int, problems: list[Problem]) -> str:
    """One line a problem, then the count."""
    counted = "1 file read" if files == 1 else f"{files} files read"
    if not problems:
        return f"{counted}, nothing wrong."
    found = "1 problem" if len(problems) == 1 else f"{len(problems)} problems"
    return "\n".join([*map(str, problems), f"{counted}, {found}."])
