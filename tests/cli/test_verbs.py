"""The command line as a person meets it: help, errors that teach, exit codes."""

import json
import os
import subprocess
import sys
import time

import pytest

VERBS = ("check", "fit", "forecast", "pack", "desk")


def turnout(*arguments: str, **environment: str) -> subprocess.CompletedProcess:
    """Run the command as its own process."""
    code = "from turnout.cli.main import run; run()"
    return subprocess.run(
        [sys.executable, "-c", code, *arguments], capture_output=True, text=True, timeout=300,
        env={**os.environ, **environment},
    )  # fmt: skip


def test_help_lists_the_verbs():
    answer = turnout("--help")
    assert answer.returncode == 0
    assert all(verb in answer.stdout for verb in VERBS)


@pytest.mark.parametrize("verb", VERBS)
def test_each_help_shows_an_example(verb):
    answer = turnout(verb, "--help")
    assert answer.returncode == 0
    assert f"Example: turnout {verb}" in answer.stdout


def test_help_loads_nothing_heavy():
    code = (
        "import sys; sys.argv = ['turnout', '--help']\n"
        "from turnout.cli.main import run\n"
        "try: run()\n"
        "except SystemExit: pass\n"
        "heavy = {'numpy', 'numba', 'typst', 'fastapi', 'uvicorn', 'rich', 'lark', 'ruamel', 'shapely', 'pydantic'}\n"
        "print(sorted(heavy & set(sys.modules)), file=sys.stderr)"
    )
    answer = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, timeout=60)
    assert answer.stderr.strip() == "[]"


def test_help_is_quick():
    def once() -> float:
        start = time.perf_counter()
        turnout("--help")
        return time.perf_counter() - start

    # the best of five: what else runs on the machine is not the command's doing
    assert min(once() for _ in range(5)) < 0.2


def test_no_verb_shows_the_help():
    assert "check" in turnout().stdout + turnout().stderr


def test_version():
    assert turnout("--version").stdout.startswith("turnout 0.")


@pytest.mark.parametrize("arguments", [("chek", "x.yaml"), ("check",), ("fit",), ("check", "--loud", "x.yaml")])
def test_misuse_is_two_and_no_traceback(arguments):
    answer = turnout(*arguments)
    assert answer.returncode == 2
    assert "Traceback" not in answer.stderr and answer.stderr


def test_check_of_a_missing_file_names_the_nearest(tmp_path):
    (tmp_path / "square.yaml").write_text("practice: x\n")
    answer = turnout("check", str(tmp_path / "sqare.yaml"))
    assert answer.returncode == 2
    assert "square.yaml" in answer.stdout and "no such file" in answer.stdout


def test_check_of_an_empty_folder_is_told(tmp_path):
    answer = turnout("check", str(tmp_path), "--json")
    assert answer.returncode == 2
    body = json.loads(answer.stdout)
    assert body["ok"] is False
    assert "no .yaml file" in body["problems"][0]["expected"]
