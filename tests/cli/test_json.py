"""The objects `--json` prints, held to their documentation."""

import json
import re
import subprocess
import sys
from pathlib import Path

import pytest

DOCS = Path(__file__).parents[2] / "docs" / "json.md"
HEAD = {"turnout", "verb", "seed", "inputs_hash"}
FIGURE = {"value", "low", "high", "unit", "per", "one_block"}


def answer(*arguments: str) -> tuple[int, dict]:
    """Exit code and object of one process; stdout must be that object and nothing else."""
    code = "from turnout.cli.main import run; run()"
    made = subprocess.run(
        [sys.executable, "-c", code, *arguments, "--json"], capture_output=True, text=True, timeout=300
    )
    assert "Traceback" not in made.stderr, made.stderr
    return made.returncode, json.loads(made.stdout)


def documented(section: str) -> set[str]:
    """Every word in backticks or in an example under a heading."""
    text = DOCS.read_text("utf-8").split(f"\n## {section}", 1)[1].split("\n## ", 1)[0]
    return set(re.findall(r"`([a-z_0-9]+)`", text)) | set(re.findall(r'"([a-z_0-9]+)":', text))


def keys_of(value: object) -> set[str]:
    """All keys of objects that are records, at any depth (not those keyed by names, roles or measures)."""
    if isinstance(value, list):
        return set().union(*(keys_of(inner) for inner in value)) if value else set()
    if not isinstance(value, dict):
        return set()
    named = {"who", "roles", "places", "figures", "by_role", "ends", "bibs", "by_copy"}
    found = set(value)
    for key, inner in value.items():
        if key not in named:
            found |= keys_of(inner)
    return found


def test_check_object(tmp_path):
    bad = tmp_path / "bad.yaml"
    bad.write_text("practice: Bad\nground:\n  square: rectangel 9 x 9 yd\n")
    code, body = answer("check", str(bad))
    assert code == 2 and body["ok"] is False and body["verb"] == "check"
    assert set(body) >= HEAD and keys_of(body) - HEAD <= documented("check")
    assert {"file", "line", "column", "read", "expected", "nearest", "severity"} == set(body["problems"][0])
    again = answer("check", str(bad))[1]
    assert again == body


def test_check_tidy_object(tmp_path):
    mine = tmp_path / "mine.yaml"
    mine.write_text(
        "practice: Mine\nground:\n  square: rectangle 9 x 9 yd\npeople:\n  amber: 4 (3-6) in square\n"
        "rules:\n  - amber score 1 for completing 5 passes in a row  # five\n"
    )
    code, body = answer("check", "--tidy", str(mine))
    assert code == 0 and keys_of(body) - HEAD <= documented("check")
    now = "Amber score 1 for completing 5 passes in a row."
    assert [(one["line"], one["now"]) for one in body["reworded"]] == [(7, now)]
    assert f"  - {now}  # five\n" in mine.read_text()


def test_shelf_object():
    code, body = answer("shelf", "--players", "14", "--scored", "passes")
    assert code == 0 and body["verb"] == "shelf" and body["found"] == len(body["practices"]) <= body["of"]
    assert set(body) >= HEAD and keys_of(body) - HEAD <= documented("shelf")
    first = body["practices"][0]
    assert first["areas"] * max(first["players"]["numbers"]) >= 14
    code, body = answer("shelf", "--minutes", "59", "--age", "U12")
    assert code == 1 and body["practices"] == [] and body["without"]["--minutes"] > 0


def test_fit_object():
    code, body = answer("fit", "hold-and-break", "--players", "13", "--minutes", "60")
    assert code == 0 and body["fits"] is True
    assert set(body) >= HEAD
    assert keys_of(body) - HEAD <= documented("fit")
    copy = body["parts"][0]["copies"][0]
    assert all(len(point) == 2 for place in copy["places"].values() for point in place.get("polygon_m", []))
    assert sum(sum(one["roles"].values()) + one["waiting"] for one in body["parts"][0]["copies"]) == 13


def test_fit_says_no_with_one():
    code, body = answer("fit", "hold-and-break", "--space", "12 x 12 m")
    assert code == 1 and body["fits"] is False
    assert body["why"] and body["smallest_change"]


def test_fit_of_a_range():
    code, body = answer("fit", "hold-and-break", "--players", "12-14", "--minutes", "60")
    assert code == 0 and list(body["fits"]) == ["12", "13", "14"]
    alone = answer("fit", "hold-and-break", "--players", "13", "--minutes", "60")[1]
    assert body["fits"]["13"]["parts"] == alone["parts"]


def test_forecast_object():
    code, body = answer("forecast", "harbour-square", "--players", "11", "--seconds", "60")
    assert code == 0 and set(body) >= HEAD
    assert keys_of(body) - HEAD <= documented("forecast PRACTICE")
    text = DOCS.read_text("utf-8").split("At least these:", 1)[1].split("\n\n", 1)[0]
    assert set(re.findall(r"`([a-z_]+)`", text)) <= set(body["figures"])
    for figure in body["figures"].values():
        assert set(figure) == FIGURE and set(figure["one_block"]) == {"p5", "p25", "p50", "p75", "p95"}
        assert figure["low"] <= figure["value"] <= figure["high"]
        assert figure["per"] in ("player", "side", "practice")
    assert answer("forecast", "harbour-square", "--players", "11", "--seconds", "60")[1] == body


@pytest.mark.parametrize(
    "arguments",
    [("fit", "nope"), ("fit", "hold-and-break", "--players", "99"), ("forecast", "nope"),
     ("forecast", "harbour-square", "--level", "godlike"), ("pack", "nope"), ("pack", "--minutes", "0"),
     ("check", "nope.yaml")],
)  # fmt: skip
def test_bad_input_is_two_with_problems(arguments):
    code, body = answer(*arguments)
    assert code == 2 and set(body) >= HEAD
    assert body["problems"] and body["problems"][0]["expected"]


def test_pack_object(tmp_path):
    code, body = answer("pack", "--out", str(tmp_path / "out"), "--seconds", "60")
    assert code == 0 and keys_of(body) - HEAD <= documented("pack")
    assert sorted(Path(file).name for file in body["files"]) == sorted(
        file.name for file in (tmp_path / "out").iterdir()
    )
    fits = json.loads((tmp_path / "out" / "fits.json").read_text())
    assert set(fits) >= HEAD and fits["verb"] == "fit"
    code, body = answer("pack", "--players", "14", "--space", "12 x 12 m", "--out", str(tmp_path / "none"))
    assert code == 1 and body["fits"] is False and not (tmp_path / "none").exists()
