"""docs/films.md and its pictures: every practice on the shelf, made with this simulator, the same again."""

import runpy
from pathlib import Path

import pytest

from turnout.play.kernel.compiling import model_stamp

ROOT = Path(__file__).parents[2]
AGAIN = "play has changed: run tools/film-strips, look at the strips, and keep them"


@pytest.fixture(scope="module")
def script() -> dict:
    return runpy.run_path(str(ROOT / "tools" / "film-strips"))


def test_every_practice_has_its_strip_and_its_row(script: dict) -> None:
    page = script["PAGE"].read_text(encoding="utf-8")
    shelf = script["shelf"]()
    assert {file.stem for file in script["PICTURES"].glob("*.svg")} == set(shelf), AGAIN
    for key, setup in shelf.items():
        assert f"](pictures/films/{key}.svg)" in page
        assert f"| {setup.practice.name} |" in page


def test_the_page_is_of_this_simulator(script: dict) -> None:
    assert f"simulator {model_stamp()}" in script["PAGE"].read_text(encoding="utf-8"), AGAIN


def test_run_again_it_draws_the_same_bytes(script: dict) -> None:
    setup = script["shelf"]()["gull-square"]
    assert script["passage"](setup).strip() == script["passage"](setup).strip()
    kept = (script["PICTURES"] / "gull-square.svg").read_text(encoding="utf-8")
    assert script["passage"](setup).strip() == kept, AGAIN


def test_blind_stills_carry_no_words_of_the_practice(script: dict, tmp_path: Path) -> None:
    assert script["main"](["--blind", "gull-square", "--out", str(tmp_path)]) == 0
    stills = sorted(tmp_path.iterdir())
    assert [still.name for still in stills] == [f"still-{number}.svg" for number in range(1, 7)]
    for still in stills:
        text = still.read_text(encoding="utf-8").lower()
        assert not any(word in text for word in ("gull", "passes", "score", "touches"))


def test_a_wrong_name_is_answered_with_the_nearest(script: dict, capsys: pytest.CaptureFixture[str]) -> None:
    assert script["main"](["--blind", "gul-square"]) == 2
    assert "Did you mean “gull-square”?" in capsys.readouterr().err
