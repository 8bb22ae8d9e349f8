"""Whatever bytes a file holds, checking it ends in a list of problems, never in a crash."""

from pathlib import Path

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from turnout.club.check import check_file
from turnout.club.read import read_squad, read_tonight
from turnout.practice.read import KEYS, read_practice
from turnout.practice.shelf import SHELF
from turnout.problems import BadInput, Problem
from turnout.session.read import read_session

GOOD = [path.read_text(encoding="utf-8") for path in sorted(SHELF.rglob("*.yaml"))]
GOOD += [path.read_text(encoding="utf-8") for path in sorted((SHELF.parent / "season-example").glob("*.yaml"))]
SOME = settings(max_examples=150, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
READERS = (read_practice, read_session, read_tonight, read_squad)
WORDS = (
    *KEYS,
    "harder",
    "add",
    "tonight",
    "session",
    "squad",
    "parts",
    "players",
    "space",
    "rectangle 3 x 3 m",
    "4 in square",
)
scalars = st.one_of(st.sampled_from(WORDS), st.text(max_size=12), st.integers(), st.none(), st.booleans())
values = st.recursive(
    scalars, lambda inner: st.one_of(st.lists(inner, max_size=4), st.dictionaries(st.sampled_from(WORDS), inner)),
    max_leaves=12,
)  # fmt: skip


def checked(folder: Path, data: bytes) -> list[Problem]:
    path = folder / "fuzzed.yaml"
    path.write_bytes(data)
    problems = check_file(path)
    assert all(isinstance(problem, Problem) and str(problem) for problem in problems)
    wrong = any(problem.severity == "error" for problem in problems)
    for read in READERS:
        try:
            assert read(path) is not None and not wrong
        except BadInput as refused:
            assert refused.problems
    return problems


@SOME
@given(st.binary(max_size=400))
def test_random_bytes(tmp_path: Path, data: bytes) -> None:
    assert any(problem.severity == "error" for problem in checked(tmp_path, data))


@SOME
@given(st.dictionaries(st.sampled_from(WORDS), values, min_size=1))
def test_random_yaml(tmp_path: Path, data: dict[str, object]) -> None:
    import json

    checked(tmp_path, json.dumps(data).encode())  # JSON is YAML


@SOME
@given(st.sampled_from(GOOD), st.data())
def test_mutated_good_files(tmp_path: Path, text: str, data: st.DataObject) -> None:
    for _ in range(data.draw(st.integers(1, 4))):
        at = data.draw(st.integers(0, len(text)))
        cut = data.draw(st.integers(0, 12))
        text = text[:at] + data.draw(st.text(max_size=6)) + text[at + cut :]
    checked(tmp_path, text.encode("utf-8", "replace"))


@SOME
@given(st.sampled_from(GOOD), st.data())
def test_lines_dropped_doubled_and_swapped(tmp_path: Path, text: str, data: st.DataObject) -> None:
    lines = text.splitlines()
    for _ in range(data.draw(st.integers(1, 3))):
        one, other = (data.draw(st.integers(0, len(lines) - 1)) for _ in range(2))
        how = data.draw(st.sampled_from(("drop", "double", "swap", "indent")))
        if how == "drop" and len(lines) > 1:
            del lines[one]
        elif how == "double":
            lines.insert(other, lines[one])
        elif how == "indent":
            lines[one] = "  " + lines[one]
        else:
            lines[one], lines[other] = lines[other], lines[one]
    checked(tmp_path, "\n".join(lines).encode())
