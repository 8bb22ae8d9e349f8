"""The ground floor: what installs, what ships, and what the scripts say when they cannot go on."""

import re
import subprocess
import tomllib
from fnmatch import fnmatch
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
LOCKS = ("requirements.txt", "requirements-test.txt")


def pinned(lock: str) -> dict[str, str]:
    """Package name to version, as the lock file pins them."""
    text = (ROOT / lock).read_text(encoding="utf-8")
    return dict(re.findall(r"^([a-z0-9-]+)==(\S+) \\$", text, re.MULTILINE))


def named(dependencies: list[str]) -> set[str]:
    return {re.split(r"[<>=~!\[ ]", each)[0].lower().replace(".", "-").replace("_", "-") for each in dependencies}


@pytest.mark.parametrize("lock", LOCKS)
def test_every_pin_carries_hashes_and_no_host(lock: str) -> None:
    text = (ROOT / lock).read_text(encoding="utf-8")
    assert "://" not in text and "--index" not in text and "--find" not in text
    for entry in re.split(r"\n(?=[a-z0-9-]+==)", text):
        if "==" in entry:
            assert "--hash=sha256:" in entry, entry[:60]


def test_locks_hold_what_the_package_asks_for() -> None:
    assert named(PROJECT["project"]["dependencies"]) <= set(pinned("requirements.txt"))
    assert named(PROJECT["project"]["optional-dependencies"]["test"]) <= set(pinned("requirements-test.txt"))
    assert "setuptools" in pinned("requirements.txt")  # builds the package without fetching anything more


def test_both_locks_agree() -> None:
    tested = pinned("requirements-test.txt")
    assert {name: tested[name] for name in pinned("requirements.txt")} == pinned("requirements.txt")


def test_every_data_file_travels_with_the_package() -> None:
    patterns = [
        (Path("src", *package.split(".")) / pattern).as_posix().replace("**/", "*")
        for package, wanted in PROJECT["tool"]["setuptools"]["package-data"].items()
        for pattern in wanted
    ]
    files = (path for path in (ROOT / "src" / "turnout").rglob("*") if path.is_file() and path.suffix != ".py")
    data = [path.relative_to(ROOT).as_posix() for path in files if "__pycache__" not in path.parts]
    assert data, "no data files found"
    assert [name for name in data if not any(fnmatch(name, pattern) for pattern in patterns)] == []


def test_a_python_that_is_too_old_is_named(tmp_path: Path) -> None:
    old = tmp_path / "python3"
    old.write_text('#!/bin/sh\n[ "$1" = --version ] && echo "Python 3.9.2" && exit 0\nexit 1\n')
    old.chmod(0o755)
    script = f'source "{ROOT}/tools/ready.sh"; find_python'
    path = {"PATH": f"{tmp_path}:/bin"} if not Path("/bin/python3").exists() else {"PATH": str(tmp_path)}
    ran = subprocess.run(["/bin/bash", "-c", script], env=path, capture_output=True, text=True)
    assert ran.returncode == 1
    assert "needs Python 3.11 or later; found Python 3.9.2" in ran.stderr


def test_the_stamp_changes_with_the_requirements(tmp_path: Path) -> None:
    (tmp_path / "tools").mkdir()
    (tmp_path / "tools" / "ready.sh").write_text((ROOT / "tools" / "ready.sh").read_text(encoding="utf-8"))
    (tmp_path / "pyproject.toml").write_text("[project]\n")
    stamps = []
    for text in ("a==1\n", "a==2\n", "a==1\n"):
        (tmp_path / "requirements.txt").write_text(text)
        script = f'source "{tmp_path}/tools/ready.sh"; stamp_of requirements.txt'
        stamps.append(subprocess.run(["bash", "-c", script], capture_output=True, text=True, check=True).stdout)
    assert stamps[0] == stamps[2] != stamps[1]
    assert re.fullmatch(r"[0-9a-f]{64}\n", stamps[0])
