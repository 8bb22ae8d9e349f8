"""The command line as a person meets it: help, errors that teach, exit codes."""

import json
import os
import subprocess
import sys
import time

import pytest

VERBS = ("check", "fit", "forecast", "pack", "desk", "shelf")


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


@pytest.mark.parametrize(
    "arguments",
    [
        ("fit", "hold-and-brake"),
        ("fit", "harbour-square"),
        ("fit", "hold-and-break", "--players", "6-5"),
        ("fit", "hold-and-break", "--players", "99"),
        ("fit", "hold-and-break", "--space", "32 x"),
        ("fit", "hold-and-break", "--minutes", "60 hours"),
        ("fit", "hold-and-break", "--tonight", "nobody.yaml"),
        ("fit", "hold-and-break", "--seed", "abc"),
        ("forecast", "harbour-square", "--players", "abc"),
        ("forecast", "harbour-square", "--age", "U40"),
        ("forecast", "harbour-square", "--level", "pro"),
        ("forecast", "harbour-square", "--steps", "Fewer balls"),
        ("forecast", "harbour-square", "--seconds", "60 min"),
        ("forecast", "hold-and-break", "--steps", "More room"),
        ("pack", "--players", "6-8"),
        ("pack", "--out", ""),
        ("desk", "--port", "80"),
        ("shelf", "--players", "many"),
        ("shelf", "--players", "40"),
        ("shelf", "--space", "32 x"),
        ("shelf", "--minutes", "an hour"),
        ("shelf", "--age", "U40"),
        ("shelf", "--role", "quarterback"),
    ],
    ids=" ".join,
)
def test_every_wrong_value_is_named_with_what_would_do(arguments):
    answer = turnout(*arguments)
    assert answer.returncode == 2
    assert "Traceback" not in answer.stderr
    assert f"read “{arguments[-1]}”; " in answer.stderr or f"read “{arguments[-1][-1:]}”; " in answer.stderr
    assert answer.stdout == ""


def test_fit_speaks_in_tonights_colours(tmp_path):
    tonight = tmp_path / "tonight.yaml"
    tonight.write_text(
        "tonight:\n  players: 13\n  space: third of 3G\n  kit:\n    bibs: {red: 8, sky: 8}\n    own shirts: navy\n"
    )
    answer = turnout("fit", "hold-and-break", "--tonight", str(tonight))
    assert answer.returncode == 0
    assert "red" in answer.stdout or "sky" in answer.stdout
    assert "amber" not in answer.stdout and " blue" not in answer.stdout


def test_check_of_a_missing_file_names_the_nearest(tmp_path):
    (tmp_path / "square.yaml").write_text("practice: x\n")
    answer = turnout("check", str(tmp_path / "sqare.yaml"))
    assert answer.returncode == 2
    assert "square.yaml" in answer.stdout and "no such file" in answer.stdout


def test_the_shelf_lists_every_practice_once():
    from turnout.practice.shelf import practice_files

    answer = turnout("shelf")
    assert answer.returncode == 0
    lines = answer.stdout.splitlines()
    assert [line.split()[0] for line in lines[1:-1]] == sorted(practice_files())
    assert lines[-1].startswith(f"{len(practice_files())} practices.")


def test_the_shelf_is_searched_by_what_there_is():
    answer = turnout("shelf", "--players", "14", "--space", "32 x 30 m", "--age", "U11", "--scored", "passes in a row")
    found = {line.split()[0]: line for line in answer.stdout.splitlines()[1:-1]}
    assert answer.returncode == 0 and {"gull-square", "harbour-square"} <= set(found)
    assert "14 in 2 areas" in found["gull-square"] and "open-water" not in found


def test_nothing_on_the_shelf_says_which_wish_stands_in_the_way():
    answer = turnout("shelf", "--players", "13", "--minutes", "60")
    assert answer.returncode == 1 and "Without --minutes there are" in answer.stdout
    answer = turnout("shelf", "harbuor")
    assert answer.returncode == 1 and "Did you mean “harbour”?" in answer.stdout


def test_the_shelf_loads_neither_the_simulator_nor_the_grammar():
    code = (
        "import sys; sys.argv = ['turnout', 'shelf', '--players', '12']\n"
        "from turnout.cli.main import run\n"
        "try: run()\n"
        "except SystemExit: pass\n"
        "heavy = {'numpy', 'numba', 'typst', 'fastapi', 'uvicorn', 'lark', 'shapely', 'ortools', 'jinja2'}\n"
        "print(sorted(heavy & set(sys.modules)), file=sys.stderr)"
    )
    answer = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, timeout=60)
    assert answer.stderr.strip() == "[]"


def test_check_of_an_empty_folder_is_told(tmp_path):
    answer = turnout("check", str(tmp_path), "--json")
    assert answer.returncode == 2
    body = json.loads(answer.stdout)
    assert body["ok"] is False
    assert "no .yaml file" in body["problems"][0]["expected"]
